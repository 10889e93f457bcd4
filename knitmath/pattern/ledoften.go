package pattern

import "example.com/knitmath/knitmath/stitch"

// Words before a row that say of many rows what is written as one: "in every 4th row, k2tog, k to end", "knit 10 rows: k2tog, k to
// end". How often it is worked is asked where nothing says it.

// ledOften asks it of a clause that begins at token first and whose lead ends before token led; more says that a row follows in its
// sentence. asked says that it did: the rest of the sentence is not read.
func (p *parser) ledOften(line *Line, first, led int, more bool) (asked bool) {
	info := &line.info
	if p.onlyRows || p.trying {
		return false
	}
	at := p.tokens[first].to(p.last())
	switch info.kind {
	case lineRow, lineShape:
		if p.everyRowSaid(first, led) && p.led.when == nil && !p.led.used && onceOnly(line) {
			p.ask(ReasonUnread, at, "on how many of these rows is this worked? say how many times")
			info.kind, asked = lineUnread, true
		}
	case linePlain, lineEven:
		if more && p.tokens[p.next-1].is(":") && !single(info.counts, 1) && p.startsItem(p.next) && p.tokens[p.next-2].row() {
			p.ask(ReasonUnread, at, "is what follows worked in each of these rows, or after them? write which rows it is")
			info.kind, asked = lineUnread, true
		}
	}
	return asked
}

// everyRowSaid reports whether words from one token to another say "in every 4th row", "on each RS row".
func (p *parser) everyRowSaid(i, end int) bool {
	if i == end || !p.tokens[i].is("in", "on") || !p.tokens[i+1].is("every", "each") {
		return false
	}
	return p.anyRow(i+2, end)
}

// onceOnly reports whether a change of the count is worked on the row at hand alone, as far as the line itself says.
func onceOnly(l *Line) bool {
	if l.info.kind == lineRow {
		return !evenSteps(l.Steps)
	}
	return len(l.info.parts) == 1 && l.info.parts[0].onNextRow() && l.info.until == nil
}

// evenSteps reports whether steps keep the count, each of them.
func evenSteps(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if s.Operation == stitch.Turn || s.Steps == nil && s.takes != s.leaves || !evenSteps(s.Steps) {
			return false
		}
	}
	return true
}
