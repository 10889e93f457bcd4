package sock

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
)

func farGauge(rng *rand.Rand) *gauge.Gauge {
	var g gauge.Gauge
	g.Stitches, g.Rows = knittest.FarGauge(rng)
	return &g
}

func farHeel(rng *rand.Rand) HeelInput {
	in := HeelInput{DisplayUnit: measure.DisplayUnit(rng.IntN(3)),
		Kind: HeelKind(1 + rng.IntN(5)), Direction: Direction(1 + rng.IntN(2)), Gauge: farGauge(rng),
		HeelStitches: knittest.Some(rng, MinHeel, MaxRound)}
	if in.RoundStitches = knittest.Far(rng, MinRound, MaxRound); rng.IntN(3) == 0 {
		in.RoundStitches, in.FootCircumferenceCm = nil, knittest.Halves(knittest.Far(rng, 4, 200))
	}
	gussets := in.Kind < HeelKindShortRows
	if gussets && in.Direction == DirectionCuffDown {
		in.PickUpStitches, in.SuccessiveRounds = knittest.Some(rng, 1, MaxFlapRows), knittest.Some(rng, 1, MaxRound)
	}
	if gussets && (in.Direction == DirectionCuffDown || in.Kind != HeelKindHeart) {
		in.FlapRows = knittest.Some(rng, 2, MaxFlapRows)
	}
	if in.Kind != HeelKindWasteYarn && (in.Direction == DirectionCuffDown || in.Kind != HeelKindSquare) {
		in.CentreStitches = knittest.Some(rng, 1, MaxRound)
	}
	if in.Kind == HeelKindWasteYarn {
		in.CornerStitches, in.EndStitches = knittest.Some(rng, 0, MaxCorner), knittest.Some(rng, 4, MaxRound)
	}
	if in.Direction == DirectionToeUp {
		in.FootLengthCm = knittest.Halves(knittest.Some(rng, 4, 200))
	}
	return in
}

func farToe(rng *rand.Rand) ToeInput {
	in := ToeInput{DisplayUnit: measure.DisplayUnit(rng.IntN(3)),
		Kind: ToeKind(1 + rng.IntN(4)), Direction: Direction(1 + rng.IntN(2)), Gauge: farGauge(rng)}
	if in.RoundStitches = knittest.Far(rng, MinRound, MaxRound); rng.IntN(3) == 0 {
		in.RoundStitches, in.FootCircumferenceCm = nil, knittest.Halves(knittest.Far(rng, 4, 200))
		if rng.IntN(3) == 0 {
			in.StitchRule = &gauge.CountRule{Multiple: knittest.Far(rng, 1, 1000), Remainder: new(rng.IntN(40))}
		}
	}
	if in.Direction == DirectionCuffDown {
		in.FootLengthCm = knittest.Halves(knittest.Some(rng, 4, 200))
	}
	switch in.Kind {
	case ToeKindShortRows:
		in.CentreStitches, in.TurnMethod = knittest.Some(rng, 1, MaxRound), shortrow.TurnMethod(rng.IntN(3))
		return in
	case ToeKindRound:
		in.WedgeCount, in.MoreEvenRounds = knittest.Some(rng, MinWedges, MaxWedges), knittest.Some(rng, 0, MaxMoreEven)
	case ToeKindStar:
		in.WedgeCount = knittest.Some(rng, MinWedges, MaxWedges)
	}
	if in.Kind != ToeKindRound && rng.IntN(3) == 0 {
		in.Rates = []solid.Rate{rate(*knittest.Far(rng, 1, 100), *knittest.Far(rng, 1, 300))}
	}
	in.TipStitches = knittest.Some(rng, 1, MaxRound)
	return in
}

// Of questions far off, with fields at their bounds among them, what is planned is knit, and what a refusal
// says would do does.
func TestOffersDo(t *testing.T) {
	for seed := range uint64(knittest.Sweep(3, 1)) {
		offersDo(t, rand.New(rand.NewPCG(14, 1+100*seed)))
	}
}

func offersDo(t *testing.T, rng *rand.Rand) {
	t.Helper()
	refused, offered, asked, rules := 0, 0, 0, 0
	count := func(err error, n int) {
		knittest.CheckInputError(t, err)
		refused++
		if asked += n; n > 0 {
			offered++
		}
	}
	for range knittest.Sweep(1200, 300) {
		heel := farHeel(rng)
		if o, err := PlanHeel(heel); err == nil {
			at := fmt.Sprintf("%+v", heel)
			knitHeel(t, at, o)
			checkWords(t, at, o, o.Notices)
		} else {
			count(err, knittest.CheckOffers(t, heel, err, func(q HeelInput) error { _, err := PlanHeel(q); return err }))
		}
		toe := farToe(rng)
		o, err := PlanToe(toe)
		if err == nil {
			at := fmt.Sprintf("%+v", toe)
			knitToe(t, at, o)
			checkWords(t, at, o, o.Notices)
			continue
		}
		count(err, knittest.CheckOffers(t, toe, err, func(q ToeInput) error { _, err := PlanToe(q); return err }))
		if strings.Contains(err.Error(), "; left out, it has about ") {
			alone := ToeInput{FootCircumferenceCm: toe.FootCircumferenceCm, Gauge: toe.Gauge}
			if _, again := PlanToe(alone); again != nil && strings.Contains(again.Error(), "from 12 to 400 are planned") {
				t.Errorf("%+v: %v\nbut without its rule: %v", toe, err, again)
			}
			rules++
		}
	}
	t.Logf("%d refused, %d offered something, %d offers asked, %d rules left out", refused, offered, asked, rules)
	if offered*10 < refused*5 || rules == 0 {
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}
