package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
)

// checkDepth: a crown that keeps to its shape is as deep, from its first decrease round to its last, as the shape is between the
// places that have the mean of the counts before and after them, within the tolerance at both; the last ones, which follow
// one another, come on top, and an adjusting round. Where the shape wants more than a decrease in a round, which it does of fewer
// rows to a stitch than 10 wedges can use, the crown is so much deeper. Or it was drawn out to the whole depth.
func checkDepth(t *testing.T, in CrownInput, out Crown) {
	t.Helper()
	steps := out.Rounds
	crown := float64(out.CrownRounds)
	if steps[0].Adjusts {
		steps, crown = steps[1:], crown-1
	}
	successive := usuallySuccessive(out)
	kept := steps[:max(len(steps)-min(successive, len(steps))+1, 1)]
	depth := max(1, math.Floor(out.ShapeCm*in.Gauge.Rows/10+0.5))
	place := func(r ClosingRound) float64 { // by the geometry of a disc or of half a ball
		left := float64(r.Instruction.StartStitches+r.Instruction.EndStitches) / 2 / float64(out.HatStitches)
		if in.Shape == CrownShapeRounded {
			return depth * math.Acos(left) / (math.Pi / 2)
		}
		return depth * (1 - left)
	}
	last := 0.0
	for i, r := range kept {
		last = max(last, place(r)+float64(len(kept)-1-i))
	}
	tolerance := fault.Or(in.ToleranceRounds, 1.5)
	if in.Shape == CrownShapeRounded && in.ToleranceRounds == nil {
		tolerance = min(max(depth/20, 0.5), 1.5)
	}
	wanted := last - place(kept[0]) + float64(len(steps)-len(kept)) + 1
	if math.Abs(crown-wanted) > 2*tolerance+1e-3 && math.Abs(crown-depth) > 1 {
		t.Fatalf("%+v: the crown is %v rounds deep without its adjusting round, %.2f wanted, %v of its shape: %+v", in, crown, wanted, depth, out)
	}
}

// usuallySuccessive is how many of the last decrease rounds follow one another where nothing is said.
func usuallySuccessive(out Crown) int {
	if out.HatStitches <= 6*out.WedgeCount {
		return 1
	}
	return 2
}
