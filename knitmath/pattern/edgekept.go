package pattern

// edgesKept is the index after "keeping 3 sts at each edge in garter st", "with 2 knit sts
// at each end of RS rows", "first and last 4 sts in seed st" at token i: stitches that are
// worked in a fabric of their own, which changes no count; 0 if that is not what stands there.
func (p *parser) edgesKept(i int) int {
	t := &p.tokens[i]
	if t.is("knitting", "k", "knit") {
		return p.edgesKnit(i)
	}
	if !t.among("keeping with maintaining keep working work having") {
		return 0
	}
	if end := p.edgeBand(i + 1); end != 0 {
		return end
	}
	from, both := p.edgeNumber(i + 1)
	if from == 0 {
		return 0
	}
	end, place, fabric := p.edgeWords(from)
	if !place && !both || !fabric && !p.anyOf(i+1, from, "knit", "purl", "garter") {
		return 0
	}
	return p.edgesThroughout(end)
}

// edgesKnit is the index after "knit first and last 4 sts throughout" and the like at token i; 0 if
// that is not what stands there.
func (p *parser) edgesKnit(i int) int {
	from, both := p.edgeNumber(i + 1)
	if from == 0 || !both {
		return 0
	}
	end, _, _ := p.edgeWords(from)
	if end == from {
		return 0
	}
	return p.edgesThroughout(end)
}

// edgesThroughout is the index after "throughout", "as set", "every row" at token i.
func (p *parser) edgesThroughout(i int) int {
	for p.tokens[i].among("throughout as before correct every row only set est established") {
		i++
	}
	return i
}

// edgeWords is the index after the places and fabrics of edges at token i, and whether any was
// said.
func (p *parser) edgeWords(i int) (end int, place, fabric bool) {
	for {
		if next := p.phraseEnd(i, edgePlaces); next != 0 {
			place, i = true, next
		} else if next := p.edgeFabric(i); next != 0 {
			fabric, i = true, next
		} else {
			return i, place, fabric
		}
	}
}

// edgeNumber is the index after "the first and last 3 sts", "first 2 and last 2 sts", "3 border
// sts" at token i; both says that it is said of both ends.
func (p *parser) edgeNumber(i int) (end int, both bool) {
	first, last := false, false
	for n := 0; n < 2; n++ {
		for p.tokens[i].among("the first last and a always border edge outer") {
			first, last = first || p.tokens[i].is("first"), last || p.tokens[i].is("last")
			i++
		}
		if end, _ = p.sizedEnd(i); end == 0 {
			return 0, false
		}
		if !p.tokens[end].is("and") || !p.tokens[end+1].is("last", "the") {
			break
		}
		i = end
	}
	if p.tokens[end].is("-") { // "4-st garter borders"
		end++
	}
	for p.tokens[end].among("edge border knit purl k garter") {
		end++
	}
	if !p.tokens[end].stitches() {
		return 0, false
	}
	return end + 1, first && last
}

// edgeFabric is the index after "in garter st", "as k" at token i, 0 if no fabric stands there.
func (p *parser) edgeFabric(i int) int {
	switch {
	case !p.tokens[i].is("in", "as"):
		return 0
	case p.fabricEnd(i+1) != 0:
		return p.fabricEnd(i + 1)
	case p.tokens[i+1].among("k knit garter border edge"):
		return i + 2
	}
	return 0
}

// edgeBand is the index after "a 3-st garter edge at each side", "a border of 3 garter sts at
// each end" at token i, 0 if that is not what stands there.
func (p *parser) edgeBand(i int) int {
	if p.tokens[i].is("a", "the") {
		i++
	}
	band := p.tokens[i].among("border edge edging band borders edges") && p.tokens[i+1].is("of")
	if band {
		i += 2
	}
	end, _ := p.sizedEnd(i)
	if end == 0 {
		return p.edgeNamed(i)
	}
	if p.tokens[end].is("-") {
		end++
	}
	if !band {
		if !p.tokens[end].stitches() {
			return 0
		}
		end++
	}
	for p.tokens[end].among("garter seed moss st stitch sts stitches knit") {
		end++
	}
	if !band {
		if !p.tokens[end].among("border edge edging band borders edges") {
			return 0
		}
		end++
	}
	if place := p.phraseEnd(end, edgePlaces); place != 0 || !p.tokens[end-1].is("borders", "edges") {
		return place
	}
	return end // one at each edge
}

// edgeNamed is the index after "garter st borders", "seed stitch bands at each side" at token i: so many
// stitches as before; 0 if that is not what stands there.
func (p *parser) edgeNamed(i int) int {
	from := i
	for p.tokens[i].among("garter seed moss ribbed rib knit i-cord icord st stitch") {
		i++
	}
	if i == from || !p.tokens[i].among("borders edges edging edgings bands border edge band") {
		return 0
	}
	if i++; p.tokens[i].is("sts", "stitches") {
		i++
	}
	if end := p.phraseEnd(i, edgePlaces); end != 0 {
		i = end
	}
	return p.edgesThroughout(i)
}

var edgePlaces = wordings("at each edge", "at each end of rs rows", "at each end of ws rows", "at each end of every row",
	"at each end of rows",
	"at each end", "each end", "each edge", "at each side", "each side", "at both edges", "at both ends", "at both sides", "on each side",
	"on each edge", "at beg and end", "at the edges", "at either edge", "at either end", "of every row", "at front edge", "at neck edge",
	"of each row", "on every row", "on all rows", "on each row", "in every row", "of all rows", "of the row", "on rs rows", "on ws rows")

// edgeStitches is how many stitches are kept so in all: at both ends, unless one is named.
func (p *parser) edgeStitches(i int) []int {
	save := p.next
	defer func() { p.next = save }()
	for p.next = i + 1; p.acceptAmong("the first last and a always border edge outer of"); {
	}
	n := without(p.number())
	if n == nil || p.anyOf(p.next, p.edgesKept(i), "neck", "front") {
		return n
	}
	return added(n, n, p.sizes)
}

// withoutEdges works something on the stitches between the edges that are kept out of it.
func (r *runner) withoutEdges(l *Line, work func()) {
	n := int64(0)
	if l.info.edges1 != nil && r.known && r.now.behind == 0 {
		n = min(int64(at(l.info.edges1, r.size)), r.now.left)
	}
	r.now.left -= n
	if n > 0 {
		r.other, r.machine = nil, nil
		r.loseMarks()
	}
	work()
	if r.now.left += n; n > 0 {
		r.other, r.machine = nil, nil
	}
}
