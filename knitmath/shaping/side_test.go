package shaping

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// sideOf is a side through points given in rows.
func sideOf(start int, points ...[2]int) ShapedSideInput {
	in := ShapedSideInput{StartStitches: start}
	for _, p := range points {
		in.Points = append(in.Points, SidePoint{HeightRows: &p[0], Stitches: p[1]})
	}
	return in
}

func describeSide(in ShapedSideInput) string {
	s := fmt.Sprintf("%d", in.StartStitches)
	for _, p := range in.Points {
		s += fmt.Sprintf(" to %d at row %d", p.Stitches, fault.Or(p.HeightRows, 0))
	}
	return s + fmt.Sprintf(", per edge %d, edges %d, rows %d, spread %d, first %d, round %v",
		fault.Or(in.EdgeChangeStitches, 1), in.Edges, in.ShapingRows, in.Spread, in.FirstSide, in.Construction == stitch.InTheRound)
}

// Small sides of every kind through two and three points are knit row by row.
func TestShapedSideIsKnit(t *testing.T) {
	planned, refused, apart := 0, 0, 0
	try := func(in ShapedSideInput) {
		for variant := range 3 * 2 * 4 * 3 {
			in.Edges = ShapedEdges(1 + variant%3)
			in.ShapingRows = ShapingRows(1 + variant/3%2)
			in.Spread = IntervalSpread(1 + variant/6%4)
			in.FirstSide, in.Construction = stitch.SideUnspecified, stitch.ConstructionUnspecified
			switch variant / 24 {
			case 1:
				in.FirstSide = stitch.WrongSide
			case 2:
				in.Construction = stitch.InTheRound
			}
			out, err := PlanShapedSide(in)
			if err != nil {
				refused++
				checkSideRefusal(t, in, err)
				continue
			}
			planned++
			apart += len(out.Notices)
			checkShapedSide(t, in, out)
		}
	}
	for first := 1; first <= 5; first++ {
		for second := 1; second <= 5; second++ {
			for waist := 10; waist <= 18; waist += 2 {
				for bust := 10; bust <= 18; bust += 2 {
					try(sideOf(14, [2]int{first, waist}, [2]int{first + second, bust}))
					for third := 1; third <= 4; third += 3 {
						try(sideOf(14, [2]int{first, waist}, [2]int{first + second, bust}, [2]int{first + second + third, 14}))
					}
				}
			}
		}
	}
	if planned < 10000 || refused < 10000 || apart < 100 {
		t.Errorf("planned %d, refused %d, kept apart %d: the sweep has shrunk", planned, refused, apart)
	}
}

// Longer stretches of many slopes.
func TestLongerShapedSideIsKnit(t *testing.T) {
	for first := 9; first <= 40; first += 5 {
		for second := 8; second <= 40; second += 7 {
			for waist := 20; waist <= 60; waist += 4 {
				for bust := 20; bust <= 60; bust += 8 {
					for variant := range 2 * 2 * 3 {
						per := 1 + variant%2
						in := sideOf(40, [2]int{first, waist}, [2]int{first + second, bust}, [2]int{first + second + 6, bust})
						in.EdgeChangeStitches, in.ShapingRows, in.Spread = &per, ShapingRows(1+variant/2%2), IntervalSpread(1+variant/4)
						if out, err := PlanShapedSide(in); err == nil {
							checkShapedSide(t, in, out)
						} else {
							checkSideRefusal(t, in, err)
						}
					}
				}
			}
		}
	}
}

