package pattern

import (
	"strings"
	"unicode"
)

// sectionKind says for whom a part of the text is written.
type sectionKind uint8

const (
	sectionBody  sectionKind = iota // it is worked
	sectionFront                    // it is read by people alone: materials, gauge, notes
)

// frontMatter passes over headings and what stands under those that are read by
// people alone. It looks only where a line begins.
func (p *parser) frontMatter() bool {
	if !p.lineStart() {
		return false
	}
	end := p.lineEnd(p.next)
	switch {
	case p.countedNote(p.next, end), p.stitchCount(), p.peek().is("needles") && p.needlesAlone():
		return true
	case p.explained(end):
		p.passTo(end)
		return true
	case p.frontHeading(p.next, end):
		alone := p.headingAlone(p.next, end)
		if !p.patternNamed() {
			p.endPattern()
		}
		stop := p.noteEnd(p.next, end)
		p.passTo(stop)
		p.section = sectionBody
		if stop < end {
			return true
		}
		if alone {
			p.section = sectionFront
		} else {
			p.passWrapped()
		}
		return true
	case p.section == sectionFront:
		if p.bodyAt(p.next, end) {
			p.section = sectionBody
			return false
		}
		p.passTo(end)
		return true
	}
	return false
}

// explained reports whether a line that ends at a token only explains: a measure, an abbreviation, how
// work is turned, or how many sizes there are, "5 sizes: chest 80 cm".
func (p *parser) explained(end int) bool {
	if !p.began && (p.measureLine(p.next, end) || p.explains(p.next, end) || p.sizeNamesAlone(p.next, end)) ||
		p.turnExplained(p.next) || p.crossingExplained(p.next, end) {
		return true
	}
	return !p.began && p.peek().kind == tokenNumber && p.ahead(1).is("sizes") && p.ahead(2).is(":", "-")
}

// lineStart reports whether the next token is the first of its line.
func (p *parser) lineStart() bool {
	return p.next == 0 || p.tokens[p.next-1].kind == tokenNewline
}

// lineEnd is the index of the line break or the end after token i.
func (p *parser) lineEnd(i int) int {
	if p.lineSeen[0] <= i && i < p.lineSeen[1] { // asked again for each sentence of a long line
		return p.lineSeen[1]
	}
	from := i
	for p.tokens[i].kind != tokenNewline && p.tokens[i].kind != tokenEnd {
		p.looked++
		i++
	}
	p.lineSeen = [2]int{from, i}
	return i
}

// passTo passes over all up to a token, as a line of its own.
func (p *parser) passTo(end int) {
	if end == p.next {
		return
	}
	from := p.peek().span
	p.next = end
	p.passed(from.to(p.last()))
	p.finish(&Line{info: lineInfo{kind: linePassed}}, from)
}

// passed notes words that were passed over. Those of lines that follow one another
// are one finding.
func (p *parser) passed(at span) {
	if i := p.lastPassed; i > 0 && i <= len(p.found.list) && p.passedEnd+4 >= at.start {
		if f := &p.found.list[i-1]; !strings.HasSuffix(f.Text, "…") {
			f.Text = shorten(f.Text+" "+p.found.source[at.start:min(at.end, at.start+200)], 60)
		}
		p.passedEnd = at.end
		return
	}
	n := len(p.found.list)
	p.found.add(KindReading, ReasonPassedOver, at, "passed over: it changes no count")
	if len(p.found.list) > n {
		p.lastPassed, p.passedEnd = len(p.found.list), at.end
	}
}

// passWrapped passes over the lines that a paragraph goes on with.
func (p *parser) passWrapped() {
	for p.peek().kind == tokenNewline && p.peek().number == 1 {
		next := p.next + 1
		end := p.lineEnd(next)
		if next == end {
			return
		}
		c := rune(p.found.source[p.tokens[next].start])
		if p.frontHeading(next, end) || p.bodyAt(next, end) || p.began && p.countAlone(next, end) || !unicode.IsLower(c) && !unicode.IsDigit(c) {
			return
		}
		p.next++
		p.passTo(end)
	}
}

// frontHeading reports whether a line begins with a heading of front matter: alone
// in its line, or before a colon or a dash.
func (p *parser) frontHeading(i, end int) bool {
	if !p.frontWord(i) || p.workedNotFront(i, end) {
		return false
	}
	first := &p.tokens[i]
	const far = 7
	for n := i; n < min(i+far, end); n++ {
		switch t := &p.tokens[n]; {
		case t.is(":", "("), n > i && p.dashAt(n):
			return true
		case t.kind == tokenNumber:
			return first.is(numberedFront...) && !p.sizesLine(i)
		case t.kind == tokenMark && !t.is("&", ",", "/"):
			return false
		}
	}
	if end >= i+far {
		return first.is(longFront...)
	}
	return p.titled(i, end) || end <= i+2 || p.frontPhrase(i) // nothing else stands in its line
}

// workedNotFront reports whether a line that begins with a word of front matter is worked, or says
// for which sizes what follows is.
func (p *parser) workedNotFront(i, end int) bool {
	return p.began && (p.forSizesAt(i, end) || p.worksAfterLead(i, end)) ||
		p.tokens[i].is("sizes") && p.tokens[i+1].is("-") && p.sizesLine(i)
}

// forSizesAt reports whether a line says for which sizes what follows is, "Size M only", and not
// what the sizes are.
func (p *parser) forSizesAt(i, end int) bool {
	return p.tokens[i].is("size", "sizes") && (p.sizesLine(i) || p.anyOf(i, end, "only"))
}

// dashAt reports whether a dash, also one after a full stop, stands at token i.
func (p *parser) dashAt(i int) bool {
	return p.tokens[i].is("-") || p.tokens[i].is(".") && p.tokens[i+1].is("-")
}

// longFront are headings of front matter in whose line much may follow without a colon.
var longFront = []string{"materials", "gauge", "tension", "photo", "photograph", "caption", "abbreviations", "sizes", "to", "needles",
	"note", "notes"}

// numberedFront are headings of front matter after which a number may follow at once.
var numberedFront = []string{"size", "sizes", "gauge", "tension", "to", "needles", "materials", "yarn", "photo", "fig", "figure", "picture",
	"photograph", "hook", "measurements"}

// frontWord reports whether a heading of front matter begins with token i.
func (p *parser) frontWord(i int) bool {
	t := &p.tokens[i]
	if t.kind != tokenWord {
		return false
	}
	return p.front(i) ||
		t.among("stitch to you special pattern row how before st helpful knitting") && p.frontPhrase(i)
}

// frontPhrase reports whether front matter begins with several words.
func (p *parser) frontPhrase(i int) bool {
	return p.phraseEnd(i, frontPhrases) != 0
}

var frontPhrases = wordings("stitch guide", "stitch key", "stitch count", "to fit", "you will need", "you need", "special abbreviations",
	"special stitches", "special techniques", "pattern notes", "pattern note", "pattern information", "row gauge", "row tension", "how to",
	"stitch gauge", "stitch tension", "knitting gauge", "knitting tension",
	"before you begin", "before you start", "st guide", "helpful hints", "special terms", "stitch abbreviations", "pattern size")
