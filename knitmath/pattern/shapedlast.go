package pattern

// shapedInLast reports whether brackets say what is done in the last of the rows before
// them: "knit 2 rows (dec 1 st on last row)".
func (p *parser) shapedInLast() bool {
	if !p.ahead(1).among("dec inc decrease increase decreasing increasing") {
		return false
	}
	for n := 2; n < 16; n++ {
		switch t := p.ahead(n); {
		case t.is(")"), t.kind == tokenEnd:
			return false
		case t.is("last") && p.ahead(n+1).row():
			p.shapedBracket = true
			return true
		}
	}
	return false
}
