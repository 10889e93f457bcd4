package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// turnedHeel is a heel that is turned: each row works up to the gap that the turn before it left, decreases across it, works so many
// stitches more and turns, so that the next has as many more before its decrease.
type turnedHeel struct {
	worked        int64 // between the last turn and the gap
	ahead, behind int64 // not worked yet, beyond the gap and beyond the last turn
	past, next    int64 // worked after the decrease, in the row to come and in the one after it
	rows          int
}

// row works a row; false if too few stitches are beyond the gap for it.
func (h *turnedHeel) row() bool {
	if h.ahead < 1+h.past {
		return false
	}
	h.worked, h.ahead, h.behind = h.worked+h.past, h.behind, h.ahead-1-h.past
	h.past, h.next = h.next, h.past
	h.rows++
	return true
}

// bareRows works rows that end with their decrease, where one stitch is left at an end.
func (h *turnedHeel) bareRows() {
	for h.past == 1 && h.ahead == 1 {
		h.ahead, h.behind = h.behind, 0
		h.rows++
	}
}

func (h *turnedHeel) unworked() int64 { return h.ahead + h.behind }
func (h *turnedHeel) total() int64    { return h.worked + h.unworked() }

// heelGoesOn works the last rows again "in this way", where they are those of a heel: what they come to is counted, and not taken
// from what the text says. It reports whether they are.
func (r *runner) heelGoesOn(i int, lines []int16) bool {
	l := &r.piece.Lines[i]
	h, ok := r.heelTurned(l, lines)
	if !ok {
		return false
	}
	r.compareGrowth(l, &h)
	start, most, want := r.now, -1, int64(-1)
	if l.info.counts != nil {
		passes, _ := r.passesSaid(l, lines, true)
		most = passes * len(lines)
	}
	if l.info.until != nil {
		want = int64(at(l.info.until, r.size))
	}
	for h.rows != most && h.total() != want && h.unworked() > 0 && h.row() {
	}
	r.heelEnds(l, &h, want, most)
	for range h.rows {
		if !r.another(l.info.at) {
			return true
		}
		r.now = hand{left: r.now.total() - 1}
		r.worked(-1, stitch.Turn)
	}
	r.now, r.other, r.machine, r.turnGap = hand{left: h.worked + h.ahead, behind: h.behind}, nil, nil, h.worked
	r.loseMarks()
	r.ended(l)
	r.close(i, start)
	return true
}

// heelEnds compares a heel that was worked as far as its rows go with what the text says of its end.
func (r *runner) heelEnds(l *Line, h *turnedHeel, want int64, most int) {
	claim, said := r.claim(l)
	if want >= 0 {
		claim, said = want, true
	}
	bare := *h
	if bare.bareRows(); bare.unworked() == 0 && bare.rows > h.rows && most < 0 && said && bare.total() == claim {
		*h = bare
		r.fault(KindReading, ReasonReading, l.info.at, 0, "read as ending with the decrease where one stitch is left at an end")
	}
	switch n := h.total(); {
	case h.rows == most:
	case most >= 0:
		r.fault(KindMistake, ReasonMissing, l.info.at, 0, "all stitches have been worked after "+strconv.Itoa(h.rows)+" rows more")
	case h.unworked() > 0:
		r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how are these rows worked? after "+strconv.Itoa(h.rows)+" rows more "+
			stitches(int(h.ahead))+" at one end and "+strconv.Itoa(int(h.behind))+" at the other are not worked, and "+stitches(int(n))+" are there")
	case want >= 0 && n != want && r.wanted(ReasonClaim, l.info.at):
		r.fault(KindMistake, ReasonClaim, l.info.at, int(want-n), "when all stitches have been worked there are "+stitches(int(n))+", not "+
			strconv.Itoa(int(want)))
	}
}

// heelTurned is the heel that the last two rows have begun; false if they are none, or others are to be worked again.
func (r *runner) heelTurned(l *Line, lines []int16) (h turnedHeel, ok bool) {
	n := len(r.history)
	if !r.known || r.round || r.turned != stitch.Turn || r.turnGap < 1 || n < 2 ||
		(l.info.lines != nil || l.info.ranges != nil) && !slices.Equal(lines, r.history[n-2:]) {
		return h, false
	}
	h = turnedHeel{worked: r.turnGap, ahead: r.now.left - r.turnGap, behind: r.now.behind}
	var first, second bool
	h.past, first = r.pastDecrease(r.history[n-2])
	h.next, second = r.pastDecrease(r.history[n-1])
	return h, first && second && h.unworked() > 0
}

// pastDecrease is how many stitches a row works between its only decrease and its turn; false if it is another kind of row.
func (r *runner) pastDecrease(line int16) (past int64, ok bool) {
	if line < 0 {
		return 0, false
	}
	change := int64(0)
	for _, s := range r.piece.Lines[line].Steps {
		switch each := s.pass(r.size); {
		case s.Operation.EndsRow():
			return past, s.Operation == stitch.Turn && change == -1
		case s.stretch() && (each.takes != each.leaves || change != 0):
			return 0, false
		case each.takes != each.leaves:
			past, change = 0, change+(each.leaves-each.takes)*int64(s.workings(r.size))
		case !s.stretch():
			past += each.takes * int64(s.workings(r.size))
		}
	}
	return 0, false
}

// compareGrowth compares "working 1 more st before the dec each row" with what the rows of a heel have more each time; said of no
// row it may be of every other one, those of one side.
func (r *runner) compareGrowth(l *Line, h *turnedHeel) {
	n, where := r.fewerSaid(l)
	if n == 0 || n == h.past || h.past != h.next || l.info.last != 1 && n == 2*h.past {
		return
	}
	if r.wanted(ReasonClaim, where) {
		r.fault(KindMistake, ReasonClaim, where, int(h.past-n), "each row has "+moreOrFewer(h.past)+" before its decrease, not "+moreOrFewer(n))
	}
}
