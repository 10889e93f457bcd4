package pattern

import "strconv"

// rowNumbers reads "1", "1-8", "1, 3 and 5", and "2-10 (12, 14)".
func (p *parser) rowNumbers(info *lineInfo) bool {
	for p.peek().kind == tokenNumber {
		at := p.peek().span
		r, ok := p.rowRange(info)
		if !ok || !p.name(int(r.last-r.first)+1, at) {
			return false
		}
		if info.firsts == nil && info.lasts == nil {
			p.namedTwice(info.ranges, r, at.to(p.last()))
		}
		info.ranges = append(info.ranges, r)
		if after := p.sideBetween(p.next); after > p.next {
			p.noteSide(p.sideOf(p.next+1), info)
			p.next = after
		}
		if !p.nextRowNumber() {
			return true
		}
	}
	return true
}

// nextRowNumber passes over what stands between two numbers of rows, and reports whether there is another.
func (p *parser) nextRowNumber() bool {
	switch {
	case p.peek().is(",") && p.timesEnd(p.next+1) != 0: // "Rows 1-4, 3 times more"
		return false
	case p.peek().among(", and & +") && p.ahead(1).kind == tokenNumber && p.ordinalEnd(p.next+1) == 0:
		p.next++
	case p.peek().is(",") && p.ahead(1).is("and", "&") && p.ahead(2).kind == tokenNumber:
		p.next += 2
	case !p.inRow && p.peek().is("and", "&") && p.ahead(1).row() && p.ahead(2).kind == tokenNumber: // "Row 1 and Row 2"
		p.next += 2
	default:
		return false
	}
	return true
}

// namedTwice says where a row is among those that were named just before: "Rows 1 and 1".
func (p *parser) namedTwice(before []rowRange, r rowRange, at span) {
	for _, q := range before {
		if q.first <= r.last && r.first <= q.last {
			p.mistake(ReasonRowNumber, at, "row "+strconv.Itoa(int(max(q.first, r.first)))+" is named twice")
			return
		}
	}
}

// countTo reports whether "to 40 sts" stands at token i, which is how long rows are worked and no row.
func (p *parser) countTo(i int) bool {
	end, _ := p.sizedEnd(i + 1)
	return p.tokens[i].is("to") && end != 0 && p.tokens[end].stitches()
}

// countDashed reports whether "- 34" comes next, a count after a row that another is written as: no such row stands above.
func (p *parser) countDashed() bool {
	t, n := p.peek(), p.ahead(1)
	return p.inRow && t.is("-") && n.start > t.end && t.start > p.last().end && p.clauseStopsAt(p.next+2) && p.written(int(n.number)) == nil
}

// rowRange reads "1" or "1-8", with the numbers of the other sizes.
func (p *parser) rowRange(info *lineInfo) (rowRange, bool) {
	t := p.peek()
	p.next++
	r := rowRange{t.number, t.number}
	firsts, ok := p.otherRows(int(t.number))
	if !ok {
		return r, false
	}
	lasts := firsts
	if p.peek().among("- ~ to through thru") && p.ahead(1).kind == tokenNumber && !p.countTo(p.next) && !p.countDashed() {
		r.last = p.ahead(1).number
		p.next += 2
		if lasts, ok = p.otherRows(int(r.last)); !ok {
			return r, false
		}
	}
	if r.first < 1 || max(r.first, r.last) > MaxRows || r.last < 1 {
		p.mistake(ReasonTooLarge, t.span.to(p.last()), "rows are numbered from 1 to "+strconv.Itoa(MaxRows))
		return r, false
	}
	if r.last < r.first {
		p.mistake(ReasonRowNumber, t.span.to(p.last()), "the first row is after the last")
		return r, false
	}
	if firsts == nil && lasts == nil {
		return r, true
	}
	info.firsts, info.lasts = firsts, lasts
	return r, p.numberedRight(r, info, t.span)
}

// numberedRight reports whether a range that begins at a place has such rows in every size, or says
// that it has not.
func (p *parser) numberedRight(r rowRange, info *lineInfo, from span) bool {
	for size := range p.sizes {
		first, last := info.rangeIn(r, size)
		if first < 1 || last < first || last > MaxRows {
			p.mistake(ReasonTooLarge, from.to(p.last()), "rows are numbered from 1 to "+strconv.Itoa(MaxRows)+", the first before the last")
			return false
		}
	}
	return true
}

// otherRows reads the row numbers of the other sizes, nil if there are none.
func (p *parser) otherRows(first int) ([]int, bool) {
	if end, n := p.listEnd(p.next); end == 0 || p.sizes < 2 || n+1 != p.sizes {
		return nil, true
	}
	n := p.numbers(first, p.last())
	return n, n != nil
}

// rangeIn is the range of a label in a size.
func (info *lineInfo) rangeIn(r rowRange, size int) (first, last int) {
	first, last = int(r.first), int(r.last)
	if info.firsts != nil {
		first = at(info.firsts, size)
	}
	if info.lasts != nil {
		last = at(info.lasts, size)
	}
	return first, last
}

// name counts the row numbers that labels and repeats name.
func (p *parser) name(n int, at span) bool {
	if p.named += n; p.named <= MaxNamed {
		return true
	}
	p.mistake(ReasonTooMany, at, "labels and repeats name more than "+strconv.Itoa(MaxNamed)+" rows in all")
	return false
}

