package armhole

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Charted people whose caps are free, set in and with saddles: at the foot of a cap no single decrease
// stands between bind-offs, but in two of 516, which have no other cap as near. Common practice.
func TestFeetOfCapsFall(t *testing.T) {
	asked, hollow := 0, 0
	for _, style := range []Style{StyleSetIn, StyleSaddle} {
		for _, g := range [][2]float64{{20, 28}, {22, 30}, {18, 24}, {14, 19}, {16, 22}, {24, 32}, {26, 34}, {28, 36}, {30, 42}, {21, 29}} {
			for _, who := range charted[:knittest.Sweep(len(charted), 6)] {
				out, err := Plan(Input{Style: style, Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &who[0], AcrossBackCm: &who[1],
					ArmholeDepthCm: &who[2], UpperArmCm: &who[3]})
				if err != nil {
					continue
				}
				asked++
				steps := out.Cap.Steps
				single := func(s Step) bool { return !s.BoundOff }
				if single(steps[1]) && steps[2].BoundOff && slices.ContainsFunc(steps[2:], single) {
					hollow++
				}
			}
		}
	}
	t.Logf("%d caps, %d with a lone decrease at the foot", asked, hollow)
	if asked < knittest.Sweep(500, 80) || hollow > 2 {
		t.Errorf("%d of %d have a lone decrease at the foot", hollow, asked)
	}
}
