package pattern

// extent is how often or how far something is worked: so many times, or until so
// many stitches are left; neither if the text does not say.
type extent struct {
	exact       bool // the times are those of single stitches
	loose       bool // up to a place that is not followed
	gap         bool // up to the gap that the last turn left
	times, last []int
	mark        []int // stitches before the next marker
	more        bool  // "3 more times"
}

var toEnd = []int{0} // never written to

// upTo reads how often or how far. all says that "all sts" and the like may
// stand for "to end".
func (p *parser) upTo(all bool) (extent, bool) {
	switch {
	case p.accept("once"):
		return extent{times: one, more: p.accept("more")}, true
	case p.accept("twice"):
		return extent{times: []int{2}, more: p.accept("more")}, true
	case p.allAlong():
		return extent{last: toEnd}, true
	case p.inEachOf():
		n := p.number()
		p.accept("st", "sts", "stitch", "stitches")
		return extent{times: without(n), exact: true}, n != nil
	case p.timesAhead():
		return p.times()
	case p.peek().is("x", "×") && (p.ahead(1).kind == tokenNumber):
		p.next++
		n := p.number()
		return extent{times: without(n)}, n != nil
	case strokeTimes(p.peek()) > 0:
		n := strokeTimes(p.peek())
		p.next++
		return extent{times: []int{n}}, true
	case p.peek().is("to", "until", "up", "till"):
		return p.toLast()
	case p.peek().is("over", "across") && p.numberOfStsAt(p.next+1):
		return extent{}, true
	case p.peek().is("across", "around", "along", "thence"):
		return p.acrossRow()
	case all && p.peek().is("all", "every", "each", "rem", "remaining"):
		return p.allStitches()
	}
	return extent{}, true
}

// allAlong passes over "k back", "k plain", "k all round", "k in each st": to the end of the
// row.
func (p *parser) allAlong() bool {
	t, then := p.peek(), p.ahead(1)
	switch {
	case t.is("back", "plain") && (p.endsAt(p.next+1) || then.is(",", ";", "-", "(")):
		p.next++
		return true
	case t.is("all") && then.is("round", "around", "across", "along"):
		p.next += 2
		return true
	}
	return p.inEveryStitch()
}

// acrossRow reads "across row", "around all sts", "across to last 2 sts".
func (p *parser) acrossRow() (extent, bool) {
	p.next++
	p.accept("the", "whole", "entire", "next", "this")
	p.accept("row", "rnd", "round")
	if p.accept("all", "both") {
		p.accept("sts", "stitches", "pieces", "sets", "legs", "halves", "sleeves", "sides")
	}
	if p.peek().is("to", "until") {
		return p.toLast()
	}
	return extent{last: toEnd}, true
}

// inEveryStitch passes over "in each st", "into every st to end".
func (p *parser) inEveryStitch() bool {
	if !p.peek().is("in", "into") || !p.ahead(1).is("each", "every") || !p.ahead(2).is("st", "stitch") {
		return false
	}
	p.next += 3
	if !p.acceptAll("to", "end") {
		p.accept("across", "around")
	}
	return true
}

// inEachOf passes over "in each of the next", "into each of the first" before a number of
// stitches.
func (p *parser) inEachOf() bool {
	i := p.next
	if !p.tokens[i].is("in", "into") || !p.tokens[i+1].is("each", "every") {
		return false
	}
	i += 2
	for p.tokens[i].is("of", "the", "next", "first", "last", "foll", "following") {
		i++
	}
	if end, _ := p.sizedEnd(i); i == p.next+2 || end == 0 || !p.tokens[end].stitches() {
		return false
	}
	p.next = i
	return true
}

// allStitches reads "all sts", "every st", "rem sts".
func (p *parser) allStitches() (extent, bool) {
	i := 1
	if p.ahead(i).is("rem", "remaining", "the") {
		i++
	}
	if !p.ahead(i).is("st", "sts", "stitch", "stitches") {
		return extent{}, true
	}
	p.next += i + 1
	return extent{last: toEnd}, true
}

// timesAhead reports whether a number with "times" or "more" comes next.
func (p *parser) timesAhead() bool {
	end, _ := p.sizedEnd(p.next)
	return end != 0 && p.tokens[end].is("times", "time", "more", "x")
}

func (p *parser) times() (extent, bool) {
	n := p.number()
	if n == nil {
		return extent{}, false
	}
	more := p.accept("more")
	p.accept("times", "time", "x")
	more = p.accept("more") || more
	return extent{times: without(n), more: more}, true
}

// toLast reads what follows "to" or "until".
func (p *parser) toLast() (extent, bool) {
	from := p.peek().span
	p.accept("up")
	p.next++
	p.accept("the")
	if p.peek().is("end") && p.ahead(1).is("of") && p.acceptEnd(p.loosePlace(p.next)) {
		return extent{last: toEnd, loose: true}, true
	}
	p.accept("within")
	if n, ok := p.rightNeedle(); ok {
		return extent{times: n, exact: true}, n != nil
	}
	if p.rowEndSaid() {
		return extent{last: toEnd}, true
	}
	if to, ok := p.toPlace(p.next, toEnd); ok {
		return to, true
	}
	if p.accept("last") {
		return p.lastStitches(from)
	}
	if to, found, ok := p.toBefore(); found {
		return to, ok
	}
	at := p.peek().span
	if p.peek().kind == tokenWord || p.peek().kind == tokenNumber {
		at = p.clauseSpan(p.next)
	}
	p.ask(ReasonUnread, from.to(at),
		"only \"to end\" and \"to last n sts\" are followed; "+
			"for a marker or another place say how many stitches remain")
	return extent{}, false
}

