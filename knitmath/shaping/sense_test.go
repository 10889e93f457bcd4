package shaping

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// What is remarked on is read off the rows of the answer, in the flat and in the
// round, at both edges and at one, from gentle slopes to the steepest.
func TestRemarksOnShapingRows(t *testing.T) {
	seen := map[report.Reason]int{}
	for rows := 6; rows <= 40; rows += knittest.Sweep(1, 3) {
		for change := -34; change <= 34; change += 2 {
			for _, edges := range []ShapedEdges{ShapedEdgesBoth, ShapedEdgesEnd} {
				for _, even := range []*int{nil, knittest.Ptr(0), knittest.Ptr(2)} {
					in := TaperInput{StartStitches: 60, EndStitches: 60 + change, HeightRows: &rows, RowChoice: RowChoiceAny,
						Construction: stitch.Construction(1 + rows%2), Edges: edges, EvenBeforeRows: even, EvenAfterRows: even}
					out, err := PlanTaper(in)
					if err != nil {
						continue
					}
					numbers := map[int]bool{}
					for _, r := range out.Rows {
						numbers[r.RowNumber] = true
					}
					longest, run := 0, 0
					for row := 1; row <= rows; row++ {
						run++
						if !numbers[row] {
							run = 0
						}
						longest = max(longest, run)
					}
					want := map[report.Reason]string{}
					if longest > 8 && change < 0 && edges == ShapedEdgesBoth {
						want[DecreasedEveryRow] = "height_rows"
					}
					if numbers[1] {
						want[ShapedAtAnEnd] = "even_before_rows"
					}
					if numbers[rows] {
						want[ShapedAtAnEnd] += "even_after_rows"
					}
					got := map[report.Reason]string{}
					for _, n := range out.Notices {
						if n.Reason != ManyRuns {
							got[n.Reason] += n.Field
							seen[n.Reason]++
						}
					}
					if len(got) != len(want) || got[DecreasedEveryRow] != want[DecreasedEveryRow] || got[ShapedAtAnEnd] != want[ShapedAtAnEnd] {
						t.Fatalf("%s: %v, want %v", describeTaper(in), out.Notices, want)
					}
				}
			}
		}
	}
	if seen[DecreasedEveryRow] < 10 || seen[ShapedAtAnEnd] < 10 {
		t.Errorf("seen: %v", seen)
	}
}

// A side that goes in and out again is remarked on for what goes in, and once.
func TestRemarksOnAShapedSide(t *testing.T) {
	in := sideOf(60, [2]int{10, 40}, [2]int{30, 76})
	in.RowChoice = RowChoiceAny
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	reasons := []report.Reason{}
	for _, n := range out.Notices {
		reasons = append(reasons, n.Reason)
		if n.Field != "points" {
			t.Errorf("%v", n)
		}
	}
	if !slices.Equal(reasons, []report.Reason{JoinKeptEven, DecreasedEveryRow, ShapedAtAnEnd}) &&
		!slices.Equal(reasons, []report.Reason{DecreasedEveryRow, ShapedAtAnEnd}) {
		t.Errorf("%v: %v", out.Rows, out.Notices)
	}
	in = sideOf(40, [2]int{12, 64}, [2]int{30, 60}) // what goes out every row is a shawl
	in.RowChoice = RowChoiceAny
	if out, err := PlanShapedSide(in); err != nil || slices.ContainsFunc(out.Notices,
		func(n report.Notice) bool { return n.Reason == DecreasedEveryRow }) {
		t.Errorf("%v, %v", out.Notices, err)
	}
}
