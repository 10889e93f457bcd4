package pattern

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// abbreviation reads what is worked, and a number attached to it.
func (p *parser) abbreviation() (meaning, []int, bool) {
	t := p.peek()
	if n := p.pickUpCounted(); n != nil {
		return ofOp(stitch.PickUp), n, true
	}
	if p.pickUpBareAt(p.next) {
		p.next += 2
		return ofOp(stitch.PickUp), nil, true
	}
	if t.kind == tokenNumber {
		m, ok := p.crossing()
		return m, nil, ok
	}
	if p.oldOver(p.next) {
		p.next++
		return ofOp(stitch.YO), nil, true
	}
	if _, mine := p.own[t.text]; !mine {
		if m, end := p.stitchPhrase(p.next); end != 0 {
			p.next = end
			return p.meant(m, t.span.to(p.last()))
		}
		for i := range phrases[t.text] {
			ph := &phrases[t.text][i]
			if p.acceptAll(ph.words...) {
				return p.meant(ph.meaning, t.span.to(p.last()))
			}
		}
	}
	if m, ok := lookUp(t.text, p.own); ok {
		p.next++
		return p.meant(m, t.span)
	}
	return p.attached()
}

// pickUpCounted reads "pick up and k2", where the number is written with the stitch.
func (p *parser) pickUpCounted() []int {
	if !p.pickUpCountedAt(p.next) || p.own["pick"].name != "" {
		return nil
	}
	_, n, _, _ := split(p.ahead(3).text)
	at := p.ahead(3).span
	p.next += 4
	return p.numbers(n, at)
}

// pickUpCountedAt reports whether it stands at token i.
func (p *parser) pickUpCountedAt(i int) bool {
	if !p.tokens[i].is("pick") || !p.tokens[i+1].is("up") || !p.tokens[i+2].is("and", "&") {
		return false
	}
	base, _, tail, ok := split(p.tokens[i+3].text)
	return ok && tail == "" && (base == "k" || base == "p" || base == "knit")
}

// pickUpBareAt reports whether "pick up 2 sts" stands at token i.
func (p *parser) pickUpBareAt(i int) bool {
	if !p.tokens[i].is("pick") || !p.tokens[i+1].is("up") || p.own["pick"].name != "" {
		return false
	}
	end, _ := p.sizedEnd(i + 2)
	return end != 0 && p.tokens[end].stitches()
}

// crossing reads "2/2 lc", a cable that begins with a number.
func (p *parser) crossing() (meaning, bool) {
	over := p.peek()
	name, i := strconv.Itoa(int(over.number)), 1
	for p.ahead(i).is("/") && p.ahead(i+1).kind == tokenNumber && i < 6 {
		name += "/" + strconv.Itoa(int(p.ahead(i+1).number))
		i += 2
	}
	if kind := p.ahead(i); kind.kind == tokenWord {
		if m, ok := lookUp(name+" "+kind.text, p.own); ok {
			p.next += i + 1
			return m, true
		}
	}
	p.ask(ReasonUnread, over.span, "a stitch, a bracket or a star is expected here")
	return meaning{}, false
}

// attached reads a word with a number in it, such as "k5" or "p2tbl".
func (p *parser) attached() (meaning, []int, bool) {
	t := p.peek()
	base, n, tail, ok := split(t.text)
	if !ok {
		if t.kind == tokenWord && !p.abbreviated(t) {
			p.ask(ReasonUnread, t.span.to(p.clauseSpan(p.next)), "not understood")
			return meaning{}, nil, false
		}
		p.ask(ReasonUnknown, t.span, "not understood; an abbreviation of your own is declared, with the stitches it takes and leaves")
		return meaning{}, nil, false
	}
	p.next++
	m := words[base]
	switch {
	case tail == "tog": // k1tog
		p.ask(ReasonUnread, t.span, "together are at least two stitches")
		return meaning{}, nil, false
	case tail == "tbl" && m.op == stitch.Knit:
		m = ofOp(stitch.KnitTbl)
	case tail == "tbl" && m.op == stitch.Purl:
		m = ofOp(stitch.PurlTbl)
	case tail == "togtbl" && n > 1 && (base == "k" || base == "p"):
		return named(base+strconv.Itoa(n)+"tog tbl", int16(min(n, MaxTakes)), 1), nil, true
	case tail == "tbl":
		p.ask(ReasonUnread, t.span, "only knit and purl stitches are worked tbl here")
		return meaning{}, nil, false
	}
	numbers := p.numbers(n, t.span)
	return m, numbers, numbers != nil
}

// clauseSpan is the last word before the comma or the end of the clause of token i, at most eight
// words on.
func (p *parser) clauseSpan(i int) span {
	for n := 0; n < 8; n++ {
		t := &p.tokens[i+1]
		if t.kind != tokenWord && t.kind != tokenNumber {
			break
		}
		i++
	}
	return p.tokens[i].span
}

// meant asks about what cannot be counted as it stands.
func (p *parser) meant(m meaning, at span) (meaning, []int, bool) {
	slips := p.ahead(1).is("sl", "slip") || strings.HasPrefix(p.ahead(1).text, "sl1")
	if m.op == stitch.YO && m.reading != "" && p.peek().is(",") && slips && !p.passesOver(p.next+1) {
		p.reading(at, "before a slipped stitch read as: the yarn comes to the front")
		return named("wyif", 0, 0), nil, true
	}
	if op, name := p.yarnFront(at); op != 0 || name != "" {
		p.asGiven = true
		if name != "" {
			return named(name, 0, 0), nil, true
		}
		return ofOp(op), nil, true
	}
	if m.ask != "" {
		p.ask(ReasonAmbiguous, at, m.ask)
		return meaning{}, nil, false
	}
	return m, nil, true
}

// last1 is the token before the next.
func (p *parser) last1() *token { return &p.tokens[max(p.next-1, 0)] }

// numberAhead reports whether a number comes next.
func (p *parser) numberAhead() bool {
	t := p.peek()
	if t.kind == tokenNumber {
		return true
	}
	if _, ok := t.written(); ok {
		return true
	}
	end, _ := p.listEnd(p.next)
	if t.is("-") {
		end, _ = p.sizedEnd(p.next)
	}
	return end != 0
}
