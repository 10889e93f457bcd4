package pattern

import (
	"math/bits"
	"unicode"

	"example.com/knitmath/knitmath/report"
)

func (t *token) stitches() bool { return t.among("st sts stitch stitches loops") }

// claimPhrases lead a claim in.
var claimPhrases = wordings("there should now be", "there should be", "there will be", "there are now", "there are", "you should now have",
	"you should have", "you will have", "you now have", "you have", "for a total of", "a total of", "making", "giving", "leaving", "total",
	"now", "rem", "remaining")

// claimAhead reports whether a count of stitches comes next, such as
// "(96, 104, 112 sts)", "- 96 (104, 112) sts", "(2 sts dec)", "there are 96 sts" or
// "(96)" at the end of a row.
func (p *parser) claimAhead() bool {
	if p.peek().kind == tokenWord && p.peek().text == "and" { // "and there are 96 sts"
		return p.claimAt(p.next+1) && p.tokens[p.next+1].is("there", "you")
	}
	return p.claimAt(p.next)
}

func (p *parser) claimAt(i int) bool {
	if p.signedAt(i) != 0 {
		return true
	}
	sign := i
	for n := 0; n < 2 && p.tokens[i].is("-", "=", ":") && !p.noneFirst(i); n++ {
		i++
	}
	if p.tokens[i].kind == tokenWord {
		return p.claimLed(i)
	}
	if p.ordinalOfOther(i) {
		return false
	}
	return p.claimWords(i) && !p.placeAfter(i) && !p.heldAfter(i) || p.bareClaim(i) || p.dashedNumber(sign) ||
		i > sign && p.tokens[sign].is("=") && p.bareNumber(i)
}

// ordinalOfOther reports whether "1st" stands at token i, or in brackets there, and is no stitch: "1st row",
// "(1st and 3rd sizes only)".
func (p *parser) ordinalOfOther(i int) bool {
	if p.tokens[i].is("(", "[") {
		end := p.ordinalEnd(i + 1)
		return end != 0 && p.tokens[end-1].is("st") && p.tokens[end].among("and size sizes row &")
	}
	return p.tokens[i].kind == tokenNumber && p.tokens[i+1].is("st") && p.ordinalEnd(i) != 0 &&
		(p.labelEnd(i) != 0 || p.someSizesOnly(i) ||
			p.tokens[p.ordinalEnd(i)].row() || p.tokens[i-1].is("the") && p.tokens[i].number%10 == 1) // "the centre stitch, the 51st"
}

// claimLed reports whether a count stands at token i that words lead in, "there are 96 sts".
func (p *parser) claimLed(i int) bool {
	if end := p.countLed(i); end != 0 {
		to, _ := p.sizedEnd(end)
		return to != 0 && (p.endsAt(to) || p.tokens[to].stitches() && p.endsAt(to+1))
	}
	led := p.phraseEnd(i, claimPhrases)
	return led != 0 && p.claimWords(led) && !p.heldAfter(led) && !p.placeAfter(led)
}

// noneFirst reports whether a dash at token i says that the first size has none: "- (-, 52) sts", "- (44, -) sts".
func (p *parser) noneFirst(i int) bool {
	if !p.tokens[i].is("-") || !p.tokens[i+1].is("(", "[") {
		return false
	}
	if p.tokens[i+2].is("-") {
		return true
	}
	end, n := p.listEnd(i + 1) // "- (44, -, 54, -) sts"
	if n == 1 {                // "- (1) rounds", where "- (1 round)" tells of what stands before it
		return p.sizes == 2 && p.tokens[end].among("row rnd round rounds rows rnds more time times")
	}
	return n > 1 && n == p.sizes-1
}

// phraseEnd is the index after the first of the phrases that stands at token i, 0 if
// none does.
func (p *parser) phraseEnd(i int, phrases [][]string) int {
	for _, words := range phrases {
		n := 0
		for n < len(words) && i+n < len(p.tokens) && p.tokens[i+n].is(words[n]) {
			n++
		}
		if n == len(words) {
			return i + n
		}
	}
	return 0
}

