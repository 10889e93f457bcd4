package flat

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A square of any ordinary size and gauge lies flat where nobody asks for rows that are
// easier: of 45, 11 cupped or ruffled once.
func TestSquaresLieFlat(t *testing.T) {
	for _, g := range []gauge.Gauge{{Stitches: 14, Rows: 20}, {Stitches: 16, Rows: 22}, {Stitches: 18, Rows: 26}, {Stitches: 20, Rows: 28},
		{Stitches: 22, Rows: 30}, {Stitches: 24, Rows: 34}, {Stitches: 26, Rows: 36}, {Stitches: 28, Rows: 40}, {Stitches: 30, Rows: 42}} {
		for _, side := range []float64{6, 8, 10, 12, 15} {
			out, err := PlanFlatShape(Input{Gauge: &g, Form: FormPolygon, SideCm: &side, CornerCount: new(4)})
			if err != nil {
				t.Fatal(err)
			}
			for _, n := range out.Notices {
				if n.Reason == Cups || n.Reason == Ruffles {
					t.Errorf("%v, side %v: %s", g, side, n.Description)
				}
			}
		}
	}
}
