package shaping

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// lopsided counts flat rows that count right and that nobody would print.
type lopsided struct{ asked, ends, seam, clump, items, many int }

// look sees what the written row does, worked stitch by stitch.
func (l *lopsided) look(t *testing.T, in EvenSpacingInput, out EvenSpacing) {
	t.Helper()
	l.asked++
	l.items += out.Effort
	if told(out, ManyItems) {
		l.many++
	}
	if measure.Abs(out.FirstGapStitches-out.LastGapStitches) > 1 {
		l.ends++
	}
	k, plain := out.ChangeCount, out.PlainStitches
	// There is a stitch for every gap and for both ends.
	if out.Operation.Takes() > 0 && plain > k && min(out.FirstGapStitches, out.LastGapStitches) == 0 {
		l.seam++
	}
	if 2*plain < k || 2*plain > 3*k {
		return
	}
	run := 0
	for _, op := range knittest.OpWord(t, out.Instruction.Row, in.StartStitches) {
		if op != out.Operation {
			run = 0
			continue
		}
		if run++; run == 3 {
			l.clump++
			return
		}
	}
}

// Of flat rows of up to 400 stitches few have first and last plain stitches that differ by
// more than one, a decrease at the very end where the stitches allow for one beside it, or three
// changes on end where the gaps are about one.
func TestFlatRowsAreCentred(t *testing.T) {
	var all lopsided
	for start := 20; start <= 400; start += knittest.Sweep(7, 31) {
		for _, percent := range []int{50, 55, 60, 65, 67, 70, 75, 80, 85, 90, 93, 95, 97, 103, 105, 108, 110, 115, 118, 120, 125, 133, 140, 150} {
			for _, op := range knittest.ShapingOps {
				in := EvenSpacingInput{StartStitches: start, EndStitches: start * percent / 100, Operation: op}
				change := in.EndStitches - start
				if change*op.Net() <= 0 || change%op.Net() != 0 {
					continue
				}
				for edge := range 2 {
					in.EdgeStitches = &edge
					if out, err := PlanEvenSpacing(in); err == nil {
						all.look(t, in, out)
					}
				}
			}
		}
	}
	share := func(n int) float64 { return 100 * float64(n) / float64(all.asked) }
	t.Logf("%d rows: ends %.1f %%, seam %.1f %%, clump %.1f %%, %.2f items, %.1f %% of many", all.asked,
		share(all.ends), share(all.seam), share(all.clump), float64(all.items)/float64(all.asked), share(all.many))
	// Before rows were centred, over all of these starts: 7.1, 7.1 and 1.7 %, and 6.5 items a row.
	if all.asked < knittest.Sweep(20000, 4000) || all.ends > 0 || share(all.seam) > 0.4 || share(all.clump) > 0.1 ||
		float64(all.items)/float64(all.asked) > 6.4 {
		t.Error("flat rows are less centred than they were, or have more to remember")
	}
}

// Rows that a knitter read aloud, and how they are written: worked by hand. 5 stitches into 3
// leave a stitch for every second gap; 10 into 7 a gap of 1 twice, then one of 2; 11 into 13
// gaps of 5 and 6 by turns.
func TestCentredRows(t *testing.T) {
	for _, c := range []struct {
		start, end, edge int
		text             string
	}{
		{150, 90, 0, "[k2tog, k1, k2tog] 30 times"},
		{30, 18, 0, "[k2tog, k1, k2tog] 6 times"},
		{52, 32, 1, "k1, [k2tog, k1, k2tog] 10 times, k1"},
		{72, 54, 0, "[k1, k2tog, k1] 18 times"},
		{88, 104, 0, "[k3, M1L, k5, M1L, k3] 8 times"},
		{96, 88, 0, "[k5, k2tog, k5] 8 times"},
		{105, 92, 0, "[k3, k2tog, k3] 13 times, k1"},
		{100, 70, 0, "[[k1, k2tog] 3 times, k1] 10 times"},
		{112, 124, 1, "k6, [M1L, k9] 11 times, M1L, k7"},
		{90, 60, 0, "[k1, k2tog] 30 times"}, // a stitch for every gap and none for the other end
	} {
		out, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: c.start, EndStitches: c.end, EdgeStitches: &c.edge})
		if err != nil {
			t.Fatal(err)
		}
		if got := out.Instruction.Row.Text(); got != c.text {
			t.Errorf("%d to %d: %q, want %q", c.start, c.end, got, c.text)
		}
	}
}
