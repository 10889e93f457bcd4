package flat

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// deep is how deep the rows of a form have to be altogether, and how many rows more or less that is nearest may be, by the
// geometry of the form alone; 0 of stars, whose points follow their sides.
func deep(in Input) (cm, rows float64) {
	switch in.Form {
	case FormDisc, FormSector:
		return *in.AcrossCm / 2, 0.5
	case FormRing:
		return (*in.AcrossCm - *in.HoleCm) / 2, 0.5
	case FormPolygon:
		return *in.SideCm / 2 * math.Tan(math.Pi/2-math.Pi/float64(*in.CornerCount)), 0.5
	case FormMitredSquare:
		return *in.SideCm, 0.5
	case FormTriangleFromPoint, FormTriangleFromSide:
		return *in.HeightCm, 0.5
	case FormTriangleFromTop: // half of a square that stands on its corner
		return *in.WidthCm / 2 / math.Sqrt2, 0.5
	case FormBiasStrip: // two rows are one step
		lean := math.Atan(in.Gauge.Rows / in.Gauge.Stitches / 2)
		return *in.LengthCm * math.Cos(lean), 1
	}
	return 0, 0
}

// Every shape is as deep as it was asked for, to the nearest row, whatever is worked to close it among its rows; it ends with as
// many stitches as its tip or its side has, and a side in one row is as long as was asked for, to the nearest stitch.
func TestShapesMeasureWhatWasAsked(t *testing.T) {
	planned := 0
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 30}, {Stitches: 28, Rows: 36},
		{Stitches: 18, Rows: 36}} {
		for cm := 3.0; cm < 90; cm += 2.3 * float64(knittest.Sweep(1, 5)) {
			for _, in := range wide(&g, cm) {
				out, err := PlanFlatShape(in)
				if err != nil {
					continue
				}
				planned++
				counts := knitShape(t, in, out)
				want, off := deep(in)
				if got := float64(len(counts)) - want*g.Rows/10; math.Abs(got) > off+1e-6 {
					t.Errorf("%+v, %v: %v rows more than asked", in.Form, cm, got)
				}
				if in.Form != FormTriangleFromPoint && in.Form != FormTriangleFromSide {
					continue
				}
				tip, side := counts[0], counts[len(counts)-1]
				if in.Form == FormTriangleFromSide {
					tip, side = side, out.StartStitches
				}
				if tip > 5 || in.Form == FormTriangleFromSide && tip != 1 {
					t.Errorf("form %d, %v: a tip of %d stitches", in.Form, cm, tip)
				}
				if got := float64(side) - *in.WidthCm*g.Stitches/10; side > leastWide && math.Abs(got) > 1+1e-9 {
					t.Errorf("form %d, %v: %v stitches more than asked", in.Form, cm, got)
				}
				line := func(row int) float64 {
					return *in.WidthCm * g.Stitches / 10 * (float64(row) + 0.5) / float64(len(counts))
				}
				for i, n := range counts {
					from := i
					if in.Form == FormTriangleFromSide {
						from = len(counts) - 1 - i
					}
					if limit := allowedOff(out, len(counts)); math.Abs(float64(n)-line(from)) > limit {
						t.Fatalf("form %d, %v by %v: row %d has %d stitches, %v wanted, %v off allowed", in.Form, cm, *in.HeightCm,
							from, n, line(from), limit)
					}
				}
			}
		}
	}
	t.Log(planned)
	if planned < knittest.Sweep(10000, 2000) {
		t.Errorf("planned %d shapes: the sweep has shrunk", planned)
	}
}

// allowedOff is how many stitches a row of a triangle from a point or a side may lie off its two sides: what the nearest row does, a
// step or the stitches of its tip, and twice the tolerance that is said, a row or a fiftieth of them, or a stitch at each edge.
func allowedOff(out Shape, rows int) float64 {
	tolerance := max(1, 0.02*float64(rows), min(2/out.GrowthStitches, 0.05*float64(rows)))
	step := 0
	for _, r := range out.Rows {
		step = max(step, r.Instruction.EndStitches-r.Instruction.StartStitches, r.Instruction.StartStitches-r.Instruction.EndStitches)
	}
	return max(float64(step), pointStitches) + 2*tolerance*out.GrowthStitches
}
