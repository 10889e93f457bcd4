package solid

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A limb that begins with stitches picked up is stuffed before its end, as if it were closed.
func TestPickedUp(t *testing.T) {
	across, high := 3.0, 7.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormCylinder, AcrossCm: &across, HeightCm: &high,
		BaseOpeningCm: &across, PickedUp: true}
	out, err := PlanSolid(in)
	if err != nil || out.StuffBeforeRoundNumber == nil || !told(out.Notices, ToyCare) || out.StartStitches != 18 {
		t.Fatalf("%+v, %v", out, err)
	}
	if !strings.HasPrefix(out.Directions()[0], "Join the yarn at the body. Pick up and knit 18 stitches") {
		t.Error(out.Directions()[0])
	}
	in.Start = StartTop
	_, err = PlanSolid(in)
	knittest.WantViolations(t, err, "picked_up CONTRADICTORY")
}
