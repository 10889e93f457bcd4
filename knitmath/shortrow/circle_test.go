package shortrow

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// checkCircle knits every wedge of the circle one after the other and compares
// the rows at both edges with the circumferences.
func checkCircle(t *testing.T, in CircleInput, out Circle) {
	t.Helper()
	m := knittest.CastOn(t, out.WidthStitches, false)
	for _, w := range out.Wedges {
		turned := map[int]bool{}
		for _, r := range w.Rows {
			if r.UnworkedStitches > 0 && turned[r.UnworkedStitches] {
				t.Fatalf("%+v: two turns with %d stitches unworked", in, r.UnworkedStitches)
			}
			turned[r.UnworkedStitches] = true
		}
	}
	wedges := 0
	for _, run := range out.Sequence {
		w := out.Wedges[run.WedgeNumber-1]
		wedges += run.Times
		for range run.Times {
			for _, r := range w.Rows {
				if err := m.Work(r.Instruction.Row); err != nil {
					t.Fatalf("%+v: row %d, %q: %v", in, r.RowNumber, r.Instruction.Row.Text(), err)
				}
			}
			if m.Unresolved() != 0 || m.ShortRowOpen() {
				t.Fatalf("%+v: gaps open after a wedge", in)
			}
		}
	}
	if wedges != out.WedgeCount {
		t.Fatalf("%+v: %d wedges, %d said", in, wedges, out.WedgeCount)
	}
	h := m.Heights()
	if h[0] != out.OuterRows || h[len(h)-1] != out.InnerRows {
		t.Fatalf("%+v: %d and %d rows at the edges, %d and %d said", in, h[0], h[len(h)-1], out.OuterRows, out.InnerRows)
	}
	rows := in.Gauge.Rows / fault.Or(in.Gauge.OverCm, 10)
	want := 2 * math.Pi * out.OuterRadiusCm * rows * fault.Or(in.TurnDegrees, 360) / 360
	if d := float64(h[0]) - want; math.Abs(d) > 1+1e-9 || math.Abs(d-out.ClosureRows) > 1e-6 {
		t.Fatalf("%+v: closes within %v rows, %v said", in, d, out.ClosureRows)
	}
}

