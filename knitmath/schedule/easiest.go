package schedule

import "math"

// Easiest looks for the least there is to remember: of the schedules of at most two
// runs, each of equal intervals or of two in alternation, that depart from the line
// by at most so many parts, the one of least effort. Among those of equal effort it is the
// one that departs least, and of these the one with the shorter intervals first. One of
// even intervals is taken before it, where they are liked better, if it departs by no
// more than a quarter of a step further. The intervals of a schedule are counted in
// places.
//
// The two intervals of a schedule are one apart: those around what the line gives,
// since a run of another drifts from it twice as fast, or the next shorter ones, where
// there are too few places for the longer.
//
// Only where none of those lies near enough a run may be of three or four intervals in turn, the last of them
// another than the rest, as the rows between "3 of every 4 rows" are; see tryTurns.
//
// It looks at 20 forms or fewer for each thing. Source: own derivation.
func (l Line) Easiest(departure int) (first int, s Schedule, ok bool) {
	f := finder{line: l, departure: departure}
	if l.Times == 1 {
		f.try(form{})
		return f.any.first, nil, f.any.found
	}
	f.tryPairs()
	if !f.any.found {
		f.tryTurns()
	}
	best := f.any
	if f.even.found && f.even.effort == best.effort && 4*(f.even.off-best.off) <= l.Step {
		best = f.even
	}
	return best.first, best.rhythm.schedule(), best.found
}

// LeastDeparture is how far the nearest of those schedules departs, however much there is to it, and false if there is none
// that has room.
func (l Line) LeastDeparture() (int, bool) {
	f := finder{line: l, departure: math.MaxInt, nearest: true}
	if l.Times == 1 {
		f.try(form{})
		return f.departure, f.any.found
	}
	f.tryPairs()
	f.tryTurns()
	return f.departure, f.any.found
}

// tryPairs tries the two pairs of intervals about what the line gives.
func (f *finder) tryPairs() {
	l := f.line
	for short := l.Step/l.Unit - 1; short <= l.Step/l.Unit; short++ {
		f.tryPair(max(short, 1), l.Times-1)
	}
}

// tryPair tries what can be made of an interval and the next longer one.
func (f *finder) tryPair(short, intervals int) {
	long := short + 1
	f.try(form{{short, 0, intervals}})
	f.try(form{{long, 0, intervals}})
	for n := 1; n < intervals && !f.settled(4); n++ {
		f.try(form{{short, 0, n}, {long, 0, intervals - n}})
		f.try(form{{long, 0, n}, {short, 0, intervals - n}})
	}
	for _, pair := range [2][2]int{{short, long}, {long, short}} {
		if intervals%2 == 0 && !f.settled(5) {
			f.try(form{{pair[0], pair[1], intervals / 2}})
		}
		for n := 1; 2*n < intervals && !f.settled(7); n++ {
			turns := turn{pair[0], pair[1], n}
			for _, other := range pair {
				rest := turn{other, 0, intervals - 2*n}
				f.try(form{turns, rest})
				f.try(form{rest, turns})
			}
		}
	}
}

// A form is a schedule of up to two runs that takes no memory of its own: there are
// many, and one is kept.
type form [2]turn

// A turn is a run. Its second interval is 0 where it has none.
type turn struct{ every, second, times int }

// places is how many places one turn takes, and intervals how many intervals it has.
func (t turn) places() int { return t.every + t.second }
func (t turn) intervals() int {
	if t.second > 0 {
		return 2
	}
	return 1
}

// effort is that of its schedule.
func (f form) effort() int { return rhythm{form: f}.effort() }

// odd reports whether any interval is of an odd number of places.
func (f form) odd() bool {
	for _, t := range f {
		if t.times > 0 && (t.every%2 != 0 || t.second%2 != 0) {
			return true
		}
	}
	return false
}

// finder keeps the best forms seen so far.
type finder struct {
	line      Line
	departure int // the most that is allowed
	// nearest is set where only that matters: what is found allows no more than it departs itself.
	nearest bool

	any, even candidate // even only where it is asked for
}

// settled reports whether nothing of this effort can be better than the best.
func (f *finder) settled(effort int) bool { return f.any.found && f.any.effort < effort }

// A candidate is a form with its first place, and what it takes.
type candidate struct {
	found       bool
	first       int
	rhythm      rhythm
	effort, off int
}

// keep keeps the better of two: the easier, or as easy and nearer.
func (c *candidate) keep(other candidate) {
	if !c.found || other.effort < c.effort || other.effort == c.effort && other.off < c.off {
		*c = other
	}
}

// try keeps a form if it is near enough to the line and better than the best.
func (f *finder) try(s form) { f.tryRhythm(rhythm{form: s}) }

func (f *finder) tryRhythm(s rhythm) {
	first, off, ok := f.line.layRhythm(s)
	if !ok || off > f.departure {
		return
	}
	if f.nearest {
		f.departure, f.any = off, candidate{found: true, effort: math.MaxInt}
		return
	}
	c := candidate{true, first, s, s.effort(), off}
	f.any.keep(c)
	if f.line.Even && !s.odd() {
		f.even.keep(c)
	}
}

// lay puts a form where the first and the last of its departures are alike, as far as
// the places go: its first place, and how far it departs.
func (l Line) lay(s form) (first, off int, ok bool) { return l.layRhythm(rhythm{form: s}) }

func (l Line) layRhythm(s rhythm) (first, off int, ok bool) {
	low, high, length := l.drift(s)
	if length >= l.Places {
		return 0, 0, false
	}
	first = l.within(2*l.Start-low-high, 2*l.Unit, 0, l.Places-1-length)
	at := first*l.Unit - l.Start
	return first, max(at+high, -at-low), true
}
