package pattern

// yarnAside passes over what is done with yarn and needles among stitches, up to a comma
// or to the next stitch.
func (p *parser) yarnAside(first bool) asideKind {
	verb := p.peek()
	from := verb.span
	if verb.is("join") && first || verb.is("remove", "removing") && p.markerNext() && !p.allMarkers() ||
		verb.is("hold") && !p.ahead(1).is("yarn") {
		return asideNone
	}
	p.next++
	for n := 0; n < 14; n++ {
		if p.yarnAsideEnds() {
			p.passed(from.to(p.last()))
			return asideRead
		}
		if p.changesInYarn() {
			p.ask(ReasonUnread, from.to(p.peek().span), "not understood here, and it may change the count")
			return asideFault
		}
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "not understood here, and it may change the count")
	return asideFault
}

// yarnAsideEnds reports whether nothing more belongs to what is done with yarn: the row ends, or
// a stitch or a direction follows.
func (p *parser) yarnAsideEnds() bool {
	t := p.peek()
	switch {
	case p.endsAt(p.next), t.among(", ; ) ]"), t.kind == tokenStar:
		return true
	case t.is("and", "then"):
		return p.startsItem(p.next+1) || p.directionAt(p.next+1)
	}
	return t.kind == tokenMark && p.claimAhead()
}

// changesInYarn reports whether the next word or number may change a count, and is none of yarn
// and needles.
func (p *parser) changesInYarn() bool {
	t := p.peek()
	switch t.kind {
	case tokenWord:
		return alarming(t.text) || p.alarmingStitch(p.next, p.next, true)
	case tokenNumber:
		return !p.measured(p.next) && !p.ordinalYarn()
	}
	return false
}

// ordinalYarn reports whether "2nd ball" comes next.
func (p *parser) ordinalYarn() bool {
	return p.ordinalEnd(p.next) != 0 || p.tokens[p.next-1].among("ball needle needles size us")
}

// allMarkers reports whether all markers are removed on the way, "removing markers as you come to them": none that
// is a place in the row.
func (p *parser) allMarkers() bool {
	i := p.next + 1
	for p.tokens[i].among("all the other rem remaining raglan stitch") {
		i++
	}
	return p.tokens[i].is("markers", "ms")
}

// markerNext reports whether a marker is to be removed.
func (p *parser) markerNext() bool {
	for n := 1; n < 8 && !p.endsClause(p.next+n); n++ {
		if p.ahead(n).is("m", "marker", "markers") {
			return true
		}
	}
	return false
}

// colourEnd is the index after a colour that stitches are worked in, at token i: "MC",
// "with A", "in CC", "using B"; 0 if there is none.
func (p *parser) colourEnd(i int) int {
	with := p.tokens[i].among("with in using w")
	if with {
		if i++; p.tokens[i].is("/") { // "w/ MC"
			i++
		}
		if p.tokens[i].among("yarn color colour col shade") {
			i++
		}
	}
	if !p.colourAt(i, with) {
		return 0
	}
	if _, mine := p.own[p.tokens[i].text]; mine && !with {
		return 0
	}
	return i + 1
}

// inColour passes over a colour that stitches of a row are worked in.
func (p *parser) inColour() bool {
	if !p.acceptEnd(p.colourEnd(p.next)) {
		return false
	}
	p.coloured = true
	return true
}

// colourAt reports whether a colour stands at token i, by its letters or by its name; after "with"
// it is one also where its name is a stitch.
func (p *parser) colourAt(i int, with bool) bool {
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch {
	case t.among("mc cc cc1 cc2 c1 c2 c3 mc,"):
		return true
	case t.is("a") && p.found.source[t.start] == 'a' && then.kind == tokenWord: // "with a border"
		return false
	case t.among("a b c d e f") && !then.among("st stitch k total"):
		return true
	}
	return t.kind == tokenWord && colours[t.text] && (with || !p.notation(t.text))
}

// colours are yarn colours as patterns name them.
var colours = map[string]bool{"red": true, "blue": true, "green": true, "white": true, "black": true, "grey": true, "gray": true,
	"yellow": true, "natural": true, "cream": true, "brown": true, "pink": true, "purple": true, "orange": true, "navy": true, "main": true,
	"contrast": true, "light": true, "dark": true}
