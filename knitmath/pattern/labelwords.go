package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// ordinalWord is an ordinal written out, but for "other" and "alt".
func ordinalWord(t *token) (int, bool) {
	if t.kind != tokenWord || t.is("other", "alt", "alternate") {
		return 0, false
	}
	return draft.Ordinal(t.text)
}

// everyWords make a row stand for others too.
var everyWords = []string{"all", "every", "each", "foll", "following", "rem", "remaining"}

// ruleWord reports whether a word says which other rows are worked alike.
func ruleWord(t *token) bool {
	return t.is(everyWords...) || t.row() || t.among("other alt alternate rs ws odd even odd-numbered even-numbered "+
		"numbered right wrong side right-side wrong-side the these until 2nd")
}

// labelTail goes on after the numbers or the row of a label: rules, sides, names.
func (p *parser) labelTail(i int, info *lineInfo) int {
	for {
		p.looked++
		t := &p.tokens[i]
		switch {
		case p.ruleAt(i):
			from := i
			for p.tokens[i].is("and", "&", ",") || ruleWord(&p.tokens[i]) {
				i++
			}
			p.labelRule(from, i, info)
			i = p.ruleTo(i, info)
		case t.is("(", "["):
			end := p.labelMark(i)
			if end == 0 {
				return i
			}
			p.noteMark(i, end, info)
			i = end
		case p.sideOf(i) != stitch.SideUnspecified:
			p.noteSide(p.sideOf(i), info)
			i = p.sideEnd(i)
		case t.row() && i > 0 && p.tokens[i-1].kind == tokenWord:
			i++
		default:
			marks := p.marksBeforeSide(i)
			if marks == 0 {
				return p.labelName(i)
			}
			i += marks
		}
	}
}

// ruleAt reports whether a rule stands at token i, "and all WS rows", "every foll row".
func (p *parser) ruleAt(i int) bool {
	t, then := &p.tokens[i], &p.tokens[i+1]
	return t.is(everyWords...) && !then.is("sts") ||
		t.is("and", "&", ",") && (then.is(everyWords...) || then.among("and ws rs alt"))
}

// sideEnd is the index after "RS", "right side facing" at token i.
func (p *parser) sideEnd(i int) int {
	if i++; p.tokens[i].is("side") {
		i++
	}
	if p.tokens[i].is("facing") {
		i++
	}
	return i
}

// marksBeforeSide is how many strokes or dashes part a label from its side at token i, "Row 1 /
// RS", "Row 1 - RS:"; 0 if there are none.
func (p *parser) marksBeforeSide(i int) int {
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch {
	case t.is("/") && p.sideOf(i+1) != stitch.SideUnspecified, t.is("-") && then.is("rs", "ws") && p.tokens[i+2].is(":", "-"):
		return 1
	case t.is("-") && then.is("-") && p.tokens[i+2].is("rs", "ws") && p.tokens[i+3].is(":", "-", "."):
		return 2
	}
	return 0
}

// labelName passes over a name between the number of a row and its colon: "Row 7
// buttonhole row:".
func (p *parser) labelName(i int) int {
	if p.tokens[i].is(",") && p.tokens[i+1].is("to", "with") { // "Round 1, to adjust the count:"
		if end := p.labelName(i + 1); p.tokens[end].is(":") {
			return end
		}
	}
	if p.tokens[i].is(",") && p.tokens[i+1].among("inc dec increasing decreasing increase decrease") && p.tokens[i+2].is(":") {
		return i + 2 // "Next rnd, inc:"
	}
	for n := 0; n < 5; n++ {
		t := &p.tokens[i+n]
		switch {
		case t.is(":"):
			return i + n
		case t.among("lc dc mc cc") && p.tokens[i+n+1].is(":"): // the colour it is worked in
		case t.kind != tokenWord, p.notation(t.text) && !t.among("dec inc lace rib"):
			return i
		}
	}
	return i
}

// labelMark is the index after a bracket of a label that opens at token i: it holds
// a side, a name or a rule, and nothing that is worked; 0 if it is none.
func (p *parser) labelMark(i int) int {
	if end := p.labelCount(i, nil); end != 0 {
		return end
	}
	closer := closers[p.tokens[i].text]
	sized := p.sizesInBracket(i) != 0
	for n := 1; n < 24; n++ {
		t := &p.tokens[min(i+n, len(p.tokens)-1)]
		switch {
		case t.is(closer):
			if n == 1 {
				return 0
			}
			return i + n + 1
		case t.kind == tokenEnd || t.kind == tokenNewline || t.kind == tokenStar || !sized && p.workedInMark(i+n):
			return 0
		}
	}
	return 0
}

