package pattern

import "example.com/knitmath/knitmath/stitch"

// ofStepsBefore reads what is said of the stitches that were read last.
func (p *parser) ofStepsBefore(steps *[]Step) asideKind {
	if kind := p.alternately(steps); kind != asideNone {
		return kind
	}
	return p.allInto(steps)
}

// allInto makes the stitches that were read last, "k1, p1, k1 all into next st", one group that is worked into one stitch. How
// far back it goes is told by the stitches, each of which is another one than that before it; where that may be more than one
// thing, it is asked.
func (p *parser) allInto(steps *[]Step) asideKind {
	from, all := p.peek().span, p.peek().is("all")
	list := *steps
	if len(list) < 2 || !p.intoNext() {
		return asideNone
	}
	n := 0
	for n < len(list) && singleStitch(&list[len(list)-1-n]) && (n == 0 || list[len(list)-1-n].Operation != list[len(list)-n].Operation) {
		n++
	}
	if n < 2 || n == 2 && all || n > 3 && n != 5 {
		p.ask(ReasonAmbiguous, from.to(p.last()), "which stitches are worked into this one? put brackets round them")
		return asideFault
	}
	group := Step{Steps: p.kept(list[len(list)-n:]), Times: one, IntoOneStitch: true, at: list[len(list)-n].at.to(p.last())}
	p.reading(group.at, "read as all of these worked into one stitch")
	*steps = append(list[:len(list)-n], group)
	return asideRead
}

// singleStitch reports whether a step is one plain stitch or yarn over.
func singleStitch(s *Step) bool {
	return s.Steps == nil && single(s.Times, 1) && !s.stretch() && (s.Operation == stitch.Knit || s.Operation == stitch.Purl ||
		s.Operation == stitch.YO || s.Operation == stitch.KnitTbl || s.Operation == stitch.PurlTbl)
}

// severalInto makes "(k1, p1) twice into next st" the stitches that are worked into one.
func (p *parser) severalInto(s Step) (Step, bool) {
	if len(s.Times) != 1 || s.Times[0] > 5 || s.Steps == nil || !p.fitsOne(s.Steps) {
		return s, false
	}
	save := p.next
	if !p.intoNext() {
		return s, false
	}
	if p.steps += s.Times[0] * len(s.Steps); p.steps > MaxSteps {
		p.next = save
		return s, false
	}
	var all []Step
	for range s.Times[0] {
		all = append(all, s.Steps...)
	}
	return Step{Steps: all, Times: one, IntoOneStitch: true, at: s.at.to(p.last())}, true
}
