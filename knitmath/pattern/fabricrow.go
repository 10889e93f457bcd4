package pattern

import "strconv"

// rowOfFabric reads brackets behind the name of a fabric that say the row in which it is worked, "moss st (every row: *k1, p1; rep
// from * to last st, k1)": whether it fits the stitches is seen where they are known.
func (p *parser) rowOfFabric(info *lineInfo) bool {
	closer := closers[p.peek().text]
	i := p.next + 1
	if !p.peek().is("(", "[") || info == nil || p.trying {
		return false
	}
	led := p.eachRowEnd(i) != 0
	if led {
		for i = p.eachRowEnd(i); p.tokens[i].among(": = , -"); i++ {
		}
	}
	save, found := p.next, p.found.mark()
	p.next = i
	steps, ok := p.rowInBrackets(closer, &led)
	ok = ok && !p.saidSince(found)
	p.found.rewind(found)
	if !ok || !led || len(steps) == 0 || len(steps) == 1 && steps[0].Steps == nil {
		p.next = save
		return false
	}
	info.hidden = steps
	return true
}

// rowInBrackets reads the steps of such a row up to the closing bracket, and "every row" behind them.
func (p *parser) rowInBrackets(closer string, led *bool) ([]Step, bool) {
	stars, depth := len(p.stars), p.depth
	p.inside++
	p.depth++
	p.inFabricRow = !*led
	steps, ok := p.items(closer)
	p.inFabricRow = false
	if end := p.eachRowEnd(p.next); !*led && end != 0 {
		*led, p.next = true, end
	}
	p.inside--
	p.depth, p.stars = depth, p.stars[:min(stars, len(p.stars))]
	p.fit(steps)
	return steps, ok && p.placed(steps) && !changesCount(steps) && placesKnown(steps) && p.accept(closer)
}

// saidSince reports whether a mistake or a question has been found since a mark.
func (p *parser) saidSince(found mark) bool {
	for i := found.listed; i < len(p.found.list); i++ {
		if p.found.list[i].Kind != KindReading {
			return true
		}
	}
	return false
}

// eachRowEnd is the index after "every row", "on all rows" at token i, 0 if it does not stand there.
func (p *parser) eachRowEnd(i int) int {
	if p.tokens[i].is("on", "in") {
		i++
	}
	if !p.tokens[i].among("every each all") || !p.tokens[i+1].row() {
		return 0
	}
	return i + 2
}

// fabricFits asks where the row that is told of a fabric does not come out on the stitches that are there.
func (r *runner) fabricFits(l *Line) {
	total := r.now.total()
	if l.info.hidden == nil || !r.known || r.now.behind > 0 || total == 0 || r.quiet {
		return
	}
	r.spend(len(l.info.hidden))
	p := profileOf(l.info.hidden, r.size)
	if p.work(total).reason == "" || !r.wanted(ReasonUneven, l.info.at) {
		return
	}
	r.fault(KindQuestion, ReasonUneven, l.info.at, 0, "the row that is told of this does not come out on "+strconv.Itoa(int(total))+
		" stitches: does it begin and end otherwise here?")
}
