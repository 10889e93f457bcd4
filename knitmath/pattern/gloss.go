package pattern

import "example.com/knitmath/knitmath/stitch"

// gloss passes over an abbreviation in brackets after its words, as patterns for beginners
// have it, "yarn over (yo)", or over the words after the abbreviation: it is the step s once
// more, and no second one. from is where s begins. "Knit 1 (k1) twice" is work.
func (p *parser) gloss(s *Step, from int) {
	if !p.peek().is("(") || s.Steps != nil || s.Operation == 0 && s.Name == "" || s.Operation == stitch.Knit || s.Operation == stitch.Purl {
		return
	}
	if p.cableTold(s) {
		return
	}
	save, found, after, stars := p.next, p.found.mark(), p.after, p.stars
	p.next++
	again, ok := p.item(false)
	spelt := p.next-save-1 > 1 || save-from > 1
	p.glossTail()
	if ok && spelt && meansSame(&again, s) && p.peek().is(")") && p.glossTimes(s, save-from > 2) {
		p.after = after
		return
	}
	p.next, p.after, p.stars = save, after, stars
	p.found.rewind(found)
}

// glossTail passes over ", slipping off st above at the same time": how the stitch is finished, without a number.
func (p *parser) glossTail() {
	if !p.peek().is(",") || !p.ahead(1).among("slipping dropping letting keeping twisting leaving") {
		return
	}
	for n := p.next + 1; n < p.next+16 && p.tokens[n].kind == tokenWord; n++ {
		if p.tokens[n+1].is(")") {
			p.next = n + 1
			return
		}
	}
}

// meansSame reports whether a step is the same work as another, which is no group.
func meansSame(again, s *Step) bool {
	return again.Operation == s.Operation && (again.Name == s.Name || s.Operation != 0) && again.Steps == nil
}

// glossTimes passes over the bracket that closes a gloss and reads how often the step is worked,
// "knit two together (k2tog) 3 times". Of an abbreviation that is not spelt out the times may be
// those of the bracket alone.
func (p *parser) glossTimes(s *Step, spelt bool) bool {
	p.next++
	if !p.oftenOrFar(p.next) {
		return true
	}
	if !spelt || !single(s.Times, 1) || s.stretch() {
		return false
	}
	u, ok := p.upTo(false)
	switch {
	case !ok || u.more:
		return false
	case u.times != nil:
		s.Times = u.times
	case u.last != nil:
		s.Times, s.RemainingStitches = nil, u.last
	case u.mark != nil:
		s.Times, s.BeforeMarkerStitches = nil, u.mark
	}
	s.at = s.at.to(p.last())
	return true
}

// oftenOrFar reports whether it is said how often or how far at token i.
func (p *parser) oftenOrFar(i int) bool {
	t := &p.tokens[i]
	return t.kind == tokenNumber || t.among("twice once thrice x times around to across")
}

// cableTold passes over brackets behind a cable that say it with a cable needle, "c6f (sl 3 sts to cn and hold in front, k3, k3 from
// cn)": they take and leave what it does.
func (p *parser) cableTold(s *Step) bool {
	save, found, cable := p.next, p.found.mark(), p.cable
	end := p.next + 1
	for ; end < save+40 && !p.tokens[end].is(")") && p.tokens[end].kind != tokenEnd; end++ {
	}
	if s.takes < 2 || !p.tokens[end].is(")") || !p.anyOf(save, end, "cn", "cable") || p.oftenOrFar(end+1) {
		return false
	}
	p.next++
	p.inside++
	steps, ok := p.items(")")
	p.inside--
	takes, leaves := 0, 0
	for i := range steps {
		t := &steps[i]
		if len(t.Times) != 1 || t.Steps != nil {
			return p.notTold(save, found, cable)
		}
		takes, leaves = takes+int(t.takes)*t.Times[0], leaves+int(t.leaves)*t.Times[0]
	}
	if !ok || p.next != end || takes != int(s.takes) || leaves != int(s.leaves) {
		return p.notTold(save, found, cable)
	}
	p.next = end + 1
	return true
}

// notTold goes back to brackets that say something else.
func (p *parser) notTold(next int, found mark, cable *onCable) bool {
	p.next, p.cable = next, cable
	p.found.rewind(found)
	return false
}
