package pattern

import "example.com/knitmath/knitmath/stitch"

// Rows that end with a turn, as those of a heel, change the count alike each time, though stitches
// stay behind the turn.

// turnsTo is how often such rows are worked until the count is another by a gap, or, where they
// keep it, until so many stitches are left between the turns; 1 where they are none or do not come
// to it, so that working them shows what is wrong.
func (r *runner) turnsTo(l *Line, lines []int16, want int64) int {
	t, ok := r.tried(lines)
	gap, change := want-r.now.total(), t.now.total()-r.now.total()
	switch {
	case ok && change == 0 && t.turned != 0 && r.turned != 0:
		return r.passesUnsaid(l, lines, want)
	case !ok || change == 0 || gap/change < 1 || gap/change > MaxRows || gap%change != 0 && t.turned == 0:
		return 1
	case gap%change != 0: // a row of theirs may be the last
		r.turnsOpen(l, want)
	}
	return int(gap / change)
}

// toSaidSide works the first of the rows once more, where they are worked "until all sts have
// been worked, ending with a WS row" and the last was on the right side: the other end of the
// heel has a stitch behind its turn still.
func (r *runner) toSaidSide(info *lineInfo, lines []int16) bool {
	if !info.allWorked || info.endSide == stitch.SideUnspecified || r.round || r.side != info.endSide || len(lines) < 2 {
		return true
	}
	return r.pass(lines[:1], info.at)
}

// turnsToEnd is how often such rows are worked until the last of them that turns leaves no stitch behind its turn.
func (r *runner) turnsToEnd(lines []int16) (int, bool) {
	last := len(lines) - 1
	for last >= 0 && (lines[last] < 0 || r.profile(int(lines[last])).turn == 0) {
		last--
	}
	t := *r
	for n := 1; last >= 0 && int64(n) <= r.now.total(); n++ {
		turned, ok := t.tried(lines[:last+1])
		next, fits := turned, ok
		if last < len(lines)-1 {
			next, fits = t.tried(lines)
		}
		if !fits || turned.now.behind == 0 {
			return n, fits && turned.turned != 0
		}
		t = next
	}
	return 0, false
}

// fitAgain reports whether the rows fit the stitches as they are now.
func (r *runner) fitAgain(lines []int16) bool {
	_, ok := r.tried(lines)
	return ok
}
