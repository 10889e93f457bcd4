package pattern

// changeThisWay reads "inc in this way on every 8th row 3 times more": the last row that changed
// the count so is worked again.
func (p *parser) changeThisWay(line *Line) bool {
	if !p.peek().among("inc dec increase decrease shape") || p.onlyRows {
		return false
	}
	end := p.phraseEnd(p.next+1, theseWays)
	if end == 0 {
		return false
	}
	from := p.peek().span
	verb := p.next
	p.next = end
	if !p.scheduleAhead() {
		return false
	}
	n := len(p.piece.Lines) - 1
	for ; n >= 0; n-- {
		p.looked++
		if l := &p.piece.Lines[n]; l.info.kind != linePassed && (l.info.kind != lineRow || changesCount(l.Steps)) {
			break
		}
	}
	if n < 0 || p.piece.Lines[n].info.kind != lineRow || p.tokens[verb].is("inc", "increase") != (changeBy(p.piece.Lines[n].Steps) > 0) {
		return false
	}
	line.info.kind, line.info.lines = lineRepeat, []int16{int16(n)}
	return p.howOften(&line.info, from)
}

// changeBy is by how many stitches steps change the count in the first size, as far as that is
// known.
func changeBy(steps []Step) int64 {
	t, _ := looseTally(steps, 0)
	return t.leaves - t.takes
}

// onTheseAlone reads "work on these sts only for first side of neck" in a sentence of its own: what
// the last turn left is put aside.
func (p *parser) onTheseAlone(line *Line) bool {
	if p.onlyRows {
		return false
	}
	numberAt, end := p.onTheseEnd(p.next)
	if end == 0 || numberAt != 0 {
		return false
	}
	from := p.peek().span
	p.next = end
	p.passed(from.to(p.last()))
	line.info.kind, line.info.onThese = linePassed, true
	return true
}

// restAside puts aside what the last turn left, where the text goes on with what was worked, or of two parts that a row has left
// the one that it did not work last.
func (r *runner) restAside() {
	if !r.known || r.now.behind == 0 {
		r.oneSide()
		return
	}
	r.put(r.now.behind)
	r.now.behind, r.other, r.machine, r.turned = 0, nil, nil, 0
	r.divided = true
}

// theseLed puts that aside before a direction which such words lead in.
func (r *runner) theseLed(l *Line) {
	if l.info.onThese && l.info.kind != linePassed {
		r.restAside()
	}
}

// colouredMore reads "4 B" after "k8 A": as many more of the same stitch in another colour. Where no stitch came before,
// "*1A, 3B", they are worked as the fabric is.
func (p *parser) colouredMore() (Step, bool) {
	n := len(p.sofar)
	end, _ := p.sizedEnd(p.next)
	if n == 0 && !p.inRow || end == 0 || p.colourEnd(end) == 0 {
		return Step{}, false
	}
	last := Step{Name: "work", takes: 1, leaves: 1}
	if n > 0 {
		last = p.sofar[n-1]
		for len(last.Steps) > 0 && !last.IntoOneStitch { // "rep from * to last st, 1A"
			last = last.Steps[len(last.Steps)-1]
		}
	}
	if last.takes != 1 || last.leaves != 1 || last.Steps != nil || last.stretch() || last.Operation.EndsRow() {
		return Step{}, false
	}
	from := p.peek().span
	times := p.number()
	if times == nil {
		return Step{}, false
	}
	p.inColour()
	return Step{Operation: last.Operation, Name: last.Name, takes: 1, leaves: 1, Times: without(times), at: from.to(p.last())}, true
}

// leadsColours reports whether a verb only says how the colours in the brackets or after the star behind it are worked, "knit *1A, 3B".
func (p *parser) leadsColours() bool {
	if !p.peek().among("k p knit purl work") || p.ahead(1).kind != tokenStar && !p.ahead(1).is("(", "[") {
		return false
	}
	end, _ := p.sizedEnd(p.next + 2)
	return end != 0 && p.colourEnd(end) != 0
}

// numberedTitle is the index after "Section 3: Leaves" in a line from token i to end: a part by
// its number and a name; 0 if that is not what stands there.
func (p *parser) numberedTitle(i, end int) int {
	if !p.tokens[i].among("section part step tier band phase stage") || p.tokens[i+1].kind != tokenNumber ||
		!p.tokens[i+2].is(":", "-", ".") || end-i > 8 || end <= i+3 {
		return 0
	}
	for n := i + 3; n < end; n++ {
		t := &p.tokens[n]
		if n == end-1 && t.among("decreasing increasing decreases increases shaping") && p.labelEnd(end+1) != 0 {
			break // "Section 3: decreasing", above its rows
		}
		if t.kind != tokenWord || p.notation(t.text) || t.row() || alarming(t.text) || steering[t.text] {
			return 0
		}
	}
	return end
}

// shapingTitle reports whether a line is "Decrease section:", above its rows.
func (p *parser) shapingTitle(i, end int) bool {
	if end-i != 3 || !p.tokens[i].among("decrease increase decreasing increasing dec inc shaping") ||
		!p.tokens[i+1].among("section part rows rnds rounds") || !p.tokens[i+2].is(":") {
		return false
	}
	return end+1 < len(p.tokens) && p.labelEnd(end+1) != 0
}

// colourNext reports whether a colour stands after the number at hand.
func (p *parser) colourNext() bool {
	end, _ := p.sizedEnd(p.next)
	return end != 0 && p.colourEnd(end) != 0
}
