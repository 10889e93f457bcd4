package shortrow

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// 20 stitches and 28 rows to 10 cm, 20 stitches, so R = 10 cm and 2*pi*10*2.8 =
// 175.93 rows; the nearest even number is 176: 88 pairs. Eight wedges have a pair
// of full rows each, and 80 pairs of short rows: 10 a wedge.
func TestCircleByHand(t *testing.T) {
	width, wedges := 20, 8
	out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: &width, WedgeCount: &wedges})
	if err != nil {
		t.Fatal(err)
	}
	if out.OuterRows != 176 || len(out.Wedges) != 1 || !slices.Equal(out.Sequence, []CircleWedgeRun{{1, 8}}) ||
		out.Wedges[0].PairCount != 10 || out.Wedges[0].FullRows != 2 {
		t.Errorf("%d rows, %d kinds, %+v", out.OuterRows, len(out.Wedges), out.Sequence)
	}
	if math.Abs(out.ClosureRows-(176-175.9291886)) > 1e-6 || math.Abs(out.ClosureDegrees-0.0708114/175.9291886*360) > 1e-5 {
		t.Errorf("closes within %v rows, %v degrees", out.ClosureRows, out.ClosureDegrees)
	}
}

// The same as a ring of half a turn with an inner radius of 5 cm: edges of
// 15 * pi * 2.8 = 131.95 and 5 * pi * 2.8 = 43.98 rows, so 132 and 44. 44 rows are as
// long as half a circle of 44 / 2.8 / pi = 5.002 cm. A disc has two rows a wedge at its
// centre where none are wanted, and says so; a ring has nothing to say.
func TestRingByHand(t *testing.T) {
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: new(20), InnerRadiusCm: new(5.0),
		TurnDegrees: new(180.0)}
	out, err := PlanCircleOfWedges(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.OuterRows != 132 || out.InnerRows != 44 || len(out.Notices) != 0 {
		t.Errorf("%d and %d rows, %v", out.OuterRows, out.InnerRows, out.Notices)
	}
	knittest.Near(t, "closure", out.InnerClosureRows, 44-14*math.Pi, 1e-9)
	knittest.Near(t, "inner radius", out.InnerRadiusCm, 44/2.8/math.Pi, 1e-9)
	// (263.9 - 88.0) / 2 pairs on 20 stitches, two stitches apart: 8.8.
	in.TurnDegrees = nil
	if out, err = PlanCircleOfWedges(in); err != nil || out.WedgeCount != 9 {
		t.Errorf("%d wedges, %v", out.WedgeCount, err)
	}
	in.InnerRadiusCm = nil
	if out, err = PlanCircleOfWedges(in); err != nil || len(out.Notices) != 1 || out.Notices[0].Reason != HoleAtTheCentre {
		t.Errorf("%v, %v", out.Notices, err)
	}
}

// Wedges are worked with their longest row first unless asked otherwise.
func TestCircleOrder(t *testing.T) {
	unworked := func(order Order) int {
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: new(20), Order: order})
		if err != nil {
			t.Fatal(err)
		}
		return out.Wedges[0].Rows[0].UnworkedStitches
	}
	longest, shortest := unworked(OrderLongestFirst), unworked(OrderShortestFirst)
	if longest >= shortest || unworked(OrderUnspecified) != longest {
		t.Errorf("%d stitches left by the longest row first, %d by the shortest", longest, shortest)
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

// Worked by hand: 40 rows to 10 cm are 12,566.4 rows round an inner edge of 500 cm and
// 25,132.7 round an outer one of 1,000, so 6,283 pairs of full rows and 6,283 of short
// ones. Seven wedges have 897 or 898 of each: two kinds of 3,588 and 3,592 rows. Of
// 12 wedges the kinds have 2,092 and 2,096, of 13 they have 1,932 and 1,936.
func TestCircleOfTooManyRows(t *testing.T) {
	width, inner, seven := 1_000, 500.0, 7
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}, WidthStitches: &width, InnerRadiusCm: &inner, WedgeCount: &seven}
	_, err := PlanCircleOfWedges(in)
	knittest.WantViolations(t, err, "wedge_count INFEASIBLE", "width_stitches INFEASIBLE")
	if want := "would have 7180 rows together; at most 4000 are written; use 13 wedges"; err == nil || !strings.Contains(err.Error(), want) {
		t.Errorf("%v, want %q", err, want)
	}
	thirteen := 13
	in.WedgeCount = &thirteen
	out, err := PlanCircleOfWedges(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Wedges) != 2 || len(out.Wedges[0].Rows)+len(out.Wedges[1].Rows) != 1932+1936 {
		t.Errorf("%d kinds", len(out.Wedges))
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
