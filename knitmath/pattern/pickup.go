package pattern

import "example.com/knitmath/knitmath/draft"

// pickingUp reads "pick up and knit 40 (44) sts along left front edge, 20 from back
// neck": all stitches together.
func (p *parser) pickingUp(line *Line) bool {
	info := &line.info
	if p.onlyRows || !p.peek().is("pick") || !p.pickUpWords() {
		return false
	}
	var sum []int
	rated := false
	for more := true; more; {
		first := p.next
		var n []int
		if p.rateFirst() {
			rated = true
		} else if n = p.pickedUpPart(); n == nil {
			return false
		} else {
			sum = added(sum, n, p.sizes)
		}
		from := p.next
		p.alongWhich(info)
		if p.workedOnNeedle(first, from) {
			info.onNeedle = added(info.onNeedle, n, p.sizes)
		}
		if p.waited(first, from) {
			info.waiting = append(info.waiting, Step{Name: takenUp, Times: n, at: p.tokens[first].to(p.last())})
		}
		sum = p.changedOnWay(sum)
		more = p.pickUpAgain()
	}
	if p.peek().is(",") && p.startsItem(p.next+1) {
		return false
	}
	if info.counts = sum; rated {
		info.counts = nil // the line counts them, after these words
	}
	if info.kind != lineUnread {
		info.kind = linePickUp
	}
	return true
}

// pickedUpPart reads how many stitches are picked up along an edge, nil if that is not what
// stands there.
func (p *parser) pickedUpPart() []int {
	p.accept("a", "total", "of")
	n := p.workedNumber()
	if n == nil || p.peek().is("in") && p.ahead(1).is("one") {
		return nil
	}
	n = without(n)
	p.acceptEnd(p.ofPart(p.next))
	p.accept("more")
	p.acceptAmong("st sts stitch stitches")
	n = p.ledTwice(n)
	if p.alongBoth() {
		n = added(n, n, p.sizes)
	}
	if edges := p.alongEachOf(); edges > 0 {
		n = p.timesEach(n, edges)
	}
	return n
}

// whereFrom reports whether it is said of stitches whose number ends before token i where they are picked up or waited. "k across 42
// sts" alone is of those on the needle, and "3 sts in the gap; 14 sts." is a count.
func (p *parser) whereFrom(i int) bool {
	if !p.tokens[i].stitches() {
		return p.tokens[i].among("from along up down across at of")
	}
	return draft.Part(p.tokens[i-1].text) || !p.endsAt(i+1) && !(p.last1().is("across") && p.clauseStopsAt(i+1))
}

// workedNumber reads a number, also one that is written with its stitch, "k41".
func (p *parser) workedNumber() []int {
	base, n, _, attached := split(p.peek().text)
	if p.peek().kind != tokenWord || !attached || base != "k" {
		return p.number()
	}
	at := p.peek().span
	p.next++
	return p.numbers(n, at)
}

// alongEachOf is how many edges "along each of the 4 sides" names, 0 if that is not what comes next.
func (p *parser) alongEachOf() int {
	i := p.next
	for p.tokens[i].among("along from on at down up across") {
		i++
	}
	if i == p.next || !p.tokens[i].is("each") || !p.tokens[i+1].is("of") {
		return 0
	}
	if i += 2; p.tokens[i].is("the") {
		i++
	}
	n := int(p.tokens[i].number)
	if written, ok := p.tokens[i].written(); ok {
		n = written
	} else if p.tokens[i].kind != tokenNumber {
		return 0
	}
	if !p.tokens[i+1].among("sides edges side edge other remaining rem short long") || n < 2 || n > 12 {
		return 0
	}
	return n
}

// alongWhich passes over the edge along which stitches are picked up.
func (p *parser) alongWhich(info *lineInfo) {
	for n := 0; n < 18 && !p.remarkHere() && !p.endsAt(p.next) && !p.peek().is(",", ";", "(") && !p.claimAhead(); n++ {
		t := p.peek()
		if t.is("and") && p.numberAfter() || t.is("and", "then") && p.nextAt(p.next+1) {
			return
		}
		if t.is("each", "both") && p.ahead(1).is("front", "fronts") && !p.trying {
			p.ask(ReasonUnread, t.span, "how many stitches is that in all?")
			info.kind = lineUnread
		}
		p.next++
	}
	p.belowEdge()
}

