package knitmath

import (
	"math"
	"slices"
	"strconv"
)

// wedge checks everything and settles the profile.
func (c *checks) wedge(in WedgeInput) (w wedge, st, rw density) {
	ok := c.requiredCount("", "stitch_count", in.StitchCount, 2, MaxStitches)
	ok = c.optionalCount("", "rise_rows", in.RiseRows, 1, MaxWedgeRows) && ok
	ok = c.optionalNumber("", "rise_cm", in.RiseCm, MinCm, MaxCm) && ok
	ok = c.optionalNumber("", "rise_angle_degrees", in.RiseAngleDegrees, MinAngle, MaxAngle) && ok
	if in.Gauge != nil {
		var okGauge bool
		st, rw, okGauge = c.gauge("gauge", in.Gauge)
		ok = ok && okGauge
	}
	ok = c.oneRise(in) && ok
	ok = c.wedgeEnd(in) && ok
	ok = enum(c, "", "order", in.Order, ShortRowOrderShortestFirst) && ok
	ok = enum(c, "", "turn_method", in.TurnMethod, TurnMethodYarnOver) && ok
	ok = enum(c, "", "rounding", in.Rounding, RoundingDown) && ok
	ok = enum(c, "", "spread", in.Spread, TurnSpreadGrouped) && ok
	if in.curved() && in.Spread == TurnSpreadGrouped {
		c.add("spread", ReasonContradictory, "can group the turns of a straight wedge only")
		ok = false
	}
	ok = enum(c, "", "display_unit", in.DisplayUnit, DisplayUnitIn) && ok
	ok = c.profilePoints("profile_rows", in.ProfileRows, MaxWedgeRows) && ok
	ok = c.profilePoints("profile_cm", in.ProfileCm, MaxCm) && ok
	if !ok {
		return w, st, rw
	}
	w = wedge{width: in.StitchCount, tall: in.TallEnd, rounding: in.Rounding,
		shortest: in.Order == ShortRowOrderShortestFirst, method: in.TurnMethod}
	if in.curved() {
		c.curve(&w, in, rw)
	} else {
		c.straight(&w, in, st, rw)
	}
	if len(c.violations) == 0 && w.method == TurnMethodYarnOver && w.width+2*(w.highest()/2) > MaxStitches {
		c.infeasible("the yarn overs would bring the needle to more than "+strconv.Itoa(MaxStitches)+
			" loops; turn another way", "stitch_count", "turn_method")
	}
	return w, st, rw
}

// curved reports whether the question brings its own profile.
func (in WedgeInput) curved() bool { return len(in.ProfileRows) > 0 || len(in.ProfileCm) > 0 }

// wedgeEnd checks where the wedge is tall: a straight one says so, a curve shows
// it.
func (c *checks) wedgeEnd(in WedgeInput) bool {
	if !in.curved() {
		return requiredEnum(c, "", "tall_end", in.TallEnd, TallEndSides)
	}
	if in.TallEnd != TallEndUnspecified {
		c.add("tall_end", ReasonContradictory, "excludes a profile, which shows where it is tall")
		return false
	}
	return true
}

// profilePoints checks the points of a curve.
func (c *checks) profilePoints(field string, points []float64, most float64) bool {
	if len(points) == 0 {
		return true
	}
	if len(points) == 1 {
		c.add(field, ReasonInfeasible, "has one point; a profile needs at least 2")
		return false
	}
	ok := c.items("", field, len(points), MaxProfilePoints)
	for i, p := range points[:min(len(points), MaxProfilePoints)] {
		ok = c.number("", index(field, i), p, 0, most) && ok
	}
	return ok
}

// curve takes a profile from the question, heights in cm by way of the row gauge.
func (c *checks) curve(w *wedge, in WedgeInput, rw density) {
	w.riseField = "profile_rows"
	points := make([]int64, len(in.ProfileRows))
	for i, rows := range in.ProfileRows {
		points[i] = toMillionths(rows)
	}
	if in.ProfileRows == nil {
		w.riseField = "profile_cm"
		points = make([]int64, len(in.ProfileCm))
		for i, cm := range in.ProfileCm {
			points[i] = toMillionths(cm * rw.perCm())
		}
	}
	w.profile = profile{w.width, points}
	high, low := slices.Max(points), slices.Min(points)
	w.asked = float64(high-low) / 1e6
	switch {
	case high > MaxWedgeRows*1e6:
		c.infeasible("the profile is "+decimal(float64(high)/1e6, 0)+" rows high; at most "+
			strconv.Itoa(MaxWedgeRows)+" are planned", w.riseField)
	case slices.Max(w.profile.pairs(w.rounding)) == 0:
		c.infeasible("the profile rounds to no pair of short rows anywhere", w.riseField)
	}
}

