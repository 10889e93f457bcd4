package pattern

// claimTail is what follows the "sts" of a claim.
type claimTail struct {
	sign       int   // 1 for an increase, -1 for a decrease, 0 for a count
	half       bool  // that of a part that may be half of a round: "26 instep sts"
	sides      bool  // it is that of each side
	told       bool  // what follows is about parts of it
	inWork     bool  // that of the stitches that are worked from here on
	between    bool  // that between two markers
	part       bool  // the count is of a part of the stitches
	unwrapped  bool  // it is that between the wraps of short rows
	named      bool  // that of a gusset or a thumb, "13 gusset sts"
	needles    bool  // the count is that of each needle
	eachNeedle bool  // the second count is
	total      []int // "2 sts dec; 38 sts"
	changeAt   span  // the numbers before it
	second     []int // "38 sts, 2 sts dec": the change, if it is one
	secondAt   span

	secondNamed bool // the second is that of a gusset or a thumb
	secondSides bool // of each side

	parts   []partOf // "40 sts: 20 front, 20 back": all that it is made of
	partsAt span
}

// What the words after a claim say of it.
var (
	claimUp   = wordings("inc", "inc'd", "incd", "increased", "added", "more")
	claimDown = wordings("dec", "dec'd", "decd", "decreased", "bound off", "fewer", "cast off", "less")
	claimPart = wordings("each", "per", "either", "before", "after", "in patt", "for front", "for back", "on holder",
		"on hold", "held", "unworked", "worked")
	claimInWork = wordings("in work", "in this part", "on needle for this side")
	claimGusset = wordings("in gusset", "in the gusset", "in thumb gusset", "in the thumb gusset", "in thumb", "in the thumb", "for gusset",
		"for the gusset", "for thumb gusset", "for the thumb gusset", "for thumb", "for the thumb")
	claimNeedles = wordings("on each needle", "per needle", "each needle", "on each dpn", "on each of", "on every needle", "per dpn",
		"on each of them", "on each")
	claimSides = wordings("each side of the split", "each side of the opening", "each side of the neck", "each side",
		"on each side", "for each side", "for each shoulder", "each shoulder", "at each side",
		"on either side")
	claimWhole = wordings("for each size", "in each size", "at end of each", "after each", "for back and front", "for front and back")
)

// claimTail reads on to the end of a claim: to its closer, or over the words that
// belong to it.
func (p *parser) claimTail(tail *claimTail, closer string) {
	for !p.claimEnds(closer) {
		switch {
		case p.skipPhrase(claimWhole):
		case p.peek().kind == tokenNumber && p.claimNumber(tail, closer):
		case p.skipPhrase(claimNeedles):
			tail.eachNeedle = tail.second != nil && tail.sign == 0
			tail.needles = !tail.told && !tail.eachNeedle
		case p.skipPhrase(claimUp):
			tail.sign = 1
		case p.skipPhrase(claimDown):
			tail.sign = -1
		case p.claimOfPart(tail):
			tail.part = true
		default:
			p.next++
		}
	}
}

// claimNumber reads a number in a claim: of a part that is told beside it, a second count,
// or the total after a change.
func (p *parser) claimNumber(tail *claimTail, closer string) bool {
	words := p.claimWords(p.next)
	beside := closer != "" && p.tokens[p.next-1].is(":", ";", ",")
	if beside && (tail.parts == nil && tail.sign == 0 && p.claimedParts(tail, closer) || p.totalByComma(tail)) {
		return true
	}
	return p.claimNumberAlone(tail, closer, words, beside)
}

// claimNumberAlone reads a number that is none of several.
func (p *parser) claimNumberAlone(tail *claimTail, closer string, words, beside bool) bool {
	from := p.peek().span
	switch {
	case !words && beside:
		p.numberBeside(tail)
		return true
	case !words || tail.second != nil:
		return false
	case tail.sign == 0 && closer != "":
		tail.second = p.number()
		tail.secondAt = from.to(p.last())
		tail.secondNamed = p.peek().is("gusset", "thumb") && p.acceptEnd(p.ofPart(p.next))
	case tail.sign != 0 && tail.total == nil:
		tail.total = p.number()
	default:
		return false
	}
	p.next++
	return true
}

// totalByComma reads the count after a change.
func (p *parser) totalByComma(tail *claimTail) bool {
	if tail.sign == 0 || tail.total != nil {
		return false
	}
	tail.total = p.sizesByComma()
	return tail.total != nil
}

// sizesByComma reads "94, 102 sts", a number for each size, after the change of "(1 st dec; 94, 102 sts)"; nil, and
// nothing taken, if that is not what comes next.
func (p *parser) sizesByComma() []int {
	if p.sizes < 2 {
		return nil
	}
	var numbers []int
	i := p.next
	for ; len(numbers) < p.sizes; i++ {
		n := -1
		if t := &p.tokens[i]; t.kind == tokenNumber && t.number <= MaxNumber {
			n = int(t.number)
		} else if !t.is("-") {
			return nil
		}
		if numbers = append(numbers, n); len(numbers) < p.sizes {
			if i++; !p.tokens[i].is(",") {
				return nil
			}
		}
	}
	if !p.tokens[i].stitches() {
		return nil
	}
	p.next = i + 1
	return numbers
}

// numberBeside reads a number without "sts" in the brackets of a claim: of a change, "(60 sts, 2
// dec)", of needles, or of a part that is only told.
func (p *parser) numberBeside(tail *claimTail) {
	from := p.peek().span
	n := p.number()
	if n != nil && tail.sign == 0 && tail.second == nil && (p.phraseEnd(p.next, claimUp) != 0 || p.phraseEnd(p.next, claimDown) != 0 ||
		p.phraseEnd(p.next, claimNeedles) != 0) {
		tail.second, tail.secondAt = n, from.to(p.last())
		return
	}
	tail.told = true
}

// claimEnds reports whether a claim ends here.
func (p *parser) claimEnds(closer string) bool {
	p.looked++
	t := p.peek()
	switch {
	case t.kind == tokenEnd, t.kind == tokenNewline && (t.number > 1 || p.labelEnd(p.next+1) != 0):
		return true
	case closer != "":
		return t.is(closer)
	}
	return !p.claimGoesOn()
}

// claimOfPart passes over words which say that a claim is about some of the stitches.
func (p *parser) claimOfPart(tail *claimTail) bool {
	switch {
	case p.skipPhrase(claimSides):
		tail.sides, tail.secondSides = tail.second == nil, tail.second != nil
	case p.skipPhrase(claimGusset):
		tail.named = true
	case p.skipPhrase(claimInWork):
		tail.inWork = true
	case p.accept("unwrapped"), p.acceptAny(betweenTurns):
		p.acceptAny(inMiddle)
		tail.unwrapped = true
	case p.accept("between"):
		tail.between = true
	default:
		return p.skipPhrase(claimPart)
	}
	return true
}

func (p *parser) skipPhrase(phrases [][]string) bool {
	end := p.phraseEnd(p.next, phrases)
	if end != 0 {
		p.next = end
	}
	return end != 0
}

// claimGoesOn reports whether the next token still belongs to a claim without
// brackets.
func (p *parser) claimGoesOn() bool {
	t := p.peek()
	switch {
	case t.kind == tokenNumber:
		return false
	case t.is("(", "["): // "96 sts (48 each side)"
		return false
	case t.kind == tokenMark || t.kind == tokenStar || t.kind == tokenNewline:
		return false
	}
	return !t.among("rep repeat and then turn to at using with pm place join tog") &&
		(!p.notation(t.text) || t.is("inc", "dec", "m")) && !t.row()
}
