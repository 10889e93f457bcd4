package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// edgeTotals reads "BO 4 sts at each neck edge once, then 2 sts twice", "at neck edge BO 6 sts
// once, 2 sts twice": stitches bound off at an edge over several rows. How many are bound off
// in all is said; on which rows is not followed.
func (p *parser) edgeTotals(line *Line) bool {
	info := &line.info
	e := edgeSaid{factor: 1}
	p.whichEdge(&e)
	if p.led.factor != 0 && (p.led.rows == p.led.end || p.phraseEnd(p.led.rows, edgeRowsSaid) == p.led.end) {
		e.factor, e.said, p.led.used = p.led.factor, true, true
	}
	p.accept(",")
	if !p.accept("bo") && !p.acceptAll("bind", "off") && !p.acceptAll("cast", "off") {
		return false
	}
	p.whichEdge(&e)
	total := make([]int, p.sizes)
	info.edgeTimes = make([]int, p.sizes)
	first := e.said
	for parts := 0; ; parts++ {
		n, times := p.edgePart(&e, first && parts == 0)
		if n == nil {
			return false
		}
		for size := range total {
			info.edgeTimes[size] = min(info.edgeTimes[size]+max(at(times, size), 0), MaxNumber)
			total[size] = min(total[size]+max(at(n, size), 0)*max(at(times, size), 0)*e.factor, MaxNumber)
		}
		if parts > 12 || !p.edgeGoesOn() {
			break
		}
	}
	info.kind, info.op = lineShape, stitch.BindOff
	info.hidden = []Step{
		{Name: "work", takes: 1, leaves: 0, Times: tidy(total)},
		{Name: "work", takes: 1, leaves: 1, RemainingStitches: toEnd},
	}
	info.parts = []shapings{{next: true, lead: []int{0}, interval: one, times: one}}
	p.reading(p.last(), "how many are bound off in all is followed, not on which rows")
	return true
}

// compareEdgeRows compares the rows that are told of them: each is bound off at the beginning of a row, every second of which
// begins at that edge, and the last may be worked back or not.
func (r *runner) compareEdgeRows(c *rowsClaim) {
	n, told := 2*at(r.piece.Lines[c.line].info.edgeTimes, r.size), at(c.rows, r.size)
	if told < 0 || c.inAll && told > n || told == n || told == n-1 || !r.wanted(ReasonRows, c.at) {
		return
	}
	r.fault(KindMistake, ReasonRows, c.at, 0, "so often at the edge takes "+strconv.Itoa(n-1)+" or "+strconv.Itoa(n)+" rows, not "+
		strconv.Itoa(told))
}

// edgeSaid is at how many edges stitches are bound off, once it is said.
type edgeSaid struct {
	factor int
	said   bool
}

// whichEdge reads "at each neck edge", "on foll alt rows" where a place has been said.
func (p *parser) whichEdge(e *edgeSaid) {
	switch {
	case p.acceptAny(bothEnds):
		e.factor, e.said = 2, true
	case p.acceptAny(oneEnd):
		e.said = true
	case e.said && p.acceptAny(edgeRowsSaid):
	default:
		return
	}
	p.acceptAny(edgeRowsSaid)
}

// edgePart reads "4 sts at each neck edge once", nil if that is not what stands there. alone
// says that the first of all may leave its number of times out.
func (p *parser) edgePart(e *edgeSaid, alone bool) (n, times []int) {
	if n = p.number(); n == nil {
		return nil, nil
	}
	p.acceptAmong("st sts stitch stitches")
	p.whichEdge(e)
	times, _, more := p.manyTimes()
	if times == nil && alone && p.clauseEnds() && !p.goesOn() {
		times = one // "at neck edge, BO 5 sts."
	}
	if times == nil || more || !e.said {
		return nil, nil
	}
	return n, times
}

// edgeGoesOn reports whether more are bound off at the edge, and goes on to their number.
func (p *parser) edgeGoesOn() bool {
	save := p.next
	for p.acceptAmong(", ; and then") {
	}
	p.accept("bo")
	if end, _ := p.sizedEnd(p.next); end != 0 && save != p.next && p.tokens[end].stitches() {
		return true
	}
	p.next = save
	return false
}

var edgeRowsSaid = wordings("on every rs row", "on every ws row", "on every other row", "every other row", "on alt rows",
	"on every alt row",
	"every rs row", "every ws row", "on rs rows", "on ws rows", "on next and every alt row", "every 2nd row", "on every 2nd row")
