package yoke

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// What own steps leave is rounded once and exactly, halves up: in whole hundredths it
// is n * (100 - a) * (100 - b) of ten thousand. 150 less a tenth and then 90 % are 13.5,
// so 14; of floats 1 - 0.9 is a little less than 0.1.
func TestOwnStepsLeaveExactCounts(t *testing.T) {
	halves := 0
	for n := 100; n <= 400; n += 10 {
		for a := 1; a < 100; a += knittest.Sweep(1, 3) {
			for b := 1; b < 100; b += knittest.Sweep(1, 3) {
				parts := n * (100 - a) * (100 - b)
				want := (2*parts + 10_000) / 20_000
				if parts%10_000 == 5_000 {
					halves++
				}
				steps := []Step{{0.5, float64(a) / 100}, {1, float64(b) / 100}}
				if got := leftOf(n, steps); got != want {
					t.Fatalf("%d less %d %% less %d %%: %d, want %d", n, a, b, got, want)
				}
			}
		}
	}
	if halves < knittest.Sweep(1_000, 100) {
		t.Errorf("%d halves: the sweep has shrunk", halves)
	}
}

// A neck has four stitches at least, wherever it comes from: 1.4 cm at 22 stitches are 3,
// and so are 40 % of 8.
func TestANeckHasFourStitches(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, NeckCm: new(1.4)}
	_, err := PlanCircularYoke(in)
	knittest.WantViolations(t, err, "neck_cm INFEASIBLE")
	_, err = PlanCircularYoke(CircularInput{Gauge: in.Gauge, BodyStitches: 8, SleeveStitches: new(4), UnderarmStitches: new(0),
		DepthRounds: new(8)})
	knittest.WantViolations(t, err, "body_stitches INFEASIBLE")
}
