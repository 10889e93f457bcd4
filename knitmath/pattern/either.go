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
// "k6, k2tog around" may repeat the whole, or the last of it alone.
func (p *parser) either(line *Line) {
	if other, found := broughtSteps(line.Steps); found {
		line.info.either, line.info.brings = other, true
		return
	}
	if other, found := betweenStitches(line.Steps); found && p.own["inc"].name == "" {
		line.info.either, line.info.unnamed = other, true
		return
	}
	n := len(line.Steps)
	if n < 2 {
		return
	}
	last := &line.Steps[n-1]
	if !single(last.RemainingStitches, 0) || !last.counted && (last.takes == last.leaves || last.Operation == 0 && last.Name == "") ||
		last.Operation == stitch.BindOff || last.Name == "hold" {
		return
	}
	for i := range line.Steps[:n-1] {
		if s := &line.Steps[i]; s.stretch() || s.Operation.EndsRow() {
			return
		}
	}
	group := append([]Step(nil), line.Steps...)
	group[n-1] = workedOnce(*last)
	line.info.either = []Step{{Steps: group, RemainingStitches: toEnd, at: line.Steps[0].at.to(last.at)}}
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
	whole := profileOf(l.info.either, r.size)
	r.spend(2 * r.facts[i].stepCount)
	if n, ok := r.claimAfter(l, r.now); ok && claimed {
		a, b := p.work(r.now.left), whole.work(r.now.left)
		fitsA := a.reason == "" && r.now.after(p, a).total() == n
		fitsB := b.reason == "" && r.now.after(&whole, b).total() == n
		switch {
		case fitsB && !fitsA:
			r.fault(KindReading, ReasonReading, l.Steps[len(l.Steps)-1].at, 0, "read as a repeat of all that comes before it, by the count")
			return &whole
		case fitsA && !fitsB:
			return p
		}
	}
	if b := whole.work(r.now.left); plainStitches(l.Steps) && b.reason == "" {
		r.fault(KindReading, ReasonReading, l.Steps[len(l.Steps)-1].at, 0,
			"read as a repeat of all that comes before it: the count is the same either way")
		return &whole
	}
	r.fault(KindQuestion, ReasonAmbiguous, l.Steps[len(l.Steps)-1].at, 0,
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