func checkShapedSide(t *testing.T, in ShapedSideInput, out ShapedSide) {
	t.Helper()
	at := describeSide(in)
	m := knittest.CastOn(t, in.StartStitches, in.Construction == stitch.InTheRound)
	if in.FirstSide == stitch.WrongSide {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	legal := 1
	if in.ShapingRows == ShapingRowsRightSide {
		legal = 2
	}
	next, count, last, point := 0, in.StartStitches, -2, 0
	low, high, worst := count, count, 0.0
	from, fromCount := 0, count
	intervals := map[int]bool{}
	for row := 1; row <= out.HeightRows; row++ {
		work := knittest.PlainRow(m)
		if next < len(out.ShapingRows) && out.ShapingRows[next].RowNumber == row {
			s := out.ShapingRows[next]
			stretch := out.Stretches[point]
			instruction := stretch.RightSideRow
			if s.Side == stitch.WrongSide {
				instruction = stretch.WrongSideRow
			}
			if (m.Side() == stitch.WrongSide) != (s.Side == stitch.WrongSide) || instruction == nil {
				t.Fatalf("%s: row %d is planned on the other side", at, row)
			}
			work, count = instruction.Row, s.EndStitches
			if last > from { // within the stretch
				intervals[row-last] = true
				if (row-last)%legal != 0 {
					t.Fatalf("%s: interval %d", at, row-last)
				}
			} else if row-last < 2 && canKeepApart(in, out) {
				t.Fatalf("%s: rows %d and %d both shape, across a point", at, last, row)
			}
			last = row
			next++
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%s: row %d, %q: %v", at, row, work.Text(), err)
		}
		if m.StitchCount() != count {
			t.Fatalf("%s: %d stitches after row %d, %d said", at, m.StitchCount(), row, count)
		}
		low, high = min(low, count), max(high, count)
		to, toCount := *in.Points[point].HeightRows, in.Points[point].Stitches
		worst = max(worst, math.Abs(float64(count)-float64(fromCount)-float64(toCount-fromCount)*float64(row-from)/float64(to-from)))
		if row != to {
			continue
		}
		stretch := out.Stretches[point]
		if count != toCount || stretch.LastRowNumber != to || stretch.FirstRowNumber != from+1 || stretch.StartStitches != fromCount ||
			stretch.EndStitches != toCount {
			t.Fatalf("%s: %d stitches at row %d, stretch %+v", at, count, row, stretch)
		}
		if a, b := bounds(intervals); b-a > legal && !eased(in.Spread) {
			t.Fatalf("%s: intervals %v", at, intervals)
		}
		clear(intervals)
		from, fromCount = to, toCount
		point++
	}
	if next != len(out.ShapingRows) || point != len(in.Points) || low != out.NarrowestStitches || high != out.WidestStitches ||
		math.Abs(worst-out.GreatestDepartureStitches) > 1e-9 {
		t.Fatalf("%s: %d of %d shaping rows, %d to %d, departs by %v, said %+v", at, next, len(out.ShapingRows), low, high, worst, out)
	}
}

// canKeepApart tries every choice of rows, stretch by stretch, for one without
// neighbours across a point. Only where any row may shape can there be none.
func canKeepApart(in ShapedSideInput, out ShapedSide) bool {
	// ends[b] says that the stretches so far can be worked with (b=1) or without
	// (b=0) shaping in the very last row.
	ends := [2]bool{true, false}
	for _, x := range out.Stretches {
		rows := x.LastRowNumber - x.FirstRowNumber + 1
		if in.ShapingRows != ShapingRowsAny || rows > 12 {
			return true
		}
		ends = extend(ends, x.ShapingRowCount, rows)
	}
	return ends[0] || ends[1]
}

// extend tries every choice of k of the rows of a stretch.
func extend(ends [2]bool, k, rows int) (next [2]bool) {
	for choice := range 1 << rows {
		n := 0
		for row := range rows {
			n += choice >> row & 1
		}
		if n != k || !ends[0] && choice&1 == 1 || !ends[0] && !ends[1] {
			continue
		}
		next[choice>>(rows-1)&1] = true
	}
	return next
}

func bounds(set map[int]bool) (low, high int) {
	for d := range set {
		if low == 0 || d < low {
			low = d
		}
		high = max(high, d)
	}
	return low, high
}

// checkSideRefusal: a side is refused only when a stretch has no whole shaping
// rows, too few rows or too few stitches.
func checkSideRefusal(t *testing.T, in ShapedSideInput, err error) {
	t.Helper()
	knittest.CheckInputError(t, err)
	per := fault.Or(in.EdgeChangeStitches, 1)
	edges := 1
	if in.Edges == ShapedEdgesBoth {
		edges = 2
	}
	from, count, shaped := 0, in.StartStitches, false
	for _, p := range in.Points {
		change := measure.Abs(p.Stitches - count)
		if change%(per*edges) != 0 {
			return
		}
		k := change / (per * edges)
		least, before := edges*per+1, count
		if p.Stitches < count {
			least, before = edges*(per+2), p.Stitches+per*edges
		}
		if k > 0 && before < least || k > legalRows(in, from+1, *p.HeightRows) {
			return
		}
		shaped = shaped || k > 0
		from, count = *p.HeightRows, p.Stitches
	}
	if shaped {
		t.Fatalf("%s refused though it fits: %v", describeSide(in), err)
	}
}

// legalRows is how many of some rows may shape.
func legalRows(in ShapedSideInput, from, to int) int {
	legal := 0
	for row := from; row <= to; row++ {
		if in.ShapingRows == ShapingRowsAny || (row%2 == 1) == (in.FirstSide != stitch.WrongSide) {
			legal++
		}
	}
	return legal
}

// A waist by hand: 100 stitches in to 88 over 36 rows, 10 rows straight, out to
// 104 over 48 rows, right-side rows. Six shaping rows belong to rows 3.5, 9.5, ...,
// 33.5, as near to 3, 9, ..., 33 as to 5, 11, ..., 35: the first of these two. Rows
// 37 to 46 are even. Of the next 48 rows eight belong to the same places.
func TestShapedSideByHand(t *testing.T) {
	in := sideOf(100, [2]int{36, 88}, [2]int{46, 88}, [2]int{94, 104})
	in.Gauge = &gauge.Gauge{Stitches: 20, Rows: 28}
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	var rows []int
	for _, r := range out.ShapingRows {
		rows = append(rows, r.RowNumber)
	}
	if want := []int{3, 9, 15, 21, 27, 33, 49, 55, 61, 67, 73, 79, 85, 91}; !reflect.DeepEqual(rows, want) {
		t.Errorf("rows %v", rows)
	}
	want := []string{
		"Rows 1 to 36: decrease from 100 to 88 stitches.",
		"Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1.",
		"Work the decrease row on row 3, then every 6th row 5 times: 88 stitches, the last 3 rows even.",
		"Rows 37 to 46: work even, 88 stitches.",
		"Rows 47 to 94: increase from 88 to 104 stitches.",
		"Increase row (RS): k1, m1l, k to last st, m1r, k1.",
		"Work the increase row on row 49, then every 6th row 7 times: 104 stitches, the last 3 rows even.",
	}
	if !reflect.DeepEqual(out.Directions(), want) {
		t.Errorf("directions %q", out.Directions())
	}
	if out.NarrowestStitches != 88 || out.WidestStitches != 104 || math.Abs(*out.HeightCm-94/2.8) > 1e-12 {
		t.Errorf("%+v", out)
	}
	// The same heights in cm at 28 rows to 10 cm: 12.85 cm are 35.98 rows.
	a, b, c := 12.85, 16.4, 33.6
	in.Points = []SidePoint{{HeightCm: &a, Stitches: 88}, {HeightCm: &b, Stitches: 88}, {HeightCm: &c, Stitches: 104}}
	again, err := PlanShapedSide(in)
	if err != nil || !reflect.DeepEqual(again.ShapingRows, out.ShapingRows) {
		t.Errorf("%v, %v", again.ShapingRows, err)
	}
	// Six stitches are enough for a decrease at each edge with a stitch outside it.
	in = sideOf(8, [2]int{10, 4})
	if out, err = PlanShapedSide(in); err != nil {
		t.Error(err)
	} else {
		in.ShapingRows, in.Edges = ShapingRowsRightSide, ShapedEdgesBoth
		checkShapedSide(t, in, out)
	}
	// Every row shapes, four in and four out: none can be spared, and none is.
	in = sideOf(20, [2]int{4, 12}, [2]int{8, 20})
	in.ShapingRows = ShapingRowsAny
	if out, err = PlanShapedSide(in); err != nil || len(out.ShapingRows) != 8 || len(out.Notices) != 0 {
		t.Errorf("%+v, %v", out, err)
	}
	// With five rows below, the fifth is kept even.
	in = sideOf(20, [2]int{5, 12}, [2]int{9, 20})
	in.ShapingRows = ShapingRowsAny
	if out, err = PlanShapedSide(in); err != nil || out.ShapingRows[3].RowNumber != 4 || len(out.Notices) != 1 {
		t.Errorf("%+v, %v", out, err)
	}
	// One slope, told as two: it is refused no more than in one.
	in = sideOf(60, [2]int{5, 50}, [2]int{10, 40})
	in.ShapingRows = ShapingRowsAny
	if out, err = PlanShapedSide(in); err != nil || len(out.ShapingRows) != 10 {
		t.Errorf("%+v, %v", out, err)
	}
}

func TestShapedSideRefusals(t *testing.T) {
	zero, three, ten, many := 0, 3, 10, stitch.MaxRows+1
	nan, tiny, cm := math.NaN(), 0.1, 20.0
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	with := func(in ShapedSideInput, change func(*ShapedSideInput)) ShapedSideInput {
		change(&in)
		return in
	}
	base := sideOf(100, [2]int{36, 88}, [2]int{90, 104})
	for name, c := range map[string]struct {
		in   ShapedSideInput
		want []string
	}{
		"empty": {ShapedSideInput{}, []string{"start_stitches REQUIRED", "points REQUIRED"}},
		"many":  {ShapedSideInput{StartStitches: 10, Points: make([]SidePoint, MaxSidePoints+1)}, []string{"points TOO_MANY"}},
		"blank": {ShapedSideInput{StartStitches: 10, Points: make([]SidePoint, 1)},
			[]string{"points[0].height_rows REQUIRED", "points[0].height_cm REQUIRED", "points[0].stitches REQUIRED"}},
		"both": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{&ten, &cm, 12}}, Gauge: standard},
			[]string{"points[0].height_rows CONTRADICTORY", "points[0].height_cm CONTRADICTORY"}},
		"ranges": {ShapedSideInput{StartStitches: -1, Points: []SidePoint{{&zero, nil, -1}, {&many, nil, 10_001}}},
			[]string{"start_stitches OUT_OF_RANGE", "points[0].height_rows OUT_OF_RANGE", "points[0].stitches OUT_OF_RANGE",
				"points[1].height_rows OUT_OF_RANGE", "points[1].stitches OUT_OF_RANGE"}},
		"nan": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &nan, 12}}, Gauge: standard},
			[]string{"points[0].height_cm NOT_FINITE"}},
		"no gauge": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &cm, 12}}}, []string{"gauge REQUIRED"}},
		"bad gauge": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &cm, 0}}, Gauge: &gauge.Gauge{Rows: 1}},
			[]string{"points[0].stitches REQUIRED", "gauge.stitches REQUIRED"}},
		"no row": {ShapedSideInput{StartStitches: 10, Points: []SidePoint{{nil, &tiny, 12}},
			Gauge: &gauge.Gauge{Stitches: 5, Rows: 5}}, []string{"points[0].height_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"downward": {sideOf(100, [2]int{36, 88}, [2]int{36, 104}), []string{"points[1].height_rows CONTRADICTORY"}},
		"straight": {sideOf(100, [2]int{36, 100}, [2]int{46, 100}), []string{"start_stitches INFEASIBLE", "points INFEASIBLE"}},
		"odd":      {sideOf(100, [2]int{36, 89}, [2]int{46, 89}), []string{"start_stitches INFEASIBLE", "points[0].stitches INFEASIBLE"}},
		"odd inside": {sideOf(100, [2]int{36, 90}, [2]int{46, 91}),
			[]string{"points[0].stitches INFEASIBLE", "points[1].stitches INFEASIBLE"}},
		"few rows": {sideOf(100, [2]int{4, 80}, [2]int{46, 90}),
			[]string{"points[0].stitches INFEASIBLE", "points[0].height_rows INFEASIBLE"}},
		"narrow": {sideOf(8, [2]int{40, 2}), []string{"start_stitches INFEASIBLE", "points[0].stitches INFEASIBLE",
			"edge_stitches INFEASIBLE"}},
		"round": {with(base, func(in *ShapedSideInput) { in.Construction, in.FirstSide = stitch.InTheRound, stitch.WrongSide }),
			[]string{"first_side CONTRADICTORY"}},
		"enums": {with(base, func(in *ShapedSideInput) {
			in.Construction, in.Edges, in.EdgeChangeStitches, in.EdgeStitches, in.ShapingRows, in.FirstSide, in.Spread,
				in.DisplayUnit = 3, 4, &three, &zero, 3, 3, 5, 3
		}), []string{"construction UNKNOWN_VALUE", "edges UNKNOWN_VALUE", "edge_change_stitches OUT_OF_RANGE", "edge_stitches OUT_OF_RANGE",
			"shaping_rows UNKNOWN_VALUE", "first_side UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanShapedSide(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// At the limit: twenty points over ten thousand rows.
func TestShapedSideAtTheLimit(t *testing.T) {
	in := sideOf(100)
	for i := range MaxSidePoints {
		rows, count := (i+1)*stitch.MaxRows/MaxSidePoints, 100
		if i%2 == 0 {
			count = 1090
		}
		in.Points = append(in.Points, SidePoint{HeightRows: &rows, Stitches: count})
	}
	in.ShapingRows = ShapingRowsAny
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	checkShapedSide(t, in, out)
	words := 0
	for _, d := range out.Directions() {
		words += len(d)
	}
	if len(out.ShapingRows) != MaxSidePoints*495 || words > 120_000 { // each with its side
		t.Errorf("%d shaping rows, %d characters", len(out.ShapingRows), words)
	}
}

func FuzzPlanShapedSide(f *testing.F) {
	f.Add(100, 36, 88, 46, 88, 94, 104, 1, int32(0), int32(0), int32(0), int32(0))
	f.Add(20, 5, 12, 9, 20, 14, 10, 1, int32(2), int32(1), int32(2), int32(3))
	f.Fuzz(func(t *testing.T, start, r1, c1, r2, c2, r3, c3, per int, shaped, edges, cons, order int32) {
		in := sideOf(start%400, [2]int{r1 % 300, c1 % 400}, [2]int{r2 % 300, c2 % 400}, [2]int{r3 % 300, c3 % 400})
		in.EdgeChangeStitches, in.ShapingRows, in.Edges = &per, ShapingRows(shaped), ShapedEdges(edges)
		in.Construction, in.Spread = stitch.Construction(cons), IntervalSpread(order)
		out, err := PlanShapedSide(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		if in.ShapingRows == ShapingRowsUnspecified {
			in.ShapingRows = ShapingRowsRightSide
			if in.Construction == stitch.InTheRound {
				in.ShapingRows = ShapingRowsAny
			}
		}
		knittest.CheckFinite(t, out)
		checkShapedSide(t, in, out)
	})
}

func BenchmarkShapedSide(b *testing.B) {
	in := sideOf(100, [2]int{36, 88}, [2]int{46, 88}, [2]int{94, 104}, [2]int{120, 104})
	for b.Loop() {
		if _, err := PlanShapedSide(in); err != nil {
			b.Fatal(err)
		}
	}
}
