package stitch

// Count returns how many stitches the row takes off the left needle and leaves
// on the right, with onNeedle stitches on the left needle at its start. It is
// exact, and its work grows with the steps written, not with the stitches.
//
// A row that ends with a turn may take fewer than onNeedle. Any other row must
// take them all; if it does not, takes and leaves are returned all the same,
// together with a *RowError of reason STITCHES_UNWORKED. With every other error,
// also a *RowError, they are zero.
//
// Count knows only numbers; whether a stitch can be worked as told is for the
// Machine to say.
func (r Row) Count(onNeedle int) (takes, leaves int, err error) {
	if onNeedle < 0 || onNeedle > MaxStitches {
		return 0, 0, &RowError{Left: onNeedle, Reason: ReasonTooLarge}
	}
	var t tally
	for i, s := range r.Steps {
		path := []Place{{Step: i, Time: 1}}
		one, fault := countStep(s, onNeedle-t.takes, path, i == len(r.Steps)-1)
		if fault == nil {
			t.add(one, 1)
			fault = t.check(onNeedle, path)
		}
		if fault != nil {
			return 0, 0, fault
		}
	}
	if onNeedle-t.takes+t.leaves > MaxStitches {
		return 0, 0, &RowError{Left: onNeedle - t.takes, Reason: ReasonTooLarge}
	}
	if left := onNeedle - t.takes; left > 0 && !r.EndsRow() {
		return t.takes, t.leaves, &RowError{Left: left, Reason: ReasonUnworked}
	}
	return t.takes, t.leaves, nil
}

// tally adds up what steps take and leave, and how many operations they are.
// No part of it exceeds the limits, so products fit an int64 with room to spare.
type tally struct {
	takes, leaves, ops int
}

func (t *tally) add(u tally, times int) {
	t.takes += u.takes * times
	t.leaves += u.leaves * times
	t.ops += u.ops * times
}

// check reports what is beyond the limits, if anything.
func (t tally) check(left int, path []Place) *RowError {
	if t.leaves > MaxStitches || t.ops > MaxOperations {
		return &RowError{Path: path, Left: left - t.takes, Reason: ReasonTooLarge}
	}
	return nil
}

// countStep tallies one step with left stitches before it. A nested step has a
// path longer than one; last says that it ends the row.
func countStep(s Step, left int, path []Place, last bool) (tally, *RowError) {
	switch s.kind() {
	case kindCount:
		return countTimes(s, left, path, last && len(path) == 1)
	case kindToLast:
		return countToLast(s, left, path)
	case kindGroup:
		if len(path) <= MaxDepth {
			return countGroup(s, left, path)
		}
		return tally{}, &RowError{Path: path, Op: s.Op, Left: left, Reason: ReasonTooDeep}
	}
	return tally{}, &RowError{Path: path, Op: s.Op, Left: left, Reason: ReasonMalformed}
}

// countTimes tallies an operation worked a number of times; turns may end the row
// here.
func countTimes(s Step, left int, path []Place, turns bool) (tally, *RowError) {
	takes := s.Op.Takes()
	if s.Op.EndsRow() && (!turns || s.Count > 1) {
		return tally{}, &RowError{Path: path, Op: s.Op, Left: left, Reason: ReasonTurnInside}
	}
	if fits := left / max(takes, 1); takes > 0 && s.Count > fits {
		path[len(path)-1].Time = fits + 1
		return tally{}, &RowError{Path: path, Op: s.Op, Needed: takes, Left: left - fits*takes, Reason: ReasonMissing}
	}
	if s.Count > MaxOperations {
		return tally{}, &RowError{Path: path, Op: s.Op, Left: left, Reason: ReasonTooLarge}
	}
	return tally{s.Count * takes, s.Count * s.Op.Leaves(), s.Count}, nil
}

// countToLast tallies an operation worked until some stitches remain.
func countToLast(s Step, left int, path []Place) (tally, *RowError) {
	takes, over := s.Op.Takes(), left-*s.ToLast
	fail := func(needed int, reason Reason) (tally, *RowError) {
		return tally{}, &RowError{Path: path, Op: s.Op, Needed: needed, Left: left, Reason: reason}
	}
	switch {
	case takes == 0:
		return fail(0, ReasonMalformed)
	case len(path) > 1:
		return fail(*s.ToLast, ReasonToLast)
	case over < 0:
		return fail(*s.ToLast, ReasonMissing)
	case over%takes != 0:
		return fail(takes, ReasonUneven)
	}
	n := over / takes
	return tally{over, n * s.Op.Leaves(), n}, nil
}

// countGroup tallies one working of the group and multiplies. If the group does
// not fit so many times, the first working that does not is walked for its place.
func countGroup(s Step, left int, path []Place) (tally, *RowError) {
	once, fault := countOnce(s, left, path)
	if fault != nil {
		return tally{}, fault
	}
	if s.Times > MaxOperations {
		return tally{}, &RowError{Path: path, Left: left, Reason: ReasonTooLarge}
	}
	if once.takes > 0 && s.Times > left/once.takes {
		fits := left / once.takes
		path[len(path)-1].Time = fits + 1
		_, fault = countOnce(s, left-fits*once.takes, path)
		return tally{}, fault
	}
	var t tally
	t.add(once, s.Times)
	return t, t.check(left, path)
}

func countOnce(s Step, left int, path []Place) (tally, *RowError) {
	var t tally
	for i, inner := range s.Group {
		at := append(path[:len(path):len(path)], Place{Step: i, Time: 1})
		one, fault := countStep(inner, left-t.takes, at, false)
		if fault == nil {
			t.add(one, 1)
			fault = t.check(left, at)
		}
		if fault != nil {
			return tally{}, fault
		}
	}
	return t, nil
}
