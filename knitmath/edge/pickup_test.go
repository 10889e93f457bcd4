package edge

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

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
		"As a ratio, 3 stitches for every 4 rows, which by itself gives 1.3 stitches more."
	if got := out.Summary(); got != wantSummary {
		t.Errorf("summary %q", got)
	}
}

// The same edge with its stitches interleaved, and by a rule.
func TestPickUpInterleavedAndByRule(t *testing.T) {
	rows := 51
	in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Spread: PickUpSpreadInterleaved}
	// Interleaved: seven of 3 and seven of 2 by turns, and the 2 that remain.
	out, err := PlanPickUp(in)
	if err != nil ||
		out.Instruction.Row.Text() != "[pick up and knit 3, skip 1, pick up and knit 2, skip 1] 7 times, pick up and knit 2" {
		t.Errorf("%q, %v", out.Instruction.Row.Text(), err)
	}
	// 4 stitches and a multiple of 4 more, and 2: 34 and 38 are nearest; 38.
	four, two := 4, 2
	in.StitchRule = &gauge.CountRule{Multiple: &four, Remainder: &two}
	if out, err = PlanPickUp(in); err != nil || out.Stitches.Count != 38 || out.Stitches.Below.Count != 34 {
		t.Errorf("%+v, %v", out.Stitches, err)
	}
}

// An edge in cm, a band of its own gauge, and half a stitch.
func TestPickUpOtherEdgesByHand(t *testing.T) {
	// 8.5 cm at a gauge of equal stitches and rows: one in every row, exactly.
	cm := 8.5
	out, err := PlanPickUp(PickUpInput{LengthCm: &cm, Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}})
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
	f.Add(126, 0.0, 20.0, 28.0, 0.0, 1, 0, 8, int32(3))
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
		if out.GreatestDepartureStitches > MaxPickUpDeparture || out.Effort != out.Instruction.Row.Items() {
			t.Fatalf("%v stitches from even, %d items: %s", out.GreatestDepartureStitches, out.Effort, out.Instruction.Row.Text())
		}
		pickUpWorked(t, out.Instruction.Row, out.LengthRows, out.Stitches.Count)
	})
}

func BenchmarkPickUp(b *testing.B) {
	for name, rows := range map[string]int{"a front": 174, "a blanket": 1457} {
		b.Run(name, func(b *testing.B) {
			in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 85.4, Rows: 145.7}}
			for b.Loop() {
				if _, err := PlanPickUp(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// A band that is shorter than its edge by more than a stitch and 5 % is remarked on, worked out
// from the gauges alone.
func TestBandsThatTighten(t *testing.T) {
	seen := 0
	for rows := 3; rows <= 240; rows += knittest.Sweep(1, 7) {
		for multiple := 1; multiple <= 24; multiple += 3 {
			in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}}
			field := "length_rows"
			if multiple > 1 {
				in.StitchRule, field = &gauge.CountRule{Multiple: &multiple}, "stitch_rule"
			}
			out, err := PlanPickUp(in)
			if err != nil {
				continue
			}
			wanted := float64(rows) * 22 / 30
			short := wanted - float64(out.Stitches.Count)
			want := short > 1 && short > 0.05*wanted
			got := slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == BindOffTightens && n.Field == field })
			if got != want {
				t.Fatalf("%d rows, a multiple of %d: %d stitches, %v", rows, multiple, out.Stitches.Count, out.Notices)
			}
			if got {
				seen++
			}
		}
	}
	if seen < knittest.Sweep(50, 10) {
		t.Errorf("%d bands tighten: the sweep has shrunk", seen)
	}
}
