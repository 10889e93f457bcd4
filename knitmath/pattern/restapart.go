package pattern

import "slices"

// heldApartOf puts so many stitches apart from those that wait, "slip centre 30 sts onto a holder" when the first side is
// done: they are of what a turn left, which is more than a side, and what remains of it is worked next.
func (r *runner) heldApartOf(n int64) {
	most := 0
	for i, held := range r.held {
		if held >= r.held[most] {
			most = i
		}
	}
	if rest := r.held[most] - n; rest > 0 && !slices.Contains(r.held, n) {
		r.held = append(append(r.held[:most:most], r.held[most+1:]...), rest)
	} else {
		r.taken(n)
	}
	r.held = append([]int64{n}, r.held...)
}
