package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

func ruleIn(r *knitmathv1.CountRule) *gauge.CountRule {
	if r == nil {
		return nil
	}
	return &gauge.CountRule{
		Multiple:  optional(r.Multiple, countIn),
		Remainder: optional(r.Remainder, countIn),
		EdgeCount: optional(r.EdgeCount, countIn),
		Rounding:  measure.Rounding(r.Rounding),
	}
}

func fittedOut(f gauge.FittedCount) *knitmathv1.FittedCount {
	return &knitmathv1.FittedCount{
		Count:        countOut(f.Count),
		ExactCount:   f.ExactCount,
		AskedCm:      f.AskedCm,
		SizeCm:       f.SizeCm,
		DifferenceCm: f.DifferenceCm,
		Below:        neighbourOut(f.Below),
		Above:        neighbourOut(f.Above),
		Halfway:      f.Halfway,
	}
}

// neighbourOut leaves out a neighbour that does not exist: its count is 0.
func neighbourOut(n gauge.NeighbourCount) *knitmathv1.NeighbourCount {
	if n.Count == 0 {
		return nil
	}
	return &knitmathv1.NeighbourCount{Count: countOut(n.Count), SizeCm: n.SizeCm, DifferenceCm: n.DifferenceCm}
}
