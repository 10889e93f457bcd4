package pattern

import "example.com/knitmath/knitmath/stitch"

// joinsLeftOut says that the work goes on over the stitches too that "on these only" left out.
type joinsLeftOut uint8

const (
	joinsNone  joinsLeftOut = iota
	joinsAll                // "in the round on all sts"
	joinsAgain              // "in the round again": as before they were left out
)

// inRoundAgain reads "continue in the round on all sts", "resume working in the round over all 64 sts", "now work in the round
// again": nothing is worked, and the rounds after it go over all stitches again.
func (p *parser) inRoundAgain(line *Line) bool {
	if !p.began || p.onlyRows {
		return false
	}
	joins := joinsNone
	p.accept("now", "then")
	if p.acceptAmong("resume resuming return returning go going") {
		joins = joinsAgain
	} else if !p.acceptAmong("cont continue continuing work working begin start proceed") {
		return false
	}
	for p.acceptAmong("back to work working knit knitting") {
	}
	if !p.accept("in") {
		return false
	}
	p.accept("the")
	if !p.acceptAmong("round rnd rounds rnds") {
		return false
	}
	if p.accept("again") || p.acceptAll("once", "more") || p.acceptAll("as", "before") {
		joins = joinsAgain
	}
	if p.overAll(line) {
		joins = joinsAll
	}
	p.accept("again")
	p.acceptAll("as", "follows")
	if joins == joinsNone || !p.endsAt(p.next) && !p.peek().is(",", ";", ":") {
		return false
	}
	line.info.kind, line.info.joinsAside = linePassed, joins
	return true
}

// overAll reads "over all 64 sts", "on all stitches", whose number, where there is one, is that of all.
func (p *parser) overAll(line *Line) bool {
	i := p.next
	if !p.tokens[i].among("on over with across") {
		return false
	}
	for i++; p.tokens[i].is("the", "whole", "full"); i++ {
	}
	if !p.tokens[i].is("all") {
		return false
	}
	for i++; p.tokens[i].is("of", "the"); i++ {
	}
	save := p.next
	p.next = i
	n := p.number()
	if !p.accept("st", "sts", "stitches") {
		p.next = save
		return false
	}
	if n != nil {
		line.ClaimedStitches, line.info.claimAt = without(n), p.tokens[i].to(p.last())
	}
	return true
}

// joinAside goes on in the round over all stitches: those on the needle, and those that were left out. These come back only if
// that is said, or the others were worked back and forth for a while: "all sts" of a thumb are those of the thumb.
func (r *runner) joinAside(l *Line) {
	total, said := r.now.total(), int64(-1)
	if l.ClaimedStitches != nil {
		said = int64(at(l.ClaimedStitches, r.size))
	}
	all := total
	if r.leftRound || l.info.joinsAside == joinsAgain || said == total+r.aside {
		all, r.aside = total+r.aside, 0
		if held := r.heldSum(); all == total && held > 0 && said == total+held { // they wait on holders
			all, r.held = said, r.held[:0]
		}
	}
	if r.known {
		r.begin(all)
	}
	r.round, r.leftRound, r.side = true, false, stitch.RightSide
}
