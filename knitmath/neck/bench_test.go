package neck

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// An ordinary pullover, with a round neck and with a V.
func BenchmarkPlanNeckline(b *testing.B) {
	for name, shape := range map[string]Shape{"round": ShapeRound, "V": ShapeV} {
		b.Run(name, func(b *testing.B) {
			in := Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(40.0), Shape: shape}
			for b.Loop() {
				if _, err := PlanNeckline(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
