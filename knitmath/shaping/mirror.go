package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// mirroredPlan is the easiest row that reads the same from both ends of those that lie near enough
// to equal gaps, least being the departure of the most even row; or of such rows the most even,
// with a notice. ok is false where no row reads the same.
func (s spacing) mirroredPlan(least int) (out EvenSpacing, ok bool) {
	out, ok = s.alike()
	if !ok {
		return out, false
	}
	out = s.evenlyAlike(out)
	nearest := s.departureOf(out)
	easy, found := s.easyAlike(out, max(nearest, least+s.parts(s.excess)))
	if !found && s.widens && s.k <= mostWidened {
		easy, found = s.easyAlike(out, max(nearest, least+s.parts(widerGapTolerance)))
	}
	if found && easy.Effort <= fewItems {
		return easy, true
	}
	out = s.finished(out, s.row(out))
	if found && easy.Effort <= out.Effort {
		return easy, true
	}
	if out.Effort > fewItems {
		out.Notices = append(out.Notices, manyItemsNotice)
	}
	return out, true
}

// parts are so many stitches in the parts of a departure.
func (s spacing) parts(stitches float64) int { return int(stitches * float64(2*s.k)) }

// easyAlike is the easiest row that reads the same from both ends of those that depart by no more than
// so many parts, the row given being one of such.
func (s spacing) easyAlike(out EvenSpacing, allowed int) (EvenSpacing, bool) {
	m := mirror{layoutFinder{spacing: s, allowed: allowed}, s.round}
	m.round = false // a round is written as a row from the middle of a gap, too
	m.halves()
	if !m.found && m.k <= mostWidened {
		m.pairs()
	}
	if !m.found {
		return out, false
	}
	out.FirstGapStitches, out.Gaps, out.LastGapStitches = m.best.first, m.best.runs(), m.best.last
	return s.finished(out, stitch.RowOf(m.steps(m.best)...)), true
}

// mostAlike is beside how many equal gaps one other is looked at in a repeat: what is rarer is no more
// than a few in all. Own choice.
const mostAlike = 16

// mirror looks for the halves of rows that read the same from both ends.
type mirror struct {
	layoutFinder
	closed bool // in the round the two ends are a gap like the others
}

// halves tries all forms of half a row, whose gaps between changes differ by one at most: equal
// gaps, two groups of gaps, and repeats, of up to four or of equal ones and one other, with some over.
func (m *mirror) halves() {
	n := (m.k - 1) / 2 // gaps between changes in a half; with an even number of changes one stands between the halves
	around := m.plain() / m.k
	for gap := max(around-1, m.least()); gap <= around+1; gap++ {
		m.fold(gap, block{gaps: []spread.GapRun{{Stitches: gap, Times: 1}}, times: n})
		all := (m.plain() - 2*gap*(n+1)) / 2 // the longer ones of a half, about: the ends and the middle are a gap each, or less
		for longer := max(1, all-1); longer <= min(all+gap+1, n-1); longer++ {
			m.fold(gap, equal(gap+1, longer), equal(gap, n-longer))
			m.fold(gap, equal(gap, n-longer), equal(gap+1, longer))
		}
		for size := 2; size <= min(mostInBlock, n); size++ {
			for longer := 1; longer < 1<<size-1; longer++ {
				gaps := make([]spread.GapRun, size)
				for i := range gaps {
					gaps[i] = spread.GapRun{Stitches: gap + longer>>i&1, Times: 1}
				}
				m.repeats(gap, n, size, gaps)
			}
		}
		for often := 2; often < min(n, mostAlike); often++ {
			for lone := range 2 {
				many, one := spread.GapRun{Stitches: gap + 1 - lone, Times: often}, spread.GapRun{Stitches: gap + lone, Times: 1}
				m.repeats(gap, n, often+1, []spread.GapRun{many, one})
				m.repeats(gap, n, often+1, []spread.GapRun{one, many})
			}
		}
	}
}

