package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// Stitches are told in words that follow few patterns, whatever the words between are: into which loops of which stitch
// needles go, which strand is lifted, what is passed over what, how many stitches cross. Each pattern is read here, and
// nowhere else. Common practice.

// stitchPhrase is the stitch that is told in words at token i, and the index after them, 0 if none is.
func (p *parser) stitchPhrase(i int) (m meaning, end int) {
	if front, end := p.yarnMoved(i); end != 0 {
		return named(map[bool]string{false: "yb", true: "wyif"}[front], 0, 0), end
	}
	if m, end = p.shadowWrap(i); end != 0 {
		return m, end
	}
	switch t := &p.tokens[i]; {
	case t.among("k knit p purl k1 p1"):
		return p.intoLoops(i)
	case t.is("inc", "increase"):
		return p.incInto(i)
	case t.is("pick", "lift", "raise"):
		return p.strandLifted(i)
	case t.is("pass", "draw"):
		return p.passedPhrase(i)
	case t.is("plain", "seam"):
		return p.oldPlain(i)
	case t.is("m1", "make", "m"):
		return p.madePurlwise(i)
	case t.is("cable", "c"), len(t.text) > 1 && t.text[0] == 'c' && isDigit(rune(t.text[1])):
		return p.cablePhrase(i)
	}
	return meaning{}, 0
}

// intoLoops is "knit twice into the next stitch", "p into front, back and front of next st", "k into back of next st" or
// "k next st through the centre of st below" at token i.
func (p *parser) intoLoops(i int) (m meaning, end int) {
	purl := p.tokens[i].text[0] == 'p'
	i++
	if !p.acceptedAt(&i, "1", "one") {
		if next := p.oneStitchEnd(i); next != 0 {
			i = next
		}
	}
	if below := p.belowEnd(i); below != 0 {
		return named(map[bool]string{false: "k1 below", true: "p1 below"}[purl], 1, 1), below
	}
	if p.acceptedAt(&i, "twice") {
		if p.acceptedAt(&i, "in", "into") {
			end = p.oneStitchEnd(i)
		}
		return twiceInto(purl), end
	}
	return p.throughLoops(i, purl)
}

// throughLoops is "into front, back and front of next st" at token i, after the verb.
func (p *parser) throughLoops(i int, purl bool) (m meaning, end int) {
	into := p.acceptedAt(&i, "in", "into", "through")
	loops, front, i := p.loopsNamed(i)
	end = i
	if p.acceptedAt(&end, "of", "in", "into") {
		end = p.oneStitchEnd(end)
	} else if loops < 2 {
		return meaning{}, 0
	}
	switch {
	case loops == 0 || end == 0 || !into && loops < 2:
		return meaning{}, 0
	case loops == 1 && front:
		return ofOp(map[bool]stitch.Op{false: stitch.Knit, true: stitch.Purl}[purl]), end
	case loops == 1:
		return ofOp(map[bool]stitch.Op{false: stitch.KnitTbl, true: stitch.PurlTbl}[purl]), end
	case loops == 2:
		return twiceInto(purl), end
	}
	return named(map[bool]string{false: "kfbf", true: "pfbf"}[purl], 1, int16(loops)), end
}

// twiceInto is an increase by working twice into one stitch.
func twiceInto(purl bool) meaning {
	if purl {
		return ofOp(stitch.PFB)
	}
	return ofOp(stitch.KFB)
}

// loopsNamed counts the loops of a stitch that are named from token i on, "the front, back and front", and says whether the
// first of them is the front one, and where they end.
func (p *parser) loopsNamed(i int) (loops int, front bool, end int) {
	for p.acceptedAt(&i, "the", "both") {
	}
	for end = i; p.tokens[i].is("front", "back"); i++ {
		front = front || loops == 0 && p.tokens[i].is("front")
		loops++
		for p.acceptedAt(&i, "loop", "loops") {
			i--
			break
		}
		end = i + 1
		for p.tokens[i+1].among(", and & then the") {
			i++
		}
	}
	return loops, front, end
}

