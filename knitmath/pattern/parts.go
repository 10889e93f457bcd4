package pattern

import (
	"slices"
	"strconv"
	"strings"
)

// compareParts compares the stitches with a claim about a part of them: that of each
// needle, of each side, between two markers, or of whatever else the row has divided.
func (r *runner) compareParts(l *Line, before hand) {
	info := &l.info
	total := r.now.total()
	switch {
	case info.partial == nil && r.countWrong(l):
	case info.perNeedle != nil:
		n := int64(at(info.perNeedle, r.size))
		if told := r.needlesTold(l); n < 1 || total%n != 0 || total/n < 2 || total/n > 6 || told > 0 && total != n*told {
			r.fault(KindMistake, ReasonClaim, info.claimAt, int(n-onEach(total, n, told)),
				"there are "+stitches(int(total))+", which is not "+strconv.Itoa(int(n))+" on each of the needles")
		}
	case info.perSide != nil:
		r.compareSides(l, before, int64(at(info.perSide, r.size)))
	case info.partial != nil:
		r.comparePart(l, before, int64(at(info.partial, r.size)))
	}
}

// compareSides compares the stitches on each side of what was bound off or put aside.
func (r *runner) compareSides(l *Line, before hand, n int64) {
	total, where := r.now.total(), l.info.claimAt
	if l.info.beside {
		where = l.info.partsAt
	}
	if l.info.ofMarks && !(r.round && len(r.sidesMarked()) == 2) {
		r.compareDivided(l, before, n)
		return
	}
	if total == 2*n && r.sidesUneven(l, before, n, where) {
		return
	}
	if total == 2*n || total == n || l.info.beside && 4*max(total-2*n, 2*n-total) > total { // of others between them nothing is said
		return
	}
	parts := segments(l.worked(), r.size, before.left)
	if len(parts) > 2 && parts[0] == n && parts[len(parts)-1] == n || !r.wanted(ReasonClaim, where) {
		return
	}
	r.fault(KindMistake, ReasonClaim, where, int(n-onEach(total, n, 2)),
		"there are "+stitches(int(total))+", which is not "+strconv.Itoa(int(n))+" on each of the sides")
}

// compareDivided compares the stitches on each side with those on both sides of what the row has bound off or put aside.
func (r *runner) compareDivided(l *Line, before hand, n int64) {
	parts := slices.DeleteFunc(segments(l.worked(), r.size, before.left), func(n int64) bool { return n == 0 })
	if len(parts) == 2 && sumOf(parts) == r.now.total() && (parts[0] != n || parts[1] != n) && r.wanted(ReasonClaim, l.info.partsAt) {
		r.fault(KindMistake, ReasonClaim, l.info.partsAt, int(n-parts[0]), partsText(parts)+", not "+strconv.Itoa(int(n))+" on each side")
	}
}

// onEach is how many of all stitches lie on each of so many needles or sides, 0 for a number of them
// that is not said: then on as many as come nearest to n each.
func onEach(total, n, places int64) int64 {
	if places == 0 {
		places = 2
		for k := int64(3); k <= 6; k++ {
			if off, best := k*n-total, places*n-total; max(off, -off) < max(best, -best) {
				places = k
			}
		}
	}
	return total / places
}

// comparePart looks for a part of the stitches that is as large as is claimed. Where the
// row has divided the stitches and no part is, it is a mistake; else it is asked.
func (r *runner) comparePart(l *Line, before hand, n int64) {
	total := r.now.total()
	switch {
	case l.info.unwrapped:
		r.compareUnwrapped(l, n)
		return
	case l.info.these:
		r.compareTold(l, n)
		return
	}
	if !l.info.between && (n == total || slices.Contains(r.held, n) || r.aside > 0 && r.aside == n) {
		return
	}
	parts := r.partsThere(l, before)
	switch {
	case slices.Contains(parts, n):
	case len(parts) > 0:
		if !r.countWrong(l) { // the parts of a wrong count are wrong with it
			r.fault(KindMistake, ReasonClaim, r.partAt(l), int(n-nearest(parts, n)), partsText(parts)+", not "+strconv.Itoa(int(n)))
		}
		if l.info.between {
			r.moveMark(n)
		}
	case l.info.beside: // their number is not known, that of all of them is checked
	default:
		r.fault(KindQuestion, ReasonUnread, l.info.claimAt, 0, "of which stitches? there are "+stitches(int(total))+" in all")
	}
}

