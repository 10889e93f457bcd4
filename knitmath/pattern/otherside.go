package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// otherForm reads "; on WS rows p1, p2tog, p to last 3 sts, ssp, p1" after the steps of a row: how
// it is worked where the other side faces. Both forms must change the count alike.
func (p *parser) otherForm(steps []Step, inner string) asideKind {
	if inner != "" || len(steps) == 0 || !p.peek().is("on") || p.sideOf(p.next+1) == stitch.SideUnspecified {
		return asideNone
	}
	i := p.next + 2
	if p.tokens[i].is("side") {
		i++
	}
	if !p.tokens[i].row() {
		return asideNone
	}
	if i++; p.tokens[i].is(":", ",") {
		i++
	}
	from := p.peek().span
	p.next = i
	other, ok := p.items("")
	if !ok || len(other) == 0 {
		return asideFault
	}
	p.asGiven, p.otherSide = true, true
	for size := range p.sizes {
		one, known := looseTally(steps, size)
		two, knownToo := looseTally(other, size)
		if known && knownToo && one.takes-one.leaves != two.takes-two.leaves {
			p.mistake(ReasonClaim, from.to(p.last()), "the row changes the count by "+signed(one.leaves-one.takes)+
				", and by "+strconv.Itoa(int(two.leaves-two.takes))+" on this side")
			break
		}
	}
	return asideRead
}

// asItFaces are words that say which of two forms of a row is worked.
var asItFaces = wordings(", as it is given for the side that faces ,", "as it is given for the side that faces",
	", as given for the side that faces ,",
	"as given for the side that faces", "on the side that faces", "for the side that faces")
