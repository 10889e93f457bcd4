package pattern

import "example.com/knitmath/knitmath/stitch"

// heldOfRows reads of which rows stitches are put aside at the beginning, "5 sts on holder at beg of next 4 rows", where their
// number and their holder have been read from token verbAt on, or the rows stand before that: so many in each of them.
func (p *parser) heldOfRows(info *lineInfo, verbAt int) bool {
	if info.counts == nil {
		return false
	}
	runs, ok := p.ledHeld()
	if !ok {
		var found bool
		if runs, found, ok = p.heldRowsFrom(verbAt); !found {
			return false
		}
	}
	if !ok {
		p.ask(ReasonUnread, p.tokens[verbAt].to(p.last()), "on which rows is this, and how many times?")
		info.kind = lineUnread
		return true
	}
	info.kind, info.op, info.whole = lineBeginning, stitch.BindOff, wholeNone
	info.keeps = true
	for _, q := range runs {
		q.stitches = info.counts
		info.edges = append(info.edges, q)
	}
	return true
}

// ledHeld reads the rows where they stand before the verb, "at beg of next 2 rows, place 5 sts on a holder".
func (p *parser) ledHeld() (runs []edgeRows, ok bool) {
	if p.led.factor != 1 || p.led.rows == p.led.end {
		return nil, false
	}
	runs, ok = p.ledRuns()
	p.led.used = p.led.used || ok
	return runs, ok
}

// heldRowsFrom reads them where they stand after the stitches, before their holder or behind it. found says that more rows than
// one are spoken of.
func (p *parser) heldRowsFrom(verbAt int) (runs []edgeRows, found, ok bool) {
	end := p.next
	for i := verbAt; i < end; i++ {
		if !p.edgeRowsAt(p.namedEdge(i)) {
			continue
		}
		p.next = i
		runs, ok = p.atEdgeOf()
		p.next = max(p.next, end)
		return runs, ok || p.anyOf(i, end, "every", "each", "rows", "alt", "alternate", "other"), ok
	}
	return nil, false, false
}

// holdsInRows reports whether a label of several rows is followed by stitches that are put aside, and by what else each of
// those rows does: "Next 2 rows: Place 5 sts on holder, k to end".
func (p *parser) holdsInRows(label *lineInfo) bool {
	several := label.forRows != nil || len(label.ranges) > 0 && label.ranges[0].first < label.ranges[len(label.ranges)-1].last
	if verb := p.peek(); !several || directs[verb.text]&verbHold == 0 || verb.is("work") {
		return false
	}
	for i := p.next; !p.endsAt(i); i++ {
		if p.tokens[i].among(", ; then and") && (p.startsItem(i+1) || p.tokens[i+1].is("work")) {
			return true
		}
	}
	return false
}
