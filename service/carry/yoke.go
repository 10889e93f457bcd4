package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/yoke"
)

// yokeService answers YokeService.
type yokeService struct {
	knitmathv1.UnimplementedYokeServiceServer
}

func (yokeService) PlanCircularYoke(_ context.Context, req *knitmathv1.PlanCircularYokeRequest) (*knitmathv1.PlanCircularYokeResponse, error) {
	return answer(req, yokeIn, yoke.PlanCircularYoke, yokeOut)
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

func (yokeService) PlanRaglan(_ context.Context, req *knitmathv1.PlanRaglanRequest) (*knitmathv1.PlanRaglanResponse, error) {
	return answer(req, raglanIn, yoke.PlanRaglan, raglanOut)
}

func raglanIn(req *knitmathv1.PlanRaglanRequest) yoke.RaglanInput {
	return yoke.RaglanInput{
		Gauge:          gaugeIn(req.Gauge),
		BodyCount:      countIn(req.BodyCount),
		SleeveCount:    optional(req.SleeveCount, countIn),
		UnderarmCount:  optional(req.UnderarmCount, countIn),
		LineCount:      optional(req.LineCount, countIn),
		LineFrom:       yoke.RaglanLineFrom(req.LineFrom),
		FrontNeckCount: optional(req.FrontNeckCount, countIn),
		BackNeckCount:  optional(req.BackNeckCount, countIn),
		SleeveTopCount: optional(req.SleeveTopCount, countIn),
		DepthCm:        req.DepthCm,
		RoundCount:     optional(req.RoundCount, countIn),
		Spacing:        yoke.RaglanSpacing(req.Spacing),
		DisplayUnit:    measure.DisplayUnit(req.DisplayUnit),
		WithOutline:    req.WithOutline,
	}
}

func raglanOut(out yoke.Raglan) *knitmathv1.PlanRaglanResponse {
	return &knitmathv1.PlanRaglanResponse{
		BodyCount:     countOut(out.BodyCount),
		SleeveCount:   countOut(out.SleeveCount),
		UnderarmCount: countOut(out.UnderarmCount),
		LineCount:     countOut(out.LineCount),
		JoinCount:     countOut(out.JoinCount),
		NeckCount:     countOut(out.NeckCount),
		RoundCount:    countOut(out.RoundCount),
		DepthCm:       out.DepthCm,
		JoinCm:        out.JoinCm,
		NeckCm:        out.NeckCm,
		Back:          raglanPartOut(out.Back),
		Front:         raglanPartOut(out.Front),
		Sleeve:        raglanPartOut(out.Sleeve),
		Rounds:        each(out.Rounds, raglanRoundOut),
		Instructions:  each(out.Instructions, raglanInstructionOut),
		Steepness:     out.Steepness,
		Directions:    out.Directions,
		Summary:       out.Summary(),
		Notices:       each(out.Notices, noticeOut),
		Sources:       each(out.Sources(), sourceOut),
		Outline:       message(out.Outline, outlineOut),
	}
}

func raglanPartOut(p yoke.RaglanPart) *knitmathv1.RaglanPart {
	return &knitmathv1.RaglanPart{
		StartCount:         countOut(p.StartCount),
		EndCount:           countOut(p.EndCount),
		DecreaseRoundCount: countOut(p.DecreaseRoundCount),
		EdgeLostCm:         p.EdgeLostCm,
		EdgeAngleDegrees:   p.EdgeAngleDegrees,
	}
}

func raglanRoundOut(r yoke.RaglanRound) *knitmathv1.RaglanRound {
	return &knitmathv1.RaglanRound{
		RoundNumber:       countOut(r.RoundNumber),
		BackCount:         countOut(r.BackCount),
		FrontCount:        countOut(r.FrontCount),
		SleeveCount:       countOut(r.SleeveCount),
		TotalCount:        countOut(r.TotalCount),
		InstructionNumber: countOut(r.InstructionNumber),
	}
}

func raglanInstructionOut(i yoke.RaglanInstruction) *knitmathv1.RaglanInstruction {
	return &knitmathv1.RaglanInstruction{
		BackDecreases:    i.BackDecreases,
		FrontDecreases:   i.FrontDecreases,
		SleevesDecrease:  i.SleevesDecrease,
		Description:      i.Description,
		Instruction:      instructionOut(i.Instruction),
		FirstRoundNumber: countOut(i.FirstRoundNumber),
		Times:            countOut(i.Times),
	}
}
