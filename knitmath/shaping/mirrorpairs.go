package shaping

import "example.com/knitmath/knitmath/spread"

// pairs tries halves of two repeats that lie to either side of an equal gap, each of up to four gaps, as often as
// the stitches want: what drifts off along the one comes back along the other. The second goes on through the
// middle of the row, where it reads the same from both ends: [k1, M1L, k2, M1L] 9 times, [k1, M1L] 40 times, and so on.
func (m *mirror) pairs() {
	n := (m.k - 1) / 2
	around := m.plain() / m.k
	for gap := max(around-1, m.least()); gap <= around; gap++ {
		blocks := smallBlocks(gap, min(mostInBlock, n))
		for _, outer := range blocks {
			for _, inner := range blocks {
				m.pair(gap, n, outer, inner)
			}
		}
	}
}

// pair tries two repeats, with so often the second that the ends and the middle are a gap, to about a stitch.
func (m *mirror) pair(gap, n int, outer, inner []spread.GapRun) {
	longerOuter, longerInner := longer(outer, gap), longer(inner, gap)
	slope := len(outer)*longerInner - len(inner)*longerOuter
	if slope == 0 {
		return
	}
	all := (m.plain() - m.k*gap) / 2 // the longer gaps of a half, about
	for more := -1; more <= 1; more++ {
		times := (len(outer)*(all+more) - n*longerOuter) / slope
		over := n - times*len(inner)
		if times <= 0 || over <= 0 || over%len(outer) != 0 {
			continue
		}
		m.fold(gap, block{gaps: outer, times: over / len(outer)}, block{gaps: inner, times: times})
	}
}

// longer is how many gaps of a block are.
func longer(gaps []spread.GapRun, gap int) (times int) {
	for _, g := range gaps {
		times += g.Stitches - gap
	}
	return times
}

// smallBlocks are all blocks of up to so many gaps of two lengths, none of them another one again.
func smallBlocks(gap, most int) (blocks [][]spread.GapRun) {
	for size := 1; size <= most; size++ {
		for set := range 1 << size {
			if size > 1 && (set == 0 || set == 1<<size-1) || size == 4 && set>>2 == set&3 {
				continue
			}
			gaps := make([]spread.GapRun, size)
			for i := range gaps {
				gaps[i] = spread.GapRun{Stitches: gap + set>>i&1, Times: 1}
			}
			blocks = append(blocks, gaps)
		}
	}
	return blocks
}