func TestCircleIsKnit(t *testing.T) {
	planned := 0
	for width := 2; width <= 40; width++ {
		for _, inner := range []float64{0, 2.5, 9} {
			for wedges := 0; wedges <= 14; wedges += 2 {
				for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
					for order := OrderLongestFirst; order <= OrderShortestFirst; order++ {
						for _, turn := range []float64{360, 270} {
							in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width, InnerRadiusCm: &inner,
								TurnDegrees: &turn, TurnMethod: method, Order: order}
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
		}
	}
	if planned < 1500 {
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
		m := knittest.CastOn(t, width, false)
		for _, run := range out.Sequence {
			for range run.Times {
				for _, r := range out.Wedges[run.WedgeNumber-1].Rows {
					if err := m.Work(r.Instruction.Row); err != nil {
						t.Fatal(err)
					}
				}
			}
		}
		area := 0.0
		for _, rows := range m.Heights() {
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

// 20 stitches and 28 rows to 10 cm, 20 stitches, so R = 10 cm and 2*pi*10*2.8 =
// 175.93 rows; the nearest even number is 176: 88 pairs. Eight wedges have a pair
// of full rows each, and 80 pairs of short rows: 10 a wedge.
func TestCircleByHand(t *testing.T) {
	width, wedges := 20, 8
	out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: &width, WedgeCount: &wedges})
	if err != nil {
		t.Fatal(err)
	}
	if out.OuterRows != 176 || len(out.Wedges) != 1 || out.Wedges[0].PairCount != 10 || out.Wedges[0].FullRows != 2 {
		t.Errorf("%d rows, %d kinds, %+v", out.OuterRows, len(out.Wedges), out.Sequence)
	}
	if math.Abs(out.ClosureRows-(176-175.9291886)) > 1e-6 || math.Abs(out.ClosureDegrees-0.0708114/175.9291886*360) > 1e-5 {
		t.Errorf("closes within %v rows, %v degrees", out.ClosureRows, out.ClosureDegrees)
	}
}

// The departure of a wedge is from the straight line between its own rows at both
// edges, less its full ones, and 0 where that is less: worked out again here. A
// disc wants no rows at its centre, so that its line ends two below 0.
func TestCircleDeparture(t *testing.T) {
	for _, inner := range []float64{0, 5} {
		for width := 15; width <= 60; width += 5 {
			out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width,
				InnerRadiusCm: &inner})
			if err != nil {
				t.Fatal(err)
			}
			end := math.Min(out.WantedInnerRows/float64(out.WedgeCount)-2, 0)
			for i, w := range out.Wedges {
				m := knittest.CastOn(t, width, false)
				for _, r := range w.Rows {
					if err := m.Work(r.Instruction.Row); err != nil {
						t.Fatal(err)
					}
				}
				line := func(x float64) float64 {
					return math.Max(0, 2*float64(w.PairCount)+(end-2*float64(w.PairCount))*x/float64(width))
				}
				worst := 0.0
				for x, rows := range m.Heights() {
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

func TestCircleRefusals(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	one, two, thirty, many := 1, 2, 30, MaxWedges+1
	radius, minus, nan, wide, tiny := 12.0, -1.0, math.NaN(), 40.0, 0.3
	for name, c := range map[string]struct {
		in   CircleInput
		want []string
	}{
		"empty": {CircleInput{}, []string{"gauge REQUIRED", "width_stitches REQUIRED", "outer_radius_cm REQUIRED"}},
		"both": {CircleInput{Gauge: standard, WidthStitches: &thirty, OuterRadiusCm: &radius},
			[]string{"width_stitches CONTRADICTORY", "outer_radius_cm CONTRADICTORY"}},
		"ranges": {CircleInput{Gauge: standard, WidthStitches: &one, InnerRadiusCm: &minus, WedgeCount: &many, TurnDegrees: &nan},
			[]string{"width_stitches OUT_OF_RANGE", "inner_radius_cm OUT_OF_RANGE", "wedge_count OUT_OF_RANGE", "turn_degrees NOT_FINITE"}},
		"inside": {CircleInput{Gauge: standard, OuterRadiusCm: &radius, InnerRadiusCm: &wide},
			[]string{"outer_radius_cm INFEASIBLE", "inner_radius_cm INFEASIBLE"}},
		"steep": {CircleInput{Gauge: standard, WidthStitches: &thirty, WedgeCount: &two},
			[]string{"wedge_count INFEASIBLE", "width_stitches INFEASIBLE"}},
		"small": {CircleInput{Gauge: &gauge.Gauge{Stitches: 100, Rows: 10}, OuterRadiusCm: &tiny, WedgeCount: &thirty},
			[]string{"wedge_count INFEASIBLE", "outer_radius_cm INFEASIBLE"}},
		"enums": {CircleInput{Gauge: standard, WidthStitches: &thirty, TurnMethod: 4, Order: 3, DisplayUnit: 3},
			[]string{"turn_method UNKNOWN_VALUE", "order UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircleOfWedges(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func FuzzPlanCircleOfWedges(f *testing.F) {
	f.Add(22.0, 30.0, 40, 0.0, 8, 360.0, int32(1), int32(1))
	f.Add(18.0, 26.0, 25, 3.0, 6, 300.0, int32(2), int32(2))
	f.Fuzz(func(t *testing.T, stitches, rows float64, width int, inner float64, wedges int, turn float64, method, order int32) {
		width %= 100
		in := CircleInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, WidthStitches: &width, InnerRadiusCm: &inner,
			WedgeCount:  &wedges,
			TurnDegrees: &turn, TurnMethod: TurnMethod(method), Order: Order(order), WithOutline: true}
		out, err := PlanCircleOfWedges(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		knittest.CheckFinite(t, out)
		if math.Abs(out.ClosureRows) > 1+1e-6*out.WantedOuterRows {
			t.Fatalf("closes within %v rows", out.ClosureRows)
		}
	})
}

func BenchmarkCircleOfWedges(b *testing.B) {
	width := 40
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthStitches: &width}
	for b.Loop() {
		if _, err := PlanCircleOfWedges(in); err != nil {
			b.Fatal(err)
		}
	}
}
