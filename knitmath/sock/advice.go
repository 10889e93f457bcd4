package sock

import "example.com/knitmath/knitmath/advice"

// advised is a refusal of a heel with what would do.
func (in HeelInput) advised(err error) error {
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, _, err := planHeel(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "round_stitches", Count: &in.RoundStitches, Least: MinRound, Most: MaxRound},
		advice.Knob{Field: "foot_circumference_cm", Cm: &in.FootCircumferenceCm, Least: MinFootCm, Most: MaxFootCm},
		advice.Knob{Field: "heel_stitches", Count: &in.HeelStitches, Least: MinHeel, Most: MaxRound, Optional: true},
		advice.Knob{Field: "flap_rows", Count: &in.FlapRows, Least: 2, Most: MaxFlapRows, Optional: true},
		advice.Knob{Field: "centre_stitches", Count: &in.CentreStitches, Least: 1, Most: MaxRound, Optional: true},
		advice.Knob{Field: "pick_up_stitches", Count: &in.PickUpStitches, Least: 1, Most: MaxFlapRows, Optional: true},
		advice.Knob{Field: "successive_rounds", Count: &in.SuccessiveRounds, Least: 1, Most: MaxRound, Optional: true},
		advice.Knob{Field: "end_stitches", Count: &in.EndStitches, Least: 4, Most: MaxRound, Optional: true},
		advice.Knob{Field: "foot_length_cm", Cm: &in.FootLengthCm, Least: MinFootCm, Most: MaxFootCm})
}

// advised is a refusal of a toe with what would do.
func (in ToeInput) advised(err error) error {
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, _, err := planToe(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "round_stitches", Count: &in.RoundStitches, Least: MinRound, Most: MaxRound},
		advice.Knob{Field: "foot_circumference_cm", Cm: &in.FootCircumferenceCm, Least: MinFootCm, Most: MaxFootCm},
		advice.Knob{Field: "wedge_count", Count: &in.WedgeCount, Least: MinWedges, Most: MaxWedges, Optional: true},
		advice.Knob{Field: "centre_stitches", Count: &in.CentreStitches, Least: 1, Most: MaxRound, Optional: true},
		advice.Knob{Field: "tip_stitches", Count: &in.TipStitches, Least: 1, Most: MaxRound, Optional: true},
		advice.Knob{Field: "foot_length_cm", Cm: &in.FootLengthCm, Least: MinFootCm, Most: MaxFootCm})
}
