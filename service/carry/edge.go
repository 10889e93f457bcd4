package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/edge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
)

// edgeService answers EdgeService.
type edgeService struct {
	knitmathv1.UnimplementedEdgeServiceServer
}

func (edgeService) PlanPickUp(ctx context.Context, req *knitmathv1.PlanPickUpRequest) (*knitmathv1.PlanPickUpResponse, error) {
	return answer(ctx, req, pickUpIn, edge.PlanPickUp, pickUpOut)
}

func (edgeService) PlanButtonholes(
	ctx context.Context, req *knitmathv1.PlanButtonholesRequest,
) (*knitmathv1.PlanButtonholesResponse, error) {
	return answer(ctx, req, buttonholesIn, edge.PlanButtonholes, buttonholesOut)
}

func pickUpIn(req *knitmathv1.PlanPickUpRequest) edge.PickUpInput {
	return edge.PickUpInput{
		LengthRows:  optional(req.LengthRows, countIn),
		LengthCm:    req.LengthCm,
		Gauge:       gaugeIn(req.Gauge),
		BandGauge:   gaugeIn(req.BandGauge),
		StitchRule:  ruleIn(req.StitchRule),
		LargestTerm: optional(req.LargestTerm, countIn),
		Spread:      edge.PickUpSpread(req.Spread),
		DisplayUnit: measure.DisplayUnit(req.DisplayUnit),
		WithOutline: req.WithOutline,
	}
}

func pickUpOut(out edge.PickUp) *knitmathv1.PlanPickUpResponse {
	return &knitmathv1.PlanPickUpResponse{
		LengthRows:                countOut(out.LengthRows),
		Stitches:                  fittedOut(out.Stitches),
		Ratio:                     pickUpRatioOut(out.Ratio),
		SkippedRows:               countOut(out.SkippedRows),
		DoubledRows:               countOut(out.DoubledRows),
		Instruction:               instructionOut(out.Instruction),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		Effort:                    countOut(out.Effort),
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func pickUpRatioOut(r edge.PickUpRatio) *knitmathv1.PickUpRatio {
	return &knitmathv1.PickUpRatio{
		Stitches:      countOut(r.Stitches),
		Rows:          countOut(r.Rows),
		Text:          r.Text,
		ErrorPercent:  r.ErrorPercent,
		ErrorStitches: r.ErrorStitches,
	}
}

func buttonholesIn(req *knitmathv1.PlanButtonholesRequest) edge.ButtonholesInput {
	return edge.ButtonholesInput{
		Direction:         edge.BandDirection(req.Direction),
		BandStitches:      countIn(req.BandStitches),
		BandRows:          countIn(req.BandRows),
		HoleCount:         countIn(req.HoleCount),
		HoleStitches:      optional(req.HoleStitches, countIn),
		HoleCm:            req.HoleCm,
		BeforeFirstPlaces: optional(req.BeforeFirstPlaces, countIn),
		BeforeFirstCm:     req.BeforeFirstCm,
		AfterLastPlaces:   optional(req.AfterLastPlaces, countIn),
		AfterLastCm:       req.AfterLastCm,
		Gauge:             gaugeIn(req.Gauge),
		HoleRowNumber:     optional(req.HoleRowNumber, countIn),
		RowChoice:         shaping.RowChoice(req.RowChoice),
		DisplayUnit:       measure.DisplayUnit(req.DisplayUnit),
		WithOutline:       req.WithOutline,
	}
}

func buttonholesOut(out edge.Buttonholes) *knitmathv1.PlanButtonholesResponse {
	return &knitmathv1.PlanButtonholesResponse{
		BandStitches:      countOut(out.BandStitches),
		BandRows:          countOut(out.BandRows),
		HoleStitches:      countOut(out.HoleStitches),
		BeforeFirstPlaces: countOut(out.BeforeFirstPlaces),
		GapPlaces:         each(out.GapPlaces, countOut),
		AfterLastPlaces:   countOut(out.AfterLastPlaces),
		Holes:             each(out.Holes, buttonholeOut),
		Rows:              each(out.Rows, bandRowOut),
		Summary:           out.Summary(),
		Directions:        out.Directions(),
		Notices:           each(out.Notices, noticeOut),
		Sources:           sourcesOut(out.Sources()),
		Outline:           message(out.Outline, outlineOut),
	}
}

func buttonholeOut(h edge.Buttonhole) *knitmathv1.Buttonhole {
	return &knitmathv1.Buttonhole{
		FirstStitchNumber: countOut(h.FirstStitchNumber),
		LastStitchNumber:  countOut(h.LastStitchNumber),
		BindOffRowNumber:  countOut(h.BindOffRowNumber),
		CastOnRowNumber:   countOut(h.CastOnRowNumber),
		MiddleCm:          h.MiddleCm,
	}
}

func bandRowOut(r edge.BandRow) *knitmathv1.BandRow {
	return &knitmathv1.BandRow{
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}
