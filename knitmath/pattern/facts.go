package pattern

import "example.com/knitmath/knitmath/stitch"

// facts are what is asked of a row each time it is worked, and does not change.
type facts struct {
	graded     bool // the sizes differ
	picksUp    bool // it takes rows of an edge
	needsHands bool // counting is not the whole truth of it
	startsOver bool // its first step is a yarn over
	stepCount  int  // of all steps, those in groups too
	repeat     *Step
	lastNumber int32 // the greatest that its label names
	stepsAt    span
}

func factsOf(l *Line) facts {
	var f facts
	for _, q := range l.info.ranges {
		f.lastNumber = max(f.lastNumber, q.last)
	}
	if len(l.Steps) == 0 {
		f.stepsAt = l.info.at
		return f
	}
	f.gather(l.Steps)
	f.repeat = repeatOf(l.Steps)
	f.startsOver = l.Steps[0].Operation == stitch.YO
	f.stepsAt = l.Steps[0].at.to(l.Steps[len(l.Steps)-1].at)
	return f
}

func (f *facts) gather(steps []Step) {
	f.stepCount += len(steps)
	for i := range steps {
		s := &steps[i]
		f.graded = f.graded || len(s.Times) > 1 || len(s.RemainingStitches) > 1
		f.picksUp = f.picksUp || picksUp(s.Operation)
		f.needsHands = f.needsHands || needsHands(s.Operation)
		f.gather(s.Steps)
	}
}

// repeatOf is the one repeat of a row with a number of times, nil if there are
// none or several.
func repeatOf(steps []Step) *Step {
	var found *Step
	for i := range steps {
		s := &steps[i]
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
