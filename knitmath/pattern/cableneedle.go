package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// onCable is what waits on a cable needle, in each size.
type onCable struct {
	left []int
	at   span
}

// cableNeedle is the index after "cn", "a cable needle" at token i, 0 if there is none.
func (p *parser) cableNeedle(i int) int {
	for p.tokens[i].is("a", "the", "spare") {
		i++
	}
	switch {
	case p.tokens[i].is("cn", "cable-needle", "cn's"):
		return i + 1
	case p.tokens[i].is("cable") && p.tokens[i+1].is("needle"):
		return i + 2
	}
	return 0
}

// toCable reads "slip next 3 sts to cable needle and hold in front". The stitches are
// taken where they are worked, "k3 from cable needle": that they cross changes no count.
func (p *parser) toCable() asideKind {
	save, found := p.next, p.found.mark()
	from := p.peek().span
	p.next++
	p.accept("the")
	p.acceptAmong("next foll following first")
	n := p.number()
	if n != nil {
		p.acceptAmong("st sts stitch stitches")
		p.acceptAmong("kwise pwise knitwise purlwise")
	}
	if n == nil || !p.accept("to", "on", "onto") || p.cableNeedle(p.next) == 0 {
		p.next = save
		p.found.rewind(found)
		return asideNone
	}
	p.next = p.cableNeedle(p.next)
	p.heldWhere()
	if p.cable != nil {
		p.mistake(ReasonUnworked, p.cable.at, "these stitches are still on the cable needle when others are slipped to it")
		return asideFault
	}
	p.cable = &onCable{left: slices.Clone(perSize(without(n), p.sizes)), at: from.to(p.last())}
	p.asGiven = true
	return asideRead
}

// perSize is a list with a number for each size.
func perSize(numbers []int, sizes int) []int {
	if len(numbers) == 1 {
		return slices.Repeat(numbers, sizes)
	}
	return numbers
}

// heldWhere passes over "and hold in front of work", "hold to back".
func (p *parser) heldWhere() {
	save := p.next
	p.accept(",")
	p.accept("and")
	if !p.acceptAmong("hold leave keep held left holding leaving place") {
		p.next = save
		p.accept("at", "in")
		if !p.accept("front", "back") {
			p.next = save
		}
		return
	}
	for p.acceptAmong("it them this in at to the front back of work behind") {
	}
}

// fromCable reads "from cn" after what is worked, and how many stitches that is; with no
// number all that are there. It is false where they are not there.
func (p *parser) fromCable(w *wording) (found, ok bool) {
	if !w.plain() && w.op != stitch.KnitTbl && w.op != stitch.PurlTbl {
		return false, true
	}
	i := p.next
	for p.tokens[i].among("them the these those across all") || p.tokens[i].stitches() {
		i++
	}
	if !p.tokens[i].is("from", "off") || p.cableNeedle(i+1) == 0 {
		return false, true
	}
	p.next = p.cableNeedle(i + 1)
	at := w.from.to(p.last())
	if p.cable == nil {
		p.mistake(ReasonMissing, at, "no stitches are on the cable needle here")
		return true, false
	}
	if w.numbers == nil {
		w.numbers = tidy(slices.Clone(p.cable.left))
	}
	done := true
	for size, n := range perSize(w.numbers, p.sizes) {
		if p.cable.left[size] -= n; p.cable.left[size] < 0 {
			p.mistake(ReasonMissing, at, "there are fewer stitches on the cable needle")
			return true, false
		}
		done = done && p.cable.left[size] == 0
	}
	if done {
		p.cable = nil
	}
	return true, true
}

// cableEmpty reports whether all stitches of the cable needle have been worked, and says
// so if they have not.
func (p *parser) cableEmpty() bool {
	if p.cable == nil {
		return true
	}
	p.mistake(ReasonUnworked, p.cable.at, "not all of these stitches are worked from the cable needle")
	p.cable = nil
	return false
}
