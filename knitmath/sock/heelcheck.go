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
	h.vetSize(c, in)
	return h
}

// vetSize settles the stitches of the heel of a round whose own are in order.
func (h *heel) vetSize(c *fault.Checks, in HeelInput) {
	if h.round == 0 || !c.Sound("round_stitches", "foot_circumference_cm", "heel_stitches") {
		return
	}
	h.stitches = fault.Or(in.HeelStitches, h.round/2)
	h.instep, h.heelGiven = h.round-h.stitches, in.HeelStitches != nil
	if h.sized = h.instep >= 2; !h.sized {
		c.Infeasible(fmt.Sprintf("leaves no 2 of the %d stitches of the round for the instep", h.round), "heel_stitches")
	}
}

// vetParts settles what the heel is made of, each part as far as nothing is wrong with what it depends on.
func (h *heel) vetParts(c *fault.Checks, in HeelInput) {
	switch {
	case !c.Sound("kind", "direction"):
	case h.kind == HeelKindShortRows:
		h.vetCentre(c, in, h.turn())
	case h.kind == HeelKindWasteYarn:
		h.vetWasteYarn(c, in)
	case h.toeUp:
		h.vetToeUp(c, in)
	default:
		h.vetFlap(c, in)
	}
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
	h.every, h.quick = fault.Or(in.GussetEveryRounds, defaultEvery), fault.Or(in.SuccessiveRounds, 1)
	turned := h.vetCentre(c, in, h.turn())
	if h.vetFlapRows(c, in, h.stitches+h.stitches%2) && c.Sound("pick_up_stitches") && h.vetPickUp(c, in) &&
		turned && c.Sound("successive_rounds") {
		h.vetGusset(c, in)
	}
}

// vetFlapRows settles the rows of a flap, as many as usual where nobody says, and reports whether they are in order.
func (h *heel) vetFlapRows(c *fault.Checks, in HeelInput, usual int) bool {
	if h.flapRows = fault.Or(in.FlapRows, usual); h.flapRows%2 != 0 && c.Sound("flap_rows") {
		c.Infeasible(oddFlap, "flap_rows")
	}
	return c.Sound("flap_rows") && (h.sized || in.FlapRows != nil)
}

// vetPickUp settles what is picked up along a flap whose rows are in order, and reports whether there is room for it.
func (h *heel) vetPickUp(c *fault.Checks, in HeelInput) bool {
	h.pickUp, h.pickUpGiven = fault.Or(in.PickUpStitches, h.flapRows/2+defaultCorner), in.PickUpStitches != nil
	if h.pickUp <= h.flapRows {
		return true
	}
	fields := []string{"pick_up_stitches"}
	if in.FlapRows != nil {
		fields = append(fields, "flap_rows")
	}
	rows := report.CountOf(h.flapRows, "rows")
	c.Infeasible("a flap of "+rows+" has no room for more than "+report.CountOf(h.flapRows, "stitches")+" at an edge", fields...)
	return false
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

// vetCentre settles the centre of a turn of a heel whose stitches are in order, and reports whether there is one.
func (h *heel) vetCentre(c *fault.Checks, in HeelInput, t turn) bool {
	if !h.sized || !c.Sound("centre_stitches") {
		return false
	}
	least, most := t.least+(t.least+h.stitches)%2, h.stitches-t.beside
	h.centre = fault.Or(in.CentreStitches, min(max(t.usual(h.stitches), least), most))
	return c.Passes(func() {
		switch {
		case most < least:
			c.Infeasible("a heel of "+report.CountOf(h.stitches, "stitches")+" is too narrow for this turn, which takes "+
				strconv.Itoa(least+t.beside), h.sizedBy(in))
		case h.centre < least || h.centre > most:
			c.Infeasible(fmt.Sprintf("the centre of %s can %s", report.CountOf(h.stitches, "stitches"), fromTo(least, most)), "centre_stitches")
		case (h.centre-h.stitches)%2 != 0:
			c.Infeasible(fmt.Sprintf("leaves an odd number of the %d stitches beside it", h.stitches), "centre_stitches")
		}
	})
}

// fromTo says how many stitches there can be: "have 2 to 26", or "only have 2" where nothing else would do.
func fromTo(least, most int) string {
	if least == most {
		return fmt.Sprintf("only have %d", least)
	}
	return fmt.Sprintf("have %d to %d", least, most)
}
