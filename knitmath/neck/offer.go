package neck

import (
	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// advised is a refusal with what would do.
func (in Input) advised(err error) error {
	return advice.Add(err, func() int { once, _ := in.priced(); return once }, func() error {
		_, err := plan(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "width_stitches", Count: &in.WidthStitches, Least: 1, Most: stitch.MaxStitches},
		advice.Knob{Field: "width_cm", Cm: &in.WidthCm, Least: measure.MinCm, Most: measure.MaxCm},
		advice.Knob{Field: "neck_stitches", Count: &in.NeckStitches, Least: 1, Most: MaxNeckStitches},
		advice.Knob{Field: "neck_cm", Cm: &in.NeckCm, Least: measure.MinCm, Most: measure.MaxCm},
		advice.Knob{Field: "shoulder_stitches", Count: &in.ShoulderStitches, Least: 1, Most: stitch.MaxStitches},
		advice.Knob{Field: "shoulder_cm", Cm: &in.ShoulderCm, Least: measure.MinCm, Most: measure.MaxCm},
		advice.Knob{Field: "front_width_stitches", Count: &in.FrontWidthStitches, Least: 1, Most: stitch.MaxStitches, Optional: true},
		advice.Knob{Field: "front_width_cm", Cm: &in.FrontWidthCm, Least: measure.MinCm, Most: measure.MaxCm, Optional: true},
		advice.Knob{Field: "front_depth_rows", Count: &in.FrontDepthRows, Most: MaxDepthRows, Optional: true},
		advice.Knob{Field: "front_depth_cm", Cm: &in.FrontDepthCm, Most: MaxDepthCm, Optional: true},
		advice.Knob{Field: "back_depth_rows", Count: &in.BackDepthRows, Most: MaxDepthRows, Optional: true},
		advice.Knob{Field: "back_depth_cm", Cm: &in.BackDepthCm, Most: MaxDepthCm, Optional: true},
		advice.Knob{Field: "front_centre_stitches", Count: &in.FrontCentreStitches, Most: MaxNeckStitches, Optional: true},
		advice.Knob{Field: "back_centre_stitches", Count: &in.BackCentreStitches, Most: MaxNeckStitches, Optional: true},
		advice.Knob{Field: "shoulder_slope_rows", Count: &in.ShoulderSlopeRows, Most: MaxSlopeRows, Optional: true},
		advice.Knob{Field: "shoulder_slope_cm", Cm: &in.ShoulderSlopeCm, Most: MaxSlopeCm, Optional: true},
		advice.Knob{Field: "shoulder_slope_degrees", Cm: &in.ShoulderSlopeDegrees, Of: "degrees", Most: MaxSlopeDegrees, Optional: true},
		advice.Knob{Field: "armhole_rows", Count: &in.ArmholeRows, Least: MinArmholeRows, Most: MaxArmholeRows},
		gauge.RemainderKnob("width_rule", &in.WidthRule), gauge.RemainderKnob("neck_rule", &in.NeckRule),
		gauge.RemainderKnob("band_rule", &in.BandRule))
}