// rowEndSaid passes over "end", "end of rnd", "end of this row".
func (p *parser) rowEndSaid() bool {
	if !p.accept("end", "end-of-row", "end-of-rnd") {
		return false
	}
	if p.accept("of") {
		p.accept("the", "this")
		p.toRoundEnd = p.toRoundEnd || p.peek().is("rnd", "round")
		p.accept("row", "rnd", "round", "needle", "heel", "sts", "section", "chart")
	} else {
		p.acceptRow()
	}
	return true
}

// toBefore reads "3 sts before marker", "st before wrapped st". found is false if no such place
// is said; the number is passed over nevertheless.
func (p *parser) toBefore() (to extent, found, ok bool) {
	if p.numberAhead() {
		n := p.number()
		if n == nil {
			return extent{}, true, false
		}
		p.accept("st", "sts", "stitch", "stitches")
		if to, ok = p.beforePlace(n); ok {
			return to, true, true
		}
	}
	if p.peek().is("st", "stitch") && p.ahead(1).is("before") {
		p.next++
		if to, ok = p.beforePlace(one); ok {
			return to, true, true
		}
		p.next--
	}
	return extent{}, false, false
}

// acceptEnd goes on to token end, if that is one.
func (p *parser) acceptEnd(end int) bool {
	if end == 0 {
		return false
	}
	p.next = end
	return true
}

// toPlace is how far it is to a marker, a gap or another place at token i, so many stitches
// before it.
func (p *parser) toPlace(i int, before []int) (extent, bool) {
	switch {
	case p.acceptEnd(p.markerAt(i)):
		return extent{mark: before}, true
	case p.acceptEnd(p.gapAt(i)):
		p.asGiven = true
		return extent{mark: before, gap: true}, true
	case p.acceptEnd(p.loosePlace(i)):
		return extent{last: toEnd, loose: true}, true
	}
	return extent{}, false
}

// lastStitches reads what follows "to last".
func (p *parser) lastStitches(from span) (extent, bool) {
	if p.accept("st", "stitch") {
		return extent{last: one}, true
	}
	n := p.number()
	if n == nil {
		p.ask(ReasonUnread, from.to(p.last()), "a number of stitches is expected after \"to last\"")
		return extent{}, false
	}
	p.accept("st", "sts", "stitch", "stitches")
	if p.peek().is("before") { // "to last 2 sts before m"
		if to, ok := p.beforePlace(n); ok {
			return to, true
		}
	}
	return extent{last: without(n)}, true
}

// beforeTheEnd are the words for the end of a row after a number of stitches.
var beforeTheEnd = wordings("before end", "from end", "before the end", "from the end", "of the end", "of end")

// beforePlace reads which place so many stitches lie before.
func (p *parser) beforePlace(n []int) (extent, bool) {
	if p.peek().is("before", "from", "prior") {
		i := p.next + 1
		if p.tokens[i].is("to") {
			i++
		}
		if p.tokens[i].is("the") {
			i++
		}
		if to, ok := p.toPlace(i, without(n)); ok {
			return to, true
		}
	}
	if p.peek().is("past", "after", "beyond") {
		beyond := make([]int, len(n))
		for i := range n {
			beyond[i] = -at1(n, i)
		}
		if to, ok := p.toPlace(p.next+1, beyond); ok && !to.loose {
			p.asGiven = true
			return to, true
		}
	}
	if p.accept("rem", "remain", "remains", "remaining", "left") {
		return extent{last: without(n)}, true
	}
	if !p.acceptAny(beforeTheEnd) {
		return extent{}, false
	}
	if p.accept("of") {
		p.accept("the")
		p.accept("row", "rnd", "round", "needle")
	}
	return extent{last: without(n)}, true
}

// strokeTimes is how often "x4" says, 0 if it says nothing.
func strokeTimes(t *token) int {
	if t.kind != tokenWord || len(t.text) < 2 || len(t.text) > 5 || t.text[0] != 'x' {
		return 0
	}
	n, ok := whole(t.text[1:])
	if !ok || n > MaxNumber {
		return 0
	}
	return n
}

// markerAt is the index after "m", "next marker" or "BOR m" at token i, 0 if there is
// none.
func (p *parser) markerAt(i int) int {
	if p.letterAt(i) && p.markNamed(p.tokens[i].text) {
		return i + 1
	}
	for p.tokens[i].is("next", "first", "second", "third", "last", "raglan", "side", "the", "a", "bor", "center", "centre", "1st", "2nd",
		"gusset",
		"following", "foll", "beg-of-rnd", "eor", "thumb") {
		i++
	}
	if p.tokens[i].is("m", "marker", "mkr", "mk", "m1", "ma", "mb") && !p.tokens[i].is("m1", "mb") {
		return i + 1
	}
	if p.tokens[i-1].is("bor", "eor") {
		return i
	}
	return 0
}

// markNamed reports whether the text places a marker by that letter: "pm A".
func (p *parser) markNamed(letter string) bool {
	if p.markNames == nil {
		p.markNames = map[string]bool{}
		for i := range len(p.tokens) - 1 {
			if p.tokens[i].is("pm", "marker", "m") && p.letterAt(i+1) {
				p.markNames[p.tokens[i+1].text] = true
			}
		}
		p.looked += len(p.tokens)
	}
	return p.markNames[letter]
}

// numberOfStsAt reports whether "45 sts" or "next 45 sts" stands at token i.
func (p *parser) numberOfStsAt(i int) bool {
	for p.tokens[i].is("the", "next", "first", "last", "centre", "center", "rem", "foll", "following") {
		i++
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].stitches()
}
