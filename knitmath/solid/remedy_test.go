package solid

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

func farGauge(rng *rand.Rand) *gauge.Gauge {
	var g gauge.Gauge
	g.Stitches, g.Rows = knittest.FarGauge(rng)
	return &g
}

func farCrown(rng *rand.Rand) CrownInput {
	in := CrownInput{Gauge: farGauge(rng), DisplayUnit: measure.DisplayUnit(rng.IntN(3)),
		Shape: CrownShape(rng.IntN(4)), Uneven: Uneven(rng.IntN(4)), Stacks: Stacks(rng.IntN(2)),
		WedgeCount: knittest.Some(rng, MinWedges, MaxWedges), EndStitches: knittest.Some(rng, 1, MaxHatStitches),
		CrownRounds: knittest.Some(rng, 1, MaxHatRounds), TotalRounds: knittest.Some(rng, 1, MaxHatRounds)}
	switch rng.IntN(3) {
	case 0:
		in.HatStitches = knittest.Far(rng, MinHatStitches, MaxHatStitches)
	case 1:
		in.HatCm = knittest.Halves(knittest.Far(rng, 2*MinHeadCm, 2*MaxHeadCm))
	default:
		in.HeadCm = knittest.Halves(knittest.Far(rng, 2*MinHeadCm, 2*MaxHeadCm))
	}
	if rng.IntN(4) == 0 && in.CrownRounds == nil {
		in.Rates = []Rate{{*knittest.Far(rng, 1, MaxRateRounds), *knittest.Far(rng, 1, MaxClosingRounds)}}
	}
	return in
}

func farSolid(rng *rand.Rand) SolidInput {
	in := SolidInput{Gauge: farGauge(rng), DisplayUnit: measure.DisplayUnit(rng.IntN(3)),
		Form: Form(1 + rng.IntN(5)), AcrossCm: knittest.Halves(knittest.Far(rng, 1, 2*MaxSolidCm)),
		BaseOpeningCm: knittest.Halves(knittest.Some(rng, 1, 2*MaxSolidCm)), TopOpeningCm: knittest.Halves(knittest.Some(rng, 1, 2*MaxSolidCm)),
		WedgeCount: knittest.Some(rng, 1, MaxSolidWedges), Way: Way(1 + rng.IntN(2))}
	if in.Form != FormSphere {
		in.HeightCm = knittest.Halves(knittest.Far(rng, 1, 2*MaxSolidCm))
	}
	if in.Way == WayRounds {
		in.StuffOpeningCm = knittest.Halves(knittest.Some(rng, 1, 2*MaxSolidCm))
	}
	return in
}

// Of questions far off, with fields at their bounds among them, what is planned is knit, and what a refusal
// says would do does.
func TestOffersDo(t *testing.T) {
	for seed := range uint64(knittest.Sweep(3, 1)) {
		offersDo(t, rand.New(rand.NewPCG(14, 3+100*seed)))
	}
}

func offersDo(t *testing.T, rng *rand.Rand) {
	t.Helper()
	refused, offered, inRounds, unmet := 0, 0, 0, 0
	for range knittest.Sweep(600, 150) {
		crown := farCrown(rng)
		if out, err := PlanCrown(crown); err == nil {
			if crown.Gauge.Stitches < 14 || crown.Gauge.Stitches > 34 || crown.EndStitches != nil {
				crown.HatStitches = &out.HatStitches // not every shape can be kept to
			}
			checkCrown(t, crown, out)
			checkCrownWords(t, out)
		} else {
			knittest.CheckInputError(t, err)
			refused++
			offered += min(knittest.CheckOffers(t, crown, err, func(q CrownInput) error { _, err := PlanCrown(q); return err }), 1)
		}
		body := farSolid(rng)
		if out, err := PlanSolid(body); err == nil {
			knittest.CheckFinite(t, out)
			if told(out.Notices, SurfaceUnmet) {
				unmet++
				continue
			}
			if area := 100 * out.WantedTotalStitches / body.Gauge.Stitches / body.Gauge.Rows; body.Way == WayRounds {
				checkSolid(t, body, out, area)
			} else {
				checkWedges(t, body, out, area)
			}
		} else {
			knittest.CheckInputError(t, err)
			refused++
			offered += min(knittest.CheckOffers(t, body, err, func(q SolidInput) error { _, err := PlanSolid(q); return err }), 1)
			if strings.Contains(err.Error(), "in rounds it is planned") {
				inRounds++
				body.Way = WayRounds
				if _, again := PlanSolid(body); again != nil {
					t.Errorf("%v\nbut in rounds: %v", err, again)
				}
			}
		}
	}
	t.Logf("%d refused, %d offered something, %d in rounds, %d off the surface", refused, offered, inRounds, unmet)
	if offered*10 < refused*3 || inRounds == 0 {
		t.Errorf("%d refused, %d offered something, %d in rounds", refused, offered, inRounds)
	}
}

// What is offered for a limb that is too wide, or meets another, does.
func TestOffersForLimbsDo(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 4))
	offers := map[string]*regexp.Regexp{"from": regexp.MustCompile(`; ([0-9.]+) (?:cm|in) from the base it fits`),
		"stitches": regexp.MustCompile(`; with (\d+) stitches it `), "turn": regexp.MustCompile(`; turned (\d+) degrees it does not`)}
	done := map[string]int{}
	for n := range knittest.Sweep(700, 300) {
		cm := float64(6 + rng.IntN(20))
		in := SolidInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Form: FormSphere, AcrossCm: &cm}
		if n%2 == 1 {
			in.DisplayUnit = measure.DisplayUnitIn
		}
		for range 1 + rng.IntN(3) {
			in.Limbs = append(in.Limbs, LimbInput{Stitches: *knittest.Far(rng, MinLimbStitches, 80), FromBaseCm: 1.6 * cm * rng.Float64(),
				TurnDegrees: float64(rng.IntN(360))})
		}
		_, err := PlanSolid(in)
		refused := knittest.Reasons(err)
		if len(refused) == 0 || len(refused) > 2 {
			continue // more than one limb
		}
		i := int(refused[0].Field[len("limbs[")] - '0')
		if len(refused) == 2 && refused[1].Field[len("limbs[")] != refused[0].Field[len("limbs[")] {
			continue
		}
		for what, offer := range offers {
			said := offer.FindStringSubmatch(err.Error())
			if said == nil {
				continue
			}
			done[what]++
			again := in
			again.Limbs = append([]LimbInput(nil), in.Limbs...)
			value, _ := strconv.ParseFloat(said[1], 64)
			switch what {
			case "from":
				if in.DisplayUnit == measure.DisplayUnitIn {
					value *= measure.CmPerInch
				}
				again.Limbs[i].FromBaseCm = value
			case "turn":
				again.Limbs[i].TurnDegrees = value
			default:
				again.Limbs[i].Stitches = int(value)
			}
			if _, err2 := PlanSolid(again); err2 != nil {
				t.Errorf("%v cm, %+v: %v\nbut %s %v: %v", cm, in.Limbs, err, what, value, err2)
			}
		}
	}
	t.Log(done)
	for what := range offers {
		if done[what] < knittest.Sweep(3, 1) {
			t.Errorf("%s offered %d times", what, done[what])
		}
	}
}
