package shortrow

import (
	"math"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Curves of up to four points and six rows over small widths, in both orders and
// all three ways of turning, are knit, and the rows under every stitch compared
// with the curve, worked out again here as a fraction.
func TestCurvedWedgeIsKnit(t *testing.T) {
	planned, steep := 0, 0
	heights := []float64{0, 2, 5, 6}
	for width := 2; width <= 13; width++ {
		for n := 2; n <= 4; n++ {
			for code := range int(math.Pow(float64(len(heights)), float64(n))) {
				points := make([]float64, n)
				for i := range points {
					points[i] = heights[code%len(heights)]
					code /= len(heights)
				}
				for order := OrderLongestFirst; order <= OrderShortestFirst; order++ {
					for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
						in := WedgeInput{WidthStitches: width, ProfileRows: points, Order: order, TurnMethod: method}
						out, err := PlanWedge(in)
						if err != nil {
							checkCurveRefusal(t, in, err)
							continue
						}
						planned++
						if checkCurve(t, in, out) {
							steep++
						}
					}
				}
			}
		}
	}
	if planned < 10000 || steep < 1000 {
		t.Errorf("planned %d curves, %d steep: the sweep has shrunk", planned, steep)
	}
}

// checkCurveRefusal: a curve is refused where it rounds to nothing, or where a
// double stitch leaves no stitch beside it.
func checkCurveRefusal(t *testing.T, in WedgeInput, err error) {
	t.Helper()
	if in.TurnMethod == TurnMethodGerman {
		wrapped := in
		wrapped.TurnMethod = TurnMethodWrapAndTurn
		if out, e := PlanWedge(wrapped); e == nil {
			knittest.WantViolations(t, err, "profile_rows INFEASIBLE", "turn_method INFEASIBLE")
			if !slices.ContainsFunc(out.Turns, func(s TurnSequence) bool { return s.FirstUnworkedStitches == 1 }) {
				t.Fatalf("%v over %d: German turns refused, and none would be at an edge", in.ProfileRows, in.WidthStitches)
			}
			return
		}
	}
	knittest.WantViolations(t, err, "profile_rows INFEASIBLE")
}

// wantedOnCurve is the height under the middle of stitch x, by interpolation.
func wantedOnCurve(points []float64, width, x int) float64 {
	at := new(big.Rat).Mul(big.NewRat(int64(2*x+1), int64(2*width)), big.NewRat(int64(len(points)-1), 1))
	i := int(new(big.Int).Quo(at.Num(), at.Denom()).Int64())
	part, _ := new(big.Rat).Sub(at, big.NewRat(int64(i), 1)).Float64()
	return points[i] + (points[i+1]-points[i])*part
}

// checkCurve knits a curved wedge and reports whether it was eased.
func checkCurve(t *testing.T, in WedgeInput, out Wedge) bool {
	t.Helper()
	m := knittest.CastOn(t, in.WidthStitches, false)
	for _, r := range out.Rows {
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatalf("%v over %d, order %d, method %d: row %d, %q: %v", in.ProfileRows, in.WidthStitches, in.Order, in.TurnMethod,
				r.RowNumber, r.Instruction.Row.Text(), err)
		}
	}
	if m.StitchCount() != in.WidthStitches || m.Unresolved() != 0 || m.ShortRowOpen() {
		t.Fatalf("%v over %d: %d stitches, %d gaps open", in.ProfileRows, in.WidthStitches, m.StitchCount(), m.Unresolved())
	}
	if out.TurnCount == 0 {
		t.Fatalf("%v over %d: a wedge without a turn", in.ProfileRows, in.WidthStitches)
	}
	worst, tallest, shortest := 0.0, 0, 1<<30
	for x, rows := range m.Heights() {
		tallest, shortest = max(tallest, rows), min(shortest, rows)
		worst = max(worst, math.Abs(float64(rows-out.FullRows)-wantedOnCurve(in.ProfileRows, in.WidthStitches, x)))
	}
	if tallest-shortest != out.RiseRows {
		t.Fatalf("%v over %d, method %d: rises %d rows, %d said", in.ProfileRows, in.WidthStitches, in.TurnMethod, tallest-shortest,
			out.RiseRows)
	}
	if tallest != out.TallRows || math.Abs(worst-out.GreatestDepartureRows) > 1e-9 {
		t.Fatalf("%v over %d: %d rows at the tallest place, %d said; departs by %v, %v said",
			in.ProfileRows, in.WidthStitches, tallest, out.TallRows, worst, out.GreatestDepartureRows)
	}
	limit, told := 1.0, ""
	rounded := false
	for _, n := range out.Notices {
		if n.Reason == RiseRounded {
			rounded = true
			continue
		}
		told = string(n.Reason)
	}
	if asked := slices.Max(in.ProfileRows) - slices.Min(in.ProfileRows); rounded != (math.Abs(asked-float64(out.RiseRows)) > 1e-9) {
		t.Fatalf("%v over %d, method %d: rises %d rows, and says so: %v", in.ProfileRows, in.WidthStitches, in.TurnMethod, out.RiseRows, rounded)
	}
	if in.TurnMethod == TurnMethodGerman {
		limit = 2
	}
	if told == "" && worst > limit+1e-9 {
		t.Fatalf("%v over %d, method %d: departs by %v rows and says nothing", in.ProfileRows, in.WidthStitches, in.TurnMethod, worst)
	}
	if told == "DOUBLES_STAND_OUT" && (in.TurnMethod != TurnMethodGerman || worst <= limit) {
		t.Fatalf("%v over %d, method %d: departs by %v rows and says so", in.ProfileRows, in.WidthStitches, in.TurnMethod, worst)
	}
	return told == "STEEPER_THAN_ONE_STITCH_A_TURN"
}

