package pattern

import "example.com/knitmath/knitmath/draft"

// puttingAside says that stitches leave the needle and are kept.
var puttingAside = []string{"holder", "holders", "yarn", "thread", "pin", "hold", "needle", "needles", "scrap", "waste", "spare", "cord",
	"stitch-holder", "pins", "holders,", "threads", "lengths", "aside"}

// holding reads "place next 20 sts on holder", "leave rem 38 sts on waste yarn",
// "return 30 held sts to needle", "sl these 12 sts onto a spare needle".
func (p *parser) holding(line *Line) bool {
	info := &line.info
	verbAt, verb := p.next, p.peek()
	p.next++
	if p.returnsTo(verb, line) {
		return true
	}
	set := p.accept("aside") || verb.is("reserve")
	if !set && p.setsOtherwise(verb) {
		return false
	}
	n, all, held, ok := p.heldStitches(verbAt, info)
	if !ok {
		return false
	}
	end, from, aside := p.whereHeld(held || verb.is("return"))
	if !aside && !set {
		end = p.restLeft(verbAt, verb)
	}
	if end == 0 {
		return false
	}
	p.next = end
	info.worked = info.worked || p.ofTheWorked(verbAt)
	info.live = n != nil && p.anyOf(verbAt, end, "live", "exposed", "open") && p.anyOf(verbAt, end, "needle", "needles")
	info.counts, info.all = n, all
	p.heldOrTaken(info, verbAt, verb, from && !set)
	return true
}

// returnsTo reads "return to rem sts".
func (p *parser) returnsTo(verb *token, line *Line) bool {
	return verb.is("return", "returning") && p.peek().is("to") && p.returningTo(line)
}

// heldOrTaken reads what is said of stitches that are put aside or, from a holder, taken up.
func (p *parser) heldOrTaken(info *lineInfo, verbAt int, verb *token, from bool) {
	info.kind = lineHold
	if beside := p.besideOthers(p.next, verbAt); beside != nil {
		info.kind, info.counts, info.whole = lineTake, beside, wholeNone
		return
	}
	switch {
	case from && verb.among("return replace transfer move place slip sl put"):
		info.kind = lineTake
		p.takingMore(info)
	case p.heldOfRows(info, verbAt):
		return
	default:
		p.holdingMore(info)
	}
	p.doneAtEnds(info, verbAt)
}

// setsOtherwise reports whether "set" or "lay" puts no stitches aside.
func (p *parser) setsOtherwise(verb *token) bool {
	return verb.among("set setting lay") && !p.anyOf(p.next, p.sentenceEnd(p.next), "aside")
}

// returningTo reads "to rem sts", "to the 20 held sts" after "return".
func (p *parser) returningTo(line *Line) bool {
	at := p.heldSts(p.next + 1)
	return p.takingRest(line, p.next+1) || at != 0 && p.taking(line, at)
}

// waitingWhere is the index of "onto smaller needle" behind "on hold", "from the spare needle" at token i, where stitches waited; 0
// if that is not what stands there.
func (p *parser) waitingWhere(i int) int {
	if !p.tokens[i].is("on", "from") {
		return 0
	}
	for i++; p.tokens[i].among("a the their your stitch waste scrap spare"); i++ {
	}
	if !p.tokens[i].among("hold holder holders yarn thread needle stitch-holder") {
		return 0
	}
	if i++; !p.tokens[i+bit(p.tokens[i].is("back"))].is("onto", "on", "to") || !p.anyOf(i+1, i+6, "needle", "needles", "dpn", "dpns") {
		return 0
	}
	return i
}

// heldStitches reads which stitches a verb puts aside or takes up; it is not ok where none are
// said.
func (p *parser) heldStitches(verbAt int, info *lineInfo) (n []int, all, held, ok bool) {
	n, all, held, ok = p.firstAndLast()
	if !ok {
		n, all, held, ok = p.someStitches()
	}
	if !ok && n == nil && p.onHolderAlone() {
		ok, all, info.worked = true, true, true
	}
	if !ok {
		return nil, false, false, false
	}
	info.whole = p.wholeSaid(verbAt + 1)
	held = p.acceptEnd(p.waitingWhere(p.next)) || held
	all = all || n == nil && !held && (p.next == verbAt+2 || p.shouldersAlone(verbAt+1)) // "leave sts on a holder"
	return n, all, held, n != nil || all || held
}

