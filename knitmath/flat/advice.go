package flat

import (
	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/measure"
)

// advised is a refusal with what would do.
func (in Input) advised(err error) error {
	knobs := []advice.Knob{
		{Field: "corner_count", Count: &in.CornerCount, Least: MinCorners, Most: MaxCorners},
		{Field: "wedge_count", Count: &in.WedgeCount, Least: MinWedges, Most: MaxWedges, Optional: true},
		{Field: "start_stitches", Count: &in.StartStitches, Least: MinStart, Most: MaxStart, Optional: true},
	}
	for _, size := range [...]struct {
		field string
		cm    **float64
	}{{"across_cm", &in.AcrossCm}, {"hole_cm", &in.HoleCm}, {"side_cm", &in.SideCm}, {"valley_cm", &in.ValleyCm},
		{"width_cm", &in.WidthCm}, {"height_cm", &in.HeightCm}, {"length_cm", &in.LengthCm}} {
		knobs = append(knobs, advice.Knob{Field: size.field, Cm: size.cm, Least: measure.MinCm, Most: measure.MaxCm})
	}
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, err := planFlatShape(in)
		return err
	}, in.DisplayUnit, knobs...)
}