// A back neck by hand: 12 stitches, points 6, 0, 0, 6 rows, so straight from 6 to 0
// over 4 stitches at each side. Under the middles of the four stitches lie 5.25,
// 3.75, 2.25 and 0.75 rows: 3, 2, 1 and 0 pairs.
func TestCurvedWedgeByHand(t *testing.T) {
	out, err := PlanWedge(WedgeInput{WidthStitches: 12, ProfileRows: []float64{6, 0, 0, 6}})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"k3, w&t", "p3", "k2, w&t", "p2", "k1, w&t", "p1",
		"k1, [k1 tog with its wrap] 3 times, k8", "p3, w&t", "k3", "p2, w&t", "k2", "p1, w&t", "k1",
		"p1, [p1 tog with its wrap] 3 times, p8"}
	if len(out.Rows) != len(want) {
		t.Fatalf("%d rows, want %d", len(out.Rows), len(want))
	}
	for i, r := range out.Rows {
		if got := r.Instruction.Row.Text(); got != want[i] {
			t.Errorf("row %d: %q, want %q", i+1, got, want[i])
		}
	}
	if out.GreatestDepartureRows != 0.75 || out.RiseRows != 6 {
		t.Errorf("departs by %v, rises %d", out.GreatestDepartureRows, out.RiseRows)
	}
}

// A curve says why it does not rise as it was asked to, in rows and in cm: 3.42 cm
// at 30 rows to 10 cm are 10.26 rows. Over 4 stitches there is room for one turn a
// stitch apart on each flank, so that a curve that is steep all over rises a pair.
func TestCurvedWedgeTellsItsRise(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for want, in := range map[string]WedgeInput{
		"asks for 8 rows; stitches made double have a row more, and 7 rows were planned": {
			WidthStitches: 20, ProfileRows: []float64{8, 0, 8}, TurnMethod: TurnMethodGerman},
		"asks for 10.26 rows; short rows come in pairs, for the height under the middle of each stitch, and 10 rows were planned": {
			WidthStitches: 40, ProfileCm: []float64{0, 3.42}, Gauge: standard},
		"asks for 22 rows; the turns could not follow it, and 2 rows were planned": {
			WidthStitches: 4, ProfileRows: []float64{0, 22, 0}},
	} {
		out, err := PlanWedge(in)
		if err != nil || len(out.Notices) == 0 || out.Notices[0].Reason != RiseRounded || out.Notices[0].Description != want ||
			in.ProfileRows != nil != (out.Notices[0].Field == "profile_rows") {
			t.Errorf("%+v, want %q; %v", out.Notices, want, err)
		}
	}
}

// No steps of at most one lie closer to the wanted pairs at their worst stitch
// than the eased ones: all of them are tried on small widths.
func TestEasedIsNearest(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		pairs := make([]int, 1+rng.IntN(6))
		for i := range pairs {
			pairs[i] = rng.IntN(6)
		}
		got, changed := eased(pairs)
		worst := 0
		for x := range got {
			worst = max(worst, measure.Abs(got[x]-pairs[x]))
			if x > 0 && measure.Abs(got[x]-got[x-1]) > 1 {
				t.Fatalf("%v eased to %v", pairs, got)
			}
		}
		if changed != (worst > 0) {
			t.Fatalf("%v eased to %v, changed %v", pairs, got, changed)
		}
		if best := nearestSteps(pairs, 0, 0); worst > best {
			t.Fatalf("%v eased to %v, off by %d; %d can be had", pairs, got, worst, best)
		}
	}
}

