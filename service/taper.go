package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath"
)

func taperIn(req *knitmathv1.PlanTaperRequest) knitmath.TaperInput {
	return knitmath.TaperInput{
		StartCount:       countIn(req.StartCount),
		EndCount:         countIn(req.EndCount),
		RowCount:         optional(req.RowCount, countIn),
		HeightCm:         req.HeightCm,
		Gauge:            gaugeIn(req.Gauge),
		Construction:     knitmath.Construction(req.Construction),
		Edges:            knitmath.ShapedEdges(req.Edges),
		ChangePerEdge:    optional(req.ChangePerEdge, countIn),
		EdgeCount:        optional(req.EdgeCount, countIn),
		ShapingRows:      knitmath.ShapingRows(req.ShapingRows),
		FirstSide:        knitmath.Side(req.FirstSide),
		PlainBeforeCount: optional(req.PlainBeforeCount, countIn),
		PlainAfterCount:  optional(req.PlainAfterCount, countIn),
		Order:            knitmath.TaperOrder(req.Order),
		DisplayUnit:      knitmath.DisplayUnit(req.DisplayUnit),
		WithOutline:      req.WithOutline,
	}
}

func taperOut(out knitmath.Taper) *knitmathv1.PlanTaperResponse {
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

func intervalOut(r knitmath.IntervalRun) *knitmathv1.IntervalRun {
	return &knitmathv1.IntervalRun{EveryRows: countOut(r.EveryRows), Times: countOut(r.Times)}
}

func shapingRowOut(r knitmath.ShapingRow) *knitmathv1.ShapingRow {
	return &knitmathv1.ShapingRow{
		RowNumber: countOut(r.RowNumber),
		Side:      knitmathv1.Side(r.Side),
		EndCount:  countOut(r.EndCount),
	}
}
