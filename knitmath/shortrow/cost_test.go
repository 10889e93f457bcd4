package shortrow

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// Prices by hand. A wedge: 50, twenty for each row of its rise, and a step for 20
// stitches. A disc of 40 stitches at 20 stitches and 28 rows has an edge of 351.9
// rows, so 352; three kinds of wedge are three eighths of that for 8, 132 rows.
func TestPrices(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 28}
	for name, c := range map[string]struct {
		in   interface{ Cost() int }
		want int
	}{
		"wedge": {WedgeInput{WidthStitches: 100, RiseRows: new(20)}, 50 + 20*20 + 100/20},
		"angle": {WedgeInput{WidthStitches: 100, RiseAngleDegrees: new(30.0)}, 50 + 20*2*MaxWedgeSpans + 100/20},
		"curve": {WedgeInput{WidthStitches: 100, ProfileRows: []float64{0, 6}}, 50 + 20*2*MaxWedgeSpans + 100/20},
		"disc":  {CircleInput{Gauge: standard, WidthStitches: new(40), WedgeCount: new(8)}, 50 + 20*132 + 40/20},
		"part of one": {CircleInput{Gauge: standard, WidthStitches: new(40), WedgeCount: new(8), TurnDegrees: new(90.0)},
			50 + 20*33 + 40/20},
		"of 4 wedges if not said": {CircleInput{Gauge: standard, WidthStitches: new(40)}, 50 + 20*264 + 40/20},
		"without a gauge":         {CircleInput{WidthStitches: new(40)}, 50 + 20*2*MaxWedgeSpans + 40/20},
		"with none to count by":   {CircleInput{Gauge: &gauge.Gauge{Rows: 28}, WidthStitches: new(40)}, 50 + 20*2*MaxWedgeSpans + 40/20},
	} {
		if got := c.in.Cost(); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
