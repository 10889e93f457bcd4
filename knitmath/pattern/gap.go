package pattern

// gapAt is the index after "gap", "the wrapped st", "last turn" at token i, a place that the
// turn of the row before has left; 0 if there is none.
func (p *parser) gapAt(i int) int {
	for p.tokens[i].among("the last previous next prev first nearest") {
		i++
	}
	switch t := &p.tokens[i]; {
	case t.is("shadow") && p.tokens[i+1].is("wrap"):
		return i + 2
	case t.is("gap", "ds"), t.is("turn", "wrap") && p.endsClause(i+1):
		return i + 1
	case t.is("turning") && p.tokens[i+1].is("point", "gap"):
		return i + 2
	case t.among("wrapped double-wrapped shadow-wrapped double ds") && p.tokens[i+1].stitches():
		return i + 2
	}
	return 0
}

// beforeDouble is how far before the gap a row goes to a place before the double stitch that was just read, which is the last
// before it.
func (p *parser) beforeDouble(before []int) []int {
	if !p.last1().is("ds") && !p.tokens[p.next-2].is("ds", "double") || before[0] < 0 {
		return before
	}
	return added(before, one, p.sizes)
}

func (p *parser) endsClause(i int) bool { return p.endsAt(i) || p.tokens[i].is(",", ";") }
