package solid

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// On a ball the wall of an upright tube meets the surface in a circle as wide as the tube, so
// that 24 stitches of 0.5 cm want a tube of 12 cm round; every place lies within the half
// diagonal of a stitch from it.
func TestLimbOnABall(t *testing.T) {
	across := 16.0
	for _, start := range []Start{StartBase, StartTop} {
		for _, from := range []float64{5, 9, 13, 19} {
			in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across, Start: start,
				Limbs: []LimbInput{{24, from, 100}}}
			out, err := PlanSolid(in)
			if err != nil {
				t.Fatal(err)
			}
			limb := out.Limbs[0]
			checkLimb(t, out, limb)
			knittest.Near(t, "the tube", limb.AcrossCm, 12/math.Pi, 0.02)
			on := func(along, turn float64) [3]float64 {
				if start == StartTop {
					along = 8*math.Pi - along
				}
				sin, cos := math.Sincos(along / 8)
				return [3]float64{8 * sin * math.Cos(turn), 8 * sin * math.Sin(turn), -8 * cos}
			}
			axis := on(from, 100.0/180*math.Pi)
			if start == StartTop {
				axis = on(8*math.Pi-from, 100.0/180*math.Pi)
			}
			for _, p := range limb.Places {
				at := on((float64(p.RoundNumber)-0.5)*out.of.high,
					2*math.Pi*(float64(p.StitchNumber)-0.5)/float64(out.of.counts[p.RoundNumber-1]))
				dot := (at[0]*axis[0] + at[1]*axis[1] + at[2]*axis[2]) / 64
				off := math.Hypot(math.Hypot(at[0]-dot*axis[0], at[1]-dot*axis[1]), at[2]-dot*axis[2])
				if math.Abs(off-limb.AcrossCm/2) > math.Hypot(0.5, 1/2.8)/2+0.05 {
					t.Errorf("from %v: %+v lies %v from the axis of a tube of %v", from, p, off, limb.AcrossCm)
				}
			}
		}
	}
}

// On the side of a cylinder of radius r the wall of a tube of radius a meets the surface in the
// curve a cos f, a sin f, sqrt(r^2 - a^2 sin^2 f), whose length gonum integrates; on a flat base
// in a circle.
func TestLimbOnACylinder(t *testing.T) {
	across, high := 12.0, 14.0
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormCylinder, AcrossCm: &across, HeightCm: &high,
		Limbs: []LimbInput{{36, 13, 0}, {10, 3, 180}}}
	out, err := PlanSolid(in)
	if err != nil {
		t.Fatal(err)
	}
	a := out.Limbs[0].AcrossCm / 2
	length := quad.Fixed(func(f float64) float64 {
		sin, cos := math.Sincos(f)
		return math.Hypot(a, a*a*sin*cos/math.Sqrt(36-a*a*sin*sin))
	}, 0, 2*math.Pi, 200, nil, 0)
	knittest.Near(t, "the ring on the side", length, 18, 0.02)
	knittest.Near(t, "the tube on the base", out.Limbs[1].AcrossCm, 5/math.Pi, 0.005)
	for _, limb := range out.Limbs {
		checkLimb(t, out, limb)
	}
}
