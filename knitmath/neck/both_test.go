package neck

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Of two faults that do not depend on one another both are listed. That of the shoulders' slope came
// only after that of an odd number of rows was mended.
func TestIndependentFaultsAreListedTogether(t *testing.T) {
	asked := 0
	for seed := range knittest.Sweep(100, 20) {
		r := rand.New(rand.NewPCG(uint64(seed), 67))
		in := sound(r)
		in.Shape = []Shape{ShapeRound, ShapeV}[r.IntN(2)]
		if ask(in) != nil {
			continue
		}
		asked++
		plants := []knittest.Plant[Input]{
			{Name: "an odd armhole", Into: func(in *Input) { in.ArmholeRows = new(21 + 2*r.IntN(50)) }},
			{Name: "a steep slope", Into: func(in *Input) { in.ShoulderSlopeRows = new(MaxSlopeRows) }},
			{Name: "a deep back", Into: func(in *Input) { in.BackDepthRows, in.BackDepthCm = nil, new(MaxDepthCm) }},
			{Name: "a wide middle", Into: func(in *Input) { in.FrontCentreStitches = new(MaxNeckStitches) }},
			{Name: "a head of none", Into: func(in *Input) { in.HeadCm = new(1.0) }},
			{Name: "a band without", Into: func(in *Input) { in.BandRule = &gauge.CountRule{Multiple: new(0)} }},
			{Name: "a shape of none", Into: func(in *Input) { in.Shape = 9 }},
		}
		knittest.CheckBothListed(t, in, ask, plants...)
		// What needs no counts is judged beside counts that do not go together.
		plants[1] = knittest.Plant[Input]{Name: "no shoulders", Into: func(in *Input) {
			in.NeckStitches, in.ShoulderStitches = in.WidthStitches, nil
		}}
		plants[3] = knittest.Plant[Input]{Name: "a deep front", Into: func(in *Input) {
			in.FrontDepthRows, in.FrontDepthCm = nil, new(MaxDepthCm)
		}}
		knittest.CheckBothListed(t, in, ask, plants...)
		// Front and back are judged each for itself.
		knittest.CheckBothListed(t, in, ask, plants[0], knittest.Plant[Input]{Name: "a narrow front", Into: func(in *Input) {
			in.FrontWidthStitches = new(1)
		}}, knittest.Plant[Input]{Name: "an odd middle behind", Into: func(in *Input) {
			in.BackCentreStitches = new(1)
			if in.NeckStitches != nil && *in.NeckStitches%2 == 1 || in.NeckStitches == nil && *in.WidthStitches%2 == 1 {
				in.BackCentreStitches = new(2)
			}
		}})
	}
	if asked < knittest.Sweep(60, 12) {
		t.Errorf("%d asked", asked)
	}
}

// A count that the neck's rule does not have is refused with those beside it that it has, also where
// the remainder is more than the multiple: of a front whose neck would be 1, of "7 and so on", 107 does.
func TestRuleOfTheFrontsNeck(t *testing.T) {
	in := Input{Gauge: &gauge.Gauge{Stitches: 24, Rows: 40}, NeckCm: new(18.0), WidthCm: new(59.7), FrontDepthCm: new(19.1),
		NeckRule: &gauge.CountRule{Remainder: new(7)}, FrontWidthStitches: new(101)}
	err := ask(in)
	if err == nil {
		t.Fatal("planned")
	}
	offers := knittest.Offers(err)
	if len(offers) != 2 || len(offers[0].Values) != 1 || offers[0].Values[0] != 107 {
		t.Errorf("%v: %v", err, offers)
	}
	knittest.CheckOffers(t, in, err, ask)
}

// A depth that nobody gave is not refused: behind a V at a gauge of few rows it is as deep as its curve
// needs, or straight.
func TestUsualDepthsAreNotRefused(t *testing.T) {
	in := Input{Gauge: &gauge.Gauge{Stitches: 40, Rows: 16}, NeckCm: new(20.6), WidthCm: new(46.8), FrontDepthRows: new(84), Shape: ShapeV}
	out, err := PlanNeckline(in)
	if err != nil {
		t.Fatal(err)
	}
	defer func(far, up float64) { farthest, high = far, up }(farthest, high) // of gauges as people have them
	knitPiece(t, "back", in, out, out.Back)
}
