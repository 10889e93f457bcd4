package pattern

import (
	"example.com/knitmath/knitmath/draft"
)

// partHas reads "Each sleeve has 64 sts, of which 8 are for the underarm": a count of a part of the
// stitches, in a sentence that tells.
func (p *parser) partHas(line *Line, i, end int) bool {
	if !p.began || !p.tokens[i].among("each the this every both") && !draft.Part(p.tokens[i].text) {
		return false
	}
	for n := i; n < min(i+5, end-2); n++ {
		if !p.tokens[n].among("has have holds is consists") {
			if p.tokens[n].kind != tokenWord || alarming(p.tokens[n].text) {
				return false
			}
			continue
		}
		n++
		for p.tokens[n].among("now of a total") {
			n++
		}
		to, _ := p.sizedEnd(n)
		if to == 0 || !p.tokens[to].stitches() || p.alarm(to+1, end, true) != 0 {
			return false
		}
		from := p.tokens[i].span
		p.next = n
		if line.info.partial = p.number(); line.info.partial == nil {
			return false
		}
		p.next = end
		line.info.partial, line.info.kind, line.info.claimAt = without(line.info.partial), linePassed, from.to(p.last())
		line.info.tellsPart = true
		p.passed(line.info.claimAt)
		return true
	}
	return false
}
