package service

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
)

func (shortRowService) PlanCircleOfWedges(_ context.Context, req *knitmathv1.PlanCircleOfWedgesRequest) (*knitmathv1.PlanCircleOfWedgesResponse, error) {
	out, err := shortrow.PlanCircleOfWedges(circleIn(req))
	if err != nil {
		return nil, asFailure(err)
	}
	return circleOut(out), nil
}

func circleIn(req *knitmathv1.PlanCircleOfWedgesRequest) shortrow.CircleInput {
	return shortrow.CircleInput{
		Gauge:         gaugeIn(req.Gauge),
		StitchCount:   optional(req.StitchCount, countIn),
		OuterRadiusCm: req.OuterRadiusCm,
		InnerRadiusCm: req.InnerRadiusCm,
		WedgeCount:    optional(req.WedgeCount, countIn),
		TurnDegrees:   req.TurnDegrees,
		TurnMethod:    shortrow.TurnMethod(req.TurnMethod),
		Order:         shortrow.ShortRowOrder(req.Order),
		DisplayUnit:   measure.DisplayUnit(req.DisplayUnit),
		WithOutline:   req.WithOutline,
	}
}

func circleOut(out shortrow.Circle) *knitmathv1.PlanCircleOfWedgesResponse {
	return &knitmathv1.PlanCircleOfWedgesResponse{
		StitchCount:      countOut(out.StitchCount),
		WedgeCount:       countOut(out.WedgeCount),
		Wedges:           each(out.Wedges, circleWedgeOut),
		Sequence:         each(out.Sequence, circleRunOut),
		OuterRowCount:    countOut(out.OuterRowCount),
		InnerRowCount:    countOut(out.InnerRowCount),
		WantedOuterRows:  out.WantedOuterRows,
		WantedInnerRows:  out.WantedInnerRows,
		ClosureRows:      out.ClosureRows,
		ClosureDegrees:   out.ClosureDegrees,
		InnerClosureRows: out.InnerClosureRows,
		OuterRadiusCm:    out.OuterRadiusCm,
		InnerRadiusCm:    out.InnerRadiusCm,
		Summary:          out.Summary(),
		Notices:          each(out.Notices, noticeOut),
		Sources:          each(out.Sources(), sourceOut),
		Outline:          message(out.Outline, outlineOut),
	}
}

func circleWedgeOut(w shortrow.CircleWedge) *knitmathv1.CircleWedge {
	return &knitmathv1.CircleWedge{
		PairCount:             countOut(w.PairCount),
		FullRowCount:          countOut(w.FullRowCount),
		Rows:                  each(w.Rows, wedgeRowOut),
		GreatestDepartureRows: w.GreatestDepartureRows,
	}
}

func circleRunOut(r shortrow.CircleWedgeRun) *knitmathv1.CircleWedgeRun {
	return &knitmathv1.CircleWedgeRun{WedgeIndex: countOut(r.WedgeIndex), Times: countOut(r.Times)}
}
