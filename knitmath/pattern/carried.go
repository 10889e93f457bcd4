package pattern

import (
	"strings"
	"unicode/utf8"

	"example.com/knitmath/knitmath/stitch"
)

// After a row that had to be asked about, the count is not known. It goes on where the text
// itself says it again: by a claim, by a row that takes just so many stitches and no others,
// or by the count that a row claims for its end, from which that before it follows. What was
// taken so is said, since nothing before it has been checked.

// resume finds the count before a row, where it is not known: of one that has a label or a
// claim, since what else looks like a row may be a part of a sentence. A row that contradicts its own
// claim is found by it too: of "k3, *yo, k2tog; rep from * to last 4 sts, yo, k1, yo, k3. 238
// sts" no count comes to 238.
func (r *runner) resume(i int, claimed bool) {
	if r.known || !r.resumable(i) {
		return
	}
	l := &r.piece.Lines[i]
	p := r.profile(i)
	want := int64(-1)
	if n, ok := r.claim(l); ok && claimed {
		want = n
	}
	n, ok := p.startOf(want, l.info.brings)
	if !ok || want < 0 && l.Label == "" || n < 1 || n > stitch.MaxStitches {
		return
	}
	r.begin(n)
	r.sayTaken(l)
}

// resumable reports whether what a row does is clear without knowing what is on the needle:
// it goes to its end, from no marker to another, and nothing of it is held or brought.
func (r *runner) resumable(i int) bool {
	l, f := &r.piece.Lines[i], &r.facts[i]
	info := &l.info
	return info.kind == lineRow && !info.spread && !info.holdRest && !info.fastens && (info.either == nil || info.brings) &&
		info.partial == nil && !f.toMarker && !f.picksUp && len(l.worked()) > 0
}

// startOf is the only number of stitches on which a row can be worked: all that it takes, or
// the number from which it comes to the count that is wanted, below 0 for none. Of a row that
// may bring stitches of other pieces only the first can be said.
func (p *profile) startOf(want int64, brings bool) (int64, bool) {
	switch {
	case p.turn != 0:
		return 0, false
	case !p.stretches:
		return p.rest.takes, p.rest.takes > 0
	case want < 0 || brings || p.first.step == nil || p.first.each.takes < 1:
		return 0, false
	}
	// One more working of the first stretch takes and leaves as much as the one before: the
	// count that is wanted is so many workings away from that of two.
	few := p.before(2)
	first, second := p.work(few), p.work(few+p.first.each.takes)
	if first.reason != second.reason || first.reason == ReasonUneven {
		return 0, false
	}
	left := first.leaves + first.unworked
	if p.first.each.takes == p.first.each.leaves { // the count before follows, whether the stretch comes out or not
		return few + want - left, true
	}
	grows := second.leaves - first.leaves
	if first.reason != "" || grows == 0 || (want-left)%grows != 0 {
		return 0, false
	}
	return few + (want-left)/grows*p.first.each.takes, true
}

// before is how many stitches there are when the first stretch of a row is worked so often.
func (p *profile) before(workings int64) int64 {
	return p.first.before.takes + times(p.first.each.takes, workings) + p.first.last
}

// sayTaken says once at a line that the counts from there on are those of the text.
func (r *runner) sayTaken(l *Line) {
	if r.quiet {
		return
	}
	at := l.info.at
	if l.info.claimAt.end > l.info.claimAt.start {
		at = l.info.claimAt
	}
	r.remark(ReasonCountTaken, at, "the counts go on from here as the text has them, not checked: what comes before could not be "+
		"followed")
}

// changeSaid is by how many stitches a line that could not be read changed the count when it was
// worked first: from a count that was known to the one that it claims.
func (r *runner) changeSaid(i int) (int64, bool) {
	c := &r.out.Lines[i]
	from, to := c.StartStitches[r.size], c.EndStitches[r.size]
	return int64(to - from), from >= 0 && to >= 0
}

// workedUnread goes on after a row that could not be read and is worked again: it changes the
// count by as much as it did before, or as it says.
func (r *runner) workedUnread(i int, claimed bool) bool {
	l := &r.piece.Lines[i]
	if !r.known || claimed || l.info.kind != lineUnread || l.info.counts != nil {
		return false
	}
	change, ok := r.changeSaid(i)
	if !ok || r.now.total()+change < 0 {
		return false
	}
	r.begin(r.now.total() + change)
	return true
}

// claimStandsAlone reports whether the claim of a line stands in a sentence of its own, in
// brackets or after a dash, so that what comes before it is complete whatever comes after.
func (p *parser) claimStandsAlone(info *lineInfo) bool {
	at := info.claimAt
	if at.end <= at.start {
		return false
	}
	source := p.found.source
	before := strings.TrimRight(source[:at.start], " \n\r\t")
	first, _ := utf8.DecodeRuneInString(source[at.start:])
	return strings.HasSuffix(before, ".") || strings.ContainsRune("([{-=\u2013\u2014\u2212", first)
}
