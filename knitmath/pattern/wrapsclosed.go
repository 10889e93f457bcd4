package pattern

import "example.com/knitmath/knitmath/stitch"

// wrapsClosedEnd is the index after words at token i of how the wraps of short rows are closed, "working rem wraps together with
// their sts as you come to them", "pick up all wraps", "knitting both legs of each DS together": with the stitches round which
// they lie, so that no count hangs on them. All of the words are known; 0 if that is not what stands there. ordered says
// that it is said as an order, and not beside what is worked.
func (p *parser) wrapsClosedEnd(i int) (end int, ordered bool) {
	about, many := false, false
	for p.tokens[i].among("always and then") {
		many = many || p.tokens[i].is("always")
		i++
	}
	if when := p.wrapsMet(i); when != 0 {
		i, about, many = when, true, true
	}
	ordered = p.tokens[i].among("work pick lift hide conceal knit purl resolve close process treat")
	if !ordered && !p.tokens[i].among("working picking lifting hiding concealing knitting purling resolving closing processing treating") {
		return 0, false
	}
	n := i + 1
	for ; n < i+26 && p.wrapsGoOn(n); n++ {
		what := p.wrapWord(n)
		about, many = about || what&wrapAbout != 0, many || what&wrapMany != 0
		switch rows := p.rowsOfWraps(n); {
		case rows != 0:
			n = rows - 1
		case what == 0:
			return 0, false
		}
	}
	if !about || !many {
		return 0, false
	}
	return n, ordered
}

// What a word in such a clause says.
const (
	wrapOther = 1 << iota // nothing of its own
	wrapAbout             // that it is about wraps
	wrapMany              // that it is about all of them
)

// wrapWord is what the word at token i says in a clause of how wraps are closed; 0 if it has no place there.
func (p *parser) wrapWord(i int) int {
	switch t := &p.tokens[i]; {
	case t.among("wraps dss doubles"), t.among("sts stitches") && p.tokens[i-1].is("double"):
		return wrapAbout | wrapMany
	case t.among("wrap ds wrapped double-wrapped shadow-wrapped"), t.is("st", "stitch") && p.tokens[i-1].is("double"):
		return wrapAbout
	case t.among("each every all any both you rem remaining"):
		return wrapMany
	case t.stitches(), t.is("."), t.among(wrapWords):
		return wrapOther
	}
	return 0
}

// wrapsGoOn reports whether such a clause goes on at token i.
func (p *parser) wrapsGoOn(i int) bool {
	t := &p.tokens[i]
	if t.is(".") && p.tokens[i-1].is("tog") && p.tokens[i+1].is("with") {
		return true
	}
	return !p.endsAt(i) && !t.among(", ; : ( [ ) ] - =")
}

const wrapWords = "the its their it them this that they these one 1 two 2 legs loops strands of double shadow twin twins corresponding " +
	"tog together " +
	"with in into as a single come to go get when appear occur reach and or work working knit knitting purl purling lift lifting up time along"

// wrapsMet is the index after "when you come to a wrapped st," at token i, 0 if it does not stand there.
func (p *parser) wrapsMet(i int) int {
	if !p.tokens[i].among("when whenever as every each") {
		return 0
	}
	for i++; p.tokens[i].among("time you come to reach a the each wrapped st stitch ds double wrap"); i++ {
	}
	if !p.tokens[i].is(",") || !p.tokens[i-1].among("st stitch ds wrap") {
		return 0
	}
	return i + 1
}

// rowsOfWraps is the index after "in Rows 7 and 8", "on the next two rows" at token i, 0 if it does not stand there.
func (p *parser) rowsOfWraps(i int) int {
	if !p.tokens[i].is("in", "on") {
		return 0
	}
	for i++; p.tokens[i].among("the this that these next foll following final last two 2 both"); i++ {
	}
	if !p.tokens[i].row() {
		return 0
	}
	for i++; p.tokens[i].kind == tokenNumber || p.tokens[i].is("and", "&") && p.tokens[i+1].kind == tokenNumber; i++ {
	}
	return i
}

// wrapsClosed passes over such words among steps. As an order they stand only where the row has gone to its end: before that they may
// work stitches.
func (p *parser) wrapsClosed(steps []Step) bool {
	end, ordered := p.wrapsClosedEnd(p.next)
	if end == 0 || ordered && !goneToEnd(steps) {
		return false
	}
	p.tidies = true
	p.passTail(end)
	return true
}

// wrapsInTail passes over such words behind a direction.
func (p *parser) wrapsInTail(info *lineInfo) bool {
	end, _ := p.wrapsClosedEnd(p.next)
	if end == 0 {
		return false
	}
	info.tidies = true
	p.passTail(end)
	return true
}

// wrapsOrdered is the index after a sentence at token i that only says how wraps are closed, 0 if it is none.
func (p *parser) wrapsOrdered(i int) int {
	if i > 0 && p.tokens[i].is("on") && p.rowsOfWraps(i) != 0 {
		if i = p.rowsOfWraps(i); p.tokens[i].is(",") {
			i++
		}
	}
	end, _ := p.wrapsClosedEnd(i)
	if end == 0 || !p.endsAt(end) && !p.tokens[end].is(";") {
		return 0
	}
	return end
}

// shadowWrap is the turn with a shadow wrap at token i, "work a shadow wrap, turn": the next stitch is worked once below and waits, as
// a wrapped one does. end is 0 if that is not what stands there.
func (p *parser) shadowWrap(i int) (m meaning, end int) {
	for p.tokens[i].among("work make do a the") {
		i++
	}
	if !p.tokens[i].is("shadow") || !p.tokens[i+1].is("wrap") {
		return meaning{}, 0
	}
	for i += 2; p.tokens[i].among("the next st stitch and , &"); i++ {
	}
	if !p.tokens[i].is("turn") {
		return meaning{}, 0
	}
	return ofOp(stitch.WrapTurn), i + 1
}

// goneToEnd reports whether the last of some steps goes to the end of the row.
func goneToEnd(steps []Step) bool {
	n := len(steps)
	if n == 0 {
		return false
	}
	last := &steps[n-1]
	return single(last.RemainingStitches, 0) || last.RemainingStitches == nil && last.Times == nil && last.Steps == nil
}
