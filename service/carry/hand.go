package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/measure"
)

// handService answers HandService.
type handService struct {
	knitmathv1.UnimplementedHandServiceServer
}

func (handService) PlanMittenTop(
	ctx context.Context, req *knitmathv1.PlanMittenTopRequest,
) (*knitmathv1.PlanMittenTopResponse, error) {
	return answer(ctx, req, mittenTopIn, hand.PlanMittenTop, mittenTopOut)
}

func (handService) PlanThumb(ctx context.Context, req *knitmathv1.PlanThumbRequest) (*knitmathv1.PlanThumbResponse, error) {
	return answer(ctx, req, thumbIn, hand.PlanThumb, thumbOut)
}

func mittenTopIn(req *knitmathv1.PlanMittenTopRequest) hand.MittenTopInput {
	return hand.MittenTopInput{
		Gauge:        gaugeIn(req.Gauge),
		HandStitches: optional(req.HandStitches, countIn),
		HandCm:       req.HandCm,
		HandSize:     hand.Size(req.HandSize),
		EasePercent:  req.EasePercent,
		StitchRule:   ruleIn(req.StitchRule),
		Kind:         hand.TopKind(req.Kind),
		LengthRounds: optional(req.LengthRounds, countIn),
		LengthCm:     req.LengthCm,
		EndStitches:  optional(req.EndStitches, countIn),
		Finish:       hand.Finish(req.Finish),
		DisplayUnit:  measure.DisplayUnit(req.DisplayUnit),
		WithOutline:  req.WithOutline,
	}
}

func mittenTopOut(out hand.MittenTop) *knitmathv1.PlanMittenTopResponse {
	return &knitmathv1.PlanMittenTopResponse{
		HandStitches: countOut(out.HandStitches),
		MittenCm:     out.MittenCm,
		EvenRounds:   countOut(out.EvenRounds),
		TopRounds:    countOut(out.TopRounds),
		TopCm:        out.TopCm,
		LengthRounds: countOut(out.LengthRounds),
		LengthCm:     out.LengthCm,
		EndStitches:  countOut(out.EndStitches),
		Finish:       knitmathv1.Finish(out.Finish),
		Rounds:       each(out.Rounds, closingRoundOut),
		Effort:       countOut(out.Effort),
		Summary:      out.Summary(),
		Directions:   out.Directions(),
		Notices:      each(out.Notices, noticeOut),
		Sources:      sourcesOut(out.Sources()),
		Outline:      message(out.Outline, outlineOut),
	}
}

func thumbIn(req *knitmathv1.PlanThumbRequest) hand.ThumbInput {
	return hand.ThumbInput{
		Gauge:          gaugeIn(req.Gauge),
		HandStitches:   optional(req.HandStitches, countIn),
		HandCm:         req.HandCm,
		HandSize:       hand.Size(req.HandSize),
		EasePercent:    req.EasePercent,
		StitchRule:     ruleIn(req.StitchRule),
		Gusset:         hand.Gusset(req.Gusset),
		GussetStitches: optional(req.GussetStitches, countIn),
		StartStitches:  optional(req.StartStitches, countIn),
		EveryRounds:    optional(req.EveryRounds, countIn),
		GussetRounds:   optional(req.GussetRounds, countIn),
		GussetCm:       req.GussetCm,
		BesideStitches: optional(req.BesideStitches, countIn),
		HoldStitches:   optional(req.HoldStitches, countIn),
		GapStitches:    optional(req.GapStitches, countIn),
		PalmStitches:   optional(req.PalmStitches, countIn),
		LengthRounds:   optional(req.LengthRounds, countIn),
		LengthCm:       req.LengthCm,
		DisplayUnit:    measure.DisplayUnit(req.DisplayUnit),
		WithOutline:    req.WithOutline,
	}
}

func thumbOut(out hand.Thumb) *knitmathv1.PlanThumbResponse {
	return &knitmathv1.PlanThumbResponse{
		HandStitches:   countOut(out.HandStitches),
		MittenCm:       out.MittenCm,
		GussetStitches: countOut(out.GussetStitches),
		GussetRounds:   countOut(out.GussetRounds),
		GussetCm:       out.GussetCm,
		HoldStitches:   countOut(out.HoldStitches),
		GapStitches:    countOut(out.GapStitches),
		AfterStitches:  countOut(out.AfterStitches),
		HandRounds:     each(out.HandRounds, handRoundOut),
		ThumbStitches:  countOut(out.ThumbStitches),
		ThumbCm:        out.ThumbCm,
		LengthRounds:   countOut(out.LengthRounds),
		LengthCm:       out.LengthCm,
		ThumbRounds:    each(out.ThumbRounds, closingRoundOut),
		EndStitches:    countOut(out.EndStitches),
		Summary:        out.Summary(),
		Directions:     out.Directions(),
		Notices:        each(out.Notices, noticeOut),
		Sources:        sourcesOut(out.Sources()),
		Outline:        message(out.Outline, outlineOut),
	}
}

func handRoundOut(r hand.HandRound) *knitmathv1.HandRound {
	return &knitmathv1.HandRound{
		RoundNumber: countOut(r.RoundNumber),
		Right:       instructionOut(r.Right),
		Left:        instructionOut(r.Left),
	}
}
