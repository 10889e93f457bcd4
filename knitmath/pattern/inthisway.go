package pattern

import "slices"

// inThisWay reads "continue in this way, working 1 st fewer before each decrease, until 40 sts
// rem": the last rows again and again, with as many plain stitches as there are then, until
// the count is reached.
func (p *parser) inThisWay(line *Line) bool {
	info := &line.info
	from := p.next
	if p.ruleUntil(info) {
		return true
	}
	end, first := p.sentenceEnd(from+1), from+1
	for p.acceptedAt(&first, "on", "working") {
	}
	way := p.wayNamed(first, end)
	if way == 0 {
		return false
	}
	if p.rowsInThisWay(way) {
		return p.repeating(line)
	}
	until := way
	for until < end && !p.tokens[until].is("until", "till", "til") && !p.toCountAt(until) {
		until++
	}
	if until >= end {
		return p.inThisWayFor(info, way)
	}
	found := p.found.mark()
	p.next = until
	if !p.untilTold(info) {
		p.next = from
		p.found.rewind(found)
		return false
	}
	if info.until != nil && p.everyOtherIn(way, until) {
		p.ask(ReasonUnread, p.tokens[way].to(p.tokens[until].span), "on which rows is this?")
		info.kind = lineUnread
		return true
	}
	info.kind, info.last, info.afresh, info.adapting, info.inSet = lineRepeat, 2, true, true, true
	info.saidChange = p.changeSaid(from, until)
	switch {
	case p.everyRowIn(from, until):
		info.last, info.inSet = 1, false
	case p.alternateIn(from, until):
		info.inSet = false
	}
	p.reading(p.tokens[from].to(p.last()), "read as the last rows again and again, until the count is reached")
	return true
}

// toCountAt reports whether "to 17 sts" stands at token i and ends a clause.
func (p *parser) toCountAt(i int) bool {
	end, _ := p.sizedEnd(i + 1)
	return p.tokens[i].is("to") && end != 0 && p.tokens[end].stitches() && p.clauseStopsAt(end+1)
}

// ruleUntil reads "cont until there are 60 sts" after "Every row: kfb, k to end": that row again and
// again.
func (p *parser) ruleUntil(info *lineInfo) bool {
	last := len(p.piece.Lines) - 1
	if !p.ahead(1).is("until", "till") || last < 0 || !p.piece.Lines[last].rules() || p.piece.Lines[last].info.every != everyAll {
		return false
	}
	save := p.next
	p.next++
	n := p.untilCount()
	if n == nil {
		p.next = save
		return false
	}
	info.kind, info.lines, info.afresh, info.until = lineRepeat, []int16{int16(last)}, true, n
	return true
}

// inThisWayFor reads "for 30 rows more" at token i after "continue in this manner": the rows just
// written again and again, from the first of them. What tells which they are, ", one row plain and one
// row purl,", is passed over.
func (p *parser) inThisWayFor(info *lineInfo, i int) bool {
	told := 0
	if p.tokens[i].is(",") {
		for i++; p.tokens[i].among("one row rows rnd plain knit purl k p and alternately alternating"); i++ {
			told += bit(p.tokens[i].row())
		}
		if !p.tokens[i].is(",") {
			return false
		}
		i++
	}
	n := p.rowsInSet()
	switch {
	case told > 0:
		n = told
	case n == 0 && p.keepingRows(): // rows without numbers
		n = 2
	}
	save := p.next
	if p.next = i; n == 0 || !p.tokens[i].is("for") || !p.forRowsAhead() {
		p.next = save
		return false
	}
	info.kind, info.last, info.afresh = lineRepeat, n, true
	return p.repeatRows(info)
}

// keepingRows reports whether the last two rows are written, and neither changes the count: then "as set" goes on with them, and not
// with the stitch that they are a change in.
func (p *parser) keepingRows() bool {
	rows := 0
	for i := len(p.piece.Lines) - 1; i >= 0 && rows < 2; i-- {
		l := &p.piece.Lines[i]
		p.looked++
		switch {
		case l.info.kind == linePassed:
		case l.info.kind != lineRow || changesCount(l.Steps):
			return false
		default:
			rows++
		}
	}
	return rows == 2
}

