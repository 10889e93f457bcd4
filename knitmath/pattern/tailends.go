package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// ending reads "ending with a WS row" and "ending with RS facing for next row".
func (p *parser) ending(info *lineInfo) {
	if p.acceptEnd(p.endingBefore()) {
		info.places = true
		return
	}
	if p.acceptEnd(p.endingEach()) {
		return
	}
	for p.tokens[p.next+1].is("being", "row", "one") { // "the last being a purl row"
		p.next++
	}
	if end, row := p.endingRow(p.next + 1); end != 0 {
		p.next, info.endRow = end, row
		return
	}
	if end, kind := p.endingKind(p.next + 1); end != 0 && (info.until != nil || info.kind == lineShape) {
		p.next, info.endKind = end, kind
		return
	}
	if !p.endingSide(info) {
		p.next++
	}
}

// lastOneTold passes over "the" of "24 rows, the last a purl row".
func (p *parser) lastOneTold() bool {
	i := p.next
	if p.tokens[i].is("the") {
		i++
	}
	if !p.tokens[i].is("last") || !p.tokens[i+1].among("a being row one") {
		return false
	}
	p.next = i
	return true
}

// endingBefore is the index after "ending last rnd 4 sts before BOR": the round begins there; 0 if
// that is not what comes next.
func (p *parser) endingBefore() int {
	for i := p.next + 1; i < p.next+60 && !p.endsAt(i); i++ {
		t := &p.tokens[i]
		if t.is("before") {
			return p.markerAt(i + 1)
		}
		if t.kind == tokenWord && !t.stitches() && !t.among("last rnd round row the with") {
			return 0
		}
	}
	return 0
}

// endingEach is the index after "ending each right side row with k 2": how a rib ends that does not come
// out, which keeps the count; 0 if that is not what comes next.
func (p *parser) endingEach() int {
	i := p.next + 1
	if !p.tokens[i].is("each", "every", "all") {
		return 0
	}
	for i++; p.tokens[i].among("right wrong side rs ws other row rows rnd rnds round"); i++ {
	}
	if !p.tokens[i-1].row() || !p.tokens[i].is("with", "in") {
		return 0
	}
	i++
	if p.tokens[i].among("k p knit purl") && p.tokens[i+1].kind == tokenNumber {
		i += 2
	} else if base, _, _, ok := split(p.tokens[i].text); ok && (base == "k" || base == "p") {
		i++
	} else {
		return 0
	}
	if p.tokens[i].is("st", "sts") {
		i++
	}
	if !p.endsAt(i) && !p.tokens[i].is(",", ";") {
		return 0
	}
	return i
}

// endingSide reads up to "WS row", "RS facing" or "k row" in the clause.
func (p *parser) endingSide(info *lineInfo) bool {
	for i := p.next; i < p.next+8; i++ {
		if p.endsAt(i) || p.tokens[i].is(",", ";") {
			return false
		}
		if side := p.sideOf(i); side != stitch.SideUnspecified {
			p.next = i + 1
			p.accept("side")
			if p.accept("facing") {
				side = side.Other()
			}
			info.endSide = side
			return true
		}
		if i > p.next && i < p.next+6 && p.tokens[i].among("k knit p purl") && p.tokens[i+1].row() {
			p.next = i + 2
			return true
		}
	}
	return false
}

// endingRow is the index after "with Row 4", "with a 2nd row", "on rib row 2" at token i, and
// which row it is; 0 if that is not what stands there.
func (p *parser) endingRow(i int) (end int, row int32) {
	if !p.tokens[i].is("with", "on", "after") {
		return 0, 0
	}
	for i++; p.tokens[i].among("a an the rib patt pattern chart garter"); i++ {
	}
	if p.tokens[i].row() && p.tokens[i+1].kind == tokenNumber {
		return i + 2, p.tokens[i+1].number
	}
	if end := p.ordinalEnd(i); end != 0 {
		row := int32(p.ordinalValue(i))
		for ; p.tokens[end].among("rib patt pattern chart"); end++ {
		}
		if p.tokens[end].row() {
			return end + 1, row
		}
	}
	return 0, 0
}

