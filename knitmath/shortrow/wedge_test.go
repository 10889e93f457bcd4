package shortrow

import (
	"fmt"
	"math"
	"math/big"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Every small wedge, at every end, in both orders, turned in all three ways, is
// knit; then the rows under every stitch are compared with the profile that was
// asked for, worked out again here as a fraction.
func TestWedgeIsKnit(t *testing.T) {
	planned := 0
	for width := 2; width <= 21; width++ {
		for rise := 1; rise <= 2*width+2; rise++ {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				for order := OrderLongestFirst; order <= OrderShortestFirst; order++ {
					for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
						for turnSpread := TurnSpreadInterleaved; turnSpread <= TurnSpreadGrouped; turnSpread++ {
							in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, Order: order,
								TurnMethod: method, Spread: turnSpread}
							out, err := PlanWedge(in)
							if err != nil {
								checkWedgeRefusal(t, in, err)
								continue
							}
							planned++
							checkWedge(t, in, out)
						}
					}
				}
			}
		}
	}
	if planned < 5000 {
		t.Errorf("planned %d wedges: the sweep has shrunk", planned)
	}
}

// wantedRows is the straight profile under the middle of stitch x, counted from
// the right edge, for a rise in rows.
func wantedRows(tall TallEnd, width, x, rise int) *big.Rat {
	fromRight := big.NewRat(int64(2*x+1), int64(2*width)) // 0 at the right edge, 1 at the left
	one := big.NewRat(1, 1)
	h := new(big.Rat)
	switch tall {
	case TallEndRight:
		h.Sub(one, fromRight)
	case TallEndLeft:
		h.Set(fromRight)
	default: // distance from the middle, 0 there and 1 at both edges
		h.Sub(new(big.Rat).Mul(fromRight, big.NewRat(2, 1)), one)
		h.Abs(h)
		if tall == TallEndCentre {
			h.Sub(one, h)
		}
	}
	return h.Mul(h, big.NewRat(int64(rise), 1))
}

func checkWedge(t *testing.T, in WedgeInput, out Wedge) {
	t.Helper()
	if in.RiseRows != nil && out.RiseRows != (*in.RiseRows+1)/2*2 {
		t.Fatalf("%s: rise %d", describe(in), out.RiseRows)
	}
	m := knittest.CastOn(t, in.WidthStitches, false)
	if out.Rows[0].Side == stitch.WrongSide {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	below := m.RowsWorked()
	turns := 0
	for _, r := range out.Rows {
		if (m.Side() == stitch.WrongSide) != (r.Side == stitch.WrongSide) {
			t.Fatalf("%s: row %d is planned on the other side", describe(in), r.RowNumber)
		}
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatalf("%s: row %d, %q: %v", describe(in), r.RowNumber, r.Instruction.Row.Text(), err)
		}
		if r.UnworkedStitches > 0 {
			turns++
		}
	}
	if m.StitchCount() != in.WidthStitches || m.Unresolved() != 0 || m.ShortRowOpen() {
		t.Fatalf("%s: %d stitches, %d gaps open", describe(in), m.StitchCount(), m.Unresolved())
	}
	if in.TurnMethod != TurnMethodGerman && turns != out.TurnCount {
		t.Fatalf("%s: %d turns, %d said", describe(in), turns, out.TurnCount)
	}
	worst, tallest, shortest := 0.0, 0, 1<<30
	for x, rows := range m.Heights() {
		rows -= below
		tallest, shortest = max(tallest, rows), min(shortest, rows)
		wanted, _ := wantedRows(in.TallEnd, in.WidthStitches, x, out.RiseRows).Float64()
		worst = max(worst, math.Abs(float64(rows-out.FullRows)-wanted))
	}
	if tallest-shortest != out.RiseRows {
		t.Fatalf("%s: rises %d rows, %d said", describe(in), tallest-shortest, out.RiseRows)
	}
	if tallest != out.TallRows {
		t.Fatalf("%s: %d rows at the tall end, %d said", describe(in), tallest, out.TallRows)
	}
	if math.Abs(worst-out.GreatestDepartureRows) > 1e-9 {
		t.Fatalf("%s: departs by %v rows, %v said", describe(in), worst, out.GreatestDepartureRows)
	}
	limit := 1.0
	if in.TurnMethod == TurnMethodGerman || in.Spread == TurnSpreadGrouped {
		limit = 2
	}
	if worst > limit+1e-9 {
		t.Fatalf("%s: departs by %v rows", describe(in), worst)
	}
}

