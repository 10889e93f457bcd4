package solid

import (
	"math"

	"example.com/knitmath/knitmath/measure"
)

// A wedgePlan is so many wedges: low of them with so many pairs of rows at the widest place, and
// high of them with one more.
type wedgePlan struct {
	count, low, high int
	pairs            int
	shift            float64 // added to what is rounded to pairs
	disliked         float64
}

// What makes a plan less liked, each as a part by which the rows round the widest place are off:
// a wedge fewer or more than is usual, and a second kind of wedges. Own choice.
const (
	dislikeOfOther  = 0.02
	dislikeOfSecond = 0.04
)

// leastPairs are those of a wedge at its widest place: one over all stitches, and one of short rows.
const leastPairs = 2

// plansOf are the ways in which so many wedges have as many rows round the widest place as are
// wanted there, nearly: all with the pairs below or above, or some with those and some with these.
func plansOf(wedges int, round float64) []wedgePlan {
	below := int(round / 2 / float64(wedges))
	var plans []wedgePlan
	add := func(pairs, high int) {
		rows := 2 * (wedges*pairs + high)
		off := math.Abs(float64(rows) - round)
		if pairs < leastPairs || off > mayBeOffRound(round) {
			return
		}
		p := wedgePlan{count: wedges, low: wedges - high, high: high, pairs: pairs}
		if p.disliked = off/round + dislikeOfOther*float64(measure.Abs(wedges-likedShortWedges)); high > 0 {
			p.disliked += dislikeOfSecond
		}
		plans = append(plans, p)
	}
	add(below, 0)
	add(below+1, 0)
	if high := int(measure.RoundHalfUp(round/2)) - wedges*below; high > 0 && high < wedges {
		add(below, high)
	}
	return plans
}

// pairsAt is so many pairs, rounded, one at least and no more than at the widest place.
func pairsAt(wanted float64, most int) int {
	return min(max(int(measure.RoundHalfUp(wanted)), 1), most)
}

// shiftTries is how often what lies between rounding all pairs down and up is halved.
const shiftTries = 6

// enough is how near the stitches come to those wanted, as a part of them, so that pairs are
// rounded to the nearest. Own choice.
const enough = 0.006

// shiftFor is what the pairs of a plan are shifted by before they are rounded, so that all
// stitches together are as many as are wanted, nearly. A shift of half a pair rounds all up.
func (b *revolved) shiftFor(p wedgePlan, wanted float64) float64 {
	if math.Abs(b.planned(p, 0)-wanted) <= enough*wanted {
		return 0
	}
	low, high := -0.5, 0.5
	for range shiftTries {
		if middle := (low + high) / 2; b.planned(p, middle) > wanted {
			high = middle
		} else {
			low = middle
		}
	}
	if b.planned(p, high)-wanted < wanted-b.planned(p, low) {
		return high
	}
	return low
}

// planned is how many stitches a plan has when its pairs are shifted so much, without double
// stitches.
func (b *revolved) planned(p wedgePlan, shift float64) float64 {
	round, total := 0.0, 0
	for _, wanted := range b.wanted {
		round = max(round, wanted)
	}
	lowScale, highScale := float64(p.pairs)/round, float64(p.pairs+1)/round
	for _, wanted := range b.wanted {
		total += p.low * pairsAt(wanted*lowScale+shift, p.pairs)
		if p.high > 0 {
			total += p.high * pairsAt(wanted*highScale+shift, p.pairs+1)
		}
	}
	return float64(2 * total)
}
