package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// turnsHeel reports whether a row is one of a turned heel: it decreases over the gap that the last turn left, and turns.
func (r *runner) turnsHeel(i int, p *profile, o outcome) bool {
	return p.turn == stitch.Turn && o.takes == o.leaves+1 && r.turned == stitch.Turn &&
		(toGap(r.piece.Lines[i].worked()) || r.turnGap > 0 && r.turnGap < o.takes)
}

// heelBefore looks at a heel that was turned before a line that works no row.
func (r *runner) heelBefore(i int) {
	switch r.piece.Lines[i].info.kind {
	case linePassed, lineRow, lineRepeat, lineAgain, lineEven:
	default:
		r.heelOver(i)
	}
}

// heelAt does so before a row that is none of the heel, and notes one that is.
func (r *runner) heelAt(i int, p *profile, o outcome) {
	turns := r.turnsHeel(i, p, o)
	if !turns && o.takes == o.leaves {
		r.heelOver(i)
		return
	}
	r.turnsHeels = turns
}

// leftByHeel is how many stitches lie beyond the gap, and beyond the last turn.
func (r *runner) leftByHeel() (ahead, behind int64) {
	return r.now.left - max(r.turnGap, 0), r.now.behind
}

// heelOver looks at a heel that was turned before line i, with which it does not go on: where all stitches of one side have been worked
// and one or two of the other have not, its first rows were uneven.
func (r *runner) heelOver(i int) {
	if !r.turnsHeels {
		return
	}
	r.turnsHeels = false
	ahead, behind := r.leftByHeel()
	n := ahead + behind
	if r.quiet || !r.known || r.turnGap < 1 || r.turned != stitch.Turn || n < 1 || n > 2 || min(ahead, behind) > 0 {
		return
	}
	at := r.here
	if before := max(i-1, 0); r.piece.Lines[before].info.kind == lineRepeat {
		at = r.piece.Lines[before].info.at
	} else if r.lastLine >= 0 {
		at = r.piece.Lines[r.lastLine].info.at
	}
	if _, asked := r.found.at[findingKey{at.start, ReasonOpenRows}]; asked {
		return
	}
	r.fault(KindQuestion, ReasonHands, at, 0, "the heel is uneven: "+stitches(int(n))+" at one end "+report.Are(int(n))+
		" not worked, and none at the other")
}

// allWorked compares "all sts have been worked" with what turned rows have left.
func (r *runner) allWorked(info *lineInfo) {
	ahead, behind := r.leftByHeel()
	n := ahead + behind
	if !info.allDone || r.quiet || !r.known || r.turnGap < 1 || r.turned != stitch.Turn || n < 1 || n > 4 && r.round {
		return
	}
	r.turnsHeels = false
	if r.wanted(ReasonUnworked, info.at) {
		r.fault(KindMistake, ReasonUnworked, info.at, int(n), strconv.Itoa(int(n))+" "+report.Are(int(n))+" not worked yet")
	}
}

// allWorkedSaid reports whether "all sts have been worked" stands between two tokens.
func (p *parser) allWorkedSaid(i, end int) bool {
	if !p.tokens[i].is("all", "every") || !p.anyOf(i, end, "worked", "used") {
		return false
	}
	for i++; i < end; i++ {
		if !p.tokens[i].among("the heel st sts stitches stitch unworked remaining side of have has been are is now worked used up should " +
			"will be at this point flap both on sides") {
			return false
		}
	}
	return true
}
