package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// yarnFront is what "yf" is by the stitches beside it: between two knit stitches the yarn that is brought to the front goes
// over the needle, always, and is a stitch. Before a slipped stitch it is the yarn's place. After a purl stitch, and at the
// start of a row, it is asked.
func (p *parser) yarnFront(at span) (op stitch.Op, name string) {
	if !p.last1().is("yf") || p.own["yf"].name != "" {
		return 0, ""
	}
	next := p.workedNext(p.next)
	t := &p.tokens[next]
	switch {
	case p.passesOver(next), p.decreases(t):
		p.reading(at, "before a decrease read as a yarn over")
		return stitch.YO, ""
	case t.is("sl", "slip") || strings.HasPrefix(t.text, "sl1"):
		p.reading(at, "before a slipped stitch read as: the yarn comes to the front")
		return 0, "wyif"
	case p.knitAt(next) && p.knitBefore(p.next-2):
		p.reading(at, "between two knit stitches read as a yarn over")
		return stitch.YO, ""
	}
	return 0, ""
}

// decreases reports whether a token is a decrease.
func (p *parser) decreases(t *token) bool {
	m, known := lookUp(t.text, p.own)
	return known && m.takes > m.leaves && m.leaves > 0
}

// workedNext is the stitch that is worked after token i: where a repeat goes back to its star, the first after that.
func (p *parser) workedNext(i int) int {
	for p.tokens[i].among(", ( [ and then") {
		i++
	}
	if p.tokens[i].kind == tokenStar || p.tokens[i].is("rep", "repeat", ";") {
		for n := i - 1; n > 0 && !p.endsAt(n); n-- {
			p.looked++
			if p.tokens[n].kind == tokenStar {
				return n + 1
			}
		}
	}
	return i
}

// knitAt reports whether a stitch that is knit begins at token i.
func (p *parser) knitAt(i int) bool {
	t := &p.tokens[i]
	base, _, _, counted := split(t.text)
	m, known := lookUp(t.text, p.own)
	return counted && (base == "k" || base == "knit") || known && (m.op == stitch.Knit || m.op == stitch.KnitTbl || m.op == stitch.KFB)
}

// knitBefore reports whether the stitch that ends with token i, or before the marks there, is knit.
func (p *parser) knitBefore(i int) bool {
	for ; p.tokens[i].among(", ( [ ) ] and then twice tbl tog together sts "+
		"st") || p.tokens[i].kind == tokenNumber ||
		p.tokens[i].kind == tokenStar; i-- {
		if p.tokens[i].is(")", "]") { // how often it is worked does not matter
			continue
		}
	}
	t := &p.tokens[i]
	return p.knitAt(i) || t.among("psso p2sso ssk skp skpo sk2p sk2po k2tog k3tog")
}

// oldOver reports whether "over", or the "o" of old lace, stands at token i as a stitch.
func (p *parser) oldOver(i int) bool {
	t, then := &p.tokens[i], &p.tokens[i+1]
	if !t.is("over", "o") || p.own[t.text].name != "" {
		return false
	}
	return then.among(", ; twice ) ]") || t.is("o") && (p.endsAt(i+1) || p.knitAt(i+1))
}
