package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/neck"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
)

// neckService answers NeckService.
type neckService struct {
	knitmathv1.UnimplementedNeckServiceServer
}

func (neckService) PlanNeckline(ctx context.Context, req *knitmathv1.PlanNecklineRequest) (*knitmathv1.PlanNecklineResponse, error) {
	return answer(ctx, req, necklineIn, neck.PlanNeckline, necklineOut)
}

func necklineIn(req *knitmathv1.PlanNecklineRequest) neck.Input {
	return neck.Input{
		Gauge:                gaugeIn(req.Gauge),
		Shape:                neck.Shape(req.Shape),
		WidthStitches:        optional(req.WidthStitches, countIn),
		WidthCm:              req.WidthCm,
		NeckStitches:         optional(req.NeckStitches, countIn),
		NeckCm:               req.NeckCm,
		ShoulderStitches:     optional(req.ShoulderStitches, countIn),
		ShoulderCm:           req.ShoulderCm,
		WidthRule:            ruleIn(req.WidthRule),
		NeckRule:             ruleIn(req.NeckRule),
		FrontDepthRows:       optional(req.FrontDepthRows, countIn),
		FrontDepthCm:         req.FrontDepthCm,
		BackDepthRows:        optional(req.BackDepthRows, countIn),
		BackDepthCm:          req.BackDepthCm,
		FrontCentreStitches:  optional(req.FrontCentreStitches, countIn),
		BackCentreStitches:   optional(req.BackCentreStitches, countIn),
		Centre:               neck.Centre(req.Centre),
		ShoulderSlopeRows:    optional(req.ShoulderSlopeRows, countIn),
		ShoulderSlopeCm:      req.ShoulderSlopeCm,
		ShoulderSlopeDegrees: req.ShoulderSlopeDegrees,
		ShoulderMethod:       neck.ShoulderMethod(req.ShoulderMethod),
		TurnMethod:           shortrow.TurnMethod(req.TurnMethod),
		RowChoice:            shaping.RowChoice(req.RowChoice),
		EdgeStitches:         optional(req.EdgeStitches, countIn),
		ToleranceStitches:    req.ToleranceStitches,
		FrontWidthStitches:   optional(req.FrontWidthStitches, countIn),
		FrontWidthCm:         req.FrontWidthCm,
		ArmholeRows:          optional(req.ArmholeRows, countIn),
		ArmholeSteps:         each(req.ArmholeSteps, armholeStepIn),
		FrontArmholeSteps:    each(req.FrontArmholeSteps, armholeStepIn),
		StrapStitches:        optional(req.StrapStitches, countIn),
		BandGauge:            gaugeIn(req.BandGauge),
		BandRule:             ruleIn(req.BandRule),
		HeadCm:               req.HeadCm,
		BodyCm:               req.BodyCm,
		StretchRatio:         req.StretchRatio,
		DisplayUnit:          measure.DisplayUnit(req.DisplayUnit),
		WithOutline:          req.WithOutline,
	}
}

func armholeStepIn(s *knitmathv1.ArmholeStep) neck.ArmholeStep {
	return neck.ArmholeStep{RowNumber: countIn(s.RowNumber), Stitches: countIn(s.Stitches), BoundOff: s.BoundOff}
}

func necklineOut(out neck.Neckline) *knitmathv1.PlanNecklineResponse {
	return &knitmathv1.PlanNecklineResponse{
		WidthStitches:        countOut(out.WidthStitches),
		NeckStitches:         countOut(out.NeckStitches),
		ShoulderStitches:     countOut(out.ShoulderStitches),
		WidthCm:              out.WidthCm,
		NeckCm:               out.NeckCm,
		ShoulderCm:           out.ShoulderCm,
		ShoulderStepStitches: each(out.ShoulderStepStitches, countOut),
		SlopeRows:            countOut(out.SlopeRows),
		SlopeCm:              out.SlopeCm,
		SlopeDegrees:         out.SlopeDegrees,
		Front:                neckPieceOut(out.Front),
		Back:                 neckPieceOut(out.Back),
		Sections:             each(out.Sections, neckSectionOut),
		PickedUpStitches:     countOut(out.PickedUpStitches),
		WantedStitches:       out.WantedStitches,
		OpeningCm:            out.OpeningCm,
		StretchedCm:          out.StretchedCm,
		HeadCm:               out.HeadCm,
		GoesOverHead:         out.GoesOverHead,
		Summary:              out.Summary(),
		Directions:           out.Directions(),
		Notices:              each(out.Notices, noticeOut),
		Sources:              sourcesOut(out.Sources()),
		Outline:              message(out.Outline, outlineOut),
	}
}

func neckPieceOut(p neck.Piece) *knitmathv1.NeckPiece {
	return &knitmathv1.NeckPiece{
		DepthRows:                 countOut(p.DepthRows),
		SecondSideDepthRows:       countOut(p.SecondSideDepthRows),
		DepthCm:                   p.DepthCm,
		StartStitches:             countOut(p.StartStitches),
		NeckStitches:              countOut(p.NeckStitches),
		CentreStitches:            countOut(p.CentreStitches),
		NeckRowNumber:             countOut(p.NeckRowNumber),
		SlopeRowNumber:            countOut(p.SlopeRowNumber),
		HeightRows:                countOut(p.HeightRows),
		Steps:                     each(p.Steps, neckStepOut),
		Rows:                      each(p.Rows, neckRowOut),
		EdgeCm:                    p.EdgeCm,
		GreatestDepartureStitches: p.GreatestDepartureStitches,
		LeastDepartureStitches:    p.LeastDepartureStitches,
		Effort:                    countOut(p.Effort),
	}
}

func neckStepOut(s neck.Step) *knitmathv1.NeckStep {
	return &knitmathv1.NeckStep{
		FirstSideRowNumber:  countOut(s.FirstSideRowNumber),
		SecondSideRowNumber: countOut(s.SecondSideRowNumber),
		Stitches:            countOut(s.Stitches),
		BoundOff:            s.BoundOff,
	}
}

func neckRowOut(r neck.Row) *knitmathv1.NeckRow {
	return &knitmathv1.NeckRow{
		RowNumber:   countOut(r.RowNumber),
		Part:        knitmathv1.NeckPart(r.Part),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}

func neckSectionOut(s neck.Section) *knitmathv1.NeckSection {
	return &knitmathv1.NeckSection{
		Place:          knitmathv1.NeckSectionPlace(s.Place),
		Stitches:       countOut(s.Stitches),
		WantedStitches: s.WantedStitches,
		LengthCm:       s.LengthCm,
		EdgeRows:       countOut(s.EdgeRows),
		LiveStitches:   countOut(s.LiveStitches),
	}
}