// wayNamed is the index after "in this way" at token i, or anywhere in the sentence after "to dec"
// or "decreasing"; 0 if that is not what stands there.
func (p *parser) wayNamed(i, end int) int {
	way := p.phraseEnd(i, theseWays)
	if p.tokens[i].is("to") && p.tokens[i+1].among("dec inc decrease increase") ||
		p.tokens[i].among("decreasing increasing dec inc shaping") {
		for n := i; n < end && way == 0; n++ {
			way = p.phraseEnd(n, theseWays)
		}
		if verb := i + bit(p.tokens[i].is("to")); way == 0 && p.tokens[verb+1].is("every", "each", "on") {
			way = verb + 1 // "continue decreasing every other rnd until"
		}
	}
	return way
}

// rowsInThisWay turns to "working inc row every 8th row until 60 sts" after "continue in this way,": a row worked again, of which
// it is said when.
func (p *parser) rowsInThisWay(way int) bool {
	if !p.tokens[way].is(",") || !p.tokens[way+1].among("working repeating work repeat rep") || !p.rowsWordedAt(way+2) {
		return false
	}
	p.tokens[way+1].text = "rep"
	p.next = way + 1
	return true
}

// everyOtherIn reports whether "every 8th row" stands between two tokens, which says of more rows even between those that are
// shaped than the last two rows have.
func (p *parser) everyOtherIn(i, end int) bool {
	for ; i < end; i++ {
		t := &p.tokens[i]
		if t.is("every", "each") && (p.ordinalEnd(i+1) != 0 && p.ordinalValue(i+1) > 2 || p.rowsEvery(i+1) && p.tokens[i+1].number > 2) {
			return true
		}
	}
	return false
}

// alternateIn reports whether "every other rnd", "alt rows" stands between two tokens.
func (p *parser) alternateIn(i, end int) bool {
	for ; i < end; i++ {
		if p.tokens[i].is("every", "each") && p.ordinalEnd(i+1) != 0 && p.ordinalValue(i+1) == 2 ||
			p.tokens[i].is("other", "alt", "alternate") && p.tokens[i+1].row() {
			return true
		}
	}
	return false
}

// everyRowIn reports whether "every row" stands between two tokens.
func (p *parser) everyRowIn(i, end int) bool {
	for ; i < end; i++ {
		if p.tokens[i].is("every", "each") && p.tokens[i+1].row() && !p.tokens[i+1].is("rows") {
			return true
		}
	}
	return false
}

// theseWays are the ways to say that rows go on as they were.
var theseWays = slices.Concat(thoseWays, wordings("thus", "in established manner", "dec as est", "as est", "as established", "so",
	"as set", "as before", "as you have been", "as now", "as already set", "as on previous rows", "as in the rows before"))

// changedBy is by how many stitches rows changed the count when they were worked: a repeat
// has as many of its changes the next time.
func (r *runner) changedBy(lines []int16) (change int64, ok bool) {
	for _, i := range lines {
		if i < 0 {
			continue
		}
		c := &r.out.Lines[i]
		if c.StartStitches[r.size] < 0 || c.EndStitches[r.size] < 0 {
			return 0, false
		}
		change += int64(c.EndStitches[r.size] - c.StartStitches[r.size])
	}
	return change, true
}

// passesAdapting is how often the last rows are worked again until the count is reached. What
// does not come out is asked: the rows between may be other ones.
func (r *runner) passesAdapting(l *Line, lines []int16) (int, bool) {
	r.compareFewer(l, lines)
	want, said := r.countUntil(l)
	if !said {
		r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how many stitches are there then?")
		r.known = false
		return 0, false
	}
	if !r.known {
		r.now, r.known = hand{left: want}, true
		return 0, true
	}
	change, ok := r.changedBy(lines)
	if ok {
		r.changeAgain(l, change)
	}
	gap := want - r.now.total()
	if ok && change != 0 && gap%change != 0 && l.info.until != nil { // however the rows between are worked
		r.neverCome(l, change, want)
		return 0, true
	}
	passes, comes := passesOver(gap, change)
	if !ok || !comes {
		r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how are these rows worked? the last ones do not come to "+stitches(int(want)))
		if l.info.untilTurned == turnedNone { // else the count is of those between turns, and the others stay on the needle
			r.now = hand{left: want}
		}
		r.other, r.machine = nil, nil
		return 0, true
	}
	return passes, true
}

// passesOver is how often a change is made until a gap is closed, and whether it ever is.
func passesOver(gap, change int64) (int, bool) {
	if change == 0 {
		return 0, gap == 0
	}
	return int(gap / change), gap%change == 0 && gap/change >= 0
}