// nearestSteps tries every way on from stitch x with the height before it.
func nearestSteps(pairs []int, x, before int) int {
	if x == len(pairs) {
		return 0
	}
	best := 1 << 30
	for h := range 7 {
		if x > 0 && measure.Abs(h-before) > 1 {
			continue
		}
		best = min(best, max(measure.Abs(h-pairs[x]), nearestSteps(pairs, x+1, h)))
	}
	return best
}

func TestCurvedWedgeRefusals(t *testing.T) {
	nan := math.NaN()
	six := 6
	zigzag := make([]float64, MaxProfilePoints)
	for i := range zigzag {
		zigzag[i] = float64(i%2) * 40
	}
	for name, c := range map[string]struct {
		in   WedgeInput
		want []string
	}{
		"one point": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{4}}, []string{"profile_rows OUT_OF_RANGE"}},
		"points": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{-1, nan, 3000}},
			[]string{"profile_rows[0] OUT_OF_RANGE", "profile_rows[1] NOT_FINITE", "profile_rows[2] OUT_OF_RANGE"}},
		"both": {WedgeInput{WidthStitches: 20, RiseRows: &six, ProfileRows: []float64{0, 6}},
			[]string{"rise_rows CONTRADICTORY", "profile_rows CONTRADICTORY"}},
		"tall end": {WedgeInput{WidthStitches: 20, TallEnd: TallEndLeft, ProfileRows: []float64{0, 6}},
			[]string{"tall_end CONTRADICTORY"}},
		"grouped": {WedgeInput{WidthStitches: 20, Spread: TurnSpreadGrouped, ProfileRows: []float64{0, 6}},
			[]string{"spread CONTRADICTORY"}},
		"level": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{5, 5}}, []string{"profile_rows INFEASIBLE"}},
		"level in pairs": {WedgeInput{WidthStitches: 20, ProfileRows: []float64{5.2, 6.8, 5}, TurnMethod: TurnMethodGerman},
			[]string{"profile_rows INFEASIBLE"}},
		"levelled by doubles": {WedgeInput{WidthStitches: 2, ProfileRows: []float64{8, 4}, TurnMethod: TurnMethodGerman},
			[]string{"profile_rows INFEASIBLE", "turn_method INFEASIBLE"}},
		"flat":     {WedgeInput{WidthStitches: 20, ProfileRows: []float64{0, 0.9, 0}}, []string{"profile_rows INFEASIBLE"}},
		"no gauge": {WedgeInput{WidthStitches: 20, ProfileCm: []float64{0, 5}}, []string{"gauge REQUIRED"}},
		"too high": {WedgeInput{WidthStitches: 20, ProfileCm: []float64{0, 900}, Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}},
			[]string{"profile_cm INFEASIBLE"}},
		"too many":   {WedgeInput{WidthStitches: 20, ProfileRows: make([]float64, MaxProfilePoints+1)}, []string{"profile_rows TOO_MANY"}},
		"many humps": {WedgeInput{WidthStitches: stitch.MaxStitches, ProfileRows: zigzag}, []string{"profile_rows INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanWedge(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func FuzzPlanCurvedWedge(f *testing.F) {
	f.Add(30, 0.0, 8.0, 8.0, 0.0, int32(1), int32(1))
	f.Add(41, 12.0, 3.5, 9.0, 1.0, int32(2), int32(2))
	f.Fuzz(func(t *testing.T, width int, a, b, c, d float64, order, method int32) {
		in := WedgeInput{WidthStitches: width % 300, ProfileRows: []float64{a, b, c, d}, Order: Order(order),
			TurnMethod: TurnMethod(method)}
		out, err := PlanWedge(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		for i, p := range in.ProfileRows { // points are read to a millionth of a row
			in.ProfileRows[i] = math.Round(p*1e6) / 1e6
		}
		checkCurve(t, in, out)
	})
}

func BenchmarkCurvedWedge(b *testing.B) {
	in := WedgeInput{WidthStitches: 120, ProfileRows: []float64{0, 6, 11, 14, 15, 15, 15, 14, 11, 6, 0}}
	for b.Loop() {
		if _, err := PlanWedge(in); err != nil {
			b.Fatal(err)
		}
	}
}
