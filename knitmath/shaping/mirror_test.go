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

// kfb by hand: its bar is its second stitch. Placed alike from both ends, all bars stood a stitch nearer to
// the end.
func TestMirroredBarsByHand(t *testing.T) {
	for _, c := range []struct {
		start, end   int
		construction stitch.Construction
		want         string
	}{
		{14, 16, stitch.Flat, "k2, kfb, k7, kfb, k3"},        // 3 stitches, bar, 8 stitches, bar, 3
		{13, 15, stitch.Flat, "k2, kfb, k6, kfb, k3"},        // 3, bar, 7, bar, 3
		{3, 5, stitch.Flat, "[kfb] twice, k1"},               // 1, bar, 1, bar, 1
		{18, 21, stitch.InTheRound, "[k2, kfb, k3] 3 times"}, // 3, bar, 6, bar, 6, bar, 3
		{21, 24, stitch.InTheRound, "[k3, kfb, k3] 3 times"}, // 7 between any two: no stitch is the middle of that
		{10, 11, stitch.Flat, "k4, kfb, k5"},                 // 5, bar, 5
	} {
		out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: c.start, EndStitches: c.end, Operation: stitch.KFB,
			Spread: GapSpreadMirrored, Construction: c.construction})
		if got := out.Instruction.Row.Text(); err != nil || got != c.want {
			t.Errorf("%d to %d: %q, %v, want %q", c.start, c.end, got, err, c.want)
		}
		t.Log(out.Summary(), out.Directions(), out.Notices)
	}
}

// No mirrored row lies farther off than was allowed, 3 stitches where nothing is said, unless it is the
// nearest there is and a notice says so. 126 to 206 lay 9.6 stitches off, 320 to 537 27, and 61 of 549 such
// rows more than 3, of which nothing was said.
func TestMirroredRowsKeepTheBound(t *testing.T) {
	planned, many, toldOf, items := 0, 0, 0, 0
	for start := 40; start <= 340; start += knittest.Sweep(3, 20) {
		for _, part := range []float64{.5, .55, .57, .6, .67, .75, .8, .9, 1.1, 1.33, 1.5, 1.63, 1.68, 1.8} {
			for _, construction := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
				in := EvenSpacingInput{StartStitches: start, EndStitches: int(part * float64(start)), Spread: GapSpreadMirrored,
					Construction: construction, EdgeStitches: new(0)}
				out, err := PlanEvenSpacing(in)
				if err != nil {
					continue
				}
				planned++
				items += out.Effort
				if out.Effort > mostPrinted {
					many++
				}
				if told(out, ManyItems) {
					toldOf++
				}
				checkSpacing(t, in, out)
				if off := out.GreatestDepartureStitches - out.LeastDepartureStitches; off > widerGapTolerance+1e-9 || off > 1 && told(out, ManyItems) {
					t.Errorf("%d to %d, construction %d: %q departs by %.2f where %.2f is possible", start, in.EndStitches, construction,
						out.Instruction.Row.Text(), out.GreatestDepartureStitches, out.LeastDepartureStitches)
				}
			}
		}
	}
	t.Logf("%d rows, %.1f items, %d of more than %d, %d told of", planned, float64(items)/float64(planned), many, mostPrinted, toldOf)
	if planned < knittest.Sweep(1_000, 150) {
		t.Errorf("%d rows", planned)
	}
}
