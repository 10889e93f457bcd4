package pattern

import "example.com/knitmath/knitmath/stitch"

// setOfRows is how many of the last rows are those that go on "in this way": from one that changes the count to before the next
// that changes it alike, or, where there is but one, it and the plain rows after it.
func (r *runner) setOfRows() int {
	n := len(r.history)
	last, before, gap := -1, -1, int64(0)
	for i := n - 1; i >= 0 && i > n-maxSet && before < 0; i-- {
		r.spend(1)
		change, ok := r.changedBy(r.history[i : i+1])
		switch {
		case !ok:
			return min(2, n)
		case change == 0:
		case last < 0:
			last, gap = i, change
		case change == gap:
			before = i
		case i == last-1: // both are of the set
			return min(2, n)
		default:
			i = 0
		}
	}
	after := n - 1 - last
	switch {
	case last < 0 || r.turned == stitch.Turn:
		return min(2, n)
	case before >= 0 && last-before > after:
		return last - before
	case after > 0 || n == 1:
		return after + 1
	}
	return min(2, n) // a change after other rows: with one of them
}

// maxSet is how far back the rows of a set are looked for.
const maxSet = 40

// worksAsWritten reports whether rows that go on "in this way" are those that are written: an edging that is worked until nothing
// is left beside it, and rows between markers.
func (r *runner) worksAsWritten(info *lineInfo, lines []int16) bool {
	return (info.untilBetween || info.allWorked && r.keepsCount(lines[len(lines)-1])) && r.fitAgain(lines)
}

// countUntil is the count that rows are worked until: the one that is said, that with so many stitches between the markers, or
// the one that is claimed.
func (r *runner) countUntil(l *Line) (int64, bool) {
	switch n, ok := r.betweenTwo(); {
	case l.info.untilBetween:
		return r.now.total() + int64(at(l.info.until, r.size)) - n, ok
	case l.info.until != nil:
		return int64(at(l.info.until, r.size)), true
	}
	return r.claim(l)
}
