package sock

import (
	"fmt"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shortrow"
)

// vetHeel checks each field for itself, and what the kind of heel has no use for.
func vetHeel(c *fault.Checks, in HeelInput) heel {
	fault.Enum(c, "", "kind", in.Kind, HeelKindWasteYarn)
	fault.Enum(c, "", "direction", in.Direction, DirectionToeUp)
	h := heel{kind: in.Kind, toeUp: in.Direction == DirectionToeUp, unit: in.DisplayUnit, method: in.TurnMethod, flapStitch: in.FlapStitch}
	if h.kind == HeelKindUnspecified {
		h.kind = HeelKindRound
	}
	h.rounds = around{in.RoundStitches, in.FootCircumferenceCm, in.EasePercent, in.Gauge, in.StitchRule}.vet(c)
	c.OptionalCount("", "heel_stitches", in.HeelStitches, MinHeel, MaxRound)
	c.OptionalCount("", "flap_rows", in.FlapRows, 2, MaxFlapRows)
	fault.Enum(c, "", "flap_stitch", in.FlapStitch, FlapStitchStockinette)
	c.OptionalCount("", "centre_stitches", in.CentreStitches, 1, MaxRound)
	c.OptionalCount("", "pick_up_stitches", in.PickUpStitches, 1, MaxFlapRows)
	c.OptionalCount("", "gusset_every_rounds", in.GussetEveryRounds, 1, MaxEveryRounds)
	c.OptionalCount("", "successive_rounds", in.SuccessiveRounds, 1, MaxRound)
	fault.Enum(c, "", "turn_method", in.TurnMethod, shortrow.TurnMethodYarnOver)
	c.OptionalCount("", "corner_stitches", in.CornerStitches, 0, MaxCorner)
	c.OptionalCount("", "end_stitches", in.EndStitches, 4, MaxRound)
	c.OptionalNumber("", "foot_length_cm", in.FootLengthCm, MinFootCm, MaxFootCm)
	c.OptionalNumber("", "length_ease_cm", in.LengthEaseCm, minLengthEase, maxLengthEase)
	c.Needs(in.LengthEaseCm != nil, "length_ease_cm", in.FootLengthCm != nil, "foot_length_cm")
	c.Needs(in.FootLengthCm != nil, "foot_length_cm", in.Gauge != nil, "gauge")
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Sound("kind", "direction") {
		vetUses(c, h, in)
	}
	if c.Err() != nil {
		return h
	}
	h.stitches = fault.Or(in.HeelStitches, h.round/2)
	h.instep, h.heelGiven = h.round-h.stitches, in.HeelStitches != nil
	if h.instep < 2 {
		c.Infeasible(fmt.Sprintf("leaves no 2 of the %d stitches of the round for the instep", h.round), "heel_stitches")
	}
	return h
}

// vetUses refuses what the kind, worked in its direction, has no use for.
func vetUses(c *fault.Checks, h heel, in HeelInput) {
	gussets := h.kind != HeelKindShortRows && h.kind != HeelKindWasteYarn
	picked := gussets && !h.toeUp
	flap := picked || gussets && h.kind != HeelKindHeart
	centre := h.kind != HeelKindWasteYarn && (!h.toeUp || h.kind != HeelKindSquare)
	turned := h.kind == HeelKindShortRows || h.toeUp && h.kind == HeelKindRound
	for _, f := range []struct {
		field string
		given bool
		used  bool
	}{
		{"flap_rows", in.FlapRows != nil, flap},
		{"flap_stitch", in.FlapStitch != 0, flap},
		{"centre_stitches", in.CentreStitches != nil, centre},
		{"pick_up_stitches", in.PickUpStitches != nil, picked},
		{"gusset_every_rounds", in.GussetEveryRounds != nil, gussets},
		{"successive_rounds", in.SuccessiveRounds != nil, picked},
		{"turn_method", in.TurnMethod != 0, turned},
		{"corner_stitches", in.CornerStitches != nil, h.kind == HeelKindWasteYarn},
		{"end_stitches", in.EndStitches != nil, h.kind == HeelKindWasteYarn},
		{"foot_length_cm", in.FootLengthCm != nil, h.toeUp},
	} {
		if f.given && !f.used {
			c.Add(f.field, fault.ReasonContradictory, "means nothing for this kind of heel, worked in this direction; leave it out")
		}
	}
	if h.kind == HeelKindShortRows {
		vetCupTurns(c, in.TurnMethod)
	}
}

