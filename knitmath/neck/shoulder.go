package neck

import (
	"fmt"
	"math"
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// How a shoulder slopes where nobody says: by an inch, as knitted patterns commonly
// have it, and no more steeply than bodies, whose shoulders fall by 20 to 25 degrees
// (from memory).
const (
	usualSlopeCm    = 2.5
	usualSlopeMost  = 20.0 // degrees
	degreesPerRound = 360.0
)

// A slope is a shoulder in steps, from the armhole to the neck. Each step is two rows
// above the one before, so that its line rises by two rows a step.
type slope struct {
	steps []int
	field string
}

// rows is how much the line through the middles of the steps rises over the shoulder.
func (s slope) rows() int {
	if len(s.steps) == 1 {
		return 0
	}
	return 2 * len(s.steps)
}

// slopeFields are what the slope of a shoulder comes from beside its stitches.
var slopeFields = []string{"shoulder_slope_rows", "shoulder_slope_cm", "shoulder_slope_degrees", "edge_stitches", "strap_stitches"}

// slopeOf settles the steps of a shoulder. Every step has the stitches that a decrease
// beside it takes (see makeRoom). The larger ones come first. Published examples have them so (7, 6, 6
// and 6, 6, 6, 6, 5, 5, 5, 5) and the other way about.
func (s *settler) slopeOf(p setting) slope {
	if !p.divided || !s.c.Sound(slopeFields...) {
		return slope{}
	}
	in, shoulder, rw, cm := s.in, p.shoulder, p.rw, s.st.SizeCm(p.shoulder)
	tan := func(degrees float64) float64 { return math.Tan(degrees * 2 * math.Pi / degreesPerRound) }
	height, field, usual := 0.0, "", false
	switch {
	case in.ShoulderSlopeRows != nil:
		height, field = float64(*in.ShoulderSlopeRows), "shoulder_slope_rows"
	case in.ShoulderSlopeCm != nil:
		height, field = *in.ShoulderSlopeCm*rw.PerCm(), "shoulder_slope_cm"
	case in.ShoulderSlopeDegrees != nil:
		height, field = tan(*in.ShoulderSlopeDegrees)*cm*rw.PerCm(), "shoulder_slope_degrees"
	case in.strap() > 0: // it is straight
	default:
		height, usual = min(usualSlopeCm, tan(usualSlopeMost)*cm)*rw.PerCm(), true
	}
	n, most := stepsOf(height), max(1, shoulder/leastStep(in))
	if usual {
		n = min(n, most)
	}
	if n > most {
		s.c.Infeasible(fmt.Sprintf("a slope of %s takes %d steps of at least %s, and the shoulder has %s", report.CountOf(2*n, "rows"), n,
			report.CountOf(leastStep(in), "stitches"), report.CountOf(shoulder, "stitches")), field)
		return slope{}
	}
	steps := make([]int, n)
	for i := range steps {
		steps[i] = shoulder / n
		if i < shoulder%n {
			steps[i]++
		}
	}
	return slope{steps, field}
}

// makeRoom gives the last step a stitch more, for a decrease in the row that binds off the step
// before it: one bound-off stitch is on the right needle there, and is no half of it. The larger
// steps come last then; of equal ones the first gives a stitch.
func (s slope) makeRoom() {
	last := len(s.steps) - 1
	if slices.Reverse(s.steps); s.steps[0] == s.steps[last] {
		s.steps[0]--
		s.steps[last]++
	}
}

// pinches reports whether the last step has no room for a decrease beside the one before it.
func (l *layout) pinches() bool {
	before := len(l.steps) - 2
	if before < 0 || l.shortRows || l.steps[before+1] > leastStep(l.in) {
		return false
	}
	for side := range 2 {
		if e, ok := l.at(side, l.slopeRow(side, before)); ok && !e.bindOff {
			return true
		}
	}
	return false
}

// stepsOf is how many steps come to a rise, in rows: one for every two, half-way up,
// two at least where it rises at all.
func stepsOf(rise float64) int {
	if measure.RoundHalfUp(rise) < 1 {
		return 1
	}
	return int(min(max(2, measure.RoundHalfUp(rise/2)), MaxDepthRows))
}

// leastStep is the fewest stitches of a step: those of a decrease beside the neck, with
// one that it takes.
func leastStep(in Input) int { return fault.Or(in.EdgeStitches, defaultEdge) + 1 }

// defaultEdge is how many stitches stand outside a decrease. Common practice.
const defaultEdge = 1
