package pattern

import (
	"example.com/knitmath/knitmath/draft"
)

// atSameTime passes over "at the same time", "while" before a change that is made in the rows that
// were just said.
func (p *parser) atSameTime() {
	p.sameTime = false
	n := p.next
	for p.tokens[n].is("and", ",") {
		n++
	}
	end := n
	if p.tokens[end].among("while whilst but also") {
		end++
	}
	if phrase := p.phraseEnd(end, sameTimes); phrase != 0 {
		end = phrase
	}
	if end == n {
		return
	}
	if p.tokens[end].is(",") {
		end++
	}
	if lead := p.phraseEnd(end, shapingLeads); lead != 0 {
		end = lead
	}
	if p.tokens[end].among("dec inc decrease increase decreasing increasing") {
		p.next, p.sameTime = end, true
	}
}

// changedMeanwhile passes over "at the same time" after rows that are worked even; of rows whose number is open a change
// is none among them.
func (p *parser) changedMeanwhile(info *lineInfo) {
	if info.counts != nil || info.open {
		p.atSameTime()
		p.sameTime = p.sameTime && info.counts != nil
	}
}

// changesMeanwhile reports whether a change that is made in the rows that were just said follows them without
// a comma, "knit 6 rows decreasing 1 st at each end of RS rows", "work 8 rows while dec 1 st at beg of every row".
func (p *parser) changesMeanwhile(info *lineInfo) bool {
	if info.counts == nil || info.kind != lineEven && info.kind != linePlain {
		return false
	}
	if p.peek().is("while", "whilst") {
		p.atSameTime()
		return p.sameTime
	}
	return p.peek().is("decreasing", "increasing") && p.nextClause()
}

// shapingLeads stand before a change that is made in the rows that follow.
var shapingLeads = wordings("shaping sides by", "shape sides by", "shaping side seams by",
	"shaping the sides by", "shaping side edges by", "shaping raglan by",
	"shaping armholes by", "shaping neck by", "shaping sleeve by", "shaping top by", "shaping by")

// sameWay are words after a direction that it is done as what comes before.
var sameWay = wordings("in the same way", "in the same manner", "in same manner", "in same way", "in this manner", "in this way",
	"in like manner", "in a similar manner", "in a similar way", "in established manner", "in the established manner", "thus", "as before",
	"as you did before", "in the same fashion", "in this fashion", "in similar manner", "just as before", "exactly as before",
	"in the usual way", "in the usual manner")

// restOfRow are words after stitches that are bound off at the beginning of rows: how those go on.
var restOfRow = restsOfRow()

func restsOfRow() [][]string {
	var list [][]string
	for _, verb := range []string{"work", "k", "knit", "p", "purl", "patt", "rib", "work in patt", "work in pattern", "work even", "continue",
		"then work", "then knit"} {
		list = append(list, wordings(verb+" to end", verb+" to end of row", verb+" to end of each row", verb+" to the end",
			verb+" to the end of the row", verb+" to the end of row", verb+" across", verb+" to end of each", verb+" rem sts")...)
	}
	return list
}

// heldTail are words after a direction that are about its yarn, or forbid what changes the
// count.
var heldTail = wordings("over two needles held together", "over 2 needles held together", "over two needles", "over 2 needles",
	"provisionally if the ends are to be grafted", "unworked", "as they are", "for later", "for now",
	"for sewing up", "for sewing", "for seaming", "to sew up", "for the seam", "for making up",
	"held double", "held together", "held single", "do not turn",
	"move the mark up with the work", "moving the mark up with the work", "move the marker up as you work", "moving the marker up as you work",
	"move marker up as you work", "moving marker up as you work", "move the marker up with the work", "do not break yarn",
	"do not cut yarn", "do not cut the yarn", "do not break the yarn", "do not fasten off", "do not bo", "do not bind off",
	"do not cast off", "leave sts on needle", "leave sts on the needle", "leave the sts on needle", "leave the sts on the needle",
	"leaving sts on needle", "leaving sts on the needle", "leaving the sts on the needle", "leave all sts on needle",
	"leaving the others on a spare needle", "leaving the rest on a spare needle",
	"leaving the others on a holder", "leaving the rest on a holder", "leaving the other on a spare needle")

// unjoined says that what was cast on is worked back and forth.
var unjoined = wordings("do not join", "but do not join", "without joining", "do not join in the rnd", "do not join in the round",
	"but do not join in the round")

