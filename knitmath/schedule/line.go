package schedule

// A Line is a straight line that Times things are to follow, on places that are
// numbered from 0 to Places - 1. The place that thing i would have by the line is
//
//	(Start + i * Step) / Unit,  i = 0 .. Times-1
//
// in whole numbers, so that everything is exact.
type Line struct {
	Times, Places     int
	Start, Step, Unit int
	// Even is set where intervals of an even number of places are liked better, as they
	// are where a place is a row: what is worked in every second row stays in step.
	// Common practice.
	Even bool
}

// Nearest gives every thing a place of its own, in order, so that the one farthest
// from the line lies as near to it as can be.
//
// Where the line gives things a place or more each, each takes the place nearest to
// its own, half-way up: they stay apart of themselves, and at either end as many
// places are left as the others need. Where it gives them less, the places fall back
// behind the things from one to the next, so that no gap between two of them is of
// use: they take places in succession, from where the first and the last are equally
// far off.
//
// Times must be from 1 to Places.
//
// Source: own derivation.
func (l Line) Nearest() []int {
	places := make([]int, l.Times)
	spare := l.Places - l.Times
	if l.Step < l.Unit {
		first := l.within(2*l.Start+(l.Times-1)*(l.Step-l.Unit), 2*l.Unit, 0, spare)
		for i := range places {
			places[i] = first + i
		}
		return places
	}
	for i := range places {
		places[i] = l.within(l.Start+i*l.Step, l.Unit, i, spare+i)
	}
	return places
}

// within is part/of to the nearest whole number, half-way up, and no lower than low
// and no higher than high.
func (Line) within(part, of, low, high int) int {
	return min(max((2*part+of)/(2*of), low), high) // what a negative part is cut to is below low
}

// Departure is how far from the line the place farthest from it lies, in parts of
// which a place has Unit.
func (l Line) Departure(places []int) int {
	worst := 0
	for i, place := range places {
		off := place*l.Unit - l.Start - i*l.Step
		worst = max(worst, off, -off)
	}
	return worst
}
