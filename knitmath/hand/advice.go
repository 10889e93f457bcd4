package hand

import (
	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/measure"
)

// advised is a refusal of a thumb with what would do.
func (in ThumbInput) advised(err error) error {
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, err := planThumb(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "hand_stitches", Count: &in.HandStitches, Least: MinHandStitches, Most: MaxHandStitches},
		advice.Knob{Field: "hand_cm", Cm: &in.HandCm, Least: MinHandCm, Most: MaxHandCm},
		advice.Knob{Field: "gusset_stitches", Count: &in.GussetStitches, Least: 3, Most: MaxHandStitches, Optional: true},
		advice.Knob{Field: "start_stitches", Count: &in.StartStitches, Least: 1, Most: MaxGap, Optional: true},
		advice.Knob{Field: "every_rounds", Count: &in.EveryRounds, Least: 1, Most: MaxEveryRounds, Optional: true},
		advice.Knob{Field: "gusset_rounds", Count: &in.GussetRounds, Least: 1, Most: MaxHandRounds, Optional: true},
		advice.Knob{Field: "gusset_cm", Cm: &in.GussetCm, Least: measure.MinCm, Most: MaxHandCm, Optional: true},
		advice.Knob{Field: "hold_stitches", Count: &in.HoldStitches, Least: 2, Most: MaxHandStitches, Optional: true},
		advice.Knob{Field: "gap_stitches", Count: &in.GapStitches, Least: 1, Most: MaxGap, Optional: true},
		advice.Knob{Field: "beside_stitches", Count: &in.BesideStitches, Least: 0, Most: MaxPalm, Optional: true},
		advice.Knob{Field: "palm_stitches", Count: &in.PalmStitches, Least: 0, Most: MaxPalm, Optional: true},
		advice.Knob{Field: "length_rounds", Count: &in.LengthRounds, Least: 1, Most: MaxHandRounds, Optional: true},
		advice.Knob{Field: "length_cm", Cm: &in.LengthCm, Least: measure.MinCm, Most: MaxHandCm, Optional: true})
}

// advised is a refusal of the top of a mitten with what would do.
func (in MittenTopInput) advised(err error) error {
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, err := planMittenTop(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "hand_stitches", Count: &in.HandStitches, Least: MinHandStitches, Most: MaxHandStitches},
		advice.Knob{Field: "hand_cm", Cm: &in.HandCm, Least: MinHandCm, Most: MaxHandCm},
		advice.Knob{Field: "end_stitches", Count: &in.EndStitches, Least: 1, Most: MaxHandStitches, Optional: true},
		advice.Knob{Field: "length_rounds", Count: &in.LengthRounds, Least: 1, Most: MaxHandRounds, Optional: true},
		advice.Knob{Field: "length_cm", Cm: &in.LengthCm, Least: measure.MinCm, Most: MaxHandCm, Optional: true})
}
