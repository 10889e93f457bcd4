package pattern

import "slices"

// changesGoOn reads "continuing to increase as set on RS rows", "keeping decreases as established" after
// so many rows, "Knit 6 rows": they are the rows just written, again and again, in another stitch. Where
// those rows say how many stitches they work between their changes, it asks.
func (p *parser) changesGoOn(info *lineInfo) bool {
	if info.counts == nil || info.kind != lineEven && info.kind != linePlain {
		return false
	}
	end := p.changesAsSet(p.next)
	if end == 0 {
		return false
	}
	from := p.peek().span
	p.next = end
	p.asInSet(info, from)
	return true
}

// changesLead reads "Keeping increases correct, knit 6 rows".
func (p *parser) changesLead(line *Line) bool {
	if !p.changesLed() || p.onlyRows {
		return false
	}
	end, from := p.changesAsSet(p.next), p.peek().span
	if p.next = end + 1; directs[p.peek().text]&verbEven == 0 || !p.even(line) || line.info.counts == nil {
		return false
	}
	p.asInSet(&line.info, from.to(p.tokens[end-1].span))
	return true
}

// changesLed reports whether such words come next, before a comma.
func (p *parser) changesLed() bool {
	end := p.changesAsSet(p.next)
	return end != 0 && p.tokens[end].is(",")
}

// asInSet makes rows that were only counted those of the set just written.
func (p *parser) asInSet(info *lineInfo, at span) {
	n := p.rowsInSet()
	if n == 0 || !p.stretchedSet(n) {
		p.ask(ReasonUnread, at, "on which of these rows, and by how many stitches?")
		info.kind = lineUnread
		return
	}
	p.reading(at, "read as the last rows again and again, so many as are said")
	info.kind, info.last, info.afresh, info.forRows, info.counts = lineRepeat, n, true, info.counts, nil
}

// changesAsSet is the index after such words at token i; 0 if they do not stand there.
func (p *parser) changesAsSet(i int) int {
	switch t := &p.tokens[i]; {
	case t.among("continuing cont continue still") && p.tokens[i+1].among("to inc dec increasing decreasing"):
		if i++; p.tokens[i].is("to") {
			i++
		}
		if !p.tokens[i].among("inc dec increase decrease increasing decreasing shape") {
			return 0
		}
		i++
	case t.among("increasing decreasing inc dec"):
		i++
	case t.among("keeping maintaining continuing working with"):
		for i++; p.tokens[i].among("the all side neck raglan edge centre center yoke"); i++ {
		}
		if !p.tokens[i].among("increases decreases incs decs increasing decreasing shaping shapings") {
			return 0
		}
		i++
	default:
		return 0
	}
	for p.tokens[i].among("at each both end ends edge edges sides markers marker the") {
		i++
	}
	way := p.phraseEnd(i, asSet)
	if way == 0 {
		return 0
	}
	for p.tokens[way].among("on every all rs ws rows row at each end ends side edge rnds rnd rounds " +
		"alt other alternate") {
		way++
	}
	if !p.clauseStopsAt(way) {
		return 0
	}
	return way
}

var asSet = slices.Concat(theseWays, wordings("correct", "in pattern"))

// stretchedSet reports whether all of the last rows that change the count go as far as there are stitches.
func (p *parser) stretchedSet(n int) bool {
	changes := false
	for i := max(len(p.piece.Lines)-n, 0); i < len(p.piece.Lines); i++ {
		if l := &p.piece.Lines[i]; changesCount(l.Steps) {
			changes = true
			if !anyStretches(l.Steps) {
				return false
			}
		}
	}
	return changes
}
