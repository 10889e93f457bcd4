package shortrow

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Yarn overs wait on the needle until they are closed: two for each pair of rows of
// a wedge, which with its stitches may fill the needle.
func TestYarnOversMayFillTheNeedle(t *testing.T) {
	for _, c := range []struct {
		width, rise int
		fits        bool
	}{{9994, 6, true}, {9995, 6, false}, {9998, 2, true}, {9999, 2, false}} {
		in := WedgeInput{WidthStitches: c.width, RiseRows: &c.rise, TallEnd: TallEndRight, TurnMethod: TurnMethodYarnOver}
		_, err := PlanWedge(in)
		if c.fits && err != nil {
			t.Errorf("%d stitches, %d rows: %v", c.width, c.rise, err)
		}
		if !c.fits {
			knittest.WantViolations(t, err, "width_stitches INFEASIBLE", "turn_method INFEASIBLE")
		}
	}
}

// A wedge of a circle has one on the needle for each of its pairs. At 20 stitches
// and half a row to the cm 9,990 stitches have an outer edge of 2 * pi * 499.5 / 2 =
// 1569.2 rows, 785 pairs. 72 wedges have 72 of them full, and 713 others, 10 a wedge;
// 71 wedges have 714, of which some have 11.
func TestYarnOversOfACircleMayFillTheNeedle(t *testing.T) {
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 200, Rows: 5}, WidthStitches: new(9990), WedgeCount: new(72),
		TurnMethod: TurnMethodYarnOver}
	if _, err := PlanCircleOfWedges(in); err != nil {
		t.Error(err)
	}
	in.WedgeCount = new(71)
	_, err := PlanCircleOfWedges(in)
	knittest.WantViolations(t, err, "width_stitches INFEASIBLE", "turn_method INFEASIBLE")
	in.TurnMethod = TurnMethodWrapAndTurn
	if _, err := PlanCircleOfWedges(in); err != nil {
		t.Error(err)
	}
}

// A circle may be as wide as the needle is long: 500 cm at 20 stitches to the cm.
func TestWidestCircle(t *testing.T) {
	out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 200, Rows: 5}, OuterRadiusCm: new(MaxRadiusCm)})
	if err != nil || out.WidthStitches != stitch.MaxStitches {
		t.Errorf("%d stitches, %v", out.WidthStitches, err)
	}
}
