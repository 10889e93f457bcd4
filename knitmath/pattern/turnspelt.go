package pattern

import "example.com/knitmath/knitmath/stitch"

// Turns of short rows that are written out in words, and their stitches when they are worked again.

// turnSpelt reads "yb, sl 1, yf, return sl st to left needle, turn", "yf, slip next st pwise, yb, sl st back to left needle, turn":
// a wrap and a turn, however it is written.
func (p *parser) turnSpelt() (Step, bool) {
	i := p.yarnTaken(p.next)
	if !p.tokens[i].is("sl", "slip") {
		return Step{}, false
	}
	if i++; p.tokens[i].is("next", "the") {
		i++
	}
	if !p.tokens[i].is("next", "st", "stitch") && p.tokens[i].number != 1 {
		return Step{}, false
	}
	for p.tokens[i].among("next st stitch pwise purlwise") || p.tokens[i].number == 1 {
		i++
	}
	if i = p.returnedEnd(p.yarnTaken(i)); i == 0 {
		return Step{}, false
	}
	if i = p.yarnTaken(i); !p.tokens[i].is("turn") {
		return Step{}, false
	}
	from := p.peek().span
	p.next = i + 1
	return Step{Operation: stitch.WrapTurn, Times: one, at: from.to(p.last())}, true
}

// yarnTaken is the index after "yf," and "bring yarn to front of work," at token i, and the signs around it; that after the signs
// where no yarn is moved.
func (p *parser) yarnTaken(i int) int {
	for p.tokens[i].among(", ; and then") {
		i++
	}
	_, end := p.yarnMoved(i)
	switch {
	case p.tokens[i].among("yf yb yfwd ybk wyif wyib"):
		end = i + 1
	case end == 0:
		return i
	}
	for p.tokens[end].among(", ; and then") {
		end++
	}
	return end
}

// returnedEnd is the index after "return sl st to left needle", "slip it back", "sl st back to LH needle" at token i; 0 if that is
// not what stands there.
func (p *parser) returnedEnd(i int) int {
	if !p.tokens[i].among("return replace sl slip put place transfer") {
		return 0
	}
	from, back := i, p.tokens[i].is("return", "replace")
	for i++; p.tokens[i].among("the that same slipped sl st stitch it back to onto on left lh hand "+
		"left-hand needle") || p.tokens[i].number == 1 && i == from+1; i++ {
		back = back || p.tokens[i].among("back left lh left-hand")
	}
	if !back {
		return 0
	}
	return i
}

// doubleWorked reads "k the DS as one st", "knit both legs of double st together", "p DS tog": the stitch that a turn made double is
// worked as one.
func (p *parser) doubleWorked() (Step, bool) {
	op, i := stitch.KnitDouble, p.next
	switch {
	case p.tokens[i].is("p", "purl"):
		op = stitch.PurlDouble
	case !p.tokens[i].is("k", "knit", "work"):
		return Step{}, false
	}
	for i++; p.tokens[i].among("the both legs loops strands of next this that"); i++ {
	}
	switch {
	case p.tokens[i].is("ds"):
		i++
	case p.tokens[i].is("double") && p.tokens[i+1].is("st", "stitch"):
		i += 2
	default:
		return Step{}, false
	}
	if p.tokens[i].is("as") {
		for i++; p.tokens[i].among("one a single 1 st stitch"); i++ {
		}
	} else if p.tokens[i].is("tog", "together") {
		i++
	}
	if p.tokens[i-1].is("ds") && i == p.next+2 { // "k DS" is the operation
		return Step{}, false
	}
	from, work := p.peek().span, p.peek().is("work")
	p.next = i
	if work {
		p.tidies, p.asGiven = true, true
		return Step{Name: "work", Times: one, takes: 1, leaves: 1, at: from.to(p.last())}, true
	}
	return Step{Operation: op, Times: one, takes: 1, leaves: 1, at: from.to(p.last())}, true
}
