package pattern

import "example.com/knitmath/knitmath/stitch"

// A text says of many rows on which side they are. Where one of them disagrees with the rows
// before it, the next that says its side tells what is wrong: the label, where the next agrees with
// the rows before; a row that is missing or too many, where it does not. Of two that disagree at the
// beginning of a piece the first is wrong, where those after it agree with the second. So one mistake
// is said once, at its line.

// sideClaim is where the text says a side that is not the one the row is worked on.
type sideClaim struct {
	at   span
	rows int // worked before it
	text string
}

// sideClaims are what has been said of the sides of a piece.
type sideClaims struct {
	said    int       // how many agree with one another
	first   sideClaim // the first of them
	pending sideClaim // one that disagrees, of which it is not known yet whether it is wrong
}

// saidSide takes the side of the next row as the text has it. wrong says what is wrong if it is not
// so, and otherwise what is if the side was said wrongly.
func (r *runner) saidSide(at span, next stitch.Side, wrong, otherwise string) {
	c := &r.sides
	agrees := next == r.side
	here := sideClaim{at, r.rows, wrong}
	switch {
	case r.side == stitch.SideUnspecified || !r.sideSaid && !r.sideGiven:
		r.settleSide()
		r.side, r.sideSaid = next, true
		*c = sideClaims{said: 1, first: sideClaim{at, r.rows, otherwise}}
	case c.pending.text == "" && agrees:
		c.said++
	case c.pending.text == "":
		c.pending = here
	case agrees: // with the rows before the one that disagrees
		r.settleSide()
		c.said++
	case c.said == 1 && c.first.text != "":
		c.pending = c.first
		fallthrough
	default:
		r.settleSide()
		r.side = next
		c.said, c.first = 2, sideClaim{}
	}
}

// settleSide says what was still open.
func (r *runner) settleSide() {
	c := r.sides.pending
	if c.text == "" {
		return
	}
	r.sides.pending = sideClaim{}
	if r.quiet {
		return
	}
	rows := r.rows
	r.rows = c.rows
	r.fault(KindMistake, ReasonSide, c.at, 0, c.text)
	r.rows = rows
}
