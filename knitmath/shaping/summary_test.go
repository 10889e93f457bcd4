package shaping

import (
	"strings"
	"testing"
)

// A row for every stitch lies on the line itself; the rows are one after another.
func TestNoDepartureIsToldAsNone(t *testing.T) {
	ten := 10
	taper, err := PlanTaper(TaperInput{StartStitches: 40, EndStitches: 20, HeightRows: &ten, RowChoice: RowChoiceAny})
	if err != nil {
		t.Fatal(err)
	}
	want := "From 40 to 20 stitches over 10 rows: 10 shaping rows, 2 stitches each, exactly on a straight line."
	if got := taper.Summary(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	side, err := PlanShapedSide(ShapedSideInput{StartStitches: 40, RowChoice: RowChoiceAny,
		Points: []SidePoint{{HeightRows: &ten, Stitches: 20}}})
	if err != nil || !strings.HasSuffix(side.Summary(), "10 shaping rows, exactly on the straight lines between the points.") {
		t.Errorf("%q, %v", side.Summary(), err)
	}
	spacing, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: 20, EndStitches: 10})
	if err != nil || !strings.HasSuffix(spacing.Summary(), "from 20 to 10. The changes follow one after another.") {
		t.Errorf("%q, %v", spacing.Summary(), err)
	}
}

// A stretch that keeps its count is told as kept, two of them as one.
func TestAKeptStretchIsToldAsKept(t *testing.T) {
	at := func(rows, stitches int) SidePoint { return SidePoint{HeightRows: &rows, Stitches: stitches} }
	for want, points := range map[string][]SidePoint{
		"From 110 to 98, kept for 10 rows, to 112 stitches over 70 rows: ": {at(30, 98), at(40, 98), at(70, 112)},
		"From 110, kept for 10 rows, to 98 stitches over 40 rows: ":        {at(10, 110), at(40, 98)},
		"From 110 to 98 stitches, kept for 15 rows, over 45 rows: ":        {at(30, 98), at(40, 98), at(45, 98)},
		"From 110 to 98 to 112 stitches over 70 rows: ":                    {at(30, 98), at(70, 112)},
	} {
		out, err := PlanShapedSide(ShapedSideInput{StartStitches: 110, Points: points})
		if err != nil || !strings.HasPrefix(out.Summary(), want) {
			t.Errorf("got %q, %v, want %q", out.Summary(), err, want)
		}
	}
}
