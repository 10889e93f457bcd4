package sock

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// Of two faults of a heel that do not depend on one another both are listed. What was picked up came
// only after the centre of the turn was mended.
func TestIndependentFaultsAreListedTogether(t *testing.T) {
	ask := func(q HeelInput) error { _, err := PlanHeel(q); return err }
	type plant = knittest.Plant[HeelInput]
	for seed := range knittest.Sweep(200, 20) {
		r := rand.New(rand.NewPCG(uint64(seed), 71))
		in := HeelInput{RoundStitches: new(4 * (6 + r.IntN(30))), Kind: HeelKind(1 + r.IntN(3))}
		if err := ask(in); err != nil {
			t.Fatal(err)
		}
		// Off by one as well as far.
		centre := plant{Name: "a centre", Into: func(in *HeelInput) { in.CentreStitches = new(*in.RoundStitches/2 + r.IntN(100)) }}
		pickUp := plant{Name: "picked up", Into: func(in *HeelInput) { in.PickUpStitches = new(*in.RoundStitches/2 + 2 + r.IntN(100)) }}
		every := plant{Name: "a gusset", Into: func(in *HeelInput) { in.GussetEveryRounds = new(0) }}
		ease := plant{Name: "an ease", Into: func(in *HeelInput) { in.EasePercent = new(99.0) }}
		instep := plant{Name: "an instep", Into: func(in *HeelInput) { in.HeelStitches = in.RoundStitches }}
		flap := plant{Name: "an odd flap", Into: func(in *HeelInput) { in.FlapRows = new(21 + 2*r.IntN(20)) }}
		knittest.CheckBothListed(t, in, ask, every, centre, pickUp)
		knittest.CheckBothListed(t, in, ask, every, centre, flap)
		knittest.CheckBothListed(t, in, ask, every, instep, flap)
		in.Direction = DirectionToeUp
		if in.Kind == HeelKindRound {
			knittest.CheckBothListed(t, in, ask, every, centre, flap, ease)
		}
	}
	two := HeelInput{RoundStitches: new(86), CentreStitches: new(2), PickUpStitches: new(45)}
	knittest.WantViolations(t, ask(two), "centre_stitches INFEASIBLE", "pick_up_stitches INFEASIBLE")
}