// shouldersAlone reports whether the stitches from token i to the next are "shoulder sts", "both sets of shoulder sts", where those of each
// side have been counted: there are no others.
func (p *parser) shouldersAlone(i int) bool {
	if p.next < i+2 || !p.tokens[p.next-2].is("shoulder") {
		return false
	}
	for k := len(p.piece.Lines) - 1; k >= 0 && p.piece.Lines[k].info.kind != lineCastOn; k-- {
		if p.piece.Lines[k].info.perSide != nil {
			return true
		}
	}
	return false
}

// onHolderAlone passes over the "them" of "place them on a holder", "place on holder": those that were worked.
func (p *parser) onHolderAlone() bool {
	if p.peek().is("them") && p.ahead(1).is("on", "onto") {
		p.next++
	}
	return p.peek().is("on", "onto")
}

// whereHeld looks to the end of the clause whether stitches are put aside, or come from where
// they were.
func (p *parser) whereHeld(fromThere bool) (end int, from, aside bool) {
	stop := p.withinBrackets(min(p.sentenceEnd(p.next), p.next+mostWords))
	i, from := p.next, fromThere
	for ; i < stop && !p.clauseStops(i); i++ {
		switch t := &p.tokens[i]; {
		case t.is("from") && p.twoEnds(i+1) == 1, t.is("back") && p.tokens[i+1].is("to", "on", "onto"):
			from = true
		case t.is(puttingAside...) && p.asideAt(i):
			aside = true
		}
		from = from || p.tokens[i].is("on", "onto", "to") && (p.anyOf(max(p.next-3, 0), p.next, "live", "exposed") &&
			p.anyOf(i+1, i+4, "needle", "needles", "dpns") || p.partOntoNeedles(i))
		aside = aside || from && p.tokens[i].is("needle", "needles", "dpns")
	}
	return i, from, aside
}

// withinBrackets is where words up to a token end within the brackets of what is worked again and again: before the bracket
// that closes those.
func (p *parser) withinBrackets(stop int) int {
	for i, open := p.next, p.depth; i < stop && p.depth > 0; i++ {
		t := &p.tokens[i]
		if open += bit(t.is("(", "[", "{")) - bit(t.is(")", "]", "}")); open < p.depth {
			return i
		}
	}
	return stop
}

// partOntoNeedles reports whether "onto larger dpns" stands at token i after stitches of a part, "the 36 sleeve sts": they
// are taken up there.
func (p *parser) partOntoNeedles(i int) bool {
	return p.next > 1 && p.last1().stitches() && draft.Part(p.tokens[p.next-2].text) && p.anyOf(i+1, i+4, "needles", "dpns") &&
		!p.anyOf(i+1, i+4, "spare", "holder", "waste", "scrap", "other", "another", "stitch")
}

// clauseStops reports whether a clause about held stitches ends at token i.
func (p *parser) clauseStops(i int) bool {
	t := &p.tokens[i]
	return t.is(",", ";") || t.among("- = ( :") && p.claimAt(i) ||
		t.is("and") && (p.nextAt(i+1) || p.pickedUpAt(i+1) || p.moreHeldAt(i+1))
}

// moreHeldAt reports whether "the remaining 28 sts on another holder" stands at token i, after others that are put aside.
func (p *parser) moreHeldAt(i int) bool {
	at := p.heldSts(i)
	if at == i || at == 0 {
		return false
	}
	end, _ := p.sizedEnd(at)
	if end = p.ofPart(end); end == 0 || !p.tokens[end+1].is("on", "onto", "to") {
		return false
	}
	for n := end + 2; n < end+7 && !p.endsAt(n); n++ {
		if p.tokens[n].is(puttingAside...) && p.asideAt(n) {
			return true
		}
	}
	return false
}

