package shaping

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// 83 to 81 in the round, mirrored: two decreases take 4, and of the 79 others the
// gap across the start has 40, 20 on each side of it, the other one 39.
func TestSummaryTellsTheGapAcrossTheStart(t *testing.T) {
	for _, c := range []struct {
		start, end int
		spread     GapSpread
		want       string
	}{
		{83, 81, GapSpreadMirrored, "39 or 40 stitches between changes."},
		{84, 82, GapSpreadMirrored, "40 stitches between changes."},
		{83, 82, GapSpreadGrouped, "from 83 to 82."}, // a lone change has none to be apart from
	} {
		out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: c.start, EndStitches: c.end, Construction: stitch.InTheRound, Spread: c.spread})
		if err != nil {
			t.Fatal(err)
		}
		if !strings.HasSuffix(out.Summary(), c.want) {
			t.Errorf("%d to %d: %q, want %q", c.start, c.end, out.Summary(), c.want)
		}
	}
}