// claimWords reports whether numbers followed by "sts" begin at token i, or "dec 2
// sts" within brackets.
func (p *parser) claimWords(i int) bool {
	if p.tokens[i].is("(", "[", "{") {
		if p.countsAll(i) {
			return true
		}
		i = p.claimBracket(i)
	}
	if end, _ := p.sizedEnd(i); end == 0 && p.tokens[i].is("-") {
		i++
	} else if i = end; i == 0 {
		return false
	}
	for {
		end, _ := p.listEnd(i)
		if end == 0 {
			return p.countedPart(i) != 0
		}
		i = end
	}
}

// countsAll reports whether "(64, 72) sts" stands at token i, with a number for each size.
func (p *parser) countsAll(i int) bool {
	end, n := p.listEnd(i)
	return end != 0 && p.tokens[end].stitches() && (n == p.sizes || n == bits.OnesCount32(p.forSizes))
}

// claimBracket is the last number of a count in brackets that open at token i, after the words
// and the other numbers in them.
func (p *parser) claimBracket(i int) int {
	i++
	if end := p.phraseEnd(i, claimPhrases); end != 0 {
		i = end
	}
	if p.tokens[i].among("inc dec = total now") {
		i++
	}
	for (p.tokens[i].kind == tokenNumber || p.tokens[i].is("-")) && p.tokens[i+1].is(",", ":") {
		p.looked++
		i += 2
	}
	return i
}

// bareClaim reports whether "(96)" or "(96, 104, 112)" stands at token i and ends a
// row, where no number before it leads it.
func (p *parser) bareClaim(i int) bool {
	end, n := p.listEnd(i)
	if end == 0 || i == 0 || n != 1 && n != p.sizes || !p.endsAt(end) && !(n == p.sizes && p.anotherAt(end)) {
		return false
	}
	before := &p.tokens[i-1]
	_, _, _, attached := split(before.text)
	return p.sizes == 1 || before.kind != tokenNumber && (before.kind != tokenWord || !attached)
}

// anotherAt reports whether a row or a direction begins at token i, in a capital, although no full stop stands
// before it: "k2. (39) K 1 row."
func (p *parser) anotherAt(i int) bool {
	t := &p.tokens[i]
	return t.kind == tokenWord && unicode.IsUpper(rune(p.found.source[t.start])) && (p.labelEnd(i) != 0 || p.verbAt(i))
}

// bareNumber reports whether a number stands at token i and ends a row.
func (p *parser) bareNumber(i int) bool {
	end, _ := p.sizedEnd(i)
	return end != 0 && p.endsAt(end)
}

// endsAt reports whether a sentence ends at token i.
//
//go:noinline
func (p *parser) endsAt(i int) bool {
	t := &p.tokens[i]
	return t.kind == tokenEnd || t.kind == tokenNewline || t.is(".")
}

// heldAfter reports whether the stitches counted at token i are put aside.
func (p *parser) heldAfter(i int) bool {
	for n := range 8 {
		t := &p.tokens[min(i+n, len(p.tokens)-1)]
		if t.among(". , ; )") && p.tokens[min(i+n, len(p.tokens)-1)-1].kind == tokenWord || t.kind == tokenNewline {
			return false
		}
		if t.among("holder holders waste scrap spare thread unworked hold") {
			return true
		}
	}
	return false
}

// placeAfter reports whether the stitches counted at token i only say where: "4 sts before
// marker".
func (p *parser) placeAfter(i int) bool {
	for n := range 60 {
		t := &p.tokens[min(i+n, len(p.tokens)-1)]
		switch {
		case t.stitches():
			after := min(i+n+1, len(p.tokens)-1)
			return p.tokens[after].among("before past beyond short apart") || p.eachSideOf(after)
		case t.kind == tokenWord && n > 1, p.endsAt(min(i+n, len(p.tokens)-1)):
			return false
		}
	}
	return false
}

// eachSideOf reports whether "from each side of gap" stands at token i: where stitches lie that one decrease takes.
func (p *parser) eachSideOf(i int) bool {
	return p.tokens[i].is("from", "on", "at") && p.tokens[i+1].is("each", "either", "both") && p.gapAt(i+4) != 0
}

