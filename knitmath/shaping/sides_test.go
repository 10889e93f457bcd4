package shaping

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// 50 to 61 on 40 rows, any of which may shape: the same rows, whichever side row 1
// is, so that their sides must be told.
func TestDirectionsTellTheSideOfRowOne(t *testing.T) {
	words := func(first stitch.Side, rows RowChoice) []string {
		out, err := PlanTaper(TaperInput{StartStitches: 50, EndStitches: 61, HeightRows: new(40), Edges: ShapedEdgesEnd,
			RowChoice: rows, FirstSide: first, Spread: IntervalSpreadInterleaved})
		if err != nil {
			t.Fatal(err)
		}
		return out.Directions()
	}
	right, wrong := words(stitch.RightSide, RowChoiceAny), words(stitch.WrongSide, RowChoiceAny)
	if right[0] != "Row 1 is a right-side row." || wrong[0] != "Row 1 is a wrong-side row." {
		t.Errorf("%q, %q", right[0], wrong[0])
	}
	has := func(d []string, part string) bool {
		return slices.ContainsFunc(d, func(s string) bool { return strings.Contains(s, part) })
	}
	if !has(right, "Row 2 (WS, increase row): p1, M1RP, p to end; on RS rows k to last st, M1R, k1.") ||
		!has(wrong, "Row 2 (RS, increase row): k to last st, M1R, k1; on WS rows p1, M1RP, p to end.") {
		t.Errorf("%s\n%s", strings.Join(right, "\n"), strings.Join(wrong, "\n"))
	}
	// One side alone needs no word on which increase row; the default, none at all.
	plain, other := words(stitch.RightSide, RowChoiceRightSide), words(stitch.WrongSide, RowChoiceRightSide)
	if has(plain, "Row 1 is") || has(plain, "faces") || has(plain, "; on ") {
		t.Errorf("%s", strings.Join(plain, "\n"))
	}
	if other[0] != "Row 1 is a wrong-side row." || has(other, "faces") || !has(other, "Row 2 (RS, increase row)") {
		t.Errorf("%s", strings.Join(other, "\n"))
	}
}

// Rows that are listed carry their sides.
func TestListedRowsTellTheirSides(t *testing.T) {
	rows := []ShapingRow{{2, stitch.WrongSide, 11}, {5, stitch.RightSide, 12}, {6, stitch.WrongSide, 13}, {9, stitch.RightSide, 14},
		{10, stitch.WrongSide, 15}, {13, stitch.RightSide, 16}, {14, stitch.WrongSide, 17}, {17, stitch.RightSide, 18}}
	out := Taper{RowChangeStitches: 1, Rows: rows, FirstShapingRowNumber: 2, t: taper{anyRow: true},
		RightSideRow: &stitch.Instruction{}, WrongSideRow: &stitch.Instruction{}}
	var gaps []int
	for i := range rows[1:] {
		gaps = append(gaps, rows[i+1].RowNumber-rows[i].RowNumber)
	}
	out.Intervals = schedule.Of(gaps)
	want := "Repeat the increase row, as it is given for the side that faces, on rows 5 (RS), 6 (WS), 9 (RS), 10 (WS), 13 (RS), " +
		"14 (WS) and 17 (RS): 18 stitches."
	if d := out.Directions(); !slices.Contains(d, want) {
		t.Errorf("%s", strings.Join(d, "\n"))
	}
}

// A shaped side tells row 1 once, before its stretches, even where each stretch by
// itself keeps to one side.
func TestAShapedSideTellsTheSideOfRowOne(t *testing.T) {
	in := ShapedSideInput{StartStitches: 50, Edges: ShapedEdgesEnd, RowChoice: RowChoiceAny, FirstSide: stitch.WrongSide,
		Points: []SidePoint{{HeightRows: new(20), Stitches: 44}, {HeightRows: new(40), Stitches: 49}}}
	out, err := PlanShapedSide(in)
	if err != nil {
		t.Fatal(err)
	}
	d := out.Directions()
	told := 0
	for _, line := range d {
		if strings.HasPrefix(line, "Row 1 is a wrong-side row.") {
			told++
		}
		if strings.HasPrefix(line, "Row ") && !strings.Contains(line, "S, ") && line != d[0] {
			t.Errorf("no side: %q", line)
		}
	}
	if told != 1 || d[0] != "Row 1 is a wrong-side row." {
		t.Errorf("%s", strings.Join(d, "\n"))
	}
}
