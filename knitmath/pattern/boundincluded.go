package pattern

import "example.com/knitmath/knitmath/stitch"

// boundIncluded passes over "including st on needle after bind-off" behind stitches that follow some bound off: the stitch that
// binding off leaves on the right needle is one of those that are worked next.
func (p *parser) boundIncluded(steps []Step) bool {
	save, n := p.next, len(steps)
	if n < 2 || steps[n-2].Operation != stitch.BindOff || steps[n-1].stretch() {
		return false
	}
	bracket, said := p.accept("(", "["), false
	if p.acceptAmong("including incl inc counting") {
		for t := p.peek(); t.kind == tokenWord && (boundWords[t.text] || t.stitches()); t = p.peek() {
			said = said || t.stitches()
			p.next++
		}
	}
	if said && (!bracket || p.accept(")", "]")) {
		if p.forPart(); bracket || p.clauseEnds() {
			return true
		}
	}
	p.next = save
	return false
}

// boundWords are told of that stitch.
var boundWords = wordSet(`the one already left on right right-hand rh needle after from used in bo bind-off cast-off binding bind casting
	cast off last remaining of`)
