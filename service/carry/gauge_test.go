package carry

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A neighbour that does not exist is absent, and not a count of 0.
func TestMissingNeighbour(t *testing.T) {
	f := fittedOut(gauge.FittedCount{Count: 1, Above: &gauge.NeighbourCount{Count: 2, SizeCm: 1}})
	if f.Below != nil || f.Above.GetCount() != 2 {
		t.Errorf("below %v, above %v", f.Below, f.Above)
	}
	f = fittedOut(gauge.FittedCount{Count: 10_000, Below: &gauge.NeighbourCount{Count: 9_999, SizeCm: 1}})
	if f.Above != nil || f.Below.GetCount() != 9_999 {
		t.Errorf("below %v, above %v", f.Below, f.Above)
	}
}
