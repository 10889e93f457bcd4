package yoke

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"example.com/knitmath/knitmath/gauge"
)

// A flat disc needs 2*pi*(stitch gauge)/(row gauge) more stitches a round: 4.80
// at R = rows/stitches = 1.31, 4.49 at 1.4, 3.14 at garter's 2. So 8 every
// second round is flat at R = 1.571, 6 a round at 1.047, 9 every second at 1.396.
//
// Source: computed from the circumference of a circle; the same rates are used in
// the trade (common practice).
func TestFlatDiscRates(t *testing.T) {
	for _, c := range []struct{ ratio, perRound, tolerance float64 }{
		{1.31, 4.80, 0.005}, {1.4, 4.49, 0.005}, {2, 3.14, 0.005}, {1.571, 4, 0.001}, {1.047, 6, 0.002}, {1.396, 4.5, 0.001},
	} {
		// A thousand rounds, so that whole stitches give the rate to a thousandth.
		y := circular{st: gauge.NewDensity(10, 10),
			rw: gauge.NewDensity(10*c.ratio, 10)}
		lost := int(math.Round(c.perRound * 1000))
		if got := y.steepness(lost, 1000); math.Abs(got-1) > c.tolerance/c.perRound+1e-3 {
			t.Errorf("R = %v, %v a round: steepness %v, want 1", c.ratio, c.perRound, got)
		}
	}
}

// A cone of half-angle a has steepness sin(a): the circumference 2*pi*r over the
// slant depth s, and r/s = sin(a). The angle comes from gonum's vectors: between
// the axis and the slant line from (0, h) to (r, 0).
func TestConeSteepness(t *testing.T) {
	y := circular{st: gauge.NewDensity(100, 1), rw: gauge.NewDensity(100, 1)} // 100 to 1 cm
	for _, c := range []struct{ r, h float64 }{{3, 4}, {5, 12}, {8, 6}, {1, 10}} {
		slant := r2.Vec{X: c.r, Y: -c.h}
		cos := r2.Cos(slant, r2.Vec{Y: -1})
		want := math.Sqrt(1 - cos*cos)
		lost, rounds := int(math.Round(2*math.Pi*c.r*100)), int(math.Round(r2.Norm(slant)*100))
		if got := y.steepness(lost, rounds); math.Abs(got-want) > 2e-3 {
			t.Errorf("cone of radius %v and height %v: steepness %v, want %v", c.r, c.h, got, want)
		}
	}
}
