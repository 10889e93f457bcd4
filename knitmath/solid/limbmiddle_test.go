package solid

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// The stitch that is said to be the middle of a ring is, as a knitter counts: as many rounds lie above it as below, as many stitches of its
// round to its left as to its right, each up to one; from 8 stitches on it is none of those picked up. On bodies without a kink it
// lies within a stitch of the middle of the area within the ring as drawn.
func TestMiddleOfALimbIsItsMiddle(t *testing.T) {
	rings, worst := 0, 0.0
	for name, in := range roundBodies() {
		for _, g := range []gauge.Gauge{{Stitches: 20, Rows: 24}, {Stitches: 22, Rows: 30}, {Stitches: 32, Rows: 43}} {
			in.Gauge, in.Limbs = &g, nil
			whole, err := PlanSolid(in)
			if err != nil {
				t.Fatal(err)
			}
			for n := MinLimbStitches; n <= 20; n += knittest.Sweep(1, 3) {
				for place := range 36 {
					in.Limbs = []LimbInput{{n, (0.1 + 0.1*float64(place/4)) * whole.MeridianCm, [4]float64{0, 45, 135, 200}[place%4]}}
					out, err := PlanSolid(in)
					if err != nil {
						continue
					}
					rings++
					checkMiddle(t, name, out, out.Limbs[0])
					if in.Form != FormProfile {
						worst = max(worst, offMiddle(out, out.Limbs[0]))
					}
				}
			}
		}
	}
	t.Logf("%d rings, the middle at most %.2f stitches from that of the area", rings, worst)
	if rings < knittest.Sweep(12000, 3000) || worst > 1 {
		t.Errorf("%d rings, the middle at most %v stitches from that of the area", rings, worst)
	}
}

// checkMiddle counts from the middle of a ring to its places.
func checkMiddle(t *testing.T, name string, out Solid, limb Limb) {
	t.Helper()
	middle := RingPlace{limb.MiddleRoundNumber, limb.MiddleStitchNumber}
	low, high := math.MaxInt, 0 // of its rounds
	var beside []int            // how many stitches to the right of the middle those of its round lie, the nearest on each side
	count := out.of.counts[middle.RoundNumber-1]
	for _, p := range limb.Places {
		low, high = min(low, p.RoundNumber), max(high, p.RoundNumber)
		if p.RoundNumber == middle.RoundNumber {
			beside = append(beside, int(math.Remainder(float64(p.StitchNumber-middle.StitchNumber), float64(count))))
		}
	}
	if off := (high - middle.RoundNumber) - (middle.RoundNumber - low); off < 0 || off > 1 {
		t.Errorf("%s, %v: round %d is not in the middle of %d to %d", name, out.of.in.Limbs, middle.RoundNumber, low, high)
	}
	if len(beside) == 2 && (beside[0]+beside[1] < -1 || beside[0]+beside[1] > 1) {
		t.Errorf("%s, %v: %v does not lie between its neighbours of %v", name, out.of.in.Limbs, middle, limb.Places)
	}
	own := slices.Contains(limb.Places, middle)
	if limb.Stitches >= 8 && own {
		t.Errorf("%s, %v: %v is one of its own %v", name, out.of.in.Limbs, middle, limb.Places)
	}
	named := strings.Contains(strings.Join(out.Directions(), "\n"),
		fmt.Sprintf("the middle of its ring is stitch %d of round %d,", middle.StitchNumber, middle.RoundNumber))
	if named == own {
		t.Errorf("%s, %v: %v, one of %v, named %v", name, out.of.in.Limbs, middle, limb.Places, named)
	}
}

// offMiddle is how far the middle named lies from that of the area within the ring as drawn, in stitches.
func offMiddle(out Solid, limb Limb) float64 {
	limb.Places = append(slices.Clone(limb.Places), RingPlace{limb.MiddleRoundNumber, limb.MiddleStitchNumber})
	d := flat(out, limb)
	last := len(d) - 1
	x, y := d[:last].middle()
	return math.Hypot(d[last][0]-x, d[last][1]-y) * out.of.in.Gauge.Stitches / 10
}

// Rounds are counted from what the work begins with.
func TestLimbsAreCountedFromThePickUp(t *testing.T) {
	in := SolidInput{Gauge: &gauge.Gauge{Stitches: 32, Rows: 43}, Form: FormSphere, AcrossCm: new(5.0), BaseOpeningCm: new(2.5),
		Limbs: []LimbInput{{8, 2, 135}}}
	for _, in.PickedUp = range []bool{false, true} {
		out, err := PlanSolid(in)
		if err != nil {
			t.Fatal(err)
		}
		if text := strings.Join(out.Directions(), "\n"); strings.Contains(text, "from the pick-up") != in.PickedUp ||
			strings.Contains(text, "from the cast-on") == in.PickedUp {
			t.Errorf("picked up %v: %s", in.PickedUp, text)
		}
	}
}
