package pattern

import "slices"

// moveMark moves the marker at the end of the part that is nearest to n stitches, so that it has
// as many: a mistake between two markers is said once.
func (r *runner) moveMark(n int64) {
	parts := r.betweenMarks()
	if len(parts) == 0 || r.quiet {
		return
	}
	k := slices.Index(parts, nearest(parts, n))
	if k > 0 && k < r.marks.count {
		r.marks.at[k] += int32(n - parts[k])
		r.shifted = movedMark{at: k, count: r.marks.count, by: int32(n - parts[k])}
	}
}

// movedMark is a marker that was moved for a claim which may be wrong itself: which of how many, and
// by how many stitches; none if that is 0.
type movedMark struct {
	at, count int
	by        int32
}

// movedBack puts such a marker back where the rows had placed it, and reports whether there was one.
func (r *runner) movedBack() bool {
	m := r.shifted
	r.shifted = movedMark{}
	if m.by == 0 || r.marks.lost || r.marks.count != m.count {
		return false
	}
	r.marks.at[m.at] -= m.by
	return true
}
