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
