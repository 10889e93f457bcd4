package hand

import (
	"math"
	"math/rand/v2"
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// farSize is how a question far off says how large a hand is.
func farSize(rng *rand.Rand) (g *gauge.Gauge, stitches *int, cm *float64) {
	g = &gauge.Gauge{}
	g.Stitches, g.Rows = knittest.FarGauge(rng)
	if stitches = knittest.Far(rng, MinHandStitches, MaxHandStitches); rng.IntN(3) == 0 {
		return g, nil, knittest.Halves(knittest.Far(rng, 2*MinHandCm, 2*MaxHandCm))
	}
	return g, stitches, nil
}

func farThumb(rng *rand.Rand) (in ThumbInput) {
	in.Gauge, in.HandStitches, in.HandCm = farSize(rng)
	in.DisplayUnit = measure.DisplayUnit(rng.IntN(3))
	in.GapStitches, in.PalmStitches = knittest.Some(rng, 1, MaxGap), knittest.Some(rng, 0, MaxPalm)
	if in.LengthRounds = knittest.Some(rng, 1, MaxHandRounds); in.LengthRounds == nil {
		in.LengthCm = knittest.Halves(knittest.Some(rng, 1, 2*MaxHandCm))
	}
	if rng.IntN(4) == 0 {
		in.Gusset, in.HoldStitches = GussetNone, knittest.Some(rng, 2, MaxHandStitches)
		return in
	}
	in.GussetStitches, in.StartStitches = knittest.Some(rng, 3, MaxHandStitches), knittest.Some(rng, 1, MaxGap)
	in.BesideStitches = knittest.Some(rng, 0, MaxPalm)
	if in.EveryRounds = knittest.Some(rng, 1, MaxEveryRounds); in.EveryRounds == nil || in.GussetStitches == nil {
		in.GussetRounds = knittest.Some(rng, 1, MaxHandRounds)
	}
	return in
}

// Of questions far off, with fields at their bounds among them, what is planned is knit, and what a refusal
// says would do does.
func TestOffersDo(t *testing.T) {
	for seed := range uint64(knittest.Sweep(3, 1)) {
		offersDo(t, rand.New(rand.NewPCG(14, 2+100*seed)))
	}
}

func offersDo(t *testing.T, rng *rand.Rand) {
	t.Helper()
	refused, offered := 0, 0
	for range knittest.Sweep(2000, 400) {
		thumb := farThumb(rng)
		if out, err := PlanThumb(thumb); err == nil {
			checkThumb(t, thumb, out)
			checkWords(t, append(out.Directions(), out.Summary()), out.Notices)
		} else {
			knittest.CheckInputError(t, err)
			refused++
			ask := func(q ThumbInput) error { _, err := PlanThumb(q); return err }
			offered += max(min(knittest.CheckOffers(t, thumb, err, ask), 1), leastTold(t, thumb, err, ask))
		}
		top := MittenTopInput{Kind: TopKind(1 + rng.IntN(4)), EndStitches: knittest.Some(rng, 1, MaxHandStitches),
			LengthRounds: knittest.Some(rng, 1, MaxHandRounds), DisplayUnit: measure.DisplayUnit(rng.IntN(3))}
		top.Gauge, top.HandStitches, top.HandCm = farSize(rng)
		if out, err := PlanMittenTop(top); err == nil {
			checkTop(t, top, out)
			checkWords(t, append(out.Directions(), out.Summary()), out.Notices)
		} else {
			knittest.CheckInputError(t, err)
			refused++
			offered += min(knittest.CheckOffers(t, top, err, func(q MittenTopInput) error { _, err := PlanMittenTop(q); return err }), 1)
		}
	}
	t.Logf("%d refused, %d offered something", refused, offered)
	if offered*100 < refused*66 { // of the rest most are wrong in several ways, and no one field mends them
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}

var least = regexp.MustCompile(`picking up and closing it take (\d+)$`)

// leastTold is 1 where a refusal ends with the least that would do, which does.
func leastTold(t *testing.T, in ThumbInput, err error, ask func(ThumbInput) error) int {
	t.Helper()
	said := least.FindStringSubmatch(err.Error())
	if said == nil || in.LengthRounds == nil {
		return 0
	}
	rounds, _ := strconv.Atoi(said[1])
	if in.LengthRounds = &rounds; ask(in) != nil {
		t.Errorf("%+v: %v, but with %d rounds: %v", in, err, rounds, ask(in))
	}
	return 1
}

// A round top unlike the hand names a kind that is nearer, as high as it is planned; in few cases there is none.
func TestLikelierTopsArePlanned(t *testing.T) {
	named, none := 0, 0
	for stitches := 16; stitches <= 80; stitches += 4 {
		for rows := 16.0; rows < 200; rows *= 1.3 {
			in := MittenTopInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: rows}, HandStitches: &stitches, Kind: TopKindRound}
			out, err := PlanMittenTop(in)
			if err != nil || len(out.Notices) == 0 || out.Notices[len(out.Notices)-1].Reason != TopUnlikeHands {
				continue
			}
			said := regexp.MustCompile(`; a (wedge|star) is ([0-9.]+) cm high$`).FindStringSubmatch(out.Notices[len(out.Notices)-1].Description)
			if said == nil {
				none++
				continue
			}
			named++
			in.Kind = map[string]TopKind{"wedge": TopKindWedge, "star": TopKindStar}[said[1]]
			better, err := PlanMittenTop(in)
			if wanted := out.MittenCm / 4; err != nil || in.DisplayUnit.Size(better.TopCm) != said[2]+" cm" ||
				math.Abs(better.TopCm-wanted) >= math.Abs(out.TopCm-wanted) {
				t.Errorf("%d stitches, %v rows: %v high, %v: %v high, %v", stitches, rows, out.TopCm, said, better.TopCm, err)
			}
		}
	}
	if named == 0 {
		t.Errorf("%d named, %d none", named, none)
	}
}
