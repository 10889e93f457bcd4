package pattern

import "example.com/knitmath/knitmath/stitch"

// rowsNamedAhead reports whether the rows on which something is done come next by their
// numbers: "on rows 9, 13 and 15".
func (p *parser) rowsNamedAhead() bool {
	return p.peek().is("on") && p.ahead(1).row() && p.ahead(2).kind == tokenNumber
}

// onRows reads the numbers of the rows on which the row that is called is worked again.
// They are so many rows after it, so that it must be the last row written and say its
// own number; otherwise it is asked.
func (p *parser) onRows(info *lineInfo) {
	from, last := p.peek().span, p.numberOfLast(info)
	for p.next += 2; last > 0; {
		t := p.peek()
		if t.kind != tokenNumber || int(t.number) <= last || int(t.number) > MaxRows || p.listed >= MaxListed {
			last = 0
			break
		}
		p.next++
		p.listed++
		p.sideInBrackets()
		info.parts = append(info.parts, shapings{interval: []int{int(t.number) - last}, times: one, named: true})
		last = p.onRowsTo(info, int(t.number))
		if p.ahead(1).kind != tokenNumber || !p.accept(",", "and") {
			break
		}
	}
	info.kind = lineShape
	if last > 0 {
		p.accept("too")
		return
	}
	for !p.clauseEnds() {
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "how many rows after the row that is called?")
	info.kind, info.parts = lineUnread, nil
}

// onRowsTo reads the end of "10-12" after the number of a row, and is the last row.
func (p *parser) onRowsTo(info *lineInfo, first int) int {
	if !p.peek().is("-") || p.ahead(1).kind != tokenNumber {
		return first
	}
	last := int(p.ahead(1).number)
	if last <= first || last > MaxRows || !p.name(last-first, p.peek().span) {
		return 0
	}
	p.next += 2
	info.parts = append(info.parts, shapings{interval: one, times: []int{last - first}, named: true})
	return last
}

// sideInBrackets passes over "(RS)".
func (p *parser) sideInBrackets() {
	if p.peek().is("(") && p.sideOf(p.next+1) != stitch.SideUnspecified && p.ahead(2).is(")") {
		p.next += 3
	}
}

// numberOfLast is the number of the row that is called if it is the last one written; 0
// if it is not, or has none.
func (p *parser) numberOfLast(info *lineInfo) int {
	last := len(p.piece.Lines) - 1
	if len(info.lines) != 1 || int(info.lines[0]) != last {
		return 0
	}
	ranges := p.piece.Lines[last].info.ranges
	if len(ranges) != 1 || ranges[0].first != ranges[0].last {
		return 0
	}
	return int(ranges[0].first)
}
