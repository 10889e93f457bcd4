package armhole

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// Of two faults that do not depend on one another both are listed, and each is refused alone. The sleeve's came
// only after the back's was mended.
func TestIndependentFaultsAreListedTogether(t *testing.T) {
	type plant = knittest.Plant[Input]
	asked := 0
	for seed := range knittest.Sweep(400, 60) {
		in := garment(uint64(seed))
		in.StitchRule, in.SleeveRule, in.AcrossRule, in.UnderarmRule, in.TopRule, in.CapTopCm = nil, nil, nil, nil, nil, nil
		if ask(in) != nil {
			continue
		}
		asked++
		back := plant{Name: "a wide back", Into: func(in *Input) { in.AcrossBackCm, in.AcrossBackStitches = nil, new(MaxWidth) }}
		sleeve := plant{Name: "a wide arm", Into: func(in *Input) { in.UpperArmCm = new(MaxArm) }}
		rows := plant{Name: "a long shaping", Into: func(in *Input) { in.ShapingRows = new(MaxDepth) }}
		if in.Style == StyleSaddle || float64(MaxDepth)/in.Gauge.Rows*10 < *in.ArmholeDepthCm {
			rows = plant{Name: "an excess", Into: func(in *Input) { in.CapExcessPercent = new(9.0) }}
		}
		high := plant{Name: "a high cap", Into: func(in *Input) { in.CapHeightRule, in.CapHeightRows, in.CapHeightCm = 0, nil, new(MaxArm) }}
		ease := plant{Name: "an ease", Into: func(in *Input) { in.ToleranceStitches = new(99.0) }}
		knittest.CheckBothListed(t, in, ask, back, rows, high, ease)
		if MaxArm*in.Gauge.Stitches/10 > MaxWidth+10 {
			knittest.CheckBothListed(t, in, ask, sleeve, rows, high, ease)
		}
		top := plant{Name: "a wide top", Into: func(in *Input) { in.CapTopStitches = new(MaxWidth) }}
		knittest.CheckBothListed(t, in, ask, back, top, high, ease)
	}
	if asked < knittest.Sweep(100, 12) {
		t.Errorf("%d asked", asked)
	}
}
