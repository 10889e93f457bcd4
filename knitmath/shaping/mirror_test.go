package shaping

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Rows that read the same from both ends do not bunch: of rows of 40 to 300 stitches, of which a third
// go or a half come, 90 % have every change within two stitches of its place by equal gaps. With the larger
// gaps outside and the smaller inside it was 44 %.
func TestMirroredRowsAreEven(t *testing.T) {
	planned, near, items := 0, 0, 0
	farthest := 0.0
	for start := 40; start <= 300; start += knittest.Sweep(4, 20) {
		for change := -start / 3; change <= start/2; change++ {
			for _, construction := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
				in := EvenSpacingInput{StartStitches: start, EndStitches: start + change, Spread: GapSpreadMirrored, Construction: construction,
					EdgeStitches: new(0)}
				if change == 0 {
					continue
				}
				out, err := PlanEvenSpacing(in)
				if err != nil {
					continue
				}
				if planned++; planned%knittest.Sweep(7, 23) == 0 {
					checkSpacing(t, in, out)
				}
				items += out.Effort
				farthest = max(farthest, out.GreatestDepartureStitches)
				if out.GreatestDepartureStitches <= 2 {
					near++
				}
			}
		}
	}
	share := 100 * float64(near) / float64(planned)
	t.Logf("%d rows, %.1f %% within 2 stitches, the farthest %.2f off, %.1f items", planned, share, farthest, float64(items)/float64(planned))
	if share < 90 || planned < knittest.Sweep(5_000, 1_000) {
		t.Errorf("%d rows, %.1f %% within 2 stitches", planned, share)
	}
}

// 100 to 60 by hand: 20 stitches and 40 decreases are one and two alternately, from the middle of a
// pair. It was k2tog 19 times in the middle.
func TestMirroredRowByHand(t *testing.T) {
	out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: 100, EndStitches: 60, Spread: GapSpreadMirrored})
	if got := out.Instruction.Row.Text(); err != nil || got != "[k2tog, k1, k2tog] 20 times" {
		t.Errorf("%q, %v", got, err)
	}
}