// belowEdge passes over ", 2 rounds below the bind-off", "1 st in from the edge" behind where stitches are picked up.
func (p *parser) belowEdge() {
	i := p.next + bit(p.peek().is(","))
	end, _ := p.sizedEnd(i)
	in := p.tokens[end+1].is("below", "above") || p.tokens[end+1].is("in") && p.tokens[end+2].is("from")
	if end == 0 || !in || !p.tokens[end].row() && !p.tokens[end].stitches() {
		return
	}
	for end += 2; p.tokens[end].kind == tokenWord && !p.tokens[end].is("and", "then"); end++ {
	}
	p.passTail(end)
}

// pickedUpAt reports whether "8 sts picked up" stands at token i, in a list of stitches that are put on the needles.
func (p *parser) pickedUpAt(i int) bool {
	end, _ := p.sizedEnd(i)
	if p.tokens[end].is("more") {
		end++
	}
	return end != 0 && p.tokens[end].stitches() && p.tokens[end+1].is("picked") && p.tokens[end+2].is("up")
}

// pickedUpSaid reads it.
func (p *parser) pickedUpSaid(line *Line) bool {
	if p.onlyRows || !p.pickedUpAt(p.next) {
		return false
	}
	n := p.number()
	if n == nil {
		return false
	}
	p.alongWhich(&line.info)
	line.info.kind, line.info.counts = linePickUp, without(n)
	return true
}

// pickUpAgain reports whether the stitches of another edge follow, and goes on to them.
func (p *parser) pickUpAgain() bool {
	again := p.next
	for _, told := range [...]int{p.rateAt(p.next + 1), p.phraseEnd(p.next+1, offHolder), p.gapClosed(p.next + 1)} {
		if told != 0 && p.peek().is(",", ";") {
			p.passTail(told)
			again = told
		}
	}
	if !p.accept(",", ";", "and") {
		return false
	}
	p.accept("and", "then")
	p.accept("pick")
	p.accept("up")
	p.accept("and")
	if p.accept("knit", "k", "purl") {
		p.accept("across")
	}
	if end := p.workedEnd(); end == 0 || !p.whereFrom(end) {
		p.next = again
		return false
	}
	return true
}

// workedEnd is the index after the next number, also one that is written with its stitch, and the part whose stitches these are; 0 if no
// number comes next.
func (p *parser) workedEnd() int {
	end, _ := p.sizedEnd(p.next)
	if base, _, _, attached := split(p.peek().text); p.peek().kind == tokenWord && attached && base == "k" {
		end, _ = p.sizedMore(p.next+1, 1)
	}
	for k := end; end != 0 && draft.Part(p.tokens[k].text); k++ {
		if p.tokens[k+1].stitches() {
			return k + 1
		}
	}
	return end
}

// remarkHere passes over a remark in brackets, "(one in each bump)", and is never true.
func (p *parser) remarkHere() bool {
	if end := p.bracketedRate(p.next); end != 0 {
		p.next = end
	} else if p.peek().is("(") && !p.claimAhead() {
		if end := p.remarkEnd(p.next); end != 0 {
			p.next = end
		}
	}
	return false
}

func (p *parser) numberAfter() bool {
	end, _ := p.sizedEnd(p.next + 1)
	return end != 0 || p.ahead(1).is("pick")
}

// pickUpWords passes over "pick up and knit".
func (p *parser) pickUpWords() bool {
	return p.acceptAll("pick", "up", "and", "knit") || p.acceptAll("pick", "up", "and", "k") ||
		p.acceptAll("pick", "up", "&", "knit") || p.acceptAll("pick", "up", "&", "k") || p.acceptAll("pick", "up", "and", "purl") ||
		p.acceptAll("pick", "up", "knitwise") || p.upAndWorked() || p.acceptAll("pick", "up")
}

// upAndWorked passes over "pick up and" before "k18".
func (p *parser) upAndWorked() bool {
	base, _, _, attached := split(p.ahead(3).text)
	ofRow := p.last1().is(":") && p.tokens[p.next-2].row() // beside stitches that are on the needle: steps of that row
	return attached && base == "k" && !ofRow && p.acceptAll("pick", "up", "and")
}
