package edge

import (
	"fmt"
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// pickUpWorked picks stitches up as the row says and returns, for every row of
// the edge in order, how many stitches it took.
func pickUpWorked(t *testing.T, row stitch.Row, rows, n int) []int {
	t.Helper()
	m := stitch.NewMachine(stitch.Flat)
	if err := m.LoadEdge(rows); err != nil {
		t.Fatal(err)
	}
	if err := m.Work(row); err != nil {
		t.Fatalf("%d along %d: %q: %v", n, rows, row.Text(), err)
	}
	if m.StitchCount() != n || m.Side() != stitch.WrongSide {
		t.Fatalf("%d along %d: %q picks up %d", n, rows, row.Text(), m.StitchCount())
	}
	took := make([]int, 0, rows)
	for _, op := range knittest.OpWord(t, row, rows) {
		took = append(took, op.Leaves())
	}
	return took
}

// Every count along every short edge is picked up: the skipped rows (or those
// that take two) never stand at an end where that can be avoided, their runs
// differ by one, and the distance from even is the one said: below two stitches,
// and interleaved below that of grouped, give or take half a stitch.
func TestPickUpRowIsWorked(t *testing.T) {
	for rows := 1; rows <= 60; rows++ {
		for n := 1; n <= MaxPerRow*rows; n++ {
			strays := 0.0
			for _, grouped := range []bool{true, false} {
				row := pickUpRow(rows, n, grouped)
				took := pickUpWorked(t, row, rows, n)
				at := fmt.Sprintf("%d along %d, grouped %v: %v", n, rows, grouped, took)
				once, so, worst := 0, 0, 0.0
				low, high := map[bool]int{}, map[bool]int{}
				run := 0
				for i, k := range took {
					if k == 1 {
						once++
					}
					if n < rows && k > 1 || n > rows && k < 1 {
						t.Fatalf("%s: skips and doubles", at)
					}
					so += k
					worst = max(worst, math.Abs(float64(so)-float64(n*(i+1))/float64(rows)))
					if run++; i+1 == rows || took[i+1] != k {
						if low[k == 1] == 0 || run < low[k == 1] {
							low[k == 1] = run
						}
						high[k == 1] = max(high[k == 1], run)
						run = 0
					}
				}
				if once >= 2 && (took[0] != 1 || took[rows-1] != 1) {
					t.Fatalf("%s: an exception at an end", at)
				}
				// Runs of the commoner kind differ by one, those of the rarer are
				// single; but for the two stitches that hold the ends.
				if 2*once > rows && (high[false] > 1 || high[true] > low[true]+1) ||
					2*once <= rows && once >= 2 && (high[true] > 1 || high[false] > low[false]+1) {
					t.Fatalf("%s: uneven runs", at)
				}
				if said := edgeDeparture(row, rows, n); math.Abs(worst-said) > 1e-9 {
					t.Fatalf("%s: %v stitches from even, %v said", at, worst, said)
				}
				if grouped {
					strays = worst
				} else if worst >= 2 || worst > strays+0.5 {
					t.Fatalf("%s: %v stitches from even, %v grouped", at, worst, strays)
				}
			}
		}
	}
}

// A front edge by hand: 30 rows and 22 stitches to 10 cm, 51 rows. 51 rows are
// 17 cm, which are 37.4 stitches, so 37; 14 rows are skipped, and 15 runs of
// 37 stitches are seven of 3 and eight of 2. 3 for every 4 gives 38.25, 0.85
// more than 37.4 and 2.27 % too many (0.75 * 15/11 = 1.0227).
func TestPickUpByHand(t *testing.T) {
	rows := 51
	in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Spread: PickUpSpreadGrouped}
	out, err := PlanPickUp(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.Stitches.Count != 37 || out.SkippedRows != 14 || out.DoubledRows != 0 || out.Ratio.Text != "3 stitches for every 4 rows" {
		t.Errorf("%+v", out)
	}
	knittest.Near(t, "percent", out.Ratio.ErrorPercent, 100*(0.75*15/11-1), 1e-12)
	knittest.Near(t, "stitches", out.Ratio.ErrorStitches, 38.25-37.4, 1e-12)
	knittest.Near(t, "exact", out.Stitches.Exact, 37.4, 1e-12)
	knittest.Near(t, "edge", out.Stitches.AskedCm, 17, 1e-12)
	// After 7 times 3 of 4 rows 21 stitches lie on 28 rows, whose even share is
	// 28 * 37/51 = 20.31; a row earlier, before the skip, on 27: 19.59.
	knittest.Near(t, "departure", out.GreatestDepartureStitches, 21-27*37.0/51, 1e-12)
	want := "[pick up and knit 3, skip 1] 7 times, [pick up and knit 2, skip 1] 7 times, pick up and knit 2"
	if got := out.Instruction.Row.Text(); got != want {
		t.Errorf("row %q", got)
	}
	wantSummary := "Pick up 37 stitches along 51 rows: a band of 16.8 cm on an edge of 17 cm. " +
		"As a ratio, 3 stitches for every 4 rows (0.9 stitches too many over the whole edge)."
	if got := out.Summary(); got != wantSummary {
		t.Errorf("summary %q", got)
	}
	// Interleaved: seven of 3 and seven of 2 by turns, and the 2 that remain.
	in.Spread = PickUpSpreadUnspecified
	if out, err = PlanPickUp(in); err != nil ||
		out.Instruction.Row.Text() != "[pick up and knit 3, skip 1, pick up and knit 2, skip 1] 7 times, pick up and knit 2" {
		t.Errorf("%q, %v", out.Instruction.Row.Text(), err)
	}
	// 4 stitches and a multiple of 4 more, and 2: 34 and 38 are nearest; 38.
	four, two := 4, 2
	in.StitchRule = &gauge.CountRule{Multiple: &four, Remainder: &two}
	if out, err = PlanPickUp(in); err != nil || out.Stitches.Count != 38 || out.Stitches.Below.Count != 34 {
		t.Errorf("%+v, %v", out.Stitches, err)
	}
	// 8.5 cm at a gauge of equal stitches and rows: one in every row, exactly.
	cm := 8.5
	out, err = PlanPickUp(PickUpInput{LengthCm: &cm, Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}})
	if err != nil || out.LengthRows != 17 || out.Ratio.Text != "1 stitch for every row" || out.Ratio.ErrorStitches != 0 ||
		out.Instruction.Row.Text() != "pick up and knit 17" {
		t.Errorf("%+v, %v", out, err)
	}
	// A band with 33 stitches where the piece has 30 rows: 10 rows give 11, so
	// one row takes two, with 4 or 5 rows on each side of it.
	ten := 10
	out, err = PlanPickUp(PickUpInput{LengthRows: &ten, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
		BandGauge: &gauge.Gauge{Stitches: 33, Rows: 40}})
	if err != nil || out.DoubledRows != 1 || out.Ratio.Text != "8 stitches for every 7 rows" ||
		out.Instruction.Row.Text() != "pick up and knit 5, pick up and knit 2 in one row, pick up and knit 4" {
		t.Errorf("%+v, %v", out, err)
	}
	// 10 rows at 25 to 10 cm are 4 cm: 10.5 stitches at 26.25, half-way.
	out, err = PlanPickUp(PickUpInput{LengthRows: &ten, Gauge: &gauge.Gauge{Stitches: 26.25, Rows: 25}})
	if err != nil || out.Stitches.Count != 11 || len(out.Notices) != 1 || out.Notices[0].Reason != "HALFWAY" {
		t.Errorf("%+v, %v", out, err)
	}
}

