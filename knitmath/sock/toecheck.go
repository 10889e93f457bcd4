package sock

import (
	"fmt"
	"strconv"
	"strings"

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
	c.OptionalCount("", "end_stitches", in.EndStitches, 1, MaxRound)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Sound("kind", "direction") {
		vetToeUses(c, t, in)
	}
	return t
}

// vetToeUses refuses what the kind has no use for.
func vetToeUses(c *fault.Checks, t toe, in ToeInput) {
	kind, short := t.kind, t.kind == ToeKindShortRows
	if short && t.toeUp {
		c.Add("direction", fault.ReasonContradictory, "toes of short rows are planned from the cuff down; from the toe up take another kind")
	}
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
		{"end_stitches", in.EndStitches != nil, !short},
		{"foot_length_cm", in.FootLengthCm != nil, !t.toeUp || kind == ToeKindRound && in.WedgeCount == nil},
		{"length_ease_cm", in.LengthEaseCm != nil, !t.toeUp},
	} {
		if f.given && !f.used {
			c.Add(f.field, fault.ReasonContradictory, "means nothing for this kind of toe, worked in this direction; leave it out")
		}
	}
	if short {
		vetCupTurns(c, in.TurnMethod)
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
	if in.EndStitches != nil {
		list = append(list, "end_stitches")
	}
	return list
}

// vetToeCentre checks the centre of a toe of short rows.
func vetToeCentre(c *fault.Checks, sole, centre int) bool {
	switch {
	case centre > sole-2:
		c.Infeasible(fmt.Sprintf("the centre of %d stitches can have %d to %d", sole, 2-sole%2, sole-2), "centre_stitches")
	case (sole-centre)%2 != 0:
		fits := strconv.Itoa(centre-1) + " or " + strconv.Itoa(centre+1)
		if centre == 1 {
			fits = "2"
		}
		if centre+1 > sole-2 {
			fits = strconv.Itoa(centre - 1)
		}
		c.Infeasible(fmt.Sprintf("leaves an odd number of the %d stitches beside it; %s would do", sole, fits), "centre_stitches")
	default:
		return true
	}
	return false
}

// footToToe is how long the foot is when the toe begins.
func (t toe) footToToe(c *fault.Checks, in ToeInput, toeCm float64) *float64 {
	sock := *in.FootLengthCm + fault.Or(in.LengthEaseCm, defaultLengthEase)
	cm := sock - toeCm
	if cm <= 0 {
		c.Infeasible("the toe is "+t.unit.Size(toeCm)+" long, and the sock only "+t.unit.Size(sock)+t.wayOut(in, toeCm),
			"foot_length_cm", "gauge")
		return nil
	}
	return &cm
}

// fittingFoot offers a foot longer than so much, to half a cm.
func fittingFoot(unit measure.DisplayUnit, cm float64) string {
	if foot := 0.5 * float64(measure.CeilQuotient(cm+0.01, 0.5)); foot <= MaxFootCm {
		return "; it fits a foot of " + unit.Size(foot)
	}
	return ""
}

// wayOut is the length of a foot that has room for the toe, to half a cm, and the kind of toe that
// is shortest, where the foot has room for that.
func (t toe) wayOut(in ToeInput, toeCm float64) string {
	ease := fault.Or(in.LengthEaseCm, defaultLengthEase)
	words := fittingFoot(t.unit, toeCm-ease)
	shortest, length := ToeKindUnspecified, *in.FootLengthCm+ease
	for kind := ToeKindWedge; kind <= ToeKindShortRows; kind++ {
		other, err := PlanToe(ToeInput{Kind: kind, RoundStitches: &t.round, Gauge: in.Gauge})
		if err == nil && *other.LengthCm < length {
			shortest, length = kind, *other.LengthCm
		}
	}
	if shortest == ToeKindUnspecified {
		return words + "; with fewer stitches it is shorter"
	}
	return words + "; " + strings.ToLower(toeNames[shortest]) + " is only " + t.unit.Size(length) + " long"
}
