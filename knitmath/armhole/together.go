package armhole

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// counted is a width in stitches: the count nearest to it that the rule allows or, where the counts that
// are worked from it do not go with that one, the nearer of those beside it, halves up.
func (s *settled) counted(c *fault.Checks, um int64, r gauge.Rule, given *gauge.CountRule, field, rule string, fits func(int) bool) int {
	fields := []string{field, "gauge"}
	if given != nil {
		fields = append(fields, rule)
	}
	f := s.st.VetFit(c, um, r, "stitches", fields...)
	if f == nil {
		return 0
	}
	n := f.Count
	if n < MinWidth || n > MaxWidth {
		c.Infeasible(fmt.Sprintf("comes to %s; from %d to %d are planned", report.CountOf(n, "stitches"), MinWidth, MaxWidth), fields...)
		return n
	}
	if fits(n) {
		return n
	}
	nearest := math.Inf(1)
	for _, o := range []*gauge.NeighbourCount{f.Above, f.Below} {
		if o == nil || o.Count < MinWidth || o.Count > MaxWidth || !fits(o.Count) || !onItsSide(given, o.DifferenceCm) {
			continue
		}
		if off := math.Abs(o.DifferenceCm); off < nearest {
			n, nearest = o.Count, off
		}
	}
	return n
}

// onItsSide reports whether a rule rounds to a count that is so much larger than what is asked.
func onItsSide(r *gauge.CountRule, more float64) bool {
	return r == nil || (r.Rounding != measure.RoundingUp || more >= 0) && (r.Rounding != measure.RoundingDown || more <= 0)
}

// leaves reports whether a piece of so many stitches can lose as many at either edge and be left with a count, or
// with one that a rule allows.
func leaves(of int, count *int, cm *float64, r gauge.Rule, st gauge.Density) bool {
	switch {
	case count != nil:
		return (of-*count)%2 == 0
	case cm != nil:
		num, den := st.Exact(measure.Micrometres(*cm))
		_, ok := r.Among(num, den, 2-of%2, of-2, 2)
		return ok
	}
	return true
}

// acrossFields and topFields are what goes with the stitches of the body and of the sleeve.
var (
	acrossFields = []string{"across_back_cm", "across_back_stitches", "across_front_cm", "across_front_stitches", "across_rule"}
	topFields    = []string{"cap_top_cm", "cap_top_stitches", "top_rule"}
)

// bodyFits reports whether a back of so many stitches, and the front where it is the same, go with the width across and
// a saddle's neck.
func (s *settled) bodyFits(n int) bool {
	in := s.in
	return leaves(n, in.AcrossBackStitches, in.AcrossBackCm, s.rules.across, s.st) &&
		(s.style != StyleSaddle || leaves(n, in.NeckStitches, nil, gauge.AnyCount, s.st)) &&
		(in.FrontStitches != nil || leaves(n, in.AcrossFrontStitches, in.AcrossFrontCm, s.rules.across, s.st))
}

// sleeveFits reports whether a sleeve of so many stitches goes with the top of its cap.
func (s *settled) sleeveFits(n int) bool {
	in := s.in
	switch {
	case in.CapTopStitches != nil:
		return (n-*in.CapTopStitches)%2 == 0
	case in.TopRule != nil:
		_, ok := s.ruledTop(n)
		return ok
	}
	return true
}
