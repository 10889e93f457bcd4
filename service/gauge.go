package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath"
)

// gaugeService answers GaugeService.
type gaugeService struct {
	knitmathv1.UnimplementedGaugeServiceServer
}

func (gaugeService) ComputeGauge(_ context.Context, req *knitmathv1.ComputeGaugeRequest) (*knitmathv1.ComputeGaugeResponse, error) {
	out, err := knitmath.ComputeGauge(swatchIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return swatchOut(out), nil
}

func (gaugeService) ComputeCastOn(_ context.Context, req *knitmathv1.ComputeCastOnRequest) (*knitmathv1.ComputeCastOnResponse, error) {
	out, err := knitmath.ComputeCastOn(castOnIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return castOnOut(out), nil
}

func (gaugeService) ConvertGauge(_ context.Context, req *knitmathv1.ConvertGaugeRequest) (*knitmathv1.ConvertGaugeResponse, error) {
	out, err := knitmath.ConvertGauge(conversionIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return conversionOut(out), nil
}

func gaugeIn(g *knitmathv1.Gauge) *knitmath.Gauge {
	if g == nil {
		return nil
	}
	return &knitmath.Gauge{Stitches: g.Stitches, Rows: g.Rows, OverCm: g.OverCm}
}

func gaugeOut(g knitmath.Gauge) *knitmathv1.Gauge {
	return &knitmathv1.Gauge{Stitches: g.Stitches, Rows: g.Rows, OverCm: g.OverCm}
}
