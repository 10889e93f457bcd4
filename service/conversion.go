package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

func conversionIn(req *knitmathv1.ConvertGaugeRequest) gauge.ConversionInput {
	return gauge.ConversionInput{
		PatternGauge:  gaugeIn(req.PatternGauge),
		OwnGauge:      gaugeIn(req.OwnGauge),
		Items:         each(req.Items, patternCountIn),
		Sizes:         each(req.Sizes, printedSizeIn),
		WantedWidthCm: req.WantedWidthCm,
		DisplayUnit:   measure.DisplayUnit(req.DisplayUnit),
	}
}

func patternCountIn(c *knitmathv1.PatternCount) gauge.PatternCount {
	return gauge.PatternCount{
		Name:  c.GetName(),
		Kind:  gauge.CountKind(c.GetKind()),
		Count: countIn(c.GetCount()),
		Rule:  ruleIn(c.GetRule()),
	}
}

func printedSizeIn(s *knitmathv1.PrintedSize) gauge.PrintedSize {
	return gauge.PrintedSize{Name: s.GetName(), WidthCm: s.GetWidthCm(), HeightCm: s.HeightCm}
}

func conversionOut(out gauge.Conversion) *knitmathv1.ConvertGaugeResponse {
	return &knitmathv1.ConvertGaugeResponse{
		Items:               each(out.Items, convertedOut),
		WidthChangePercent:  out.WidthChangePercent,
		LengthChangePercent: out.LengthChangePercent,
		Sizes:               each(out.Sizes, outcomeOut),
		FollowIndex:         optional(out.FollowIndex, countOut),
		Summary:             out.Summary(),
		Notices:             each(out.Notices, noticeOut),
		Sources:             each(out.Sources(), sourceOut),
	}
}

func convertedOut(c gauge.ConvertedCount) *knitmathv1.ConvertedCount {
	return &knitmathv1.ConvertedCount{
		Name:         c.Name,
		Kind:         knitmathv1.CountKind(c.Kind),
		PrintedCount: countOut(c.PrintedCount),
		Fitted:       fittedOut(c.Fitted),
		AsWrittenCm:  c.AsWrittenCm,
	}
}

func outcomeOut(s gauge.SizeOutcome) *knitmathv1.SizeOutcome {
	return &knitmathv1.SizeOutcome{
		Name:         s.Name,
		WidthCm:      s.WidthCm,
		DifferenceCm: s.DifferenceCm,
		HeightCm:     s.HeightCm,
	}
}
