package pattern

import (
	"strings"
)

// defined is a stitch pattern that the text defines: its name and its rows.
type defined struct {
	words []string // of the name, without "stitch" and "pattern"
	from  int      // its first line
	named bool     // the text names it where something is worked
	began bool     // it stands after the cast-on
	lines []int16  // in the order of their numbers; nil while it is being defined, or when it has a gap

	each, plus int64 // the multiple of stitches that its heading says it needs, 0 for none
	heading    span
}

// nameless are words of a name that do not tell one stitch pattern from another.
var nameless = map[string]bool{"stitch": true, "st": true, "pattern": true, "patt": true, "pat": true, "the": true, "sts": true,
	"stitches": true, "panel": true, "sequence": true, "stripe": false, "ribbing": true, "chart": true, "in": true, "of": true, "and": true}

// patternHeading reports whether a line names a stitch pattern that is defined below
// it: "Moss stitch (odd number of sts)", "Leaf lace, multiple of 8 plus 1".
func (p *parser) patternHeading(i, end int) bool {
	first := &p.tokens[i]
	if first.kind != tokenWord || directing[first.text] && !first.is("rib") || p.tokens[end-1].is(".") {
		return false
	}
	named, counted := false, !p.began && p.countCloses(i, end)
	for n := i; n < min(end, i+24); n++ {
		switch t := &p.tokens[n]; {
		case t.among("multiple mult odd even panel worked any"):
			counted = true
		case t.among("stitch pattern patt rib lace st ribbing cable texture border"):
			named = true
		case t.kind == tokenStar:
			return false
		}
	}
	next := p.afterNotes(end + 1)
	rows := next < len(p.tokens) && p.labelEnd(next) != 0
	return rows && (counted || named && !p.anyNumber(i, end))
}

// countCloses reports whether a line ends with a number of stitches in brackets, "Leaf panel (12 sts)".
func (p *parser) countCloses(i, end int) bool {
	return end-i > 4 && p.tokens[end-1].is(")") && p.tokens[end-2].stitches() && p.tokens[end-3].kind == tokenNumber &&
		p.tokens[end-4].is("(")
}

// beginPattern begins the definition of a stitch pattern where a heading names one:
// its rows are worked only where the text says so. After the cast-on a heading
// alone is no definition, unless it says how many stitches the pattern needs.
func (p *parser) beginPattern(i, end int, text string) {
	low := strings.ToLower(text)
	counted := strings.Contains(low, "multiple") || strings.Contains(low, "mult of") || strings.Contains(low, "number of st") ||
		strings.Contains(low, "panel of") || strings.Contains(low, "worked over")
	if p.began && !counted {
		return
	}
	var words []string
	for n := i; n < end; n++ {
		t := &p.tokens[n]
		if t.among("( : , -") || t.kind == tokenNumber {
			break
		}
		if t.kind == tokenWord && !nameless[t.text] {
			words = append(words, t.text)
		}
	}
	d := defined{words: words, from: len(p.piece.Lines), began: p.began, heading: p.tokens[i].to(p.tokens[end-1].span)}
	if each, plus, ok := p.multipleSaid(i, end); ok {
		d.each, d.plus = each, plus
	}
	p.patterns = append(p.patterns, d)
	p.current = len(p.patterns)
}

// afterNotes is the index after the notes, a line each, that stand at token i between the name of a stitch pattern and its rows.
func (p *parser) afterNotes(i int) int {
	for n := 0; n < 4 && i < len(p.tokens)-1 && p.labelEnd(i) == 0; n++ {
		end := p.lineEnd(i)
		if p.tokens[end].number > 1 || !p.tokens[i].among("note notes nb") {
			break
		}
		i = end + 1
	}
	return i
}

// patternNamed reports whether a stitch pattern has been named whose rows still follow.
func (p *parser) patternNamed() bool {
	if p.current == 0 {
		return false
	}
	for i := p.patterns[p.current-1].from; i < len(p.piece.Lines); i++ {
		p.looked++
		if p.piece.Lines[i].info.kind != linePassed {
			return false
		}
	}
	return true
}

// endPattern ends the definition of a stitch pattern.
func (p *parser) endPattern() {
	if p.current == 0 {
		return
	}
	d := &p.patterns[p.current-1]
	d.lines = p.rowsFrom(d.from)
	p.multiplesTold(d.heading, d.each, d.plus, d.lines)
	p.current = 0
}

// blankLine ends a definition that has rows.
func (p *parser) blankLine() {
	if p.current > 0 && len(p.piece.Lines) > p.patterns[p.current-1].from && p.began {
		p.endPattern()
	}
	p.forSizes = 0
}

