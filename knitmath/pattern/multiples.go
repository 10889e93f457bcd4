package pattern

import "strconv"

// multiplesTold compares what a heading says of the stitches that a pattern needs, "Lace (multiple
// of 8 sts + 1)", with the rows below it: worked on a few repeats of that, one after the other,
// they must come out.
func (p *parser) multiplesTold(heading span, each, plus int64, lines []int16) {
	if each < 1 || each > MaxNumber {
		return
	}
	for repeats := int64(2); repeats < 5; repeats++ {
		on := repeats*each + plus
		for _, k := range lines {
			if k < 0 || !p.countable(&p.piece.Lines[k]) {
				return
			}
			l := &p.piece.Lines[k]
			row := profileOf(l.Steps, 0)
			o := row.work(on)
			if o.reason != "" {
				p.mistake(ReasonUneven, heading, strconv.Quote(shorten(l.Label, 30))+" does not come out on "+stitches(int(on))+", "+
					multiple(on, each))
				return
			}
			on += o.leaves - o.takes
		}
	}
}

// countable reports whether all that a row takes is told by its steps, alike in all sizes.
func (p *parser) countable(l *Line) bool {
	f := factsOf(l)
	return l.info.kind == lineRow && !f.graded && !f.marks && !f.toMarker && !l.info.asGiven && !l.info.brings && l.info.either == nil &&
		len(l.Steps) > 0 && !turnsAtEnd(l.Steps)
}

// multipleSaid is "multiple of 8 sts + 1" between two tokens, up to a bracket or the end; ok if
// nothing else is said of the number.
func (p *parser) multipleSaid(i, end int) (each, plus int64, ok bool) {
	for i < end && !p.tokens[i].is("multiple", "mult") {
		i++
	}
	if i++; p.tokens[i].is("of") {
		i++
	}
	if i >= end || p.tokens[i].kind != tokenNumber {
		return 0, 0, false
	}
	each = int64(p.tokens[i].number)
	if i++; p.tokens[i].stitches() {
		i++
	}
	if p.tokens[i].is("+", "plus") && p.tokens[i+1].kind == tokenNumber {
		plus = int64(p.tokens[i+1].number)
		if i += 2; p.tokens[i].stitches() {
			i++
		}
	}
	return each, plus, i >= end || p.tokens[i].is(")", "]", ":") || p.endsAt(i)
}
