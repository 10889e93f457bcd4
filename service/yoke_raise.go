package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath"
)

func backRaiseIn(r *knitmathv1.BackRaise) *knitmath.BackRaise {
	if r == nil {
		return nil
	}
	return &knitmath.BackRaise{
		Place:      knitmath.RaisePlace(r.Place),
		RiseRows:   optional(r.RiseRows, countIn),
		RiseCm:     r.RiseCm,
		BackCount:  optional(r.BackCount, countIn),
		Order:      knitmath.ShortRowOrder(r.Order),
		TurnMethod: knitmath.TurnMethod(r.TurnMethod),
		Rounding:   knitmath.Rounding(r.Rounding),
	}
}

func backRaiseOut(p knitmath.BackRaisePlan) *knitmathv1.BackRaisePlan {
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
