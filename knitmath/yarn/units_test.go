package yarn

import (
	"testing"

	"example.com/knitmath/knitmath/measure"
)

// The units in their definitions: 36 in to the yard, 16 oz to the pound of
// 453.59237 g.
func TestUnitsAreExact(t *testing.T) {
	for _, c := range []struct{ got, want float64 }{
		{measure.CmPerInch, 2.54}, {MetresPerYard, 0.9144}, {GramsPerOunce, 453.59237 / 16},
	} {
		if c.got != c.want {
			t.Errorf("got %v, want %v", c.got, c.want)
		}
	}
}
