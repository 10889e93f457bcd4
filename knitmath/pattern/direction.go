package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// direction reads one direction, which is no row of steps, and not what follows it.
// It takes nothing if there is none.
func (p *parser) direction(line *Line) bool {
	t := p.peek()
	if t.kind != tokenWord && p.ribEnd(p.next) == 0 && p.ribSpeltEnd(p.next) == 0 && p.rowsFirstEnd(p.next) == 0 &&
		!p.bareRepeatAt(p.next) && !p.stripesAt(p.next) || p.phraseEnd(p.next, seeElsewhere) != 0 {
		return false
	}
	save, found, before := p.next, p.found.mark(), line.info
	for _, read := range [...]reader{(*parser).stripesHere, (*parser).rowsAreRepeated, (*parser).calledInBracket, (*parser).orderSaid,
		(*parser).halfForHeel, (*parser).inRoundAgain, (*parser).fabricOfLabel, (*parser).ribSpelt, (*parser).rowsInTurn,
		(*parser).threeNeedle, (*parser).ontoNeedle, (*parser).fabricRows, (*parser).rowsFirst, (*parser).bareRepeat,
		(*parser).charted, (*parser).contInThisWay, (*parser).thenEveryRow, (*parser).changesLead, (*parser).colourAtCountTold,
		(*parser).patternReps, (*parser).changeThisWay, (*parser).onTheseAlone,
		(*parser).joinsPlaced, (*parser).heldTold, (*parser).castOnFreed, (*parser).putOn} {
		if read(p, line) {
			return true
		}
		p.next, line.info = save, before
		p.found.rewind(found)
	}
	for _, read := range p.readers(t) {
		if read(p, line) {
			return true
		}
		p.next, line.info = save, before
		p.found.rewind(found)
	}
	return false
}

// directionAhead reports whether a direction begins with the next token. It reads it
// on trial, and takes nothing.
func (p *parser) directionAhead() bool {
	if p.peek().kind != tokenWord && p.ribEnd(p.next) == 0 && p.rowsFirstEnd(p.next) == 0 || p.trying {
		return false
	}
	save := p.next
	defer func() { p.next = save }()
	for p.accept("now", "then") {
	}
	p.auxiliary()
	if _, ok := directs[p.peek().text]; !ok && !draft.Harmless(p.peek().text) {
		end, _ := p.fabricRowsEnd(p.next)
		return end != 0
	}
	p.trying = true
	found, listed, named := p.found.mark(), p.listed, p.named
	p.trial = Line{}
	ok := p.direction(&p.trial)
	p.looked += p.next - save
	p.listed, p.named, p.trying = listed, named, false
	p.found.rewind(found)
	return ok
}

type reader = func(*parser, *Line) bool

// kindOfVerb is which directions a verb may begin.
type kindOfVerb uint16

const (
	verbRepeat kindOfVerb = 1 << iota
	verbEven
	verbCast
	verbBind
	verbShape
	verbHold
	verbPick
	verbJoin
	verbPass
	verbOff
	verbTake
)

// directs are the verbs of directions.
var directs = map[string]kindOfVerb{
	"rep": verbRepeat, "repeat": verbRepeat, "alternate": verbRepeat, "alternately": verbRepeat, "as": verbRepeat, "same": verbRepeat,
	"work": verbShape | verbRepeat | verbEven | verbHold, "cont": verbShape | verbRepeat | verbEven,
	"continue": verbShape | verbRepeat | verbEven,
	"proceed":  verbRepeat | verbEven, "keep": verbRepeat | verbEven, "rib": verbShape | verbEven,
	"knit": verbShape | verbRepeat | verbEven, "purl": verbShape | verbEven, "k": verbShape | verbEven, "p": verbShape | verbEven,
	"even": verbEven, "patt": verbEven, "for": verbEven, "over": verbEven, "without": verbEven,
	"co": verbCast, "cable-cast": verbCast, "loop-cast": verbCast, "cast": verbCast | verbBind,
	"cast-on": verbCast, "provisionally": verbCast, "loosely": verbCast | verbBind,
	"bo": verbBind, "at": verbBind, "bind": verbBind, "three-needle": verbBind, "3-needle": verbBind, "picot": verbBind,
	"k2tog": verbShape, "p2tog": verbShape, "ssk": verbShape, "skp": verbShape, "skpo": verbShape,
	"dec": verbShape, "inc": verbShape, "decrease": verbShape, "increase": verbShape, "shape": verbShape, "decreasing": verbShape,
	"increasing": verbShape,
	"place":      verbHold | verbPass, "slip": verbHold | verbPass, "sl": verbHold | verbPass, "put": verbHold, "leave": verbHold,
	"leaving": verbHold, "placing": verbHold, "putting": verbHold, "slipping": verbHold,
	"transfer": verbHold,
	"move":     verbHold, "return": verbHold, "pm": verbPass, "replace": verbHold | verbPass, "remove": verbPass,
	"pick": verbPick, "with": verbPick, "take": verbTake | verbShape, "narrow": verbShape,
	"join": verbJoin, "rejoin": verbJoin, "attach": verbJoin,
	"divide": verbPass, "distribute": verbPass, "arrange": verbPass, "turn": verbPass, "do": verbPass, "rotate": verbPass,
	"reattach": verbJoin,
	"set":      verbCast | verbHold | verbPass, "lay": verbHold | verbPass, "reserve": verbHold, "setting": verbHold,
	"graft": verbOff, "kitchener": verbOff, "draw": verbOff, "thread": verbOff,
	"break": verbOff | verbPass, "cut": verbOff | verbPass,
	"pull": verbOff | verbPass, "fasten": verbOff | verbPass, "run": verbOff, "gather": verbOff,
}

