package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/swatch"
)

// gaugeService answers GaugeService.
type gaugeService struct {
	knitmathv1.UnimplementedGaugeServiceServer
}

func (gaugeService) ComputeGauge(ctx context.Context, req *knitmathv1.ComputeGaugeRequest) (*knitmathv1.ComputeGaugeResponse, error) {
	return answer(ctx, req, swatchIn, swatch.ComputeGauge, swatchOut)
}

func (gaugeService) ComputeCastOn(ctx context.Context, req *knitmathv1.ComputeCastOnRequest) (*knitmathv1.ComputeCastOnResponse, error) {
	return answer(ctx, req, castOnIn, gauge.ComputeCastOn, castOnOut)
}

func (gaugeService) ConvertGauge(ctx context.Context, req *knitmathv1.ConvertGaugeRequest) (*knitmathv1.ConvertGaugeResponse, error) {
	return answer(ctx, req, conversionIn, gauge.ConvertGauge, conversionOut)
}

func gaugeIn(g *knitmathv1.Gauge) *gauge.Gauge {
	if g == nil {
		return nil
	}
	return &gauge.Gauge{Stitches: g.Stitches, Rows: g.Rows, OverCm: g.OverCm}
}

func gaugeOut(g gauge.Gauge) *knitmathv1.Gauge {
	return &knitmathv1.Gauge{Stitches: g.Stitches, Rows: g.Rows, OverCm: g.OverCm}
}

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
		Stitches:   message(out.Stitches, fittedOut),
		Rows:       message(out.Rows, fittedOut),
		Summary:    out.Summary(),
		Directions: out.Directions(),
		Notices:    each(out.Notices, noticeOut),
		Sources:    sourcesOut(out.Sources()),
	}
}

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
		FollowSizeNumber:    optional(out.FollowSizeNumber, countOut),
		Summary:             out.Summary(),
		Directions:          out.Directions(),
		Notices:             each(out.Notices, noticeOut),
		Sources:             sourcesOut(out.Sources()),
	}
}

func convertedOut(c gauge.ConvertedCount) *knitmathv1.ConvertedCount {
	return &knitmathv1.ConvertedCount{
		Name:        c.Name,
		Kind:        knitmathv1.CountKind(c.Kind),
		Printed:     countOut(c.Printed),
		Fitted:      fittedOut(c.Fitted),
		AsWrittenCm: c.AsWrittenCm,
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

func ruleIn(r *knitmathv1.CountRule) *gauge.CountRule {
	if r == nil {
		return nil
	}
	return &gauge.CountRule{
		Multiple:  optional(r.Multiple, countIn),
		Remainder: optional(r.Remainder, countIn),
		Edge:      optional(r.Edge, countIn),
		Rounding:  measure.Rounding(r.Rounding),
	}
}

func fittedOut(f gauge.FittedCount) *knitmathv1.FittedCount {
	return &knitmathv1.FittedCount{
		Count:        countOut(f.Count),
		Exact:        f.Exact,
		AskedCm:      f.AskedCm,
		SizeCm:       f.SizeCm,
		DifferenceCm: f.DifferenceCm,
		Below:        message(f.Below, neighbourOut),
		Above:        message(f.Above, neighbourOut),
		Halfway:      f.Halfway,
	}
}

func neighbourOut(n gauge.NeighbourCount) *knitmathv1.NeighbourCount {
	return &knitmathv1.NeighbourCount{Count: countOut(n.Count), SizeCm: n.SizeCm, DifferenceCm: n.DifferenceCm}
}
