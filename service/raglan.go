package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yoke"
)

func (yokeService) PlanRaglan(_ context.Context, req *knitmathv1.PlanRaglanRequest) (*knitmathv1.PlanRaglanResponse, error) {
	out, err := yoke.PlanRaglan(raglanIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return raglanOut(out), nil
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
