package pattern

import "example.com/knitmath/knitmath/stitch"

// pose is all that the next row depends on, but for how many rows came before.
type pose struct {
	now      hand
	other    hand
	doubtful bool // there is another count
	known    bool
	side     stitch.Side
	turned   stitch.Op
	lastLine int
	overs    int64
	changes  int // of the answer, so far
	marks    marks
	gaps     marks
	aside    int64
	gap      int64
	round    bool
	divided  bool
}

// pose is false while the machine works by hand: it remembers every stitch.
func (r *runner) pose() (pose, bool) {
	p := pose{now: r.now, known: r.known, side: r.side, turned: r.turned, lastLine: r.lastLine, overs: r.overs, changes: r.changes,
		marks: r.marks, gaps: r.gaps, aside: r.aside, gap: r.turnGap, round: r.round, divided: r.divided}
	if r.other != nil {
		p.other, p.doubtful = *r.other, true
	}
	return p, r.machine == nil
}

// passes works lines so many times, -1 being plain rows; it reports whether all of
// them could be worked. Rows after which all is as it was before them, and of
// which nothing new is to be said, would do the same for ever: those still to
// come are counted, and not worked. Two passes may be needed to come back to the
// same side.
func (r *runner) passes(lines []int16, passes int, at span) bool {
	var before [2]pose // one pass ago, two passes ago
	had := 0
	for passes > 0 {
		now, still := r.pose()
		for back := 1; still && back <= had; back++ {
			if before[back-1] == now {
				passes -= r.skip(lines, back, passes)
				had = 0
				break
			}
		}
		if passes == 0 {
			break
		}
		if before[1], before[0], had = before[0], now, min(had+1, 2); !still {
			had = 0
		}
		from, holes := r.journal.open(r.quiet), r.holesAll
		if !r.pass(lines, at) {
			return false
		}
		r.holesPass = r.holesAll - holes
		r.journal.close(from)
		passes--
	}
	return true
}

// pass works lines once.
func (r *runner) pass(lines []int16, at span) bool {
	for i := 0; i < len(lines); i++ {
		if r.stopped {
			return false
		}
		if lines[i] >= 0 {
			r.work(int(lines[i]), false)
			continue
		}
		n := 1
		for i+n < len(lines) && lines[i+n] < 0 {
			n++
		}
		if !r.plain(n, at) {
			return false
		}
		i += n - 1
	}
	return true
}

// skip counts as many passes, of those still to come, as come back to what is now
// and do not pass the most rows; it returns their number.
func (r *runner) skip(lines []int16, period, passes int) int {
	n := min(passes, (MaxRows-r.rows)/max(len(lines), 1))
	n -= n % period
	r.noteSkipped(lines, n)
	for _, i := range lines {
		if i >= 0 {
			r.owes(&r.piece.Lines[i], int64(n))
		}
	}
	for range n {
		r.history = append(r.history, lines...)
	}
	r.rows += n * len(lines)
	r.holesAll += int64(n) * r.holesPass
	return n
}

// plain works rows that change nothing; it reports whether none were left when the
// working stopped.
func (r *runner) plain(rows int, at span) bool {
	for done := 1; done <= rows; done++ {
		if !r.another(at) {
			return done == rows
		}
		r.now = hand{left: r.now.total()}
		if r.other != nil {
			r.other = &hand{left: r.other.total()}
		}
		r.machine = nil
		r.worked(-1, 0)
		if done == 1 { // those after it do nothing more
			done += r.skipPlain(min(rows-1, MaxRows-r.rows))
		}
	}
	return true
}

// skipPlain counts so many plain rows.
func (r *runner) skipPlain(rows int) int {
	r.noteSkipped([]int16{-1}, rows)
	for range rows {
		r.history = append(r.history, -1)
	}
	if r.rows += rows; !r.round && rows%2 != 0 {
		r.side = r.side.Other()
	}
	return rows
}

// trial works the rows once, on a copy, and returns by how many stitches they
// change the count; false if they do not fit.
func (r *runner) trial(lines []int16) (int64, bool) {
	t, ok := r.tried(lines)
	return t.now.total() - r.now.total(), ok && t.now.behind == 0
}

// tried is a copy of the runner that has worked the rows once; false if they do not fit.
func (r *runner) tried(lines []int16) (runner, bool) {
	t := *r
	t.quiet, t.machine, t.other, t.lastLine, t.misfits = true, nil, nil, noLine, false
	for i := 0; i < len(lines); i++ {
		if lines[i] < 0 {
			continue
		}
		before, _ := t.pose()
		t.work(int(lines[i]), false)
		if t.stopped || !t.known || t.misfits {
			return t, false
		}
		if after, _ := t.pose(); after == before {
			// The same row would do the same again.
			for i+1 < len(lines) && lines[i+1] == lines[i] && t.rows < MaxRows {
				t.rows++
				i++
			}
		}
	}
	return t, true
}
