package pattern

import (
	"strconv"
	"strings"
)

// sizesNamed is the number of sizes by their names, "Sizes: XS (S, M, L)", which it
// notes; 0 if the text does not name them.
func (p *parser) sizesNamed() int {
	for i := 0; i < len(p.tokens)-1; i++ {
		if p.namesInLine(i) {
			return len(p.names)
		}
		if !p.tokens[i].is("size", "sizes") || i > 0 && p.tokens[i-1].kind != tokenNewline && !p.tokens[i-1].among("finished women's to "+
			"in") {
			continue
		}
		j := i + 1
		for p.tokens[j].among(": - are to fit") {
			j++
		}
		if p.tokens[j].kind == tokenNewline {
			j++
		}
		if end := p.lineEnd(j); p.anyOf(j, end, "only") {
			continue // it says for which size something is
		}
		if names := p.sizeNames(j); len(names) > 1 && len(names) <= MaxSizes {
			p.names = names
			return len(names)
		}
	}
	return 0
}

// sizeNames are the names at token i, up to the end of the line: "S (M, L, 2XL)".
func (p *parser) sizeNames(i int) []string {
	var names []string
	name, brackets := "", false
	for end := p.lineEnd(i); i < end; i++ {
		t := &p.tokens[i]
		brackets = brackets || t.is("(", "[", "{")
		switch {
		case t.is("-") && p.rangeOfAges(i):
			name += "-"
		case t.partsNames():
			names, name = withName(names, name), ""
			if t.is(")") && p.tokens[i+1].kind == tokenWord {
				return names
			}
		case directing[t.text]: // "Size 1: Knit 2 rows."
			return nil
		case t.kind == tokenWord || t.kind == tokenNumber:
			if name = p.nameGoesOn(name, i); len(name) > 24 {
				return nil
			}
		}
	}
	names = withName(names, name)
	if !brackets && len(names) > 1 && len(names[0]) > 6 {
		return nil
	}
	return names
}

// nameGoesOn is the name of a size with the word or the number at token i.
func (p *parser) nameGoesOn(name string, i int) string {
	if t := &p.tokens[i]; name == "" || t.start == p.tokens[i-1].end {
		return name + t.text
	}
	return name + " " + p.tokens[i].text
}

// rangeOfAges reports whether the dash at token i stands within a name, "0-3 (3-6, 6-12) months", and does
// not part two, "80-88-96".
func (p *parser) rangeOfAges(i int) bool {
	before, after := &p.tokens[i-1], &p.tokens[i+1]
	if before.kind != tokenNumber || after.kind != tokenNumber || before.end != p.tokens[i].start || after.start != p.tokens[i].end {
		return false
	}
	return !p.tokens[i-2].is("-") && p.tokens[i+2].among("( [ , ) ] / : ; months mths m mo years yrs")
}

// withName adds a name to a list, if there is one.
func withName(names []string, name string) []string {
	if name == "" {
		return names
	}
	return append(names, name)
}

// partsNames reports whether a token parts the names of sizes.
func (t *token) partsNames() bool {
	return t.among("( [ { ) ] } , : ; / and . -")
}

// nameLength is how many tokens from i on spell a name, 0 if they do not.
func (p *parser) nameLength(i int, name string) int {
	var b strings.Builder
	for n := 0; n < 4 && i+n < len(p.tokens); n++ {
		t := &p.tokens[i+n]
		if n > 0 && t.start > p.tokens[i+n-1].end {
			b.WriteByte(' ')
		}
		b.WriteString(t.text)
		if b.String() == name {
			return n + 1
		}
		if !strings.HasPrefix(name, b.String()) {
			return 0
		}
	}
	return 0
}

// sizesOnly reads for which sizes what follows is: to the end of the line, or, where
// nothing follows in it, to the next blank line or word of sizes.
func (p *parser) sizesOnly() bool {
	if !p.lineStart() && !p.tokens[p.next-1].is(".") {
		return false
	}
	mask, end := p.sizesAt(p.next)
	if end == 0 {
		return p.unknownSizes()
	}
	p.sizesSaid |= mask
	p.sizesTold++
	from := p.peek().span
	p.next = end
	p.reading(from.to(p.last()), "what follows is for "+sizesInWords(mask))
	p.finish(&Line{info: lineInfo{kind: linePassed}}, from)
	p.forSizes, p.scopeFrom = mask, len(p.piece.Lines)
	if p.peek().kind == tokenNewline || p.peek().kind == tokenEnd {
		return true
	}
	if mask == 0 {
		return true
	}
	for p.peek().kind != tokenNewline && p.peek().kind != tokenEnd {
		first := p.next
		for p.peek().is(".", ";", ",") {
			p.next++
		}
		if p.endsAt(p.next) {
			continue
		}
		if _, more := p.sizesAt(p.next); more != 0 {
			break
		}
		p.sentence()
		if p.next == first {
			p.next++
		}
	}
	p.forSizes = 0
	return true
}

// sizesInWords are the sizes of a mask by their numbers, "size 1", "sizes 2, 3"; all of them for none.
func sizesInWords(mask uint32) string {
	if mask == 0 {
		return "all sizes"
	}
	word, list := "size ", ""
	for size := 0; mask>>size != 0; size++ {
		if mask>>size&1 == 0 {
			continue
		}
		if list != "" {
			word, list = "sizes ", list+", "
		}
		list += strconv.Itoa(size + 1)
	}
	return word + list
}

// isFor reports whether a line is for a size, counted from 0.
func (info *lineInfo) isFor(size int) bool {
	return info.forSizes == 0 || info.forSizes>>size&1 == 1
}
