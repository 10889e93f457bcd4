package shortrow

import (
	"slices"
	"strings"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// sequences tells the turns of each side as a knitter counts them: the first by
// the stitches left unworked, the next ones by their distance from the turn
// before. A sequence ends where the turns of its side change direction, as they
// do between two humps of a curve.
func sequences(turns []turn, width int) []TurnSequence {
	var out []TurnSequence
	for _, side := range []stitch.Side{stitch.RightSide, stitch.WrongSide} {
		last, direction := -1, 0
		for _, t := range turns {
			if t.side != side {
				continue
			}
			step := t.place - last
			if last < 0 || step*direction < 0 || step == 0 {
				unworked := t.place
				if side == stitch.RightSide {
					unworked = width - t.place
				}
				out = append(out, TurnSequence{FirstUnworkedStitches: unworked, Side: side})
				last, direction = t.place, 0
				continue
			}
			last, direction = t.place, step
			out[len(out)-1].add(measure.Abs(step))
		}
	}
	return out
}

func (s *TurnSequence) add(step int) {
	if last := len(s.Steps) - 1; last >= 0 && s.Steps[last].Stitches == step {
		s.Steps[last].Times++
		return
	}
	s.Steps = append(s.Steps, TurnRun{step, 1})
}

// effort is how much of the turns there is to remember. Two sides that turn alike are
// counted once.
func effort(turns []TurnSequence, width int, shortest bool) int {
	if len(turns) == 2 && turns[0].mirrors(turns[1]) {
		turns = turns[:1]
	}
	n := 0
	for _, s := range turns {
		n += 1 + 2*len(s.Steps)
		if s.alike(width, shortest) {
			n--
		}
	}
	return n
}

// alike reports whether the work begins at the edge with as many stitches as the first
// step has: left unworked, or with the shortest row first worked.
func (s TurnSequence) alike(width int, shortest bool) bool {
	begins := s.FirstUnworkedStitches
	if shortest {
		begins = width - begins
	}
	return len(s.Steps) > 0 && s.Steps[0].Stitches == begins
}

// Summary says the answer in words.
func (o Wedge) Summary() string {
	var b strings.Builder
	b.WriteString("A wedge of " + report.CountOf(o.width, "stitches") + " that rises " + report.CountOf(o.RiseRows, "rows"))
	if o.RiseCm != nil {
		b.WriteString(" (" + o.unit.Size(*o.RiseCm))
		if o.RiseAngleDegrees != nil {
			b.WriteString(", " + report.AmountOf(measure.Decimal(*o.RiseAngleDegrees, 1), "degrees"))
		}
		b.WriteString(")")
	}
	b.WriteString(". ")
	switch {
	case len(o.Turns) == 1:
		b.WriteString(o.sentence(o.Turns[0]) + ". ")
	case len(o.Turns) == 2 && o.Turns[0].mirrors(o.Turns[1]):
		b.WriteString(o.sentence(o.Turns[0]) + ", at each side. ")
	case len(o.Turns) > 1:
		b.WriteString("Follow the rows: " + report.CountOf(o.PairCount, "pairs") + " of short rows lie under the tallest place. ")
	}
	b.WriteString(report.CountOf(o.TurnCount, "turns") + " to close.")
	return b.String()
}

// mirrors reports whether two sides turn alike.
func (s TurnSequence) mirrors(other TurnSequence) bool {
	return s.FirstUnworkedStitches == other.FirstUnworkedStitches && slices.Equal(s.Steps, other.Steps)
}

// toldSteps is how many different steps in succession a sentence tells.
const toldSteps = 6

// sentence is "Turn with 5 stitches unworked, then 4 stitches before the last
// turn 3 times; then 5 stitches before the last turn twice". Of equal steps from the edge
// it says where they begin, "Turn after 5 stitches", and not how many are left.
func (o Wedge) sentence(s TurnSequence) string {
	var b strings.Builder
	german := o.method == TurnMethodGerman
	switch after := o.shortest && s.alike(o.width, true); {
	case after && german:
		b.WriteString("Turn after " + report.CountOf(s.Steps[0].Stitches, "stitches") + " and the one made double")
	case after:
		b.WriteString("Turn after " + report.CountOf(s.Steps[0].Stitches, "stitches"))
	case german:
		b.WriteString("Turn with " + report.CountOf(s.FirstUnworkedStitches, "stitches") + " unworked (the one made double among them)")
	default:
		b.WriteString("Turn with " + report.CountOf(s.FirstUnworkedStitches, "stitches") + " unworked")
	}
	direction := "before"
	if o.shortest {
		direction = "past"
	}
	for i, r := range s.Steps {
		step := report.CountOf(r.Stitches, "stitches") + " " + direction + " the last turn"
		switch i {
		case 0:
			b.WriteString(", then " + step)
		case toldSteps:
			b.WriteString("; and so on (see the rows)")
			return b.String()
		default:
			b.WriteString("; then " + step)
		}
		if r.Times > 1 {
			b.WriteString(" " + report.Times(r.Times))
		}
	}
	return b.String()
}
