package pattern

// stripes reads "Stripes: 4 rows blue, 2 rows white": rows by their colours. Where a later
// sentence works "the stripe sequence" they define it, as a stitch pattern; else they are
// worked here.
func (p *parser) stripes() bool {
	if p.next > 0 && p.tokens[p.next-1].kind == tokenWord || p.section == sectionFront {
		return false
	}
	i, said := p.next, false
	for n := 0; n < 14 && !p.tokens[i].is(":"); n++ {
		t := &p.tokens[i]
		said = said || t.is("stripe", "stripes", "striped", "striping")
		if t.is("as") && said && p.tokens[i+1].is("foll", "follows") {
			i++
		} else if t.kind != tokenWord && !t.is(",") {
			return false
		}
		i++
	}
	if !said || !p.tokens[i].is(":") || !p.rowsColoured(i+1) {
		return false
	}
	works := p.tokens[p.next].is("work", "working", "cont", "continue", "knit") || !p.stripesLater(i)
	from := p.peek().span
	heading := p.next
	p.next = i + 1
	sum := p.colouredRows()
	if sum == nil {
		return false
	}
	if p.accept(",") || p.peek().is("in") {
		p.accept("in")
		if end := p.fabricEnd(p.next); end != 0 {
			p.next = end
		}
	}
	line := Line{}
	if works {
		line.info.kind, line.info.counts = lineEven, sum
		p.tail(&line)
		p.finish(&line, from)
		return true
	}
	p.endPattern()
	p.patterns = append(p.patterns, defined{words: p.stripeName(heading, i), from: len(p.piece.Lines)})
	p.current = len(p.patterns)
	began := p.began
	line.Steps = []Step{{Name: "work", takes: 1, leaves: 1, RemainingStitches: toEnd, at: from.to(p.last())}}
	line.info.asGiven = true
	line.info.ranges = []rowRange{{1, int32(sum[0])}}
	p.tail(&line)
	p.finish(&line, from)
	p.endPattern()
	p.began = began
	return true
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
	for {
		for p.peek().kind == tokenNewline && p.peek().number == 1 {
			p.next++
		}
		p.accept("work", "knit")
		n := p.number()
		if len(n) != 1 || !p.acceptRow() {
			return nil
		}
		sum = min(sum+max(n[0], 0), MaxRows)
		for n := 0; n < 4 && p.peek().kind == tokenWord && !p.peek().is("and", "then", "in"); n++ {
			p.next++
		}
		if p.peek().is("in") && p.colourEnd(p.next) != 0 {
			p.next = p.colourEnd(p.next)
		}
		save := p.next
		for p.peek().is(",", ";", "and", "then") || p.peek().kind == tokenNewline && p.peek().number == 1 && p.rowsColoured(p.next) {
			p.next++
		}
		if save == p.next && p.peek().kind != tokenNewline || !p.rowsColoured(p.next) {
			p.next = save
			if sum == 0 || sum > 500 {
				return nil
			}
			return []int{sum}
		}
	}
}