// repeats tries a block of so many gaps, with what is over before or after it.
func (m *mirror) repeats(gap, n, size int, gaps []spread.GapRun) {
	for times := n / size; times > 0 && times >= n/size-1; times-- {
		repeat, over := block{gaps: gaps, times: times}, n-times*size
		if over == 0 {
			m.fold(gap, repeat)
			continue
		}
		for extra := gap; extra <= gap+1; extra++ {
			m.fold(gap, repeat, equal(extra, over))
			m.fold(gap, equal(extra, over), repeat)
		}
	}
}

// fold tries a half, of gaps of one length and one longer, with the gap between the halves, if
// there is one, and what is left at the ends: half a gap, to the stitch.
func (m *mirror) fold(gap int, half ...block) {
	sum := 0
	for _, b := range half {
		for _, g := range b.gaps {
			sum += b.times * g.Times * g.Stitches
		}
	}
	rest := m.plain() - 2*sum
	if m.k%2 == 1 {
		m.folded(gap, half, -1, rest)
		return
	}
	for middle := gap; middle <= gap+1; middle++ {
		m.folded(gap, half, middle, rest-middle)
	}
}

// folded tries it with so much left for both ends; a middle of -1 is none.
func (m *mirror) folded(gap int, half []block, middle, rest int) {
	end := (rest + m.bar) / 2
	if !m.mayEnd(gap, rest) || m.edge == 0 && end < m.least() && m.k > 1 {
		return
	}
	blocks := unfolded(half, middle)
	if len(half[0].gaps) > 1 {
		blocks = goingOn(blocks, len(half[0].gaps))
	}
	m.try(layout{first: m.edge + end - m.bar, last: m.edge + end, blocks: blocks})
}

// unfolded are the blocks of a half, the gap in the middle, and the half read from its other end. The last
// block of the half goes on through the middle where it can.
func unfolded(half []block, middle int) (blocks []block) {
	if len(half) > 1 && len(half[1].gaps) > 1 {
		inner := goingOn(unfolded(half[1:], middle), len(half[1].gaps))
		return withBack(append([]block{half[0]}, inner...), half[:1])
	}
	for _, b := range half {
		if b.times > 0 {
			blocks = append(blocks, b)
		}
	}
	if middle >= 0 {
		blocks = appendBlock(blocks, equal(middle, 1))
	}
	return withBack(blocks, half)
}

// mayEnd reports whether so much for both ends is a gap, or flat one stitch off.
func (m *mirror) mayEnd(gap, rest int) bool {
	if (rest+m.bar)%2 != 0 {
		return false
	}
	if m.closed {
		return rest == gap || rest == gap+1
	}
	return rest >= 0 && measure.Abs(rest-gap) <= 1
}

// withBack adds a half read from its other end.
func withBack(blocks, half []block) []block {
	for i := len(half) - 1; i >= 0; i-- {
		back := half[i].turned()
		switch last := len(blocks) - 1; {
		case back.times == 0:
		case last >= 0 && slices.Equal(blocks[last].gaps, back.gaps):
			blocks[last].times += back.times
		default:
			blocks = append(blocks, back)
		}
	}
	return blocks
}

// goingOn joins blocks that are one block of so many gaps again and again, and a part of it.
func goingOn(blocks []block, size int) []block {
	var gaps []spread.GapRun
	for _, b := range blocks {
		for range b.times {
			gaps = append(gaps, b.gaps...)
		}
	}
	if !slices.Equal(gaps[size:], gaps[:len(gaps)-size]) {
		return blocks
	}
	over := len(gaps) % size
	joined := []block{{gaps: gaps[:size], times: len(gaps) / size}}
	if over > 0 {
		joined = append(joined, block{gaps: gaps[:over], times: 1})
	}
	return joined
}

// turned is a block read from its other end.
func (b block) turned() block {
	gaps := make([]spread.GapRun, len(b.gaps))
	for i, g := range b.gaps {
		gaps[len(gaps)-1-i] = g
	}
	b.gaps = gaps
	return b
}