// partsThere are the parts into which a row has divided the stitches: by its turn, by what it
// binds off or puts aside, by markers. Of those between markers a claim may be alone.
func (r *runner) partsThere(l *Line, before hand) []int64 {
	var parts []int64
	if r.now.behind > 0 { // the row was turned
		parts = append(parts, r.now.left, r.now.behind)
	}
	if !l.info.between {
		if cut := segments(l.worked(), r.size, before.left); len(cut) > 1 {
			parts = append(parts, cut...)
		}
		if l.info.kind == lineHold || l.info.kind == lineTake {
			parts = append(parts, r.now.total())
		}
	}
	parts = append(parts, r.betweenMarks()...)
	if len(parts) == 0 && r.divided && !l.info.beside {
		parts = append(parts, r.now.total())
	}
	return parts
}

// partAt is where a claim about a part stands, beside that about all stitches.
func (r *runner) partAt(l *Line) span {
	info := &l.info
	if spots := run(spotsIn(r.piece.source, info.claimAt), info.partial, true); info.beside && spots != nil {
		return spots[0].at.to(spots[len(spots)-1].at)
	}
	return info.claimAt
}

// nearest is the part that differs least.
func nearest(parts []int64, n int64) int64 {
	best := parts[0]
	for _, p := range parts {
		if max(p-n, n-p) < max(best-n, n-best) {
			best = p
		}
	}
	return best
}

// partsText says how large the parts are.
func partsText(parts []int64) string {
	if len(parts) == 1 {
		return "there are " + stitches(int(parts[0]))
	}
	return "the parts are of " + listed64(parts) + " stitches"
}

func listed64(parts []int64) string {
	text := ""
	for i, p := range parts {
		if i > 0 {
			text += ", "
		}
		text += strconv.Itoa(int(p))
	}
	return text
}

// betweenMarks are the stitches from marker to marker; in the round those before the first
// and after the last, which meet at the beginning of the round, each and together.
func (r *runner) betweenMarks() []int64 {
	if r.marks.lost || r.marks.count == 0 {
		return nil
	}
	var parts []int64
	from := int64(0)
	for _, p := range r.marks.at[:r.marks.count] {
		if p := int64(p); p >= 0 {
			parts = append(parts, p-from)
			from = p
		}
	}
	rest := r.now.left - from
	if r.round && len(parts) > 0 {
		parts = append(parts, rest+parts[0])
	}
	return append(parts, rest)
}

// segments are the stitches of a row before, between and after what it binds off or puts
// aside; nil where that is not known.
func segments(steps []Step, size int, left int64) []int64 {
	w := gapsWalk{size: size, left: left, spare: mostInGaps}
	if !w.steps(steps) || w.out.lost {
		return nil
	}
	return w.parts()
}

// needlesTold is how many needles a line lays its stitches on, "on 4 dpns"; 0 where it does not say.
// A set of needles has one more than hold stitches.
func (r *runner) needlesTold(l *Line) int64 {
	at := l.info.at
	before := strings.LastIndexAny(r.piece.source[:at.start], ".\n") + 1 // "Divide evenly over 4 needles and join"
	tokens := scan(r.piece.source[before:max(at.start, at.end)])
	for i := 1; i < len(tokens)-1; i++ {
		if tokens[i].kind != tokenNumber || !tokens[i-1].among("on onto over between among") {
			continue
		}
		if tokens[i+1].is("dpns", "needles", "double-pointed") {
			return int64(tokens[i].number)
		}
	}
	return 0
}
