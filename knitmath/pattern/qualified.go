package pattern

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// noun reads what may follow a number of stitches: "sts", and "tog" of "k 2 tog".
func (p *parser) noun(s *Step, numbers []int) ([]int, bool) {
	at := p.last()
	if end := p.ofPart(p.next); end != 0 {
		p.next = end
	}
	p.acceptAmong("st sts stitch stitches")
	if !p.partCounted() {
		p.acceptAny(ontoOne)
	}
	if !p.accept("tog", "together") {
		return numbers, true
	}
	back := p.accept("b")
	letter := ""
	switch s.Operation {
	case stitch.Knit:
		letter = "k"
	case stitch.Purl:
		letter = "p"
	case stitch.Slip: // "sl 2 tog, k1, p2sso"
		return numbers, true
	}
	if len(numbers) == 1 && letter != "" {
		if m, ok := family(letter + strconv.Itoa(numbers[0]) + "tog"); ok {
			if listed, known := words[m.name]; known {
				m = listed
			}
			if back {
				m = named(letter+strconv.Itoa(numbers[0])+"tog tbl", m.takes, m.leaves)
			}
			s.Operation, s.Name, s.takes, s.leaves = m.op, m.name, m.takes, m.leaves
			return nil, true
		}
	}
	p.ask(ReasonUnread, at.to(p.last()), "together are two stitches or more, the same number in all sizes")
	return nil, false
}

// ontoOne are the needles on which stitches of a round come together to be worked back and forth.
var ontoOne = wordings("onto one needle", "on one needle", "onto a single needle", "onto one dpn", "onto the same needle", "onto 1 needle",
	"with one needle")

// What may be said after a stitch, in any of these words.
var (
	asEstablished = wordings("in patt", "in pat", "in pattern", "in established pattern", "in rib", "as established", "as est", "as set")
	castOnManner  = wordings("over gap", "using backward loop method", "using backward loop", "using the backward loop method",
		"using the knitted cast-on", "using knitted cast-on", "using cable cast-on", "using the cable cast-on", "for underarm",
		"over bound-off sts",
		"over these sts", "over the gap", "using backward-loop cast-on", "for thumb", "using the backward-loop method", "loosely",
		"over the bound-off sts", "for neck", "in their place", "using loop cast-on", "using backward-loop method", "in place of bound-off sts",
		"onto right needle",
		"at underarm", "for the underarm", "at the underarm", "for front neck", "for the front neck", "for back neck", "over bo sts",
		"over the gap left by held sts", "across the gap", "across gap", "across the opening", "over the opening")
	bindOffManner = wordings("loosely", "in the usual way", "in usual way", "in the usual manner", "as usual", "in the normal way",
		"in the ordinary way", "quite loosely", "not too tightly", "neither tightly nor loosely", "in rib",
		"for neck", "for underarm", "for armhole", "for buttonhole", "for centre neck",
		"in patt as est", "firmly",
		"for shoulder", "for front neck", "for back neck", "kwise", "pwise", "knitwise", "purlwise", "in patt", "in pattern",
		"in rib", "in ribbing", "in moss", "in moss st", "in seed", "in seed st", "in moss stitch", "in seed stitch", "in garter st")
)

// wordings are several ways to say one thing, each word by word.
func wordings(texts ...string) [][]string {
	list := make([][]string, len(texts))
	for i, text := range texts {
		list[i] = strings.Fields(text)
	}
	return list
}

// acceptAny passes over the first of the wordings that comes next.
func (p *parser) acceptAny(list [][]string) bool {
	for _, words := range list {
		if p.acceptAll(words...) {
			return true
		}
	}
	return false
}

// qualified reads "tbl" and the manner of slipping.
func (p *parser) qualified(s *Step) bool {
	for {
		from := p.peek().span
		switch {
		case p.acceptEnd(p.backLoopEnd(p.next)):
			if !p.twisted(s, from) {
				return false
			}
		case s.Name == "work" && (p.acceptAny(asEstablished) || p.inFabric()):
		case !p.peek().is("using") && p.inColour():
		case p.qualifiedByKind(s):
		case s.Operation == stitch.Slip:
			manner, ok := p.manner(s.Manner)
			if !ok {
				return true
			}
			s.Manner = manner
		default:
			return true
		}
	}
}

// qualifiedByKind passes over what is said of markers, of the part a step is for, of how
// stitches are cast on, bound off or picked up.
func (p *parser) qualifiedByKind(s *Step) bool {
	switch {
	case s.Operation == stitch.PlaceMarker || s.Name == "replace marker" || s.Name == "replace m":
		return p.markerFor()
	case p.forPart(), p.peek().is("by") && p.madeBy(s):
		return true
	case s.Operation == stitch.CastOn:
		return p.acceptEnd(p.methodEnd(p.next)) || p.acceptAny(castOnManner)
	case s.Operation == stitch.PickUp || s.Name == pickedUp:
		return p.alongEdge()
	}
	return s.Operation == stitch.BindOff && p.acceptAny(bindOffManner)
}

