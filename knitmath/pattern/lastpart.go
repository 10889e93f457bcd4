package pattern

import "strconv"

// comparedLast compares "on the last 20 stitches only" with what the row before has worked after it had
// bound some off, "k20, BO 26, k to end".
func (r *runner) comparedLast(l *Line, n int64) {
	if r.lastLine < 0 || r.turned != 0 || r.quiet || r.marks.count > 0 || !r.says(l, "last") {
		return
	}
	row, c := &r.piece.Lines[r.lastLine], &r.out.Lines[r.lastLine]
	if row.info.kind != lineRow || int64(c.EndStitches[r.size]) != r.now.total() || c.StartStitches[r.size] < 0 {
		return
	}
	parts := segments(row.worked(), r.size, int64(c.StartStitches[r.size]))
	if len(parts) != 2 || parts[0] == 0 || parts[1] < 1 || parts[1] == n || !r.wanted(ReasonClaim, l.info.at) {
		return
	}
	r.fault(KindMistake, ReasonClaim, l.info.at, int(n-parts[1]), stitches(int(parts[1]))+" were worked last, not "+strconv.Itoa(int(n)))
}

// says reports whether one of some words stands in a line.
func (r *runner) says(l *Line, words ...string) bool {
	for _, t := range scan(r.piece.source[l.info.at.start:max(l.info.at.start, l.info.at.end)]) {
		if t.is(words...) {
			return true
		}
	}
	return false
}
