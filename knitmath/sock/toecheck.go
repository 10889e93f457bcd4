package sock

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
)

// defaultLengthEase is how much shorter than the foot a sock is, in cm. Source, from memory:
// a quarter to half an inch.
const defaultLengthEase = -1.0

// vetToe checks each field for itself, and what the kind of toe has no use for.
func vetToe(c *fault.Checks, in ToeInput) toe {
	fault.Enum(c, "", "kind", in.Kind, ToeKindShortRows)
	fault.Enum(c, "", "direction", in.Direction, DirectionToeUp)
	t := toe{kind: in.Kind, toeUp: in.Direction == DirectionToeUp, unit: in.DisplayUnit, method: in.TurnMethod}
	if t.kind == ToeKindUnspecified {
		t.kind = ToeKindWedge
	}
	t.rounds = around{in.RoundStitches, in.FootCircumferenceCm, in.EasePercent, in.Gauge, in.StitchRule}.vet(c)
	c.OptionalNumber("", "foot_length_cm", in.FootLengthCm, MinFootCm, MaxFootCm)
	c.OptionalNumber("", "length_ease_cm", in.LengthEaseCm, minLengthEase, maxLengthEase)
	c.Needs(in.LengthEaseCm != nil, "length_ease_cm", in.FootLengthCm != nil, "foot_length_cm")
	c.Needs(in.FootLengthCm != nil, "foot_length_cm", in.Gauge != nil, "gauge")
	c.OptionalCount("", "wedge_count", in.WedgeCount, MinWedges, MaxWedges)
	solid.CheckRates(c, in.Rates)
	c.OptionalCount("", "more_even_rounds", in.MoreEvenRounds, 0, MaxMoreEven)
	c.OptionalCount("", "centre_stitches", in.CentreStitches, 1, MaxRound)
	fault.Enum(c, "", "turn_method", in.TurnMethod, shortrow.TurnMethodYarnOver)
	c.OptionalCount("", "tip_stitches", in.TipStitches, 1, MaxRound)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Sound("kind", "direction") {
		vetToeUses(c, t, in)
	}
	return t
}

// vetToeUses refuses what the kind has no use for.
func vetToeUses(c *fault.Checks, t toe, in ToeInput) {
	kind, short := t.kind, t.kind == ToeKindShortRows
	for _, f := range []struct {
		field string
		given bool
		used  bool
	}{
		{"wedge_count", in.WedgeCount != nil, kind == ToeKindRound || kind == ToeKindStar},
		{"rates", len(in.Rates) > 0, kind == ToeKindWedge || kind == ToeKindStar},
		{"more_even_rounds", in.MoreEvenRounds != nil, kind == ToeKindRound},
		{"centre_stitches", in.CentreStitches != nil, short},
		{"turn_method", in.TurnMethod != 0, short},
		{"tip_stitches", in.TipStitches != nil, !short},
	} {
		if f.given && !f.used {
			c.Add(f.field, fault.ReasonContradictory, "means nothing for this kind of toe, worked in this direction; leave it out")
		}
	}
	t.vetLengths(c, in)
	if short {
		vetCupTurns(c, in.TurnMethod)
	}
}

// vetLengths refuses the length of a foot where a toe from its tip has no use for it, and says who has. The sections of a
// round toe hang on it, and so does whether there is room for them.
func (t toe) vetLengths(c *fault.Checks, in ToeInput) {
	if !t.toeUp || t.kind == ToeKindRound {
		return
	}
	const other = "from the toe up the foot comes after the toe, which does not depend on its length; " +
		"planHeel says where on the foot the heel begins"
	if in.FootLengthCm != nil {
		c.Add("foot_length_cm", fault.ReasonContradictory, other)
	}
	if in.LengthEaseCm != nil {
		c.Add("length_ease_cm", fault.ReasonContradictory, other)
	}
}

// fields are those that a closing hangs on.
func (t toe) fields(in ToeInput) []string {
	list := []string{"round_stitches"}
	if in.RoundStitches == nil {
		list[0] = "foot_circumference_cm"
	}
	if in.WedgeCount != nil {
		list = append(list, "wedge_count")
	}
	if len(in.Rates) > 0 {
		list = append(list, "rates")
	}
	if in.TipStitches != nil {
		list = append(list, "tip_stitches")
	}
	return list
}

// vetToeCentre checks the centre of a toe of short rows.
func vetToeCentre(c *fault.Checks, sole, centre int) bool {
	switch {
	case centre > sole-2:
		c.Infeasible(fmt.Sprintf("the centre of %d stitches can %s", sole, fromTo(2-sole%2, sole-2)), "centre_stitches")
	case (sole-centre)%2 != 0:
		c.Infeasible(fmt.Sprintf("leaves an odd number of the %d stitches beside it", sole), "centre_stitches")
	default:
		return true
	}
	return false
}

// settleFoot compares the toe with the foot, and says how long that is when a toe from the cuff begins.
func (t toe) settleFoot(c *fault.Checks, in ToeInput, out *Toe) {
	sock, toe := in.sockCm(), *out.LengthCm
	t.vetHeelRoom(c, in, sock, toe)
	if !t.toeUp {
		cm := sock - toe
		out.FootToToeCm = &cm
	}
}

// sockCm is how long the sock of a foot of known length is.
func (in ToeInput) sockCm() float64 {
	return *in.FootLengthCm + fault.Or(in.LengthEaseCm, defaultLengthEase)
}
