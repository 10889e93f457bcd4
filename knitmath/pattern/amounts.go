package pattern

import "unicode/utf8"

// lengthIn reads a length at token i in one unit, with those of other sizes or from so much to so much:
//
//	5 cm    2½ in    5 (6, 7) cm    5[6:7] cm    2" (2½", 3")    5-6 cm    2 to 2½ inches    (5, 6, 7) cm
func (p *parser) lengthIn(i int) length {
	for p.tokens[i].is("about", "approx", "approximately") {
		i++
	}
	l := length{end: i}
	if !p.tokens[i].is("(") {
		if !p.amount(&l) {
			return length{}
		}
		p.amountsChained(&l)
	}
	for l.system == unitNone || l.count < p.sizes {
		if !p.amountsBracketed(&l) {
			break
		}
		if after := l; l.system == unitNone && p.amount(&after) { // "5 (6) 7 (8) cm"
			l = after
		}
	}
	return l
}

// amount reads a number and its unit, if one follows.
func (p *parser) amount(l *length) bool {
	i := p.amountEnd(l.end)
	if i == 0 || l.count == MaxSizes {
		return false
	}
	p.looked++
	l.end, l.count = i, l.count+1
	p.unitAfter(l)
	return true
}

// amountEnd is the index after "2", "2½", "2 ½", "1/2", "6,5", "two" at token i; 0 if no number stands there.
func (p *parser) amountEnd(i int) int {
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch _, written := t.written(); {
	case written, t.is("a", "an") && then.is("inch"):
		return i + 1
	case t.kind != tokenNumber:
		return 0
	case then.kind == tokenNumber && then.number > MaxNumber && t.number <= MaxNumber && !isDigit(p.signAt(then)):
		return i + 2
	case p.fractionAt(i), p.decimalAt(i):
		return i + 3
	}
	return i + 1
}

// fractionAt reports whether "1/2" stands at token i, and no numbers of two sizes.
func (p *parser) fractionAt(i int) bool {
	t, whole := &p.tokens[i], &p.tokens[i+2]
	return p.tokens[i+1].is("/") && t.number < whole.number && (whole.is("2", "4", "8") || t.is("1", "2") && whole.is("3"))
}

// decimalAt reports whether "11,5" stands at token i, before centimetres, and no numbers of a list.
func (p *parser) decimalAt(i int) bool {
	t, comma, parts := &p.tokens[i], &p.tokens[i+1], &p.tokens[i+2]
	return comma.is(",") && parts.kind == tokenNumber && t.end == comma.start && comma.end == parts.start &&
		p.tokens[i+3].system() == unitMetric && !p.tokens[i-1].is(",", "(", "[")
}

// signAt is the sign with which a token begins.
func (p *parser) signAt(t *token) rune {
	c, _ := utf8.DecodeRuneInString(p.found.source[t.start:])
	return c
}

// unitAfter reads the unit after a number, if it is not already known.
func (p *parser) unitAfter(l *length) {
	t, then := &p.tokens[l.end], &p.tokens[l.end+1]
	system, end := t.system(), l.end+1
	attached := t.start == p.tokens[l.end-1].end
	if t.is("'") && attached && then.is("'") && then.start == t.end {
		system, end = unitImperial, end+1
	}
	if system == unitNone || t.is("\"") && !attached || l.system != unitNone && l.system != system {
		return
	}
	if l.system == unitNone {
		l.unit, l.system = l.end, system
	}
	l.end = end
	l.sure = l.sure || !t.is("in") || attached || p.endsAt(end) ||
		p.tokens[end].among(", ; ) ] from long of in wide deep above below more")
}

// amountsChained reads the amounts that go on after the first: those of all sizes, "5-6-7", "5, 6, 7", or to so much, "5-6", "5 to 6".
func (p *parser) amountsChained(l *length) {
	to := *l
	for p.tokens[to.end].among("- / , to") {
		by := &p.tokens[to.end]
		to.end++
		if !p.amount(&to) || by.is(",") && p.tokens[to.end].row() {
			break
		}
		range2 := to.count == 2 && by.is("-", "to")
		if to.system != unitNone && (range2 || to.count == p.sizes && (p.sizes > 2 || !by.is(","))) {
			if *l = to; range2 {
				l.count = 1
			}
			return
		}
	}
}

// amountsBracketed reads those of the other sizes, "(6, 7)", "[6:7]", "(2½\", 3\")".
func (p *parser) amountsBracketed(l *length) bool {
	closer, ok := closers[p.tokens[l.end].text]
	if !ok {
		return false
	}
	for more := *l; ; {
		more.end++
		switch {
		case !p.amount(&more), l.system == unitNone && more.system != unitNone: // "US 8 (5 mm)"
			return false
		case p.tokens[more.end].is(closer):
			more.end++
			if more.system == unitNone {
				p.unitAfter(&more)
			}
			*l = more
			return true
		case !p.tokens[more.end].among(", : ; - /"):
			return false
		}
	}
}
