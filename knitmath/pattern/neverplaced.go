package pattern

// neverPlaced asks about the first marker of a text that is slipped or removed, where no word before it speaks of one. At the
// beginning or the end of a round it is that of the round, which goes without saying.
func (p *parser) neverPlaced() {
	for i := leading; i < len(p.tokens)-beyond && !p.given; i++ {
		t := &p.tokens[i]
		if !t.among("m sm slm pm mkr mkrs marker markers mark marks bor bom eom") || p.tokens[i+1].is("=", ":") {
			continue
		}
		first := i
		if !t.is("sm", "slm") {
			if first--; !t.is("m", "marker") || !p.tokens[first].is("sl", "slip", "remove") {
				return
			}
		}
		if i+1 < len(p.tokens)-beyond && !p.tokens[first-1].is(":") && !p.endsAt(i+1) && p.began {
			p.ask(ReasonMarker, p.tokens[first].to(t.span), "no marker was placed before: where does it lie?")
		}
		return
	}
}