// besideOthers is how many stitches "after the 33 sts" names at the end of words up to a token that put stitches on a
// needle: they are on one with those then. nil if that is not what is said.
func (p *parser) besideOthers(end, from int) []int {
	for i := from; i < end; i++ {
		if !p.tokens[i].among("after beside before alongside behind") && !(p.tokens[i].is("next") && p.tokens[i+1].is("to")) {
			continue
		}
		for i++; p.tokens[i].among("to the first other"); i++ {
		}
		if n, _ := p.sizedEnd(i); n == 0 || !p.tokens[n].stitches() || n >= end {
			return nil
		}
		save := p.next
		p.next = i
		n := p.number()
		p.next = save
		return without(n)
	}
	return nil
}

// takingMore reads ", 34 sts from back holder and 18 sts from right holder": more of them.
func (p *parser) takingMore(info *lineInfo) {
	for info.counts != nil && p.peek().is(",", "and") {
		save := p.next
		p.next++
		p.accept("and")
		end, _ := p.sizedEnd(p.next)
		if end == 0 || !p.tokens[end].is("from") && !(p.tokens[end].stitches() && p.tokens[end+1].is("from")) {
			p.next = save
			return
		}
		more := p.number()
		if more == nil {
			p.next = save
			return
		}
		info.counts = added(info.counts, without(more), p.sizes)
		for !p.endsAt(p.next) && !p.peek().is(",", ";", "and") && !p.claimAhead() {
			p.next++
		}
	}
}

// holdingMore reads ", next 30 sts on a second holder": more stitches that are put aside.
func (p *parser) holdingMore(info *lineInfo) {
	for info.counts != nil && p.peek().is(",", "and", ";") {
		save, found := p.next, p.found.mark()
		p.next++
		p.accept("and", "then")
		if !p.acceptAmong("the next foll following rem remaining last centre center") {
			p.next = save
			return
		}
		p.accept("next")
		n, _, _, ok := p.someStitches()
		if !ok || n == nil {
			p.next = save
			p.found.rewind(found)
			return
		}
		end, from, aside := p.whereHeld(false)
		if !aside || from {
			p.next = save
			return
		}
		p.next = end
		info.counts, info.whole = added(info.counts, n, p.sizes), wholeNone
	}
}

// nextAt reports whether a direction or a row begins at token i.
func (p *parser) nextAt(i int) bool {
	save := p.next
	p.next = i
	ok := p.nextClause()
	p.next = save
	return ok
}

// asideAt reports whether the word at token i, of those that hold stitches, does so
// here: "needle" only with "spare", "another" or "on hold".
func (p *parser) asideAt(i int) bool {
	switch t := &p.tokens[i]; {
	case t.is("needle", "needles"):
		return p.tokens[i-1].among("spare their resting cable holding extra another separate second")
	case t.is("yarn", "thread"):
		return p.tokens[i-1].among("waste scrap spare of contrast a contrasting onto on")
	case t.is("pin", "pins"):
		return p.tokens[i-1].is("safety", "a", "stitch")
	}
	return true
}

// taking reads "rejoin yarn to rem 30 sts" from its stitches on: they are those that
// are worked now.
func (p *parser) taking(line *Line, at int) bool {
	p.next = at
	n, _, _, ok := p.someStitches()
	if !ok || n == nil {
		return false
	}
	line.info.kind, line.info.counts, line.info.only = lineTake, n, n
	if p.peek().is("on", "from", "left") {
		p.next++
		p.accept("on")
		line.info.only = nil // they were put aside
		for p.acceptAmong("a the holder holders spare waste hold yarn thread pin stitch-holder needle front " +
			"back") {
		}
	}
	return true
}

// added is the sum of two lists, one of which may have one number for all sizes.
func added(a, b []int, sizes int) []int {
	if a == nil {
		return b
	}
	out := make([]int, sizes)
	for i := range out {
		out[i] = min(at(a, i)+at(b, i), MaxNumber)
	}
	return tidy(out)
}
