package armhole

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Rules bind the width across, the underarm and the top, each among what the others leave.
func TestRulesBind(t *testing.T) {
	bound := 0
	for across := 30.0; across < 42; across += 0.5 {
		in := pullover()
		in.AcrossBackCm = &across
		in.AcrossRule = &gauge.CountRule{Multiple: new(6), Remainder: new(1)}
		in.UnderarmRule = &gauge.CountRule{Multiple: new(3)}
		in.TopRule = &gauge.CountRule{Multiple: new(4), Remainder: new(2)}
		out, err := Plan(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		bound++
		if out.Back.EndStitches%6 != 1 || out.UnderarmStitches%3 != 0 || out.Cap.EndStitches%4 != 2 ||
			math.Abs(out.Back.GreatestDepartureStitches) > 4 {
			t.Errorf("%d across, %d at the underarm, %d at the top", out.Back.EndStitches, out.UnderarmStitches, out.Cap.EndStitches)
		}
		if off := float64(out.Back.EndStitches) - across*2.2; math.Abs(off) > 3.01 {
			t.Errorf("%v cm: %d stitches", across, out.Back.EndStitches)
		}
	}
	if bound < 15 {
		t.Errorf("%d bound", bound)
	}
	in := pullover()
	in.AcrossRule = &gauge.CountRule{Multiple: new(2)}
	in.StitchRule = &gauge.CountRule{Multiple: new(2), Remainder: new(1)}
	_, err := Plan(in)
	knittest.WantViolations(t, err, "across_rule INFEASIBLE", "across_back_cm INFEASIBLE", "chest_cm INFEASIBLE")
	in = pullover()
	in.TopRule = &gauge.CountRule{Multiple: new(2), Remainder: new(1)}
	in.SleeveRule = &gauge.CountRule{Multiple: new(4), Remainder: new(2)}
	_, err = Plan(in)
	knittest.WantViolations(t, err, "top_rule INFEASIBLE", "upper_arm_cm INFEASIBLE")
	in = pullover()
	in.UnderarmRule = &gauge.CountRule{Multiple: new(50)}
	_, err = Plan(in)
	knittest.WantViolations(t, err, "underarm_rule INFEASIBLE")
}
