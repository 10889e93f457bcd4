package neck

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
)

// sound is a question that is planned more often than not, by a number.
func sound(r *rand.Rand) Input {
	wide := 60 + r.IntN(80)
	in := Input{Gauge: ordinary(), Shape: Shape(r.IntN(5)), WidthStitches: &wide, FrontDepthRows: new(20 + 2*r.IntN(20)),
		BackDepthRows: new(4 + 2*r.IntN(4)), ShoulderSlopeRows: new(2 * (2 + r.IntN(4)))}
	if r.IntN(2) == 0 {
		in.ShoulderMethod = ShoulderMethodShortRows
	}
	if r.IntN(2) == 0 {
		in.NeckStitches = new(wide - 2*(wide*(3+r.IntN(2))/10))
	} else {
		in.ShoulderStitches = new(wide * (3 + r.IntN(2)) / 10)
	}
	return in
}

// moved is the question with one measure far from where it was.
func moved(r *rand.Rand, in Input) Input {
	switch r.IntN(7) {
	case 0:
		in.FrontDepthRows = new(r.IntN(12))
	case 1:
		in.ShoulderSlopeRows = new(10 + r.IntN(80))
	case 2:
		in.BackDepthRows = new(r.IntN(3))
	case 3:
		in.FrontCentreStitches = new(r.IntN(60))
	case 4:
		in.BackCentreStitches = new(r.IntN(60))
	case 5:
		in.FrontWidthStitches = new(*in.WidthStitches - 30 + r.IntN(40))
	default:
		if in.NeckStitches != nil {
			in.NeckStitches = new(*in.NeckStitches + 1 + r.IntN(90))
		} else {
			in.ShoulderStitches = new(*in.ShoulderStitches + r.IntN(40))
		}
	}
	return in
}

// Of what is planned one measure is moved so far that it is not: what the refusal offers is then
// planned, the whole of it.
func TestAdviceOnOneMeasureIsPlanned(t *testing.T) {
	refused, told := 0, 0
	for seed := range knittest.Sweep(12_000, 1_200) {
		r := rand.New(rand.NewPCG(uint64(seed), 59))
		in := sound(r)
		if ask(in) != nil {
			continue
		}
		in = moved(r, in)
		err := ask(in)
		if err == nil || knittest.Reasons(err)[0].Reason == fault.ReasonContradictory {
			continue
		}
		refused++
		told += min(knittest.CheckOffers(t, in, err, ask), 1)
	}
	t.Logf("%d refused, %d of them told what would do", refused, told)
	if 100*told < 95*refused || refused < knittest.Sweep(1_000, 100) {
		t.Errorf("%d refused, %d of them told what would do", refused, told)
	}
}