// workedInMark reports whether token i is something that is worked, or a number of it.
func (p *parser) workedInMark(i int) bool {
	t, before := &p.tokens[i], &p.tokens[i-1]
	if t.kind == tokenNumber {
		return p.ordinalEnd(i) == 0 && !before.row() && !before.is("chart", "-")
	}
	return t.kind == tokenWord && p.notation(t.text) && !t.among("dec inc even lace plain rib")
}

// noteMark notes the side, the rule or the name in a bracket of a label.
func (p *parser) noteMark(from, to int, info *lineInfo) {
	if info == nil || p.labelCount(from, info) != 0 {
		return
	}
	if at := p.sizesInBracket(from); at != 0 {
		p.labelSizes(at)
		to = at // "(RS; size M only)"
	} else if p.sizes > 1 && !p.trying && p.tokens[to-2].is("only") && p.sideOf(from+1) == stitch.SideUnspecified {
		p.ask(ReasonSizesUnknown, p.tokens[from].to(p.tokens[to-1].span), "which sizes are these? the text does not name them")
		return
	}
	for i := from; i < to; i++ {
		if p.tokens[i].is("all", "every", "each") {
			p.labelRule(i, to, info)
			return
		}
		if side := p.sideOf(i); side != stitch.SideUnspecified {
			p.noteSide(side, info)
		}
	}
}

func (p *parser) noteSide(side stitch.Side, info *lineInfo) {
	if info != nil {
		info.side = side
	}
}

// labelRule notes which rows are worked alike: the words stand between two tokens.
func (p *parser) labelRule(from, to int, info *lineInfo) {
	if info == nil || from >= to {
		return
	}
	rule, said := everyOther, false
	for i := from; i < to; i++ {
		switch t := &p.tokens[i]; {
		case p.sideOf(i) == stitch.RightSide:
			rule = everyRS
		case p.sideOf(i) == stitch.WrongSide:
			rule = everyWS
		case t.is(everyWords...), t.is("alt", "other"):
			said = true
		}
	}
	if said {
		info.every = rule
	}
}

// labelVerbs begin a direction, and a label only where the row follows at once.
var labelVerbs = map[string]bool{"work": true, "rep": true, "repeat": true, "knit": true, "purl": true, "k": true, "p": true, "cont": true,
	"continue": true, "end": true, "ending": true, "beg": true, "beginning": true, "until": true, "to": true, "on": true, "bo": true,
	"co": true, "bind": true, "cast": true, "at": true, "for": true, "turn": true, "join": true, "over": true, "in": true, "with": true,
	"then": true, "and": true, "sl": true, "slip": true, "starting": true, "finishing": true, "place": true, "pm": true, "sm": true,
	"these": true, "those": true, "rib": true, "as": true, "work's": true, "from": true, "of": true, "after": true, "before": true,
	"using": true, "change": true, "measure": true, "note": true, "when": true, "if": true, "note:": true, "last": true, "this": true}

// surely are words with which a row is labelled although no colon follows.
var surely = map[string]bool{"next": true, "foll": true, "following": true, "dec": true, "inc": true, "decrease": true, "increase": true,
	"set-up": true, "setup": true, "foundation": true, "every": true, "all": true}

// wordLabel is "next row", "set-up row (WS)", "all even rows", "next 4 (6, 8) rows".
func (p *parser) wordLabel(i int, info *lineInfo) int {
	first := &p.tokens[i]
	if end := p.markersLabel(i); end != 0 {
		return end
	}
	if end := p.changeLabel(i); end != 0 {
		return end
	}
	if first.kind != tokenWord || labelVerbs[first.text] && !p.tokens[i+1].row() {
		return 0
	}
	if p.sideOf(i) != stitch.SideUnspecified && p.tokens[i+1].is(":") {
		p.noteSide(p.sideOf(i), info)
		return i + 1
	}
	return p.rowLabel(i, info)
}

// rowLabel is "next row", "set-up row (WS)", "next and every alternate row".
func (p *parser) rowLabel(i int, info *lineInfo) int {
	next := p.tokens[i].is("next")
	if next && p.tokens[i+1].is("and", "&") && p.tokens[i+2].is(everyWords...) {
		i += 2
	}
	from := i
	i, spanAt := p.labelRow(i)
	if i < 0 {
		return 0
	}
	i++
	several := 0
	if p.tokens[i].kind == tokenNumber && p.ordinalEnd(i) == 0 || p.letterAt(i) && p.tokens[i+1].is(":", "(", "[") {
		end, rows := p.severalNamed(i + 1)
		if i++; p.tokens[end].is(":") { // and not "Repeat rounds 3-11 twice more"
			i, several = end, rows
		}
	}
	end := p.labelled(p.labelTail(i, info), p.surelyLabel(from))
	if end == 0 || info == nil {
		return end
	}
	p.noteWordLabel(from, i, spanAt, info)
	if several > 1 && info.forRows == nil {
		info.forRows = []int{several}
	}
	info.nowToo = next && info.every != everyNone
	return end
}

