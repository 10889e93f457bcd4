package pattern

import "strconv"

// holdWorked is the name of a step that puts aside stitches of the right needle, which
// have been worked: "k24, place last 6 sts worked on holder, k to end".
const holdWorked = "hold worked"

// ofTheWorked notes whether a direction within a row is about stitches that were worked:
// "these sts", "last 6 sts worked", "last 6 sts" where the row goes on.
func (p *parser) ofTheWorked(from int) bool {
	last, these := false, false
	for i := from; i < p.next; i++ {
		t := &p.tokens[i]
		last = last || t.is("last")
		these = these || t.is("these", "those") && !p.tokens[i+1].is("rem", "remaining")
		if t.is("worked", "knitted", "knit") && i > from+1 {
			return true
		}
	}
	if these {
		return true
	}
	return last && p.peek().is(",", ";") && p.startsItem(p.next+1)
}

// heldBack makes a step one that puts aside stitches that were worked: all of them if no
// number is said. Whether more than have been worked are a mistake is seen when it is known that
// the piece is not worked in the round.
func (p *parser) heldBack(s *Step, steps []Step, these bool) bool {
	s.Name, s.takes, s.leaves = holdWorked, 0, -1
	fixedSoFar := true
	for i := range steps {
		fixedSoFar = fixedSoFar && !steps[i].stretch()
	}
	if !fixedSoFar {
		if s.Times == nil {
			p.ask(ReasonUnread, s.at, "how many stitches are these?")
		}
		return s.Times != nil
	}
	worked := make([]int, p.sizes)
	for size := range worked {
		worked[size] = int(max(min(fixed(steps, size).leaves, MaxNumber), 0))
		p.reachesBack = p.reachesBack || s.Times != nil && at(s.Times, size) > worked[size]
	}
	if s.Times == nil {
		s.Times = tidy(worked)
	}
	if these {
		p.theseWorked(s, steps)
	}
	return true
}

// theseWorked says where "these 19 sts" are not the last that were worked, up to any step: "k20, slip these 19 sts to a holder".
func (p *parser) theseWorked(s *Step, steps []Step) {
	for size := range p.sizes {
		n, k := int64(at(s.Times, size)), len(steps)
		for k > 0 && fixed(steps[k-1:], size).leaves < n {
			k--
		}
		there := fixed(steps[max(k-1, 0):], size).leaves
		if there > n && k > 0 && !steps[k-1].stretch() && steps[k-1].Steps == nil {
			p.mistake(ReasonClaim, s.at, stitches(int(there))+" have been worked, not "+strconv.Itoa(int(n)))
			return
		}
	}
}

// reachedBack looks at stitches of the right needle that are put aside although so many have not
// been worked: in the round they are some of the round before, else it is a mistake.
func (r *runner) reachedBack(l *Line) {
	if !l.info.reachesBack || r.quiet {
		return
	}
	for k := range l.Steps {
		s := &l.Steps[k]
		if s.Name != holdWorked || s.stretch() {
			continue
		}
		worked := max(fixed(l.Steps[:k], r.size).leaves, 0)
		n := int64(s.workings(r.size))
		switch {
		case n <= worked:
		case r.round && r.lastLine != noLine:
			r.fault(KindReading, ReasonReading, s.at, 0, "read as reaching back past the beginning of the round, over "+
				stitches(int(n-worked))+" of the round before")
			r.loseMarks()
		default:
			r.fault(KindMistake, ReasonMissing, s.at, int(worked-n), "only "+stitches(int(worked))+" have been worked, not "+strconv.Itoa(int(n)))
		}
		return
	}
}
