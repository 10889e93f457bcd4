package curve

import (
	"math"
	"slices"
)

// search keeps the states that lie near enough to the curve, and goes from those of
// least effort to those of more.
type search struct {
	*planner
	*workspace // levels are the states of each effort, in the order they were found
	moods      int
	found      int  // the least effort of a way to the end so far, or unfound
	soonest    int  // the first row after which all stitches may be lost
	ending     bool // only runs that end with the last stitch are tried

	at   place  // where it goes on from
	from *state // and how that is reached
}

// unfound is more effort than any plan takes.
const unfound = math.MaxInt32

// easiest is the plan of least effort within what is allowed; false if there is none, as
// there may be of steady ones.
func (p *planner) easiest() ([]Run, int, bool) {
	s := search{planner: p, workspace: p.space, moods: int(moods), found: unfound}
	s.bands = ofLength(s.bands, p.Rows+1)
	s.soonest = p.Rows
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
		if to == p.Stitches {
			s.soonest = min(s.soonest, row)
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
		// Most states are those of the last effort before the end, of which all but one run leads
		// nowhere: that one is looked for first.
		// Edges that are not steady may be longer than any cap, of many efforts, and are not worth it.
		s.goFrom(effort, true)
		if s.found > effort+effortOfRun {
			s.goFrom(effort, false)
		}
	}
	return nil, 0, false
}

// goFrom goes on from all states of an effort, or tries only what ends with the last stitch.
func (s *search) goFrom(effort int, ending bool) {
	s.ending = ending
	for _, i := range s.levels[effort] {
		if x := &s.all[i]; int(x.effort) == effort {
			s.at, s.from = place{int(x.row), int(x.lost), mood(int(i) % s.moods)}, x
			s.goOn()
		}
	}
}

// goOn tries what may come after a state: a run at once, a run after as many rows as it
// has between its steps, or rows worked even.
func (s *search) goOn() {
	if int(s.from.effort)+effortOfRun > s.found {
		return // whatever comes after is more than the easiest
	}
	at := s.at
	next := at.row + 1
	if last, _ := at.mood.leaning(); last == afterGroup {
		next += s.later()
	}
	tried := [2]bool{} // runs that begin in the first row that may have them
	for first := next; first <= s.Rows; first++ {
		foot := s.off(at.lost, first-1)
		if foot > s.allowed && s.under(at.lost, first-1) {
			return // it has waited too long
		}
		if s.singles[first] {
			s.runs(first, first-next+1, !tried[0], false, foot)
			tried[0] = true
		}
		if s.groups[first] && !tried[1] {
			s.runs(first, first-next+1, true, true, foot)
			tried[1] = true
		}
		if !s.steady && !s.ending && at.mood != afterEven && first > next && (s.singles[first] || s.groups[first]) {
			s.keep(&state{effort: s.from.effort + effortOfWait, before: int32(s.index(at)), squares: s.from.squares},
				place{first - 1, at.lost, afterEven})
		}
	}
}

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
	runs := make([]Run, 0, 4)
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
