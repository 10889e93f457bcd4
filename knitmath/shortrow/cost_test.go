package shortrow

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// Prices by hand. A wedge: 50, ten for each row of its rise, and a step for 4 stitches.
// 30 degrees over 100 stitches of a square gauge rise 57.7 rows. A curve from 0 to 6 rows
// rises those and a pair at each point. A disc of 40 stitches at 20 stitches and 28 rows
// has an edge of 351.9 rows, so 352: an eighth of that and four more for one of 8 wedges,
// of which there are at most four kinds.
func TestPrices(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 28}
	for name, c := range map[string]struct {
		in   interface{ Cost() int }
		want int
	}{
		"wedge": {WedgeInput{WidthStitches: 100, RiseRows: new(20)}, 50 + 10*20 + 100/4},
		"angle": {WedgeInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}, WidthStitches: 100, RiseAngleDegrees: new(30.0)}, 50 + 10*58 + 100/4},
		"curve": {WedgeInput{WidthStitches: 100, ProfileRows: []float64{0, 6}}, 50 + 10*(6+4) + 100/4},
		"disc":  {CircleInput{Gauge: standard, WidthStitches: new(40), WedgeCount: new(8)}, 50 + 10*4*(44+4) + 4*40/8},
		"part of one": {CircleInput{Gauge: standard, WidthStitches: new(40), WedgeCount: new(8), TurnDegrees: new(90.0)},
			50 + 10*4*(11+4) + 4*40/8},
		"of any number of wedges": {CircleInput{Gauge: standard, WidthStitches: new(40)}, 50 + 10*MaxCircleRows + 4*40/8},
		"without a gauge":         {CircleInput{WidthStitches: new(40)}, 50 + 10*MaxCircleRows + 4*40/8},
		"with none to count by":   {CircleInput{Gauge: &gauge.Gauge{Rows: 28}, WidthStitches: new(40)}, 50 + 10*MaxCircleRows + 4*40/8},
	} {
		if got := c.in.Cost(); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
