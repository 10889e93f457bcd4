package shaping

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/stitch"
)

// Every size's edges stand where its shaping rows put them, counted row by row, in stitches
// and rows or in cm.
func TestGradedOutline(t *testing.T) {
	rows := []int{90, 97, 120}
	in := GradedTaperInput{WithOutline: true, Construction: stitch.InTheRound, Sizes: []TaperSize{
		{Name: "S", StartStitches: 46, EndStitches: 70, HeightRows: &rows[0]}, {StartStitches: 48, EndStitches: 76, HeightRows: &rows[1]},
		{Name: "left over", StartStitches: 50, EndStitches: 94, HeightRows: &rows[2]}}}
	for _, g := range []*gauge.Gauge{nil, {Stitches: 20, Rows: 28}} {
		in.Gauge = g
		out, err := PlanGradedTaper(in)
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, out.Outline)
		if len(out.Outline.Lines) != 6 {
			t.Fatalf("%d lines", len(out.Outline.Lines))
		}
		wide, high := 0.5, 1.0 // half a stitch from the middle, and a row
		if g != nil {
			wide, high = 0.25, 10.0/28
		}
		for i, size := range out.Sizes {
			right, left := out.Outline.Lines[2*i], out.Outline.Lines[2*i+1]
			if name := []string{"size S, ", "size 2, ", "size left over, "}[i]; right.Name != name+"right edge" || left.Name != name+"left edge" {
				t.Errorf("lines %q and %q", right.Name, left.Name)
			}
			shapes, count := map[int]bool{}, size.StartStitches
			for row := range size.Intervals.From(fault.Or(size.FirstShapingRowNumber, 0)) {
				shapes[row] = true
			}
			for row := 1; row <= size.HeightRows; row++ {
				if shapes[row] {
					count += 2
				}
				x := outlinetest.At(right, t, float64(row)*high)
				if math.Abs(x-float64(count)*wide) > 1e-9 || math.Abs(outlinetest.At(left, t, float64(row)*high)+x) > 1e-9 {
					t.Fatalf("%s stands at %v after row %d of %d stitches", right.Name, x, row, count)
				}
			}
		}
	}
}

// More shaping rows than anybody could tell apart are not drawn, and neither is what
// nobody asked for.
func TestGradedOutlineEnds(t *testing.T) {
	rows := 4000
	in := GradedTaperInput{Construction: stitch.InTheRound, RowChoice: RowChoiceAny, Sizes: []TaperSize{
		{StartStitches: 100, EndStitches: 3100, HeightRows: &rows}, {StartStitches: 100, EndStitches: 3100, HeightRows: &rows}}}
	out, err := PlanGradedTaper(in)
	if err != nil || out.Outline != nil {
		t.Fatalf("%v, %v", out.Outline, err)
	}
	in.WithOutline = true
	if out, err = PlanGradedTaper(in); err != nil || len(out.Outline.Lines) != 2 || !strings.HasPrefix(out.Outline.Lines[0].Name, "size 1,") {
		t.Fatalf("%d lines, %v", len(out.Outline.Lines), err)
	}
}
