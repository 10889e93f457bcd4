package pattern

import "example.com/knitmath/knitmath/stitch"

//go:noinline
func (t *token) row() bool {
	return t.among("row rows rnd rnds round rounds")
}

// label reads what stands before the steps of a row, and its colon. Without one
// it takes nothing.
func (p *parser) label(line *Line) bool {
	from := p.peek().span
	begin, end := p.next, p.labelEnd(p.next)
	if end == 0 {
		return false
	}
	info := &line.info
	p.rowSizes = 0
	found := len(p.found.list)
	p.scanLabel(p.next, info)
	if len(p.found.list) > found { // its numbers are wrong, and have been reported
		info.ranges = nil
	}
	p.next = end
	info.at = from.to(p.last())
	if p.tokens[end-1].among("l i o ll") && p.tokens[end-2].row() {
		p.reading(from.to(p.last()), "letters where a number is due: read as a row without a number")
	}
	info.inRounds = p.anyOf(begin, end, "rnd", "rnds", "round", "rounds")
	line.Label = joined(p.found.source[from.start:info.at.end])
	if info.ranges == nil {
		p.labelUnknown(begin, end)
	}
	for p.acceptAmong(": . - = )") {
	}
	if side := p.sideOf(p.next); side != stitch.SideUnspecified && p.tokens[p.sideEnd(p.next)].is(":", "-", ".") { // "Row 1: RS: K5"
		p.noteSide(side, info)
		p.next = p.sideEnd(p.next) + 1
	}
	p.stacked = false
	if p.peek().kind == tokenNewline && p.startsItem(p.next+1) && p.labelEnd(p.next+1) == 0 {
		p.stacked = true
		p.next++
	}
	return true
}

// labelEnd returns the index of the token after the words of a label that begins
// at token i, 0 if there is none.
func (p *parser) labelEnd(i int) int {
	if i >= len(p.tokens) || p.tokens[i].kind != tokenWord && p.tokens[i].kind != tokenNumber {
		return 0
	}
	return p.scanLabel(i, nil)
}

// scanLabel finds the end of a label, and notes what it says if there is an info to
// note it in.
func (p *parser) scanLabel(i int, info *lineInfo) int {
	if end := p.numberedLabel(i, info); end != 0 {
		return end
	}
	if end := p.ordinalLabel(i, info); end != 0 {
		return end
	}
	return p.wordLabel(i, info)
}

// numberedLabel is "Row 1", "Rows 1-8", "Rnds 2-10 (12, 14)" and what may follow.
func (p *parser) numberedLabel(i int, info *lineInfo) int {
	if !p.tokens[i].row() || p.tokens[i+1].kind != tokenNumber {
		return 0
	}
	end := p.rowNumbersEnd(i + 1)
	if info != nil {
		save := p.next
		p.next = i + 1
		if !p.rowNumbers(info) {
			info.ranges = nil
		}
		p.next = save
	}
	end = p.labelTail(end, info)
	return p.labelled(end, true)
}

// rowNumbersEnd passes over "1", "1-8", "1, 3 and 5".
func (p *parser) rowNumbersEnd(i int) int {
	for p.tokens[i].kind == tokenNumber {
		p.looked++
		end, _ := p.sizedEnd(i)
		if p.tokens[i+1].is("-", "/") {
			end = i + 1 // no chain of sizes
		}
		if p.tokens[end].among("- ~ to through thru") && p.tokens[end+1].kind == tokenNumber && !p.countTo(end) {
			i = end + 1
			if end, _ = p.sizedEnd(i); p.tokens[i+1].is("-", "/") {
				end = i + 1
			}
		}
		i = p.sideBetween(end)
		switch {
		case p.tokens[i].is(",") && p.timesEnd(i+1) != 0:
			return i
		case p.tokens[i].among(", and & +") && p.tokens[i+1].kind == tokenNumber && p.ordinalEnd(i+1) == 0:
			i++
		case p.tokens[i].is(",") && p.tokens[i+1].is("and", "&") && p.tokens[i+2].kind == tokenNumber:
			i += 2
		default:
			return i
		}
	}
	return i
}

// sideBetween is the index after "(RS)" at token i where the number of another row follows, "Rows 1 (RS) and 3"; i where it does not.
func (p *parser) sideBetween(i int) int {
	if p.tokens[i].is("(", "[") && p.sideOf(i+1) != stitch.SideUnspecified {
		end := p.sideEnd(i + 1)
		if p.tokens[end].is(")", "]") && p.tokens[end+1].is("and", "&", ",") && p.tokens[end+2].kind == tokenNumber &&
			p.ordinalEnd(end+2) == 0 {
			return end + 1
		}
	}
	return i
}

