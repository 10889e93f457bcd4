package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/stitch"
)

// Names of steps that bring stitches to the needle: picked up along an edge, so many as the
// text says, or taken up from a holder and worked.
const (
	pickedUp = "pick up and knit"
	takenUp  = "knit from holder"
)

// ofPart is the index after words such as "heel" and "held" at token i, between a number
// and its stitches: "16 heel sts"; 0 if no stitches stand there.
func (p *parser) ofPart(i int) int {
	for n := 0; n < 3; n++ {
		t := &p.tokens[i]
		if t.kind != tokenWord || t.stitches() || p.labelEnd(i) != 0 ||
			!draft.Part(t.text) && !t.among("held live rem remaining instep sole gusset lining flap steek "+
				"first second reserved cast-on picked-up") {
			break
		}
		i++
	}
	if p.tokens[i].stitches() {
		return i
	}
	return 0
}

// partStitches passes over "the instep sts", "across the sleeve sts": how many they are is not
// said.
func (p *parser) partStitches() bool {
	i := p.next
	if p.tokens[i].is("across", "over") {
		i++
	}
	these := false
	for p.tokens[i].among("the all these those") {
		these = these || p.tokens[i].is("these", "those")
		i++
	}
	if i == p.next {
		return false
	}
	if p.inNeedles && p.tokens[i-1].is("across", "over", "the") && draft.Part(p.tokens[i].text) && p.endsClause(i+1) {
		p.next = i + 1
		return true
	}
	end := p.ofPart(i)
	if end == 0 || end == i && !these || !p.tokens[end].stitches() {
		return false
	}
	p.next = end + 1
	return true
}

// acrossItsPart passes over "across heel" after a number of stitches.
func (p *parser) acrossItsPart(w *wording) {
	if w.numbers != nil && p.peek().is("across", "along") {
		p.acceptEnd(p.acrossPart(p.next))
	}
}

// acrossPart is the index after "across heel", "across the sole sts" at token i, where a number of stitches is worked;
// 0 if that is not what stands there.
func (p *parser) acrossPart(i int) int {
	for i++; p.tokens[i].among("the first second left right"); i++ {
	}
	if p.tokens[i].kind != tokenWord || !draft.Part(p.tokens[i].text) {
		return 0
	}
	if i++; p.tokens[i].stitches() || p.tokens[i].is("flap") {
		i++
	}
	return i
}

// brought reads where stitches come from that are worked across: "25 sts from holder" are
// brought to the needle; those "of pocket lining" may be, if they are not there.
func (p *parser) brought(s *Step, from int) {
	named := p.partCounted()
	if p.onWhichNeedle() {
		return
	}
	s.brought = s.brought || named // on the needle, or on another
	held := p.anyOf(from, p.next, "held", "reserved", "lining")
	if !p.peek().is("from", "of", "on") && !held {
		return
	}
	end, holder, piece := p.wherefrom(held)
	if !holder && (!piece || p.peek().is("on")) {
		return
	}
	p.next = end
	s.brought = true
	if holder {
		s.Operation, s.Name, s.takes, s.leaves = 0, takenUp, 0, 1
	}
}

// partCounted reports whether "instep sts" has just been read.
func (p *parser) partCounted() bool {
	part := &p.tokens[max(p.next-2, 0)]
	return p.tokens[max(p.next-1, 0)].stitches() && part.kind == tokenWord && draft.Part(part.text)
}

// onWhichNeedle passes over the needle on which stitches are, and reports whether it is one of those in work: those
// "on one needle" may have rested.
func (p *parser) onWhichNeedle() bool {
	if !p.peek().is("on") || p.anyOf(p.next, p.next+5, "holder", "hold") {
		return false
	}
	if p.acceptAny(ontoOne) {
		return false
	}
	if !p.ahead(1).among("needle needles left the") {
		return false
	}
	for p.acceptAmong("on the left right first needle needles hand") {
	}
	return true
}

// wherefrom looks whether a holder or another piece is named where stitches come from.
func (p *parser) wherefrom(held bool) (end int, holder, piece bool) {
	i, holder := p.next, held
	for n := 0; n < 7 && !p.endsAt(i) && !p.tokens[i].among(", ; ( ) ] - ="); n++ {
		t := &p.tokens[i]
		holder = holder || t.among("holder holders waste scrap spare thread hold lining linings") // nobody knits a lining beside its front
		piece = piece || t.kind == tokenWord && (draft.Part(t.text) || t.among("flap sleeves earflap ear-flap"))
		if t.kind == tokenNumber || t.is("and") && p.startsItem(i+1) || t.is("pm") {
			break
		}
		i++
	}
	if piece {
		holder = p.waitsAsFirst(p.next, i, holder)
	}
	return i, holder, piece
}

// waitsAsFirst reports whether words between two tokens name a holder, or the second of two pieces, "of the second earflap", of
// which the first was taken from one.
func (p *parser) waitsAsFirst(i, end int, holder bool) bool {
	p.firstWaited = p.firstWaited || holder && p.anyOf(i, end, "first", "1st")
	return holder || p.firstWaited && p.anyOf(i, end, "second", "other", "2nd")
}

