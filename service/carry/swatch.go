package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/swatch"
	"example.com/knitmath/knitmath/yarn"
)

func swatchIn(req *knitmathv1.ComputeGaugeRequest) swatch.Input {
	return swatch.Input{
		StitchesBefore: each(req.StitchesBefore, readingIn),
		RowsBefore:     each(req.RowsBefore, readingIn),
		StitchesAfter:  each(req.StitchesAfter, readingIn),
		RowsAfter:      each(req.RowsAfter, readingIn),
		OverCm:         req.OverCm,
		WidthCm:        req.WidthCm,
		HeightCm:       req.HeightCm,
		NeedleMm:       req.NeedleMm,
		DisplayUnit:    measure.DisplayUnit(req.DisplayUnit),
	}
}

func readingIn(r *knitmathv1.GaugeReading) swatch.Reading {
	return swatch.Reading{Count: r.GetCount(), OverCm: r.OverCm, Place: r.GetPlace()}
}

func swatchOut(out swatch.Result) *knitmathv1.ComputeGaugeResponse {
	return &knitmathv1.ComputeGaugeResponse{
		Gauge:               message(out.Gauge, gaugeOut),
		OverCm:              out.OverCm,
		StitchesBefore:      message(out.StitchesBefore, statisticsOut),
		RowsBefore:          message(out.RowsBefore, statisticsOut),
		StitchesAfter:       message(out.StitchesAfter, statisticsOut),
		RowsAfter:           message(out.RowsAfter, statisticsOut),
		WidthChangePercent:  out.WidthChangePercent,
		LengthChangePercent: out.LengthChangePercent,
		Width:               message(out.Width, consequenceOut),
		Height:              message(out.Height, consequenceOut),
		YarnCategories:      each(out.YarnCategories, categoryOut),
		Needle:              message(out.Needle, needleOut),
		Summary:             out.Summary(),
		Directions:          out.Directions(),
		Notices:             each(out.Notices, noticeOut),
		Sources:             sourcesOut(out.Sources()),
	}
}

func statisticsOut(s swatch.Statistics) *knitmathv1.GaugeStatistics {
	return &knitmathv1.GaugeStatistics{
		ReadingCount:      countOut(s.ReadingCount),
		Mean:              s.Mean,
		StandardDeviation: s.StandardDeviation,
		HalfWidth_95:      s.HalfWidth95,
	}
}

func consequenceOut(s swatch.SizeConsequence) *knitmathv1.SizeConsequence {
	return &knitmathv1.SizeConsequence{
		AskedCm:    s.AskedCm,
		Count:      countOut(s.Count),
		SizeCm:     s.SizeCm,
		SmallestCm: s.SmallestCm,
		LargestCm:  s.LargestCm,
	}
}

func categoryOut(c yarn.Category) *knitmathv1.YarnCategory {
	return &knitmathv1.YarnCategory{
		Category:     countOut(c.Category),
		Name:         c.Name,
		LowStitches:  optional(c.LowStitches, countOut),
		HighStitches: countOut(c.HighStitches),
		LowNeedleMm:  c.LowNeedleMm,
		HighNeedleMm: c.HighNeedleMm,
	}
}

func needleOut(n swatch.NeedleSize) *knitmathv1.NeedleSize {
	return &knitmathv1.NeedleSize{Mm: n.Mm, Us: n.US, Uk: n.UK, Japanese: n.Japanese, Disputed: n.Disputed}
}
