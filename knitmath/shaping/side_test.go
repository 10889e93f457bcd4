package shaping

import (
	"math"
	"reflect"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

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
	for _, r := range out.Rows {
		rows = append(rows, r.RowNumber)
	}
	if want := []int{3, 9, 15, 21, 27, 33, 49, 55, 61, 67, 73, 79, 85, 91}; !reflect.DeepEqual(rows, want) {
		t.Errorf("rows %v", rows)
	}
	want := []string{
		"Work 2 rows even.",
		"Row 3 (RS, decrease row): k1, ssk, k to last 3 sts, k2tog, k1.",
		"Repeat the decrease row every 6th row 5 more times: 88 stitches.",
		"Work 15 rows even.",
		"Row 49 (RS, increase row): k1, M1L, k to last st, M1R, k1.",
		"Repeat the increase row every 6th row 7 more times: 104 stitches.",
		"Work 3 rows even.",
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
	if err != nil || !reflect.DeepEqual(again.Rows, out.Rows) {
		t.Errorf("%v, %v", again.Rows, err)
	}
}

// Six stitches are enough for a decrease at each edge with a stitch outside it.
func TestNarrowestShapedSide(t *testing.T) {
	in := sideOf(8, [2]int{10, 4})
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	in.RowChoice, in.Edges = RowChoiceRightSide, ShapedEdgesBoth
	checkShapedSide(t, in, out)
}

// Every row shapes, four in and four out: none can be spared, and none is. With
// five rows below, the fifth is kept even.
func TestShapedSideWithoutARowBetween(t *testing.T) {
	in := sideOf(20, [2]int{4, 12}, [2]int{8, 20})
	in.RowChoice = RowChoiceAny
	if out, err := PlanShapedSide(in); err != nil || len(out.Rows) != 8 || slices.ContainsFunc(out.Notices, isJoinKept) {
		t.Errorf("%+v, %v", out, err)
	}
	in = sideOf(20, [2]int{5, 12}, [2]int{9, 20})
	in.RowChoice = RowChoiceAny
	if out, err := PlanShapedSide(in); err != nil || out.Rows[3].RowNumber != 4 || !slices.ContainsFunc(out.Notices, isJoinKept) {
		t.Errorf("%+v, %v", out, err)
	}
	// One slope, told as two: it is refused no more than in one.
	in = sideOf(60, [2]int{5, 50}, [2]int{10, 40})
	in.RowChoice = RowChoiceAny
	if out, err := PlanShapedSide(in); err != nil || len(out.Rows) != 10 {
		t.Errorf("%+v, %v", out, err)
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
	in.RowChoice = RowChoiceAny
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	checkShapedSide(t, in, out)
	words := 0
	for _, d := range out.Directions() {
		words += len(d)
	}
	if len(out.Rows) != MaxSidePoints*495 || words > 120_000 { // each with its side
		t.Errorf("%d shaping rows, %d characters", len(out.Rows), words)
	}
}

func FuzzPlanShapedSide(f *testing.F) {
	f.Add(100, 36, 88, 46, 88, 94, 104, 1, int32(0), int32(0), int32(0), int32(0))
	f.Add(20, 5, 12, 9, 20, 14, 10, 1, int32(2), int32(1), int32(2), int32(3))
	f.Fuzz(func(t *testing.T, start, r1, c1, r2, c2, r3, c3, per int, shaped, edges, cons, order int32) {
		in := sideOf(start%400, [2]int{r1 % 300, c1 % 400}, [2]int{r2 % 300, c2 % 400}, [2]int{r3 % 300, c3 % 400})
		in.EdgeChangeStitches, in.RowChoice, in.Edges = &per, RowChoice(shaped), ShapedEdges(edges)
		in.Construction, in.Spread = stitch.Construction(cons), IntervalSpread(order)
		out, err := PlanShapedSide(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		if in.RowChoice == RowChoiceUnspecified {
			in.RowChoice = RowChoiceRightSide
			if in.Construction == stitch.InTheRound {
				in.RowChoice = RowChoiceAny
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
