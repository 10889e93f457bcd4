package shaping

import (
	"fmt"
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Small tapers of every kind are knit row by row: each shaping row can be
// worked on the side it is planned for and leaves the count it says, intervals
// take two neighbouring legal values, and the departure from the straight line
// is the one worked out here over every row.
func TestTaperIsKnit(t *testing.T) {
	planned := 0
	for start := 2; start <= 14; start += 3 {
		for end := 4; end <= 24; end++ {
			for rows := 1; rows <= 27; rows += 2 {
				for _, plain := range [][2]int{{0, 0}, {2, 0}, {1, 3}} {
					for variant := range 3 * 2 * 2 * 4 * 3 {
						in := TaperInput{StartStitches: start, EndStitches: end, HeightRows: &rows,
							EvenBeforeRows: &plain[0], EvenAfterRows: &plain[1]}
						per := 1 + variant%2
						in.EdgeChangeStitches = &per
						in.Edges = ShapedEdges(1 + variant/2%3)
						in.ShapingRows = ShapingRows(1 + variant/6%2)
						in.Spread = IntervalSpread(1 + variant/12%4)
						switch variant / 48 {
						case 1:
							in.FirstSide = stitch.WrongSide
						case 2:
							in.Construction = stitch.InTheRound
						}
						out, err := PlanTaper(in)
						if err != nil {
							checkTaperRefusal(t, in, err)
							continue
						}
						planned++
						checkTaper(t, in, out)
					}
				}
			}
		}
	}
	if planned < 10000 {
		t.Errorf("planned %d tapers: the sweep has shrunk", planned)
	}
}

func describeTaper(in TaperInput) string {
	return fmt.Sprintf("%d to %d in %d rows, plain %d/%d, per edge %d, edges %d, rows %d, spread %d, first %d, round %v",
		in.StartStitches, in.EndStitches, fault.Or(in.HeightRows, 0), fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0),
		fault.Or(in.EdgeChangeStitches, 1), in.Edges, in.ShapingRows, in.Spread, in.FirstSide, in.Construction == stitch.InTheRound)
}

func checkTaper(t *testing.T, in TaperInput, out Taper) {
	t.Helper()
	round := in.Construction == stitch.InTheRound
	before, after := fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0)
	m := knittest.CastOn(t, in.StartStitches, round)
	if in.FirstSide == stitch.WrongSide {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	next, last, count := 0, 0, in.StartStitches
	intervals := map[int]bool{}
	worst := 0.0
	for row := 1; row <= out.HeightRows; row++ {
		work := knittest.PlainRow(m)
		if next < len(out.ShapingRows) && out.ShapingRows[next].RowNumber == row {
			s := out.ShapingRows[next]
			if (m.Side() == stitch.WrongSide) != (s.Side == stitch.WrongSide) {
				t.Fatalf("%s: row %d is planned on the other side", describeTaper(in), row)
			}
			if in.ShapingRows == ShapingRowsRightSide && !round && s.Side != stitch.RightSide {
				t.Fatalf("%s: row %d shapes on the wrong side", describeTaper(in), row)
			}
			instruction := out.RightSideRow
			if s.Side == stitch.WrongSide {
				instruction = out.WrongSideRow
			}
			work = instruction.Row
			if last > 0 {
				intervals[row-last] = true
			}
			last, count = row, s.EndStitches
			next++
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%s: row %d, %q: %v", describeTaper(in), row, work.Text(), err)
		}
		if m.StitchCount() != count {
			t.Fatalf("%s: %d stitches after row %d, %d said", describeTaper(in), m.StitchCount(), row, count)
		}
		part := float64(row-before) / float64(out.HeightRows-before-after)
		line := float64(in.StartStitches) + float64(in.EndStitches-in.StartStitches)*min(1, max(0, part))
		worst = max(worst, math.Abs(float64(count)-line))
	}
	if next != len(out.ShapingRows) || count != in.EndStitches {
		t.Fatalf("%s: %d of %d shaping rows worked, %d stitches", describeTaper(in), next, len(out.ShapingRows), count)
	}
	if out.FirstShapingRowNumber <= before || out.HeightRows-last < after || out.EvenAfterRows != out.HeightRows-last {
		t.Fatalf("%s: shaping from row %d to %d", describeTaper(in), out.FirstShapingRowNumber, last)
	}
	legal := 1
	if in.ShapingRows == ShapingRowsRightSide || in.ShapingRows == ShapingRowsUnspecified && !round {
		legal = 2
	}
	low, high := 1<<30, 0
	for d := range intervals {
		low, high = min(low, d), max(high, d)
		if d%legal != 0 {
			t.Fatalf("%s: interval %d", describeTaper(in), d)
		}
	}
	if len(intervals) > 0 && high-low > legal && in.Spread != IntervalSpreadLeastEffort {
		t.Fatalf("%s: intervals %v", describeTaper(in), intervals)
	}
	if math.Abs(worst-out.GreatestDepartureStitches) > 1e-9 {
		t.Fatalf("%s: departs by %v, %v said", describeTaper(in), worst, out.GreatestDepartureStitches)
	}
	checkEffort(t, in, out)
}

