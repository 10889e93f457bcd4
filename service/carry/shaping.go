package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// shapingService answers ShapingService.
type shapingService struct {
	knitmathv1.UnimplementedShapingServiceServer
}

func (shapingService) PlanEvenSpacing(ctx context.Context, req *knitmathv1.PlanEvenSpacingRequest) (*knitmathv1.PlanEvenSpacingResponse,
	error) {
	return answer(ctx, req, spacingIn, shaping.PlanEvenSpacing, spacingOut)
}

func (shapingService) PlanTaper(ctx context.Context, req *knitmathv1.PlanTaperRequest) (*knitmathv1.PlanTaperResponse, error) {
	return answer(ctx, req, taperIn, shaping.PlanTaper, taperOut)
}

func (shapingService) PlanGradedTaper(
	ctx context.Context, req *knitmathv1.PlanGradedTaperRequest,
) (*knitmathv1.PlanGradedTaperResponse, error) {
	return answer(ctx, req, gradedTaperIn, shaping.PlanGradedTaper, gradedTaperOut)
}

func (shapingService) PlanShapedSide(
	ctx context.Context, req *knitmathv1.PlanShapedSideRequest,
) (*knitmathv1.PlanShapedSideResponse, error) {
	return answer(ctx, req, shapedSideIn, shaping.PlanShapedSide, shapedSideOut)
}

func spacingIn(req *knitmathv1.PlanEvenSpacingRequest) shaping.EvenSpacingInput {
	return shaping.EvenSpacingInput{
		StartStitches:     countIn(req.StartStitches),
		EndStitches:       countIn(req.EndStitches),
		Operation:         operationIn(req.Operation),
		Construction:      stitch.Construction(req.Construction),
		EdgeStitches:      optional(req.EdgeStitches, countIn),
		Spread:            shaping.GapSpread(req.Spread),
		ToleranceStitches: req.ToleranceStitches,
		WithOutline:       req.WithOutline,
	}
}