// flatTold reads "do not join", "working back and forth in rows" after a direction: what follows is worked so.
func (p *parser) flatTold() bool {
	if p.acceptAny(unjoined) {
		return true
	}
	i := p.next
	if p.tokens[i].among("working worked work knitting") {
		i++
	}
	if !p.tokens[i].is("back") || !p.tokens[i+1].is("and") || !p.tokens[i+2].is("forth", "forwards", "forward") {
		return false
	}
	if i += 3; p.tokens[i].is("in") && p.tokens[i+1].is("rows") {
		i += 2
	}
	if !p.endsClause(i) {
		return false
	}
	p.next = i
	return true
}

// keptAsSet reports whether "keeping rib as set" or "keeping patt correct" comes next.
func (p *parser) keptAsSet() bool {
	for n := 1; n < 8; n++ {
		t := p.ahead(n)
		if t.among("set correct est established sequence") {
			return true
		}
		if t.kind != tokenWord || alarming(t.text) || t.stitches() {
			return false
		}
	}
	return false
}

// toClause passes over all up to a comma or the end of the sentence.
func (p *parser) toClause() {
	from := p.peek().span
	for !p.endsAt(p.next) && !p.peek().is(",", ";", "(") && (!p.claimAhead() || p.tokens[p.next-1].among("every each after before")) {
		p.next++
	}
	for p.remarkEnd(p.next) != 0 {
		p.next = p.remarkEnd(p.next)
	}
	p.passed(from.to(p.last()))
}

// afterWith passes over the words that name yarn or needle after "with" or "using",
// up to a comma or the end.
func (p *parser) afterWith() bool {
	if !p.peek().among("with using for along onto over around across on from at in to into") ||
		p.phraseEnd(p.next, sameTimes) != 0 {
		return false
	}
	i := p.next + 1
	for ; i < p.next+14 && !p.endsAt(i) && !p.tokens[i].among(", ; ( and then"); i++ {
		if p.changesAfterWith(i) {
			return false
		}
		if end := p.measuredEnd(i); end != 0 { // with the numbers of all sizes
			i = end - 1
		}
	}
	if i < p.next+2 {
		return false
	}
	p.next = i
	return true
}

// changesAfterWith reports whether token i, after "with" and the like, may change a count.
func (p *parser) changesAfterWith(i int) bool {
	t := &p.tokens[i]
	switch t.kind {
	case tokenStar:
		return true
	case tokenNumber:
		return !p.measured(i)
	case tokenWord:
		return alarming(t.text) && !t.is("holder", "holders") || p.alarmingStitch(i, p.next, true)
	}
	return false
}

// edgeWorked reports whether "bind off", "cast on" comes next after a direction that is about no such edge: it may be an order.
func (p *parser) edgeWorked(kind lineKind) bool {
	return p.peek().is("bind", "cast") && p.ahead(1).is("off", "on") && kind != lineOff && kind != lineCastOn
}

// harmlessWord passes over a word of how, with what or where, and over a length. After
// a direction that works no stitch any other word may follow, unless it is one that may
// change a count; after one that works stitches nothing is passed over that is not known.
func (p *parser) harmlessWord(kind lineKind) bool {
	t := p.peek()
	switch {
	case p.acceptEnd(p.measuredEnd(p.next)):
		return true
	case t.kind == tokenNumber:
		return false
	case t.among("( [ \" / % ' +"):
		return t.among("\" / % ' +") && p.pass1()
	case t.kind != tokenWord, p.edgeWorked(kind):
		return false
	case p.untold(p.next):
		return false
	}
	if draft.Manner(t.text) || kind == linePassed && !p.notation(t.text) && !reserved[t.text] && !alarming(t.text) &&
		!directing[t.text] && len(t.text) > 3 && !counting[t.text] {
		p.next++
		return true
	}
	return false
}

// roundTold reads "joined in the round", "working in rnds" behind a direction: what it says is worked so.
func (p *parser) roundTold() bool {
	i := p.next
	for p.tokens[i].among("joined joining working worked knitting to work") {
		i++
	}
	if i == p.next || !p.acceptedAt(&i, "in", "into") {
		return false
	}
	p.acceptedAt(&i, "the", "a")
	if !p.tokens[i].among("rnd round rnds rounds") || !p.endsClause(i+1) {
		return false
	}
	p.next = i + 1
	return true
}
