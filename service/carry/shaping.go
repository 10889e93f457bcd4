package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// shapingService answers ShapingService.
type shapingService struct {
	knitmathv1.UnimplementedShapingServiceServer
}

func (shapingService) PlanEvenSpacing(_ context.Context, req *knitmathv1.PlanEvenSpacingRequest) (*knitmathv1.PlanEvenSpacingResponse, error) {
	return answer(req, spacingIn, shaping.PlanEvenSpacing, spacingOut)
}

func (shapingService) PlanTaper(_ context.Context, req *knitmathv1.PlanTaperRequest) (*knitmathv1.PlanTaperResponse, error) {
	return answer(req, taperIn, shaping.PlanTaper, taperOut)
}

func (shapingService) PlanShapedSide(_ context.Context, req *knitmathv1.PlanShapedSideRequest) (*knitmathv1.PlanShapedSideResponse, error) {
	return answer(req, shapedSideIn, shaping.PlanShapedSide, shapedSideOut)
}

func spacingIn(req *knitmathv1.PlanEvenSpacingRequest) shaping.EvenSpacingInput {
	return shaping.EvenSpacingInput{
		StartCount:   countIn(req.StartCount),
		EndCount:     countIn(req.EndCount),
		Operation:    operationIn(req.Operation),
		Construction: stitch.Construction(req.Construction),
		EdgeCount:    optional(req.EdgeCount, countIn),
		Order:        shaping.SpacingOrder(req.Order),
		WithOutline:  req.WithOutline,
	}
}

func spacingOut(out shaping.EvenSpacing) *knitmathv1.PlanEvenSpacingResponse {
	return &knitmathv1.PlanEvenSpacingResponse{
		Operation:     operationOut(out.Operation),
		ChangeCount:   countOut(out.ChangeCount),
		PlainCount:    countOut(out.PlainCount),
		FirstGapCount: countOut(out.FirstGapCount),
		Gaps:          each(out.Gaps, gapRunOut),
		LastGapCount:  countOut(out.LastGapCount),
		Instruction:   instructionOut(out.Instruction),
		Summary:       out.Summary(),
		Notices:       each(out.Notices, noticeOut),
		Sources:       each(out.Sources(), sourceOut),
		Outline:       message(out.Outline, outlineOut),
	}
}

func gapRunOut(g spread.GapRun) *knitmathv1.GapRun {
	return &knitmathv1.GapRun{StitchCount: countOut(g.StitchCount), Times: countOut(g.Times)}
}

func taperIn(req *knitmathv1.PlanTaperRequest) shaping.TaperInput {
	return shaping.TaperInput{
		StartCount:       countIn(req.StartCount),
		EndCount:         countIn(req.EndCount),
		RowCount:         optional(req.RowCount, countIn),
		HeightCm:         req.HeightCm,
		Gauge:            gaugeIn(req.Gauge),
		Construction:     stitch.Construction(req.Construction),
		Edges:            shaping.ShapedEdges(req.Edges),
		ChangePerEdge:    optional(req.ChangePerEdge, countIn),
		EdgeCount:        optional(req.EdgeCount, countIn),
		ShapingRows:      shaping.ShapingRows(req.ShapingRows),
		FirstSide:        stitch.Side(req.FirstSide),
		PlainBeforeCount: optional(req.PlainBeforeCount, countIn),
		PlainAfterCount:  optional(req.PlainAfterCount, countIn),
		Order:            shaping.TaperOrder(req.Order),
		DisplayUnit:      measure.DisplayUnit(req.DisplayUnit),
		WithOutline:      req.WithOutline,
	}
}

func taperOut(out shaping.Taper) *knitmathv1.PlanTaperResponse {
	return &knitmathv1.PlanTaperResponse{
		ShapingRowCount:           countOut(out.ShapingRowCount),
		ChangePerRow:              countOut(out.ChangePerRow),
		RowCount:                  countOut(out.RowCount),
		FirstShapingRow:           countOut(out.FirstShapingRow),
		Intervals:                 each(out.Intervals, intervalOut),
		PlainAfterCount:           countOut(out.PlainAfterCount),
		ShapingRows:               each(out.ShapingRows, shapingRowOut),
		RightSideRow:              message(out.RightSideRow, instructionOut),
		WrongSideRow:              message(out.WrongSideRow, instructionOut),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		HeightCm:                  out.HeightCm,
		StartWidthCm:              out.StartWidthCm,
		EndWidthCm:                out.EndWidthCm,
		Directions:                out.Directions,
		Summary:                   out.Summary(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   each(out.Sources(), sourceOut),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func intervalOut(r shaping.IntervalRun) *knitmathv1.IntervalRun {
	return &knitmathv1.IntervalRun{EveryRows: countOut(r.EveryRows), Times: countOut(r.Times)}
}

func shapingRowOut(r shaping.ShapingRow) *knitmathv1.ShapingRow {
	return &knitmathv1.ShapingRow{
		RowNumber: countOut(r.RowNumber),
		Side:      knitmathv1.Side(r.Side),
		EndCount:  countOut(r.EndCount),
	}
}

func shapedSideIn(req *knitmathv1.PlanShapedSideRequest) shaping.ShapedSideInput {
	return shaping.ShapedSideInput{
		StartCount:    countIn(req.StartCount),
		Points:        each(req.Points, sidePointIn),
		Gauge:         gaugeIn(req.Gauge),
		Construction:  stitch.Construction(req.Construction),
		Edges:         shaping.ShapedEdges(req.Edges),
		ChangePerEdge: optional(req.ChangePerEdge, countIn),
		EdgeCount:     optional(req.EdgeCount, countIn),
		ShapingRows:   shaping.ShapingRows(req.ShapingRows),
		FirstSide:     stitch.Side(req.FirstSide),
		Order:         shaping.TaperOrder(req.Order),
		DisplayUnit:   measure.DisplayUnit(req.DisplayUnit),
		WithOutline:   req.WithOutline,
	}
}

// sidePointIn carries a point; one that is null in a list is an empty one.
func sidePointIn(p *knitmathv1.SidePoint) shaping.SidePoint {
	if p == nil {
		return shaping.SidePoint{}
	}
	return shaping.SidePoint{
		RowCount:    optional(p.RowCount, countIn),
		HeightCm:    p.HeightCm,
		StitchCount: countIn(p.StitchCount),
	}
}

func shapedSideOut(out shaping.ShapedSide) *knitmathv1.PlanShapedSideResponse {
	return &knitmathv1.PlanShapedSideResponse{
		RowCount:                  countOut(out.RowCount),
		Stretches:                 each(out.Stretches, sideStretchOut),
		ShapingRows:               each(out.ShapingRows, shapingRowOut),
		NarrowestCount:            countOut(out.NarrowestCount),
		WidestCount:               countOut(out.WidestCount),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		HeightCm:                  out.HeightCm,
		Directions:                out.Directions,
		Summary:                   out.Summary(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   each(out.Sources(), sourceOut),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func sideStretchOut(s shaping.SideStretch) *knitmathv1.SideStretch {
	return &knitmathv1.SideStretch{
		FirstRow:        countOut(s.FirstRow),
		LastRow:         countOut(s.LastRow),
		StartCount:      countOut(s.StartCount),
		EndCount:        countOut(s.EndCount),
		ShapingRowCount: countOut(s.ShapingRowCount),
		ChangePerRow:    countOut(s.ChangePerRow),
		Intervals:       each(s.Intervals, intervalOut),
		RightSideRow:    message(s.RightSideRow, instructionOut),
		WrongSideRow:    message(s.WrongSideRow, instructionOut),
	}
}
