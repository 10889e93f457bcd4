package pattern

// edgesKept is the index after "keeping 3 sts at each edge in garter st", "with 2 knit sts
// at each end of RS rows", "first and last 4 sts in seed st" at token i: stitches that are
// worked in a fabric of their own, which changes no count; 0 if that is not what stands there.
func (p *parser) edgesKept(i int) int {
	if !p.tokens[i].is("keeping", "with", "maintaining", "keep", "working", "work", "having") {
		return 0
	}
	i++
	for p.tokens[i].is("the", "first", "last", "and", "a", "always", "border", "edge", "outer") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 {
		return 0
	}
	for p.tokens[end].is("edge", "border", "knit", "purl", "k", "garter") {
		end++
	}
	if !p.tokens[end].stitches() {
		return 0
	}
	end++
	place, fabric := false, false
	for {
		if next := p.phraseEnd(end, edgePlaces); next != 0 {
			place, end = true, next
			continue
		}
		if p.tokens[end].is("in", "as") && p.fabricEnd(end+1) != 0 {
			fabric, end = true, p.fabricEnd(end+1)
			continue
		}
		if p.tokens[end].is("in", "as") && p.tokens[end+1].is("k", "knit", "garter", "border", "edge") {
			fabric, end = true, end+2
			continue
		}
		break
	}
	if !place || !fabric && !p.tokens[i+1].is("knit", "purl", "garter") {
		return 0
	}
	for p.tokens[end].is("throughout", "as", "before", "correct", "every", "row", "only") {
		end++
	}
	return end
}

var edgePlaces = wordings("at each edge", "at each end of rs rows", "at each end of ws rows", "at each end of every row",
	"at each end of rows",
	"at each end", "each end", "each edge", "at each side", "each side", "at both edges", "at both ends", "at both sides", "on each side",
	"on each edge", "at beg and end", "at the edges", "at either edge", "at either end", "of every row", "at front edge", "at neck edge",
	"of each row")

// edgeStitches is how many stitches are kept so in all: at both ends, unless one is named.
func (p *parser) edgeStitches(i int) []int {
	save := p.next
	defer func() { p.next = save }()
	p.next = i + 1
	for p.accept("the", "first", "last", "and", "a", "always", "border", "edge", "outer") {
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
