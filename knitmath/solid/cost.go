package solid

import (
	"math"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
)

// otherWedges is how many wedges that do not divide the stitches are looked at, at most.
const otherWedges = 3

// mostForACrown is the most that a crown takes, whatever the formula makes of its greatest values
// together: the dearest that long climbs have found runs as many blocks as 16,000 steps may.
const mostForACrown = cost.Limit

// Cost is the price of a crown: for each decrease round its wedges, and where it may lie
// what the tolerance allows, again and again; and all of it for other wedges where they may
// not divide the stitches.
func (in CrownInput) Cost() int {
	stitches := in.priceStitches()
	wedges := cost.Clamp(fault.Or(in.WedgeCount, MinWedges), MinWedges, MaxWedges)
	rounds := min(stitches/wedges+1, MaxClosingRounds)
	reach := 2*cost.Ceil(min(max(fault.Or(in.ToleranceRounds, DefaultCrownTolerance), 0), MaxCrownTolerance), MaxCrownTolerance) + 1
	ways, tight := 1, 0
	if in.CrownRounds != nil || in.CrownCm != nil {
		ways += drawnOutTries
		tight = drawnOutTries * (3 + 1) // each step has so few rounds to go on from
	}
	one := cost.Sum(400, cost.Product(9, rounds), cost.Product(rounds, reach, ways*reach+tight)/11,
		cost.Product(ways+tight/reach, rounds*rounds, reach)/150)
	if ways == 1 && in.ToleranceRounds == nil && len(in.Rates) == 0 {
		one *= 2 // where it would ruffle it is worked again nearer to the curve
	}
	if in.WedgeCount != nil || in.HatStitches == nil && in.StitchRule == nil || stitches > 2*littleLost*MaxWedges {
		return min(one, mostForACrown)
	}
	return min(cost.Product(1+otherWedges, one), mostForACrown)
}

// priceStitches is how many stitches a hat is priced for: twice those of its size, and what a rule may add.
func (in CrownInput) priceStitches() int {
	cm := in.HatCm
	if cm == nil {
		cm = in.HeadCm
	}
	if in.HatStitches == nil && cm == nil {
		return MaxHatStitches
	}
	stitches := 2 * gauge.PriceStitches(in.Gauge, in.HatStitches, cm, MaxHatStitches)
	if r := in.StitchRule; r != nil {
		for _, n := range [...]*int{r.Multiple, r.Remainder, r.Edge} {
			stitches += cost.Clamp(fault.Or(n, 0), 0, MaxHatStitches)
		}
	}
	return stitches
}

// What a solid takes: a round of it is laid, compared in schedules and written, and one that
// gains or loses more than a stitch for each wedge has an easy row looked for.
const (
	stepsASolid      = 60
	stepsASolidRound = 15
	stepsAnEvenRound = 70
)

// What limbs take, for one and for a stitch of each; and wedges of short rows, for a stitch from
// end to end and for a row round the widest place.
const (
	stepsALimb       = 250
	stepsALimbStitch = 4
	stepsAStitch     = 12
	stepsAShortRow   = 12
)

// Cost is the price of a solid, 60 + 15 * rounds, or 70 where there are fewer wedges than a
// round may gain: as many rounds as half its girth and its height, twice over, are long, at most.
// A limb takes 250 + 4 * stitches more. Of wedges it is 12 * stitches from end to end, and as
// much for a row of each of two wedges.
func (in SolidInput) Cost() int {
	long := 2*fault.Or(in.AcrossCm, 0) + 2*fault.Or(in.HeightCm, 0)
	for i, p := range in.Points[:min(len(in.Points), MaxProfilePoints)] {
		before := ProfilePoint{}
		if i > 0 {
			before = in.Points[i-1]
		}
		long += 2*p.AcrossCm + max(p.HeightCm-before.HeightCm, 0)
	}
	if in.Way == WayWedges {
		rows := cost.Product(4, gauge.PriceRows(in.Gauge, nil, &long, mostAround)) / max(fault.Or(in.WedgeCount, 1), 1)
		return cost.Sum(stepsASolid, cost.Product(stepsAStitch, gauge.PriceStitches(in.Gauge, nil, &long, maxMeridianStitches)),
			cost.Product(stepsAShortRow, rows))
	}
	limbs := 0
	for _, l := range in.Limbs[:min(len(in.Limbs), MaxLimbs)] {
		limbs += stepsALimb + stepsALimbStitch*cost.Clamp(l.Stitches, 0, MaxLimbStitches)
	}
	each := stepsASolidRound
	if g, w := in.Gauge, in.WedgeCount; g != nil && w != nil && 2*math.Pi*g.Stitches > float64(*w)*g.Rows {
		each = stepsAnEvenRound
	}
	return cost.Sum(stepsASolid, limbs, cost.Product(each, gauge.PriceRows(in.Gauge, nil, &long, MaxSolidRounds)))
}
