package pattern

import "strconv"

// needlesAlone reads "(20 on each of 3 needles)", "N1: 16 sts; N2: 32 sts; N3: 16 sts" in a sentence of its own, and
// compares what lies on all of them with the stitches that there are.
func (p *parser) needlesAlone() bool {
	from := p.peek().span
	line := Line{info: lineInfo{kind: linePassed}}
	if !p.began || p.onlyRows || !p.needlesTold(&line) && !p.needlesListed(&line) && !p.partsAlone(&line) {
		return false
	}
	p.passed(from.to(p.last()))
	p.finish(&line, from)
	return true
}

// partsAlone reads "24 sts for the palm and 24 for the back": together they are all there are.
func (p *parser) partsAlone(line *Line) bool {
	save, found := p.next, p.found.mark()
	if p.peek().is("needles") && p.ahead(1).is(":") {
		p.next += 2
	}
	p.skipPhrase(claimPhrases)
	if end, _ := p.sizedEnd(p.next); end != 0 && p.tokens[end].stitches() && p.tokens[end+1].is("for", "on") &&
		p.arranged(line) && p.endsAt(p.next) {
		return true
	}
	p.next = save
	p.found.rewind(found)
	return false
}

// needlesTold reads it beside what is worked or cast on.
func (p *parser) needlesTold(line *Line) bool {
	if t := p.peek(); line.ClaimedStitches != nil || t.kind != tokenNumber && !t.is("(") || !p.needlesAhead(p.next) {
		return false
	}
	save, found, from := p.next, p.found.mark(), p.peek().span
	bracket := p.accept("(")
	first := p.next
	n := p.number()
	needles := 0
	if n != nil {
		p.accept("st", "sts", "stitches")
		if needles = p.onEachOf(); needles == 0 && p.eachAfterNeedles(first, p.next) {
			needles = p.needlesInText()
			p.next++
		}
	}
	if needles == 0 || bracket && !p.accept(")") || !p.endsAt(p.next) && !p.peek().is(",", ";", "and") {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.laysEach(without(n), needles)
	line.ClaimedStitches, line.info.claimAt = p.timesEach(without(n), needles), from.to(p.last())
	return true
}

// needlesListed reads "N1: 16 sts; N2: 32 sts; N3: 16 sts": what lies on needles that are numbered from the first.
func (p *parser) needlesListed(line *Line) bool {
	save, found, from := p.next, p.found.mark(), p.peek().span
	var sum []int
	var parts [][]int
	needles := 0
	for {
		end, numbers := p.needleHeader(p.next)
		if len(numbers) != 1 || numbers[0] != needles+1 {
			break
		}
		p.next = end
		n := p.number()
		if n == nil || !p.accept("st", "sts", "stitches") {
			needles = 0
			break
		}
		sum, parts = added(sum, without(n), p.sizes), append(parts, without(n))
		needles++
		if next, _ := p.needleHeader(p.next + 1); next == 0 || !p.acceptAmong("; , . and") {
			break
		}
	}
	if needles < 2 || !p.endsAt(p.next) {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.laid = &laidOut{parts: parts}
	line.ClaimedStitches, line.info.claimAt = sum, from.to(p.last())
	return true
}

// partsInTail reads the parts of a count, or how many stitches lie on each needle, beside what is worked.
func (p *parser) partsInTail(line *Line) bool {
	return line.ClaimedStitches != nil && p.passParts(line) || p.needlesTold(line) || p.partsOfEnd(line) ||
		p.eachOfEnd(line) || p.needlesByList(line)
}

// partsOfEnd reads "(14-28-14)" after "until 56 sts rem": how they lie on the needles, which must be all of them.
func (p *parser) partsOfEnd(line *Line) bool {
	if len(line.info.until) != 1 || !p.peek().is("(") || !p.ahead(2).is("-", "/") {
		return false
	}
	i, sum := p.next+1, 0
	for p.tokens[i].kind == tokenNumber && p.tokens[i+1].is("-", "/", ")") {
		sum += int(p.tokens[i].number)
		if i += 2; p.tokens[i-1].is(")") {
			break
		}
	}
	if !p.tokens[i-1].is(")") {
		return false
	}
	from := p.peek().span
	p.next = i
	if until := line.info.until[0]; sum != until {
		p.mistake(ReasonClaim, from.to(p.last()), "the parts add up to "+strconv.Itoa(sum)+", not "+strconv.Itoa(until))
	}
	return true
}

// eachPart reads "; 30 sts on each needle", "; 47 sts each side" up to token end, all that is told beside a count: it is compared
// when the stitches and their markers are known.
func (p *parser) eachPart(line *Line, end int) bool {
	save, found := p.next, p.found.mark()
	from := p.peek().span
	bracket := p.peek().is("(")
	p.next++
	n := p.number()
	p.accept("st", "sts", "stitches")
	sides := p.skipPhrase(claimSides)
	told := n != nil && (len(n) == 1 || len(n) == p.sizes) && (sides || p.skipPhrase(claimNeedles)) && !p.last1().is("shoulder")
	if !told || bracket && !p.accept(")") || p.next != end {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.eachBeside(line, n, sides, from.to(p.last()))
	return true
}

// eachBeside notes how many stitches are told beside a count to lie on each needle, or on each of the sides that markers part.
func (p *parser) eachBeside(l *Line, n []int, sides bool, at span) {
	l.info.beside, l.info.partsAt = true, at
	if sides {
		l.info.perSide, l.info.ofMarks = without(n), true
	} else {
		l.info.perNeedle = without(n)
		p.laysEach(l.info.perNeedle, 0)
	}
}

// needlesAhead reports whether a number of stitches "on each of" some needles stands at token i.
func (p *parser) needlesAhead(i int) bool {
	if p.tokens[i].is("(") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end != 0 && p.tokens[end].stitches() {
		end++
	}
	return end != 0 && (p.tokens[end].is("on", "onto", "to") && p.tokens[end+1].is("each") || p.eachAfterNeedles(i, end))
}

// eachAfterNeedles reports whether a number at token i and "each" at token end stand just behind needles, "on 4 dpns (14 sts
// each)", and so say how many lie on each.
func (p *parser) eachAfterNeedles(i, end int) bool {
	if !p.tokens[end].is("each") || !p.endsClause(end+1) && !p.tokens[end+1].is(")") {
		return false
	}
	for i--; i > 0 && p.tokens[i].is("(", ",", "-", ":", ";"); i-- {
	}
	return p.tokens[i].is("needles", "dpns")
}
