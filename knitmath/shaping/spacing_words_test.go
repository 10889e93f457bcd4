package shaping

import (
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// Mixed evenly, the gap that never stands beside its like closes a block with the
// run of the other before it, and equal blocks are told once. The gaps themselves,
// over all changes:
//
//	48 to 39 in the round: 9 decreases leave 30, three times 3, 4, 3
//	90 to 66 in the round: 24 leave 42, six times 2, 2, 1, 2
//	99 to 85 in the round: 14 leave 71, thirteen of 5 and one of 6
//	54 to 50: 4 leave 46, 5 and 6 of them at the ends; 12, 11, 12 between
//	64 to 49: 15 leave 34, 1 and 2 at the ends; 31 in fourteen gaps, three of 3
//	60 to 76: 16 are parted by 60, 1 and 2 at the ends; 57 in fifteen, three of 3
//	100 to 63: 37 leave 26, none and 1 at the ends; 25 of 1 in 36 gaps
//	30 to 19: 11 leave 8, in the round three gaps of none; flat 0 and 1 at the ends
func TestInterleavedText(t *testing.T) {
	for _, c := range []struct {
		start, end   int
		construction stitch.Construction
		text         string
	}{
		{48, 39, stitch.InTheRound, "[k3, k2tog, k4, k2tog, k3, k2tog] 3 times"},
		{90, 66, stitch.InTheRound, "[[k2, k2tog] twice, k1, k2tog, k2, k2tog] 6 times"},
		{99, 85, stitch.InTheRound, "[k5, k2tog] 6 times, k6, k2tog, [k5, k2tog] 7 times"},
		{30, 19, stitch.InTheRound, "k1, k2tog, k2tog, [[k1, k2tog] 3 times, k2tog] twice, k1, k2tog"},
		{54, 50, stitch.Flat, "k5, k2tog, k12, k2tog, k11, k2tog, k12, k2tog, k6"},
		{64, 49, stitch.Flat, "k1, [k2tog, k2] twice, k2tog, k3, [k2tog, k2] 3 times, k2tog, k3, [k2tog, k2] 4 times, " +
			"k2tog, k3, [k2tog, k2] 3 times"},
		{60, 76, stitch.Flat, "k1, [M1L, k4] twice, M1L, k3, [[M1L, k4] 4 times, M1L, k3] twice, [M1L, k4] twice, M1L, k2"},
		// Sixteen steps are still written as they come.
		{100, 63, stitch.Flat, "k2tog, k1, k2tog, [k2tog, k1] twice, k2tog, [k2tog, k1] 3 times, k2tog, " +
			"[[k2tog, k1] twice, k2tog] twice, [k2tog, k1] 3 times, k2tog, [[k2tog, k1] twice, k2tog] 3 times, " +
			"[k2tog, k1] 3 times, k2tog, [k2tog, k1] twice, k2tog, [k2tog, k1] twice"},
		{30, 19, stitch.Flat, "k2tog, k1, k2tog, [k2tog, k1] 3 times, k2tog, [k2tog, k1] twice, k2tog, [k2tog, k1] twice"},
	} {
		out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: c.start, EndStitches: c.end, Construction: c.construction,
			Spread: GapSpreadInterleaved})
		if err != nil {
			t.Fatal(err)
		}
		if got := out.Instruction.Row.Text(); got != c.text {
			t.Errorf("%d to %d: %q, want %q", c.start, c.end, got, c.text)
		}
	}
}
