package pattern

import "example.com/knitmath/knitmath/stitch"

// edgeTotals reads "BO 4 sts at each neck edge once, then 2 sts twice", "at neck edge BO 6 sts
// once, 2 sts twice": stitches bound off at an edge over several rows. How many are bound off
// in all is said; on which rows is not followed.
func (p *parser) edgeTotals(line *Line) bool {
	info := &line.info
	factor, said := 1, false
	place := func() {
		switch {
		case p.acceptAny(bothEnds):
			factor, said = 2, true
		case p.acceptAny(oneEnd):
			said = true
		case said && p.acceptAny(edgeRowsSaid):
		default:
			return
		}
		p.acceptAny(edgeRowsSaid)
	}
	place()
	if p.led.factor != 0 && (p.led.rows == p.led.end || p.phraseEnd(p.led.rows, edgeRowsSaid) == p.led.end) {
		factor, said, p.led.used = p.led.factor, true, true
	}
	p.accept(",")
	if !p.accept("bo") && !p.acceptAll("bind", "off") && !p.acceptAll("cast", "off") {
		return false
	}
	place()
	first := said
	total := make([]int, p.sizes)
	for parts := 0; ; parts++ {
		n := p.number()
		if n == nil {
			return false
		}
		p.accept("st", "sts", "stitch", "stitches")
		place()
		times, _, more := p.manyTimes()
		if times == nil && first && parts == 0 && p.clauseEnds() && !p.goesOn() {
			times = one // "at neck edge, BO 5 sts."
		}
		if times == nil || more || !said {
			return false
		}
		for size := range total {
			total[size] = min(total[size]+max(at(n, size), 0)*max(at(times, size), 0)*factor, MaxNumber)
		}
		save := p.next
		for p.accept(",", ";", "and", "then") {
		}
		p.accept("bo")
		end, _ := p.sizedEnd(p.next)
		if end == 0 || save == p.next || !p.tokens[end].stitches() || parts > 12 {
			p.next = save
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

var edgeRowsSaid = wordings("on every rs row", "on every ws row", "on every other row", "every other row", "on alt rows",
	"on every alt row",
	"every rs row", "every ws row", "on rs rows", "on ws rows", "on next and every alt row", "every 2nd row", "on every 2nd row")
