package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/solid"
)

// solidService answers SolidService.
type solidService struct {
	knitmathv1.UnimplementedSolidServiceServer
}

func (solidService) PlanCrown(ctx context.Context, req *knitmathv1.PlanCrownRequest) (*knitmathv1.PlanCrownResponse, error) {
	return answer(ctx, req, crownIn, solid.PlanCrown, crownOut)
}

func crownIn(req *knitmathv1.PlanCrownRequest) solid.CrownInput {
	return solid.CrownInput{
		Gauge:            gaugeIn(req.Gauge),
		HatStitches:      optional(req.HatStitches, countIn),
		HatCm:            req.HatCm,
		HeadCm:           req.HeadCm,
		HeadSize:         solid.HeadSize(req.HeadSize),
		EasePercent:      req.EasePercent,
		StitchRule:       ruleIn(req.StitchRule),
		WedgeCount:       optional(req.WedgeCount, countIn),
		Stacks:           solid.Stacks(req.Stacks),
		Uneven:           solid.Uneven(req.Uneven),
		Shape:            solid.CrownShape(req.Shape),
		CrownRounds:      optional(req.CrownRounds, countIn),
		CrownCm:          req.CrownCm,
		TotalRounds:      optional(req.TotalRounds, countIn),
		TotalCm:          req.TotalCm,
		Rates:            each(req.Rates, rateIn),
		SuccessiveRounds: optional(req.SuccessiveRounds, countIn),
		EndStitches:      optional(req.EndStitches, countIn),
		ToleranceRounds:  req.ToleranceRounds,
		DisplayUnit:      measure.DisplayUnit(req.DisplayUnit),
		WithOutline:      req.WithOutline,
	}
}

func rateIn(r *knitmathv1.ClosingRate) solid.Rate {
	return solid.Rate{EveryRounds: countIn(r.GetEveryRounds()), Times: countIn(r.GetTimes())}
}

func crownOut(out solid.Crown) *knitmathv1.PlanCrownResponse {
	return &knitmathv1.PlanCrownResponse{
		HeadCm:              out.HeadCm,
		HatStitches:         countOut(out.HatStitches),
		HatCm:               out.HatCm,
		WedgeCount:          countOut(out.WedgeCount),
		WedgeStitches:       each(out.WedgeStitches, countOut),
		EvenRounds:          countOut(out.EvenRounds),
		CrownRounds:         countOut(out.CrownRounds),
		CrownCm:             out.CrownCm,
		ShapeCm:             out.ShapeCm,
		TotalRounds:         countOut(out.TotalRounds),
		TotalCm:             out.TotalCm,
		WantedTotalCm:       out.WantedTotalCm,
		EndStitches:         countOut(out.EndStitches),
		Rounds:              each(out.Rounds, closingRoundOut),
		Steepness:           out.Steepness,
		UpperSteepness:      out.UpperSteepness,
		GreatestDepartureCm: out.GreatestDepartureCm,
		Effort:              countOut(out.Effort),
		Summary:             out.Summary(),
		Directions:          out.Directions(),
		Notices:             each(out.Notices, noticeOut),
		Sources:             sourcesOut(out.Sources()),
		Outline:             message(out.Outline, outlineOut),
	}
}

func closingRoundOut(r solid.ClosingRound) *knitmathv1.ClosingRound {
	return &knitmathv1.ClosingRound{
		RoundNumber: countOut(r.RoundNumber),
		Adjusts:     r.Adjusts,
		Instruction: instructionOut(r.Instruction),
	}
}
