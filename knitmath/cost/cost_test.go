package cost

import (
	"math"
	"testing"
)

// Sums and products stay within 0 and Most, whatever goes in.
func TestSaturation(t *testing.T) {
	for _, c := range []struct {
		name      string
		got, want int
	}{
		{"nothing added", Sum(), 0},
		{"a sum", Sum(2, 3, 5), 10},
		{"below 0 counts as 0", Sum(2, math.MinInt, 5), 7},
		{"a sum past the greatest", Sum(Most, 1), Most},
		{"a sum of the greatest integers", Sum(math.MaxInt, math.MaxInt, math.MaxInt), Most},
		{"nothing multiplied", Product(), 1},
		{"a product", Product(2, 3, 5), 30},
		{"times nothing", Product(Most, 0, Most), 0},
		{"times less than nothing", Product(Most, -3), 0},
		{"a product past the greatest", Product(1<<16, 1<<16), Most},
		{"a product of the greatest integers", Product(math.MaxInt, math.MaxInt, math.MaxInt), Most},
		{"below the range", Clamp(-7, 1, 9), 1},
		{"in the range", Clamp(5, 1, 9), 5},
		{"above the range", Clamp(math.MaxInt, 1, 9), 9},
		{"a whole number", Ceil(3, 9), 3},
		{"rounded up", Ceil(3.001, 9), 4},
		{"a float above", Ceil(math.Inf(1), 9), 9},
		{"just above", Ceil(9.5, 9), 9},
		{"a float below 0", Ceil(-1e300, 9), 0},
		{"not a number", Ceil(math.NaN(), 9), 0},
	} {
		if c.got != c.want {
			t.Errorf("%s: got %d, want %d", c.name, c.got, c.want)
		}
	}
}