// Groups within groups, by hand. 174 rows at 22 to 30 are 127.6, so 128 stitches
// and 46 skipped rows: 47 runs, 34 of 3 and 13 of 2. One of 2 stands at the end;
// the other 12 close 12 groups, which share 34: ten with 3 and two with 2. 100
// rows at 33 to 30 are 110: 10 rows take two, 90 are eleven runs, two of 9 and
// nine of 8. One of 8 stands at the end; the two of 9 close two groups with 4 of
// the other 8 each.
func TestPickUpGroupsByHand(t *testing.T) {
	for _, c := range []struct {
		rows int
		st   float64
		want string
	}{
		{174, 22, "[[pick up and knit 3, skip 1] 3 times, pick up and knit 2, skip 1] 10 times, " +
			"[[pick up and knit 3, skip 1] twice, pick up and knit 2, skip 1] twice, pick up and knit 2"},
		{100, 33, "[[pick up and knit 8, pick up and knit 2 in one row] 4 times, " +
			"pick up and knit 9, pick up and knit 2 in one row] twice, " +
			"pick up and knit 8"},
	} {
		out, err := PlanPickUp(PickUpInput{LengthRows: &c.rows, Gauge: &gauge.Gauge{Stitches: c.st, Rows: 30}})
		if err != nil || out.Instruction.Row.Text() != c.want {
			t.Errorf("%d rows: %q, %v", c.rows, out.Instruction.Row.Text(), err)
		}
	}
}

