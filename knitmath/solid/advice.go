package solid

import (
	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/measure"
)

// advised is a refusal of a crown with what would do.
func (in CrownInput) advised(err error) error {
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, err := settledCrown(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "hat_stitches", Count: &in.HatStitches, Least: MinHatStitches, Most: MaxHatStitches},
		advice.Knob{Field: "hat_cm", Cm: &in.HatCm, Least: MinHeadCm, Most: MaxHeadCm},
		advice.Knob{Field: "head_cm", Cm: &in.HeadCm, Least: MinHeadCm, Most: MaxHeadCm},
		advice.Knob{Field: "wedge_count", Count: &in.WedgeCount, Least: MinWedges, Most: MaxWedges, Optional: true},
		advice.Knob{Field: "crown_rounds", Count: &in.CrownRounds, Least: 1, Most: MaxHatRounds, Optional: true},
		advice.Knob{Field: "crown_cm", Cm: &in.CrownCm, Least: measure.MinCm, Most: MaxHeadCm, Optional: true},
		advice.Knob{Field: "total_rounds", Count: &in.TotalRounds, Least: 1, Most: MaxHatRounds, Optional: true},
		advice.Knob{Field: "total_cm", Cm: &in.TotalCm, Least: measure.MinCm, Most: MaxHeadCm, Optional: true},
		advice.Knob{Field: "end_stitches", Count: &in.EndStitches, Least: 1, Most: MaxHatStitches, Optional: true})
}

// advised is a refusal of a solid with what would do.
func (in SolidInput) advised(err error) error {
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, err := planSolid(in)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "across_cm", Cm: &in.AcrossCm, Least: measure.MinCm, Most: MaxSolidCm},
		advice.Knob{Field: "height_cm", Cm: &in.HeightCm, Least: measure.MinCm, Most: MaxSolidCm},
		advice.Knob{Field: "base_opening_cm", Cm: &in.BaseOpeningCm, Least: 0, Most: MaxSolidCm, Optional: true},
		advice.Knob{Field: "top_opening_cm", Cm: &in.TopOpeningCm, Least: 0, Most: MaxSolidCm, Optional: true},
		advice.Knob{Field: "wedge_count", Count: &in.WedgeCount, Least: 1, Most: MaxSolidWedges, Optional: true},
		advice.Knob{Field: "stuff_opening_cm", Cm: &in.StuffOpeningCm, Least: measure.MinCm, Most: MaxSolidCm, Optional: true})
}
