package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/swatch"
)

// gaugeService answers GaugeService.
type gaugeService struct {
	knitmathv1.UnimplementedGaugeServiceServer
}

func (gaugeService) ComputeGauge(_ context.Context, req *knitmathv1.ComputeGaugeRequest) (*knitmathv1.ComputeGaugeResponse, error) {
	out, err := swatch.ComputeGauge(swatchIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return swatchOut(out), nil
}

func (gaugeService) ComputeCastOn(_ context.Context, req *knitmathv1.ComputeCastOnRequest) (*knitmathv1.ComputeCastOnResponse, error) {
	out, err := gauge.ComputeCastOn(castOnIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return castOnOut(out), nil
}

func (gaugeService) ConvertGauge(_ context.Context, req *knitmathv1.ConvertGaugeRequest) (*knitmathv1.ConvertGaugeResponse, error) {
	out, err := gauge.ConvertGauge(conversionIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return conversionOut(out), nil
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