// copies reads "Row 5: Rep Row 1", "2nd row - As 1st row": a row that is written as
// another one. It becomes a row with the same steps, so that it can be repeated by
// its own number.
func (p *parser) copies(line *Line, from span) bool {
	if line.info.ranges == nil {
		return p.copiesNamed(line, from)
	}
	if !p.peek().among("rep repeat as same work like") {
		return false
	}
	save, found := p.next, p.found.mark()
	var target lineInfo
	p.next++
	p.accept("rep", "repeat")
	p.accept("as", "for")
	p.accept("for")
	p.accept("the")
	ok := p.rowCopied(&target)
	if ok && (p.clauseEnds() || p.peek().is("(") || p.timesOfLabel(line, &target)) {
		if rows := p.copied(line, &target); rows != nil {
			for i := range rows {
				if i == len(rows)-1 && p.claimAhead() && !p.claim(&rows[i]) {
					rows[i].info.kind = lineUnread
				}
				rows[i].info.copied = true
				p.finish(&rows[i], from)
			}
			p.tailOfCopy()
			return true
		}
	}
	p.next = save
	p.found.rewind(found)
	return false
}

// timesOfLabel passes over "twice" of "Rows 5-8: Rep Rows 1-2 twice". Where the rows of the label are another number of times as
// many, that is said, and they are what is numbered.
func (p *parser) timesOfLabel(line *Line, target *lineInfo) bool {
	n, _, _ := p.manyTimes()
	if len(n) != 1 || !p.clauseEnds() {
		return false
	}
	numbered, each := len(numbersOf(line.info.ranges)), len(numbersOf(target.ranges))
	if numbered != n[0]*each && numbered > 0 && each > 0 && numbered%each == 0 && !p.rowNext(line.info.ranges[0].first+int32(n[0]*each)) {
		p.notAsNumbered(&line.info, numbered, n[0]*each)
		return true
	}
	return numbered == n[0]*each
}

// rowNext reports whether the row that the next line is labelled with has a number.
func (p *parser) rowNext(number int32) bool {
	for i := p.next; i < len(p.tokens)-2; i++ {
		if p.tokens[i].row() && p.labelEnd(i) != 0 {
			return p.tokens[i+1].kind == tokenNumber && p.tokens[i+1].number == number
		}
	}
	return false
}

// rowCopied reads which row another is written as.
func (p *parser) rowCopied(target *lineInfo) bool {
	if before := p.rowBefore(); before != 0 && p.acceptAmong("above before last prev previous") {
		p.accept("row", "rnd", "round")
		target.ranges = []rowRange{{before, before}}
		return true
	}
	if n := p.rowAlone(); n > 0 {
		target.ranges = []rowRange{{n, n}}
		return true
	}
	if end, ranges := p.ordinals(p.next, true); end != 0 && ranges != nil && p.clauseStopsAt(end) {
		target.ranges, p.next = ranges, end // "As 1st and 2nd."
		return true
	}
	return p.rowsNamed(target) && target.ranges != nil && target.kind == lineRow
}

// rowAlone reads "first" of "Third row. Like first.", a row called by its ordinal alone; 0, and nothing taken, if
// that is not what stands here.
func (p *parser) rowAlone() int32 {
	end := p.ordinalEnd(p.next)
	if end == 0 || !p.clauseStopsAt(end) || p.tokens[end].is("and", "&", ",") && p.ordinalEnd(end+1) != 0 {
		return 0
	}
	n := p.ordinalValue(p.next)
	p.next = end
	return int32(n)
}

// rowBefore is the number of the row just before, 0 if it has none.
func (p *parser) rowBefore() int32 {
	if n := len(p.piece.Lines); n > 0 && p.piece.Lines[n-1].info.kind == lineRow {
		if r := p.piece.Lines[n-1].info.ranges; len(r) > 0 {
			return r[len(r)-1].last
		}
	}
	return 0
}

// tailOfCopy passes over a remark after such a row.
func (p *parser) tailOfCopy() {
	for p.remarkEnd(p.next) != 0 {
		p.next = p.remarkEnd(p.next)
	}
	if p.peek().is(".") && p.ahead(1).kind != tokenEnd {
		p.next++
		n := len(p.piece.Lines)
		if p.claimAhead() && n > 0 {
			p.claim(&p.piece.Lines[n-1])
			return
		}
		p.next--
	}
}

// copied are the rows of a label with the steps of those that they are written as; nil
// if they are not as many, or not all written.
func (p *parser) copied(line *Line, target *lineInfo) []Line {
	own, from := numbersOf(line.info.ranges), numbersOf(target.ranges)
	if len(own) == 0 || len(own) > 500 || len(from) == 0 || len(own)%len(from) != 0 {
		return nil
	}
	var rows []Line
	for i, n := range from {
		source := p.written(n)
		if source == nil {
			return nil
		}
		if p.steps += len(source.Steps); p.steps > MaxSteps || len(p.piece.Lines)+len(rows) >= MaxLines {
			return nil
		}
		row := Line{Label: line.Label, Steps: source.Steps, info: line.info}
		row.info.ranges = nil
		for k := i; k < len(own); k += len(from) {
			row.info.ranges = append(row.info.ranges, rowRange{int32(own[k]), int32(own[k])})
		}
		if len(from) > 1 {
			row.Label = "Row " + strconv.Itoa(own[i])
		}
		rows = append(rows, row)
	}
	return rows
}

// numbersOf are the numbers of ranges, at most 501 of them.
func numbersOf(ranges []rowRange) []int {
	var list []int
	for _, r := range ranges {
		for n := r.first; n <= r.last && len(list) <= 500; n++ {
			list = append(list, int(n))
		}
	}
	return list
}

// written is the last line that is the row of a number, with its steps.
func (p *parser) written(n int) *Line {
	for i := len(p.piece.Lines) - 1; i >= 0; i-- {
		p.looked++
		l := &p.piece.Lines[i]
		if l.info.kind != lineRow || len(l.Steps) == 0 {
			continue
		}
		for _, r := range l.info.ranges {
			if int(r.first) <= n && n <= int(r.last) {
				return l
			}
		}
	}
	return nil
}
