package curve

import (
	"math"
	"slices"

	"example.com/knitmath/knitmath/stitch"
)

// What there is to remember: of a run, how many stitches how often; of rows worked
// even before one, how many.
const (
	effortOfRun  = 2
	effortOfWait = 1
	// Of two intervals that take turns one more number, and which of them is next: as much
	// as in package schedule.
	effortOfTurns = 5
)

// A state is an edge of which so many stitches are lost after a row, and the best way
// to it.
type state struct {
	row     int32
	lost    int32
	effort  int32 // noState if there is no way
	before  int32 // the state that the way comes from, or noState
	first   int32 // where its last run begins; 0 of rows worked even
	every   int32
	other   int32 // takes turns with it, 0 if none does
	times   int32
	size    int32
	pace    int32 // rows to a stitch of its last run, in parts of a row
	squares int64
}

// paceParts is in how many parts of a row a pace is told.
const paceParts = 840

const noState = -1

// A mood is what came last: a single, a group, or rows worked even.
type mood int

const (
	afterSingle mood = iota
	afterGroup
	afterEven
	moods
)

// Of a steady plan, whether the edge has begun to lean more again: then it may not grow
// steeper any more.
const (
	leaningSingle mood = iota + moods
	leaningGroup
	steadyMoods
)

// leaning is what came last without that.
func (m mood) leaning() (mood, bool) {
	if m >= moods {
		return m - moods, true
	}
	return m, false
}

// search keeps the states that lie near enough to the curve, and goes from those of
// least effort to those of more.
type search struct {
	*planner
	*workspace // levels are the states of each effort, in the order they were found
	moods      int
	found      int // the least effort of a way to the end so far, or unfound
}

// unfound is more effort than any plan takes.
const unfound = math.MaxInt32

// A band is which numbers of stitches may be lost after a row.
type band struct{ from, to, at int }

// A place is a state by what it is.
type place struct {
	row, lost int
	mood      mood
}

// easiest is the plan of least effort within what is allowed; false if there is none, as
// there may be of steady ones.
func (p *planner) easiest() ([]Run, int, bool) {
	s := search{planner: p, workspace: p.space, moods: int(moods), found: unfound}
	s.bands = ofLength(s.bands, p.Rows+1)
	if p.steady {
		s.moods = int(steadyMoods)
	}
	from, to, at := 0, 0, 0
	for row := 0; row <= p.Rows; row++ {
		for from < p.Stitches && p.behind(from, max(row-1, 0)) {
			from++
		}
		for to < p.Stitches && !p.ahead(to+1, min(row+p.later(), p.Rows)) {
			to++
		}
		s.bands[row] = band{from, to, at}
		at += s.moods * max(0, to-from+1)
	}
	s.all = ofLength(s.all, at)
	for i := range s.all {
		s.all[i].effort = noState
	}
	start := place{}
	s.all[s.index(start)] = state{before: noState}
	for i := range s.levels {
		s.levels[i] = s.levels[i][:0]
	}
	s.reach(0, s.index(start))
	for effort := 0; effort < len(s.levels); effort++ {
		if end := s.end(effort); end != noState {
			return s.back(end), effort, true
		}
		for _, i := range s.levels[effort] {
			if x := s.all[i]; int(x.effort) == effort {
				s.goOn(place{int(x.row), int(x.lost), mood(int(i) % s.moods)})
			}
		}
	}
	return nil, 0, false
}

// index is where a state is kept, or noState if it lies too far off.
func (s *search) index(at place) int {
	b := s.bands[at.row]
	if at.lost < b.from || at.lost > b.to {
		return noState
	}
	return b.at + s.moods*(at.lost-b.from) + int(at.mood)
}

