package flat

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A star has as many rounds as its sides lie from its centre, to the nearest, and its points and valleys lie where they were asked
// for. By the geometry of the triangle between centre, point and valley: its area over half of its side; where no valley is asked
// for the tangent of half a point is that of a stitch at each side in every round.
func TestStarsAreAsDeepAsAsked(t *testing.T) {
	planned := 0
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 42}, {Stitches: 28, Rows: 36}} {
		for points := MinCorners; points <= MaxCorners; points++ {
			for cm := 6.0; cm < 70; cm += float64(knittest.Sweep(3, 11)) {
				for _, part := range []float64{0, 0.5, 0.6, 0.7, 0.8} {
					in := Input{Gauge: &g, Form: FormStar, AcrossCm: &cm, CornerCount: &points, WithOutline: true, Direction: Direction(planned % 3)}
					tip, turn := cm/2, math.Pi/float64(points)
					deep := tip * math.Sin(math.Atan2(g.Stitches, g.Rows))
					if part > 0 {
						in.ValleyCm = new(cm * part)
						valley := tip * part
						side := math.Sqrt(tip*tip + valley*valley - 2*tip*valley*math.Cos(turn))
						deep = tip * valley * math.Sin(turn) / side
					}
					out, err := PlanFlatShape(in)
					if err != nil {
						knittest.CheckInputError(t, err)
						continue
					}
					planned++
					if rounds := len(knitShape(t, in, out)); math.Abs(float64(rounds)-deep*g.Rows/10) > 0.5+1e-9 {
						t.Errorf("%v, %d points, %v cm, valley %v: %d rounds, %.2f wanted", g, points, cm, part, rounds, deep*g.Rows/10)
					}
					// Drawn as knit, it is larger or smaller by what its rounds are.
					round := 0.5 / (deep * g.Rows / 10)
					for i, p := range out.Outline.Lines[0].Points {
						far := math.Hypot(p.X, p.Y) / tip
						if i%2 == 0 && math.Abs(far-1) > round+1e-6 || i%2 == 1 && part > 0 && math.Abs(far-part) > round*part+1e-6 {
							t.Errorf("%v, %d points, %v cm, valley %v: corner %d lies %v of its points out", g, points, cm, part, i, far)
						}
					}
				}
			}
		}
	}
	t.Log(planned)
	if planned < knittest.Sweep(800, 200) {
		t.Errorf("%d stars: the sweep has shrunk", planned)
	}
}
