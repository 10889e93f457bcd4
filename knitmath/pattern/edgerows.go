package pattern

import "example.com/knitmath/knitmath/stitch"

// edgeRows is "4 sts at beg of next 2 rows", "of foll 3 alt rows": so many rows, each so
// many after the one before it, the first after so many even ones.
type edgeRows struct {
	stitches, rows []int
	even           int         // rows before each, as "alt" says
	lead           int         // rows before the first
	side           stitch.Side // of "next 3 RS rows"
}

// nextSome reads "next 2 rows", "foll 4 alt rows", "next row and foll 3 alt rows".
func (p *parser) nextSome() ([]edgeRows, bool) {
	first, ok := p.edgeRun(true)
	if !ok {
		return nil, false
	}
	runs := []edgeRows{first}
	save := p.next
	p.accept(",")
	p.accept("and")
	p.accept("on", "of")
	p.accept("the")
	if p.accept("every", "each") {
		p.next = save
		return runs, true // how often is not said here
	}
	if p.peek().is("foll", "following") {
		if more, ok := p.edgeRun(false); ok {
			return append(runs, more), true
		}
	}
	p.next = save
	return runs, true
}

// edgeRun reads one of them. "Next and foll alt row" is two runs, of which the first has
// no word of its own for its row.
func (p *parser) edgeRun(first bool) (edgeRows, bool) {
	q, counted := edgeRows{rows: one}, false
	next := p.accept("next", "this")
	if !next && !p.accept("foll", "following") {
		return q, false
	}
	switch {
	case next && first && p.peek().is("and") && p.ahead(1).is("foll", "following"):
		return q, true
	case p.numberAhead():
		n := p.number()
		if n == nil {
			return q, false
		}
		q.rows, counted = without(n), true
	}
	if side := p.sideOf(p.next); side != stitch.SideUnspecified {
		p.next++
		p.accept("side")
		q.side, q.even = side, 1
	}
	if p.accept("alt", "alternate", "other") {
		q.even = 1
	}
	if !next {
		q.lead = q.even
	}
	if !counted && p.peek().is("rows", "rnds", "rounds") {
		return q, false // how many?
	}
	return q, p.acceptRow()
}
