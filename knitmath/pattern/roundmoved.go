package pattern

import "example.com/knitmath/knitmath/stitch"

// roundMoved leaves out what a round has after its end, "k to end, remove marker, k3, replace
// marker": the beginning of the round is moved on over stitches of the next one, which keeps
// the count.
func (p *parser) roundMoved(steps []Step) []Step {
	last := len(steps) - 1
	if last < 3 || p.onlyRows {
		return steps
	}
	if s := &steps[last]; s.Operation != stitch.PlaceMarker && s.Name != "replace marker" && s.Name != "replace m" {
		return steps
	}
	i := last - 1
	for i > 0 && !steps[i].stretch() && steps[i].Steps == nil && steps[i].takes == steps[i].leaves && steps[i].takes > 0 {
		i--
	}
	switch {
	case i == last-1, i < 1, !removal[steps[i].Name], !single(steps[i-1].RemainingStitches, 0):
		return steps
	}
	p.reading(steps[i].at.to(steps[last].at), "read as moving the beginning of the round, over stitches of the next one")
	p.asGiven = true
	return steps[:i]
}

// removal are steps that take the marker of the round off.
var removal = wordNames("rm", "remove marker", "remove m", "remove bor marker", "remove bor m", "remove the marker")

func wordNames(names ...string) map[string]bool {
	m := map[string]bool{}
	for _, n := range names {
		m[n] = true
	}
	return m
}
