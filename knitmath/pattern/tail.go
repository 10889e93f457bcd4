package pattern

import (
	"math/bits"
	"unicode"

	"example.com/knitmath/knitmath/draft"
)

// tail reads what follows a direction in its sentence: its claim, the side of its
// last row, and words of how, with what and where, which change no count. It stops
// before the next direction or row and reports whether one follows. Whatever it
// does not understand it asks about.
func (p *parser) tail(line *Line) bool {
	info := &line.info
	if info.kind == linePassed {
		from := p.peek().span
		defer func() {
			if last := p.last(); last.end > from.start && info.kind == linePassed {
				p.passed(from.to(last))
			}
		}()
	}
	for info.kind != lineUnread {
		p.looked++
		first := p.next
		switch p.tailPart(line) {
		case tailNext:
			return true
		case tailEnds:
			return false
		}
		if p.next == first {
			p.next++
		}
	}
	return false
}

// tailKind is what comes after a part of a tail.
type tailKind uint8

const (
	tailMore tailKind = iota // more of the tail
	tailNext                 // the next direction or row
	tailEnds                 // another sentence, or nothing
)

// tailPart reads one part of a tail: a claim, a stop, or words.
func (p *parser) tailPart(line *Line) tailKind {
	info := &line.info
	t := p.peek()
	switch {
	case t.is("(") && p.shapedInLast():
		p.next++
		return tailNext
	case t.is(")") && p.shapedBracket:
		p.shapedBracket = false
		p.next++
	case p.partsInTail(line), p.holesSaid(line):
	case p.claimInTail():
		if !p.claim(line) {
			info.kind = lineUnread
		}
	case t.kind == tokenNewline && p.wrapped():
		p.next++
	case p.endsAt(p.next), p.bracketCloses(), p.anotherAfterClaim(line):
		return p.tailStop()
	case info.kind == lineOff && p.offAsFollows(info):
	case t.among(", ; - and then : & but or ="):
		return p.tailJoined(info)
	case p.changesMeanwhile(info):
		return tailNext
	default:
		p.tailWords(line)
	}
	return tailMore
}

// tailStop ends a tail, but for a full stop with a claim after it, and before the end of a bracket.
func (p *parser) tailStop() tailKind {
	if p.bracketCloses() {
		return tailNext
	}
	if p.accept(".") {
		if p.claimAhead() || p.needlesAhead(p.next) || p.endsInSentence(p.next) {
			return tailMore
		}
		p.next--
	}
	return tailEnds
}

// anotherAfterClaim reports whether a sentence begins after a count in brackets, without a full stop between them.
func (p *parser) anotherAfterClaim(line *Line) bool {
	return p.last1().is(")") && line.ClaimedStitches != nil && p.anotherAt(p.next)
}

// claimInTail reports whether a claim comes next, and no list in brackets.
func (p *parser) claimInTail() bool {
	return p.claimAhead() && !(p.peek().is("(") && p.listFollows())
}

// tailJoined passes over a comma, an "and" and the like.
func (p *parser) tailJoined(info *lineInfo) tailKind {
	p.next++
	if info.kind == lineEven || info.kind == linePlain {
		p.changedMeanwhile(info)
	}
	if p.needlesAhead(p.next) {
		return tailMore
	}
	if info.kind == lineEven && p.placedRib() || p.changesGoOn(info) {
		return tailMore
	}
	if info.kind == lineBeginning && p.acceptAny(restOfRow) { // which is worked without its being said, too
		return tailMore
	}
	if info.kind == linePassed && p.patternBegins(p.next) {
		p.next++
		return tailMore
	}
	p.acceptAny(shapingLeads)
	if p.edgesKept(p.next) == 0 && p.nextClause() || p.everyRowNext(info) {
		return tailNext
	}
	return tailMore
}

// everyRowNext reports whether what is done in every row follows a repeat that goes on until some count.
func (p *parser) everyRowNext(info *lineInfo) bool {
	return info.kind == lineRepeat && info.until != nil && p.everyRowEnd(p.next) != 0
}

