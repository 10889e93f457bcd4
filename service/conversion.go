package service

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath"
)

func conversionIn(req *knitmathv1.ConvertGaugeRequest) knitmath.ConversionInput {
	return knitmath.ConversionInput{
		PatternGauge:  gaugeIn(req.PatternGauge),
		OwnGauge:      gaugeIn(req.OwnGauge),
		Items:         each(req.Items, patternCountIn),
		Sizes:         each(req.Sizes, printedSizeIn),
		WantedWidthCm: req.WantedWidthCm,
		DisplayUnit:   knitmath.DisplayUnit(req.DisplayUnit),
	}
}

func patternCountIn(c *knitmathv1.PatternCount) knitmath.PatternCount {
	return knitmath.PatternCount{
		Name:  c.GetName(),
		Kind:  knitmath.CountKind(c.GetKind()),
		Count: countIn(c.GetCount()),
		Rule:  ruleIn(c.GetRule()),
	}
}

func printedSizeIn(s *knitmathv1.PrintedSize) knitmath.PrintedSize {
	return knitmath.PrintedSize{Name: s.GetName(), WidthCm: s.GetWidthCm(), HeightCm: s.HeightCm}
}

func conversionOut(out knitmath.Conversion) *knitmathv1.ConvertGaugeResponse {
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

func convertedOut(c knitmath.ConvertedCount) *knitmathv1.ConvertedCount {
	return &knitmathv1.ConvertedCount{
		Name:         c.Name,
		Kind:         knitmathv1.CountKind(c.Kind),
		PrintedCount: countOut(c.PrintedCount),
		Fitted:       fittedOut(c.Fitted),
		AsWrittenCm:  c.AsWrittenCm,
	}
}

func outcomeOut(s knitmath.SizeOutcome) *knitmathv1.SizeOutcome {
	return &knitmathv1.SizeOutcome{
		Name:         s.Name,
		WidthCm:      s.WidthCm,
		DifferenceCm: s.DifferenceCm,
		HeightCm:     s.HeightCm,
	}
}