// markerFor passes over what a marker is for, "for the beginning of the round".
func (p *parser) markerFor() bool {
	if p.acceptEnd(p.startSaid(p.next)) {
		p.startMoves = true
		return true
	}
	if !p.peek().is("for", "here", "as") {
		return false
	}
	for p.next++; !p.endsAt(p.next) && !p.peek().among(", ; ) ] and then") && !p.claimAhead(); p.next++ {
	}
	return true
}

// forPart passes over "for back", "for the second sleeve": what stitches are for.
func (p *parser) forPart() bool {
	if !p.peek().is("for") {
		return false
	}
	i := p.next + 1
	for n := 0; n < 4 && p.tokens[i].kind == tokenWord; n++ {
		t := &p.tokens[i]
		i++
		if draft.Part(t.text) && !t.among("left right first second center centre start main beginning") {
			p.accept("for")
			p.next = i
			for p.acceptAmong("neck neckline armhole underarm front back side edge shaping flap gusset sts " +
				"stitches") {
			}
			return true
		}
		if !t.among("the left right first second other 1st 2nd centre center") {
			return false
		}
	}
	return false
}

// twisted makes a step one through the back loop.
func (p *parser) twisted(s *Step, at span) bool {
	switch s.Operation {
	case stitch.KnitTbl, stitch.PurlTbl:
		return true
	case stitch.Knit:
		s.Operation = stitch.KnitTbl
		return true
	case stitch.Purl:
		s.Operation = stitch.PurlTbl
		return true
	}
	name := s.Name
	if s.Operation != 0 {
		name = s.Operation.Abbr()
	}
	name += " tbl"
	m, ok := family(name)
	if isOtherWork(name) {
		m, ok = meaning{name: name}, true
	}
	if ok {
		s.Operation, s.Name = 0, m.name
		return true
	}
	p.ask(ReasonUnread, at, "this cannot be worked through the back loop")
	return false
}

// slipParts are the two things that can be said of a slip.
var slipParts = [slipMannerEnd]struct{ wise, yarn string }{
	SlipMannerKwise:     {"kwise", ""},
	SlipMannerPwise:     {"pwise", ""},
	SlipMannerWyif:      {"", "wyif"},
	SlipMannerWyib:      {"", "wyib"},
	SlipMannerKwiseWyif: {"kwise", "wyif"},
	SlipMannerKwiseWyib: {"kwise", "wyib"},
	SlipMannerPwiseWyif: {"pwise", "wyif"},
	SlipMannerPwiseWyib: {"pwise", "wyib"},
}

// manner reads one word on how a stitch is slipped and adds it to what is known.
// What was said before is not said again.
func (p *parser) manner(known SlipManner) (SlipManner, bool) {
	parts := slipParts[known]
	wise, end := p.wiseEnd(p.next)
	front, moved := p.yarnHeld(p.next)
	switch {
	case parts.wise == "" && wise != "":
		parts.wise, p.next = wise, end
	case parts.yarn == "" && moved != 0:
		parts.yarn, p.next = map[bool]string{false: "wyib", true: "wyif"}[front], moved
	default:
		return known, false
	}
	for m, both := range slipParts {
		if both == parts {
			return SlipManner(m), true
		}
	}
	return known, false
}

// asTheyAre reads "the knit sts and purl the purl sts" and the like: every
// stitch to the end of the row is worked as one.
func (p *parser) asTheyAre() bool {
	if !p.eachAsItIs() {
		return false
	}
	for {
		p.looked++
		t := p.peek()
		if t.is(",", "and") && p.ahead(1).among("sl slip p purl k knit") && p.ahead(2).is("the", "all", "purls") {
			p.next += 2
			continue
		}
		if p.endsAt(p.next) || t.among("; , ( [ -") {
			return true
		}
		p.next++
	}
}

// eachAsItIs reports whether "the knit sts", "knits", "all sts as they present" comes next.
func (p *parser) eachAsItIs() bool {
	i := p.next
	for p.tokens[i].is("the", "all", "each") {
		i++
	}
	t, then := &p.tokens[i], &p.tokens[i+1]
	if t.is("knits", "purls") {
		return true
	}
	if t.stitches() {
		return then.is("as") && p.tokens[i+2].among("they set est established presented seen")
	}
	return i > p.next && t.among("k p knit purl slipped knitted purled same") && then.stitches()
}