func TestPickUpRefusals(t *testing.T) {
	ten, zero, many, one, tooMany := 10, 0, stitch.MaxRows+1, 1, 21
	nan, cm, tiny, thousand := math.NaN(), 20.0, 0.1, 1000.0
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for name, c := range map[string]struct {
		in   PickUpInput
		want []string
	}{
		"empty": {PickUpInput{}, []string{"length_rows REQUIRED", "length_cm REQUIRED", "gauge REQUIRED"}},
		"twice": {PickUpInput{LengthRows: &ten, LengthCm: &cm, Gauge: standard},
			[]string{"length_rows CONTRADICTORY", "length_cm CONTRADICTORY"}},
		"no rows":   {PickUpInput{LengthRows: &zero, Gauge: standard}, []string{"length_rows OUT_OF_RANGE"}},
		"many rows": {PickUpInput{LengthRows: &many, Gauge: standard}, []string{"length_rows OUT_OF_RANGE"}},
		"nan":       {PickUpInput{LengthCm: &nan, Gauge: standard}, []string{"length_cm NOT_FINITE"}},
		"no row": {PickUpInput{LengthCm: &tiny, Gauge: &gauge.Gauge{Stitches: 5, Rows: 5}},
			[]string{"length_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"long": {PickUpInput{LengthCm: &thousand, Gauge: &gauge.Gauge{Stitches: 5, Rows: 500}},
			[]string{"length_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"bad gauges": {PickUpInput{LengthRows: &ten, Gauge: &gauge.Gauge{}, BandGauge: &gauge.Gauge{Stitches: -1, Rows: 1}},
			[]string{"gauge.stitches REQUIRED", "gauge.rows REQUIRED", "band_gauge.stitches OUT_OF_RANGE"}},
		"rule": {PickUpInput{LengthRows: &ten, Gauge: standard, StitchRule: &gauge.CountRule{Multiple: &zero, Rounding: 9}},
			[]string{"stitch_rule.multiple OUT_OF_RANGE", "stitch_rule.rounding UNKNOWN_VALUE"}},
		"misfit": {PickUpInput{LengthRows: &one, Gauge: standard,
			StitchRule: &gauge.CountRule{Multiple: &ten, Rounding: measure.RoundingDown}},
			[]string{"length_rows INFEASIBLE", "gauge INFEASIBLE", "stitch_rule INFEASIBLE"}},
		"two a row": {PickUpInput{LengthRows: &ten, Gauge: standard, BandGauge: &gauge.Gauge{Stitches: 62, Rows: 30}},
			[]string{"length_rows INFEASIBLE", "band_gauge INFEASIBLE"}},
		"rule above": {PickUpInput{LengthRows: &one, Gauge: standard, StitchRule: &gauge.CountRule{Multiple: &ten}},
			[]string{"length_rows INFEASIBLE", "gauge INFEASIBLE", "stitch_rule INFEASIBLE"}},
		"number": {PickUpInput{LengthRows: &ten, Gauge: standard, LargestTerm: &one}, []string{"largest_term OUT_OF_RANGE"}},
		"several": {PickUpInput{LengthRows: &zero, LargestTerm: &tooMany, Spread: 3, DisplayUnit: 3},
			[]string{"length_rows OUT_OF_RANGE", "gauge REQUIRED", "largest_term OUT_OF_RANGE", "spread UNKNOWN_VALUE",
				"display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanPickUp(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
	// Two in every row is the most, and is possible.
	out, err := PlanPickUp(PickUpInput{LengthRows: &ten, Gauge: standard, BandGauge: &gauge.Gauge{Stitches: 60, Rows: 30}})
	if err != nil || out.Instruction.Row.Text() != "[pick up and knit 2 in one row] 10 times" {
		t.Errorf("%q, %v", out.Instruction.Row.Text(), err)
	}
}

// At the limit of ten thousand rows the row is still written, in bounds.
func TestPickUpAtTheLimit(t *testing.T) {
	rows := stitch.MaxRows
	for _, st := range []float64{1, 13.37, 15, 22, 29.97, 31.4, 45, 59} {
		out, err := PlanPickUp(PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: st, Rows: 30}})
		if out.Stitches.Exact > stitch.MaxStitches+0.5 || st > 30 {
			knittest.WantViolations(t, err, "length_rows INFEASIBLE", "gauge INFEASIBLE")
			continue
		}
		if err != nil {
			t.Fatal(err)
		}
		pickUpWorked(t, out.Instruction.Row, rows, out.Stitches.Count)
		if n := len(out.Instruction.Row.Text()); n > 1_000 {
			t.Errorf("%v stitches: a row of %d characters", st, n)
		}
	}
}

func FuzzPlanPickUp(f *testing.F) {
	f.Add(51, 0.0, 22.0, 30.0, 0.0, 4, 2, 8, int32(0))
	f.Add(0, 42.5, 20.0, 28.0, 24.0, 1, 0, 20, int32(2))
	f.Fuzz(func(t *testing.T, rows int, cm, st, rw, band float64, multiple, remainder, largest int, order int32) {
		in := PickUpInput{Gauge: &gauge.Gauge{Stitches: st, Rows: rw},
			StitchRule:  &gauge.CountRule{Multiple: &multiple, Remainder: &remainder},
			LargestTerm: &largest, Spread: PickUpSpread(order), WithOutline: true}
		if rows != 0 {
			in.LengthRows = &rows
		}
		if cm != 0 {
			in.LengthCm = &cm
		}
		if band != 0 {
			in.BandGauge = &gauge.Gauge{Stitches: band, Rows: rw}
		}
		out, err := PlanPickUp(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		pickUpWorked(t, out.Instruction.Row, out.LengthRows, out.Stitches.Count)
	})
}

func BenchmarkPickUp(b *testing.B) {
	rows := 174
	in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}}
	for b.Loop() {
		if _, err := PlanPickUp(in); err != nil {
			b.Fatal(err)
		}
	}
}
