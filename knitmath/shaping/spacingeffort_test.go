package shaping

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// checkSpacingEffort reads the places of the changes off the written row, worked
// stitch by stitch: how far they lie from where equal gaps would have them, and that
// an easy row stays within what was allowed.
func checkSpacingEffort(t *testing.T, in EvenSpacingInput, out EvenSpacing) {
	t.Helper()
	row := out.Instruction.Row
	low, high := math.Inf(1), math.Inf(-1)
	kept, changes := -fault.Or(in.EdgeStitches, 0), 0
	for _, op := range knittest.OpWord(t, row, in.StartStitches) {
		if op != out.Operation {
			kept++
			continue
		}
		due := (float64(changes) + 0.5) * float64(out.PlainStitches) / float64(out.ChangeCount)
		low, high = min(low, float64(kept)-due), max(high, float64(kept)-due)
		changes++
	}
	departure := max(high, -low)
	if in.Construction == stitch.InTheRound {
		departure = (high - low) / 2
	}
	if changes != out.ChangeCount || math.Abs(departure-out.GreatestDepartureStitches) > 0.5/float64(changes) {
		t.Fatalf("%+v: %q departs by %v, said %v", in, row.Text(), departure, out.GreatestDepartureStitches)
	}
	if out.Effort != row.Items() {
		t.Fatalf("%+v: %q has %d items, said %d", in, row.Text(), row.Items(), out.Effort)
	}
	easy := in.Spread == GapSpreadUnspecified || in.Spread == GapSpreadLeastEffort
	tolerance := fault.Or(in.ToleranceStitches, widerGapTolerance) // where it is not said, and the usual one has no row to print
	if easy && out.GreatestDepartureStitches > out.LeastDepartureStitches+tolerance+1e-9 {
		t.Fatalf("%+v: %q departs by %v, and %v is possible", in, row.Text(), out.GreatestDepartureStitches, out.LeastDepartureStitches)
	}
}

// Rows as garments have them: 96 of 100 have an easy row, as was written down before
// the code was; and no easy row has more items than the most even one.
func TestOrdinaryRowsAreEasy(t *testing.T) {
	for _, construction := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
		asked, easy := 0, 0
		for start := 40; start <= 320; start += knittest.Sweep(3, 13) {
			for _, part := range []float64{.5, .6, .67, .75, .8, .9, .93, .95, 1.04, 1.1, 1.15, 1.2, 1.33} {
				in := EvenSpacingInput{StartStitches: start, EndStitches: int(math.Ceil(float64(start) * part)), Construction: construction}
				out, err := PlanEvenSpacing(in)
				if err != nil {
					t.Fatal(err)
				}
				in.EdgeStitches = new(0)
				checkSpacingEffort(t, in, out)
				asked++
				if !told(out, ManyItems) {
					easy++
				}
				in.Spread = GapSpreadInterleaved
				if even, err := PlanEvenSpacing(in); err != nil || out.Effort > even.Effort {
					t.Errorf("%d to %d: %q for %q, %v", start, in.EndStitches, out.Instruction.Row.Text(), even.Instruction.Row.Text(), err)
				}
			}
		}
		t.Logf("construction %d: %d of %d rows are easy", construction, easy, asked)
		if easy*100 < asked*96 {
			t.Errorf("construction %d: %d of %d rows are easy", construction, easy, asked)
		}
	}
}

func told(out EvenSpacing, reason report.Reason) bool {
	for _, n := range out.Notices {
		if n.Reason == reason {
			return true
		}
	}
	return false
}

// Equal gaps nearby are named, and are so when they are asked for.
func TestEqualGapsNear(t *testing.T) {
	for _, c := range []struct {
		start, end int
		round      bool
		want       string
	}{
		{100, 92, true, "10 instead of 8 give 90 stitches: [k8, k2tog] 10 times"},
		{96, 88, true, ""},
		{97, 89, true, ""}, // a prime
		{98, 111, false, "14 instead of 13 give 112 stitches: [k3, M1L, k4] 14 times"},
		{100, 107, false, ""}, // k8, [M1L, k14] 6 times, M1L, k8 is no harder than k10, [M1L, k20] 4 times, M1L, k10
		{94, 98, false, ""},   // k11, [M1L, k24] 3 times, M1L, k11: between changes all gaps are equal
		{83, 81, false, ""},   // one change has no gap that could be equal to another
	} {
		in := EvenSpacingInput{StartStitches: c.start, EndStitches: c.end}
		if c.round {
			in.Construction = stitch.InTheRound
		}
		out, err := PlanEvenSpacing(in)
		if err != nil {
			t.Fatal(err)
		}
		var said string
		for _, n := range out.Notices {
			if n.Reason == EqualGapsNear {
				said = n.Description
			}
		}
		if c.want == "" && said != "" || !strings.Contains(said, c.want) {
			t.Errorf("%d to %d: %q, want %q", c.start, c.end, said, c.want)
		}
	}
}
