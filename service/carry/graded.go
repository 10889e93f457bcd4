package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

func gradedTaperIn(req *knitmathv1.PlanGradedTaperRequest) shaping.GradedTaperInput {
	return shaping.GradedTaperInput{
		Sizes:              each(req.Sizes, taperSizeIn),
		Gauge:              gaugeIn(req.Gauge),
		Construction:       stitch.Construction(req.Construction),
		Edges:              shaping.ShapedEdges(req.Edges),
		EdgeChangeStitches: optional(req.EdgeChangeStitches, countIn),
		EdgeStitches:       optional(req.EdgeStitches, countIn),
		RowChoice:          shaping.RowChoice(req.RowChoice),
		FirstSide:          stitch.Side(req.FirstSide),
		EvenBeforeRows:     optional(req.EvenBeforeRows, countIn),
		EvenAfterRows:      optional(req.EvenAfterRows, countIn),
		ToleranceStitches:  req.ToleranceStitches,
		DisplayUnit:        measure.DisplayUnit(req.DisplayUnit),
		WithOutline:        req.WithOutline,
	}
}

// taperSizeIn carries a size; one that is null in a list is an empty one.
func taperSizeIn(s *knitmathv1.TaperSize) shaping.TaperSize {
	if s == nil {
		return shaping.TaperSize{}
	}
	return shaping.TaperSize{
		Name:          s.Name,
		StartStitches: countIn(s.StartStitches),
		EndStitches:   countIn(s.EndStitches),
		HeightRows:    optional(s.HeightRows, countIn),
		HeightCm:      s.HeightCm,
	}
}

func gradedTaperOut(out shaping.GradedTaper) *knitmathv1.PlanGradedTaperResponse {
	return &knitmathv1.PlanGradedTaperResponse{
		RowChangeStitches: countOut(out.RowChangeStitches),
		Runs:              each(out.Runs, gradedRunOut),
		RightSideRow:      instructionOut(out.RightSideRow),
		OppositeRow:       message(out.OppositeRow, instructionOut),
		Sizes:             each(out.Sizes, sizedTaperOut),
		Effort:            countOut(out.Effort),
		Summary:           out.Summary(),
		Directions:        out.Directions(),
		Notices:           each(out.Notices, noticeOut),
		Sources:           sourcesOut(out.Sources()),
		Outline:           message(out.Outline, outlineOut),
	}
}

func gradedRunOut(r schedule.GradedRun) *knitmathv1.GradedIntervalRun {
	return &knitmathv1.GradedIntervalRun{
		EveryRows: each(r.EveryRows, countOut), Times: each(r.Times, countOut), AlternateRows: each(r.AlternateRows, countOut)}
}

func sizedTaperOut(s shaping.SizedTaper) *knitmathv1.SizedTaper {
	return &knitmathv1.SizedTaper{
		Name:                      s.Name,
		StartStitches:             countOut(s.StartStitches),
		EndStitches:               countOut(s.EndStitches),
		ShapingRows:               countOut(s.ShapingRows),
		HeightRows:                countOut(s.HeightRows),
		FirstShapingRowNumber:     optional(s.FirstShapingRowNumber, countOut),
		Intervals:                 each(s.Intervals, intervalOut),
		EvenAfterRows:             countOut(s.EvenAfterRows),
		GreatestDepartureStitches: s.GreatestDepartureStitches,
		LeastDepartureStitches:    s.LeastDepartureStitches,
		Effort:                    countOut(s.Effort),
		HeightCm:                  s.HeightCm,
		StartWidthCm:              s.StartWidthCm,
		EndWidthCm:                s.EndWidthCm,
	}
}
