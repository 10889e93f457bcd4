package yoke

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// A share is a part of the stitches on the needle, num/den.
type share struct{ num, den int64 }

// of is so much of n stitches, downwards.
func (s share) of(n int) int { return int(s.num * int64(n) / s.den) }

// kept is the part that is left.
func (s share) kept() float64 { return 1 - float64(s.num)/float64(s.den) }

// What a round of a yoke with bands may take: a third of the stitches, two fifths
// where there is no plan otherwise, as the last round of the percentage system does.
// k2tog all round takes half. Common practice; see percentageSteps.
var (
	third     = share{1, 3}
	twoFifths = share{2, 5}
	half      = share{1, 2}
	// fine and finer are what rounds take where a third leaves no plan, or an uneven one: more
	// rounds of less each.
	fine  = share{1, 4}
	finer = share{1, 5}
)

// Range of the share that may be asked for, in percent.
const (
	MinGreatestLoss = 20
	MaxGreatestLoss = 50
)

// lossShares is what a round may take, first what is tried first.
func lossShares(in CircularInput) []share {
	if in.LargestLossPercent != nil {
		return []share{{measure.ToMillionths(*in.LargestLossPercent / 100), 1e6}}
	}
	return []share{third, twoFifths}
}

// vetLoss checks what a round may take.
func vetLoss(c *fault.Checks, in CircularInput) {
	c.OptionalNumber("", "largest_loss_percent", in.LargestLossPercent, MinGreatestLoss, MaxGreatestLoss)
	if in.LargestLossPercent != nil && len(in.Bands) == 0 {
		c.Add("largest_loss_percent", fault.ReasonContradictory, "belongs to bands; without them the schedule says what a round takes")
	}
}
