package shortrow

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/measure"
)

// No steps of at most one lie closer to the wanted pairs at their worst stitch
// than the eased ones: all of them are tried on small widths.
func TestEasedIsNearest(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		pairs := make([]int, 1+rng.IntN(6))
		for i := range pairs {
			pairs[i] = rng.IntN(6)
		}
		got, changed := eased(pairs)
		worst := 0
		for x := range got {
			worst = max(worst, measure.Abs(got[x]-pairs[x]))
			if x > 0 && measure.Abs(got[x]-got[x-1]) > 1 {
				t.Fatalf("%v eased to %v", pairs, got)
			}
		}
		if changed != (worst > 0) {
			t.Fatalf("%v eased to %v, changed %v", pairs, got, changed)
		}
		if best := nearestSteps(pairs, 0, 0); worst > best {
			t.Fatalf("%v eased to %v, off by %d; %d can be had", pairs, got, worst, best)
		}
	}
}

// nearestSteps tries every way on from stitch x with the height before it.
func nearestSteps(pairs []int, x, before int) int {
	if x == len(pairs) {
		return 0
	}
	best := 1 << 30
	for h := range 7 {
		if x > 0 && measure.Abs(h-before) > 1 {
			continue
		}
		best = min(best, max(measure.Abs(h-pairs[x]), nearestSteps(pairs, x+1, h)))
	}
	return best
}
