package shortrow

import (
	"math"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// vetCurve takes a profile from the question, heights in cm by way of the row gauge.
func vetCurve(c *fault.Checks, w *wedge, in WedgeInput, rw gauge.Density) {
	w.riseField = "profile_rows"
	points := make([]int64, len(in.ProfileRows))
	for i, rows := range in.ProfileRows {
		points[i] = measure.ToMillionths(rows)
	}
	if in.ProfileRows == nil {
		w.riseField = "profile_cm"
		points = make([]int64, len(in.ProfileCm))
		for i, cm := range in.ProfileCm {
			points[i] = measure.ToMillionths(cm * rw.PerCm())
		}
	}
	w.profile = profile{w.width, curve.Evenly(points...)}
	high, low := slices.Max(points), slices.Min(points)
	w.asked = float64(high-low) / 1e6
	if high > MaxWedgeRows*1e6 {
		c.Infeasible("the profile is "+measure.Decimal(float64(high)/1e6, 0)+" rows high; at most "+
			strconv.Itoa(MaxWedgeRows)+" are planned", w.riseField)
		return
	}
	switch pairs := w.profile.pairs(w.rounding); {
	case slices.Max(pairs) == 0:
		c.Infeasible("the profile rounds to no pair of short rows anywhere", w.riseField)
	case level(pairs):
		c.Infeasible("the profile has no rise in pairs of rows, and nothing to turn for; work its rows even", w.riseField)
	}
}

// level reports whether all stitches have the same pairs of rows.
func level(pairs []int) bool { return slices.Max(pairs) == slices.Min(pairs) }

// vetStraight makes the profile of a straight wedge, its rise rounded to pairs.
func vetStraight(c *fault.Checks, w *wedge, in WedgeInput, st, rw gauge.Density) {
	num, den := w.askedRise(in, st, rw)
	w.asked = float64(num) / float64(den)
	pairs := measure.RoundedDiv(num, 2*den, in.Rounding)
	w.rounding = measure.RoundingNearest // of the stitches, now that the rise is rounded
	most := w.mostPairs()
	if pairs < 1 {
		c.Infeasible("the rise is "+report.AmountOf(measure.Decimal(w.asked, 2), "rows")+
			" and rounds to no pair of short rows; it takes 2 rows, or rounding up", w.riseField)
	}
	switch {
	case w.asked > MaxWedgeRows:
		c.Infeasible("the rise is "+measure.Decimal(w.asked, 0)+" rows; at most "+strconv.Itoa(MaxWedgeRows)+" are planned", w.riseField)
		return
	case most < 1:
		c.Infeasible("too few stitches for one short row with its tall end there"+w.wideEnough(in, st, rw), "width_stitches", "tall_end")
		return
	case pairs > int64(most):
		c.Infeasible("the rise needs "+report.CountOf(int(pairs), "turns")+" at least one stitch apart; these stitches hold at most "+
			strconv.Itoa(most)+", a rise of "+report.CountOf(2*most, "rows"), "width_stitches", w.riseField)
		return
	case pairs < 1:
		return
	}
	w.profile = straight(w.width, 2*int(pairs), w.tall)
}

// highest is the greatest height of the profile, in rows.
func (w wedge) highest() int {
	high := int64(0)
	for _, m := range w.profile.wanted {
		high = max(high, m.Value)
	}
	return int(high / 1e6)
}

// maxDeparture is one pair of rows: what turns may leave the profile by without
// a word.
const maxDeparture = 2

// askedRise is the rise in rows as a fraction, exact unless it comes from an angle,
// which is read to the nearest millionth of a row.
func (w *wedge) askedRise(in WedgeInput, st, rw gauge.Density) (num, den int64) {
	switch {
	case in.RiseRows != nil:
		w.riseField = "rise_rows"
		return int64(*in.RiseRows), 1
	case in.RiseCm != nil:
		w.riseField = "rise_cm"
		return rw.Exact(measure.Micrometres(*in.RiseCm))
	}
	w.riseField = "rise_angle_degrees"
	run := float64(w.width) / st.PerCm() * w.run()
	rows := math.Tan(*in.RiseAngleDegrees*math.Pi/180) * run * rw.PerCm()
	return measure.ToMillionths(min(rows, 1e9)), 1e6
}

// mostPairs is the greatest number of turns a stitch apart that leave a stitch
// beyond each turn, in the middle one that is beyond those of both sides, and work
// at least one before it.
func (w wedge) mostPairs() int { return (w.width-1)/w.flanks() - w.spare() }

// wideEnough says how many stitches hold the rise, of which a wider one that is asked by its angle has
// more; nothing where none do.
func (w wedge) wideEnough(in WedgeInput, st, rw gauge.Density) string {
	for ; w.width <= stitch.MaxStitches; w.width++ {
		num, den := w.askedRise(in, st, rw)
		if pairs := measure.RoundedDiv(num, 2*den, in.Rounding); max(pairs, 1) <= int64(w.mostPairs()) {
			return "; this rise takes at least " + strconv.Itoa(w.width) + ", one of them beyond each turn"
		}
	}
	return ""
}

// flanks is how many times the height falls from the tallest stitch to a lowest.
func (w wedge) flanks() int {
	if w.tall == TallEndCentre || w.tall == TallEndSides {
		return 2
	}
	return 1
}

// spare is how many stitches a turn needs beyond the one after it: one where that
// is made double, and has a row of its own.
func (w wedge) spare() int {
	if w.method == TurnMethodGerman {
		return 1
	}
	return 0
}
