package pattern

import "strconv"

// upToAfter makes the stretch of a row one up to as many stitches as came before it.
func (m *mirror) upToAfter(s *Step, before []Step) bool {
	s.RemainingStitches = make([]int, m.piece.SizeCount)
	for size := range s.RemainingStitches {
		n := fixed(before, size).takes
		if n > MaxNumber {
			m.refuse(s.at, "more than 10000 stitches lie before it")
			return false
		}
		s.RemainingStitches[size] = int(n)
	}
	s.RemainingStitches = tidy(s.RemainingStitches)
	return true
}

// oneStretch makes all stretches but the first fixed, and checks that the row
// takes every stitch.
func (m *mirror) oneStretch(steps []Step) ([]Step, bool) {
	out := append([]Step(nil), steps...)
	open := -1                                // the first stretch
	after := make([]int64, m.piece.SizeCount) // what is fixed takes since then
	for i := range out {
		s := &out[i]
		switch {
		case !s.stretch():
		case open < 0:
			open = i
			continue
		default:
			counts := make([]int, m.piece.SizeCount)
			for size := range counts {
				before, last := at(steps[open].RemainingStitches, size), at(s.RemainingStitches, size)
				between := int64(before-last) - after[size]
				each := s.pass(size).takes
				if each < 1 || between < 0 || between%each != 0 {
					m.refuse(s.at, "the stitches between this and the repeat before it do not come out")
					return nil, false
				}
				counts[size] = int(between / each)
			}
			s.RemainingStitches, s.Times = nil, tidy(counts)
		}
		if open < 0 {
			continue
		}
		for size := range after {
			after[size] = min(after[size]+times(s.pass(size).takes, int64(s.workings(size))), most)
		}
	}
	if open < 0 {
		return out, true
	}
	for size := range m.piece.SizeCount {
		if rest, last := after[size], int64(at(out[open].RemainingStitches, size)); rest != last {
			m.refuse(out[open].at, "what follows takes "+stitches(int(rest))+", not the "+strconv.Itoa(int(last))+" that remain")
			return nil, false
		}
	}
	return out, true
}
