package service

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

func (shortRowService) PlanWedge(_ context.Context, req *knitmathv1.PlanWedgeRequest) (*knitmathv1.PlanWedgeResponse, error) {
	out, err := shortrow.PlanWedge(wedgeIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return wedgeOut(out), nil
}

func wedgeIn(req *knitmathv1.PlanWedgeRequest) shortrow.WedgeInput {
	return shortrow.WedgeInput{
		StitchCount:      countIn(req.StitchCount),
		RiseRows:         optional(req.RiseRows, countIn),
		RiseCm:           req.RiseCm,
		RiseAngleDegrees: req.RiseAngleDegrees,
		Gauge:            gaugeIn(req.Gauge),
		TallEnd:          shortrow.TallEnd(req.TallEnd),
		Order:            shortrow.ShortRowOrder(req.Order),
		TurnMethod:       shortrow.TurnMethod(req.TurnMethod),
		Rounding:         measure.Rounding(req.Rounding),
		Spread:           shortrow.TurnSpread(req.Spread),
		DisplayUnit:      measure.DisplayUnit(req.DisplayUnit),
		ProfileRows:      req.ProfileRows,
		ProfileCm:        req.ProfileCm,
		WithOutline:      req.WithOutline,
	}
}

func wedgeOut(out shortrow.Wedge) *knitmathv1.PlanWedgeResponse {
	return &knitmathv1.PlanWedgeResponse{
		PairCount:             countOut(out.PairCount),
		TurnCount:             countOut(out.TurnCount),
		Turns:                 each(out.Turns, turnsOut),
		Rows:                  each(out.Rows, wedgeRowOut),
		TallRows:              countOut(out.TallRows),
		ShortRows:             countOut(out.ShortRows),
		AskedRiseRows:         out.AskedRiseRows,
		RiseRows:              countOut(out.RiseRows),
		RiseCm:                out.RiseCm,
		RiseAngleDegrees:      out.RiseAngleDegrees,
		GreatestDepartureRows: out.GreatestDepartureRows,
		Summary:               out.Summary(),
		Notices:               each(out.Notices, noticeOut),
		Sources:               each(out.Sources(), sourceOut),
		Outline:               message(out.Outline, outlineOut),
	}
}

func turnsOut(t shortrow.TurnSequence) *knitmathv1.TurnSequence {
	return &knitmathv1.TurnSequence{
		FirstUnworkedCount: countOut(t.FirstUnworkedCount),
		Steps:              each(t.Steps, turnRunOut),
		Side:               knitmathv1.Side(t.Side),
	}
}

func turnRunOut(r shortrow.TurnRun) *knitmathv1.TurnRun {
	return &knitmathv1.TurnRun{StitchCount: countOut(r.StitchCount), Times: countOut(r.Times)}
}

func wedgeRowOut(r shortrow.WedgeRow) *knitmathv1.WedgeRow {
	return &knitmathv1.WedgeRow{
		RowNumber:     countOut(r.RowNumber),
		Side:          knitmathv1.Side(r.Side),
		Instruction:   instructionOut(r.Instruction),
		UnworkedCount: countOut(r.UnworkedCount),
		Resolving:     r.Resolving,
	}
}
