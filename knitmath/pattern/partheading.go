package pattern

import (
	"strings"
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// sizesLine reports whether a line says for which sizes what follows it is.
func (p *parser) sizesLine(i int) bool {
	_, end := p.sizesAt(i)
	return end != 0
}

// headingAlone reports whether nothing but the heading stands in its line.
func (p *parser) headingAlone(i, end int) bool {
	for n := i; n < end; n++ {
		if p.tokens[n].is(":", "-") {
			return n+1 >= end
		}
		if p.tokens[n].kind == tokenNumber {
			return false
		}
	}
	return true
}

// titled reports whether a line is set as a title: in capitals, or each word with one.
func (p *parser) titled(i, end int) bool {
	text := p.found.source[p.tokens[i].start:p.tokens[end-1].end]
	if strings.ToUpper(text) == text {
		return true
	}
	for _, w := range strings.Fields(text) {
		c := []rune(w)[0]
		if unicode.IsLower(c) && len(w) > 3 {
			return false
		}
	}
	return end-i <= 5
}

// bodyAt reports whether what is worked begins with a line: a row, a cast-on, or the
// heading of a part.
func (p *parser) bodyAt(i, end int) bool {
	if i >= end {
		return false
	}
	if to := p.labelEnd(i); to != 0 && (p.tokens[i].row() || p.ordinalEnd(i) != 0 ||
		p.tokens[i].among("next set-up setup foundation every") || p.namesARow(i, to)) {
		return true
	}
	if begins, found := p.bringsAt(i, end); found {
		return begins
	}
	if _, to := p.sizesAt(i); to != 0 {
		return true
	}
	return p.partHeading(i, end)
}

// bringsAt looks for a cast-on or a pick-up in the line at token i, and reports whether the work
// begins with it: what is picked up, only where nothing but the yarn is said before it.
func (p *parser) bringsAt(i, end int) (begins, found bool) {
	for n := i; n < min(end, i+24); n++ {
		t, then := &p.tokens[n], &p.tokens[n+1]
		if (t.is("co") || t.is("cast") && then.is("on")) && p.castAt(n) != 0 && !p.tokens[i].is("abbreviations") {
			return true, true
		}
		if t.is("pick") && then.is("up") && p.tokens[n+2].is("and") {
			return n == i || p.tokens[i].is("with", "using"), true
		}
	}
	return false, false
}

// partHeading reports whether a line is the heading of a part that is knit.
func (p *parser) partHeading(i, end int) bool {
	t := &p.tokens[i]
	if t.kind != tokenWord || end-i > 9 {
		return false
	}
	last := &p.tokens[end-1]
	for n := i; n < end; n++ {
		if p.tokens[n].is(":") {
			end, last = n, &p.tokens[n]
			break
		}
		if p.tokens[n].is("(") {
			end = n
			break
		}
	}
	if end-i > 5 || end == i {
		return false
	}
	return draft.Part(t.text) && !p.tokens[end-1].is(".") && (last.is(":", ")") || p.titled(i, end)) && !p.anyNumber(i, end)
}

func (p *parser) anyNumber(i, end int) bool {
	for ; i < end; i++ {
		if p.tokens[i].kind == tokenNumber {
			return true
		}
	}
	return false
}

// namesARow reports whether a label names a row by what is done in it, "Short row 1 (RS): K20, w&t", "Dec rnd: ...", and its
// stitches follow.
func (p *parser) namesARow(i, end int) bool {
	for n := i; n < end; n++ {
		if p.tokens[n].row() {
			return p.startsItem(end) || p.tokens[end].among(": - .") && p.startsItem(end+1)
		}
	}
	return false
}
