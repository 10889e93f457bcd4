package armhole

import (
	"errors"

	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// advised is a refusal of what counts are together with what would do, each of it planned with its cap.
// What of edges it looks at, as much as the question may at most, is owed like the counts that are checked.
func (in Input) advised(err error) error {
	budget := in.Cost() * unitsAStep
	left := budget
	err = advice.AddOrMend(err, func() int { return priceOfCounts }, func() error {
		var c fault.Checks
		s := vet(&c, in, true)
		if s.budget = &left; c.Err() != nil {
			return c.Err()
		}
		if _, ok := s.solve(); !ok {
			c.Infeasible("", s.heightField)
		}
		return c.Err()
	}, in.DisplayUnit,
		advice.Knob{Field: "chest_cm", Cm: &in.ChestCm, Least: MinChest, Most: MaxChest},
		advice.Knob{Field: "back_stitches", Count: &in.BackStitches, Least: MinWidth, Most: MaxWidth},
		advice.Knob{Field: "front_stitches", Count: &in.FrontStitches, Least: MinWidth, Most: MaxWidth, Optional: true},
		advice.Knob{Field: "across_back_cm", Cm: &in.AcrossBackCm, Least: MinArm, Most: MaxArm},
		advice.Knob{Field: "across_back_stitches", Count: &in.AcrossBackStitches, Least: 1, Most: MaxWidth},
		advice.Knob{Field: "across_front_cm", Cm: &in.AcrossFrontCm, Least: MinArm, Most: MaxArm, Optional: true},
		advice.Knob{Field: "across_front_stitches", Count: &in.AcrossFrontStitches, Least: 1, Most: MaxWidth, Optional: true},
		advice.Knob{Field: "armhole_depth_cm", Cm: &in.ArmholeDepthCm, Least: 1, Most: MaxArm},
		advice.Knob{Field: "armhole_depth_rows", Count: &in.ArmholeDepthRows, Least: MinDepth, Most: MaxDepth},
		advice.Knob{Field: "upper_arm_cm", Cm: &in.UpperArmCm, Least: MinArm, Most: MaxArm},
		advice.Knob{Field: "sleeve_stitches", Count: &in.SleeveStitches, Least: MinWidth, Most: MaxWidth, Optional: in.Style.straight()},
		advice.Knob{Field: "underarm_stitches", Count: &in.UnderarmStitches, Least: 1, Most: MaxWidth, Optional: true},
		advice.Knob{Field: "shaping_rows", Count: &in.ShapingRows, Least: underarmRows + 2, Most: MaxDepth, Optional: true},
		advice.Knob{Field: "cap_height_cm", Cm: &in.CapHeightCm, Least: 1, Most: MaxArm, Optional: true},
		advice.Knob{Field: "cap_height_rows", Count: &in.CapHeightRows, Least: leastCapRows, Most: MaxDepth, Optional: true},
		advice.Knob{Field: "cap_top_cm", Cm: &in.CapTopCm, Least: measure.MinCm, Most: MaxArm, Optional: true},
		advice.Knob{Field: "cap_top_stitches", Count: &in.CapTopStitches, Least: 1, Most: MaxWidth, Optional: true},
		advice.Knob{Field: "neck_cm", Cm: &in.NeckCm, Least: measure.MinCm, Most: MaxArm, Optional: true},
		advice.Knob{Field: "neck_stitches", Count: &in.NeckStitches, Least: 1, Most: MaxWidth, Optional: true},
		gauge.RemainderKnob("stitch_rule", &in.StitchRule), gauge.RemainderKnob("sleeve_rule", &in.SleeveRule),
		gauge.RemainderKnob("across_rule", &in.AcrossRule), gauge.RemainderKnob("underarm_rule", &in.UnderarmRule),
		gauge.RemainderKnob("top_rule", &in.TopRule))
	var refused *fault.InputError
	if errors.As(err, &refused) {
		refused.Sought += (budget - max(0, left)) / unitsAStep
	}
	return err
}

// priceOfCounts is what it takes to check a question without a plan.
const priceOfCounts = 20
