package shortrow

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// vetWedge checks everything and settles the profile.
func vetWedge(c *fault.Checks, in WedgeInput) (w wedge, st, rw gauge.Density) {
	st, rw = vetWedgeFields(c, in)
	if c.Err() != nil {
		return w, st, rw
	}
	w = wedge{width: in.WidthStitches, tall: in.TallEnd, rounding: in.Rounding,
		shortest: in.Order == OrderShortestFirst, method: in.TurnMethod}
	if in.curved() {
		vetCurve(c, &w, in, rw)
	} else {
		vetStraight(c, &w, in, st, rw)
	}
	if c.Err() == nil && w.method == TurnMethodYarnOver && w.width+2*(w.highest()/2) > stitch.MaxStitches {
		c.Infeasible("the yarn overs would bring the needle to more than "+strconv.Itoa(stitch.MaxStitches)+
			" loops; turn another way", "width_stitches", "turn_method")
	}
	return w, st, rw
}

// vetWedgeFields checks each field for itself.
func vetWedgeFields(c *fault.Checks, in WedgeInput) (st, rw gauge.Density) {
	c.RequiredCount("", "width_stitches", in.WidthStitches, 2, stitch.MaxStitches)
	c.OptionalCount("", "rise_rows", in.RiseRows, 1, MaxWedgeRows)
	c.OptionalNumber("", "rise_cm", in.RiseCm, measure.MinCm, measure.MaxCm)
	c.OptionalNumber("", "rise_angle_degrees", in.RiseAngleDegrees, MinAngle, MaxAngle)
	if in.Gauge != nil {
		st, rw = gauge.Vet(c, "gauge", in.Gauge)
	}
	vetOneRise(c, in)
	vetWedgeEnd(c, in)
	fault.Enum(c, "", "order", in.Order, OrderShortestFirst)
	fault.Enum(c, "", "turn_method", in.TurnMethod, TurnMethodYarnOver)
	fault.Enum(c, "", "rounding", in.Rounding, measure.RoundingDown)
	vetSpread(c, in)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	vetProfilePoints(c, "profile_rows", in.ProfileRows, MaxWedgeRows)
	vetProfilePoints(c, "profile_cm", in.ProfileCm, measure.MaxCm)
	return st, rw
}

// vetSpread checks how the steps are to be chosen, of which a curve leaves no choice.
func vetSpread(c *fault.Checks, in WedgeInput) {
	fault.Enum(c, "", "spread", in.Spread, TurnSpreadLeastEffort)
	c.OptionalNumber("", "tolerance_rows", in.ToleranceRows, 0, MaxTolerance)
	easy := in.Spread == TurnSpreadUnspecified || in.Spread == TurnSpreadLeastEffort
	switch {
	case in.curved() && (in.Spread == TurnSpreadGrouped || in.Spread == TurnSpreadLeastEffort):
		c.Add("spread", fault.ReasonContradictory, "can choose the turns of a straight wedge only")
	case in.curved() && in.ToleranceRows != nil, !easy && in.ToleranceRows != nil:
		c.Add("tolerance_rows", fault.ReasonContradictory, "is heeded only where the spread is that of least effort, of a straight wedge")
	}
}

// curved reports whether the question brings its own profile.
func (in WedgeInput) curved() bool { return len(in.ProfileRows) > 0 || len(in.ProfileCm) > 0 }

// vetWedgeEnd checks where the wedge is tall: a straight one says so, a curve shows
// it.
func vetWedgeEnd(c *fault.Checks, in WedgeInput) {
	switch {
	case !in.curved():
		fault.RequiredEnum(c, "", "tall_end", in.TallEnd, TallEndSides)
	case in.TallEnd != TallEndUnspecified:
		c.Add("tall_end", fault.ReasonContradictory, "excludes a profile, which shows where it is tall")
	}
}

// vetProfilePoints checks the points of a curve, if there is one.
func vetProfilePoints(c *fault.Checks, field string, points []float64, most float64) {
	if len(points) == 1 {
		c.Add(field, fault.ReasonOutOfRange, "has one point; a profile needs at least 2")
		return
	}
	c.Items("", field, len(points), MaxProfilePoints)
	for i, p := range points[:min(len(points), MaxProfilePoints)] {
		c.Number("", fault.Index(field, i), p, 0, most)
	}
}

// vetOneRise checks that the heights are given once, and can be turned into rows.
func vetOneRise(c *fault.Checks, in WedgeInput) {
	given := []struct {
		field string
		is    bool
	}{
		{"rise_rows", in.RiseRows != nil}, {"rise_cm", in.RiseCm != nil}, {"rise_angle_degrees", in.RiseAngleDegrees != nil},
		{"profile_rows", len(in.ProfileRows) > 0}, {"profile_cm", len(in.ProfileCm) > 0},
	}
	n := 0
	for _, g := range given {
		if g.is {
			n++
		}
	}
	for _, g := range given {
		switch {
		case n == 0:
			c.Add(g.field, fault.ReasonRequired, "is missing; give a rise in rows, cm or degrees, or a profile in rows or cm")
		case n > 1 && g.is:
			c.Add(g.field, fault.ReasonContradictory, "is one of several; give the heights once")
		}
	}
	if n == 1 && in.RiseRows == nil && len(in.ProfileRows) == 0 && in.Gauge == nil {
		c.Add("gauge", fault.ReasonRequired, "is missing; heights in cm or degrees need it")
	}
}
