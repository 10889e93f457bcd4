package pattern

// stripes reads "Stripes: 4 rows blue, 2 rows white": rows by their colours. Where a later
// sentence works "the stripe sequence" they define it, as a stitch pattern; else they are
// worked here.
func (p *parser) stripes() bool {
	if p.next > 0 && p.tokens[p.next-1].kind == tokenWord || p.section == sectionFront {
		return false
	}
	heading, from := p.next, p.peek().span
	colon := p.stripesColon(heading)
	if colon == 0 || !p.rowsColoured(colon+1) {
		return false
	}
	works := p.tokens[heading].among("work working cont continue knit") || !p.stripesLater(colon)
	p.next = colon + 1
	sum := p.colouredRows()
	if sum == nil {
		return false
	}
	if p.accept(",") || p.peek().is("in") {
		p.accept("in")
		p.acceptEnd(p.fabricEnd(p.next))
	}
	if !works {
		p.stripesDefined(p.stripeName(heading, colon), sum, from)
		return true
	}
	line := Line{info: lineInfo{kind: lineEven, counts: sum}}
	p.tail(&line)
	p.finish(&line, from)
	return true
}

// stripesColon is the index of the colon after "Stripes", "Work in stripes as follows" at token
// i; 0 if that is not what stands there.
func (p *parser) stripesColon(i int) int {
	said := false
	for n := 0; n < 14 && !p.tokens[i].is(":"); n++ {
		t := &p.tokens[i]
		said = said || t.among("stripe stripes striped striping")
		if t.is("as") && said && p.tokens[i+1].is("foll", "follows") {
			i++
		} else if t.kind != tokenWord && !t.is(",") {
			return 0
		}
		i++
	}
	if !said || !p.tokens[i].is(":") {
		return 0
	}
	return i
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

// rowsColoured reports whether "4 rows blue" stands at token i.
func (p *parser) rowsColoured(i int) bool {
	for p.tokens[i].kind == tokenNewline || p.tokens[i].is("work", "knit") {
		i++
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].row()
}

// colouredRows reads "4 rows blue, 2 rows white and 2 rows A": how many they are together;
// nil if their number is not the same in all sizes.
func (p *parser) colouredRows() []int {
	sum := 0
	for more := true; more; more = p.stripeAfter() {
		n := p.oneStripe()
		if n == nil {
			return nil
		}
		sum = min(sum+max(n[0], 0), MaxRows)
	}
	if sum == 0 || sum > 500 {
		return nil
	}
	return []int{sum}
}

// oneStripe reads "4 rows blue", "2 rows in A": how many rows they are; nil if that is not what
// comes next, or differs between the sizes.
func (p *parser) oneStripe() []int {
	for p.peek().kind == tokenNewline && p.peek().number == 1 {
		p.next++
	}
	p.accept("work", "knit")
	n := p.number()
	if len(n) != 1 || !p.acceptRow() {
		return nil
	}
	for words := 0; words < 4 && p.peek().kind == tokenWord && !p.peek().is("and", "then", "in"); words++ {
		p.next++
	}
	if p.peek().is("in") {
		p.acceptEnd(p.colourEnd(p.next))
	}
	return n
}

// stripeAfter reports whether the rows of another colour follow, and goes on to them.
func (p *parser) stripeAfter() bool {
	save := p.next
	for p.peek().among(", ; and then") || p.peek().kind == tokenNewline && p.peek().number == 1 && p.rowsColoured(p.next) {
		p.next++
	}
	if save == p.next && p.peek().kind != tokenNewline || !p.rowsColoured(p.next) {
		p.next = save
		return false
	}
	return true
}
