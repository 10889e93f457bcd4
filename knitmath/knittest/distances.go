package knittest

import (
	"sort"
	"testing"
)

// Distances of what is knit from its ideal outline.
type Distances []float64

// Check logs the median, what 9 of 10 and 99 of 100 keep within, and the greatest, and wants none beyond what is allowed.
func (d Distances) Check(t *testing.T, what string, median, most float64) {
	t.Helper()
	if len(d) == 0 {
		t.Fatalf("%s: nothing is measured", what)
	}
	sort.Float64s(d)
	n := len(d)
	t.Logf("%s: %d measured, median %.3f, 90 %% within %.3f, 99 %% %.3f, all %.3f", what, n, d[n/2], d[n*9/10], d[n*99/100], d[n-1])
	if d[n/2] > median || d[n-1] > most {
		t.Errorf("%s: the median is to be at most %v, all at most %v", what, median, most)
	}
}
