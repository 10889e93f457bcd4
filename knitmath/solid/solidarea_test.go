package solid

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// turnedArea is the area of what a line draws that is turned about the axis: 2 pi r ds, as gonum integrates it.
func turnedArea(radius, speed func(t float64) float64, from, to float64) float64 {
	return quad.Fixed(func(t float64) float64 { return 2 * math.Pi * radius(t) * speed(t) }, from, to, 200, nil, 0)
}

// areaByQuadrature is the area of a whole form.
func areaByQuadrature(in SolidInput) float64 {
	a, h := *in.AcrossCm/2, 0.0
	if in.HeightCm != nil {
		h = *in.HeightCm
	}
	bow := func(up, from, to float64) float64 { // of an ellipse a wide and up high, by the angle from its pole
		return turnedArea(func(t float64) float64 { return a * math.Sin(t) },
			func(t float64) float64 { return math.Hypot(a*math.Cos(t), up*math.Sin(t)) }, from, to)
	}
	straight := func(from, to, length float64) float64 { // from one radius to another
		return turnedArea(func(t float64) float64 { return from + t*(to-from) }, func(float64) float64 { return length }, 0, 1)
	}
	switch in.Form {
	case FormSphere:
		return bow(a, 0, math.Pi)
	case FormEgg:
		return bow(widestEgg*h, 0, math.Pi/2) + bow((1-widestEgg)*h, 0, math.Pi/2)
	case FormCone:
		return straight(0, a, a) + straight(a, 0, math.Hypot(a, h))
	case FormCylinder:
		return 2*straight(0, a, a) + straight(a, a, h)
	}
	far := h - a // the middle of the ball from the point of the drop; the cone touches where a right angle is
	slant := math.Sqrt(far*far - a*a)
	return bow(a, 0, math.Pi-math.Acos(a/far)) + straight(a*slant/far, 0, slant)
}

// What is said of the surface is its area at the gauge, in rounds as of wedges; and where the stitches are beyond 1 % of that and
// beyond one a round, a notice says so.
func TestTheSurfaceIsTheArea(t *testing.T) {
	rounds, beyond := 0, 0
	for i, in := range solids(float64(knittest.Sweep(2, 9))) {
		if in.Way = Way(i % 3); in.Way == WayWedges {
			in.Lines, in.WedgeCount = 0, nil
		}
		out, err := PlanSolid(in)
		if err != nil {
			if in.Way != WayWedges {
				t.Errorf("%+v: %v", in, err)
			}
			continue
		}
		area := areaByQuadrature(in)
		knittest.Near(t, "area by its closed formula", surface(in), area, 1e-6*area)
		wanted := area * in.Gauge.Stitches * in.Gauge.Rows / 100
		knittest.Near(t, "stitches of the surface", out.WantedTotalStitches, wanted, 2e-4*wanted)
		off := math.Abs(float64(out.TotalStitches)/wanted - 1)
		far := off*wanted > float64(max(out.TotalRounds, out.GreatestRows))
		if off > 0.0102 && far && !told(out.Notices, SurfaceUnmet) {
			t.Errorf("%+v: %d stitches of %v, in %d rounds, and nothing is said", in, out.TotalStitches, wanted, out.TotalRounds)
		}
		if (off < 0.0098 || !far) && told(out.Notices, SurfaceUnmet) {
			t.Errorf("%+v: a false alarm, %d stitches of %v", in, out.TotalStitches, wanted)
		}
		if in.Way != WayWedges {
			rounds++
			if told(out.Notices, SurfaceUnmet) {
				beyond++
			}
		}
	}
	t.Logf("%d in rounds, %d beyond what is allowed", rounds, beyond)
	if rounds < knittest.Sweep(1000, 200) || beyond > rounds/50 {
		t.Errorf("%d of %d are beyond what is allowed", beyond, rounds)
	}
}

// Worked by hand: a ball 6 cm across has pi 6^2 = 113.10 square cm, of 1.8 times 2.4 = 4.32 stitches each: 488.58. One of 10 cm has
// 314.16 and 1357.17. A ball of 10 cm open where it is 6 cm across is a zone 5 + 4 = 9 cm high: pi 10 9 = 282.74, 1221.45 stitches.
func TestTheSurfaceByHand(t *testing.T) {
	g := &gauge.Gauge{Stitches: 18, Rows: 24}
	for _, c := range []struct{ across, open, want float64 }{{6, 0, 488.58}, {10, 0, 1357.17}, {10, 6, 1221.45}} {
		out, err := PlanSolid(SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &c.across, TopOpeningCm: &c.open})
		if err != nil {
			t.Fatal(err)
		}
		knittest.Near(t, "stitches of the surface", out.WantedTotalStitches, c.want, 0.0003*c.want)
		if off := math.Abs(float64(out.TotalStitches) - c.want); off > max(0.01*c.want, float64(out.TotalRounds)) {
			t.Errorf("%v cm: %d stitches, %v wanted", c.across, out.TotalStitches, c.want)
		}
	}
}
