package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// record notes the side and count at a line's first working.
func (r *runner) record(i int) {
	c := &r.out.Lines[i]
	if r.quiet || r.seen[i] {
		return
	}
	r.seen[i], r.noting = true, i
	if r.rowsBefore != nil {
		r.rowsBefore[i] = int32(r.rows)
	}
	if r.size == 0 && r.piece.Lines[i].info.kind == lineRow {
		c.firstRow, c.lastRow = r.rows+1, r.rows+1
	}
	if c.Side == stitch.SideUnspecified && r.side != stitch.SideUnspecified {
		c.Side = r.side
		r.changes++
	}
	if r.known {
		r.changes++
		c.StartStitches[r.size] = int(r.now.total())
	}
}

// unknown goes on after a row that could not be read or counted.
func (r *runner) unknown(l *Line, claimed bool) {
	change, changes := r.changeClaimed(l)
	changes = changes && r.known && claimed && len(l.ClaimedStitches) == 0
	before := r.now
	r.known, r.other, r.machine, r.astray = false, nil, nil, false
	r.divided = r.divided || l.info.kind == lineUnread // nobody knows what it puts aside
	n, ok := r.claim(l)
	if changes {
		n, ok = before.total()+change, before.total()+change >= 0
	}
	if ok && claimed {
		r.begin(n)
		r.noteClaimed(l, n)
		r.sayTaken(l)
	}
}

// claim is the count that a line claims in this size.
func (r *runner) claim(l *Line) (int64, bool) {
	if len(l.ClaimedStitches) == 0 || r.repeating && l.info.kind != lineAgain {
		return 0, false
	}
	n := at(l.ClaimedStitches, r.size)
	return int64(n), n >= 0
}

// changeClaimed is by how many stitches a line says that it changes the count.
func (r *runner) changeClaimed(l *Line) (int64, bool) {
	if len(l.ClaimedChangeStitches) == 0 || r.repeating {
		return 0, false
	}
	return int64(at(l.ClaimedChangeStitches, r.size)), true
}

// claimAfter is the count that a line claims for after it, as a count or as a
// change.
func (r *runner) claimAfter(l *Line, before hand) (int64, bool) {
	if change, ok := r.changeClaimed(l); ok {
		return before.total() + change, true
	}
	return r.claim(l)
}

// noteClaimed notes the count that a line claims, where it could not be worked and the
// counts go on from there.
func (r *runner) noteClaimed(l *Line, n int64) {
	if r.quiet || r.noting < 0 || &r.piece.Lines[r.noting] != l {
		return
	}
	if c := &r.out.Lines[r.noting]; c.EndStitches[r.size] < 0 {
		r.changes++
		c.EndStitches[r.size] = int(n)
	}
}

// compareOther compares the count of a size for which a line is not, where its claim has one for each:
// "All other sizes: Knit 1 rnd, dec 8 sts evenly. 72 (72, 80, 96, 96) sts."
func (r *runner) compareOther(i int) {
	l := &r.piece.Lines[i]
	if l.info.defined || len(l.ClaimedStitches) < 2 || !r.known {
		return
	}
	if n := int64(at(l.ClaimedStitches, r.size)); n >= 0 && n != r.now.total() && r.wanted(ReasonClaim, l.info.claimAt) {
		r.fault(KindMistake, ReasonClaim, l.info.claimAt, int(n-r.now.total()), "there are "+stitches(int(r.now.total()))+", not "+
			strconv.Itoa(int(n))+": the row is not worked in this size")
	}
}