// labelled reports, as the index i, whether the words of a label that end there are
// one: a colon or a dash follows, or, where that is sure, what is worked.
func (p *parser) labelled(i int, sure bool) int {
	t := &p.tokens[i]
	apart := i > 0 && t.start > p.tokens[i-1].end
	switch {
	case t.is(":"), t.is("-") && (apart || p.tokens[i+1].kind != tokenNumber):
		return i
	case !sure:
		return 0
	case t.among(". ) = ,"), t.kind == tokenEnd, t.kind == tokenNewline:
		return i
	case p.startsItem(i) || p.directionAt(i):
		return i
	}
	return 0
}

// startsItem reports whether what is worked, a bracket or a star begins at token i.
func (p *parser) startsItem(i int) bool {
	t := &p.tokens[i]
	switch {
	case t.kind == tokenStar || t.is("[", "(", "{"):
		return true
	case t.kind != tokenWord:
		return false
	}
	return p.notation(t.text) || p.phraseHere(i)
}

// directionAt reports whether a verb that is no stitch begins at token i.
func (p *parser) directionAt(i int) bool {
	return p.tokens[i].among("rep repeat as work cont continue dec inc decrease increase bind cast same " +
		"with using rib join change place turn break cut beg beginning starting foll follow like")
}

// ordinalEnd is the index after "3rd" or "third" at token i, 0 if there is none.
func (p *parser) ordinalEnd(i int) int {
	t := &p.tokens[i]
	if t.kind == tokenNumber && p.tokens[i+1].among("st nd rd th d") && p.tokens[i+1].start == t.end {
		return i + 2
	}
	if n, ok := ordinalWord(t); ok && n > 0 {
		return i + 1
	}
	return 0
}

// ordinalLabel is "1st row", "2nd and every alt row", "5th to 8th rows".
func (p *parser) ordinalLabel(i int, info *lineInfo) int {
	end, ranges := p.ordinals(i, info != nil)
	if end == 0 {
		return 0
	}
	if p.tokens[end].among("patt pattern pat lace chart") && p.tokens[end+1].row() {
		end++
	}
	rule := end
	if p.tokens[end].among("narrowing widening decrease increase decreasing increasing") && p.tokens[end+1].is(":") {
		return end + 1 // a row that is called by its change
	}
	if p.tokens[end].among("dec inc decreasing increasing decrease increase shaping") && p.tokens[end+1].row() {
		return p.labelled(p.labelTail(end+2, info), true) // the first of its kind, and not the first row
	}
	if p.tokens[rule].is("and", "&", ",") {
		for p.tokens[rule].is("and", "&", ",") || ruleWord(&p.tokens[rule]) {
			rule++
		}
	}
	if !p.tokens[max(rule-1, 0)].row() && !p.tokens[rule].row() {
		return 0
	}
	if info != nil {
		info.ranges = ranges
		p.labelRule(end, rule, info)
	}
	if p.tokens[rule].row() {
		rule++
	}
	return p.labelled(p.labelTail(rule, info), true)
}

// ordinals passes over "1st, 3rd and 5th", and lists them if asked to.
func (p *parser) ordinals(i int, list bool) (end int, ranges []rowRange) {
	for {
		next := p.ordinalEnd(i)
		if next == 0 {
			return end, ranges
		}
		n := p.ordinalValue(i)
		last := n
		if p.tokens[next].is("-", "to", "through") {
			if more := p.ordinalEnd(next + 1); more != 0 {
				last, next = p.ordinalValue(next+1), more
			}
		}
		if list {
			ranges = p.ordinalRange(ranges, n, last, p.tokens[i].to(p.tokens[next-1].span))
		}
		end = next
		switch {
		case p.tokens[next].is(",", "and", "&") && p.ordinalEnd(next+1) != 0:
			i = next + 1
		case p.tokens[next].is(",") && p.tokens[next+1].is("and") && p.ordinalEnd(next+2) != 0:
			i = next + 2
		default:
			return end, ranges
		}
	}
}

// ordinalRange notes the rows from one ordinal to another, which stand at a place.
func (p *parser) ordinalRange(ranges []rowRange, first, last int, at span) []rowRange {
	switch {
	case last < first:
		p.mistake(ReasonRowNumber, at, "the first row is after the last")
	case first >= 1 && last <= MaxRows && p.name(last-first+1, at):
		ranges = append(ranges, rowRange{int32(first), int32(last)})
	}
	return ranges
}

func (p *parser) ordinalValue(i int) int {
	if n, ok := ordinalWord(&p.tokens[i]); ok {
		return n
	}
	return int(p.tokens[i].number)
}

// sideOf is the side that token i names, with "side" or without.
func (p *parser) sideOf(i int) stitch.Side {
	switch t := &p.tokens[i]; {
	case t.is("rs", "right-side"), t.is("right") && p.tokens[i+1].is("side"):
		return stitch.RightSide
	case t.is("ws", "wrong-side"), t.is("wrong") && p.tokens[i+1].is("side"):
		return stitch.WrongSide
	}
	return stitch.SideUnspecified
}