// checkTaperRefusal: a taper is refused only for want of rows, of stitches, or
// of whole shaping rows.
func checkTaperRefusal(t *testing.T, in TaperInput, err error) {
	t.Helper()
	per := *in.EdgeChangeStitches
	edges := 1
	if in.Edges == ShapedEdgesBoth {
		edges = 2
	}
	change := measure.Abs(in.EndStitches - in.StartStitches)
	if change == 0 || change%(per*edges) != 0 {
		return
	}
	slots := 0
	for row := 1 + *in.EvenBeforeRows; row <= *in.HeightRows-*in.EvenAfterRows; row++ {
		odd := row%2 == 1
		if in.ShapingRows == ShapingRowsAny || odd == (in.FirstSide != stitch.WrongSide) {
			slots++
		}
	}
	narrow := min(in.StartStitches, in.EndStitches) < 2*(1+per+1)
	if change/(per*edges) <= slots && !narrow {
		t.Fatalf("%s refused though it fits: %v", describeTaper(in), err)
	}
}

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
	for i, r := range out.ShapingRows {
		if r.RowNumber != want[i] || r.EndStitches != 54+2*i || r.Side != stitch.RightSide {
			t.Errorf("shaping row %d: %+v, want row %d", i, r, want[i])
		}
	}
	if got := out.RightSideRow.Row.Text(); got != "k1, m1l, k to last st, m1r, k1" {
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
		"Increase row (RS): k1, m1l, k to last st, m1r, k1.",
		"Work the increase row on row 3, then every 8th row twice, then every 6th row 13 times: 84 stitches.",
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
		{10, 20, 1, ShapedEdgesBoth, stitch.RightSide, "k1, m1l, k to last st, m1r, k1"},
		{10, 20, 1, ShapedEdgesBoth, stitch.WrongSide, "p1, m1rp, p to last st, m1lp, p1"},
		{20, 10, 1, ShapedEdgesBoth, stitch.RightSide, "k1, ssk, k to last 3 sts, k2tog, k1"},
		{20, 10, 1, ShapedEdgesBoth, stitch.WrongSide, "p1, p2tog, p to last 3 sts, ssp, p1"},
		{10, 20, 1, ShapedEdgesBeginning, stitch.RightSide, "k1, m1l, k to end"},
		{10, 20, 1, ShapedEdgesBeginning, stitch.WrongSide, "p to last st, m1lp, p1"},
		{10, 20, 1, ShapedEdgesEnd, stitch.RightSide, "k to last st, m1r, k1"},
		{10, 20, 1, ShapedEdgesEnd, stitch.WrongSide, "p1, m1rp, p to end"},
		{20, 10, 1, ShapedEdgesBeginning, stitch.WrongSide, "p to last 3 sts, ssp, p1"},
		{20, 10, 2, ShapedEdgesBoth, stitch.RightSide, "k1, sssk, k to last 4 sts, k3tog, k1"},
		{20, 10, 2, ShapedEdgesEnd, stitch.WrongSide, "p1, p3tog, p to end"},
		{10, 20, 2, ShapedEdgesBoth, stitch.RightSide, "k1, m1l, k1, m1l, k to last 2 sts, m1r, k1, m1r, k1"},
	} {
		row := taper{start: c.start, end: c.end, perEdge: c.perEdge, edge: 1, edges: c.edges}.shapingRow(c.side)
		if got := row.Text(); got != c.want {
			t.Errorf("%+v: %q", c, got)
		}
	}
}

