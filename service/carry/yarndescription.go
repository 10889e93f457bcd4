package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

func (yarnService) DescribeYarn(ctx context.Context, req *knitmathv1.DescribeYarnRequest) (*knitmathv1.DescribeYarnResponse, error) {
	return answer(ctx, req, descriptionIn, yarn.DescribeYarn, descriptionOut)
}

func descriptionIn(req *knitmathv1.DescribeYarnRequest) yarn.DescribeInput {
	return yarn.DescribeInput{
		Count:          yarnCountIn(req.Count),
		PutUp:          putUpIn(req.PutUp),
		WrapsPerInch:   req.WrapsPerInch,
		Stitches:       req.Stitches,
		OverCm:         req.OverCm,
		NeedleMm:       req.NeedleMm,
		Spinning:       yarn.Spinning(req.Spinning),
		TwistPerCm:     req.TwistPerCm,
		TwistDirection: yarn.TwistDirection(req.TwistDirection),
		WithOutline:    req.WithOutline,
		DisplayUnit:    measure.DisplayUnit(req.DisplayUnit),
	}
}

func descriptionOut(out yarn.Description) *knitmathv1.DescribeYarnResponse {
	return &knitmathv1.DescribeYarnResponse{
		Summary:           out.Summary(),
		Directions:        out.Directions(),
		Notices:           each(out.Notices, noticeOut),
		Sources:           sourcesOut(out.Sources()),
		Categories:        each(out.Categories, categoryOut),
		Readings:          each(out.Readings, readingOut),
		Tex:               out.Tex,
		MetresPer_100G:    out.MetresPer100G,
		DiametersPerInch:  out.DiametersPerInch,
		DiameterMm:        out.DiameterMm,
		LowWrapsPerInch:   out.LowWrapsPerInch,
		HighWrapsPerInch:  out.HighWrapsPerInch,
		LowGaugeStitches:  out.LowGaugeStitches,
		HighGaugeStitches: out.HighGaugeStitches,
		Twist:             message(out.Twist, twistOut),
		Outline:           message(out.Outline, outlineOut),
	}
}

func readingOut(r yarn.CategoryReading) *knitmathv1.CategoryReading {
	return &knitmathv1.CategoryReading{Basis: knitmathv1.CategoryBasis(r.Basis), Categories: each(r.Categories, countOut)}
}

func twistOut(t yarn.Twist) *knitmathv1.Twist {
	return &knitmathv1.Twist{
		PerCm:        t.PerCm,
		PerInch:      t.PerInch,
		Factor:       t.Factor,
		Multiplier:   t.Multiplier,
		AngleDegrees: t.AngleDegrees,
		Direction:    knitmathv1.TwistDirection(t.Direction),
	}
}
