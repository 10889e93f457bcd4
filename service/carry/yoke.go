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

func (yokeService) PlanCircularYoke(ctx context.Context, req *knitmathv1.PlanCircularYokeRequest) (*knitmathv1.PlanCircularYokeResponse,
	error) {
	return answer(ctx, req, yokeIn, yoke.PlanCircularYoke, yokeOut)
}

func yokeIn(req *knitmathv1.PlanCircularYokeRequest) yoke.CircularInput {
	return yoke.CircularInput{
		Gauge:                 gaugeIn(req.Gauge),
		BodyStitches:          countIn(req.BodyStitches),
		SleeveStitches:        optional(req.SleeveStitches, countIn),
		UnderarmStitches:      optional(req.UnderarmStitches, countIn),
		NeckStitches:          optional(req.NeckStitches, countIn),
		NeckCm:                req.NeckCm,
		DepthCm:               req.DepthCm,
		DepthRounds:           optional(req.DepthRounds, countIn),
		Schedule:              yoke.Schedule(req.Schedule),
		DecreaseRounds:        optional(req.DecreaseRounds, countIn),
		Steps:                 each(req.Steps, yokeStepIn),
		Spread:                shaping.GapSpread(req.Spread),
		DisplayUnit:           measure.DisplayUnit(req.DisplayUnit),
		WithOutline:           req.WithOutline,
		Bands:                 each(req.Bands, yokeBandIn),
		NeckToleranceStitches: optional(req.NeckToleranceStitches, countIn),
		BackRaise:             backRaiseIn(req.BackRaise),
		TolerancePercent:      req.TolerancePercent,
		LargestLossPercent:    req.LargestLossPercent,
	}
}

func yokeBandIn(b *knitmathv1.YokeBand) yoke.Band {
	return yoke.Band{
		HeightRounds:     countIn(b.GetHeightRounds()),
		RepeatStitches:   countIn(b.GetRepeatStitches()),
		EvenBeforeRounds: optional(b.EvenBeforeRounds, countIn),
	}
}

func yokeStepIn(s *knitmathv1.YokeStep) yoke.Step {
	return yoke.Step{DepthFraction: s.GetDepthFraction(), RemovedFraction: s.GetRemovedFraction()}
}

func yokeOut(out yoke.Circular) *knitmathv1.PlanCircularYokeResponse {
	return &knitmathv1.PlanCircularYokeResponse{
		BodyStitches:     countOut(out.BodyStitches),
		SleeveStitches:   countOut(out.SleeveStitches),
		UnderarmStitches: countOut(out.UnderarmStitches),
		JoinStitches:     countOut(out.JoinStitches),
		NeckStitches:     countOut(out.NeckStitches),
		DepthRounds:      countOut(out.DepthRounds),
		DepthCm:          out.DepthCm,
		JoinCm:           out.JoinCm,
		NeckCm:           out.NeckCm,
		Rounds:           yokeRoundsOut(out.Rounds),
		Steepness:        out.Steepness,
		Summary:          out.Summary(),
		Directions:       out.Directions(),
		Notices:          each(out.Notices, noticeOut),
		Sources:          sourcesOut(out.Sources()),
		Outline:          message(out.Outline, outlineOut),
		Bands:            each(out.Bands, yokeBandOut),
		BackRaise:        message(out.BackRaise, backRaiseOut),

		GreatestDeparturePercent: out.GreatestDeparturePercent,
		Effort:                   countOut(out.Effort),
	}
}

func yokeBandOut(b yoke.BandPlan) *knitmathv1.YokeBandPlan {
	return &knitmathv1.YokeBandPlan{
		FirstRoundNumber:  countOut(b.FirstRoundNumber),
		LastRoundNumber:   countOut(b.LastRoundNumber),
		Stitches:          countOut(b.Stitches),
		RepeatCount:       countOut(b.RepeatCount),
		WantedStitches:    b.WantedStitches,
		DepartureStitches: b.DepartureStitches,
	}
}

// yokeRoundsOut has all rounds and their instructions in one piece of memory.
func yokeRoundsOut(from []yoke.Round) []*knitmathv1.YokeRound {
	to := make([]*knitmathv1.YokeRound, len(from))
	rooms := make([]struct {
		round       knitmathv1.YokeRound
		instruction knitmathv1.Instruction
	}, len(from))
	for i := range from {
		r, out := &from[i], &rooms[i].round
		to[i] = out
		out.RoundNumber, out.DepthCm = countOut(r.RoundNumber), r.DepthCm
		out.StartStitches, out.EndStitches = countOut(r.StartStitches), countOut(r.EndStitches)
		out.WantedStitches, out.DepartureStitches = r.WantedStitches, r.DepartureStitches
		out.Instruction = &rooms[i].instruction
		fillInstruction(out.Instruction, r.Instruction)
		out.Steepness, out.CircumferenceCm = r.Steepness, r.CircumferenceCm
		out.Effort, out.Adjusts = countOut(r.Effort), r.Adjusts
	}
	return to
}

