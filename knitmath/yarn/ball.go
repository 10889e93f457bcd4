package yarn

import (
	"example.com/knitmath/knitmath/fault"
)

// A PutUp is how a yarn is sold: metres and grams of one ball.
type PutUp struct {
	BallM float64
	BallG float64
}

// DyeLot says whether more of the same dye lot can be had later.
type DyeLot int32

// The dye lots.
const (
	DyeLotUnspecified DyeLot = iota // as DyeLotOnePurchase
	DyeLotOnePurchase
	DyeLotMoreLater
)

// Ranges of a put-up: from a sample card to a weaver's cone.
const (
	MinBallM = 1.0
	MaxBallM = 100_000.0
	MinBallG = 1.0
	MaxBallG = 10_000.0
)

// vetPutUp checks a put-up that may be absent.
func vetPutUp(c *fault.Checks, field string, p *PutUp) {
	if p == nil {
		return
	}
	c.RequiredNumber(field, "ball_m", p.BallM, MinBallM, MaxBallM)
	c.RequiredNumber(field, "ball_g", p.BallG, MinBallG, MaxBallG)
}

// figure is the one of a range to buy for: the high one unless more of the lot
// can be had later.
func (d DyeLot) figure(r Range) float64 {
	if d == DyeLotMoreLater {
		return r.Likely
	}
	return r.High
}
