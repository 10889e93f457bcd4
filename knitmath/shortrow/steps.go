package shortrow

import (
	"math"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
)

// Steps are the stitches from one turn of a flank to the next, from the tall end: a
// run of equal ones, or two runs whose steps are a stitch apart. A second run that
// comes no time is none.
type steps [2]TurnRun

// length is how many stitches lie between the first turn and the last.
func (s steps) length() int { return s[0].Stitches*s[0].Times + s[1].Stitches*s[1].Times }

// places are those of the turns, the first of which is given.
func (s steps) places(first int) []int {
	places := []int{first}
	for _, run := range s {
		for range run.Times {
			first += run.Stitches
			places = append(places, first)
		}
	}
	return places
}

// easiest is the places of the turns with the least to remember of those that depart
// from the line by at most so many parts, of these those that depart least, and of
// these those with the shorter steps; nil if there are none. To remember there are
// the stitches that the turns begin with at the edge, unless they are as many as the
// first step has, and two numbers of each run.
//
// Source: own derivation.
func (f flank) easiest(shortest bool, departure int) []int {
	if f.turns == 1 {
		return f.line().Nearest()
	}
	find := finder{flank: f, line: f.line(), shortest: shortest, off: departure + 1}
	for runs := 1; runs <= 2; runs++ {
		for _, alike := range [2]bool{true, false} {
			find.alike = alike
			find.tryAll(runs)
			if find.found {
				return find.best.places(find.first)
			}
		}
	}
	return nil
}

// straightest is the places of those turns in one or two runs that depart least.
func (f flank) straightest(shortest bool) []int {
	find := finder{flank: f, line: f.line(), shortest: shortest, off: math.MaxInt}
	find.tryAll(1)
	find.tryAll(2)
	return find.best.places(find.first)
}

// finder keeps the turns that depart least of those it has tried.
type finder struct {
	flank
	line     schedule.Line
	shortest bool // the shortest row is worked first
	alike    bool // only turns that begin at the edge with as many stitches as a step

	off   int // parts of the line that the best depart by, or one more than is allowed
	found bool
	best  steps
	first int // place of the first of the best
}

// tryAll tries all steps of one run, or of two.
func (f *finder) tryAll(runs int) {
	intervals := f.turns - 1
	for short := 1; short*intervals < f.most; short++ {
		// Steps that are all longer or all shorter than the line's drift from it one way,
		// and the middle of that is as near as they can lie.
		drift := max(short*f.line.Unit-f.line.Step, f.line.Step-(short+1)*f.line.Unit)
		if drift > 0 && drift*intervals/2 >= f.off {
			continue
		}
		if runs == 1 {
			f.try(steps{{short, intervals}})
			continue
		}
		for n := 1; n < intervals; n++ {
			f.try(steps{{short, n}, {short + 1, intervals - n}})
			f.try(steps{{short + 1, n}, {short, intervals - n}})
		}
	}
}

// try keeps steps that depart less than the best.
func (f *finder) try(s steps) {
	spare := f.most - 1 - s.length()
	if spare < 0 {
		return
	}
	low, high := f.drift(s)
	// Where the least and the greatest of the distances are alike.
	first := min(max(int(measure.HalfUpDiv(int64(2*f.line.Start-low-high), int64(2*f.line.Unit))), 0), spare)
	if f.alike {
		var ok bool
		if first, ok = f.begin(s); !ok || first < 0 || first > spare {
			return
		}
	}
	at := first*f.line.Unit - f.line.Start
	if off := max(at+high, -at-low); off < f.off {
		f.off, f.found, f.best, f.first = off, true, s, first
	}
}

// begin is the place of the first turn for which the work begins at an edge with as
// many stitches as its first step has: left unworked beyond the longest row, or worked
// by the shortest. It begins at no edge where the other flank lies there.
func (f *finder) begin(s steps) (first int, ok bool) {
	if f.shortest {
		return s[0].Stitches - 1, f.tall != TallEndCentre
	}
	last := s[0].Stitches
	if s[1].Times > 0 {
		last = s[1].Stitches
	}
	stitches := f.width
	if f.tall == TallEndCentre {
		stitches = (f.width + 1) / 2
	}
	return stitches - last - s.length() - 1, f.tall != TallEndSides
}

// drift is how far steps run from the line that their first turn lies on: the farthest
// to either side, in parts. Along a run it is straight, so that it is farthest at an
// end of one.
func (f *finder) drift(s steps) (low, high int) {
	at := 0
	for _, run := range s {
		at += run.Times * (run.Stitches*f.line.Unit - f.line.Step)
		low, high = min(low, at), max(high, at)
	}
	return low, high
}