// straight makes the profile of a straight wedge, its rise rounded to pairs.
func (c *checks) straight(w *wedge, in WedgeInput, st, rw density) {
	num, den := w.askedRise(in, st, rw)
	w.asked = float64(num) / float64(den)
	pairs := roundedDiv(num, 2*den, in.Rounding)
	w.rounding = RoundingNearest // of the stitches, now that the rise is rounded
	most := w.mostPairs()
	switch {
	case pairs < 1:
		c.infeasible("the rise is "+decimal(w.asked, 2)+" rows and rounds to no pair of short rows; it takes 2 rows, or rounding up",
			w.riseField)
		return
	case w.asked > MaxWedgeRows:
		c.infeasible("the rise is "+decimal(w.asked, 0)+" rows; at most "+strconv.Itoa(MaxWedgeRows)+" are planned", w.riseField)
		return
	case most < 1:
		c.infeasible("too few stitches for one short row with its tall end there; it takes at least "+
			strconv.Itoa(w.leastWidth())+", one of them beyond each turn", "stitch_count", "tall_end")
		return
	case pairs > int64(most):
		c.infeasible("the rise needs "+countOf(int(pairs), "turns")+" at least one stitch apart; these stitches hold at most "+
			strconv.Itoa(most)+", a rise of "+countOf(2*most, "rows"), "stitch_count", w.riseField)
		return
	}
	w.rise = 2 * int(pairs)
	w.profile = straight(w.width, w.rise, w.tall)
}

// highest is the greatest height of the profile, in rows.
func (w wedge) highest() int { return int(slices.Max(w.profile.points) / 1e6) }

// maxDeparture is one pair of rows: what turns may leave the profile by.
const maxDeparture = 2

// tooFarOff refuses turns that leave the profile by more than a pair: grouped
// ones, or the doubles of both flanks where a steep dart has them side by side.
func (c *checks) tooFarOff(in WedgeInput, rows float64) {
	off := " would leave the profile by " + decimal(rows, 2) + " rows, which is more than a pair; use "
	if in.Spread == TurnSpreadGrouped {
		c.infeasible("grouped turns"+off+"the interleaved spread", "spread")
		return
	}
	c.infeasible("double stitches on so few stitches"+off+"wrap and turn, or fewer rows", "turn_method")
}

// oneRise checks that the heights are given once, and can be turned into rows.
func (c *checks) oneRise(in WedgeInput) bool {
	given := []struct {
		field string
		ok    bool
	}{
		{"rise_rows", in.RiseRows != nil}, {"rise_cm", in.RiseCm != nil}, {"rise_angle_degrees", in.RiseAngleDegrees != nil},
		{"profile_rows", len(in.ProfileRows) > 0}, {"profile_cm", len(in.ProfileCm) > 0},
	}
	n := 0
	for _, g := range given {
		if g.ok {
			n++
		}
	}
	for _, g := range given {
		switch {
		case n == 0:
			c.add(g.field, ReasonRequired, "is missing; give a rise in rows, cm or degrees, or a profile in rows or cm")
		case n > 1 && g.ok:
			c.add(g.field, ReasonContradictory, "is one of several; give the heights once")
		}
	}
	if n == 1 && in.RiseRows == nil && len(in.ProfileRows) == 0 && in.Gauge == nil {
		c.add("gauge", ReasonRequired, "is missing; heights in cm or degrees need it")
		return false
	}
	return n == 1
}

// askedRise is the rise in rows as a fraction, exact unless it comes from an angle,
// which is read to the nearest millionth of a row.
func (w *wedge) askedRise(in WedgeInput, st, rw density) (num, den int64) {
	switch {
	case in.RiseRows != nil:
		w.riseField = "rise_rows"
		return int64(*in.RiseRows), 1
	case in.RiseCm != nil:
		w.riseField = "rise_cm"
		return rw.exact(micrometres(*in.RiseCm))
	}
	w.riseField = "rise_angle_degrees"
	run := float64(w.width) / st.perCm() * w.run()
	rows := math.Tan(*in.RiseAngleDegrees*math.Pi/180) * run * rw.perCm()
	return toMillionths(min(rows, 1e9)), 1e6
}

// roundedDiv is a/b rounded as a rule says, nearest and half-way up by default.
func roundedDiv(a, b int64, r Rounding) int64 {
	switch r {
	case RoundingUp:
		return ceilDiv(a, b)
	case RoundingDown:
		return floorDiv(a, b)
	}
	return halfUpDiv(a, b)
}

// mostPairs is the greatest number of turns a stitch apart that leave a stitch
// beyond each turn and work at least one before it.
func (w wedge) mostPairs() int {
	switch w.tall {
	case TallEndCentre:
		return (w.width - 1) / 2
	case TallEndSides:
		return w.width / 2
	}
	return w.width - 1
}

// leastWidth is the fewest stitches that hold one pair.
func (w wedge) leastWidth() int {
	if w.tall == TallEndCentre {
		return 3
	}
	return 2
}
