package shortrow

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Worked by hand: 24 stitches, 6 rows, so 3 pairs; the profile is crossed at
// 24*1/6, 24*3/6 and 24*5/6 = 4, 12, 20 stitches from the tall edge.
func TestWedgeByHand(t *testing.T) {
	six := 6
	out, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndRight, Spread: TurnSpreadInterleaved})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"k20, w&t", "p20", "k12, w&t", "p12", "k4, w&t", "p4",
		"[k4, k1 tog with its wrap, k3] 3 times",
	}
	for i, r := range out.Rows {
		if got := r.Instruction.Row.Text(); got != want[i] || r.Resolving != (i == 6) {
			t.Errorf("row %d: %q, resolving %v; want %q", i+1, got, r.Resolving, want[i])
		}
	}
	german, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndLeft, TurnMethod: TurnMethodGerman,
		Order: OrderShortestFirst, Spread: TurnSpreadInterleaved})
	if err != nil {
		t.Fatal(err)
	}
	// German: one stitch more is worked and made double. The doubles ask for turns half a
	// stitch nearer the tall edge, at 3.5, 11.5 and 19.5, which is half-way and goes up.
	// The second wrong-side row passes the double stitch, the 5th from the left edge, and
	// turns after the 13th.
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
	f.Add(24, 6, int32(1), int32(1), int32(1), int32(0), int32(0), 1.0)
	f.Add(75, 31, int32(3), int32(2), int32(2), int32(3), int32(2), 0.0)
	f.Fuzz(func(t *testing.T, width, rise int, tall, order, method, rounding, turnSpread int32, excess float64) {
		in := WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: TallEnd(tall), Order: Order(order),
			TurnMethod: TurnMethod(method), Spread: TurnSpread(turnSpread)}
		if excess != 1 {
			in.ToleranceRows = &excess
		}
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

// What looking for easy turns takes beside the nearest: for a shoulder, and where none
// are found on as many stitches as there may be.
func BenchmarkWedge(b *testing.B) {
	for name, in := range map[string]WedgeInput{
		"shoulder":             {WidthStitches: 90, RiseRows: new(30)},
		"shoulder, nearest":    {WidthStitches: 90, RiseRows: new(30), Spread: TurnSpreadInterleaved},
		"none easy":            {WidthStitches: stitch.MaxStitches, RiseRows: new(14), ToleranceRows: new(0.0)},
		"none easy as nearest": {WidthStitches: stitch.MaxStitches, RiseRows: new(14), Spread: TurnSpreadInterleaved},
	} {
		in.TallEnd = TallEndRight
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if _, err := PlanWedge(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
