package flat

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// No triangle and no square in rows lists the numbers of its rows where no tolerance is asked for: each has runs of intervals.
func TestNoRowsAreListed(t *testing.T) {
	told := 0
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 18, Rows: 24}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 30},
		{Stitches: 20, Rows: 39}, {Stitches: 16, Rows: 32}, {Stitches: 20, Rows: 36}, {Stitches: 28, Rows: 36}} {
		for cm := 5.0; cm <= 150; cm += float64(knittest.Sweep(2, 13)) {
			list := []Input{{Form: FormTriangleFromTop, WidthCm: &cm}, {Form: FormMitredSquare, SideCm: &cm},
				{Form: FormMitredSquare, SideCm: &cm, Direction: DirectionInwards}}
			for _, part := range []float64{0.4, 0.6, 0.87, 1, 1.4} {
				for _, form := range []Form{FormTriangleFromPoint, FormTriangleFromSide} {
					list = append(list, Input{Form: form, WidthCm: &cm, HeightCm: new(cm * part)})
				}
			}
			for _, in := range list {
				in.Gauge = &g
				out, err := PlanFlatShape(in)
				if err != nil {
					continue
				}
				told++
				if all := strings.Join(out.Directions(), "\n"); strings.Contains(all, " on rows ") {
					t.Errorf("%v, form %d, %v cm: %s", g, in.Form, cm, all)
				}
			}
		}
	}
	if told < knittest.Sweep(7_000, 1_000) {
		t.Errorf("%d told", told)
	}
}
