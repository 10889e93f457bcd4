package carry

import (
	"context"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
)

func (solidService) PlanSolid(ctx context.Context, req *knitmathv1.PlanSolidRequest) (*knitmathv1.PlanSolidResponse, error) {
	return answer(ctx, req, solidIn, solid.PlanSolid, solidOut)
}

func solidIn(req *knitmathv1.PlanSolidRequest) solid.SolidInput {
	return solid.SolidInput{
		Gauge:          gaugeIn(req.Gauge),
		Form:           solid.Form(req.Form),
		AcrossCm:       req.AcrossCm,
		HeightCm:       req.HeightCm,
		Points:         each(req.Points, solidPointIn),
		BaseOpeningCm:  req.BaseOpeningCm,
		TopOpeningCm:   req.TopOpeningCm,
		Start:          solid.Start(req.Start),
		Lines:          solid.Lines(req.Lines),
		WedgeCount:     optional(req.WedgeCount, countIn),
		StuffOpeningCm: req.StuffOpeningCm,
		PickedUp:       req.PickedUp,
		Limbs:          each(req.Limbs, solidLimbIn),
		Way:            solid.Way(req.Way),
		TurnMethod:     shortrow.TurnMethod(req.TurnMethod),
		DisplayUnit:    measure.DisplayUnit(req.DisplayUnit),
		WithOutline:    req.WithOutline,
	}
}

func solidPointIn(p *knitmathv1.SolidPoint) solid.ProfilePoint {
	return solid.ProfilePoint{HeightCm: p.GetHeightCm(), AcrossCm: p.GetAcrossCm()}
}

func solidLimbIn(l *knitmathv1.SolidLimb) solid.LimbInput {
	return solid.LimbInput{Stitches: countIn(l.GetStitches()), FromBaseCm: l.GetFromBaseCm(), TurnDegrees: l.GetTurnDegrees()}
}

func solidOut(out solid.Solid) *knitmathv1.PlanSolidResponse {
	return &knitmathv1.PlanSolidResponse{
		StartStitches:             countOut(out.StartStitches),
		EndStitches:               countOut(out.EndStitches),
		GreatestStitches:          countOut(out.GreatestStitches),
		TotalRounds:               countOut(out.TotalRounds),
		WedgeCount:                countOut(out.WedgeCount),
		TotalStitches:             countOut(out.TotalStitches),
		WantedTotalStitches:       out.WantedTotalStitches,
		GreatestDepartureStitches: out.GreatestDepartureStitches,
		AcrossCm:                  out.AcrossCm,
		HeightCm:                  out.HeightCm,
		MeridianCm:                out.MeridianCm,
		StuffBeforeRoundNumber:    optional(out.StuffBeforeRoundNumber, countOut),
		EdgeRoundNumbers:          each(out.EdgeRoundNumbers, countOut),
		Rounds:                    each(out.Rounds, solidRoundOut),
		Summary:                   out.Summary(),
		Directions:                out.Directions(),
		Notices:                   each(out.Notices, noticeOut),
		Sources:                   sourcesOut(out.Sources()),
		Outline:                   message(out.Outline, outlineOut),
		Limbs:                     each(out.Limbs, solidRingOut),
		Wedges:                    each(out.Wedges, solidWedgeOut),
		Sequence:                  each(out.Sequence, circleRunOut),
		GreatestRows:              countOut(out.GreatestRows),
		GreatestDepartureRows:     out.GreatestDepartureRows,
	}
}

func solidRingOut(l solid.Limb) *knitmathv1.SolidRing {
	return &knitmathv1.SolidRing{
		Stitches:           countOut(l.Stitches),
		MiddleRoundNumber:  countOut(l.MiddleRoundNumber),
		MiddleStitchNumber: countOut(l.MiddleStitchNumber),
		AcrossCm:           l.AcrossCm,
		Places:             each(l.Places, solidPlaceOut),
	}
}

func solidPlaceOut(p solid.RingPlace) *knitmathv1.SolidPlace {
	return &knitmathv1.SolidPlace{RoundNumber: countOut(p.RoundNumber), StitchNumber: countOut(p.StitchNumber)}
}

func solidWedgeOut(k solid.WedgeKind) *knitmathv1.SolidWedge {
	return &knitmathv1.SolidWedge{Rows: each(k.Rows, wedgeRowOut), Times: countOut(k.Times)}
}

func solidRoundOut(r solid.SolidRound) *knitmathv1.SolidRound {
	return &knitmathv1.SolidRound{
		RoundNumber:       countOut(r.RoundNumber),
		WantedStitches:    r.WantedStitches,
		DepartureStitches: r.DepartureStitches,
		Instruction:       instructionOut(r.Instruction),
	}
}
