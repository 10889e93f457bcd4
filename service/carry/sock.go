package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/sock"
)

// sockService answers SockService.
type sockService struct {
	knitmathv1.UnimplementedSockServiceServer
}

func (sockService) PlanHeel(ctx context.Context, req *knitmathv1.PlanHeelRequest) (*knitmathv1.PlanHeelResponse, error) {
	return answer(ctx, req, heelIn, sock.PlanHeel, heelOut)
}

func (sockService) PlanToe(ctx context.Context, req *knitmathv1.PlanToeRequest) (*knitmathv1.PlanToeResponse, error) {
	return answer(ctx, req, toeIn, sock.PlanToe, toeOut)
}

func heelIn(req *knitmathv1.PlanHeelRequest) sock.HeelInput {
	return sock.HeelInput{
		Kind:                sock.HeelKind(req.Kind),
		Direction:           sock.Direction(req.Direction),
		RoundStitches:       optional(req.RoundStitches, countIn),
		FootCircumferenceCm: req.FootCircumferenceCm,
		EasePercent:         req.EasePercent,
		Gauge:               gaugeIn(req.Gauge),
		StitchRule:          ruleIn(req.StitchRule),
		HeelStitches:        optional(req.HeelStitches, countIn),
		FlapRows:            optional(req.FlapRows, countIn),
		FlapStitch:          sock.FlapStitch(req.FlapStitch),
		CentreStitches:      optional(req.CentreStitches, countIn),
		PickUpStitches:      optional(req.PickUpStitches, countIn),
		GussetEveryRounds:   optional(req.GussetEveryRounds, countIn),
		SuccessiveRounds:    optional(req.SuccessiveRounds, countIn),
		TurnMethod:          shortrow.TurnMethod(req.TurnMethod),
		CornerStitches:      optional(req.CornerStitches, countIn),
		EndStitches:         optional(req.EndStitches, countIn),
		FootLengthCm:        req.FootLengthCm,
		LengthEaseCm:        req.LengthEaseCm,
		DisplayUnit:         measure.DisplayUnit(req.DisplayUnit),
		WithOutline:         req.WithOutline,
	}
}

func heelOut(out sock.Heel) *knitmathv1.PlanHeelResponse {
	return &knitmathv1.PlanHeelResponse{
		Stitches:              message(out.Stitches, fittedOut),
		RoundStitches:         countOut(out.RoundStitches),
		HeelStitches:          countOut(out.HeelStitches),
		InstepStitches:        countOut(out.InstepStitches),
		FlapRows:              optional(out.FlapRows, countOut),
		CentreStitches:        optional(out.CentreStitches, countOut),
		TurnedStitches:        optional(out.TurnedStitches, countOut),
		PickUpStitches:        optional(out.PickUpStitches, countOut),
		GreatestRoundStitches: optional(out.GreatestRoundStitches, countOut),
		GussetDecreaseRounds:  optional(out.GussetDecreaseRounds, countOut),
		GussetIncreaseRounds:  optional(out.GussetIncreaseRounds, countOut),
		GussetRounds:          optional(out.GussetRounds, countOut),
		ClosingStitches:       optional(out.ClosingStitches, countOut),
		EndStitches:           optional(out.EndStitches, countOut),
		DepthCm:               out.DepthCm,
		GussetCm:              out.GussetCm,
		FootToHeelCm:          out.FootToHeelCm,
		Rows:                  each(out.Rows, heelRowOut),
		Summary:               out.Summary(),
		Directions:            out.Directions(),
		Notices:               each(out.Notices, noticeOut),
		Sources:               sourcesOut(out.Sources()),
		Outline:               message(out.Outline, outlineOut),
	}
}

func heelRowOut(r sock.HeelRow) *knitmathv1.HeelRow {
	return &knitmathv1.HeelRow{
		Part:        knitmathv1.HeelPart(r.Part),
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}

func toeIn(req *knitmathv1.PlanToeRequest) sock.ToeInput {
	return sock.ToeInput{
		Kind:                sock.ToeKind(req.Kind),
		Direction:           sock.Direction(req.Direction),
		RoundStitches:       optional(req.RoundStitches, countIn),
		FootCircumferenceCm: req.FootCircumferenceCm,
		EasePercent:         req.EasePercent,
		Gauge:               gaugeIn(req.Gauge),
		StitchRule:          ruleIn(req.StitchRule),
		FootLengthCm:        req.FootLengthCm,
		LengthEaseCm:        req.LengthEaseCm,
		WedgeCount:          optional(req.WedgeCount, countIn),
		Rates:               each(req.Rates, rateIn),
		MoreEvenRounds:      optional(req.MoreEvenRounds, countIn),
		CentreStitches:      optional(req.CentreStitches, countIn),
		TurnMethod:          shortrow.TurnMethod(req.TurnMethod),
		TipStitches:         optional(req.TipStitches, countIn),
		DisplayUnit:         measure.DisplayUnit(req.DisplayUnit),
		WithOutline:         req.WithOutline,
	}
}

func toeOut(out sock.Toe) *knitmathv1.PlanToeResponse {
	return &knitmathv1.PlanToeResponse{
		Stitches:       message(out.Stitches, fittedOut),
		RoundStitches:  countOut(out.RoundStitches),
		WedgeCount:     optional(out.WedgeCount, countOut),
		DecreaseRounds: optional(out.DecreaseRounds, countOut),
		CentreStitches: optional(out.CentreStitches, countOut),
		TipStitches:    countOut(out.TipStitches),
		LengthRows:     countOut(out.LengthRows),
		LengthCm:       out.LengthCm,
		FootToToeCm:    out.FootToToeCm,
		Rows:           each(out.Rows, toeRowOut),
		Summary:        out.Summary(),
		Directions:     out.Directions(),
		Notices:        each(out.Notices, noticeOut),
		Sources:        sourcesOut(out.Sources()),
		Outline:        message(out.Outline, outlineOut),
	}
}

func toeRowOut(r sock.ToeRow) *knitmathv1.ToeRow {
	return &knitmathv1.ToeRow{
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}
