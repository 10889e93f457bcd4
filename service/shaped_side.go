package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

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
