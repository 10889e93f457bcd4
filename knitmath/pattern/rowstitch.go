package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// stitches looks for another stitch in the place of one that is taken for it.
func (e *rowEdits) stitches(steps []Step) {
	for i := range steps {
		s := &steps[i]
		e.stitches(s.Steps)
		was := *s
		for _, op := range knownOps[s.Operation] {
			if e.spare <= 0 {
				return
			}
			s.Operation, s.takes, s.leaves = op, int16(op.Takes()), int16(op.Leaves())
			if e.allFit() {
				e.swapped(&was, op)
			}
		}
		*s = was
	}
}

func (e *rowEdits) allFit() bool {
	if e.blind {
		return true
	}
	for _, size := range e.known {
		if !e.fits(size) {
			return false
		}
	}
	return true
}

func (e *rowEdits) swapped(s *Step, op stitch.Op) {
	said := e.piece.source[s.at.start:s.at.end]
	n := len(s.Operation.Abbr())
	if len(said) < n || folded(said[:n]) != s.Operation.Abbr() {
		e.togetherOther(s, op)
		return
	}
	place := s.at
	place.end = place.start + int32(n)
	e.found = append(e.found, candidate{at: place, put: op.Abbr(), says: op.Abbr() + " instead of " + said[:n], row: e.row,
		balanced: balanced(e.steps)})
}

// togetherOther is another number in a decrease that is written out, "knit 3 together".
func (e *rowEdits) togetherOther(s *Step, op stitch.Op) {
	for _, t := range scan(e.piece.source[s.at.start:s.at.end]) {
		if t.kind == tokenNumber && int(t.number) == s.Operation.Takes() {
			put := numeral(op.Takes())
			place := shifted(t.span, s.at)
			e.found = append(e.found, candidate{at: place, put: put, says: put + " together instead of " + numeral(s.Operation.Takes()),
				row: e.row, balanced: balanced(e.steps)})
			return
		}
	}
}

// more puts plain stitches at the end, where some are left over in every size.
func (e *rowEdits) more() {
	over := int64(0)
	for i, size := range e.bad {
		n, ok := e.gap(size)
		if ok || n < 1 || n > 9 || i > 0 && n != over {
			return
		}
		over = n
	}
	last := &e.steps[len(e.steps)-1]
	if over == 0 || len(e.bad) != len(e.known) || last.Operation.EndsRow() {
		return
	}
	plain := "k"
	if last.Operation == stitch.Purl || last.Operation == stitch.P2tog {
		plain = "p"
	}
	put := plain + numeral(int(over))
	place := last.at
	place = after(e.piece.source, place, span{end: place.end})
	e.found = append(e.found, candidate{at: place, put: ", " + put, says: put + " more at the end", row: e.row})
}
