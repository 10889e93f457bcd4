package sock

import (
	"fmt"
	"strings"
	"testing"
)

// Sections have 8 stitches, or 10 or 12 where the foot wants that, once a round has adjusted what is over;
// in rounds that no such sections divide nearly as many. The summary tells both.
func TestSectionsOfRoundToes(t *testing.T) {
	for round := 24; round <= MaxRound; round++ {
		for _, foot := range []float64{0, 20, 24, 28} {
			if foot > 0 && round > 200 {
				continue // no room for the heel
			}
			in := ToeInput{Kind: ToeKindRound, RoundStitches: &round}
			if foot > 0 {
				in.Gauge, in.FootLengthCm, in.LengthEaseCm = standard, &foot, new(10.0)
			}
			o, err := PlanToe(in)
			if err != nil {
				t.Fatal(round, foot, err)
			}
			each := round / *o.WedgeCount
			off := 3
			for _, of := range roundSections {
				off = min(off, max(of-each, each-of))
			}
			if off > 1 && round >= 36 || off > 2 || foot == 0 && round >= 64 && each != 8 {
				t.Errorf("%d stitches, foot %v: %d sections of %d", round, foot, *o.WedgeCount, each)
			}
			adjusted := o.Rows[0].Instruction.EndStitches
			told := strings.Contains(o.Summary(), fmt.Sprintf("%d sections: a round to %d stitches and ", *o.WedgeCount, adjusted))
			if adjusts := strings.Contains(o.Directions()[len(o.Directions())-len(o.closing)-1], "(to adjust the count)"); told != adjusts {
				t.Errorf("%d stitches: %s\n%s", round, o.Summary(), strings.Join(o.Directions(), "\n"))
			}
		}
	}
}
