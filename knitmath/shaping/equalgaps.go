package shaping

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// equalGaps reports whether so many changes have equal gaps: flat, half a gap at each
// end, to the stitch.
func (s spacing) equalGaps(k int) bool {
	return k >= 1 && k <= s.most() && (s.start-2*s.edge)%k == 0
}

// nearby is how many changes more or fewer a designer would look at: a tenth, and two
// at the least. Own choice.
func (s spacing) nearby() int { return max(2, s.k/10) }

// worthNaming is how many items fewer a row with equal gaps must have for another count
// to be worth a thought. Own choice: one more item at the end of a row is none.
const worthNaming = 2

// equalGapsNear names the nearest numbers of changes on both sides for which all gaps
// are equal, where those between changes are not equal now and the row is harder to work
// than theirs: [k10, k2tog] 8 times, k4 wants no other count.
func (s spacing) equalGapsNear(o EvenSpacing) []report.Notice {
	if gaps := o.between(); s.equalGaps(s.k) || len(gaps) == 0 || slices.Min(gaps) == slices.Max(gaps) {
		return nil
	}
	var words []string
	for _, step := range []int{-1, 1} {
		for d := 1; d <= s.nearby(); d++ {
			near := s
			near.k += step * d
			near.end = s.start + near.k*s.op.Net()
			if near.k < 2 || !s.equalGaps(near.k) || near.end < 1 || near.end > stitch.MaxStitches {
				continue
			}
			near.order = GapSpreadLeastEffort
			equal, _ := near.plan()
			if o.Effort-equal.Effort < worthNaming {
				break
			}
			words = append(words, strconv.Itoa(near.k)+" instead of "+strconv.Itoa(s.k)+" give "+report.CountOf(near.end, "stitches")+
				": "+equal.Instruction.Row.Text())
			break
		}
	}
	if len(words) == 0 {
		return nil
	}
	return []report.Notice{{Reason: EqualGapsNear, Field: "end_stitches",
		Description: "with another number of changes all gaps are equal; " + strings.Join(words, "; ")}}
}
