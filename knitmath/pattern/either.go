package pattern

import (
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// unworkedRest is what a row leaves unworked after a turn, where the text puts it aside.
type unworkedRest struct {
	held   bool
	count  []int // how many stitches, if it is said
	worked []int // how many go on being worked, if that is said
	at     span  // where that is
}

// either notes a row of fixed stitches and then a decrease or an increase "around":
// "k6, k2tog around", "k1, p1 across, end k1" may repeat the whole, or the last of it alone.
func (p *parser) either(line *Line) {
	if other, found := broughtSteps(line.Steps); found {
		line.info.either, line.info.brings = other, true
		return
	}
	if other, found := betweenStitches(line.Steps); found && p.own["inc"].name == "" {
		line.info.either, line.info.unnamed = other, true
		return
	}
	line.info.either = wholeRepeated(line.Steps)
}

// wholeRepeated is a row of fixed stitches and then one that is worked to its end read as a repeat of all of it; nil if it is no such row.
func wholeRepeated(steps []Step) []Step {
	n := repeatedIn(steps)
	if n < 1 {
		return nil
	}
	last := &steps[n]
	if !last.ended && !single(last.RemainingStitches, 0) || last.Operation == stitch.BindOff || last.Name == "hold" ||
		!last.counted && (last.takes == last.leaves || last.Operation == 0 && last.Name == "") {
		return nil
	}
	for i := range steps[:n] {
		if s := &steps[i]; s.stretch() || s.Operation.EndsRow() {
			return nil
		}
	}
	group := append([]Step(nil), steps[:n+1]...)
	group[n] = workedOnce(*last)
	whole := Step{Steps: group, RemainingStitches: last.RemainingStitches, at: steps[0].at.to(last.at)}
	return append([]Step{whole}, steps[n+1:]...)
}

// repeatedIn is which step of a row is worked up to its end, or to what it is said to end with; below 0 for no steps.
func repeatedIn(steps []Step) int {
	if n := slices.IndexFunc(steps, func(s Step) bool { return s.ended }); n >= 0 {
		return n
	}
	return len(steps) - 1
}

// workedOnce is a step to the end worked once, with its own number.
func workedOnce(s Step) Step {
	if s.Steps != nil {
		return s.Steps[0]
	}
	s.RemainingStitches, s.Times = nil, one
	return s
}

// chosen is the profile of a row that can be read in two ways: the one whose count
// the text claims. Where it claims none, or that of both or of neither, it is asked.
func (r *runner) chosen(i int, p *profile, claimed bool) *profile {
	l := &r.piece.Lines[i]
	if l.info.either == nil {
		return p
	}
	switch {
	case l.info.brings:
		return r.bringing(i, p)
	case r.quiet:
		return p
	case l.info.unnamed:
		return r.unnamed(i, p, claimed)
	}
	whole := profileOf(l.info.either, r.size)
	r.spend(2 * r.facts[i].stepCount)
	last := &l.Steps[repeatedIn(l.Steps)]
	how := r.asWhole(l, p, &whole, claimed)
	switch how {
	case wholeNot:
		return p
	case wholeUnsure:
		r.fault(KindQuestion, ReasonAmbiguous, last.at, 0, "is this alone repeated, or all of the row? put what is repeated in brackets")
		return p
	}
	r.fault(KindReading, ReasonReading, last.at, 0, "read as a repeat of all that comes before it"+how)
	return &whole
}

// What asWhole says beside why a row is read as a repeat of all of it.
const (
	wholeNot    = ""
	wholeUnsure = "?"
)

// asWhole says why a row is read as a repeat of all of it, or that it is not, or that this is not sure.
func (r *runner) asWhole(l *Line, p, whole *profile, claimed bool) string {
	a, b := p.work(r.now.left), whole.work(r.now.left)
	if n, ok := r.claimAfter(l, r.now); ok && claimed {
		fitsA := a.reason == "" && r.now.after(p, a).total() == n
		fitsB := b.reason == "" && r.now.after(whole, b).total() == n
		switch {
		case fitsB && !fitsA:
			return ", by the count"
		case fitsA && !fitsB:
			return wholeNot
		}
	}
	switch {
	case b.reason == "" && a.reason != "" && l.Steps[repeatedIn(l.Steps)].ended:
		return ", which alone comes out"
	case b.reason == "" && plainStitches(l.Steps):
		return ": the count is the same either way"
	}
	return wholeUnsure
}

// plainStitches reports whether steps are single knit and purl stitches, which keep the count:
// "k1, p1 around".
func plainStitches(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if s.counted && s.Steps != nil {
			s = &s.Steps[0]
		}
		plain := slices.Contains([]stitch.Op{stitch.Knit, stitch.Purl, stitch.KnitTbl, stitch.PurlTbl}, s.Operation)
		if s.Steps != nil || s.takes != s.leaves || !plain {
			return false
		}
	}
	return true
}
