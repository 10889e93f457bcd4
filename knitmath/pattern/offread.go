package pattern

import "example.com/knitmath/knitmath/stitch"

// bindingOff reads "BO 4 sts at beg of next 2 rows, 3 sts at beg of next 2 rows" and
// "BO all sts loosely".
func (p *parser) bindingOff(line *Line) bool {
	info := &line.info
	p.accept("three-needle", "3-needle", "picot")
	switch {
	case p.accept("bo", "bind-off", "cast-off"), p.acceptAll("bind", "off"), p.acceptAll("cast", "off"):
	default:
		return false
	}
	info.op = stitch.BindOff
	end, _ := p.sizedEnd(p.next)
	if p.phraseEnd(p.next, bothEnds) != 0 || p.phraseEnd(p.next, oneEnd) != 0 {
		return false // how many follows
	}
	if end != 0 {
		if p.ledEdges(line) {
			return true
		}
		if p.tokens[end].stitches() {
			end++
		}
		if p.beginningAt(p.namedEdge(end)) {
			info.kind = lineBeginning
			return p.edges(line)
		}
		if p.phraseEnd(end, bothEnds) != 0 {
			return p.offAtEnds(line)
		}
		return false // a row that begins so
	}
	return !p.someOffInRow() && p.allOff(line)
}

// someOffInRow reports whether "the 7 steek sts, k to end" comes next: a row that begins with binding these off.
func (p *parser) someOffInRow() bool {
	i := p.next
	for p.tokens[i].among("the next first centre center") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || i == p.next {
		return false
	}
	end = p.ofPart(end)
	return end != 0 && p.tokens[end+1].is(",") && p.startsItem(end+2)
}

// offAtEnds reads "3 sts at each end of next row" after "BO". On several rows it may mean the
// beginning of each of them, or both ends: that is asked.
func (p *parser) offAtEnds(line *Line) bool {
	info, from, save := &line.info, p.peek().span, p.next
	n := p.number()
	if n == nil {
		info.kind = lineUnread
		return true
	}
	p.acceptAmong("st sts stitch stitches")
	p.acceptAny(bothEnds)
	if p.peek().is("of", "on", "in") && p.scheduleAhead() {
		info.hidden = shapedSteps(p, without(n), -2)
		if !p.scheduled(info) || info.kind == lineUnread {
			return true
		}
		if one := len(info.parts) == 1 && single(info.parts[0].times, 1) && info.parts[0].more == nil; !one {
			p.ask(ReasonAmbiguous, from.to(p.last()),
				"at the beginning of each of these rows, or at both ends of each? write \"at the beginning of\"")
			info.kind, info.parts = lineUnread, nil
		}
		return true
	}
	if p.clauseEnds() {
		info.kind = lineShape
		info.hidden = shapedSteps(p, without(n), -2)
		info.parts = []shapings{{next: true, lead: []int{0}, interval: one, times: one}}
		return true
	}
	p.next = save
	return false
}

// someOff asks how many "some sts" are that are bound off.
func (p *parser) someOff(line *Line) {
	from := p.tokens[p.next-1].span
	for !p.clauseEnds() {
		p.next++
	}
	p.ask(ReasonUnread, from.to(p.last()), "how many stitches are bound off?")
	line.info.kind = lineUnread
}

// allOff reads "BO all sts", "BO rem 30 sts", "BO in patt", "BO".
func (p *parser) allOff(line *Line) bool {
	if p.peek().is("some", "several", "a") {
		p.someOff(line)
		return true
	}
	p.acceptAny(offManner)
	p.accept("all", "the")
	rest := p.acceptAmong("rem remaining these front back neckband") || p.last1().is("all")
	var n []int
	if end, _ := p.sizedEnd(p.next); end != 0 && p.ofPart(end) != 0 {
		if n = p.number(); n == nil {
			line.info.kind = lineUnread
			return true
		}
	}
	if end := p.ofPart(p.next); p.tokens[end].stitches() { // "rem 36 back neck sts", "rem gusset sts"
		p.next = end
	}
	p.acceptAmong("st sts stitch stitches")
	someOnly := !rest && p.rowGoesOnAfter(n)
	for p.acceptAny(offManner) || p.acceptAny(bindOffManner) {
	}
	if !p.leftOn(&line.info) {
		line.info.kind = lineUnread
		return true
	}
	if someOnly || p.startsItem(p.next) && !p.clauseEnds() || p.peek().among("to until next centre center first last") {
		return false
	}
	line.info.kind, line.info.all, line.info.counts = lineOff, true, n
	line.info.row = true
	return true
}

// rowGoesOnAfter reports whether what comes next after so many stitches shows that they are some of a row, "bind off the 7 steek
// sts, k to end".
func (p *parser) rowGoesOnAfter(n []int) bool { return n != nil && p.rowGoesOn(p.next) }

var offManner = wordings("loosely", "in patt", "in pattern", "in knit", "in purl", "in rib", "knitwise", "purlwise", "tog", "together",
	"evenly", "firmly", "very", "using", "kwise", "pwise", "ribwise", "in ribbing", "too tightly", "fairly", "in k", "all rows")

// moreEdgesAt reports whether "3 sts at beg of next 4 rows" comes next, after stitches that were bound off so: the verb is said
// once.
func (p *parser) moreEdgesAt() bool {
	return p.numberAhead() && !p.trying && p.edgesAt(p.next)
}

// moreEdges reads it where another such direction came before.
func (p *parser) moreEdges(line *Line) bool {
	n := len(p.piece.Lines)
	if !p.moreEdgesAt() || n == 0 || p.piece.Lines[n-1].info.kind != lineBeginning || line.Label != "" {
		return false
	}
	line.info.kind, line.info.op = lineBeginning, p.piece.Lines[n-1].info.op
	return p.edges(line)
}

// edges reads "4 sts at beg of next 2 rows" and, after a comma, more of the same.
func (p *parser) edges(line *Line) bool {
	info := &line.info
	for {
		n := p.number()
		if n == nil {
			info.kind = lineUnread
			return true
		}
		p.acceptAmong("st sts stitch stitches")
		p.acceptAny(offManner)
		runs, ok := p.atEdgeOf()
		if !ok {
			p.ask(ReasonUnread, p.peek().span, "\"of next n rows\" is expected here")
			info.kind = lineUnread
			return true
		}
		for _, q := range runs {
			q.stitches = without(n)
			info.edges = append(info.edges, q)
		}
		save := p.next
		p.accept(",", ";")
		p.accept("and")
		p.accept("then")
		p.acceptAll("followed", "by")
		p.accept("bo", "co")
		if p.acceptAmong("bind cast binding casting") && !p.accept("off") {
			p.next--
		}
		end, _ := p.sizedEnd(p.next)
		if end == 0 || p.next == save {
			p.next = save
			return true
		}
		if p.tokens[end].stitches() {
			end++
		}
		if end = p.namedEdge(end); !p.beginningAt(end) && !(info.op == stitch.CastOn && p.edgeRowsAt(end)) {
			p.next = save
			return true
		}
	}
}

// atEdgeOf reads "at neck edge of next 2 rows", "at beg of foll 3 alt rows".
func (p *parser) atEdgeOf() ([]edgeRows, bool) {
	p.next = p.namedEdge(p.next)
	p.accept("at", "on")
	p.accept("the", "each")
	p.acceptAmong("beg beginning start armhole neck end")
	p.accept("edge")
	p.accept("of", "on")
	p.accept("each", "every")
	p.accept("of")
	p.accept("the")
	return p.nextSome()
}
