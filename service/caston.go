package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

func castOnIn(req *knitmathv1.ComputeCastOnRequest) gauge.CastOnInput {
	return gauge.CastOnInput{
		Gauge:       gaugeIn(req.Gauge),
		WidthCm:     req.WidthCm,
		EaseCm:      req.EaseCm,
		EasePercent: req.EasePercent,
		StitchRule:  ruleIn(req.StitchRule),
		HeightCm:    req.HeightCm,
		RowRule:     ruleIn(req.RowRule),
		DisplayUnit: measure.DisplayUnit(req.DisplayUnit),
	}
}

func castOnOut(out gauge.CastOn) *knitmathv1.ComputeCastOnResponse {
	return &knitmathv1.ComputeCastOnResponse{
		Stitches: present(out.HasStitches, out.Stitches, fittedOut),
		Rows:     present(out.HasRows, out.Rows, fittedOut),
		Summary:  out.Summary(),
		Notices:  each(out.Notices, noticeOut),
		Sources:  each(out.Sources(), sourceOut),
	}
}
