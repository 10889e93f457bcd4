package shortrow

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// checkCircle knits every wedge of the circle one after the other and compares
// the rows at both edges with the circumferences.
func checkCircle(t *testing.T, in CircleInput, out Circle) {
	t.Helper()
	for _, w := range out.Wedges {
		turned := map[int]bool{}
		for _, r := range w.Rows {
			if r.UnworkedStitches > 0 && turned[r.UnworkedStitches] {
				t.Fatalf("%+v: two turns with %d stitches unworked", in, r.UnworkedStitches)
			}
			turned[r.UnworkedStitches] = true
		}
	}
	var h []int
	knitCircle(t, in, out, func(m *stitch.Machine) { h = m.Heights() })
	if h[0] != out.OuterRows || h[len(h)-1] != out.InnerRows {
		t.Fatalf("%+v: %d and %d rows at the edges, %d and %d said", in, h[0], h[len(h)-1], out.OuterRows, out.InnerRows)
	}
	rows := in.Gauge.Rows / fault.Or(in.Gauge.OverCm, 10)
	want := 2 * math.Pi * out.OuterRadiusCm * rows * fault.Or(in.TurnDegrees, 360) / 360
	if d := float64(h[0]) - want; math.Abs(d) > 1+1e-9 || math.Abs(d-out.ClosureRows) > 1e-6 {
		t.Fatalf("%+v: closes within %v rows, %v said", in, d, out.ClosureRows)
	}
}

// Discs and rings, whole and in part, are knit all round.
func TestCircleIsKnit(t *testing.T) {
	planned := 0
	for width := 2; width <= 40; width += knittest.Sweep(1, 6) {
		for _, inner := range []float64{0, 2.5, 9} {
			for wedges := 0; wedges <= 14; wedges += knittest.Sweep(2, 6) {
				for variant := range 3 * 2 * 2 {
					turn := []float64{360, 270}[variant/6]
					in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width, InnerRadiusCm: &inner,
						TurnDegrees: &turn, TurnMethod: TurnMethod(1 + variant%3), Order: Order(1 + variant/3%2)}
					if wedges > 0 {
						in.WedgeCount = &wedges
					}
					out, err := PlanCircleOfWedges(in)
					if err != nil {
						if len(knittest.Reasons(err)) == 0 || wedges == 0 && width > 7 {
							t.Errorf("%d stitches, inner %v: %v", width, inner, err)
						}
						continue
					}
					planned++
					checkCircle(t, in, out)
				}
			}
		}
	}
	if planned < knittest.Sweep(1500, 200) {
		t.Errorf("planned %d circles: the sweep has shrunk", planned)
	}
}

// The area of the fabric, row by row, is that of the disc or ring: pi (R^2 - r^2),
// which gonum integrates from the circumferences. Each stitch of a row covers
// 1/st by 1/rw cm.
func TestCircleArea(t *testing.T) {
	for _, inner := range []float64{0, 6} {
		width := 66 // 30 cm at 22 stitches to 10 cm
		in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width, InnerRadiusCm: &inner}
		out, err := PlanCircleOfWedges(in)
		if err != nil {
			t.Fatal(err)
		}
		var heights []int
		knitCircle(t, in, out, func(m *stitch.Machine) { heights = m.Heights() })
		area := 0.0
		for _, rows := range heights {
			area += float64(rows) / 2.2 / 3.0
		}
		want := quad.Fixed(func(r float64) float64 { return 2 * math.Pi * r }, inner, out.OuterRadiusCm, 20, nil, 0)
		if math.Abs(want-math.Pi*(out.OuterRadiusCm*out.OuterRadiusCm-inner*inner)) > 1e-9 {
			t.Fatalf("the integral %v is not the closed form", want)
		}
		// A disc keeps two rows a wedge at its centre, and rows come in pairs: the
		// area is right to half a percent.
		if math.Abs(area-want) > 0.005*want {
			t.Errorf("inner %v: %v square cm knit, %v wanted", inner, area, want)
		}
	}
}

// The departure of a wedge is from the straight line between its own rows at both
// edges, less its full ones, and 0 where that is less: worked out again here. A
// disc wants no rows at its centre, so that its line ends two below 0.
func TestCircleDeparture(t *testing.T) {
	for _, inner := range []float64{0, 0.5, 5} {
		for width := 15; width <= 60; width += 5 {
			out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width,
				InnerRadiusCm: &inner})
			if err != nil {
				t.Fatal(err)
			}
			end := math.Min(out.WantedInnerRows/float64(out.WedgeCount)-2, 0)
			for i, w := range out.Wedges {
				line := func(x float64) float64 {
					return math.Max(0, 2*float64(w.PairCount)+(end-2*float64(w.PairCount))*x/float64(width))
				}
				worst := 0.0
				for x, rows := range knitWedge(t, "a wedge of a circle", width, w.Rows) {
					wanted := (line(float64(x)) + line(float64(x+1))) / 2 // under the middle of a stitch
					worst = math.Max(worst, math.Abs(float64(rows-w.FullRows)-wanted))
				}
				if math.Abs(worst-w.GreatestDepartureRows) > 1e-5 {
					t.Errorf("%d stitches, inner %v, wedge %d: departs by %v, %v said", width, inner, i+1, worst, w.GreatestDepartureRows)
				}
			}
		}
	}
}
