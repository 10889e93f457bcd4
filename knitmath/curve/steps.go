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
// all sizes. Where they could have begun sooner only that interval is tried again. The place lies so far off at
// the row's foot.
func (s *search) runs(first, after int, soonest, group bool, foot int64) {
	smallest, largest, to := 1, s.most, afterSingle
	if group {
		// Fewer would lie too far out already.
		smallest, largest, to = max(s.smallest, s.bands[first].from-s.at.lost), s.widest, afterGroup
	}
	if s.ending && !soonest && first+after*((s.Stitches-s.at.lost)/largest-1) > s.Rows {
		return // there are too few rows for it to end
	}
	if foot > s.allowed {
		return
	}
	start := state{effort: s.from.effort + effortOfRun, before: int32(s.index(s.at)), first: int32(first), times: 1, pace: s.from.pace}
	for size := smallest; size <= min(largest, s.Stitches-s.at.lost); size++ {
		top := s.off(s.at.lost+size, first)
		if top > s.allowed && s.over(s.at.lost+size, first) {
			return
		}
		if s.ending && !s.ends(first, s.Stitches-s.at.lost, size, group) {
			continue
		}
		off, mean := s.corners(first, s.at.lost, size, group, foot, top)
		if off > s.allowed {
			continue
		}
		x := start
		x.size, x.squares = int32(size), s.from.squares+s.square(first, size, group, mean)
		s.intervals(&x, after, soonest, to)
	}
}

// ends reports whether a run that begins in a row may lose what is left in steps of a size, none
// too many, and end neither too soon nor too late.
func (s *search) ends(first, left, size int, group bool) bool {
	more := left/size - 1
	switch {
	case left%size != 0:
		return false
	case more == 0:
		return first >= s.soonest
	case group:
		last := first + 2*more
		return last >= s.soonest && last <= s.Rows
	}
	least := max(1, (s.soonest-first+more-1)/more)
	return first+least*more <= s.Rows
}

// intervals tries a first step alone, and again and again at all intervals.
func (s *search) intervals(x *state, after int, soonest bool, to mood) {
	first, lost := int(x.first), s.at.lost+int(x.size)
	if s.easier(x, place{first, lost, to}) {
		return
	}
	alone := *x
	lean, ok := s.paced(&alone, 0)
	if !ok {
		return
	}
	if soonest || !s.steady {
		s.keepRun(&alone, place{first, lost, to + lean})
	}
	most := s.widestApart(x, lost)
	if !soonest {
		if after <= most {
			s.repeat(x, after, 0, to)
		}
		return
	}
	for every := 1; every <= most && !s.behind(lost, first+every-1); every++ {
		if !s.may(first+every, to == afterGroup) {
			continue
		}
		more := int64(0)
		if every != after {
			more = 1 // of equals, the first step belongs to the run before
		}
		s.repeat(x, every, more, to)
		if to == afterGroup {
			return // the trade says no intervals of bind-offs
		}
		if s.straight && !s.steady && !s.ending { // a steady plan has no two intervals in turn
			s.turns(x, every, after, more)
		}
	}
}

// easier reports whether a place is reached with so much less effort already that the same run begun
// anew from there is easier than one that goes on through it. Of straight edges it would be a turn
// shorter than turns may be, and of steady ones its pace might be another.
func (s *search) easier(x *state, at place) bool {
	if s.steady || s.straight {
		return false
	}
	i := s.index(at)
	return i != noState && s.all[i].effort != noState && s.all[i].effort+effortOfRun < x.effort
}

// widestApart is how many rows may lie from a run's first step, after which so many stitches are
// lost, to the next: where it is too late for anything but the end, no more than bring it there.
func (s *search) widestApart(x *state, lost int) int {
	rows, left, size := s.Rows-int(x.first), s.Stitches-lost, int(x.size)
	if !s.tooLate(x) {
		return rows
	}
	if left == 0 || left%size != 0 {
		return 0
	}
	return rows / (left / size)
}

// repeat works a first step again and again, as long as it lies near enough; it weighs so much more.
func (s *search) repeat(begun *state, every int, more int64, to mood) {
	x := *begun
	x.squares += more
	lean, ok := s.paced(&x, every)
	if !ok {
		return
	}
	x.every = int32(every)
	size := int(x.size)
	for lost, row := s.at.lost+size, int(x.first)+every; row <= s.Rows && lost+size <= s.Stitches; row += every {
		if !s.may(row, to == afterGroup) {
			return
		}
		off, mean := s.step(row, lost, size, to == afterGroup)
		if off > s.allowed {
			return
		}
		x.squares += s.square(row, size, to == afterGroup, mean)
		lost += size
		x.times++
		if s.easier(&x, place{row, lost, to}) {
			return
		}
		if s.steady && row-int(x.first) > int(x.first)-s.at.row && x.times == 2 {
			continue // a longer stretch that stands alone
		}
		s.keepRun(&x, place{row, lost, to + lean})
	}
}

// fewestTurns are how many steps two intervals that take turns have at least.
const fewestTurns = 4

// turns works a first single again and again at two intervals in turn, the nearest to one
// another that there are: no single interval follows a straight line, and many runs of two
// do not read well. With the first interval before it the first step belongs to a turn.
func (s *search) turns(begun *state, every, after int, more int64) {
	apart, size := 1, int(begun.size)
	if !s.singles[1] || s.Rows > 1 && !s.singles[2] {
		apart = 2 // every second row may decrease
	}
	for _, other := range [2]int{every - apart, every + apart} {
		if other < 1 {
			continue
		}
		x := *begun
		x.effort += effortOfTurns - effortOfRun
		x.every, x.other = int32(every), int32(other)
		x.squares += more
		lost, row, next := s.at.lost+size, int(x.first)+every, other
		for row <= s.Rows && lost+size <= s.Stitches && s.may(row, false) {
			off, mean := s.step(row, lost, size, false)
			if off > s.allowed {
				break
			}
			x.squares += s.square(row, size, false, mean)
			lost += size
			if x.times++; x.times >= fewestTurns && (x.times%2 == 1 || after == other) {
				s.keepRun(&x, place{row, lost, afterSingle})
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