// vetCupTurns refuses yarn overs where the second half of a cup would turn at them again.
func vetCupTurns(c *fault.Checks, m shortrow.TurnMethod) {
	if m == shortrow.TurnMethodYarnOver {
		c.Add("turn_method", fault.ReasonContradictory,
			"yarn overs would lie two and two where the second half turns again; wrap the stitches, or make them double")
	}
}

// vetFlap settles a heel of flap and gusset.
func (h *heel) vetFlap(c *fault.Checks, in HeelInput) {
	h.flapRows = fault.Or(in.FlapRows, h.stitches+h.stitches%2)
	if h.flapRows%2 != 0 {
		c.Infeasible(oddFlap, "flap_rows")
	}
	h.every, h.quick = fault.Or(in.GussetEveryRounds, defaultEvery), fault.Or(in.SuccessiveRounds, 1)
	h.vetCentre(c, in, h.turn())
	h.pickUp, h.pickUpGiven = fault.Or(in.PickUpStitches, h.flapRows/2+defaultCorner), in.PickUpStitches != nil
	if c.Err() != nil {
		return
	}
	most := h.flapRows
	if h.pickUp > most {
		fields := []string{"pick_up_stitches"}
		if in.FlapRows != nil {
			fields = append(fields, "flap_rows")
		}
		c.Infeasible(fmt.Sprintf("a flap of %s has no room for more than %s at an edge", report.CountOf(h.flapRows, "rows"),
			report.CountOf(most, "stitches")), fields...)
		return
	}
	h.vetGusset(c, in)
}

// vetGusset checks that the sole is as wide as the heel was.
func (h *heel) vetGusset(c *fault.Checks, in HeelInput) {
	left := h.turn().left(h.stitches, h.centre)
	least := max((h.stitches-left+1)/2, 1)
	if h.pickUp >= least {
		if in.SuccessiveRounds != nil && h.quick > max((left+2*h.pickUp-h.stitches)/2, 1) {
			c.Infeasible(fmt.Sprintf("the gussets have %s", report.CountOf((left+2*h.pickUp-h.stitches)/2, "decrease rounds")), "successive_rounds")
		}
		return
	}
	detail := fmt.Sprintf("the turned heel of %s and %d picked up at each edge are fewer than the %d of the heel",
		report.CountOf(left, "stitches"), h.pickUp, h.stitches)
	if in.PickUpStitches != nil {
		c.Infeasible(detail, "pick_up_stitches")
		return
	}
	c.Infeasible(detail, "flap_rows")
}

// sizedBy is the field that the stitches of the heel come from.
func (h *heel) sizedBy(in HeelInput) string {
	switch {
	case in.HeelStitches != nil:
		return "heel_stitches"
	case in.RoundStitches != nil:
		return "round_stitches"
	}
	return "foot_circumference_cm"
}

// vetCentre settles the centre of a turn.
func (h *heel) vetCentre(c *fault.Checks, in HeelInput, t turn) {
	least, most := t.least+(t.least+h.stitches)%2, h.stitches-t.beside
	h.centre = fault.Or(in.CentreStitches, min(max(t.usual(h.stitches), least), most))
	switch {
	case most < least:
		c.Infeasible("a heel of "+report.CountOf(h.stitches, "stitches")+" is too narrow for this turn, which takes "+
			strconv.Itoa(least+t.beside), h.sizedBy(in))
	case h.centre < least || h.centre > most:
		c.Infeasible(fmt.Sprintf("the centre of %s can %s", report.CountOf(h.stitches, "stitches"), fromTo(least, most)), "centre_stitches")
	case (h.centre-h.stitches)%2 != 0:
		c.Infeasible(fmt.Sprintf("leaves an odd number of the %d stitches beside it", h.stitches), "centre_stitches")
	}
}

// fromTo says how many stitches there can be: "have 2 to 26", or "only have 2" where nothing else would do.
func fromTo(least, most int) string {
	if least == most {
		return fmt.Sprintf("only have %d", least)
	}
	return fmt.Sprintf("have %d to %d", least, most)
}
