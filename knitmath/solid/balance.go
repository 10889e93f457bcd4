package solid

import (
	"example.com/knitmath/knitmath/measure"
	"math"
)

// off is how many stitches all rounds have too many, and how many are allowed.
func (b *revolved) off() (off, allowed float64) {
	want := 0.0
	for i, n := range b.counts {
		off += float64(n) - b.wanted[i]
		want += b.wanted[i]
	}
	return off, max(0.01*want, float64(len(b.counts)))
}

// balance lets changes come a round earlier or later, each time the one that departs least,
// until all rounds together are as many stitches as the surface has, nearly. A tube keeps one
// count unless it must not.
func (b *revolved) balance(tubes bool) {
	for range len(b.counts) {
		off, allowed := b.off()
		if math.Abs(off) <= allowed/2 {
			return
		}
		best, to := -1, 0
		for i := 1; i < len(b.counts)-1; i++ {
			if !tubes && b.steady(i) {
				continue
			}
			for _, count := range [2]int{b.counts[i-1], b.counts[i+1]} {
				change := float64(count - b.counts[i])
				if count == b.counts[i] || change*off > 0 || math.Abs(off+change) >= math.Abs(off) || !b.keeps(i, count) {
					continue
				}
				if best < 0 || math.Abs(float64(count)-b.wanted[i]) < math.Abs(float64(to)-b.wanted[best]) {
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
