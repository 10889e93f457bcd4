package shaping

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// A sleeve worked by hand: 52 to 84 stitches in 100 rows, shaped on right-side
// rows. Shaping row i of 16 belongs to row (2i+1)*100/32 + 1/2, that is 3.6, 9.9, 16.1,
// 22.4, ..., 97.4; the right-side rows nearest to these are 3, 9, 17, 23, ..., 97.
func TestTaperByHand(t *testing.T) {
	rows := 100
	in := TaperInput{StartStitches: 52, EndStitches: 84, HeightRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
		Spread: IntervalSpreadInterleaved}
	out, err := PlanTaper(in)
	if err != nil {
		t.Fatal(err)
	}
	want := []int{3, 9, 17, 23, 29, 35, 41, 47, 53, 59, 67, 73, 79, 85, 91, 97}
	for i, r := range out.Rows {
		if r.RowNumber != want[i] || r.EndStitches != 54+2*i || r.Side != stitch.RightSide {
			t.Errorf("shaping row %d: %+v, want row %d", i, r, want[i])
		}
	}
	if got := out.RightSideRow.Row.Text(); got != "k1, M1L, k to last st, M1R, k1" {
		t.Errorf("row %q", got)
	}
	in.Spread = IntervalSpreadSlowFirst
	if out, err = PlanTaper(in); err != nil {
		t.Fatal(err)
	}
	if got := fmt.Sprint(out.Intervals); got != "[{[8] 2} {[6] 13}]" {
		t.Errorf("intervals %s", got)
	}
	wantDirections := []string{
		"Work 2 rows even.",
		"Row 3 (RS, increase row): k1, M1L, k to last st, M1R, k1.",
		"Repeat the increase row every 8th row twice more, then every 6th row 13 times: 84 stitches.",
		"Work 3 rows even.",
	}
	if got := fmt.Sprintf("%q", out.Directions()); got != fmt.Sprintf("%q", wantDirections) {
		t.Errorf("directions %s", got)
	}
}

// The shaping rows of both sides, as a pattern writes them. The edge where
// right-side rows begin is worked last on the wrong side.
func TestTaperRows(t *testing.T) {
	for _, c := range []struct {
		start, end, perEdge int
		edges               ShapedEdges
		side                stitch.Side
		want                string
	}{
		{10, 20, 1, ShapedEdgesBoth, stitch.RightSide, "k1, M1L, k to last st, M1R, k1"},
		{10, 20, 1, ShapedEdgesBoth, stitch.WrongSide, "p1, M1RP, p to last st, M1LP, p1"},
		{20, 10, 1, ShapedEdgesBoth, stitch.RightSide, "k1, ssk, k to last 3 sts, k2tog, k1"},
		{20, 10, 1, ShapedEdgesBoth, stitch.WrongSide, "p1, p2tog, p to last 3 sts, ssp, p1"},
		{10, 20, 1, ShapedEdgesBeginning, stitch.RightSide, "k1, M1L, k to end"},
		{10, 20, 1, ShapedEdgesBeginning, stitch.WrongSide, "p to last st, M1LP, p1"},
		{10, 20, 1, ShapedEdgesEnd, stitch.RightSide, "k to last st, M1R, k1"},
		{10, 20, 1, ShapedEdgesEnd, stitch.WrongSide, "p1, M1RP, p to end"},
		{20, 10, 1, ShapedEdgesBeginning, stitch.WrongSide, "p to last 3 sts, ssp, p1"},
		{20, 10, 2, ShapedEdgesBoth, stitch.RightSide, "k1, sssk, k to last 4 sts, k3tog, k1"},
		{20, 10, 2, ShapedEdgesEnd, stitch.WrongSide, "p1, p3tog, p to end"},
		{10, 20, 2, ShapedEdgesBoth, stitch.RightSide, "k1, M1L, k1, M1L, k to last 2 sts, M1R, k1, M1R, k1"},
	} {
		row := taper{start: c.start, end: c.end, perEdge: c.perEdge, edge: 1, edges: c.edges}.shapingRow(c.side)
		if got := row.Text(); got != c.want {
			t.Errorf("%+v: %q", c, got)
		}
	}
}

// At the limit: ten thousand rows and as many shaping rows as stitches allow.
func TestTaperAtTheLimit(t *testing.T) {
	rows := stitch.MaxRows
	out, err := PlanTaper(TaperInput{StartStitches: 4, EndStitches: stitch.MaxStitches, HeightRows: &rows})
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Rows) != (stitch.MaxStitches-4)/2 {
		t.Errorf("%d shaping rows", len(out.Rows))
	}
	words := 0
	for _, d := range out.Directions() {
		words += len(d)
	}
	if words > 100_000 {
		t.Errorf("directions of %d characters", words)
	}
}

func FuzzPlanTaper(f *testing.F) {
	f.Add(52, 84, 100, 0, 0, 1, 1, int32(0), int32(0), int32(0), int32(0), int32(0))
	f.Add(60, 41, 33, 1, 2, 1, 2, int32(2), int32(2), int32(2), int32(0), int32(3))
	f.Fuzz(func(t *testing.T, start, end, rows, before, after, per, border int, edges, shaped, cons, first, order int32) {
		rows, start, end = rows%400, start%400, end%400
		in := TaperInput{StartStitches: start, EndStitches: end, HeightRows: &rows, EvenBeforeRows: &before, EvenAfterRows: &after,
			EdgeChangeStitches: &per, EdgeStitches: &border, Edges: ShapedEdges(edges), RowChoice: RowChoice(shaped),
			Construction: stitch.Construction(cons), FirstSide: stitch.Side(first), Spread: IntervalSpread(order)}
		out, err := PlanTaper(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		checkTaper(t, in, out)
	})
}

func BenchmarkTaper(b *testing.B) {
	rows := 120
	in := TaperInput{StartStitches: 52, EndStitches: 84, HeightRows: &rows}
	for b.Loop() {
		if _, err := PlanTaper(in); err != nil {
			b.Fatal(err)
		}
	}
}
