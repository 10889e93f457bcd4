package pattern

import "example.com/knitmath/knitmath/stitch"

// facts are what is asked of a row each time it is worked, and does not change.
type facts struct {
	graded      bool // the sizes differ
	picksUp     bool // it takes rows of an edge
	needsHands  bool // counting is not the whole truth of it
	startsOver  bool // its first step is a yarn over
	opensGap    bool // it takes stitches out of the row, or casts some on
	doubles     bool // it makes a stitch double, as after a German turn
	marks       bool // it places or removes markers
	slipsMarker bool // it slips markers
	toMarker    bool // something is worked up to a marker
	stepCount   int  // of all steps, those in groups too
	repeat      *Step
	lastNumber  int32 // the greatest that its label names
	stepsAt     span
}

func factsOf(l *Line) facts {
	var f facts
	for _, q := range l.info.ranges {
		f.lastNumber = max(f.lastNumber, q.last)
	}
	steps := l.worked()
	if len(steps) == 0 {
		f.stepsAt = l.info.at
		return f
	}
	f.gather(steps)
	f.repeat = repeatOf(steps)
	f.opensGap = opensGap(steps)
	f.startsOver = steps[0].Operation == stitch.YO
	if len(l.Steps) == 0 {
		f.stepsAt, f.repeat = l.info.at, nil
		return f
	}
	f.stepsAt = l.Steps[0].at.to(l.Steps[len(l.Steps)-1].at)
	return f
}

func (f *facts) gather(steps []Step) {
	f.stepCount += len(steps)
	for i := range steps {
		s := &steps[i]
		f.graded = f.graded || len(s.Times) > 1 || len(s.RemainingStitches) > 1
		f.marks = f.marks || s.Operation == stitch.PlaceMarker || removes(s.Name)
		f.slipsMarker = f.slipsMarker || s.Operation == stitch.SlipMarker
		f.toMarker = f.toMarker || s.BeforeMarkerStitches != nil
		f.graded = f.graded || len(s.BeforeMarkerStitches) > 1
		f.picksUp = f.picksUp || picksUp(s.Operation)
		f.needsHands = f.needsHands || needsHands(s.Operation)
		f.doubles = f.doubles || s.Operation == stitch.MakeDouble
		f.gather(s.Steps)
	}
}

// repeatOf is the one repeat of a row with a number of times, nil if there are
// none or several.
func repeatOf(steps []Step) *Step {
	var found *Step
	for i := range steps {
		s := &steps[i]
		if s.BeforeMarkerStitches != nil {
			return nil
		}
		if s.stretch() || s.IntoOneStitch || s.Steps == nil && (s.takes < 2 || single(s.Times, 1)) {
			continue
		}
		if found != nil {
			return nil
		}
		found = s
	}
	return found
}

// worked is what a row comes to: its steps, or those of a row of shaping, which the
// text does not write out.
func (l *Line) worked() []Step {
	if l.info.hidden != nil {
		return l.info.hidden
	}
	return l.Steps
}

// movesMarkers reports whether steps place markers, or remove some.
func movesMarkers(steps []Step) bool {
	var f facts
	f.gather(steps)
	return f.marks
}