// readers are the rules that may read a direction that begins with a verb.
func (p *parser) readers(t *token) []reader {
	kinds, ok := directs[t.text]
	if !ok {
		if draft.Harmless(t.text) {
			return []reader{(*parser).passing}
		}
		return nil
	}
	var list []reader
	for _, k := range []struct {
		kind kindOfVerb
		read reader
	}{{verbShape, (*parser).shaping}, {verbRepeat, (*parser).repeating}, {verbEven, (*parser).even}, {verbCast, (*parser).castingOn},
		{verbBind, (*parser).bindingOff}, {verbBind, (*parser).edgeTotals}, {verbHold, (*parser).holding},
		{verbPick, (*parser).pickingUp}, {verbJoin, (*parser).joining},
		{verbOff, (*parser).takingOff}, {verbTake, (*parser).takingUp}, {verbPass, (*parser).passing}} {
		if kinds&k.kind != 0 {
			list = append(list, k.read)
		}
	}
	return list
}

// passing passes over what changes no stitch: "Change to larger needles", "Weave in
// ends", "Divide sts over 3 needles (16 sts on each needle)", "Turn".
func (p *parser) passing(line *Line) bool {
	from := p.peek().span
	first := p.peek()
	p.next++
	if end := p.calmEnd(first); end != 0 {
		p.next--
		p.passedTo(line, end)
		return true
	}
	ok := true
	switch first.text {
	case "pm":
		ok = p.markersPlaced(line)
	case "turn", "do", "rotate":
		ok = p.turnWords(first, line)
	case "remove":
		ok = p.scrapYarn() || p.marker()
	case "place", "replace", "slip", "sl":
		if ok = p.marker(); ok && first.is("place") {
			p.whereYouLike(from)
			p.besideCentre(line)
			p.afterStitches()
		}
	case "divide", "distribute", "arrange":
		ok = p.arranged(line) || p.dividing(line)
		p.dividedInto(line)
	}
	if !ok {
		return false
	}
	line.info.fastens = first.text == "fasten" && p.peek().is("off")
	line.info.kind = linePassed
	p.passed(from.to(p.last()))
	return true
}

// fromEachEnd is where two markers are that lie as far from either end.
var fromEachEnd = wordings("from each end", "from either end", "from both ends", "from each edge", "from both edges", "from each side",
	"from either side", "from both sides")

// afterStitches passes over "after 85 sts" behind a marker, which says where it lies, and not how many there are.
func (p *parser) afterStitches() {
	if end, _ := p.sizedEnd(p.next + 1); p.peek().is("after", "before") && end != 0 && p.tokens[end].stitches() {
		p.next++
		p.number()
		p.next++
	}
}

// dividing passes over "the 48 sts evenly over 3 needles", and not over "for the front", of
// which the rows after it say how.
func (p *parser) dividing(line *Line) bool {
	p.acceptAmong("the all rem remaining")
	if p.accept("for", "into") && p.peek().among("the front back neck shoulders") {
		p.accept("the")
		p.next++
		if !p.endsAt(p.next) && !p.peek().is(":") {
			return false
		}
	}
	if from, n := p.peek().span, p.number(); n != nil && p.accept("sts", "stitches") {
		line.ClaimedStitches, line.info.claimAt = n, from.to(p.last())
	}
	p.accept("sts", "stitches")
	p.next-- // as if after a verb
	if !p.overNeedles(&line.info) {
		p.next++
	}
	return true
}

// turnWords passes over "turn the work", "do not join".
func (p *parser) turnWords(first *token, line *Line) bool {
	p.accept("the")
	p.accept("not")
	if first.text == "do" && p.tokens[p.next-1].is("not") {
		if p.accept("join") && !p.peek().among("yarn new the second a") {
			line.info.turns = constructionFlat
		}
		p.acceptAmong("break cut fasten bo")
		p.acceptAll("bind", "off")
		p.acceptAll("cast", "off")
		p.accept("off", "yarn", "the")
		p.accept("yarn", "working")
	}
	p.accept("turn", "work", "piece")
	p.acceptAll("a", "quarter", "turn")
	for p.acceptAmong("90 degrees clockwise anticlockwise counterclockwise sideways a quarter to the right " +
		"left") {
	}
	if first.text == "turn" && (p.onlyRows || !p.clauseEnds()) {
		return false
	}
	line.info.turnsWork = first.text == "turn"
	return true
}

// eitherSide are the places of two markers.
var eitherSide = wordings("on either side of", "at either side of", "on each side of", "at each side of", "either side of", "each side of",
	"on both sides of", "at both sides of")

// scrapYarn passes over "the waste yarn", "provisional cast-on".
func (p *parser) scrapYarn() bool {
	save := p.next
	p.accept("the")
	if !p.acceptAmong("waste scrap provisional contrast") {
		p.next = save
		return false
	}
	for p.acceptAmong("yarn cast-on of from the edge") {
	}
	return true
}

// clauseEnds reports whether nothing more belongs to a direction.
func (p *parser) clauseEnds() bool {
	return p.endsAt(p.next) || p.peek().among(", ; and then") || p.peek().is("-") && !p.noneFirst(p.next) || p.claimAhead()
}

func sideText(s stitch.Side) string {
	if s == stitch.WrongSide {
		return "wrong side"
	}
	return "right side"
}