// claim reads what claimAhead has seen.
func (p *parser) claim(line *Line) bool {
	if p.signedClaim(line) || p.claimOfParts(line) {
		return true
	}
	from := p.peek().span
	closer := p.claimLead()
	tail := claimTail{}
	switch {
	case p.accept("dec"):
		tail.sign = -1
	case p.accept("inc"):
		tail.sign = 1
	case p.accept("=", "total", "now"):
	}
	first := p.peek().span
	numbers, ok := p.claimedNumbers(closer, &tail)
	if !ok {
		return false
	}
	tail.changeAt = first.to(p.last())
	p.claimTail(&tail, closer)
	if closer != "" {
		if !p.accept(closer) {
			p.mistake(ReasonOpenBracket, from, "a "+closer+" is missing after the count")
			return false
		}
		p.accept("st", "sts", "stitches")
	}
	return p.claimSized(line, numbers, &tail, from)
}

// claimLead passes over what leads a count in, "- there are", "(now", and is what closes its
// bracket, "" if it has none.
func (p *parser) claimLead() (closer string) {
	p.accept("and")
	for !p.noneFirst(p.next) && p.accept("-", "=", ":") {
	}
	if !p.acceptEnd(p.countLed(p.next)) {
		p.skipPhrase(claimPhrases)
	}
	if p.peek().kind != tokenMark {
		return ""
	}
	closer, ok := closers[p.peek().text]
	if ok {
		p.next++
		p.skipPhrase(claimPhrases)
	}
	return closer
}

// claimSized notes a claim that began at a place, if it has a number for each size that it is for.
func (p *parser) claimSized(line *Line, numbers []int, tail *claimTail, from span) bool {
	at := from.to(p.last())
	numbers = p.ofSomeSizes(numbers)
	if len(numbers) != 1 && len(numbers) != p.sizes {
		line.info.claimAt = at
		p.mistake(ReasonSizes, at, report.CountOf(len(numbers), "numbers")+" for "+report.CountOf(p.sizes, "sizes"))
		return true
	}
	if p.listed += len(numbers); p.listed > MaxListed {
		p.mistake(ReasonTooMany, from, "the lists of this text hold more than 20000 numbers")
		return false
	}
	p.claimed(line, tidy(numbers), *tail, at)
	if line.info.unwrapped = tail.unwrapped && line.info.partial != nil; line.info.unwrapped {
		p.wrappedTold(line)
	}
	if tail.parts != nil {
		p.partsAddUp(line, tail.parts, tail.partsAt)
	}
	return true
}

// countedPart is the index of "sts" after "heel" at token i; 0 if they are not counted so. Which
// stitches those of a centre or a side are is asked.
func (p *parser) countedPart(i int) int {
	if p.tokens[i].among("centre center central side sides edge") {
		return 0
	}
	return p.ofPart(i)
}

// claimed notes what a claim says.
func (p *parser) claimed(line *Line, numbers []int, tail claimTail, at span) {
	if tail.second != nil && tail.sign != 0 {
		line.ClaimedStitches, line.info.claimAt = numbers, at
		line.changeClaimed(tail.second, tail.sign, tail.secondAt)
		return
	}
	switch {
	case tail.eachNeedle, tail.secondSides: // "(60 sts; 20 sts on each needle)", "(96 sts; 48 sts each side)"
		line.ClaimedStitches, line.info.claimAt = numbers, at
		p.eachBeside(line, tail.second, tail.secondSides, tail.secondAt)
	case tail.named && tail.second != nil: // "(13 gusset sts; 53 sts)"
		line.ClaimedStitches, line.info.claimAt = tail.second, at
		line.info.partial, line.info.beside = without(numbers), true
	case tail.part && tail.between && tail.second != nil, tail.secondNamed: // "(53 sts; 13 sts between markers)"
		line.ClaimedStitches, line.info.claimAt = numbers, at
		line.info.partial, line.info.between, line.info.beside = without(tail.second), true, true
	case tail.needles:
		line.info.perNeedle, line.info.claimAt = without(numbers), at
		p.laysEach(without(numbers), 0)
	case tail.sides:
		line.info.perSide, line.info.claimAt = without(numbers), at
	case tail.part:
		line.info.partial, line.info.between, line.info.inWork, line.info.claimAt = without(numbers), tail.between, tail.inWork, at
	case tail.sign == 0:
		line.ClaimedStitches, line.info.claimAt, line.info.halfNamed = numbers, at, tail.half
		if tail.total != nil {
			line.ClaimedStitches = tail.total
		}
	default:
		if tail.total != nil { // "(2 sts dec; 38 sts)": both are compared
			line.ClaimedStitches = tail.total
		}
		line.changeClaimed(numbers, tail.sign, tail.changeAt)
		line.info.claimAt = at
	}
}
