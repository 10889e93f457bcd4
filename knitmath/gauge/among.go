package gauge

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// Allows reports whether the rule lets a count be.
func (r Rule) Allows(count int) bool {
	n := int64(count)
	return n >= r.Smallest() && (n-r.offset)%r.multiple == 0
}

// Among is the legal count nearest to num/den of from, from+step and so on up to to, the
// smaller one half-way; of those on the side that the rule rounds to. False if there is
// none.
func (r Rule) Among(num, den int64, from, to, step int) (count int, ok bool) {
	whole, part := num/den, float64(num%den)/float64(den)
	nearest := math.Inf(1)
	for n := from; n <= to; n += step {
		off := float64(int64(n)-whole) - part
		if !r.Allows(n) || r.rounding == measure.RoundingUp && off < 0 || r.rounding == measure.RoundingDown && off > 0 {
			continue
		}
		if off = math.Abs(off); off < nearest {
			count, nearest, ok = n, off, true
		}
	}
	return count, ok
}