// tailWords reads words of where and how.
func (p *parser) tailWords(line *Line) {
	info := &line.info
	t := p.peek()
	switch {
	case p.sizesInTail(info), p.wrapsInTail(info), p.edgesInTail(), t.kind == tokenWord && p.acceptEnd(p.colourEnd(p.next)):
	case p.dividedInTail(t, info), p.arrangedInTail(info):
	case p.flatTold():
		info.turns = constructionFlat
	case p.roundTold():
		info.turns = constructionRound
	case p.placedInTail(line):
	case p.fewerInTail(info), p.changesGoOn(info), p.acceptEnd(p.colourAtCount(p.next)),
		p.acceptAny(sameWay), p.acceptAny(heldTail), info.kind == lineCastOn && p.acceptEnd(p.methodEnd(p.next)),
		p.acceptEnd(p.newIntoPattern()):
	case p.keptInTail(t):
		p.toClause()
	case t.among("ending end ends finishing finish ended after"), p.lastOneTold():
		p.ending(info)
	case t.among("beg beginning starting start begin"):
		p.starting()
	case t.is("(", "[") && p.acceptEnd(p.remarkEnd(p.next)):
	default:
		p.tailTold(line)
	}
}

// dividedInTail reads "divided evenly over 4 needles".
func (p *parser) dividedInTail(t *token, info *lineInfo) bool {
	return t.among("divided distributed arranged split spread dividing distributing evenly") && p.overNeedles(info)
}

// keptInTail reports whether it is told that something is kept as it is, or that a marker is placed or taken away.
func (p *parser) keptInTail(t *token) bool {
	return t.is("keeping", "maintaining") && p.keptAsSet() ||
		t.among("placing removing slipping dropping discarding taking") && p.markerNext()
}

// edgesInTail passes over "keeping 3 sts at each edge in garter st".
func (p *parser) edgesInTail() bool {
	if !p.peek().among("keeping with maintaining working knitting having k knit") {
		return false
	}
	end := p.edgesKept(p.next)
	if end != 0 {
		p.passTail(end)
	}
	return end != 0
}

// tailTold reads what is told beside a direction, and asks about the rest.
func (p *parser) tailTold(line *Line) {
	info := &line.info
	switch {
	case p.moreRows(info), p.stripesInTail(info):
	case (info.kind == lineEven || info.kind == linePlain) && p.acrossAll(line):
	case p.rateInTail(), p.whichInTail(info):
	case p.acceptEnd(p.firstRowTold()), p.acceptEnd(p.rowsBetween()), p.acceptEnd(p.gapClosed(p.next)):
	case p.acceptEnd(p.rowsToldAt(p.next)): // which is compared, see rowsClaims
	case info.kind == lineEven && p.evenInTail(info):
	case info.kind != linePassed && p.orToLength(info.open):
	case info.kind == linePassed && p.changedTo(), p.toldBeside(), p.harmlessWord(info.kind), p.afterWith():
	default:
		p.asked(info)
	}
}

// orToLength passes over a length in the place of a number of rows, "work 20 rows, or until it fits", "or to desired length", and
// the length of rows whose number is open, after what is told beside them.
func (p *parser) orToLength(open bool) bool {
	led := p.peek().is("until", "till") || p.peek().is("to") && p.last1().is("or") || open && p.peek().is("for")
	if !led || !p.measureAhead(p.next+1) {
		return false
	}
	p.openLength()
	return true
}

// changedTo passes over the "St st (every rnd k)" of "change to St st".
func (p *parser) changedTo() bool {
	if !p.acceptEnd(p.fabricEnd(p.next)) {
		return false
	}
	p.fabricBracket(nil)
	return true
}

// whichInTail passes over what is told of stitches after words that work none: which they are, or that
// they stay where they are.
func (p *parser) whichInTail(info *lineInfo) bool {
	return info.kind == linePassed && (p.whichStitch() || p.acceptEnd(p.staysHeld()))
}

// evenInTail reads how far rows are worked even, or passes over "as for Back" where that was said.
func (p *parser) evenInTail(info *lineInfo) bool {
	if p.evenFor(info) {
		return true
	}
	end := p.asOnPart()
	if info.counts == nil && !(p.tokens[end].is(",") && p.tokens[end+1].among("increasing decreasing inc dec")) {
		return false
	}
	if end != 0 {
		p.passTail(end)
	}
	return end != 0
}

// rateInTail passes over "picking up 3 sts for every 4 rows".
func (p *parser) rateInTail() bool {
	if !p.peek().is("pick", "picking") {
		return false
	}
	end := p.rateAt(p.pickUpTo(p.next))
	if end != 0 {
		p.passTail(end)
	}
	return end != 0
}

// asOnPart is the index after "as for Back", "as on the sleeves": how rows look whose number has been
// said; 0 if that is not what stands here.
func (p *parser) asOnPart() int {
	if i := p.asOnPartAt(p.next); i != 0 && p.clauseStopsAt(i) {
		return i
	}
	return 0
}

