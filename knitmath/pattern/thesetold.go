package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// noteThese notes of how many stitches "These 32 sts form the heel" at token i tells.
func (p *parser) noteThese(line *Line, i, end int) {
	if !p.began || p.onlyRows || p.section != sectionBody || !p.tokens[i].is("these", "those") {
		return
	}
	to, _ := p.sizedEnd(i + 1)
	if to == 0 {
		return
	}
	if of := p.ofPart(to); of != 0 {
		to = of
	}
	if !p.tokens[to].stitches() || !p.tokens[to+1].among("are form will make become count") || p.anyOf(to, end, "each", "every") {
		return
	}
	save, found := p.next, p.found.mark()
	p.next = i + 1
	n := p.number()
	p.next = save
	if n == nil || len(n) != 1 && len(n) != p.sizes {
		p.found.rewind(found)
		return
	}
	line.info.partial, line.info.claimAt = without(n), p.tokens[i].to(p.tokens[to].span)
	line.info.these, line.info.tellsPart = true, true
}

// compareTold asks which stitches "these 32 sts" are where no part that is known has so many.
func (r *runner) compareTold(l *Line, n int64) {
	total := r.now.total()
	if r.marks.lost || r.marks.count > 0 || r.unsureHeld {
		return
	}
	there := append([]int64{total, r.now.left, r.now.behind, r.turnGap, r.aside, r.broughtLast}, r.held...)
	there = append(append(there, r.inRows...), r.partsLeft()...)
	if r.lastLine >= 0 { // the stitches that the row before has worked, back past the beginning of the round
		for _, s := range r.piece.Lines[r.lastLine].Steps {
			there = append(there, int64(s.workings(r.size)))
		}
		there = append(there, r.takenBy(r.lastLine))
	}
	if slices.Contains(there, n) || adjacent(r.partsLeft(), n) || !r.wanted(ReasonClaim, l.info.claimAt) {
		return
	}
	r.fault(KindQuestion, ReasonClaim, l.info.claimAt, 0, "which "+strconv.FormatInt(n, 10)+" stitches are these? there are "+
		stitches(int(total))+" in all")
}

// takenBy is how many stitches the steps of a row take up to its turn, -1 where that is not known.
func (r *runner) takenBy(line int) int64 {
	taken := int64(0)
	for _, s := range r.piece.Lines[line].Steps {
		switch {
		case s.stretch():
			return -1
		case s.Operation != stitch.Turn && s.Operation != stitch.WrapTurn:
			taken += times(s.pass(r.size).leaves, int64(s.workings(r.size)))
		}
	}
	return taken
}
