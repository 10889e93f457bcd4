package pattern

import (
	"slices"
	"strconv"
)

// How stitches lie on the needles of a round, "32 sts on each of 4 needles", and a round that is written needle by needle: what is
// said of each has to fit its own stitches, and not those of all needles alone.

// laidOut is how many stitches lie on each needle, as the text tells.
type laidOut struct {
	parts [][]int // one list for each needle
	each  []int   // as many on each of all needles
}

// laysEach notes that as many stitches lie on each of some needles; needles is 0 where their number is not told.
func (p *parser) laysEach(numbers []int, needles int) {
	p.laid = &laidOut{each: numbers}
	if needles > 0 {
		p.laid = &laidOut{parts: slices.Repeat([][]int{numbers}, needles)}
	}
}

// laidAfter forgets how the stitches lie after a line that may have moved them.
func (p *parser) laidAfter(l *Line) {
	switch l.info.kind {
	case linePlain, lineEven, lineJoin, lineRepeat, lineCastOn:
		return
	case lineShape:
		if l.info.onNeedles != nil {
			return
		}
	case lineRow:
		if plainSteps(l.Steps) {
			return
		}
	case linePassed:
		if len(l.ClaimedStitches) > 0 || l.info.perNeedle != nil || !p.needlesBetween(l.info.at) {
			return
		}
	}
	p.laid = nil
}

// needlesBetween reports whether words that work no row speak of needles or of stitches, which they may move from one to another.
func (p *parser) needlesBetween(at span) bool {
	for i := p.next - 1; i > 0 && p.tokens[i].start >= at.start; i-- {
		if p.tokens[i].among("needle needles dpn dpns sts stitches") {
			return true
		}
	}
	return false
}

// worksOnNeedles notes the steps for each needle of a round, where they are numbered and the text tells how the stitches lie. closer
// ends the bracket in which half of a round stands.
func (p *parser) worksOnNeedles(line *Line, sections []needleSection, closer string) {
	unknown := func(s needleSection) bool { return slices.Contains(s.numbers, 0) || !placesKnown(s.steps) }
	if p.laid == nil || closer != "" || slices.ContainsFunc(sections, unknown) {
		return
	}
	line.info.laid, line.info.onNeedles = p.laid, sections
}

// placesKnown reports whether every step goes on a number of times or to the last stitches of the needle.
func placesKnown(steps []Step) bool {
	return !slices.ContainsFunc(steps, func(s Step) bool {
		return s.BeforeMarkerStitches != nil || s.Operation.EndsRow() || s.loose && s.RemainingStitches == nil || s.toFit || !placesKnown(s.Steps)
	})
}

// needlesFit compares what a round has for each needle with the stitches that lie on it, and follows them.
func (r *runner) needlesFit(l *Line) {
	if r.quiet || !r.known {
		return
	}
	if l.info.laid != r.laid {
		r.laid, r.lying = l.info.laid, r.laidFirst(l.info.laid)
	}
	if sumOf(r.lying) != r.now.total() {
		r.lying = nil
		return
	}
	for k := range l.info.onNeedles {
		s := &l.info.onNeedles[k]
		r.spend(len(s.steps))
		profile := profileOf(s.steps, r.size)
		for _, n := range s.numbers {
			if n > len(r.lying) {
				r.lying = nil
				return
			}
			o := profile.work(r.lying[n-1])
			if o.reason != "" {
				r.needleMisfits(s, n, &o)
				r.lying = nil
				return
			}
			r.lying[n-1] = o.leaves
		}
	}
}

// laidFirst is how many stitches lie on each needle at first, none where that is not all of them.
func (r *runner) laidFirst(laid *laidOut) (lying []int64) {
	for _, part := range laid.parts {
		lying = append(lying, int64(at(part, r.size)))
	}
	if laid.each == nil {
		return lying
	}
	n, all := int64(at(laid.each, r.size)), r.now.total()
	if n < 1 || all%n != 0 || all/n > 6 {
		return nil
	}
	return slices.Repeat([]int64{n}, int(all/n))
}

// needleMisfits says why the steps of a needle do not fit its stitches.
func (r *runner) needleMisfits(s *needleSection, needle int, o *outcome) {
	where, there := s.steps[0].at.to(s.steps[len(s.steps)-1].at), r.lying[needle-1]
	lead := stitches(int(there)) + " " + lie(there) + " on needle " + strconv.Itoa(needle) + ": "
	switch o.reason {
	case ReasonUneven:
		r.fault(KindMistake, o.reason, where, int(o.short), lead+"the repeat takes "+stitches(int(o.step.pass(r.size).takes))+
			" and "+stitches(int(o.short))+" "+remain(o.short)+" over")
	case ReasonMissing:
		r.fault(KindMistake, o.reason, where, int(-o.missing), lead+stitches(int(o.missing))+" missing")
	default:
		r.fault(KindMistake, o.reason, where, int(o.unworked), lead+stitches(int(o.unworked))+" "+remain(o.unworked))
	}
}

func lie(n int64) string {
	if n == 1 {
		return "lies"
	}
	return "lie"
}
