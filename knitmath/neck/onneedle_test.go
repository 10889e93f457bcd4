package neck

import (
	"regexp"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// straightAfter is a decrease of which one half would be the stitch that a bind-off has left on the
// right needle: "BO 4, k2tog, k2" on 8 stitches.
var straightAfter = regexp.MustCompile(`BO \d+, (k2tog|ssk|p2tog|ssp)`)

// TestNoDecreaseTakesWhatIsOnTheNeedle: round and V necks of every width and edge. Common practice: the
// last stitch of a bind-off is on the right needle, and is worked by it.
func TestNoDecreaseTakesWhatIsOnTheNeedle(t *testing.T) {
	told, step := 0, float64(knittest.Sweep(1, 4))/2
	for _, g := range []gauge.Gauge{{Stitches: 16, Rows: 22}, {Stitches: 22, Rows: 30}, {Stitches: 30, Rows: 42}} {
		for width := 22.0; width <= 46; width += step {
			for edge := range 6 {
				for _, shape := range []Shape{ShapeRound, ShapeV} {
					out, err := PlanNeckline(Input{Gauge: &g, Shape: shape, WidthCm: &width, EdgeStitches: &edge})
					if err != nil {
						continue
					}
					for _, line := range out.Directions() {
						told++
						if straightAfter.MatchString(line) {
							t.Errorf("gauge %v, %v cm, shape %d, edge %d: %s", g, width, shape, edge, line)
						}
					}
				}
			}
		}
	}
	if least := knittest.Sweep(20000, 5000); told < least {
		t.Errorf("%d lines, %d at least are looked at", told, least)
	}
}
