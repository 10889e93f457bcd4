package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// work reads one abbreviation with its number.
func (p *parser) work(alone bool) (Step, bool) {
	from := p.peek().span
	m, numbers, ok := p.abbreviation()
	if !ok {
		return Step{}, false
	}
	s := Step{Operation: m.op, Name: m.name, takes: m.takes, leaves: m.leaves, Manner: m.manner}
	full := p.tokens[p.next-1].is("knit", "purl", "work") // "Knit." is a row; "k." may be
	spelled := p.tokens[p.next-1].text
	if numbers == nil && formOf(&s) != formBracketed && p.numberAhead() {
		if numbers = p.number(); numbers == nil {
			return Step{}, false
		}
	}
	if numbers != nil {
		if numbers, ok = p.noun(&s, without(numbers)); !ok {
			return Step{}, false
		}
	}
	if !p.qualified(&s) {
		return Step{}, false
	}
	s.at = from.to(p.last())
	if m.reading != "" {
		p.reading(s.at, m.reading)
	}
	if s.Operation == stitch.Knit || s.Operation == stitch.Purl || s.Name == "work" {
		if numbers == nil && p.asTheyAre() {
			s = Step{Name: "work", takes: 1, leaves: 1, RemainingStitches: []int{0}, at: from.to(p.last())}
			return s, true
		}
	}
	at := p.peek().span
	u, ok := p.upTo(numbers == nil)
	if !ok {
		return Step{}, false
	}
	s.at = from.to(p.last())
	switch {
	case u.last != nil && numbers != nil && !single(numbers, 1):
		p.ask(ReasonUnread, at, "a number of stitches and \"to ...\" exclude one another")
		return Step{}, false
	case u.last != nil:
		s.RemainingStitches = u.last
	case u.times != nil && u.more:
		p.ask(ReasonAmbiguous, at.to(p.last()), "is it worked once before these times? put brackets round it and write the whole number of times")
		return Step{}, false
	case u.times != nil:
		if !single(u.times, 1) {
			p.reading(s.at, "without brackets only the stitch just before is repeated")
		}
		s.Times = u.times
		if numbers != nil && !single(numbers, 1) || formOf(&s) != formBracketed {
			inner := s
			inner.Times = numbers
			if numbers == nil {
				inner.Times = one
			}
			s = Step{Steps: []Step{inner}, Times: u.times, at: s.at}
		}
	case numbers != nil:
		s.Times = numbers
	case (full || alone) && formOf(&s) != formBracketed && s.Operation != stitch.Slip && p.rowEnds():
		s.RemainingStitches = []int{0}
		if !full {
			p.reading(s.at, "alone in its row: to the end of it")
		}
	default:
		s.Times = one
		if formOf(&s) != formBracketed && s.Name == "" && m.manner == 0 {
			p.reading(s.at, spelled+" without a number: one stitch")
		}
	}
	if m.times > 1 && s.Times != nil && s.Steps == nil {
		doubled := make([]int, len(s.Times))
		for i, n := range s.Times {
			doubled[i] = n * m.times
		}
		s.Times = doubled
	}
	return s, true
}

// rowEnds reports whether nothing follows in the row.
func (p *parser) rowEnds() bool {
	t := p.peek()
	if t.is(".") {
		t = p.ahead(1)
		if t.kind == tokenWord {
			save := p.next
			p.next++
			starts := p.startsLine()
			p.next = save
			return starts
		}
	}
	return t.kind == tokenEnd || t.kind == tokenNewline || p.claimAhead()
}

// abbreviation reads what is worked, and a number attached to it.
func (p *parser) abbreviation() (meaning, []int, bool) {
	t := p.peek()
	if t.kind == tokenNumber { // 2/2 lc
		if over, kind := p.ahead(2), p.ahead(3); over.kind == tokenNumber && kind.kind == tokenWord {
			name := strconv.Itoa(int(t.number)) + "/" + strconv.Itoa(int(over.number)) + " " + kind.text
			if m, ok := lookUp(name, p.own); ok {
				p.next += 4
				return m, nil, true
			}
		}
		p.ask(ReasonUnread, t.span, "a stitch, a bracket or a star is expected here")
		return meaning{}, nil, false
	}
	if _, mine := p.own[t.text]; !mine {
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
	base, n, tail, ok := split(t.text)
	if !ok {
		p.ask(ReasonUnknown, t.span, "not an abbreviation known here: declare it, with the stitches it takes and leaves")
		return meaning{}, nil, false
	}
	p.next++
	m := words[base]
	switch tail {
	case "tog": // k1tog
		p.ask(ReasonUnread, t.span, "together are at least two stitches")
		return meaning{}, nil, false
	case "tbl":
		switch m.op {
		case stitch.Knit:
			m = ofOp(stitch.KnitTbl)
		case stitch.Purl:
			m = ofOp(stitch.PurlTbl)
		default:
			p.ask(ReasonUnread, t.span, "only knit and purl stitches are worked tbl here")
			return meaning{}, nil, false
		}
	}
	numbers := p.numbers(n, t.span)
	return m, numbers, numbers != nil
}

// meant asks about what cannot be counted as it stands.
func (p *parser) meant(m meaning, at span) (meaning, []int, bool) {
	if m.ask != "" {
		p.ask(ReasonAmbiguous, at, m.ask)
		return meaning{}, nil, false
	}
	return m, nil, true
}

// numberAhead reports whether a number comes next.
func (p *parser) numberAhead() bool {
	t := p.peek()
	if t.kind == tokenNumber {
		return true
	}
	if _, ok := numberWords[t.text]; ok && t.kind == tokenWord {
		return true
	}
	end, _ := p.listEnd(p.next)
	return end != 0
}
