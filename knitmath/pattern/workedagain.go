package pattern

// workedAgain reads "with waste yarn, slip these 8 sts back to left needle and knit them
// again" after stitches that are worked: they are the same stitches.
func (p *parser) workedAgain(steps []Step) bool {
	if len(steps) == 0 || !p.withWasteYarn() && !p.slippedBack(&steps[len(steps)-1]) {
		return false
	}
	p.asGiven = true
	return true
}

// withWasteYarn passes over "with waste yarn", of which "with" may have been read.
func (p *parser) withWasteYarn() bool {
	i := p.next
	if p.tokens[i].is("with", "in", "using") {
		i++
	}
	if !p.tokens[i].among("waste scrap contrast contrasting working main") || !p.tokens[i+1].is("yarn", "colour", "color") ||
		!p.tokens[i-1].is("with", "in", "using") {
		return false
	}
	p.next = i + 2
	return true
}

// slippedBack reads "slip these 8 sts back to left needle and knit them again" after a step.
func (p *parser) slippedBack(last *Step) bool {
	if !p.peek().among("slip sl return place put transfer") || !p.ahead(1).among("these those same the") {
		return false
	}
	save, found := p.next, p.found.mark()
	p.next += 2
	if p.sameStitches(last) && p.ontoLeft() && p.knitAgain() {
		return true
	}
	p.next = save
	p.found.rewind(found)
	return false
}

// sameStitches reads "8 sts", "same sts", and reports whether they are those that a step worked.
func (p *parser) sameStitches(last *Step) bool {
	n := p.number()
	same := n == nil || last.Steps == nil && last.RemainingStitches == nil && equalNumbers(without(n), last.Times)
	p.accept("same")
	return p.accept("st", "sts", "stitches") && same
}

// ontoLeft passes over "back to left needle".
func (p *parser) ontoLeft() bool {
	p.accept("back")
	return p.accept("to", "onto", "on") && p.acceptLeft()
}

// knitAgain reads "and knit them again with main yarn". Of "and knit across" it takes nothing:
// they are worked again with all others.
func (p *parser) knitAgain() bool {
	save := p.next
	p.accept(",")
	p.accept("and")
	if p.peek().is("k", "knit", "work") && p.ahead(1).is("across", "all", "to") {
		p.next = save
		return true
	}
	if !p.acceptAmong("k knit work purl p") || !p.acceptAmong("them these it those") {
		return false
	}
	p.number()
	p.accept("st", "sts", "stitches")
	p.accept("again")
	if p.accept("with", "in", "using") {
		for p.acceptAmong("main working yarn mc colour color the project") {
		}
	}
	p.accept("again")
	return true
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
