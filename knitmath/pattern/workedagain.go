package pattern

// workedAgain reads "with waste yarn, slip these 8 sts back to left needle and knit them
// again" after stitches that are worked: they are the same stitches.
func (p *parser) workedAgain(steps []Step) bool {
	i := p.next
	if p.tokens[i].is("with", "in", "using") {
		i++
	}
	if p.tokens[i].is("waste", "scrap", "contrast", "contrasting", "working", "main") && p.tokens[i+1].is("yarn", "colour", "color") &&
		p.tokens[i-1].is("with", "in", "using") && len(steps) > 0 {
		p.next = i + 2
		p.asGiven = true
		return true
	}
	i = p.next
	if !p.tokens[i].is("slip", "sl", "return", "place", "put", "transfer") || !p.tokens[i+1].is("these", "those", "same", "the") ||
		len(steps) == 0 {
		return false
	}
	save, found := p.next, p.found.mark()
	p.next += 2
	n := p.number()
	last := steps[len(steps)-1]
	same := n == nil || last.Steps == nil && last.RemainingStitches == nil && equalNumbers(without(n), last.Times)
	p.accept("same")
	if !p.accept("st", "sts", "stitches") || !same {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.accept("back")
	if p.accept("to", "onto", "on") && p.acceptLeft() {
		again := p.next
		p.accept(",")
		p.accept("and")
		if p.accept("k", "knit", "work", "purl", "p") && p.accept("them", "these", "it", "those") {
			p.number()
			p.accept("st", "sts", "stitches")
			p.accept("again")
			if p.accept("with", "in", "using") {
				for p.accept("main", "working", "yarn", "mc", "colour", "color", "the", "project") {
				}
			}
			p.accept("again")
			p.asGiven = true
			return true
		}
		p.next = again
		p.accept(",")
		p.accept("and")
		if p.peek().is("k", "knit", "work") && p.ahead(1).is("across", "all", "to") { // with all others
			p.next, p.asGiven = again, true
			return true
		}
	}
	p.next = save
	p.found.rewind(found)
	return false
}

// acceptLeft passes over "the left-hand needle".
func (p *parser) acceptLeft() bool {
	p.accept("the")
	if !p.accept("left", "left-hand", "lh") {
		return false
	}
	p.accept("hand")
	return p.accept("needle")
}

func equalNumbers(a, b []int) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}
