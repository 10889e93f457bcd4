package pattern

import "example.com/knitmath/knitmath/draft"

// worksAfterLead reports whether a line that begins with a word of front matter is a row
// all the same: "Tension row: k2tog, k to end", "Yarn A: *k2, p2; rep from *".
func (p *parser) worksAfterLead(i, end int) bool {
	if p.tokens[i+1].row() && p.labelEnd(i) != 0 {
		return true
	}
	if draft.Explaining(p.tokens[i].text) {
		return false
	}
	for n := i + 1; n < end && n < i+8; n++ {
		if p.tokens[n].is(":") || p.dashAt(n) {
			return p.worksAt(n+1) || !(n == i+1 && p.tokens[i].is("gauge", "tension")) && p.ordersWithin(n+1, end)
		}
	}
	return false
}

// ordersWithin reports whether one of the sentences and clauses from token i up to another orders how many stitches or rows
// are worked, "With RS facing, pick up and knit 95 sts".
func (p *parser) ordersWithin(i, end int) bool {
	for n := i; n < end; n++ {
		if (n == i || p.tokens[n-1].is(".", ",", ";")) && p.orderAt(n, end) {
			return true
		}
	}
	return false
}

// front reports whether a heading that begins with token i stands over what is read by people alone: "Buttons", but not
// "Button band".
func (p *parser) front(i int) bool {
	return draft.Front(p.tokens[i].text) && !p.partAt(i)
}

// partAt reports whether the name of a part begins with token i.
func (p *parser) partAt(i int) bool {
	then := &p.tokens[i+1]
	return draft.Part(p.tokens[i].text) || p.tokens[i].is("button", "buttons") && (draft.Part(then.text) || then.is("tab", "tabs"))
}

// worksAt reports whether what changes a count, or works a number of stitches, begins at
// token i.
func (p *parser) worksAt(i int) bool {
	t := &p.tokens[i]
	if t.kind == tokenStar || t.is("[", "(") {
		return p.worksAt(i + 1)
	}
	if t.kind != tokenWord {
		return false
	}
	if _, _, _, counted := split(t.text); counted {
		return true
	}
	m, ok := lookUp(t.text, p.own)
	return ok && (m.takes != m.leaves || p.tokens[i+1].among("to across around all") || t.is("knit", "purl") && p.endsAt(i+1))
}

// countedNote passes over "Note:" where all that it notes is a count, which then belongs
// to the row before it.
func (p *parser) countedNote(i, end int) bool {
	if !p.began || !p.tokens[i].among("note notes nb check") || !p.tokens[i+1].is(":", "-") || i+2 >= end {
		return false
	}
	if !p.countAlone(i+2, end) && !(p.tokens[i+2].kind == tokenWord && p.claimLed(i+2) && p.countsToEnd(i+2, end)) {
		return false
	}
	p.next = i + 2
	return true
}

// countsToEnd reports whether a sentence that ends its line has one number, or one for each size.
func (p *parser) countsToEnd(i, end int) bool {
	for ; i < end; i++ {
		if to, _ := p.sizedEnd(i); to != 0 {
			to += bit(p.tokens[to].stitches())
			return to == end || to+1 == end && p.tokens[to].is(".")
		}
	}
	return false
}

// countAlone reports whether a number of stitches is all that stands between two tokens.
func (p *parser) countAlone(i, end int) bool {
	to, _ := p.sizedEnd(i)
	return to != 0 && to < end && p.tokens[to].stitches() && (to+1 == end || to+2 == end && p.tokens[to+1].is("."))
}

// measureLine reports whether a line says how large something is, "Hand circumference: 18 -
// 20 - 22 cm", "4.5mm needles", and nothing about stitches.
func (p *parser) measureLine(i, end int) bool {
	colon, unit, number := p.tokens[i].kind == tokenNumber, false, false
	for n := i; n < end; n++ {
		t := &p.tokens[n]
		switch {
		case t.is(":"):
			colon = colon || n > i
		case t.system() != unitNone:
			unit = unit || number
		case t.kind == tokenNumber:
			number = true
		case t.kind == tokenStar, t.stitches(), t.row(), t.kind == tokenWord && (alarming(t.text) || directing[t.text]),
			n == i && t.kind == tokenWord && p.notation(t.text):
			return false
		}
	}
	return colon && unit
}

// explains reports whether a line says what an abbreviation stands for, "C8B: sl next 4 sts
// onto cable needle", "Inc = knit into front and back of st".
func (p *parser) explains(i, end int) bool {
	t := &p.tokens[i]
	if t.kind != tokenWord || t.row() || !p.notation(t.text) || i+2 >= end || p.sideOf(i) != 0 || p.castAt(i) != 0 {
		return false
	}
	_, _, _, counted := split(t.text)
	return !counted && p.tokens[i+1].is(":", "=") && p.labelEnd(i) == 0
}

// crossingExplained reports whether a line of a text that has begun says how a crossing is worked, "C6F: slip next 3 sts to cn ...".
func (p *parser) crossingExplained(i, end int) bool {
	_, ok := cable(p.tokens[i].text)
	return ok && p.explains(i, end)
}

// turnExplained reports whether "make DS: with the yarn in front slip 1, ..." or "w&t: slip the next st,
// ..." stands at token i, which says how a turn is made.
func (p *parser) turnExplained(i int) bool {
	end := p.phraseEnd(i, turnNames)
	return end != 0 && p.tokens[end].is(":", "=")
}

var turnNames = wordings("make ds", "mds", "w&t", "w & t", "w and t", "wrap and turn", "wrap & turn", "ds", "german short row",
	"german short rows", "tog with its wrap")
