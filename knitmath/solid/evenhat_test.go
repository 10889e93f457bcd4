package solid

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A hat whose count nobody binds has an even one, on which a ribbed brim comes out, and keeps to the
// size wanted: 2 % at most from it, or 5 % narrower where no ease is asked for, or a stitch.
func TestHatsAreEven(t *testing.T) {
	planned, adjusted := 0, 0
	for st := 10.0; st <= 40; st++ {
		for _, ratio := range [...]float64{1.25, 4 / 3.0, 1.4, 1.5, 2} {
			for size := HeadSizeMonths3; size <= HeadSizeMan; size++ {
				in := CrownInput{Gauge: &gauge.Gauge{Stitches: st, Rows: float64(int(st * ratio))}, HeadSize: size}
				for _, ease := range []*float64{nil, new(-8.0)} {
					in.EasePercent = ease
					out, err := PlanCrown(in)
					if err != nil {
						continue
					}
					planned++
					narrower := 0.05
					if ease != nil {
						narrower = 0.02
					}
					exact := out.HeadCm * 0.92 * st / 10
					off := float64(out.HatStitches) - exact
					if out.HatStitches%2 != 0 || off > max(0.02*exact, 1)+1e-9 || off < -max(narrower*exact, 1)-1e-9 {
						t.Errorf("%v, head %d: %d stitches for %.2f", *in.Gauge, size, out.HatStitches, exact)
					}
					if out.Rounds[0].Adjusts && ease == nil {
						adjusted++
					}
				}
			}
		}
	}
	if planned < 2_000 || 20*adjusted > planned {
		t.Errorf("of %d hats %d of no asked ease are adjusted", planned, adjusted)
	}
}
