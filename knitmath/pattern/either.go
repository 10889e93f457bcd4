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
	last := repeatedIn(line.Steps)
	if last == nil || last == &line.Steps[0] {
		return
	}
	n := 1
	for last != &line.Steps[n-1] {
		n++
	}
	if !last.ended && !single(last.RemainingStitches, 0) || !last.counted && (last.takes == last.leaves || last.Operation == 0 && last.Name == "") ||
		last.Operation == stitch.BindOff || last.Name == "hold" {
		return
	}
	for i := range line.Steps[:n-1] {
		if s := &line.Steps[i]; s.stretch() || s.Operation.EndsRow() {
			return
		}
	}
	group := append([]Step(nil), line.Steps[:n]...)
	group[n-1] = workedOnce(*last)
	whole := Step{Steps: group, RemainingStitches: last.RemainingStitches, at: line.Steps[0].at.to(last.at)}
	line.info.either = append([]Step{whole}, line.Steps[n:]...)
}

// repeatedIn is the step of a row that is worked up to its end, or to what it is said to end with; nil for no steps.
func repeatedIn(steps []Step) *Step {
	for i := range steps {
		if i == len(steps)-1 || steps[i].ended {
			return &steps[i]
		}
	}
	return nil
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
	if l.info.brings {
		return r.bringing(i, p)
	}
	if r.quiet {
		return p
	}
	if l.info.unnamed {
		return r.unnamed(i, p, claimed)
	}
	last, whole := repeatedIn(l.Steps), profileOf(l.info.either, r.size)
	r.spend(2 * r.facts[i].stepCount)
	if n, ok := r.claimAfter(l, r.now); ok && claimed {
		a, b := p.work(r.now.left), whole.work(r.now.left)
		fitsA := a.reason == "" && r.now.after(p, a).total() == n
		fitsB := b.reason == "" && r.now.after(&whole, b).total() == n
		switch {
		case fitsB && !fitsA:
			r.fault(KindReading, ReasonReading, last.at, 0, "read as a repeat of all that comes before it, by the count")
			return &whole
		case fitsA && !fitsB:
			return p
		}
	}
	b := whole.work(r.now.left)
	if last.ended && b.reason == "" && p.work(r.now.left).reason != "" {
		r.fault(KindReading, ReasonReading, last.at, 0, "read as a repeat of all that comes before it, which alone comes out")
		return &whole
	}
	if plainStitches(l.Steps) && b.reason == "" {
		r.fault(KindReading, ReasonReading, last.at, 0,
			"read as a repeat of all that comes before it: the count is the same either way")
		return &whole
	}
	r.fault(KindQuestion, ReasonAmbiguous, last.at, 0,
		"is this alone repeated, or all of the row? put what is repeated in brackets")
	return p
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
