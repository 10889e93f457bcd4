package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

func (t *token) row() bool {
	return t.is("row", "rows", "rnd", "rnds", "round", "rounds")
}

// label reads what stands before the steps of a row, and its colon. Without one
// it takes nothing.
func (p *parser) label(line *Line) bool {
	from := p.peek().span
	end := p.labelEnd(p.next)
	if end == 0 {
		return false
	}
	info := &line.info
	if p.peek().row() && p.ahead(1).kind == tokenNumber {
		p.next++
		if !p.rowNumbers(info) {
			p.next, info.ranges = end, nil
		}
	} else if p.peek().is("all", "every", "each") {
		info.every = everyOf(p.ahead(1))
	}
	for p.next < end {
		p.labelWord(info)
		p.next++
	}
	info.at = from.to(p.last())
	line.Label = joined(p.found.source[from.start:info.at.end])
	p.accept(":", ".")
	return true
}

// labelWord notes what the next word of a label says of the side, and of other
// rows worked alike.
func (p *parser) labelWord(info *lineInfo) {
	t := p.peek()
	switch side := p.ahead(1).is("side"); {
	case t.is("rs") || t.is("right") && side:
		p.sideOrEvery(info, stitch.RightSide, everyRS)
	case t.is("ws") || t.is("wrong") && side:
		p.sideOrEvery(info, stitch.WrongSide, everyWS)
	case t.is(everyWords...) && info.ranges != nil && info.every == everyNone:
		info.every = everyOther
	}
}

// everyWords make a row stand for others too.
var everyWords = []string{"all", "every", "each", "foll", "following"}

// sideOrEvery takes "RS" as the side of the row, or, after "and all", as the
// rows that are worked alike.
func (p *parser) sideOrEvery(info *lineInfo, side stitch.Side, e every) {
	for i := p.next - 1; i > 0 && i >= p.next-3; i-- {
		if p.tokens[i].is(everyWords...) {
			info.every = e
			return
		}
	}
	info.side = side
}

func everyOf(t *token) every {
	switch {
	case t.is("rs"):
		return everyRS
	case t.is("ws"):
		return everyWS
	}
	return everyNone
}

// labelEnd returns the index of the token after the words of a label that begins
// at token i, 0 if there is none.
func (p *parser) labelEnd(i int) int {
	if p.tokens[i].row() && p.tokens[i+1].kind == tokenNumber {
		return p.numberedEnd(i + 1)
	}
	for n := 0; n < 5; n++ {
		t := &p.tokens[i]
		if t.kind != tokenWord {
			return 0
		}
		i++
		if !t.row() {
			continue
		}
		if p.tokens[i].kind == tokenNumber {
			i++
		}
		if p.tokens[i].is("(", "[") && p.tokens[i+1].kind == tokenWord && p.tokens[i+2].is(")", "]") {
			i += 3
		}
		if p.tokens[i].is(":") {
			return i
		}
	}
	return 0
}

// numberedEnd passes over the numbers of "Rows 1-8", and what may follow them.
func (p *parser) numberedEnd(i int) int {
	for {
		p.looked++
		n := p.labelPart(i)
		if n == 0 {
			return i
		}
		i += n
	}
}

// labelPart is how many tokens from i on belong together in a numbered label.
func (p *parser) labelPart(i int) int {
	t := &p.tokens[i]
	switch {
	case t.kind == tokenNumber,
		t.is(everyWords...),
		t.is("other", "alt", "rs", "ws", "odd", "even", "odd-numbered", "even-numbered", "numbered"),
		t.row() && p.tokens[i-1].kind == tokenWord:
		return 1
	case t.is("-", ",", "and", "&", "to", "through") && p.tokens[i+1].kind == tokenNumber,
		t.is(",", "and") && (p.tokens[i+1].is("and") || p.tokens[i+1].is(everyWords...)):
		return 1
	case t.is("("):
		return p.sideMark(i)
	}
	return 0
}

// sideMark is the length of "(RS)" or "(wrong side)", 0 if there is none.
func (p *parser) sideMark(i int) int {
	switch {
	case p.tokens[i+1].is("rs", "ws") && p.tokens[i+2].is(")"):
		return 3
	case p.tokens[i+1].is("right", "wrong") && p.tokens[i+2].is("side") && p.tokens[i+3].is(")"):
		return 4
	}
	return 0
}

// rowNumbers reads "1", "1-8", "1, 3 and 5".
func (p *parser) rowNumbers(info *lineInfo) bool {
	for p.peek().kind == tokenNumber {
		at := p.peek().span
		r, ok := p.rowRange()
		if !ok || !p.name(int(r.last-r.first)+1, at) {
			return false
		}
		info.ranges = append(info.ranges, r)
		switch {
		case p.peek().is(",", "and", "&") && p.ahead(1).kind == tokenNumber:
			p.next++
		case p.peek().is(",") && p.ahead(1).is("and") && p.ahead(2).kind == tokenNumber:
			p.next += 2
		default:
			return true
		}
	}
	return true
}

// rowRange reads "1" or "1-8".
func (p *parser) rowRange() (rowRange, bool) {
	t := p.peek()
	p.next++
	r := rowRange{t.number, t.number}
	if p.peek().is("-", "to", "through") && p.ahead(1).kind == tokenNumber {
		r.last = p.ahead(1).number
		p.next += 2
	}
	switch {
	case r.first < 1 || r.last < 1 || r.first > MaxRows || r.last > MaxRows:
		p.mistake(ReasonTooLarge, t.span.to(p.last()), "rows are numbered from 1 to "+strconv.Itoa(MaxRows))
		return r, false
	case r.last < r.first:
		p.mistake(ReasonRowNumber, t.span.to(p.last()), "the first row is after the last")
		return r, false
	}
	return r, true
}

// name counts the row numbers that labels and repeats name.
func (p *parser) name(n int, at span) bool {
	if p.named += n; p.named <= MaxNamed {
		return true
	}
	p.mistake(ReasonTooMany, at, "labels and repeats name more than "+strconv.Itoa(MaxNamed)+" rows in all")
	return false
}

// startsLine reports whether a label or a direction begins with the next token.
func (p *parser) startsLine() bool {
	return p.labelEnd(p.next) != 0 || p.directionAhead() != lineRow
}

// isLabel reports whether a text reads as the label of a row.
func isLabel(text string) bool {
	p := parser{tokens: scan(text + ":"), sizes: 1, found: findings{source: text + ":"}}
	var line Line
	return p.label(&line) && p.peek().kind == tokenEnd && p.last().end == int32(len(text)+1) && len(p.found.list) == 0
}
