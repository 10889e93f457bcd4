package shaping

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// anyLayout is a layout as the search tries them: one block or two, of one gap or several that differ
// by a stitch, longer ones as even as they can be, and any ends.
func anyLayout(r *rand.Rand) (spacing, layout) {
	s := spacing{op: stitch.K2tog, round: r.IntN(3) == 0}
	low := r.IntN(4)
	l := layout{last: r.IntN(5), blocks: make([]block, 1+r.IntN(2))}
	if !s.round {
		l.first = r.IntN(5)
	}
	for i := range l.blocks {
		l.blocks[i] = anyBlock(r, low)
	}
	if len(l.blocks) == 2 && l.blocks[0].single() && l.blocks[1].single() && l.blocks[0].first() == l.blocks[1].first() {
		l.blocks = l.blocks[:1] // the search joins them
	}
	if len(l.blocks) == 2 && r.IntN(2) == 0 { // the same again without its last gap: it closes
		b := l.blocks[0]
		l.blocks[1] = block{gaps: b.gaps[:len(b.gaps)-1], times: 1}
		if len(b.gaps) == 1 {
			l.blocks = l.blocks[:1]
		}
	}
	return s, l
}

// anyBlock is of gaps of a length and one longer.
func anyBlock(r *rand.Rand, low int) block {
	size := 1 + r.IntN(mostInLong)
	b := block{gaps: make([]spread.GapRun, size), times: 1 + r.IntN(6)}
	if size > mostInBlock {
		b.long = new(longText)
	}
	longer, mixed := 1+r.IntN(max(1, size-1)), 1+r.IntN(max(1, 1<<size-2))
	for j := range b.gaps {
		b.gaps[j] = spread.GapRun{Stitches: low + spread.Share(j, size, longer), Times: 1}
		if size > 1 && size <= mostInBlock {
			b.gaps[j].Stitches = low + mixed>>j&1
		}
		if size == 2 && j == r.IntN(2) {
			b.gaps[j].Times = 2 + r.IntN(5)
		}
	}
	return b
}

// No layout is written in fewer items than are said to be the least, and where it is said to be exact
// in no more.
func TestTheLeastItemsOfALayout(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 7))
	exact := 0
	for range knittest.Sweep(60_000, 10_000) {
		s, l := anyLayout(r)
		written, said := stitch.RowOf(s.steps(l)...).Items(), s.leastItems(l)
		if said > written {
			t.Fatalf("%+v: %d items, and at least %d were said", l, written, said)
		}
		if s.closes(l) || l.joins() {
			continue
		}
		if exact++; said != written {
			t.Fatalf("%+v, round %v: %d items, and %d were said", l, s.round, written, said)
		}
	}
	if want := knittest.Sweep(9_000, 1_500); exact < want {
		t.Errorf("%d of them exact, want %d", exact, want)
	}
}

// No round of three gaps or more, of two lengths and with stitches between all changes, has fewer items than said.
func TestTheLeastItemsOfTwoLengths(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 3))
	seen := 0
	for range knittest.Sweep(60_000, 10_000) {
		s, l := anyLayout(r)
		gaps, lengths := 0, map[int]bool{}
		for _, g := range l.runs() {
			gaps += g.Times
			lengths[g.Stitches] = true
		}
		if !s.round || l.joins() || gaps < 3 || len(lengths) < 2 {
			continue
		}
		seen++
		if items := stitch.RowOf(s.steps(l)...).Items(); items < leastOfTwo {
			t.Fatalf("%+v: %d items", l, items)
		}
	}
	if want := knittest.Sweep(2_000, 300); seen < want {
		t.Errorf("%d of them, want %d", seen, want)
	}
}

// The departure of the most even round is that of its changes, each measured from its place among equal gaps: all
// counts up to 60 changes and 130 stitches.
func TestTheDepartureOfTheMostEvenRound(t *testing.T) {
	for k := 1; k <= 60; k++ {
		for plain := range 130 {
			s := spacing{start: plain + 2*k, op: stitch.K2tog, k: k, round: true}
			low, high := 2*k*plain, -2*k*plain
			for i := 1; i <= k; i++ {
				off := 2*k*int(measure.HalfUpDiv(int64(i*plain), int64(k))) - 2*i*plain
				low, high = min(low, off), max(high, off)
			}
			if got, want := s.leastDeparture(), (high-low+1)/2; got != want {
				t.Fatalf("%d changes, %d stitches: %d, want %d", k, plain, got, want)
			}
		}
	}
}