func TestTaperRefusals(t *testing.T) {
	ten, zero, three, tooMany, big := 10, 0, 3, stitch.MaxRows+1, 101
	nan, cm := math.NaN(), 20.0
	tiny := 0.1
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	coarse := &gauge.Gauge{Stitches: 5, Rows: 5}
	for name, c := range map[string]struct {
		in   TaperInput
		want []string
	}{
		"empty": {TaperInput{}, []string{"start_stitches REQUIRED", "end_stitches REQUIRED", "height_rows REQUIRED",
			"height_cm REQUIRED"}},
		"twice": {TaperInput{StartStitches: 10, EndStitches: 20, HeightRows: &ten, HeightCm: &cm, Gauge: standard},
			[]string{"height_rows CONTRADICTORY", "height_cm CONTRADICTORY"}},
		"ranges": {TaperInput{StartStitches: -1, EndStitches: stitch.MaxStitches + 1, HeightRows: &tooMany,
			EdgeChangeStitches: &three, EdgeStitches: &zero},
			[]string{"start_stitches OUT_OF_RANGE", "end_stitches OUT_OF_RANGE", "height_rows OUT_OF_RANGE",
				"edge_change_stitches OUT_OF_RANGE", "edge_stitches OUT_OF_RANGE"}},
		"nan":      {TaperInput{StartStitches: 10, EndStitches: 20, HeightCm: &nan, Gauge: standard}, []string{"height_cm NOT_FINITE"}},
		"no gauge": {TaperInput{StartStitches: 10, EndStitches: 20, HeightCm: &cm}, []string{"gauge REQUIRED"}},
		"bad gauge": {TaperInput{StartStitches: 10, EndStitches: 20, HeightRows: &ten, Gauge: &gauge.Gauge{}},
			[]string{"gauge.stitches REQUIRED", "gauge.rows REQUIRED"}},
		"no row": {TaperInput{StartStitches: 10, EndStitches: 20, HeightCm: &tiny, Gauge: coarse},
			[]string{"height_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"equal": {TaperInput{StartStitches: 10, EndStitches: 10, HeightRows: &ten},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"odd": {TaperInput{StartStitches: 10, EndStitches: 13, HeightRows: &ten},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"few rows": {TaperInput{StartStitches: 10, EndStitches: 40, HeightRows: &ten},
			[]string{"end_stitches INFEASIBLE", "height_rows INFEASIBLE"}},
		"narrow": {TaperInput{StartStitches: 8, EndStitches: 2, HeightRows: &ten},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE", "edge_stitches INFEASIBLE"}},
		"wide edge": {TaperInput{StartStitches: 8, EndStitches: 10, HeightRows: &ten, EdgeStitches: &big},
			[]string{"edge_stitches OUT_OF_RANGE"}},
		"round wrong": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, Construction: stitch.InTheRound,
			FirstSide: stitch.WrongSide}, []string{"first_side CONTRADICTORY"}},
		"even range": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, EvenBeforeRows: &tooMany,
			EvenAfterRows: &tooMany}, []string{"even_before_rows OUT_OF_RANGE", "even_after_rows OUT_OF_RANGE"}},
		"all even": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, EvenBeforeRows: &ten},
			[]string{"end_stitches INFEASIBLE", "height_rows INFEASIBLE"}},
		"enums": {TaperInput{StartStitches: 10, EndStitches: 12, HeightRows: &ten, Construction: 3, Edges: 4, ShapingRows: 3,
			FirstSide: 3, Spread: 5, DisplayUnit: -1},
			[]string{"construction UNKNOWN_VALUE", "edges UNKNOWN_VALUE", "shaping_rows UNKNOWN_VALUE",
				"first_side UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanTaper(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// At the limit: ten thousand rows and as many shaping rows as stitches allow.
func TestTaperAtTheLimit(t *testing.T) {
	rows := stitch.MaxRows
	out, err := PlanTaper(TaperInput{StartStitches: 4, EndStitches: stitch.MaxStitches, HeightRows: &rows})
	if err != nil {
		t.Fatal(err)
	}
	if len(out.ShapingRows) != (stitch.MaxStitches-4)/2 {
		t.Errorf("%d shaping rows", len(out.ShapingRows))
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
			EdgeChangeStitches: &per, EdgeStitches: &border, Edges: ShapedEdges(edges), ShapingRows: ShapingRows(shaped),
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
