package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/yoke"
)

func backRaiseIn(r *knitmathv1.BackRaise) *yoke.BackRaise {
	if r == nil {
		return nil
	}
	return &yoke.BackRaise{
		Place:      yoke.RaisePlace(r.Place),
		RiseRows:   optional(r.RiseRows, countIn),
		RiseCm:     r.RiseCm,
		BackCount:  optional(r.BackCount, countIn),
		Order:      shortrow.ShortRowOrder(r.Order),
		TurnMethod: shortrow.TurnMethod(r.TurnMethod),
		Rounding:   measure.Rounding(r.Rounding),
	}
}

func backRaiseOut(p yoke.BackRaisePlan) *knitmathv1.BackRaisePlan {
	return &knitmathv1.BackRaisePlan{
		FirstRoundNumber:       countOut(p.FirstRoundNumber),
		StitchCount:            countOut(p.StitchCount),
		BackCount:              countOut(p.BackCount),
		BeginBeforeCentreCount: countOut(p.BeginBeforeCentreCount),
		AskedRiseRows:          p.AskedRiseRows,
		RiseRows:               countOut(p.RiseRows),
		RiseCm:                 p.RiseCm,
		TurnCount:              countOut(p.TurnCount),
		Rows:                   each(p.Rows, wedgeRowOut),
		GreatestDepartureRows:  p.GreatestDepartureRows,
	}
}