// asOnPartAt is the index after such words at token i, whatever follows.
func (p *parser) asOnPartAt(i int) int {
	i = p.phraseEnd(i, asOn)
	for p.tokens[i].among("the a left right first second other") {
		i++
	}
	if i == 0 || !draft.Part(p.tokens[i].text) {
		return 0
	}
	return i + 1
}

var asOn = wordings("as for", "as on", "as given for", "same as", "the same as", "as in", "exactly as for", "just as for")

// passTail passes over words up to token end.
func (p *parser) passTail(end int) {
	from := p.peek().span
	p.next = end
	p.passed(from.to(p.last()))
}

var sameTimes = wordings("at the same time", "at same time", "simultaneously")

// listFollows reports whether brackets hold the numbers of other sizes.
func (p *parser) listFollows() bool {
	end, n := p.listEnd(p.next)
	return end != 0 && n > 1 && n != p.sizes && n != bits.OnesCount32(p.forSizes)
}

// nextClause reports whether a direction or a row begins after a comma or "and".
func (p *parser) nextClause() bool {
	t := p.peek()
	if p.peek().is("and", "then", "now") {
		save := p.next
		p.next++
		ok := p.nextClause()
		p.next = save
		return ok
	}
	if t.kind == tokenWord && leadIns[t.text] && p.leadEnd(p.next) != 0 {
		return true
	}
	return p.labelEnd(p.next) != 0 || p.calledNext() || p.moreEdgesAt() || p.pickedUpAt(p.next) ||
		p.bareRepeatAt(p.next) || p.stripesAt(p.next) ||
		p.directionAhead() || p.startsItem(p.next) && !t.among("inc dec m rib") &&
		!(t.is("(", "[") && p.remarkEnd(p.next) != 0)
}

// wrapped reports whether a sentence goes on after a line break.
func (p *parser) wrapped() bool {
	next := p.ahead(1)
	if p.peek().number > 1 || next.kind == tokenEnd || next.kind == tokenNewline || p.labelEnd(p.next+1) != 0 || p.verbAt(p.next+1) {
		return false
	}
	c := rune(p.found.source[next.start])
	return unicode.IsLower(c) && draft.Manner(next.text) && !p.rowsAlone(p.next+1)
}

// rowsAlone reports whether "knit 4 rows" stands at token i.
func (p *parser) rowsAlone(i int) bool {
	return p.tokens[i].among("knit purl k p work") && p.tokens[i+1].kind == tokenNumber && p.tokens[i+2].row()
}

// counting are words of how often, how many or when: they change a count where they
// are not understood.
var counting = map[string]bool{"few": true, "several": true, "some": true, "many": true, "every": true, "each": true, "alternate": true,
	"alternately": true, "another": true, "further": true, "again": true, "more": true, "once": true, "twice": true, "additional": true,
	"simultaneously": true, "same-time": true, "other": true, "half": true, "double": true, "opposite": true, "reversing": true,
	"accordingly": true, "respectively": true}

// untold reports whether a phrase that says how often stands at token i: it is
// followed only where it was expected.
func (p *parser) untold(i int) bool { return p.phraseEnd(i, untoldPhrases) != 0 }

var untoldPhrases = wordings("at the same time", "at same time", "a few", "as many", "as needed", "as necessary", "as desired",
	"every row", "each row", "every rnd", "every other", "every rs", "every ws", "and at", "at each end", "each end", "each side of",
	"evenly spread", "spread evenly", "over the length", "evenly spaced over", "as for", "to match", "as on", "other side", "second side",
	"on each side", "as before but", "shaping the", "shaping sides", "shaping side", "shaping armholes", "shaping armhole", "shaping neck",
	"shaping raglan", "shaping waist", "shaping sleeve", "shaping as", "shaping at", "shaping both", "shaping each")

func (p *parser) pass1() bool {
	p.next++
	return true
}

// asked asks about words after a direction that were not understood, up to the end
// of their clause.
func (p *parser) asked(info *lineInfo) {
	from := p.peek().span
	for {
		p.next++
		t := p.peek()
		if p.endsAt(p.next) || t.is(",", ";") || t.is("then") {
			break
		}
	}
	p.ask(ReasonUnread, from.to(p.last()), "not understood here, and it may change the count")
	if info.claimAt.end <= from.start && p.claimStandsAlone(info) {
		for !p.endsAt(p.next) { // what was read is complete, and its claim is compared; the counts go on as it says
			p.next++
		}
		return
	}
	if c := p.found.source[from.start]; info.kind != lineCastOn || c >= '0' && c <= '9' { // how many are cast on has been said
		info.kind = lineUnread
	}
}