// broughtSteps is a row with all stitches of other pieces brought to the needle, and
// whether it has any.
func broughtSteps(steps []Step) ([]Step, bool) {
	found := false
	for i := range steps {
		found = found || steps[i].brought
	}
	if !found {
		return nil, false
	}
	other := append([]Step(nil), steps...)
	for i := range other {
		if s := &other[i]; s.brought {
			s.Operation, s.Name, s.takes, s.leaves = 0, takenUp, 0, 1
		}
	}
	return other, true
}

// bringing is the profile of a row that may bring stitches of other pieces: those that are
// not on the needle when their turn comes.
func (r *runner) bringing(i int, p *profile) *profile {
	l := &r.piece.Lines[i]
	own := l.Steps
	if o := p.work(r.now.left); o.reason != "" {
		ways := [][]Step{l.info.either}
		if len(l.Steps) > 0 { // not worked in all
			ways = [][]Step{r.broughtWhereMissing(l), r.broughtWhereHeld(l), r.broughtToMakeUp(l), l.info.either}
		}
		for k, steps := range ways {
			if steps == nil {
				continue
			}
			r.spend(r.facts[i].stepCount)
			other := profileOf(steps, r.size)
			now := other.work(r.now.left)
			fits := now.reason == "" || now.reason == ReasonMissing && r.goesPast(l, steps, now.missing)
			if fits || k == 1 && now.reason == ReasonMissing && now.missing < o.missing { // what waits is not on the needle in any case
				r.between, p = other, &r.between
				r.sayBrought(l, steps)
				r.brings, own = steps, steps
				break
			}
		}
	}
	r.fromHolders(own)
	return p
}

// broughtWhereMissing is the row with those stitches brought that are not on the needle when
// their turn comes.
func (r *runner) broughtWhereMissing(l *Line) []Step {
	steps := append([]Step(nil), l.Steps...)
	left := r.now.left
	for k := range steps {
		s := &steps[k]
		if s.stretch() {
			left = 0
			continue
		}
		takes := times(s.pass(r.size).takes, int64(s.workings(r.size)))
		if s.brought && s.Name != takenUp && left < takes {
			*s = l.info.either[k]
			continue
		}
		left -= takes
	}
	return steps
}

// broughtWhereHeld is the row with those stitches brought of which as many wait on a holder, whatever is on the needle when their
// turn comes: "52 sts of sleeve, 90 of front, 52 of sleeve, 90 of back".
func (r *runner) broughtWhereHeld(l *Line) []Step {
	steps := append([]Step(nil), l.Steps...)
	for k := range steps {
		if s := &steps[k]; s.brought && !s.stretch() && slices.Contains(r.held, int64(s.workings(r.size))) {
			*s = l.info.either[k]
		}
	}
	return steps
}

// alsoPickedUp reports whether a number of stitches with a place comes next in a row that
// picks stitches up: "pm, 1 st in the corner, pm, 100 sts along the side".
func (p *parser) alsoPickedUp() bool {
	for i := range p.sofar {
		if p.sofar[i].Name == pickedUp {
			return p.edgeNext(p.next)
		}
	}
	return false
}

// alsoBrought reports whether a number of stitches of another piece comes next in a row that works
// across such: "k across 90 back sts, pm, 50 sts of left sleeve, pm".
func (p *parser) alsoBrought() bool {
	end, _ := p.sizedEnd(p.next)
	if end == 0 || len(p.sofar) == 0 || !p.tokens[p.next-1].among(", pm m and ;") {
		return false
	}
	across := false
	for i := range p.sofar {
		across = across || p.sofar[i].brought
	}
	if !across {
		return false
	}
	if part := p.ofPart(end); part > end {
		return true
	}
	return p.tokens[end].stitches() && p.tokens[end+1].is("of", "from") && p.anyPart(end+2)
}

// anyPart reports whether a part of a garment is named within a few words from token i on.
func (p *parser) anyPart(i int) bool {
	for n := i; n < i+4 && !p.endsAt(n) && !p.tokens[n].is(",", ";"); n++ {
		if t := &p.tokens[n]; t.kind == tokenWord && (draft.Part(t.text) || t.is("holder", "sleeves", "waste")) {
			return true
		}
	}
	return false
}

// broughtMore reads them.
func (p *parser) broughtMore() (Step, bool) {
	from, first := p.peek().span, p.next
	n := p.number()
	if n == nil {
		return Step{}, false
	}
	if end := p.ofPart(p.next); end != 0 {
		p.next = end
	}
	p.accept("st", "sts", "stitches")
	s := Step{Operation: stitch.Knit, Times: without(n), takes: 1, leaves: 1}
	p.brought(&s, first)
	s.at = from.to(p.last())
	return s, true
}

// pickedUpMore reads them.
func (p *parser) pickedUpMore() (Step, bool) {
	from := p.peek().span
	n := p.number()
	if n == nil {
		return Step{}, false
	}
	p.acceptAmong("st sts stitch stitches")
	p.alongEdge()
	return Step{Name: pickedUp, leaves: 1, Times: without(n), at: from.to(p.last())}, true
}

// sayBrought says which stitches were taken to come from elsewhere.
func (r *runner) sayBrought(l *Line, steps []Step) {
	own := l.Steps
	if len(own) == 0 { // worked in all
		own = steps
	}
	for k := range steps {
		if s := &own[k]; s.brought && (s.Name != steps[k].Name || len(l.Steps) == 0) {
			r.fault(KindReading, ReasonReading, s.at, 0, "these stitches are not on the needle: read as those of another needle, holder or piece")
		}
	}
}