// checkWedgeRefusal: only too steep a wedge is refused, or one that no grouping
// fits; the most pairs that fit are given by the room a turn needs.
func checkWedgeRefusal(t *testing.T, in WedgeInput, err error) {
	t.Helper()
	if in.Spread == TurnSpreadGrouped {
		ungrouped := in
		ungrouped.Spread = TurnSpreadInterleaved
		_, e := PlanWedge(ungrouped)
		if e == nil {
			knittest.WantViolations(t, err, "spread INFEASIBLE")
			return
		}
		in, err = ungrouped, e
	}
	pairs := (*in.RiseRows + 1) / 2
	room := in.WidthStitches - 1 // turns at 1 .. W-1
	switch in.TallEnd {
	case TallEndCentre, TallEndSides: // half of the others; a stitch in the middle, or at both sides, that none passes
		room = (in.WidthStitches - 1) / 2
	}
	if in.TurnMethod == TurnMethodGerman {
		room-- // and a stitch beyond the double one, which has a row more
	}
	if pairs <= room {
		t.Fatalf("%s refused though it fits: %v", describe(in), err)
	}
}

func describe(in WedgeInput) string {
	rise := 0
	if in.RiseRows != nil {
		rise = *in.RiseRows
	}
	return fmt.Sprintf("W=%d rise=%d tall=%d order=%d method=%d spread=%d",
		in.WidthStitches, rise, in.TallEnd, in.Order, in.TurnMethod, in.Spread)
}

// Worked by hand: 24 stitches, 6 rows, so 3 pairs; the profile is crossed at
// 24*1/6, 24*3/6 and 24*5/6 = 4, 12, 20 stitches from the tall edge.
func TestWedgeByHand(t *testing.T) {
	six := 6
	out, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndRight})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"k20, w&t", "p20", "k12, w&t", "p12", "k4, w&t", "p4",
		"[k4, k1 tog with its wrap, k3] 3 times",
	}
	for i, r := range out.Rows {
		if got := r.Instruction.Row.Text(); got != want[i] {
			t.Errorf("row %d: %q, want %q", i+1, got, want[i])
		}
	}
	german, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndLeft, TurnMethod: TurnMethodGerman,
		Order: OrderShortestFirst})
	if err != nil {
		t.Fatal(err)
	}
	// German: one stitch more is worked and made double. The second wrong-side
	// row passes that double stitch, the 5th from the left edge, and turns after
	// the 13th.
	want = []string{
		"p5, turn", "make DS, k4", "p4, p DS, p8, turn", "make DS, k12", "p12, p DS, p8, turn", "make DS, k20",
		"p20, p DS, p3",
	}
	for i, r := range german.Rows {
		if got := r.Instruction.Row.Text(); got != want[i] {
			t.Errorf("German row %d: %q, want %q", i+1, got, want[i])
		}
	}
}

// 18 stitches to 10 cm over 36 stitches is 20 cm; at 45 degrees the rise is
// 20 cm, at 24 rows to 10 cm 48 rows: tan 45 = 1.
func TestWedgeByAngle(t *testing.T) {
	angle := 45.0
	out, err := PlanWedge(WedgeInput{WidthStitches: 36, RiseAngleDegrees: &angle, Gauge: &gauge.Gauge{Stitches: 18, Rows: 24},
		TallEnd: TallEndRight})
	if err != nil {
		t.Fatal(err)
	}
	if out.RiseRows != 48 || math.Abs(*out.RiseCm-20) > 1e-12 || math.Abs(*out.RiseAngleDegrees-45) > 1e-9 {
		t.Errorf("rise %d rows, %v cm, %v degrees", out.RiseRows, *out.RiseCm, *out.RiseAngleDegrees)
	}
}

func TestWedgeRoundsARise(t *testing.T) {
	for _, c := range []struct {
		rise     int
		rounding measure.Rounding
		want     int
	}{{5, measure.RoundingUnspecified, 6}, {5, measure.RoundingNearest, 6}, {5, measure.RoundingUp, 6}, {5, measure.RoundingDown, 4}, {4,
		measure.RoundingUp, 4}, {1, measure.RoundingNearest, 2}} {
		out, err := PlanWedge(WedgeInput{WidthStitches: 30, RiseRows: &c.rise, TallEnd: TallEndLeft, Rounding: c.rounding})
		if err != nil || out.RiseRows != c.want {
			t.Errorf("%+v: %d rows, %v", c, out.RiseRows, err)
		}
		if odd := c.rise%2 == 1; odd != (len(out.Notices) == 1) {
			t.Errorf("%+v: notices %v", c, out.Notices)
		}
	}
}

