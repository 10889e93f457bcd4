package edge

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A single hole is neither the first nor the last: 30 less 2 of the hole and 5
// after it are 23.
func TestASingleHoleIsToldAsOne(t *testing.T) {
	out, err := PlanButtonholes(ButtonholesInput{BandStitches: 30, BandRows: 8, HoleCount: 1, HoleStitches: new(2), AfterLast: new(5)})
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
