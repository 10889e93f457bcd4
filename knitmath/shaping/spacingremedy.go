package shaping

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// mostRows is over how many rows changes are spread at most when one does not hold them:
// more is no longer one edge of a fabric.
const mostRows = 4

// accepts asks the planner whether it would space them.
func (in EvenSpacingInput) accepts() bool {
	var c fault.Checks
	s := vetSpacing(&c, in, false)
	if c.Err() != nil || in.Spread != GapSpreadMirrored {
		return c.Err() == nil // every other spread has a plan
	}
	_, ok := s.alike()
	return ok
}

// ending and with are the question with another end, and with another operation.
func (in EvenSpacingInput) ending(end int) EvenSpacingInput { in.EndStitches = end; return in }
func (in EvenSpacingInput) with(op stitch.Op) EvenSpacingInput {
	in.Operation = op
	return in
}

// another says which other operation makes the change, if one does, or comes nearest to
// it.
func (in EvenSpacingInput) another() []string {
	if in.EndStitches > in.StartStitches {
		if in.with(stitch.KFB).accepts() {
			return []string{"two increases cannot share the strand between two stitches: use kfb, which is worked into a stitch"}
		}
		return nil
	}
	double := in.with(stitch.K3tog)
	if double.accepts() {
		return []string{"use a double decrease (k3tog, sssk, CDD)"}
	}
	if ends := double.nearest(); ends != "" {
		return []string{"use a double decrease (k3tog, sssk, CDD) to " + ends}
	}
	return nil
}

// nearest are the end counts beside that which is asked, if they would be spaced: "40 or
// 42 stitches".
func (in EvenSpacingInput) nearest() string {
	var ends []string
	for _, end := range []int{in.EndStitches - 1, in.EndStitches + 1} {
		if in.ending(end).accepts() {
			ends = append(ends, strconv.Itoa(end))
		}
	}
	if len(ends) == 0 {
		return ""
	}
	return strings.Join(ends, " or ") + " stitches"
}

// inMoreRows says over which counts several rows make the change, if a few do: "work the
// rest in another row".
func (s spacing) inMoreRows(in EvenSpacingInput) []string {
	var counts []string
	for s.k > s.most() && s.most() > 0 && len(counts) < mostRows {
		in.EndStitches = s.start + s.most()*s.op.Net()
		if !in.accepts() {
			return nil
		}
		counts = append(counts, strconv.Itoa(in.EndStitches))
		s.k -= s.most()
		s.start, in.StartStitches = in.EndStitches, in.EndStitches
	}
	switch in.EndStitches = s.end; {
	case len(counts) == 0 || len(counts) >= mostRows || !in.accepts():
		return nil
	case len(counts) == 1:
		return []string{"work the rest in another row"}
	}
	counts = append(counts, strconv.Itoa(s.end))
	return []string{"work it over " + strconv.Itoa(len(counts)) + " rows, to " + strings.Join(counts, ", then ")}
}

// narrower says how wide the edges may be at most: narrower ones leave more room, so
// that the widest is found by halving.
func (in EvenSpacingInput) narrower() string {
	accepts := func(edge int) bool { in.EdgeStitches = &edge; return in.accepts() }
	if !accepts(0) {
		return ""
	}
	low, high := 0, min(in.StartStitches/2, gauge.MaxEdges)
	for low < high {
		if mid := (low + high + 1) / 2; accepts(mid) {
			low = mid
		} else {
			high = mid - 1
		}
	}
	return "edge_stitches may be at most " + strconv.Itoa(low)
}

// tooMany says what would fit instead; every remedy has been asked.
func (s spacing) tooMany(in EvenSpacingInput, remedies bool) string {
	most := s.most()
	for remedies && most > 0 && !in.ending(s.start+most*s.op.Net()).accepts() {
		most-- // not every number reads the same from both ends
	}
	detail := s.op.Abbr() + " is needed " + report.Times(s.k) + " and "
	if most < 1 {
		detail += "does not fit"
	} else {
		detail += "fits at most " + report.Times(most) + ", which gives " + report.CountOf(s.start+most*s.op.Net(), "stitches")
	}
	if !remedies {
		return detail
	}
	var words []string
	if s.op.Net() == -1 || s.op.Takes() == 0 {
		words = in.another()
	}
	words = append(words, s.inMoreRows(in)...)
	if s.most() < 1 && s.edge > 0 {
		if narrower := in.narrower(); narrower != "" {
			words = append(words, narrower)
		}
	}
	if len(words) == 0 {
		return detail
	}
	return detail + "; " + strings.Join(words, ", or ")
}
