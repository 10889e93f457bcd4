package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// DyeLot says whether more of the same dye lot can be had later.
type DyeLot int32

// The dye lots.
const (
	DyeLotUnspecified DyeLot = iota // as DyeLotOnePurchase
	DyeLotOnePurchase
	DyeLotMoreLater
)

// vetBalls checks what is bought besides.
func vetBalls(c *fault.Checks, in EstimateInput) {
	c.Number("", "ball_waste_m", in.BallWasteM, 0, MaxBallWasteM)
	c.Count("", "spare_balls", in.SpareBalls, 0, MaxSpareBalls)
	c.Needs(in.BallWasteM != 0, "ball_waste_m", in.PutUp != nil, "put_up")
	c.Needs(in.SpareBalls != 0, "spare_balls", in.PutUp != nil, "put_up")
	if p := in.PutUp; p != nil && c.Sound("put_up", "ball_waste_m") && in.BallWasteM >= p.BallM/2 {
		c.Infeasible("half of every ball or more would be lost; a ball has "+measure.Decimal(p.BallM, 1)+" m", "ball_waste_m")
	}
}

// figure is the one of a range to buy for: the high one unless more of the lot
// can be had later.
func (d DyeLot) figure(r Range) float64 {
	if d == DyeLotMoreLater {
		return r.Likely
	}
	return r.High
}
