package armhole

import (
	"fmt"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// An easing lets the edge of an armhole be less steep: more rows, wider bind-offs, a wider underarm, the least that
// helps.
type easing struct {
	first, last, step int
	ask               func(in *Input, n int)
	words             func(n int) string
}

// easings are what may be eased.
func (s settled) easings() []easing {
	var list []easing
	if s.shapingGiven {
		list = append(list, easing{s.shapingRows + rowStep, s.depth, rowStep, func(in *Input, n int) { in.ShapingRows = &n },
			func(n int) string { return "shaping over " + report.CountOf(n, "rows") }})
	}
	if s.largestGroup > 0 {
		list = append(list, easing{s.largestGroup + 1, min(s.backLost, s.frontLost, MaxGroup), 1,
			func(in *Input, n int) { in.LargestGroupStitches = &n },
			func(n int) string { return fmt.Sprintf("bind-offs of up to %d stitches", n) }})
	}
	if s.in.UnderarmStitches != nil {
		list = append(list, easing{s.underarm + 1, min(s.backLost, s.frontLost, s.capLost()-1), 1,
			func(in *Input, n int) { in.UnderarmStitches = &n },
			func(n int) string { return "an underarm of " + report.CountOf(n, "stitches") }})
	}
	return list
}

// refuseArmhole says that an armhole has too few rows for what it loses, and what would do.
func (s settled) refuseArmhole(c *fault.Checks) {
	lost := max(s.backLost, s.frontLost)
	fields := []string{s.depthField}
	if s.shapingGiven {
		fields[0] = "shaping_rows"
	}
	if s.largestGroup > 0 {
		fields = append(fields, "largest_group_stitches")
	}
	if s.in.UnderarmStitches != nil {
		fields = append(fields, "underarm_stitches")
	}
	detail := "an edge loses " + report.CountOf(lost-s.underarm, "stitches") + " above the underarm along a curve, which " +
		report.CountOf(s.shapingRows, "rows") + " are too few for if no more are bound off at once"
	var ways []string
	for _, e := range s.easings() {
		ways = append(ways, s.eased(e)...)
	}
	if len(ways) == 0 {
		if moved, ok := s.moved(s.depthMove()); ok {
			ways = []string{moved.depthMoved(s)}
		}
	}
	c.Infeasible(detail+would(ways), fields...)
}

// eased is the least of an easing with which the whole is planned or, where the cap does not go
// into the armholes that it leads to, the least with which these are, and what else to move.
func (s settled) eased(e easing) []string {
	var first *settled // with the least
	least, solved := 0, 0
	for n := e.first; n <= e.last && solved < mostSolved; n += e.step {
		in := s.in
		e.ask(&in, n)
		var c fault.Checks
		t := vet(&c, in, false)
		if t.tries, t.budget = triesMoved, s.budget; c.Err() != nil || !t.armholes() {
			continue
		}
		if first == nil {
			first, least = &t, n
		}
		if solved++; !t.hopeful() {
			continue
		}
		if _, ok := t.solve(); ok && t.planned() {
			return []string{e.words(n)}
		}
	}
	if first == nil {
		return nil
	}
	for _, m := range first.moves() {
		if moved, ok := first.moved(m); ok {
			return []string{e.words(least) + " and " + m.words(moved, *first)}
		}
	}
	return nil
}

// armholes reports whether back and front can be shaped.
func (s settled) armholes() bool {
	_, back := s.armhole(s.back, s.backLost)
	_, front := s.armhole(s.front, s.frontLost)
	return back && front
}