// oneStitchEnd is the index after "the next st", "same stitch" at token i, 0 if it does not stand there.
func (p *parser) oneStitchEnd(i int) int {
	for p.acceptedAt(&i, "the", "that", "this", "very", "marked") {
	}
	named := p.acceptedAt(&i, "next", "foll", "following", "first", "last", "same", "each", "every", "centre", "center", "central", "one",
		"a", "edge")
	for p.acceptedAt(&i, "centre", "center", "edge", "marked") {
	}
	if !p.tokens[i].is("st", "stitch") || !named && !p.tokens[i-1].among("the that this marked") {
		return 0
	}
	return i + 1
}

// belowEnd is the index after "in the row below", "through the centre of st below", "into the next st below" at token i, 0
// if it does not stand there.
func (p *parser) belowEnd(i int) int {
	if !p.acceptedAt(&i, "in", "into", "through") {
		return 0
	}
	for p.acceptedAt(&i, "the", "centre", "center", "middle", "of", "next", "st", "stitch", "in", "row", "one") {
	}
	if !p.tokens[i].is("below") || p.tokens[i-1].among("in into through the") {
		return 0
	}
	return i + 1
}

// incInto is "inc 1 st in the next st", "inc twice in next st" at token i.
func (p *parser) incInto(i int) (m meaning, end int) {
	made, purl := 1, false
	for i++; ; i++ {
		switch t := &p.tokens[i]; {
		case t.is("twice"), t.is("2", "two") && p.tokens[i+1].is("st", "sts", "stitches"):
			made = 2
		case t.is("pwise", "purlwise"):
			purl = true
		case t.is("in", "into"):
			if end = p.oneStitchEnd(i + 1); end == 0 {
				return meaning{}, 0
			}
			if made == 2 {
				return named("kfbf", 1, 3), end
			}
			return twiceInto(purl), end
		case !t.among("1 one once st sts stitch kwise knitwise"):
			return meaning{}, 0
		}
	}
}

// strandLifted is "pick up the strand between the needles and knit into the back of it" at token i.
func (p *parser) strandLifted(i int) (m meaning, end int) {
	strand := 0
	for n := i + 1; n < i+16; n++ {
		switch t := &p.tokens[n]; {
		case t.among("strand loop bar thread"):
			strand = n
		case t.is("and", "then", "&") && strand > 0 && p.tokens[n+1].among("k knit p purl work k1 p1"):
			for n += 2; p.tokens[n].among("it this into in the back of loop tbl through twisted 1 as a " +
				"st stitch " +
				"knitwise purlwise"); n++ {
			}
			if p.tokens[n-1].among("k knit p purl work") {
				return meaning{}, 0
			}
			return ofOp(stitch.M1), n
		case t.kind != tokenWord, t.is("and", "then") && strand == 0:
			return meaning{}, 0
		}
	}
	return meaning{}, 0
}

// passedPhrase is "pass the 2 slipped stitches over", "pass sl st over it" at token i.
func (p *parser) passedPhrase(i int) (m meaning, end int) {
	if !p.acceptedAt(&i, "pass", "draw") {
		return meaning{}, 0
	}
	both, slipped := false, false
	for ; !p.tokens[i].is("over"); i++ {
		switch t := &p.tokens[i]; {
		case t.among("both 2 two sts stitches"):
			both = true
		case t.among("sl slip slipped it them"):
			slipped = true
		case !t.among("the st stitch these that 1 one"):
			return meaning{}, 0
		}
	}
	if !slipped {
		return meaning{}, 0
	}
	for i++; p.tokens[i].among("it them this st stitch knit knitted worked the") && !p.tokens[i+1].is("number"); i++ {
	}
	for p.tokens[i-1].is("knit", "the") { // it is the next stitch
		i--
	}
	if both {
		return named("p2sso", 0, -2), i
	}
	return named("psso", 0, -1), i
}

// cablePhrase is "cable 4 front", "C6 back" at token i.
func (p *parser) cablePhrase(i int) (m meaning, end int) {
	n, attached := whole(p.tokens[i].text[1:])
	if !attached {
		i++
		n = int(p.tokens[i].number)
	}
	if n < 2 || n > MaxTakes || !p.tokens[i+1].among("front back left right forward f b l r") {
		return meaning{}, 0
	}
	return named("c"+strconv.Itoa(n)+p.tokens[i+1].text[:1], int16(n), int16(n)), i + 2
}

