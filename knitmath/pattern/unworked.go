package pattern

import "example.com/knitmath/knitmath/stitch"

// turnedUntil is which stitches rows that end with a turn are worked until: those in the middle,
// between the turns, or those beside, beyond them.
type turnedUntil uint8

const (
	turnedNone turnedUntil = iota
	turnedMiddle
	turnedBeside
)

// turnedCount goes on after "until 10 sts rem" with "unwrapped", "unworked at underarm", "between
// wraps": it is no count of the piece.
func (p *parser) turnedCount() turnedUntil {
	save := p.next
	kind := turnedBeside
	switch {
	case p.accept("unwrapped"), p.acceptAny(betweenTurns):
		kind = turnedMiddle
	case p.accept("unworked", "unturned"):
	default:
		return turnedNone
	}
	switch middle := p.acceptAny(inMiddle); {
	case middle:
		kind = turnedMiddle
	case p.peek().among("at on in before") && !p.endsAt(p.next+1):
		for !p.clauseEnds() {
			if t := p.peek(); t.kind != tokenWord {
				p.next = save
				return turnedNone
			}
			p.next++
		}
	}
	return kind
}

var betweenTurns = wordings("between wraps", "between the wraps", "between turns", "between the turns", "between wrapped sts",
	"between the wrapped sts", "between the turning points", "between gaps", "between the gaps")

var inMiddle = wordings("in the middle", "in middle", "in the centre", "in the center", "in centre", "in center", "at centre", "at center",
	"at the centre", "at the center", "between wraps", "between the wraps", "between turns", "between the turns")

// passesTurned is how often rows that end with a turn are worked until so many stitches are left
// in the middle, or beside. The count of the piece does not depend on it: where no turn comes to
// just so many, as wrapped stitches may be counted or not, the nearest is taken, and said.
func (r *runner) passesTurned(l *Line, lines []int16) (int, bool) {
	want := int64(at(l.info.until, r.size))
	n, ends := r.turnsDownTo(lines, want, l.info.untilTurned)
	switch {
	case ends == turnsBelow:
		r.fault(KindReading, ReasonOpenLength, l.info.at, 0, "no turn leaves just "+stitches(int(want))+
			": the number of rows is left open; the count stays the same")
		r.out.RowsOpen = true
	case ends == turnsNever:
		r.turnsOpen(l, want)
	}
	return n, true
}

// passesUnsaid is passesTurned where the text does not say which stitches it counts: those in the
// middle, or those beside. Where no turn leaves just so many of either it is asked.
func (r *runner) passesUnsaid(l *Line, lines []int16, want int64) int {
	for _, of := range [...]turnedUntil{turnedMiddle, turnedBeside} {
		if n, ends := r.turnsDownTo(lines, want, of); ends == turnsExactly && n > 0 {
			return n
		}
	}
	r.turnsOpen(l, want)
	return 0
}

func (r *runner) turnsOpen(l *Line, want int64) {
	r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how many times? the turns do not come to "+stitches(int(want)))
}

// turnsEnd is how turns come to a number of stitches.
type turnsEnd uint8

const (
	turnsNever turnsEnd = iota
	turnsExactly
	turnsBelow // they pass it, by no more than the wrapped stitches
)

// turnsDownTo is how often rows that end with a turn, and keep the count, are worked until no more
// than so many stitches are left of those in the middle, or beside.
func (r *runner) turnsDownTo(lines []int16, want int64, of turnedUntil) (int, turnsEnd) {
	left := func(t *runner) int64 {
		if of == turnedMiddle {
			return t.turnGap
		}
		return t.now.total() - t.turnGap
	}
	t, before := *r, left(r)
	if before == want {
		return 0, turnsExactly
	}
	for n := 1; before > want && int64(n) <= r.now.total(); n++ {
		next, ok := t.tried(lines)
		if !ok || next.turned == 0 || left(&next) >= before || next.now.total() != r.now.total() {
			break
		}
		switch now := left(&next); {
		case now == want:
			return n, turnsExactly
		case now < want && (want-now > 2 || want-now == 1 && next.turned == stitch.WrapTurn): // a wrap lies on each side
			return 0, turnsNever
		case now < want: // the wrapped stitches are counted
			return n, turnsBelow
		}
		t, before = next, left(&next)
	}
	return 0, turnsNever
}
