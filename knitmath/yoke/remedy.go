package yoke

import (
	"fmt"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/shaping"
)

const (
	// moreEven is how many even rounds more below each band are tried.
	moreEven = 2
	// mostHalved is in how many bands half the repeat is tried: each is a yoke to plan.
	mostHalved = 3
	// mostRemedied is the most places for which anything is tried.
	mostRemedied = 24
)

// remedies are what could be asked instead, in words: half the repeat in a band, or two
// more even rounds below each. Each is asked of the planner, and offered if it plans a
// yoke whose counts are as near as is allowed and whose rounds take no more than they should.
func (in CircularInput) remedies(y *circular) []string {
	if y.placeCount > mostRemedied {
		return nil
	}
	var words []string
	tried := 0
	for i, b := range in.Bands {
		if b.RepeatStitches%2 != 0 || tried == mostHalved || y.changes != nil && !y.farBand(i) {
			continue
		}
		tried++
		if in.withHalf(i).plansWell() {
			words = append(words, fmt.Sprintf("half the repeat in band %d", i+1))
		}
	}
	if in.withEven().plansWell() {
		where := "each band"
		if len(in.Bands) == 1 {
			where = "the band"
		}
		words = append(words, "two more even rounds below "+where)
	}
	return words
}

// wouldDo says what would do, if anything does.
func wouldDo(remedies []string) string {
	if len(remedies) == 0 {
		return ""
	}
	return "; " + strings.Join(remedies, ", or ") + " would do"
}

// mostTried is the price of the dearest question of which others like it are asked so that something can be
// offered: a refusal may not take much more than an answer. Yokes that are worn are far below.
const mostTried = 10_000

// tooDearToTry reports whether nothing is asked beside the question itself.
func (in CircularInput) tooDearToTry() bool { return in.Cost() > mostTried }

// withHalf is the question with half the repeat in a band.
func (in CircularInput) withHalf(band int) CircularInput {
	return in.withRepeat(band, in.Bands[band].RepeatStitches/2)
}

// withRepeat, withTolerance and withLoss are the question with another repeat in a band, another tolerance
// of the neck, and rounds that may take another part of the stitches.
func (in CircularInput) withRepeat(band, stitches int) CircularInput {
	in.Bands = append([]Band(nil), in.Bands...)
	in.Bands[band].RepeatStitches = stitches
	return in
}

func (in CircularInput) withTolerance(stitches int) CircularInput {
	in.NeckToleranceStitches = &stitches
	return in
}

func (in CircularInput) withLoss(percent float64) CircularInput {
	in.LargestLossPercent = &percent
	return in
}

// otherSpreads says which spreads would do instead of the mirrored one.
func (in CircularInput) otherSpreads(y *circular) string {
	if y.tried {
		return ""
	}
	grouped, mixed := in, in
	grouped.Spread, mixed.Spread = shaping.GapSpreadGrouped, shaping.GapSpreadInterleaved
	switch byGroups, byMixing := grouped.goesOn(), mixed.goesOn(); {
	case byGroups && byMixing:
		return "; use the grouped or interleaved spread"
	case byGroups:
		return "; use the grouped spread"
	case byMixing:
		return "; use the interleaved spread"
	}
	return ""
}

// goesOn reports whether a yoke whose counts are known to come out is planned to its end: a raise may
// have no room, and a mirrored round no arrangement.
func (in CircularInput) goesOn() bool {
	if in.tooDearToTry() {
		return in.BackRaise == nil && in.Spread != shaping.GapSpreadMirrored
	}
	_, err := in.settled(true)
	return err == nil
}

// withEven is the question with two more even rounds below each band.
func (in CircularInput) withEven() CircularInput {
	in.Bands = append([]Band(nil), in.Bands...)
	for i, b := range in.Bands {
		even := fault.Or(b.EvenBeforeRounds, 1) + moreEven
		in.Bands[i].EvenBeforeRounds = &even
	}
	return in
}

// plansWell asks the planner whether it would plan a yoke without departing too far or
// taking too much.
func (in CircularInput) plansWell() bool {
	var c fault.Checks
	var y circular
	for _, stage := range [...]func(*fault.Checks, *circular, CircularInput){
		vetCircular, settleCounts, settleEasyBands, settleWorked,
	} {
		if stage(&c, &y, in); c.Err() != nil {
			return false
		}
	}
	return y.keepsWithin(lossShares(in)[0]) && !y.far()
}

// settleEasyBands settles the counts of bands as settleBands does, but for those that
// depart farther than is allowed.
func settleEasyBands(c *fault.Checks, y *circular, in CircularInput) {
	s := y.scheme(in)
	if layBands(c, y, s, in); c.Err() != nil {
		return
	}
	shares := lossShares(in)
	if vetPlaces(c, y, y.bandPlaces(s, in, shares[0], layout{should: shares[0]})); c.Err() == nil && !y.easyBands(s, in, shares[:1]) {
		c.Infeasible("", "bands")
	}
}

// halved reports whether rounds that take half would come down to the neck. It asks
// for counts alone: whatever departs least is planned.
func (in CircularInput) halved(y *circular, s scheme) bool {
	if y.placeCount > mostRemedied || in.LargestLossPercent != nil && *in.LargestLossPercent == MaxGreatestLoss {
		return false
	}
	places := y.bandPlaces(s, in, half, layout{should: half})
	_, ok := newBandCounts(y.join, places, half).choose()
	return ok
}