// rowsFrom are the rows of the lines from one on, in the order of their numbers;
// nil if they have gaps.
func (p *parser) rowsFrom(from int) []int16 {
	var byNumber []int16
	var unnumbered []int16
	for i := from; i < len(p.piece.Lines); i++ {
		l := &p.piece.Lines[i]
		if l.info.kind != lineRow {
			continue
		}
		if l.info.ranges == nil {
			unnumbered = append(unnumbered, int16(i))
		}
		for _, q := range l.info.ranges {
			if q.last > 500 {
				return nil
			}
			for len(byNumber) < int(q.last) {
				byNumber = append(byNumber, -1)
			}
			for n := q.first; n <= q.last; n++ {
				byNumber[n-1] = int16(i)
			}
		}
	}
	p.looked += len(byNumber)
	for i := from; i < len(p.piece.Lines); i++ {
		if info := &p.piece.Lines[i].info; info.every != everyNone && info.kind == lineRow {
			byNumber, unnumbered = ruledRows(byNumber, unnumbered, int16(i), info)
		}
	}
	if byNumber == nil {
		return unnumbered
	}
	for _, line := range byNumber {
		if line < 0 {
			return nil
		}
	}
	return byNumber
}

// ruledRows fills the gaps for which a line stands: "Row 2 and all WS rows".
func ruledRows(byNumber, unnumbered []int16, line int16, info *lineInfo) (numbered, alone []int16) {
	if byNumber == nil {
		return nil, unnumbered
	}
	start := 0
	switch {
	case info.ranges != nil:
		start = int(info.ranges[len(info.ranges)-1].last) - 1
	case info.every == everyWS || info.every == everyEven:
		start = 1
	}
	if start%2 == 1 && len(byNumber)%2 == 1 {
		byNumber = append(byNumber, -1)
	}
	step := 2
	if info.every == everyAll {
		step = 1
	}
	for n := start; n < len(byNumber); n += step {
		if byNumber[n] < 0 {
			byNumber[n] = line
		}
	}
	return byNumber, unnumbered
}

// define ends the last definition. Rows before the first cast-on that no heading
// names are worked only where the text says so, too.
func (p *parser) define() {
	p.endPattern()
	p.tellUnworked()
	lines := p.piece.Lines
	first := -1
	for i := range lines {
		if lines[i].bringsFirst() {
			break
		}
		if lines[i].info.kind == lineCastOn && !lines[i].info.adds {
			first = i
			break
		}
	}
	if p.given {
		return
	}
	for i := 0; i < first; i++ {
		lines[i].info.defined = true
	}
}

// bringsFirst reports whether a piece begins with a line that is no cast-on: with stitches that are picked up, or with
// those of other pieces.
func (l *Line) bringsFirst() bool {
	switch l.info.kind {
	case lineRow:
		return l.info.brings
	case lineTake:
		return l.info.counts != nil
	}
	return l.info.kind == linePickUp
}

// patternAt is the stitch pattern of the text whose name stands at token i: the
// index after it, and its number from 1; 0 if there is none.
func (p *parser) patternAt(i int) (end, number int) {
	for k := len(p.patterns) - 1; k >= 0; k-- {
		words := p.patterns[k].words
		if len(words) == 0 {
			continue
		}
		n, at := 0, p.afterRowsOf(i, len(p.patterns[k].lines))
		for n < len(words) && at < len(p.tokens) {
			t := &p.tokens[at]
			if t.is(words[n]) {
				n++
			} else if !nameless[t.text] {
				break
			}
			at++
		}
		if n < len(words) {
			continue
		}
		for p.tokens[at].kind == tokenWord && nameless[p.tokens[at].text] && !p.tokens[at].is("and", "in", "of") {
			at++
		}
		p.patterns[k].named = true
		return at, k + 1
	}
	return 0, 0
}

// afterRowsOf is the index after "the 12-row" at token i, of a pattern of so many rows; i if that is not what stands there.
func (p *parser) afterRowsOf(i, rows int) int {
	n := i
	for p.tokens[n].among("the this full entire complete") {
		n++
	}
	if p.tokens[n].kind != tokenNumber || int(p.tokens[n].number) != rows {
		return i
	}
	if n++; p.tokens[n].is("-") {
		n++
	}
	if !p.tokens[n].row() {
		return i
	}
	return n + 1
}

// tellUnworked says which stitch patterns the text defines and works nowhere: nothing is
// known of whether their rows fit.
func (p *parser) tellUnworked() {
	for k := range p.patterns {
		d := &p.patterns[k]
		if d.named || len(d.lines) == 0 || len(d.words) == 0 || d.lines[0] < 0 {
			continue
		}
		if info := &p.piece.Lines[d.lines[0]].info; info.defined {
			if d.began {
				p.ask(ReasonUnread, info.at, "are these rows worked here? nothing in the text says how often")
				continue
			}
			p.found.add(KindReading, ReasonPassedOver, info.at, "the rows of this stitch pattern are worked nowhere in the text: not checked")
		}
	}
}
