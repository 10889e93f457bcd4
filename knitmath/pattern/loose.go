package pattern

// looseTally is what steps take and leave that are worked a number of times, with those up
// to places that are not known left out: those take what they leave, so that the change of
// the count is known without the places. False where it is not.
func looseTally(steps []Step, size int) (tally, bool) {
	var t tally
	for i := range steps {
		s := &steps[i]
		switch {
		case s.Operation.EndsRow():
			return t, i == len(steps)-1
		case s.stretch():
			if s.Steps != nil && hasLoose(s.Steps) && s.BeforeMarkerStitches == nil {
				return t, false // nobody knows how often
			}
			if each := s.pass(size); each.takes < 1 || each.takes != each.leaves {
				return t, false
			}
		case s.Steps != nil && !s.IntoOneStitch:
			in, ok := looseTally(s.Steps, size)
			if !ok {
				return t, false
			}
			t.add(in.times(int64(s.workings(size))))
		default:
			t.add(s.pass(size).times(int64(s.workings(size))))
		}
	}
	return t, true
}

// hasLoose reports whether something is worked up to a place that only the text's own
// words know: the end of a needle, the instep, a marker.
func hasLoose(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; s.loose || s.BeforeMarkerStitches != nil || hasLoose(s.Steps) {
			return true
		}
	}
	return false
}

// saidLoose reports whether some steps are loose by the text's own words.
func saidLoose(steps []Step) bool {
	for i := range steps {
		if s := &steps[i]; s.loose || saidLoose(s.Steps) {
			return true
		}
	}
	return false
}

// loosened makes a row with such places one of which only the change of the count is known.
func (p *parser) loosened(line *Line) bool {
	if !saidLoose(line.Steps) {
		return true
	}
	if !p.needleWorked(line.Steps) {
		return false
	}
	takes, leaves := make([]int, p.sizes), make([]int, p.sizes)
	for size := range takes {
		t, ok := looseTally(line.Steps, size)
		if !ok {
			p.ask(ReasonUnread, line.Steps[0].at.to(p.last()), "how many stitches lie between these places? the count after the row depends on it")
			return false
		}
		takes[size], leaves[size] = int(min(t.takes, MaxNumber)), int(min(max(t.leaves, 0), MaxNumber))
	}
	p.reading(line.Steps[0].at.to(p.last()), "where these places are is not followed: the count is")
	line.info.places = movesMarkers(line.Steps)
	p.worksInAll(line, takes, leaves)
	return true
}

// worksInAll makes a row one that takes and leaves so many stitches, and works all others
// as they are.
func (p *parser) worksInAll(line *Line, takes, leaves []int) {
	info := &line.info
	takes, leaves = tidy(takes), tidy(leaves)
	info.kind = lineShape
	if info.unnamed = false; !info.brings { // stitches of others are brought where they are not on the needle
		info.either = nil
	}
	info.hidden = []Step{
		{Name: "work", takes: 1, leaves: 1, RemainingStitches: takes},
		{Name: "work", takes: 1, leaves: 0, Times: takes},
		{Name: "work", takes: 0, leaves: 1, Times: leaves},
	}
	info.parts = []shapings{{next: true, lead: []int{0}, interval: one, times: one}}
}

// loosePlaces are the words for places in a row that are not followed.
var loosePlaces = wordSet(`instep sole heel gusset needle thumb palm underarm seam`)

// loosePlace is the index after "the instep", "end of second needle", "end of N1" at token
// i, 0 if there is none.
func (p *parser) loosePlace(i int) int {
	for p.tokens[i].among("the end of first second third fourth next 1st 2nd 3rd 4th beg start") {
		i++
	}
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch {
	case t.among("marked centre center central"):
		return p.markedStitch(i)
	case t.among("bound-off cast-off bo buttonhole") || t.is("bound", "cast") && then.is("off", "-"):
		return p.boundOffAt(i)
	case t.kind == tokenWord && loosePlaces[t.text]:
		return p.partPlaceEnd(i)
	case t.is("held") && then.stitches():
		return i + 2
	case t.is("opening", "slit") && p.endsClause(i+1), t.among("n1 n2 n3 n4"):
		return i + 1
	}
	return 0
}

// partPlaceEnd is the index after "instep sts", "needle 2" at token i.
func (p *parser) partPlaceEnd(i int) int {
	then := &p.tokens[i+1]
	if then.is("sts", "needle", "flap") || p.tokens[i].is("needle") && then.kind == tokenNumber && !p.tokens[i+2].stitches() {
		return i + 2
	}
	return i + 1
}

// markedStitch is the index after "centre st", "marked centre st" at token i; 0 if that is not what
// stands there.
func (p *parser) markedStitch(i int) int {
	if p.tokens[i].is("marked") && p.tokens[i+1].is("centre", "center", "central") {
		i++
	}
	if !p.tokens[i+1].is("st", "stitch") {
		return 0
	}
	return i + 2
}

// boundOffAt is the index after "bound-off sts", "BO sts", "buttonhole" at token i, the gap that
// the row before has left; 0 if that is not what stands there.
func (p *parser) boundOffAt(i int) int {
	if p.tokens[i].is("buttonhole") {
		return i + 1
	}
	for p.tokens[i].among("bound cast bound-off cast-off bo - off") {
		i++
	}
	if !p.tokens[i].stitches() && !p.tokens[i].is("edge", "gap", "section") {
		return 0
	}
	return i + 1
}
