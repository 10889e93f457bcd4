package solid

import (
	"math"
	"testing"
)

// checkLimb looks at the ring of a limb: at its places, and that the ring through them is about as
// long as the stitches are wide.
func checkLimb(t *testing.T, out Solid, limb Limb) {
	t.Helper()
	checkPlaces(t, out, limb)
	checkRing(t, out, limb, 0.75, 1.25*max(1, out.of.high/out.of.st.SizeCm(1)))
}

// checkRing: from stitch to stitch it is at least and at most such a part of its stitches.
func checkRing(t *testing.T, out Solid, limb Limb, least, most float64) {
	t.Helper()
	if part := ringLength(out, limb) / out.of.st.SizeCm(limb.Stitches); part < least || part > most {
		t.Fatalf("a ring of %v cm is %v of its stitches: %+v", ringLength(out, limb), part, limb)
	}
}

// checkPlaces: there are as many as stitches, none of them twice, all of them stitches of the body.
func checkPlaces(t *testing.T, out Solid, limb Limb) {
	t.Helper()
	seen := map[RingPlace]bool{}
	for _, p := range limb.Places {
		if p.RoundNumber < 1 || p.RoundNumber > out.TotalRounds || p.StitchNumber < 1 || p.StitchNumber > out.of.counts[p.RoundNumber-1] {
			t.Fatalf("%+v is no stitch of the body", p)
		}
		if seen[p] {
			t.Fatalf("%+v is picked up in twice: %v", p, limb.Places)
		}
		seen[p] = true
	}
	if len(limb.Places) != limb.Stitches {
		t.Fatalf("%d places, %d stitches", len(limb.Places), limb.Stitches)
	}
}

// ringLength is how long the ring is from stitch to stitch as it is knit, each in its middle: so far up as rounds are high, and so
// far sideways as the part of a turn is of the mean of both rounds.
func ringLength(out Solid, limb Limb) float64 {
	length := 0.0
	for i, p := range limb.Places {
		q := limb.Places[(i+1)%len(limb.Places)]
		mine, next := float64(out.of.counts[p.RoundNumber-1]), float64(out.of.counts[q.RoundNumber-1])
		turn := math.Remainder((float64(q.StitchNumber)-0.5)/next-(float64(p.StitchNumber)-0.5)/mine, 1)
		length += math.Hypot(turn*(mine+next)/2*out.of.st.SizeCm(1), float64(q.RoundNumber-p.RoundNumber)*out.of.high)
	}
	return length
}