// yarnMoved says where the yarn goes by "bring yarn to front", "with yarn at back of work", "yarn back" at token i, and where that
// ends, 0 if that is not what stands there. "Yarn forward" makes a stitch.
func (p *parser) yarnMoved(i int) (front bool, end int) {
	moved := p.acceptedAt(&i, "bring", "take", "move", "return", "put", "with", "pass", "keeping", "keep")
	for p.acceptedAt(&i, "the") {
	}
	if !p.acceptedAt(&i, "yarn", "wool", "thread") {
		return false, 0
	}
	for p.acceptedAt(&i, "to", "in", "at", "the", "towards", "held") {
		moved = true
	}
	front = p.tokens[i].is("front")
	if !front && !p.tokens[i].is("back") || !moved && front {
		return false, 0
	}
	if i++; p.tokens[i].is("of") {
		for p.acceptedAt(&i, "of", "the", "work", "needle", "needles") {
		}
	}
	return front, i
}

// yarnHeld says where the yarn is while a stitch is slipped, "wyif", "with yarn in back", and where that ends.
func (p *parser) yarnHeld(i int) (front bool, end int) {
	if p.tokens[i].is("wyif", "wyib") {
		return p.tokens[i].is("wyif"), i + 1
	}
	if !p.tokens[i].is("with", "keeping", "keep") {
		return false, 0
	}
	return p.yarnMoved(i)
}

// wiseEnd says how a stitch is slipped by "purlwise", "as if to knit", "as to purl" at token i, and where that ends.
func (p *parser) wiseEnd(i int) (wise string, end int) {
	if p.acceptedAt(&i, "as") {
		p.acceptedAt(&i, "if", "for")
		if p.acceptedAt(&i, "to"); p.tokens[i].is("knitting", "purling") {
			i++
		}
	}
	asked := p.tokens[i-1].among("as if to for")
	switch t := &p.tokens[i]; {
	case t.is("kwise", "knitwise"), asked && t.is("knit", "k", "k2tog"):
		wise = "kwise"
	case t.is("pwise", "purlwise"), asked && t.is("purl", "p", "p2tog"):
		wise = "pwise"
	default:
		return "", 0
	}
	i++
	if asked && p.tokens[i].is("2", "two") && p.tokens[i+1].is("tog", "together") {
		i += 2
	}
	return wise, i
}

// backLoopEnd is the index after "tbl", "through the back of the loops" at token i, 0 if it does not stand there.
func (p *parser) backLoopEnd(i int) int {
	if p.tokens[i].is("tbl") {
		return i + 1
	}
	if !p.acceptedAt(&i, "through", "in", "into") {
		return 0
	}
	from := i
	back := false
	for p.tokens[i].among("the back backs of loop loops st sts stitch stitches them both") {
		back = back || p.tokens[i].is("back", "backs")
		i++
	}
	if !back || p.tokens[from].is("st", "sts") {
		return 0
	}
	return i
}

// oldPlain is the "plain" and the "seam" of old booklets at token i, "plain 2, seam 1": a knit and a purl stitch.
func (p *parser) oldPlain(i int) (m meaning, end int) {
	_, written := p.tokens[i+1].written()
	if !written && p.tokens[i+1].kind != tokenNumber && !(p.endsAt(i+1) && p.afterLabel(i)) {
		return meaning{}, 0
	}
	if p.tokens[i].is("seam") {
		return ofOp(stitch.Purl), i + 1
	}
	return ofOp(stitch.Knit), i + 1
}

// afterLabel reports whether a label ends before token i: "6th row.-Plain."
func (p *parser) afterLabel(i int) bool { return p.inRow && p.tokens[i-1].is(":", ".", "-") }

// madePurlwise is "make 1 purlwise" at token i.
func (p *parser) madePurlwise(i int) (m meaning, end int) {
	if !p.acceptedAt(&i, "m1") {
		if i++; !p.acceptedAt(&i, "1", "one") {
			return meaning{}, 0
		}
	}
	switch wise, end := p.wiseEnd(i); wise {
	case "kwise":
		return ofOp(stitch.M1), end
	case "pwise":
		return ofOp(stitch.M1P), end
	}
	return meaning{}, 0
}
