package pattern

import "strconv"

// rowsSaidAt reports whether "for 18 rnds" comes next, after the steps of a row.
func (p *parser) rowsSaidAt(inner string) bool {
	return inner == "" && p.peek().is("for") && anyStretches(p.sofar) && !p.onlyRows && p.forRowsAhead()
}

// anyStretches reports whether one of the steps goes as far as there are stitches.
func anyStretches(steps []Step) bool {
	for i := range steps {
		if steps[i].stretch() {
			return true
		}
	}
	return false
}

// rowsOfSteps reads "for 18 rnds" after the steps of a row without a number, "(k3, p1) around for 18 rnds": so many
// rows are worked so.
func (p *parser) rowsOfSteps(line *Line) bool {
	p.sofar = line.Steps
	if !p.rowsSaidAt("") {
		return true
	}
	from := p.peek().span
	p.next++
	n := p.number()
	if n == nil || !p.acceptRow() || line.info.ranges != nil || line.info.forRows != nil || line.info.every != everyNone {
		p.ask(ReasonUnread, from.to(p.last()), "how many rows are these?")
		return false
	}
	line.info.forRows = without(n)
	return true
}

// needlesByList reads "(22, 24, 22)" after "over 3 needles": how the stitches lie on them.
func (p *parser) needlesByList(line *Line) bool {
	end, n := p.listEnd(p.next)
	if p.sizes != 1 || n < 2 || !p.last1().is("needles", "dpns") || line.info.counts == nil {
		return false
	}
	from, sum := p.peek().span, 0
	for ; p.next < end; p.next++ {
		sum += int(p.peek().number)
	}
	if all := at(line.info.counts, 0); sum != all {
		p.mistake(ReasonClaim, from.to(p.last()), "the parts add up to "+strconv.Itoa(sum)+", not "+strconv.Itoa(all))
	}
	return true
}