func spacingOut(out shaping.EvenSpacing) *knitmathv1.PlanEvenSpacingResponse {
	return &knitmathv1.PlanEvenSpacingResponse{
		Operation:                 operationOut(out.Operation),
		ChangeCount:               countOut(out.ChangeCount),
		PlainStitches:             countOut(out.PlainStitches),
		FirstGapStitches:          countOut(out.FirstGapStitches),
		Gaps:                      each(out.Gaps, gapRunOut),
		LastGapStitches:           countOut(out.LastGapStitches),
		Instruction:               instructionOut(out.Instruction),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		LeastDepartureStitches:    out.LeastDepartureStitches,
		Effort:                    countOut(out.Effort),
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func gapRunOut(g spread.GapRun) *knitmathv1.GapRun {
	return &knitmathv1.GapRun{Stitches: countOut(g.Stitches), Times: countOut(g.Times)}
}

func taperIn(req *knitmathv1.PlanTaperRequest) shaping.TaperInput {
	return shaping.TaperInput{
		StartStitches:      countIn(req.StartStitches),
		EndStitches:        countIn(req.EndStitches),
		HeightRows:         optional(req.HeightRows, countIn),
		HeightCm:           req.HeightCm,
		Gauge:              gaugeIn(req.Gauge),
		Construction:       stitch.Construction(req.Construction),
		Edges:              shaping.ShapedEdges(req.Edges),
		EdgeChangeStitches: optional(req.EdgeChangeStitches, countIn),
		EdgeStitches:       optional(req.EdgeStitches, countIn),
		RowChoice:          shaping.RowChoice(req.RowChoice),
		FirstSide:          stitch.Side(req.FirstSide),
		EvenBeforeRows:     optional(req.EvenBeforeRows, countIn),
		EvenAfterRows:      optional(req.EvenAfterRows, countIn),
		Spread:             shaping.IntervalSpread(req.Spread),
		ToleranceStitches:  req.ToleranceStitches,
		DisplayUnit:        measure.DisplayUnit(req.DisplayUnit),
		WithOutline:        req.WithOutline,
	}
}

func taperOut(out shaping.Taper) *knitmathv1.PlanTaperResponse {
	return &knitmathv1.PlanTaperResponse{
		ShapingRows:               countOut(out.ShapingRows),
		RowChangeStitches:         countOut(out.RowChangeStitches),
		HeightRows:                countOut(out.HeightRows),
		FirstShapingRowNumber:     countOut(out.FirstShapingRowNumber),
		Intervals:                 each(out.Intervals, intervalOut),
		EvenAfterRows:             countOut(out.EvenAfterRows),
		Rows:                      each(out.Rows, shapingRowOut),
		RightSideRow:              message(out.RightSideRow, instructionOut),
		WrongSideRow:              message(out.WrongSideRow, instructionOut),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		LeastDepartureStitches:    out.LeastDepartureStitches,
		Effort:                    countOut(out.Effort),
		HeightCm:                  out.HeightCm,
		StartWidthCm:              out.StartWidthCm,
		EndWidthCm:                out.EndWidthCm,
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func intervalOut(r schedule.Run) *knitmathv1.IntervalRun {
	return &knitmathv1.IntervalRun{EveryRows: each(r.EveryRows, countOut), Times: countOut(r.Times)}
}

func shapingRowOut(r shaping.ShapingRow) *knitmathv1.ShapingRow {
	return &knitmathv1.ShapingRow{
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		EndStitches: countOut(r.EndStitches),
	}
}

func shapedSideIn(req *knitmathv1.PlanShapedSideRequest) shaping.ShapedSideInput {
	return shaping.ShapedSideInput{
		StartStitches:      countIn(req.StartStitches),
		Points:             each(req.Points, sidePointIn),
		Gauge:              gaugeIn(req.Gauge),
		Construction:       stitch.Construction(req.Construction),
		Edges:              shaping.ShapedEdges(req.Edges),
		EdgeChangeStitches: optional(req.EdgeChangeStitches, countIn),
		EdgeStitches:       optional(req.EdgeStitches, countIn),
		RowChoice:          shaping.RowChoice(req.RowChoice),
		FirstSide:          stitch.Side(req.FirstSide),
		Spread:             shaping.IntervalSpread(req.Spread),
		ToleranceStitches:  req.ToleranceStitches,
		DisplayUnit:        measure.DisplayUnit(req.DisplayUnit),
		WithOutline:        req.WithOutline,
	}
}

// sidePointIn carries a point; one that is null in a list is an empty one.
func sidePointIn(p *knitmathv1.SidePoint) shaping.SidePoint {
	if p == nil {
		return shaping.SidePoint{}
	}
	return shaping.SidePoint{
		HeightRows: optional(p.HeightRows, countIn),
		HeightCm:   p.HeightCm,
		Stitches:   countIn(p.Stitches),
	}
}

func shapedSideOut(out shaping.ShapedSide) *knitmathv1.PlanShapedSideResponse {
	return &knitmathv1.PlanShapedSideResponse{
		HeightRows:                countOut(out.HeightRows),
		Stretches:                 each(out.Stretches, sideStretchOut),
		Rows:                      each(out.Rows, shapingRowOut),
		NarrowestStitches:         countOut(out.NarrowestStitches),
		WidestStitches:            countOut(out.WidestStitches),
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		LeastDepartureStitches:    out.LeastDepartureStitches,
		Effort:                    countOut(out.Effort),
		HeightCm:                  out.HeightCm,
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func sideStretchOut(s shaping.SideStretch) *knitmathv1.SideStretch {
	return &knitmathv1.SideStretch{
		FirstRowNumber:    countOut(s.FirstRowNumber),
		LastRowNumber:     countOut(s.LastRowNumber),
		StartStitches:     countOut(s.StartStitches),
		EndStitches:       countOut(s.EndStitches),
		ShapingRows:       countOut(s.ShapingRows),
		RowChangeStitches: countOut(s.RowChangeStitches),
		Intervals:         each(s.Intervals, intervalOut),
		RightSideRow:      message(s.RightSideRow, instructionOut),
		WrongSideRow:      message(s.WrongSideRow, instructionOut),
	}
}
