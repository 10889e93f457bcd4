package pattern

import "example.com/knitmath/knitmath/stitch"

// placedAfter reads "placing a marker after the 10th, 20th and 38th sts", "pm after every 12th st (6 markers)" behind a stitch to the
// end of its row: the row is worked from marker to marker.
func (p *parser) placedAfter(steps *[]Step) bool {
	if len(*steps) != 1 || !worksToEnd(&(*steps)[0]) || !p.peek().among("placing place pm") {
		return false
	}
	i, from := p.next+1, p.peek().span
	for p.tokens[i].kind == tokenNumber && p.tokens[i].number < 9 && p.tokens[i+1].among("m markers") || p.tokens[i].among("a m marker "+
		"markers four ,") {
		i++
	}
	led := p.acceptedAt(&i, "after")
	p.acceptedAt(&i, "the")
	row := (*steps)[0]
	if p.acceptedAt(&i, "every", "each") {
		return p.placedEvery(steps, row, i, from)
	}
	end, places := p.stitchesMarked(i)
	if end == 0 || !led {
		return false
	}
	p.next = end
	list, last := make([]Step, 0, 2*len(places)+1), 0
	for _, k := range places {
		if k <= last || k > MaxNumber {
			return false
		}
		list, last = append(list, soOften(row, k-last), Step{Operation: stitch.PlaceMarker, Times: one, at: from.to(p.last())}), k
	}
	*steps, p.asGiven = append(list, row), true
	p.toClause()
	return true
}

// placedInTail reads the same behind one row that is worked plain, "purl 1 row, placing a marker after the 10th and 20th sts".
func (p *parser) placedInTail(line *Line) bool {
	info := &line.info
	if info.kind != linePlain || !single(info.counts, 1) {
		return false
	}
	steps := []Step{{Operation: info.op, takes: 1, leaves: 1, RemainingStitches: toEnd, at: p.last()}}
	if !p.placedAfter(&steps) {
		return false
	}
	line.Steps, info.kind, info.counts, info.asGiven = steps, lineRow, nil, true
	return true
}

// placedEvery is the same of every so manieth stitch, from the token after "every" on: so often as markers are told, or to the end.
func (p *parser) placedEvery(steps *[]Step, row Step, i int, from span) bool {
	end, n := p.ordinalEnd(i), 0
	switch {
	case end != 0:
		n = p.ordinalValue(i)
	case p.tokens[i].kind == tokenNumber:
		end, n = i+1, int(p.tokens[i].number)
	}
	if end == 0 || n < 1 || n > MaxNumber || !p.tokens[end].stitches() {
		return false
	}
	p.next = end + 1
	at := from.to(p.last())
	group := Step{Steps: []Step{soOften(row, n), {Operation: stitch.PlaceMarker, Times: one, at: at}}, RemainingStitches: []int{0}, at: at}
	*steps = []Step{group}
	if told := p.markersToldIn(p.next); told > 0 {
		group.RemainingStitches, group.Times = nil, []int{told}
		*steps = []Step{group, row}
	}
	p.asGiven = true
	p.toClause()
	return true
}

// markersToldIn is how many markers "(6 markers)" at token i says, 0 if it does not stand there.
func (p *parser) markersToldIn(i int) int {
	if !p.tokens[i].is("(", "-", ",") || p.tokens[i+1].kind != tokenNumber || !p.tokens[i+2].among("markers m") {
		return 0
	}
	return int(p.tokens[i+1].number)
}

// worksToEnd reports whether a step is one stitch after the other to the end of the row.
func worksToEnd(s *Step) bool {
	return s.Steps == nil && single(s.RemainingStitches, 0) && s.takes == 1 && s.leaves == 1
}

// soOften is a step so many times.
func soOften(s Step, n int) Step {
	s.RemainingStitches, s.Times = nil, []int{n}
	return s
}

// stitchesMarked is the index after "10th, 20th and 38th sts" or "10, 20 and 38 sts" at token i, and which they are; 0 if that is not what
// stands there.
func (p *parser) stitchesMarked(i int) (end int, at []int) {
	p.acceptedAt(&i, "sts", "stitches")
	for {
		p.acceptedAt(&i, "and", "&")
		next := p.ordinalEnd(i)
		switch {
		case next != 0:
			at = append(at, p.ordinalValue(i))
		case p.tokens[i].kind == tokenNumber:
			at, next = append(at, int(p.tokens[i].number)), i+1
		default:
			return 0, nil
		}
		i = next
		if p.tokens[i].stitches() {
			return i + 1, at
		}
		if !p.acceptedAt(&i, ",", "and", "&") {
			if p.clauseStopsAt(i) && p.tokens[i-1].kind == tokenNumber {
				return i, at
			}
			return 0, nil
		}
	}
}

// placedNext reports whether ", pm after" or "and place markers after" comes next.
func (p *parser) placedNext() bool {
	i := p.next
	for p.tokens[i].is(",", "and") {
		i++
	}
	if !p.tokens[i].among("pm place placing") {
		return false
	}
	for i++; p.tokens[i].among("a m marker markers"); i++ {
	}
	return p.tokens[i].is("after")
}

// markersMinded is the index after "removing markers as you come to them," at token i, before what is worked; 0 if it does not stand
// there.
func (p *parser) markersMinded(i int) int {
	if !p.tokens[i].among("removing slipping dropping discarding taking") {
		return 0
	}
	about := false
	for i++; !p.endsAt(i) && p.tokens[i].kind == tokenWord; i++ {
		t := &p.tokens[i]
		about = about || t.among("marker markers")
		if !t.among("marker markers all the raglan side both these out as when you come to them go they appear each other any off") {
			return 0
		}
	}
	if !about || !p.tokens[i].is(",") {
		return 0
	}
	return i + 1
}
