package yoke

import (
	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// advised is a refusal with the counts and depths that would do. Whether there is a plan is settled
// before any round is chosen, so that asking takes little.
func (in RaglanInput) advised(err error) error {
	knobs := []advice.Knob{
		{Field: "depth_cm", Cm: &in.DepthCm, Least: measure.MinCm, Most: MaxDepthCm},
		{Field: "depth_rounds", Count: &in.DepthRounds, Least: 1, Most: MaxRounds},
	}
	for _, count := range [...]struct {
		field       string
		count       **int
		least, most float64
	}{
		{"sleeve_stitches", &in.SleeveStitches, MinSleeve, stitch.MaxStitches},
		{"underarm_stitches", &in.UnderarmStitches, 0, MaxUnderarm},
		{"line_stitches", &in.LineStitches, 0, MaxLine},
		{"front_neck_stitches", &in.FrontNeckStitches, MinRaglanNeck, stitch.MaxStitches},
		{"back_neck_stitches", &in.BackNeckStitches, MinRaglanNeck, stitch.MaxStitches},
		{"sleeve_top_stitches", &in.SleeveTopStitches, 0, stitch.MaxStitches},
	} {
		knobs = append(knobs, advice.Knob{Field: count.field, Count: count.count, Least: count.least, Most: count.most})
	}
	return advice.Add(err, func() int { return 1 }, func() error {
		_, err := in.settled()
		return err
	}, in.DisplayUnit, knobs...)
}
