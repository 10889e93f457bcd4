package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

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
