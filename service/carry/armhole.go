package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/armhole"
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
)

// armholeService answers ArmholeService.
type armholeService struct {
	knitmathv1.UnimplementedArmholeServiceServer
}

func (armholeService) PlanArmhole(ctx context.Context, req *knitmathv1.PlanArmholeRequest) (*knitmathv1.PlanArmholeResponse, error) {
	return answer(ctx, req, armholeIn, armhole.Plan, armholeOut)
}

func armholeIn(req *knitmathv1.PlanArmholeRequest) armhole.Input {
	return armhole.Input{
		Gauge:                gaugeIn(req.Gauge),
		Style:                armhole.Style(req.Style),
		ChestCm:              req.ChestCm,
		ChestEaseCm:          req.ChestEaseCm,
		BackStitches:         optional(req.BackStitches, countIn),
		FrontStitches:        optional(req.FrontStitches, countIn),
		AcrossBackCm:         req.AcrossBackCm,
		AcrossBackStitches:   optional(req.AcrossBackStitches, countIn),
		AcrossFrontCm:        req.AcrossFrontCm,
		AcrossFrontStitches:  optional(req.AcrossFrontStitches, countIn),
		ArmholeDepthCm:       req.ArmholeDepthCm,
		ArmholeDepthRows:     optional(req.ArmholeDepthRows, countIn),
		UpperArmCm:           req.UpperArmCm,
		SleeveEaseCm:         req.SleeveEaseCm,
		SleeveStitches:       optional(req.SleeveStitches, countIn),
		UnderarmStitches:     optional(req.UnderarmStitches, countIn),
		LargestGroupStitches: optional(req.LargestGroupStitches, countIn),
		ShapingRows:          optional(req.ShapingRows, countIn),
		CapHeightRule:        armhole.CapHeightRule(req.CapHeightRule),
		CapHeightCm:          req.CapHeightCm,
		CapHeightRows:        optional(req.CapHeightRows, countIn),
		CapTopCm:             req.CapTopCm,
		CapTopStitches:       optional(req.CapTopStitches, countIn),
		CapExcessPercent:     req.CapExcessPercent,
		StitchRule:           ruleIn(req.StitchRule),
		SleeveRule:           ruleIn(req.SleeveRule),
		AcrossRule:           ruleIn(req.AcrossRule),
		UnderarmRule:         ruleIn(req.UnderarmRule),
		TopRule:              ruleIn(req.TopRule),
		NeckCm:               req.NeckCm,
		NeckStitches:         optional(req.NeckStitches, countIn),
		ToleranceStitches:    req.ToleranceStitches,
		DisplayUnit:          measure.DisplayUnit(req.DisplayUnit),
		WithOutline:          req.WithOutline,
	}
}

func armholeOut(out armhole.Armhole) *knitmathv1.PlanArmholeResponse {
	return &knitmathv1.PlanArmholeResponse{
		UnderarmStitches: countOut(out.UnderarmStitches),
		Back:             armholePieceOut(out.Back),
		Front:            armholePieceOut(out.Front),
		Cap:              armholePieceOut(out.Cap),
		ArmholeEdgeCm:    out.ArmholeEdgeCm,
		CapEdgeCm:        out.CapEdgeCm,
		CapExcessPercent: out.CapExcessPercent,
		CapTopCm:         out.CapTopCm,
		Strap:            message(out.Strap, strapOut),
		Summary:          out.Summary(),
		Directions:       out.Directions(),
		Notices:          each(out.Notices, noticeOut),
		Sources:          sourcesOut(out.Sources()),
		Outline:          message(out.Outline, outlineOut),
	}
}

func armholePieceOut(p armhole.Piece) *knitmathv1.ArmholePiece {
	return &knitmathv1.ArmholePiece{
		StartStitches:             countOut(p.StartStitches),
		EndStitches:               countOut(p.EndStitches),
		HeightRows:                countOut(p.HeightRows),
		HeightCm:                  p.HeightCm,
		Rows:                      each(p.Rows, armholeRowOut),
		EdgeCm:                    p.EdgeCm,
		GreatestDepartureStitches: p.GreatestDepartureStitches,
		LeastDepartureStitches:    p.LeastDepartureStitches,
		Effort:                    countOut(p.Effort),
		SteppedEdgeCm:             p.SteppedEdgeCm,
		Steps:                     each(p.Steps, armholeStepOut),
	}
}

func armholeStepOut(s armhole.Step) *knitmathv1.ArmholeStep {
	return &knitmathv1.ArmholeStep{RowNumber: countOut(s.RowNumber), Stitches: countOut(s.Stitches), BoundOff: s.BoundOff}
}

func armholeRowOut(r curve.Row) *knitmathv1.ArmholeRow {
	return &knitmathv1.ArmholeRow{
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}

func strapOut(s armhole.Strap) *knitmathv1.ArmholeStrap {
	return &knitmathv1.ArmholeStrap{Stitches: countOut(s.Stitches), WidthCm: s.WidthCm, Rows: countOut(s.Rows), LengthCm: s.LengthCm,
		ShoulderCm: s.ShoulderCm, ShoulderStitches: countOut(s.ShoulderStitches), BackNeckStitches: countOut(s.BackNeckStitches),
		FrontNeckStitches: countOut(s.FrontNeckStitches)}
}
