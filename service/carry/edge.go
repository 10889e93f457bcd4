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

func (edgeService) PlanPickUp(_ context.Context, req *knitmathv1.PlanPickUpRequest) (*knitmathv1.PlanPickUpResponse, error) {
	return answer(req, pickUpIn, edge.PlanPickUp, pickUpOut)
}

func (edgeService) PlanButtonholes(_ context.Context, req *knitmathv1.PlanButtonholesRequest) (*knitmathv1.PlanButtonholesResponse, error) {
	return answer(req, buttonholesIn, edge.PlanButtonholes, buttonholesOut)
}

func pickUpIn(req *knitmathv1.PlanPickUpRequest) edge.PickUpInput {
	return edge.PickUpInput{
		RowCount:      optional(req.RowCount, countIn),
		LengthCm:      req.LengthCm,
		Gauge:         gaugeIn(req.Gauge),
		BandGauge:     gaugeIn(req.BandGauge),
		Rule:          ruleIn(req.Rule),
		LargestNumber: optional(req.LargestNumber, countIn),
		Order:         edge.PickUpOrder(req.Order),
		DisplayUnit:   measure.DisplayUnit(req.DisplayUnit),
		WithOutline:   req.WithOutline,
	}
}

func pickUpOut(out edge.PickUp) *knitmathv1.PlanPickUpResponse {
	return &knitmathv1.PlanPickUpResponse{
		RowCount:                  countOut(out.RowCount),
		Stitches:                  fittedOut(out.Stitches),
		Ratio:                     pickUpRatioOut(out.Ratio),
		SkippedCount:              countOut(out.SkippedCount),
		DoubledCount:              countOut(out.DoubledCount),
		Instruction:               instructionOut(out.Instruction),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		Directions:                out.Directions,
		Summary:                   out.Summary(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   each(out.Sources(), sourceOut),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func pickUpRatioOut(r edge.PickUpRatio) *knitmathv1.PickUpRatio {
	return &knitmathv1.PickUpRatio{
		StitchCount:   countOut(r.StitchCount),
		RowCount:      countOut(r.RowCount),
		Text:          r.Text,
		ErrorPercent:  r.ErrorPercent,
		ErrorStitches: r.ErrorStitches,
	}
}

func buttonholesIn(req *knitmathv1.PlanButtonholesRequest) edge.ButtonholesInput {
	return edge.ButtonholesInput{
		Direction:       edge.BandDirection(req.Direction),
		StitchCount:     countIn(req.StitchCount),
		RowCount:        countIn(req.RowCount),
		HoleCount:       countIn(req.HoleCount),
		HoleStitchCount: optional(req.HoleStitchCount, countIn),
		HoleCm:          req.HoleCm,
		FirstCount:      optional(req.FirstCount, countIn),
		FirstCm:         req.FirstCm,
		LastCount:       optional(req.LastCount, countIn),
		LastCm:          req.LastCm,
		Gauge:           gaugeIn(req.Gauge),
		HoleRow:         optional(req.HoleRow, countIn),
		HoleRows:        shaping.ShapingRows(req.HoleRows),
		DisplayUnit:     measure.DisplayUnit(req.DisplayUnit),
		WithOutline:     req.WithOutline,
	}
}

func buttonholesOut(out edge.Buttonholes) *knitmathv1.PlanButtonholesResponse {
	return &knitmathv1.PlanButtonholesResponse{
		StitchCount:     countOut(out.StitchCount),
		RowCount:        countOut(out.RowCount),
		HoleStitchCount: countOut(out.HoleStitchCount),
		FirstCount:      countOut(out.FirstCount),
		GapCounts:       each(out.GapCounts, countOut),
		LastCount:       countOut(out.LastCount),
		Holes:           each(out.Holes, buttonholeOut),
		Rows:            each(out.Rows, bandRowOut),
		Directions:      out.Directions,
		Summary:         out.Summary(),
		Notices:         each(out.Notices, noticeOut),
		Sources:         each(out.Sources(), sourceOut),
		Outline:         message(out.Outline, outlineOut),
	}
}

func buttonholeOut(h edge.Buttonhole) *knitmathv1.Buttonhole {
	return &knitmathv1.Buttonhole{
		FirstStitch: countOut(h.FirstStitch),
		LastStitch:  countOut(h.LastStitch),
		BindOffRow:  countOut(h.BindOffRow),
		CastOnRow:   countOut(h.CastOnRow),
		MiddleCm:    h.MiddleCm,
	}
}

func bandRowOut(r edge.BandRow) *knitmathv1.BandRow {
	return &knitmathv1.BandRow{
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}
