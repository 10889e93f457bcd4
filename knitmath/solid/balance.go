package solid

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// mayBeOffPart is how far all stitches may be from those of the surface without a word. Own choice.
const mayBeOffPart = 0.01

// mayBeOff is how many stitches there may be more or fewer than the surface has: 1 % of those, or one a round, or of wedges one for
// each row round the widest place.
func mayBeOff(surface, rounds float64) float64 { return max(mayBeOffPart*surface, rounds) }

// off is how many stitches all rounds have more than the surface, and how many are allowed.
func (b *revolved) off() (off, allowed float64) {
	off = -b.surface
	for _, n := range b.counts {
		off += float64(n)
	}
	return off, mayBeOff(b.surface, float64(len(b.counts)))
}

// balance brings all rounds together to as many stitches as the surface has, nearly. A tube keeps one count, every other round is
// near what it wants, and edges are held, unless the surface is not met so; no
// round comes to lie more than a step from what it wants, rather the surface is not met.
func (b *revolved) balance() {
	edges := b.edges()
	step := func(i, count int) bool { return math.Abs(float64(count)-b.wanted[i]) <= float64(b.wedges) }
	free := func(i, count int) bool { return step(i, count) && !held(edges, i) }
	near := func(i, count int) bool {
		return free(i, count) && math.Abs(float64(count)-b.wanted[i]) <= mayStray*float64(b.wedges)
	}
	sides := func(i, count int) bool { return near(i, count) && !b.steady(i) }
	for _, may := range [...]func(i, count int) bool{sides, near, free, step} {
		b.shift(may)
		if off, allowed := b.off(); math.Abs(off) <= allowed {
			return
		}
	}
}

// mayStray is by how much of a step balancing may bring a round from what it wants: nearly a step too few, worked for a few
// rounds, would be a tube where a disc grows. Own choice.
const mayStray = 0.85

// shift lets changes come a round earlier or later where they may, each time the one that departs least.
func (b *revolved) shift(may func(i, count int) bool) {
	for range len(b.counts) {
		off, allowed := b.off()
		if math.Abs(off) <= allowed/2 {
			return
		}
		best, to := -1, 0
		for i := 1; i < len(b.counts)-1; i++ {
			for _, count := range [2]int{b.counts[i-1], b.counts[i+1]} {
				change := float64(count - b.counts[i])
				if count == b.counts[i] || change*off > 0 || math.Abs(off+change) >= math.Abs(off) || !b.keeps(i, count) {
					continue
				}
				if may(i, count) && (best < 0 || math.Abs(float64(count)-b.wanted[i]) < math.Abs(float64(to)-b.wanted[best])) {
					best, to = i, count
				}
			}
		}
		if best < 0 {
			return
		}
		b.counts[best] = to
	}
}

// keeps reports whether a round may have another count: its neighbours then change by no more
// than they did before, or than one step.
func (b *revolved) keeps(i, count int) bool {
	low, high := b.counts[i-1], b.counts[i+1]
	most := max(b.wedges, measure.Abs(low-b.counts[i]), measure.Abs(high-b.counts[i]))
	return measure.Abs(low-count) <= most && measure.Abs(high-count) <= most && count <= 2*min(low, high) && 2*count >= max(low, high)
}