// stockingSide is the side that "beg with a k row, work in st st" says its first row is on:
// the knit rows of stocking stitch are those of the right side. The words of the direction
// begin at token from.
func (p *parser) stockingSide(info *lineInfo, from int) {
	if info.kind != lineEven || info.side != stitch.SideUnspecified || info.ranges != nil {
		return
	}
	stocking, first := false, true
	side, last := stitch.SideUnspecified, info.endSide
	for i := from; i < p.next; i++ {
		t := &p.tokens[i]
		first = first && !t.among("ending end ends finishing finish") // which is of the last row
		if t.is("rev", "reverse", "reversed") {
			return
		}
		stocking = stocking || t.is("stocking", "stockinette", "st") && p.tokens[i+1].is("st", "stitch")
		if t.row() && p.tokens[i-2].is("with", "a") {
			if first {
				side = p.plainSide(i-1, side)
			} else {
				last = p.plainSide(i-1, last)
			}
		}
	}
	if stocking {
		info.side, info.endSide = side, last
	}
}

// plainSide is the side of stocking stitch on which rows are knit or purled that are called so at
// token i; else the one that was known.
func (p *parser) plainSide(i int, known stitch.Side) stitch.Side {
	switch {
	case p.tokens[i].is("k", "knit"):
		return stitch.RightSide
	case p.tokens[i].is("p", "purl"):
		return stitch.WrongSide
	}
	return known
}

// starting passes over "beg with a k row", "beg and ending RS rows with k2".
func (p *parser) starting() {
	for n := 1; n < 9; n++ {
		t := p.ahead(n)
		if t.kind == tokenEnd || t.kind == tokenNewline || t.is(".", ",", ";") {
			break
		}
		if t.is("with") {
			p.next += n + 1
			p.accept("a", "an", "the")
			if p.peek().kind == tokenWord {
				p.next++
			}
			return
		}
	}
	p.next++
}

// whichStitch passes over "the 22nd" and "the 22nd st" after a stitch that is marked.
func (p *parser) whichStitch() bool {
	end := p.ordinalEnd(p.next)
	if end == 0 || p.next < 2 || !p.tokens[p.next-1].is("the") || !p.tokens[p.next-2].is(",") {
		return false
	}
	if p.tokens[end].is("st", "stitch") {
		end++
	}
	if !p.clauseStopsAt(end) {
		return false
	}
	p.passTail(end)
	return true
}

// rowsBetween is the index after "the rows between even" beside rows that are shaped: those are no
// others; 0 if that is not what stands here.
func (p *parser) rowsBetween() int {
	i := p.next
	for p.tokens[i].among("the all work working other plain") {
		i++
	}
	if !p.tokens[i].row() && !(i > 0 && p.tokens[i-1].row() && i == p.next) {
		return 0
	}
	if p.tokens[i].row() {
		i++
	}
	for p.tokens[i].is("in", "them") {
		i++
	}
	if !p.tokens[i].is("between", "in-between") {
		return 0
	}
	for i++; p.tokens[i].among("are worked is work them"); i++ {
	}
	if p.tokens[i].is("even", "plain", "straight") {
		i++
	}
	if !p.clauseStopsAt(i) {
		return 0
	}
	return i
}

// staysHeld is the index after "its 17 stitches stay on hold for the band" beside what is done to a
// finished piece; 0 if that is not what stands here.
func (p *parser) staysHeld() int {
	i := p.next
	for p.tokens[i].among("its their the these other") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].stitches() || !p.tokens[end+1].among("stay remain wait rest") {
		return 0
	}
	for i = end + 2; p.tokens[i].among("on hold the a holder holders waste yarn for until later") ||
		p.tokens[i].kind == tokenWord && draft.Part(p.tokens[i].text); i++ {
	}
	if !p.clauseStopsAt(i) {
		return 0
	}
	return i
}
