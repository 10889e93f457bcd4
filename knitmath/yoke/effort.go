package yoke

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
)

const (
	// mostOver is how many stitches may be left over at the end of an easy round: as
	// many as an eye takes in. Common practice.
	mostOver = 2
	// hardItems stands for the items of a round that has no easy form: more than all
	// others of a plan have, so that there are as few hard ones as can be.
	hardItems = 1_000_000
	// unevenItems is how many items more count for a round that has no easy form but nearly
	// one: a repeat that does not come out has to be watched. Own choice.
	unevenItems = 4
	// fewItems is how many items a round of a yoke may have without a remark. Own
	// choice: a repeat of two gaps with something left over has six.
	fewItems = 8
)

// changeItems is how much there is to remember of the easy way to change a round from
// so many stitches to so many: one repeat of at most two gaps, a stitch apart, and a
// few stitches left over at its end,
//
//	[k8, k2tog] 20 times, k2
//	[k3, k2tog, k2, k2tog] 12 times
//
// or one that is nearly so, see nearlyEasyItems, for which unevenItems more are counted. It
// counts as stitch.Row.Items does, which the row that is written never exceeds; a round
// without such a form has hardItems. Only a
// row of least effort may have stitches left over: the other spreads lay them among the
// gaps. ok is false where a mirrored round does not exist.
func changeItems(from, to int, order shaping.GapSpread) (items int, ok bool) {
	k, plain := measure.Abs(to-from), from
	if to < from {
		plain -= 2 * k // k2tog takes two stitches, an increase in a strand none
	}
	switch {
	case k == 0:
		return 0, true
	case order == shaping.GapSpreadMirrored:
		return mirroredItems(k, plain)
	case k == 1 && plain == 0:
		return 1, true
	case k == 1:
		return 2, true
	}
	gap, longer := plain/k, plain%k
	if order == shaping.GapSpreadGrouped && longer > 0 {
		return brackets(gap, 6, 4), true
	}
	if items, ok = easyItems(k, gap, longer, order); ok {
		return items, true
	}
	if items, ok = nearlyEasyItems(k, gap, longer); ok && mayLeave(order) {
		return items + unevenItems, true
	}
	return hardItems, true
}

// leastItems is how many items a round of such gaps has at the least, and which round it is: a bracket of a decrease
// and stitches, where these are enough for all gaps, and more where the round has no easy form.
func (g gap) leastItems(order shaping.GapSpread) int {
	switch {
	case g.decreases < 2:
		return 1 + 1
	case mayLeave(order) && !g.easy():
		return leastUneven + unevenItems + 1
	case g.stitches >= 3*g.decreases:
		return 3 + 1
	}
	return 1 + 1
}

// leastUneven is the fewest nearlyEasyItems.
const leastUneven = 5

// easy reports whether two gaps or more are told in one repeat of at most two of them, see easyItems.
func (g gap) easy() bool {
	over, half := uint32(g.stitches)%uint32(g.decreases), uint32(g.decreases)/2
	return over <= mostOver || g.decreases%2 == 0 && over >= half && over-half <= mostOver
}

// easyItems are those of one repeat of at most two gaps.
func easyItems(k, gap, longer int, order shaping.GapSpread) (items int, ok bool) {
	over := 0
	if mayLeave(order) {
		over = mostOver
	}
	half := k / 2
	switch {
	case longer <= over:
		items = brackets(gap, 3, 1)
	case k%2 == 0 && longer >= half && longer-half <= over:
		longer -= half
		if items = brackets(gap, 5, 4); half == 1 {
			items-- // no bracket
		}
	default:
		return 0, false
	}
	if longer > 0 {
		items++
	}
	return items, true
}

// nearlyEasyItems are those of k gaps, of which so many are longer, where they are two
// groups, a repeat of equal gaps and one other, or a repeat of two or three gaps with a
// few over. Found by trial: see TestChangesHaveNoMoreItemsThanSaid.
func nearlyEasyItems(k, gap, longer int) (items int, ok bool) {
	turns := 2*longer - k // 0 where the two gaps take turns
	switch {
	case longer <= 4, k-longer <= 4, k%longer == 0, k%(k-longer) == 0:
		return brackets(gap, 6, 5), true
	case k%3 == 0 && longer%(k/3) <= mostOver:
		return 7, true
	case -7 <= turns && turns < 0:
		return brackets(gap, 8, 5), true
	case 0 < turns && turns <= 7:
		return brackets(gap, 8, 7), true
	}
	return 0, false
}

// brackets is the one or the other, as brackets have stitches between the changes or not.
func brackets(gap, some, none int) int {
	if gap > 0 {
		return some
	}
	return none
}

// mayLeave reports whether a round may have stitches left over at its end.
func mayLeave(order shaping.GapSpread) bool {
	return order == shaping.GapSpreadUnspecified || order == shaping.GapSpreadLeastEffort
}

// mirroredItems is the same of a round that reads the same both ways: the beginning
// of the round splits a gap in equal halves, so that of the two gaps there are one must
// be even, and the others must lie about their middle.
func mirroredItems(k, plain int) (items int, ok bool) {
	gap, longer := plain/k, plain%k
	switch {
	case longer == 0 && gap%2 == 0:
		return 6, true
	case longer == 0:
		return 0, false
	}
	if gap%2 != 0 {
		longer-- // a longer one is split
	}
	if k%2 != 0 && longer%2 != 0 {
		return 0, false
	}
	return hardItems, true
}
