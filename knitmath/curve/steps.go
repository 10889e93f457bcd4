package curve

import "example.com/knitmath/knitmath/stitch"

// What there is to remember: of a run, how many stitches how often; of rows worked
// even before one, how many.
const (
	effortOfRun  = 2
	effortOfWait = 1
	// Of two intervals that take turns one more number, and which of them is next: as much
	// as in package schedule.
	effortOfTurns = 5
)

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
	if s.tooLate(x) && !s.mayEnd(at.lost+size, size, int(x.first), every) {
		return
	}
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

// mayEnd reports whether a run of equal steps, with so many stitches lost after a row, could
// end with the last stitch.
func (s *search) mayEnd(lost, size, row, every int) bool {
	left := s.Stitches - lost
	return left%size == 0 && row+every*(left/size) <= s.Rows
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
