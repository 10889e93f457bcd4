package carry

import (
	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/handspun"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

func handspunIn(req *knitmathv1.PlanHandspunRequest) handspun.Input {
	return handspun.Input{
		Plies:                 each(req.Plies, spunPlyIn),
		Spinning:              yarn.Spinning(req.Spinning),
		TwistAngleDegrees:     req.TwistAngleDegrees,
		PlyTwistPerCm:         req.PlyTwistPerCm,
		PlyTreadlesPerDraft:   req.PlyTreadlesPerDraft,
		PlyContractionPercent: req.PlyContractionPercent,
		Gauge:                 gaugeIn(req.Gauge),
		StitchGauge:           stitchGaugeIn(req.StitchGauge),
		WantedM:               req.WantedM,
		WantedG:               req.WantedG,
		Losses:                lossesIn(req.Losses),
		BobbinG:               req.BobbinG,
		Wheel:                 wheelIn(req.Wheel),
		WithOutline:           req.WithOutline,
		DisplayUnit:           measure.DisplayUnit(req.DisplayUnit),
	}
}

func spunPlyIn(p *knitmathv1.SpunPly) handspun.Ply {
	if p == nil {
		return handspun.Ply{}
	}
	return handspun.Ply{
		Name:             p.Name,
		Count:            yarnCountIn(p.Count),
		Times:            optional(p.Times, countIn),
		TwistPerCm:       p.TwistPerCm,
		TreadlesPerDraft: p.TreadlesPerDraft,
		Direction:        yarn.TwistDirection(p.Direction),
	}
}

func wheelIn(w *knitmathv1.SpinningWheel) *handspun.Wheel {
	if w == nil {
		return nil
	}
	return &handspun.Wheel{
		Ratio:             w.Ratio,
		DriveWheelCm:      w.DriveWheelCm,
		WhorlCm:           w.WhorlCm,
		DraftCm:           w.DraftCm,
		SlipPercent:       w.SlipPercent,
		TreadlesPerMinute: w.TreadlesPerMinute,
	}
}

func lossesIn(l *knitmathv1.FibreLosses) *handspun.Losses {
	if l == nil {
		return nil
	}
	return &handspun.Losses{ScouringPercent: l.ScouringPercent, PreparingPercent: l.PreparingPercent, SpinningPercent: l.SpinningPercent}
}

func handspunOut(out handspun.Plan) *knitmathv1.PlanHandspunResponse {
	return &knitmathv1.PlanHandspunResponse{
		Plies:                 each(out.Plies, pliedSingleOut),
		Tex:                   out.Tex,
		MetresPer_100G:        out.MetresPer100G,
		YardsPerPound:         out.YardsPerPound,
		DiameterMm:            out.DiameterMm,
		WrapsPerCm:            rangeOut(out.WrapsPerCm),
		Twist:                 twistOut(out.Twist),
		BalancedPerCm:         message(out.BalancedPerCm, rangeOut),
		PlyContractionPercent: out.PlyContractionPercent,
		GaugeStitches:         rangeOut(out.GaugeStitches),
		Fits:                  knitmathv1.GaugeFit(out.Fits),
		FittingMetresPer_100G: message(out.FittingMetresPer100G, rangeOut),
		YarnM:                 out.YarnM,
		YarnG:                 out.YarnG,
		FibreG:                message(out.FibreG, rangeOut),
		BobbinCount:           optional(out.BobbinCount, countOut),
		WheelRatio:            out.WheelRatio,
		TreadlesPerDraft:      out.TreadlesPerDraft,
		Hours:                 out.Hours,
		Samples:               each(out.Samples, sampleCheckOut),
		Cautions:              out.Cautions,
		Outline:               message(out.Outline, outlineOut),
		Summary:               out.Summary(),
		Directions:            out.Directions(),
		Notices:               each(out.Notices, noticeOut),
		Sources:               sourcesOut(out.Sources()),
	}
}

func pliedSingleOut(p handspun.PliedSingle) *knitmathv1.PliedSingle {
	return &knitmathv1.PliedSingle{
		Name:             p.Name,
		Times:            countOut(p.Times),
		Tex:              p.Tex,
		DiameterMm:       p.DiameterMm,
		Twist:            twistOut(p.Twist),
		LeftPerCm:        p.LeftPerCm,
		LengthM:          p.LengthM,
		MassG:            p.MassG,
		BobbinCount:      optional(p.BobbinCount, countOut),
		TreadlesPerDraft: p.TreadlesPerDraft,
	}
}

func sampleCheckOut(s handspun.SampleCheck) *knitmathv1.SampleCheck {
	return &knitmathv1.SampleCheck{What: s.What, Expected: rangeOut(s.Expected), Unit: s.Unit, IfLess: s.IfLess, IfMore: s.IfMore}
}