// goOn tries what may come after a state: a run at once, a run after as many rows as it
// has between its steps, or rows worked even.
func (s *search) goOn(at place) {
	next := at.row + 1
	if last, _ := at.mood.leaning(); last == afterGroup {
		next += s.later()
	}
	tried := [2]bool{} // runs that begin in the first row that may have them
	for first := next; first <= s.Rows && !s.behind(at.lost, first-1); first++ {
		if s.singles[first] {
			s.runs(at, first, first-next+1, !tried[0], false)
			tried[0] = true
		}
		if s.groups[first] && !tried[1] {
			s.runs(at, first, first-next+1, true, true)
			tried[1] = true
		}
		if !s.steady && at.mood != afterEven && first > next && (s.singles[first] || s.groups[first]) {
			i := s.index(at)
			s.keep(state{effort: s.all[i].effort + effortOfWait, before: int32(i), squares: s.all[i].squares},
				place{first - 1, at.lost, afterEven})
		}
	}
}

// runs tries runs that begin in a row, so many after the last one worked, with steps of
// all sizes. Where they could have begun sooner only that interval is tried again.
func (s *search) runs(at place, first, after int, soonest, group bool) {
	smallest, largest, to := 1, s.most, afterSingle
	if group {
		// Fewer would lie too far out already.
		smallest, largest, to = max(s.smallest, s.bands[first].from-at.lost), s.widest, afterGroup
	}
	from := s.all[s.index(at)]
	if s.off(at.lost, first-1) > s.allowed {
		return
	}
	start := state{effort: from.effort + effortOfRun, before: int32(s.index(at)), first: int32(first), times: 1, pace: from.pace}
	for size := smallest; size <= min(largest, s.Stitches-at.lost); size++ {
		if s.ahead(at.lost+size, first) {
			return
		}
		off, mean := s.corners(first, at.lost, size, group)
		if off > s.allowed {
			continue
		}
		x := start
		x.size, x.squares = int32(size), from.squares+s.square(first, size, group, mean)
		if soonest || !s.steady {
			s.keepAt(at, x, 0, place{first, at.lost + size, to})
		}
		if !soonest {
			s.repeat(at, x, after, after, to)
			continue
		}
		again := x
		for every := 1; first+every <= s.Rows && !s.behind(at.lost+size, first+every-1); every++ {
			if s.may(first+every, group) {
				again.squares = x.squares
				if every != after {
					again.squares++ // of equals, the first step belongs to the run before
				}
				s.repeat(at, again, every, after, to)
				if group {
					break // the trade says no intervals of bind-offs
				}
				s.turns(at, again, every, after)
			}
		}
	}
}

// repeat works a first step again and again, as long as it lies near enough.
func (s *search) repeat(at place, x state, every, after int, to mood) {
	x.every = int32(every)
	size := int(x.size)
	for lost, row := at.lost+size, int(x.first)+every; row <= s.Rows && lost+size <= s.Stitches; row += every {
		if !s.may(row, to == afterGroup) {
			return
		}
		off, mean := s.corners(row, lost, size, to == afterGroup)
		if off > s.allowed {
			return
		}
		x.squares += s.square(row, size, to == afterGroup, mean)
		lost += size
		x.times++
		if s.steady && row-int(x.first) > int(x.first)-at.row && x.times == 2 {
			continue // a longer stretch that stands alone
		}
		s.keepAt(at, x, every, place{row, lost, to})
	}
}

// fewestTurns are how many steps two intervals that take turns have at least.
const fewestTurns = 4

// turns works a first single again and again at two intervals in turn, the nearest to one
// another that there are: no single interval follows a straight line, and many runs of two
// do not read well. With the first interval before it the first step belongs to a turn.
func (s *search) turns(at place, x state, every, after int) {
	if !s.straight || s.steady { // which has no two intervals in turn
		return
	}
	apart, size := 1, int(x.size)
	if !s.singles[1] || s.Rows > 1 && !s.singles[2] {
		apart = 2 // every second row may decrease
	}
	x.effort += effortOfTurns - effortOfRun
	x.every = int32(every)
	for _, other := range [2]int{every - apart, every + apart} {
		if other < 1 {
			continue
		}
		x := x
		x.other = int32(other)
		lost, row, next := at.lost+size, int(x.first)+every, other
		for row <= s.Rows && lost+size <= s.Stitches && s.may(row, false) {
			off, mean := s.corners(row, lost, size, false)
			if off > s.allowed {
				break
			}
			x.squares += s.square(row, size, false, mean)
			lost += size
			if x.times++; x.times >= fewestTurns && (x.times%2 == 1 || after == other) {
				s.keepAt(at, x, every, place{row, lost, afterSingle})
			}
			row, next = row+next, every+other-next
		}
	}
}

