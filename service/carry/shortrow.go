package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
)

// shortRowService answers ShortRowService.
type shortRowService struct {
	knitmathv1.UnimplementedShortRowServiceServer
}

func (shortRowService) PlanWedge(ctx context.Context, req *knitmathv1.PlanWedgeRequest) (*knitmathv1.PlanWedgeResponse, error) {
	return answer(ctx, req, wedgeIn, shortrow.PlanWedge, wedgeOut)
}

func wedgeIn(req *knitmathv1.PlanWedgeRequest) shortrow.WedgeInput {
	return shortrow.WedgeInput{
		WidthStitches:    countIn(req.WidthStitches),
		RiseRows:         optional(req.RiseRows, countIn),
		RiseCm:           req.RiseCm,
		RiseAngleDegrees: req.RiseAngleDegrees,
		Gauge:            gaugeIn(req.Gauge),
		TallEnd:          shortrow.TallEnd(req.TallEnd),
		Order:            shortrow.Order(req.Order),
		TurnMethod:       shortrow.TurnMethod(req.TurnMethod),
		Rounding:         measure.Rounding(req.Rounding),
		Spread:           shortrow.TurnSpread(req.Spread),
		DisplayUnit:      measure.DisplayUnit(req.DisplayUnit),
		ProfileRows:      req.ProfileRows,
		ProfileCm:        req.ProfileCm,
		WithOutline:      req.WithOutline,
		ToleranceRows:    req.ToleranceRows,
	}
}

func wedgeOut(out shortrow.Wedge) *knitmathv1.PlanWedgeResponse {
	return &knitmathv1.PlanWedgeResponse{
		PairCount:             countOut(out.PairCount),
		TurnCount:             countOut(out.TurnCount),
		Turns:                 each(out.Turns, turnsOut),
		Rows:                  each(out.Rows, wedgeRowOut),
		TallRows:              countOut(out.TallRows),
		FullRows:              countOut(out.FullRows),
		AskedRiseRows:         out.AskedRiseRows,
		RiseRows:              countOut(out.RiseRows),
		RiseCm:                out.RiseCm,
		RiseAngleDegrees:      out.RiseAngleDegrees,
		GreatestDepartureRows: out.GreatestDepartureRows,
		LeastDepartureRows:    out.LeastDepartureRows,
		Effort:                countOut(out.Effort),
		Summary:               out.Summary(),
		Directions:            out.Directions(),
		Notices:               each(out.Notices, noticeOut),
		Sources:               sourcesOut(out.Sources()),
		Outline:               message(out.Outline, outlineOut),
	}
}

func turnsOut(t shortrow.TurnSequence) *knitmathv1.TurnSequence {
	return &knitmathv1.TurnSequence{
		FirstUnworkedStitches: countOut(t.FirstUnworkedStitches),
		Steps:                 each(t.Steps, turnRunOut),
		Side:                  knitmathv1.Side(t.Side),
	}
}

func turnRunOut(r shortrow.TurnRun) *knitmathv1.TurnRun {
	return &knitmathv1.TurnRun{Stitches: countOut(r.Stitches), Times: countOut(r.Times)}
}

func wedgeRowOut(r shortrow.WedgeRow) *knitmathv1.WedgeRow {
	return &knitmathv1.WedgeRow{
		RowNumber:        countOut(r.RowNumber),
		Side:             knitmathv1.Side(r.Side),
		Instruction:      instructionOut(r.Instruction),
		UnworkedStitches: countOut(r.UnworkedStitches),
		Resolving:        r.Resolving,
	}
}

func (shortRowService) PlanCircleOfWedges(ctx context.Context,
	req *knitmathv1.PlanCircleOfWedgesRequest) (*knitmathv1.PlanCircleOfWedgesResponse, error) {
	return answer(ctx, req, circleIn, shortrow.PlanCircleOfWedges, circleOut)
}

func circleIn(req *knitmathv1.PlanCircleOfWedgesRequest) shortrow.CircleInput {
	return shortrow.CircleInput{
		Gauge:         gaugeIn(req.Gauge),
		WidthStitches: optional(req.WidthStitches, countIn),
		OuterRadiusCm: req.OuterRadiusCm,
		InnerRadiusCm: req.InnerRadiusCm,
		WedgeCount:    optional(req.WedgeCount, countIn),
		TurnDegrees:   req.TurnDegrees,
		TurnMethod:    shortrow.TurnMethod(req.TurnMethod),
		Order:         shortrow.Order(req.Order),
		DisplayUnit:   measure.DisplayUnit(req.DisplayUnit),
		WithOutline:   req.WithOutline,
	}
}

func circleOut(out shortrow.Circle) *knitmathv1.PlanCircleOfWedgesResponse {
	return &knitmathv1.PlanCircleOfWedgesResponse{
		WidthStitches:    countOut(out.WidthStitches),
		WedgeCount:       countOut(out.WedgeCount),
		Wedges:           each(out.Wedges, circleWedgeOut),
		Sequence:         each(out.Sequence, circleRunOut),
		OuterRows:        countOut(out.OuterRows),
		InnerRows:        countOut(out.InnerRows),
		WantedOuterRows:  out.WantedOuterRows,
		WantedInnerRows:  out.WantedInnerRows,
		ClosureRows:      out.ClosureRows,
		ClosureDegrees:   out.ClosureDegrees,
		InnerClosureRows: out.InnerClosureRows,
		OuterRadiusCm:    out.OuterRadiusCm,
		InnerRadiusCm:    out.InnerRadiusCm,
		Summary:          out.Summary(),
		Directions:       out.Directions(),
		Notices:          each(out.Notices, noticeOut),
		Sources:          sourcesOut(out.Sources()),
		Outline:          message(out.Outline, outlineOut),
	}
}

func circleWedgeOut(w shortrow.CircleWedge) *knitmathv1.CircleWedge {
	return &knitmathv1.CircleWedge{
		PairCount:             countOut(w.PairCount),
		FullRows:              countOut(w.FullRows),
		Rows:                  each(w.Rows, wedgeRowOut),
		GreatestDepartureRows: w.GreatestDepartureRows,
	}
}

func circleRunOut(r shortrow.CircleWedgeRun) *knitmathv1.CircleWedgeRun {
	return &knitmathv1.CircleWedgeRun{WedgeNumber: countOut(r.WedgeNumber), Times: countOut(r.Times)}
}
