package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/yoke"
)

// yokeService answers YokeService.
type yokeService struct {
	knitmathv1.UnimplementedYokeServiceServer
}

func (yokeService) PlanCircularYoke(_ context.Context, req *knitmathv1.PlanCircularYokeRequest) (*knitmathv1.PlanCircularYokeResponse, error) {
	out, err := yoke.PlanCircularYoke(yokeIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return yokeOut(out), nil
}

func yokeIn(req *knitmathv1.PlanCircularYokeRequest) yoke.CircularYokeInput {
	return yoke.CircularYokeInput{
		Gauge:              gaugeIn(req.Gauge),
		BodyCount:          countIn(req.BodyCount),
		SleeveCount:        optional(req.SleeveCount, countIn),
		UnderarmCount:      optional(req.UnderarmCount, countIn),
		NeckCount:          optional(req.NeckCount, countIn),
		NeckCm:             req.NeckCm,
		DepthCm:            req.DepthCm,
		RoundCount:         optional(req.RoundCount, countIn),
		Schedule:           yoke.YokeSchedule(req.Schedule),
		DecreaseRoundCount: optional(req.DecreaseRoundCount, countIn),
		Steps:              each(req.Steps, yokeStepIn),
		Order:              shaping.SpacingOrder(req.Order),
		DisplayUnit:        measure.DisplayUnit(req.DisplayUnit),
		WithOutline:        req.WithOutline,
		Bands:              each(req.Bands, yokeBandIn),
		NeckToleranceCount: optional(req.NeckToleranceCount, countIn),
		BackRaise:          backRaiseIn(req.BackRaise),
	}
}

func yokeBandIn(b *knitmathv1.YokeBand) yoke.YokeBand {
	return yoke.YokeBand{
		RoundCount:       countIn(b.GetRoundCount()),
		RepeatCount:      countIn(b.GetRepeatCount()),
		PlainBeforeCount: optional(b.PlainBeforeCount, countIn),
	}
}

func yokeStepIn(s *knitmathv1.YokeStep) yoke.YokeStep {
	return yoke.YokeStep{DepthFraction: s.GetDepthFraction(), RemovedFraction: s.GetRemovedFraction()}
}

func yokeOut(out yoke.CircularYoke) *knitmathv1.PlanCircularYokeResponse {
	return &knitmathv1.PlanCircularYokeResponse{
		BodyCount:      countOut(out.BodyCount),
		SleeveCount:    countOut(out.SleeveCount),
		UnderarmCount:  countOut(out.UnderarmCount),
		JoinCount:      countOut(out.JoinCount),
		NeckCount:      countOut(out.NeckCount),
		RoundCount:     countOut(out.RoundCount),
		DepthCm:        out.DepthCm,
		JoinCm:         out.JoinCm,
		NeckCm:         out.NeckCm,
		DecreaseRounds: each(out.DecreaseRounds, yokeRoundOut),
		Steepness:      out.Steepness,
		Directions:     out.Directions,
		Summary:        out.Summary(),
		Notices:        each(out.Notices, noticeOut),
		Sources:        each(out.Sources(), sourceOut),
		Outline:        message(out.Outline, outlineOut),
		Bands:          each(out.Bands, yokeBandOut),
		BackRaise:      message(out.BackRaise, backRaiseOut),
	}
}

func yokeBandOut(b yoke.YokeBandPlan) *knitmathv1.YokeBandPlan {
	return &knitmathv1.YokeBandPlan{
		FirstRoundNumber:  countOut(b.FirstRoundNumber),
		LastRoundNumber:   countOut(b.LastRoundNumber),
		StitchCount:       countOut(b.StitchCount),
		RepeatTimes:       countOut(b.RepeatTimes),
		WantedCount:       b.WantedCount,
		DepartureStitches: b.DepartureStitches,
	}
}

func yokeRoundOut(r yoke.YokeRound) *knitmathv1.YokeRound {
	return &knitmathv1.YokeRound{
		RoundNumber:     countOut(r.RoundNumber),
		DepthCm:         r.DepthCm,
		StartCount:      countOut(r.StartCount),
		EndCount:        countOut(r.EndCount),
		WantedCount:     r.WantedCount,
		Instruction:     instructionOut(r.Instruction),
		Steepness:       r.Steepness,
		CircumferenceCm: r.CircumferenceCm,
	}
}