// may reports whether a row may have such a step.
func (s *search) may(row int, group bool) bool {
	if group {
		return s.groups[row]
	}
	return s.singles[row]
}

// keepAt keeps a run whose steps are so many rows apart, unless a steady edge would lean
// more and then grow steeper again.
func (s *search) keepAt(from place, x state, every int, at place) {
	if at.lost < s.Stitches && int(x.effort)+effortOfRun > s.found {
		return // the end is nearer already
	}
	if s.steady {
		_, leans := from.mood.leaning()
		if !x.goes(int(x.first)-from.row, &leans) || x.times > 1 && !x.goes(every, &leans) {
			return
		}
		if leans {
			at.mood += moods
		}
	}
	s.keep(x, at)
}

// goes takes the pace of a step that comes so many rows after the last, and tells whether
// the edge leans more from there on; false if it did and now grows steeper.
func (x *state) goes(rows int, leans *bool) bool {
	pace := int32(rows * paceParts / int(x.size))
	if *leans && pace > x.pace {
		return false
	}
	*leans = *leans || pace < x.pace
	x.pace = pace
	return true
}

// keep keeps the easier way to a state, or of equal ones the nearer.
func (s *search) keep(x state, at place) {
	i := s.index(at)
	if i == noState {
		return
	}
	to := &s.all[i]
	if to.effort != noState && (to.effort < x.effort || to.effort == x.effort && to.squares <= x.squares) {
		return
	}
	if to.effort != x.effort {
		s.reach(int(x.effort), i)
	}
	if at.lost == s.Stitches {
		s.found = min(s.found, int(x.effort))
	}
	x.row, x.lost = int32(at.row), int32(at.lost)
	*to = x
}

// reach lists a state among those of its effort.
func (s *search) reach(effort, i int) {
	for len(s.levels) <= effort {
		s.levels = append(s.levels, nil)
	}
	s.levels[effort] = append(s.levels[effort], int32(i))
}

// square is what a departure weighs, for each stitch of the step, in thousandths of a
// stitch.
func (p *planner) square(row, stitches int, group bool, off int64) int64 {
	off /= 1_000
	weight := off * off
	if !group && SideOf(row, p.first) == stitch.WrongSide {
		weight += wrongSide * wrongSide
	}
	return weight * int64(stitches)
}

// wrongSide is how much farther off a decrease may lie, in thousandths of a stitch, before
// it comes on a wrong-side row instead, where it is less easy to see and to work. Own choice.
const wrongSide = 100

// end is the nearest state of an effort that has lost all stitches.
func (s *search) end(effort int) int {
	best := noState
	for _, i := range s.levels[effort] {
		x := s.all[i]
		if int(x.lost) == s.Stitches && int(x.effort) == effort && (best == noState || x.squares < s.all[best].squares) {
			best = int(i)
		}
	}
	return best
}

// back are the runs on the way to a state.
func (s *search) back(end int) []Run {
	var runs []Run
	for i := end; s.all[i].before != noState; i = int(s.all[i].before) {
		x := s.all[i]
		if x.first == 0 {
			continue
		}
		kind := s.single
		if last, _ := mood(i % s.moods).leaning(); last == afterGroup {
			kind = s.group
		}
		runs = append(runs, Run{Kind: kind, Stitches: int(x.size), FirstRowNumber: int(x.first), EveryRows: int(x.every),
			AlternateRows: int(x.other), Times: int(x.times)})
	}
	slices.Reverse(runs)
	return runs
}