func TestWedgeRefusals(t *testing.T) {
	two, six, zero := 2, 6, 0
	big, nan := 5000, math.NaN()
	cm, steep, tiny := 5.0, 85.0, 0.1
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	loose := &gauge.Gauge{Stitches: 5, Rows: 3}
	for name, c := range map[string]struct {
		in   WedgeInput
		want []string
	}{
		"empty": {WedgeInput{}, []string{"width_stitches REQUIRED", "rise_rows REQUIRED", "rise_cm REQUIRED",
			"rise_angle_degrees REQUIRED", "profile_rows REQUIRED", "profile_cm REQUIRED", "tall_end REQUIRED"}},
		"twice": {WedgeInput{WidthStitches: 10, RiseRows: &six, RiseCm: &cm, Gauge: standard, TallEnd: 1},
			[]string{"rise_rows CONTRADICTORY", "rise_cm CONTRADICTORY"}},
		"ranges": {WedgeInput{WidthStitches: 1, RiseRows: &zero, TallEnd: 9},
			[]string{"width_stitches OUT_OF_RANGE", "rise_rows OUT_OF_RANGE", "tall_end UNKNOWN_VALUE"}},
		"too many rows": {WedgeInput{WidthStitches: 10000, RiseRows: &big, TallEnd: 1}, []string{"rise_rows OUT_OF_RANGE"}},
		"nan":           {WedgeInput{WidthStitches: 10, RiseCm: &nan, Gauge: standard, TallEnd: 1}, []string{"rise_cm NOT_FINITE"}},
		"no gauge":      {WedgeInput{WidthStitches: 10, RiseCm: &cm, TallEnd: 1}, []string{"gauge REQUIRED"}},
		"angle": {WedgeInput{WidthStitches: 10, RiseAngleDegrees: &steep, Gauge: standard, TallEnd: 1},
			[]string{"rise_angle_degrees OUT_OF_RANGE"}},
		"steep": {WedgeInput{WidthStitches: 3, RiseRows: &six, TallEnd: 1},
			[]string{"width_stitches INFEASIBLE", "rise_rows INFEASIBLE"}},
		"no centre": {WedgeInput{WidthStitches: 2, RiseRows: &two, TallEnd: TallEndCentre},
			[]string{"width_stitches INFEASIBLE", "tall_end INFEASIBLE"}},
		"no pair": {WedgeInput{WidthStitches: 10, RiseCm: &tiny, Gauge: loose, TallEnd: 1}, []string{"rise_cm INFEASIBLE"}},
		"enums": {WedgeInput{WidthStitches: 10, RiseRows: &two, TallEnd: -1, Order: 3, TurnMethod: 4, Rounding: 4, Spread: 3,
			DisplayUnit: 3},
			[]string{"tall_end UNKNOWN_VALUE", "order UNKNOWN_VALUE", "turn_method UNKNOWN_VALUE", "rounding UNKNOWN_VALUE",
				"spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanWedge(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// At the limit: the most rows on the most stitches. The machine works them all.
func TestWedgeAtTheLimit(t *testing.T) {
	rise := MaxWedgeRows
	_, err := PlanWedge(WedgeInput{WidthStitches: stitch.MaxStitches, RiseRows: &rise, TallEnd: TallEndSides,
		TurnMethod: TurnMethodYarnOver})
	knittest.WantViolations(t, err, "width_stitches INFEASIBLE", "turn_method INFEASIBLE")
	in := WedgeInput{WidthStitches: stitch.MaxStitches, RiseRows: &rise, TallEnd: TallEndSides, TurnMethod: TurnMethodGerman}
	out, err := PlanWedge(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Rows) > 2*MaxWedgeRows+2 {
		t.Errorf("%d rows", len(out.Rows))
	}
	if !testing.Short() {
		checkWedge(t, in, out)
	}
}

func FuzzPlanWedge(f *testing.F) {
	f.Add(24, 6, int32(1), int32(1), int32(1), int32(0), int32(0))
	f.Add(75, 31, int32(3), int32(2), int32(2), int32(3), int32(2))
	f.Fuzz(func(t *testing.T, width, rise int, tall, order, method, rounding, turnSpread int32) {
		in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: TallEnd(tall), Order: Order(order),
			TurnMethod: TurnMethod(method), Spread: TurnSpread(turnSpread)}
		if width > 400 {
			width = 400 // larger pieces are worked in TestWedgeAtTheLimit
			in.WidthStitches = width
		}
		out, err := PlanWedge(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		checkWedge(t, in, out)
		in.Rounding = measure.Rounding(rounding)
		if out, err = PlanWedge(in); err == nil && measure.Abs(out.RiseRows-rise) > 1 {
			t.Fatalf("%s: rise %d", describe(in), out.RiseRows)
		}
	})
}

func BenchmarkWedge(b *testing.B) {
	rise := 30
	in := WedgeInput{WidthStitches: 90, RiseRows: &rise, TallEnd: TallEndRight}
	for b.Loop() {
		if _, err := PlanWedge(in); err != nil {
			b.Fatal(err)
		}
	}
}
