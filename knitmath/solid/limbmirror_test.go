package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// mirroredBodies asks for limbs of bodies of all forms and three gauges at heights and turns of all kinds, and counts them.
func mirroredBodies(limbs func(n int, from, turn float64) []LimbInput, each func(name string, in SolidInput, out Solid)) (planned int) {
	for name, in := range roundBodies() {
		for _, g := range []gauge.Gauge{{Stitches: 20, Rows: 24}, {Stitches: 22, Rows: 30}, {Stitches: 20, Rows: 40}} {
			in.Gauge, in.Limbs = &g, nil
			whole, err := PlanSolid(in)
			if err != nil {
				continue
			}
			for n := 6; n <= 26; n += knittest.Sweep(1, 6) {
				for part := 0.1; part < 0.95; part += 0.1 {
					for _, turn := range []float64{30, 45, 61.7, 90, 113.3} {
						in.Limbs = limbs(n, part*whole.MeridianCm, turn)
						if out, err := PlanSolid(in); err == nil {
							planned++
							each(name, in, out)
						}
					}
				}
			}
		}
	}
	return planned
}

// mirroredFrom reports whether a ring has pairs from its first or its second stitch on, each of two stitches of a round whose middle lies
// where the limb is asked for, to half a stitch of the round there and half a stitch of that round.
func mirroredFrom(out Solid, limb Limb, first int) bool {
	n, b := len(limb.Places), out.of
	asked := min(int(b.fromStart(b.in.Limbs[0].FromBaseCm)/b.high), len(b.counts)-1)
	for i := first; i < (n+first)/2; i++ {
		right, left := limb.Places[i], limb.Places[n-1-i+first]
		count := float64(b.counts[right.RoundNumber-1])
		middle := (float64(right.StitchNumber+left.StitchNumber) - 1) / 2 / count
		off := math.Abs(math.Remainder(middle-b.in.Limbs[0].TurnDegrees/360, 0.5))
		most := 0.51/count + 0.51/float64(b.counts[asked])
		if right.RoundNumber != left.RoundNumber || off > most {
			return false
		}
	}
	return true
}

// A ring is picked up as far to the left of a line as to the right of it: its places come in pairs of a round.
func TestRingsAreMirrored(t *testing.T) {
	planned := mirroredBodies(func(n int, from, turn float64) []LimbInput { return []LimbInput{{n, from, turn}} },
		func(name string, in SolidInput, out Solid) {
			limb := out.Limbs[0]
			if !mirroredFrom(out, limb, 0) && !mirroredFrom(out, limb, 1) {
				t.Errorf("%s, %v: %v", name, in.Limbs, limb.Places)
			}
		})
	if planned < knittest.Sweep(10000, 2000) {
		t.Errorf("%d planned", planned)
	}
}

// Two limbs as far to the one side of where the rounds begin as to the other, such as arms, legs and ears, lie mirrored, stitch by stitch,
// and so at one height.
func TestPairsOfLimbsAreMirrored(t *testing.T) {
	planned := mirroredBodies(func(n int, from, turn float64) []LimbInput {
		return []LimbInput{{n, from, turn}, {n, from, 360 - turn}}
	},
		func(name string, in SolidInput, out Solid) {
			like := map[RingPlace]bool{}
			for _, p := range out.Limbs[1].Places {
				like[RingPlace{p.RoundNumber, out.of.counts[p.RoundNumber-1] + 1 - p.StitchNumber}] = true
			}
			for _, p := range out.Limbs[0].Places {
				if !like[p] {
					t.Errorf("%s, %v: %+v has no like: %v, %v", name, in.Limbs, p, out.Limbs[0].Places, out.Limbs[1].Places)
					return
				}
			}
		})
	if planned < knittest.Sweep(5000, 1000) {
		t.Errorf("%d planned", planned)
	}
}