// severalNamed is the index after the numbers of "Gusset rnds 2 and 3", "Short rows 3-6", of which the first stands before token i,
// and how many rows they are.
func (p *parser) severalNamed(i int) (end, rows int) {
	first := &p.tokens[i-1]
	for rows = 1; first.kind == tokenNumber && p.tokens[i-2].among("rows rnds rounds"); {
		to := &p.tokens[i+1]
		if to.kind != tokenNumber || p.ordinalEnd(i+1) != 0 || to.number <= first.number || to.number > MaxRows {
			break
		}
		switch {
		case p.tokens[i].among("- to through thru"):
			rows += int(to.number - first.number)
		case p.tokens[i].among("and & ,"):
			rows++
		default:
			return i, rows
		}
		first, i = to, i+2
	}
	return i, rows
}

// changeLabel is the index of the colon of "Decrease: k1, k2tog, k to end" at token i, a row that is called after
// what it changes; 0 if that is not what stands there.
func (p *parser) changeLabel(i int) int {
	for p.tokens[i].among("begin to now begins start the") {
		i++
	}
	if !p.tokens[i].among("decrease increase decreasing increasing dec inc narrow narrowing widen "+
		"widening decreases "+
		"increases") || !p.tokens[i+1].is(":") || !p.startsItem(i+2) {
		return 0
	}
	return i + 1
}

// surelyLabel reports whether the words at token i are a label although no colon follows; "dec" and
// "inc" only straight before "row".
func (p *parser) surelyLabel(i int) bool {
	t := &p.tokens[i]
	return surely[t.text] && (!t.is("dec", "inc") || p.tokens[i+1].row())
}

// labelRow is the index of the "row" that the words of a label lead to, and of the number of
// rows among them; below 0 if they are no label.
func (p *parser) labelRow(i int) (row, spanAt int) {
	for n := 0; ; n++ {
		t := &p.tokens[i]
		if t.row() {
			return i, spanAt
		}
		if n == 6 || n > 0 && p.endsLabelAt(i) || t.kind != tokenWord && t.kind != tokenNumber && !t.is("(", "[") {
			return -1, 0
		}
		if _, ok := t.written(); !ok && t.kind == tokenWord {
			i++
			continue
		}
		end, _ := p.sizedEnd(i)
		if end == 0 || spanAt > 0 || !p.tokens[end].row() && !p.tokens[end+1].row() {
			return -1, 0
		}
		spanAt, i = i, end
	}
}

// endsLabelAt reports whether token i ends a label: it is worked, and does not join two parts, "Body and sleeve inc rnd".
func (p *parser) endsLabelAt(i int) bool {
	t := &p.tokens[i]
	return p.endsLabel(t) && !(t.is("and", "&") && draft.Part(p.tokens[i+1].text))
}

// endsLabel reports whether a word is worked, and stands in no label.
func (p *parser) endsLabel(t *token) bool {
	return t.kind == tokenWord && (labelVerbs[t.text] || p.notation(t.text) && !t.among("dec inc lace rib"))
}

// noteWordLabel notes the rule, the side and the number of rows of a label.
func (p *parser) noteWordLabel(from, to, spanAt int, info *lineInfo) {
	if spanAt > 0 {
		save := p.next
		p.next = spanAt
		info.forRows = without(p.number())
		p.next = save
	}
	switch {
	case p.tokens[from].is("all", "every", "each") || p.tokens[to-1].is("rows", "rnds", "rounds") && spanAt == 0:
		p.everyLabel(from, to, info)
	default:
		for i := from; i < to; i++ {
			if side := p.sideOf(i); side != stitch.SideUnspecified {
				info.side = side
			}
		}
	}
}

// everyLabel is a label for all rows, those of a side, or the even or odd ones.
func (p *parser) everyLabel(from, to int, info *lineInfo) {
	if p.tokens[from].is("short") { // the first of those that follow, and no rule
		return
	}
	info.every = everyAll
	for i := from; i < to; i++ {
		switch t := &p.tokens[i]; {
		case p.sideOf(i) == stitch.RightSide:
			info.every = everyRS
		case p.sideOf(i) == stitch.WrongSide:
			info.every = everyWS
		case t.is("even", "even-numbered"):
			info.every = everyEven
		case t.is("odd", "odd-numbered"):
			info.every = everyOdd
		case t.is("other", "alt", "alternate"):
			info.every = everyEven
		}
	}
}
