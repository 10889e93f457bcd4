package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// curveService answers CurveService.
type curveService struct {
	knitmathv1.UnimplementedCurveServiceServer
}

func (curveService) PlanCurvedEdge(
	ctx context.Context, req *knitmathv1.PlanCurvedEdgeRequest,
) (*knitmathv1.PlanCurvedEdgeResponse, error) {
	return answer(ctx, req, curvedEdgeIn, curve.PlanCurvedEdge, curvedEdgeOut)
}

func curvedEdgeIn(req *knitmathv1.PlanCurvedEdgeRequest) curve.CurvedEdgeInput {
	return curve.CurvedEdgeInput{
		StartStitches:         countIn(req.StartStitches),
		Points:                each(req.Points, curvePointIn),
		Gauge:                 gaugeIn(req.Gauge),
		Edges:                 curve.Edges(req.Edges),
		EdgeStitches:          optional(req.EdgeStitches, countIn),
		RowChoice:             curve.RowChoice(req.RowChoice),
		FirstSide:             stitch.Side(req.FirstSide),
		LargestChangeStitches: optional(req.LargestChangeStitches, countIn),
		LargestGroupStitches:  optional(req.LargestGroupStitches, countIn),
		ToleranceStitches:     req.ToleranceStitches,
		EndRule:               ruleIn(req.EndRule),
		DisplayUnit:           measure.DisplayUnit(req.DisplayUnit),
		WithOutline:           req.WithOutline,
	}
}

func curvePointIn(p *knitmathv1.CurvePoint) curve.CurvePoint {
	return curve.CurvePoint{
		HeightRows:     optional(p.HeightRows, countIn),
		HeightCm:       p.HeightCm,
		InwardStitches: optional(p.InwardStitches, countIn),
		InwardCm:       p.InwardCm,
		Shape:          curve.Shape(p.Shape),
		Leaving:        curve.Leaving(p.Leaving),
		RadiusCm:       p.RadiusCm,
	}
}

func curvedEdgeOut(out curve.CurvedEdge) *knitmathv1.PlanCurvedEdgeResponse {
	return &knitmathv1.PlanCurvedEdgeResponse{
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		HeightRows:                countOut(out.HeightRows),
		HeightCm:                  out.HeightCm,
		EndStitches:               countOut(out.EndStitches),
		Rows:                      each(out.Rows, curvedRowOut),
		RightEdge:                 message(out.RightEdge, knitEdgeOut),
		LeftEdge:                  message(out.LeftEdge, knitEdgeOut),
		Runs:                      each(out.Runs, edgeRunOut),
		CurveLengthCm:             out.CurveLengthCm,
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		GreatestDepartureRows:     out.GreatestDepartureRows,
		LeastDepartureStitches:    out.LeastDepartureStitches,
		Effort:                    countOut(out.Effort),
		Outline:                   message(out.Outline, outlineOut),
	}
}

func curvedRowOut(r curve.Row) *knitmathv1.CurvedRow {
	return &knitmathv1.CurvedRow{
		RowNumber:   countOut(r.RowNumber),
		Side:        knitmathv1.Side(r.Side),
		Instruction: instructionOut(r.Instruction),
	}
}

func knitEdgeOut(e curve.KnitEdge) *knitmathv1.KnitEdge {
	return &knitmathv1.KnitEdge{Steps: each(e.Steps, edgeStepOut), LengthCm: e.LengthCm, SewnCm: e.SewnCm}
}

func edgeStepOut(s curve.Step) *knitmathv1.EdgeStep {
	return &knitmathv1.EdgeStep{
		RowNumber: countOut(s.RowNumber),
		Kind:      knitmathv1.EdgeStepKind(s.Kind),
		Stitches:  countOut(s.Stitches),
	}
}

func edgeRunOut(r curve.Run) *knitmathv1.EdgeRun {
	return &knitmathv1.EdgeRun{
		Kind:           knitmathv1.EdgeStepKind(r.Kind),
		Stitches:       countOut(r.Stitches),
		FirstRowNumber: countOut(r.FirstRowNumber),
		EveryRows:      countOut(r.EveryRows),
		AlternateRows:  countOut(r.AlternateRows),
		Times:          countOut(r.Times),
	}
}
