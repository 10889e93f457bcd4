package yarn

import (
	"math/big"

	"example.com/knitmath/knitmath/fault"
)

// A PutUp is how a yarn is sold: metres and grams of one ball.
type PutUp struct {
	BallM float64
	BallG float64
}

// Ranges of a put-up: from a sample card to a weaver's cone.
const (
	MinBallM = 1.0
	MaxBallM = 100_000.0
	MinBallG = 1.0
	MaxBallG = 10_000.0
)

// VetPutUp checks a put-up that may be absent.
func VetPutUp(c *fault.Checks, field string, p *PutUp) {
	if p == nil {
		return
	}
	c.RequiredNumber(field, "ball_m", p.BallM, MinBallM, MaxBallM)
	c.RequiredNumber(field, "ball_g", p.BallG, MinBallG, MaxBallG)
}

// tex is how thick the yarn of a put-up is, exactly.
func (p PutUp) tex() Tex { return TexOf(new(big.Rat).Quo(DecimalOf(p.BallM), DecimalOf(p.BallG))) }
