package pattern

// stripes reads "Stripes: 4 rows blue, 2 rows white": rows by their colours. Where a later
// sentence works "the stripe sequence" they define it, as a stitch pattern; else they are
// worked here.
func (p *parser) stripes() bool {
	if p.next > 0 && p.tokens[p.next-1].kind == tokenWord || p.section == sectionFront {
		return false
	}
	heading, from := p.next, p.peek().span
	colon := p.stripesLead(heading)
	if colon == 0 || !p.rowsColoured(colon+1) {
		return false
	}
	works := p.tokens[heading].among("work working cont continue knit alternate") || !p.stripesLater(colon)
	p.next = colon + 1
	sum := p.colouredRows()
	if sum == nil {
		return false
	}
	p.acceptAmong("throughout alternately")
	if p.tokens[colon].is("(") && !p.accept(")") {
		return false
	}
	p.inWhatStripes()
	if !works {
		p.stripesDefined(p.stripeName(heading, colon), sum, from)
		return true
	}
	line := Line{info: lineInfo{kind: lineEven}}
	p.stripesCounted(&line.info, sum)
	p.tail(&line)
	p.finish(&line, from)
	p.everyStripeRow()
	return true
}

// everyStripeRow passes over "Knit every rnd." after stripes, which says how they are worked.
func (p *parser) everyStripeRow() {
	if end := p.phraseEnd(p.next+1, everyRowPlain); p.peek().is(".") && end != 0 && p.endsAt(end) {
		p.next++
		p.passTo(end)
	}
}

// inWhatStripes passes over ", in st st" after a list of stripes.
func (p *parser) inWhatStripes() {
	if p.peek().is("in") || p.peek().is(",") && p.ahead(1).is("in") {
		p.accept(",")
		p.accept("in")
		p.acceptEnd(p.fabricEnd(p.next))
	}
}

// everyRowPlain says that all rows of stripes are worked alike.
var everyRowPlain = wordings("knit every rnd", "knit every round", "knit every row", "knit all rows", "knit all rnds", "knit all rounds",
	"work in st st throughout", "work in garter st throughout", "all in st st", "k every row", "k every round", "purl every row")

// stripesLead is the index of the colon after "Stripes", "Work in stripes as follows" at token i, of the "of" in "Work in stripes of 2
// rows A", of the bracket in "Work in stripes (2 rows A, 2 rows B)"; 0 if that is not what stands there. Two rows whose colours are known
// need not be called stripes.
func (p *parser) stripesLead(i int) int {
	said, first := false, i
	for n := 0; n < stripesFar && !p.tokens[i].is(":"); n++ {
		t := &p.tokens[i]
		said = said || t.among("stripe stripes striped striping")
		if (said && t.is("of", "(") || n == 0 && t.is("alternate")) && p.rowsInColours(i+1) {
			return i
		}
		if t.kind != tokenWord && !t.is(",") {
			return 0
		}
		i++
	}
	if p.tokens[i].is(":") && (said || p.stripesUncalled(first, i)) {
		return i
	}
	return 0
}

// stripesUncalled reports whether what is worked from token i on, as its list after a colon says, are stripes.
func (p *parser) stripesUncalled(i, colon int) bool {
	return p.tokens[i].among("work working cont continue") && p.rowsInColours(colon+1)
}

// stripesDefined makes rows by their colours a stitch pattern of that name.
func (p *parser) stripesDefined(name []string, rows []int, from span) {
	p.endPattern()
	p.patterns = append(p.patterns, defined{words: name, from: len(p.piece.Lines)})
	p.current = len(p.patterns)
	began := p.began
	line := Line{Steps: []Step{{Name: "work", takes: 1, leaves: 1, RemainingStitches: toEnd, at: from.to(p.last())}}}
	line.info.asGiven = true
	line.info.ranges = []rowRange{{1, int32(rows[0])}}
	p.tail(&line)
	p.finish(&line, from)
	p.endPattern()
	p.began = began
}

// stripeName are the words by which the sequence is called.
func (p *parser) stripeName(i, end int) []string {
	for ; i < end; i++ {
		if p.tokens[i].is("stripe", "stripes", "striped") {
			return []string{p.tokens[i].text}
		}
	}
	return nil
}

// stripesLater reports whether the sequence is called after token i.
func (p *parser) stripesLater(i int) bool {
	for ; i < len(p.tokens)-1; i++ {
		p.looked++
		if p.tokens[i].is("stripe", "stripes", "striped") {
			return true
		}
	}
	return false
}
