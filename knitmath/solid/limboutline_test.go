package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/outlinetest"
)

// On the widest round of a ball of 10 cm a ring is seen as wide as its tube where it faces
// the eye, and lies to the left where work has come a quarter of the way round.
func TestLimbsAreDrawn(t *testing.T) {
	across := 10.0
	ask := func(turn float64) (Limb, Solid) {
		t.Helper()
		out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormSphere, AcrossCm: &across, WithOutline: true,
			Limbs: []LimbInput{{Stitches: 16, FromBaseCm: math.Pi * across / 4, TurnDegrees: turn}}})
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, out.Outline)
		return out.Limbs[0], out
	}
	for _, c := range []struct {
		turn   float64
		name   string
		middle float64 // across, in radii of the ball
	}{{0, "limb 1", 0}, {180, "limb 1, behind", 0}, {45, "limb 1", -math.Sqrt2 / 2}, {225, "limb 1, behind", math.Sqrt2 / 2}} {
		limb, out := ask(c.turn)
		line := out.Outline.Lines[len(out.Outline.Lines)-1]
		if line.Name != c.name || len(line.Points) != 25 {
			t.Fatalf("at %v degrees: %q of %d points", c.turn, line.Name, len(line.Points))
		}
		left, right, low, high := math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
		for _, p := range line.Points {
			left, right, low, high = min(left, p.X), max(right, p.X), min(low, p.Y), max(high, p.Y)
		}
		facing := math.Abs(math.Cos(c.turn * math.Pi / 180)) // how much of the ring's width is seen
		if math.Abs(high-low-limb.AcrossCm) > 0.01 || math.Abs(right-left-limb.AcrossCm*facing) > 0.05 {
			t.Errorf("at %v degrees: %v by %v cm, want %v by %v", c.turn, right-left, high-low, limb.AcrossCm*facing, limb.AcrossCm)
		}
		// Seen aslant the near and the far half of the ring differ a little.
		if math.Abs((left+right)/2-c.middle*across/2) > 0.25 || math.Abs((low+high)/2-across/2) > 0.01 {
			t.Errorf("at %v degrees: the middle is at %v, %v", c.turn, (left+right)/2, (low+high)/2)
		}
	}
}
