package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath"
)

func shapedSideIn(req *knitmathv1.PlanShapedSideRequest) knitmath.ShapedSideInput {
	return knitmath.ShapedSideInput{
		StartCount:    countIn(req.StartCount),
		Points:        each(req.Points, sidePointIn),
		Gauge:         gaugeIn(req.Gauge),
		Construction:  knitmath.Construction(req.Construction),
		Edges:         knitmath.ShapedEdges(req.Edges),
		ChangePerEdge: optional(req.ChangePerEdge, countIn),
		EdgeCount:     optional(req.EdgeCount, countIn),
		ShapingRows:   knitmath.ShapingRows(req.ShapingRows),
		FirstSide:     knitmath.Side(req.FirstSide),
		Order:         knitmath.TaperOrder(req.Order),
		DisplayUnit:   knitmath.DisplayUnit(req.DisplayUnit),
		WithOutline:   req.WithOutline,
	}
}

// sidePointIn carries a point; one that is null in a list is an empty one.
func sidePointIn(p *knitmathv1.SidePoint) knitmath.SidePoint {
	if p == nil {
		return knitmath.SidePoint{}
	}
	return knitmath.SidePoint{
		RowCount:    optional(p.RowCount, countIn),
		HeightCm:    p.HeightCm,
		StitchCount: countIn(p.StitchCount),
	}
}

func shapedSideOut(out knitmath.ShapedSide) *knitmathv1.PlanShapedSideResponse {
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

func sideStretchOut(s knitmath.SideStretch) *knitmathv1.SideStretch {
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
