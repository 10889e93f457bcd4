package edge

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A single hole is neither the first nor the last: 30 less 2 of the hole and 5
// after it are 23.
func TestASingleHoleIsToldAsOne(t *testing.T) {
	out, err := PlanButtonholes(ButtonholesInput{BandStitches: 30, BandRows: 8, HoleCount: 1, HoleStitches: new(2), AfterLastPlaces: new(5)})
	if err != nil {
		t.Fatal(err)
	}
	if got, want := out.Summary(), "1 hole of 2 stitches: 23 stitches before it, 5 stitches after it."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Twice as many stitches as rows are two in every row.
func TestEveryRowTakesTwo(t *testing.T) {
	out, err := PlanPickUp(PickUpInput{LengthRows: new(3), Gauge: &gauge.Gauge{Stitches: 20, Rows: 20},
		BandGauge: &gauge.Gauge{Stitches: 40, Rows: 20}})
	if err != nil {
		t.Fatal(err)
	}
	if d := out.Directions(); out.DoubledRows != 3 || d[len(d)-1] != "Every row along the edge takes two stitches." {
		t.Errorf("%d rows doubled: %s", out.DoubledRows, strings.Join(d, "\n"))
	}
}

// A single hole of a band knit upward is bound off in a row, not in rows. Of the
// 19 rows beside its two the even number nearest the middle lies before it.
func TestASingleHoleHasARow(t *testing.T) {
	out, err := PlanButtonholes(ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 9, BandRows: 21, HoleCount: 1,
		HoleStitches: new(3)})
	if err != nil {
		t.Fatal(err)
	}
	want := "Begin the hole on row 11, of two rows; work all other rows even, to row 21."
	if d := out.rowDirections(); d[len(d)-1] != want {
		t.Errorf("got %q, want %q", d[len(d)-1], want)
	}
}

// A band of three rows ends with the row that casts the holes on again.
func TestNoRowAfterTheHoles(t *testing.T) {
	out, err := PlanButtonholes(ButtonholesInput{BandStitches: 9, BandRows: 3, HoleCount: 1, HoleStitches: new(3)})
	if err != nil {
		t.Fatal(err)
	}
	want := "Row 3 (WS): p3, CO 3, p3. 9 stitches again."
	if d := out.rowDirections(); len(d) != 4 || d[1] != "Work 1 row even." || d[3] != want {
		t.Errorf("%q", d)
	}
}

// A stitch in every row: no row is skipped and none takes two, so none is told of.
func TestAStitchInEveryRow(t *testing.T) {
	out, err := PlanPickUp(PickUpInput{LengthRows: new(17), Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}})
	if err != nil {
		t.Fatal(err)
	}
	if d := out.Directions(); len(d) != 1 {
		t.Errorf("%q", d)
	}
}