func backRaiseIn(r *knitmathv1.BackRaise) *yoke.BackRaise {
	if r == nil {
		return nil
	}
	return &yoke.BackRaise{
		Place:        yoke.RaisePlace(r.Place),
		RiseRows:     optional(r.RiseRows, countIn),
		RiseCm:       r.RiseCm,
		BackStitches: optional(r.BackStitches, countIn),
		Order:        shortrow.Order(r.Order),
		TurnMethod:   shortrow.TurnMethod(r.TurnMethod),
		Rounding:     measure.Rounding(r.Rounding),
	}
}

func backRaiseOut(p yoke.BackRaisePlan) *knitmathv1.BackRaisePlan {
	return &knitmathv1.BackRaisePlan{
		FirstRoundNumber:          countOut(p.FirstRoundNumber),
		Stitches:                  countOut(p.Stitches),
		BackStitches:              countOut(p.BackStitches),
		BeginBeforeCentreStitches: countOut(p.BeginBeforeCentreStitches),
		AskedRiseRows:             p.AskedRiseRows,
		RiseRows:                  countOut(p.RiseRows),
		RiseCm:                    p.RiseCm,
		TurnCount:                 countOut(p.TurnCount),
		Rows:                      each(p.Rows, wedgeRowOut),
		GreatestDepartureRows:     p.GreatestDepartureRows,
	}
}

func (yokeService) PlanRaglan(ctx context.Context, req *knitmathv1.PlanRaglanRequest) (*knitmathv1.PlanRaglanResponse, error) {
	return answer(ctx, req, raglanIn, yoke.PlanRaglan, raglanOut)
}

func raglanIn(req *knitmathv1.PlanRaglanRequest) yoke.RaglanInput {
	return yoke.RaglanInput{
		Gauge:             gaugeIn(req.Gauge),
		BodyStitches:      countIn(req.BodyStitches),
		SleeveStitches:    optional(req.SleeveStitches, countIn),
		UnderarmStitches:  optional(req.UnderarmStitches, countIn),
		LineStitches:      optional(req.LineStitches, countIn),
		LineFrom:          yoke.RaglanLineFrom(req.LineFrom),
		FrontNeckStitches: optional(req.FrontNeckStitches, countIn),
		BackNeckStitches:  optional(req.BackNeckStitches, countIn),
		SleeveTopStitches: optional(req.SleeveTopStitches, countIn),
		DepthCm:           req.DepthCm,
		DepthRounds:       optional(req.DepthRounds, countIn),
		RoundChoice:       yoke.RoundChoice(req.RoundChoice),
		DisplayUnit:       measure.DisplayUnit(req.DisplayUnit),
		WithOutline:       req.WithOutline,
		ToleranceStitches: req.ToleranceStitches,
	}
}

func raglanOut(out yoke.Raglan) *knitmathv1.PlanRaglanResponse {
	return &knitmathv1.PlanRaglanResponse{
		BodyStitches:     countOut(out.BodyStitches),
		SleeveStitches:   countOut(out.SleeveStitches),
		UnderarmStitches: countOut(out.UnderarmStitches),
		LineStitches:     countOut(out.LineStitches),
		JoinStitches:     countOut(out.JoinStitches),
		NeckStitches:     countOut(out.NeckStitches),
		DepthRounds:      countOut(out.DepthRounds),
		DepthCm:          out.DepthCm,
		JoinCm:           out.JoinCm,
		NeckCm:           out.NeckCm,
		Back:             raglanPartOut(out.Back),
		Front:            raglanPartOut(out.Front),
		Sleeve:           raglanPartOut(out.Sleeve),
		Rounds:           each(out.Rounds, raglanRoundOut),
		Instructions:     each(out.Instructions, raglanInstructionOut),
		Steepness:        out.Steepness,
		Summary:          out.Summary(),
		Directions:       out.Directions(),
		Notices:          each(out.Notices, noticeOut),
		Sources:          sourcesOut(out.Sources()),
		Outline:          message(out.Outline, outlineOut),

		GreatestDepartureStitches: out.GreatestDepartureStitches,
		LeastDepartureStitches:    out.LeastDepartureStitches,
		Effort:                    countOut(out.Effort),
	}
}

func raglanPartOut(p yoke.RaglanPart) *knitmathv1.RaglanPart {
	return &knitmathv1.RaglanPart{
		StartStitches:    countOut(p.StartStitches),
		EndStitches:      countOut(p.EndStitches),
		DecreaseRounds:   countOut(p.DecreaseRounds),
		EdgeLostCm:       p.EdgeLostCm,
		EdgeAngleDegrees: p.EdgeAngleDegrees,

		FirstDecreaseRoundNumber: countOut(p.FirstDecreaseRoundNumber),
		Intervals:                each(p.Intervals, intervalOut),
	}
}

func raglanRoundOut(r yoke.RaglanRound) *knitmathv1.RaglanRound {
	return &knitmathv1.RaglanRound{
		RoundNumber:       countOut(r.RoundNumber),
		BackStitches:      countOut(r.BackStitches),
		FrontStitches:     countOut(r.FrontStitches),
		SleeveStitches:    countOut(r.SleeveStitches),
		TotalStitches:     countOut(r.TotalStitches),
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
