package pattern

// roundBegins is the index after a sentence at token i that says where the round begins from
// there on: "Rnd now begins at centre of heel", "Beg of rnd is now at the side", "BOR is here";
// 0 if that is not what stands there.
func (p *parser) roundBegins(i int) int {
	from := i
	for p.tokens[i].among("the new note that : all") {
		i++
	}
	switch t := &p.tokens[i]; {
	case t.among("rnd rnds round rounds"):
		for i++; p.tokens[i].is("now", "will", "from"); i++ {
		}
		if !p.tokens[i].among("begins begin beg starts start commences") {
			return 0
		}
		i++
	case t.is("bor", "beg-of-rnd", "beginning-of-round"), t.is("beg", "beginning", "start") && p.tokens[i+1].is("of"):
		if i = p.startSaid(i); i == 0 || !p.tokens[i].among("is has will now moves lies m") {
			return 0
		}
	default:
		return 0
	}
	end := p.sentenceEnd(from)
	for n := i; n < end; n++ {
		if p.tokens[n].among(", ; and then") && p.verbAt(n+1) {
			end = n
		}
	}
	if i > end || p.alarm(i, end, true) != 0 {
		return 0
	}
	return end
}
