package solid

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// settleWedges settles the wedges and closes them.
func settleWedges(c *fault.Checks, h *hat, in CrownInput) {
	if in.WedgeCount == nil {
		h.wedges = h.likedWedges(in)
	} else {
		h.wedges = *in.WedgeCount
	}
	refused := ""
	if !h.closed {
		refused = h.close(in)
	}
	if refused != "" {
		fields := []string{h.sizeField}
		if in.WedgeCount != nil {
			fields = append(fields, "wedge_count")
		}
		if in.EndStitches != nil {
			fields = append(fields, "end_stitches")
		}
		c.Infeasible("the crown "+refused, fields...)
		return
	}
	if h.crown > h.total {
		fields := []string{h.totalField}
		if h.crownGiven(in) {
			fields = append(fields, h.crownField)
		}
		c.Infeasible("the crown alone takes "+report.CountOf(h.crown, "rounds")+" and the hat has "+strconv.Itoa(h.total)+
			"; it must have at least as many", fields...)
	}
}

// crownGiven reports whether the question says what the depth of the crown hangs on.
func (h *hat) crownGiven(in CrownInput) bool {
	return h.crownField != "shape" || in.Shape != CrownShapeUnspecified
}

// close closes the hat with its wedges, or says what is in the way. Where the rhythm of fewest runs
// would ruffle, and no tolerance or depth is asked for, one that keeps nearer to the curve is
// looked for, then one as deep from its first decrease to its last as the curve.
func (h *hat) close(in CrownInput) (refused string) {
	given := in.CrownRounds != nil || in.CrownCm != nil
	k := in.Shape.curve()
	usual := fault.Or(in.ToleranceRounds, h.usualTolerance(k))
	pace := func(tolerance float64) Pace {
		return Along(func(stitches float64) float64 { return k.fall(stitches / float64(h.stitches)) }, h.crownRounds,
			h.successive(in.SuccessiveRounds), tolerance)
	}
	first := pace(usual)
	switch {
	case len(in.Rates) > 0:
		first = AtRates(in.Rates...)
	case given:
		first = first.DrawnOut()
	}
	rounds, refused := h.lay(in)
	if refused != "" {
		return refused
	}
	h.closeAt(rounds, first)
	if given || len(in.Rates) > 0 || in.ToleranceRounds != nil {
		return ""
	}
	better := h.form() != CrownRuffles
	for _, tight := range tightTolerances {
		if !better && tight < usual {
			h.closeAt(rounds, pace(tight))
			better = h.form() == ""
		}
	}
	if !better {
		h.closeAt(rounds, pace(usual).DrawnOut())
		better = h.form() == ""
	}
	if !better {
		h.closeAt(rounds, first) // none is better
	}
	return ""
}

// lay works the rounds of the crown with its wedges, at whatever pace.
func (h *hat) lay(in CrownInput) (rounds laid, refused string) {
	q := Closing{StartStitches: h.stitches, Wedges: h.wedges, Paired: in.Stacks == StacksPaired, Uneven: in.Uneven}
	each := 1
	if q.Paired {
		each = 2
	}
	q.EndStitches = fault.Or(in.EndStitches, each*h.wedges)
	if q.Uneven == UnevenLeftOver && in.EndStitches == nil {
		q.EndStitches = 2*h.wedges - 1 // what is left over is less than a wedge for each
	}
	return q.lay()
}

// closeAt closes the hat at a pace. A crown begins with a decrease.
func (h *hat) closeAt(rounds laid, pace Pace) {
	h.plan = rounds.at(pace)
	h.crown = h.plan.RoundCount - h.plan.Rounds[0].RoundNumber + 1
}

// usualTolerance is how far a decrease round may lie from the curve unless that is said. A
// rounded crown of few rounds keeps nearer to its curve, which would else become a cone.
func (h *hat) usualTolerance(k curve) float64 {
	if !k.rounded {
		return DefaultCrownTolerance
	}
	return min(max(float64(h.crownRounds)/roundsOfTolerance, 0.5), DefaultCrownTolerance)
}

// roundsOfTolerance is of how many rounds of a rounded crown one is allowed. Own choice.
const roundsOfTolerance = 20

// How many wedges fewer or more than lie flat a crown may have where nothing is said, how
// many fewer rather than an adjusting round. Own choice.
const (
	mostFromFlat  = 1.0
	mostBelowFlat = 2.0
	littleLost    = 50 // one stitch in so many may be lost without looking further
)

// successive is how many of the last decrease rounds follow one another: two, or where a
// crown has few, one alone, since two would cost it too much of its depth.
func (h *hat) successive(asked *int) int {
	if asked == nil && h.stitches <= fewRounds*h.wedges {
		return 1
	}
	return fault.Or(asked, DefaultSuccessive)
}

// fewRounds is up to how many decrease rounds a crown has few. Own choice.
const fewRounds = 6

// flatWedges is how many wedges lie flat with a decrease round every 2nd round: a disc
// loses 2 pi stitches for every stitch's width that a round is high.
func (h *hat) flatWedges(stacks Stacks) float64 {
	flat := 2 * 2 * math.Pi * h.st.PerCm() / h.rw.PerCm()
	if stacks == StacksPaired {
		flat /= 2
	}
	return min(max(flat, MinWedges), MaxWedges)
}

// likedWedges is how many wedges there are unless asked otherwise: of those that divide the
// stitches and lie nearly flat the nearest whose crown neither ruffles nor rises to a point. Where
// there is none it is the nearest of all if that loses no more than a stitch in fifty in its
// adjusting round, then those that lose the fewest.
func (h *hat) likedWedges(in CrownInput) int {
	flat := h.flatWedges(in.Stacks)
	nearest := int(measure.RoundHalfUp(flat))
	liesFlat := func(n int) bool {
		h.wedges = n
		h.closed = h.close(in) == "" && h.form() == ""
		return h.closed
	}
	best := h.nearestWedges(flat, 0, liesFlat)
	if best == 0 && in.Uneven <= UnevenAdjust {
		most := h.stitches % nearest
		if most == 0 || most*littleLost > h.stitches || !liesFlat(nearest) {
			for lost := 1; lost <= max(most, h.stitches/littleLost) && best == 0; lost++ {
				best = h.nearestWedges(flat, lost, liesFlat)
			}
		}
	}
	if best == 0 && !h.closed {
		best = h.nearestWedges(flat, 0, func(int) bool { return true })
	}
	if best == 0 {
		return nearest
	}
	return best
}

// nearestWedges is the number of wedges nearest to what lies flat that leaves so many stitches
// over and is good; 0 if none is.
func (h *hat) nearestWedges(flat float64, over int, good func(wedges int) bool) int {
	off := func(n int) float64 { return math.Abs(float64(n) - flat) }
	var near []int
	for n := MinWedges; n <= MaxWedges; n++ {
		if h.stitches%n == over && float64(n) < flat+mostFromFlat && off(n) < mostBelowFlat {
			near = append(near, n)
		}
	}
	sort.SliceStable(near, func(i, j int) bool { return off(near[i]) < off(near[j]) })
	if i := slices.IndexFunc(near, good); i >= 0 {
		return near[i]
	}
	return 0
}
