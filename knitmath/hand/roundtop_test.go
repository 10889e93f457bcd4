package hand

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A round top narrows gently: no two rounds running decrease, the first takes no more than one stitch of each section, and what does
// not fill a section stands at the end of the round until it does, as a knitter of the book's words leaves it.
func TestRoundTopsAreGentle(t *testing.T) {
	planned := 0
	for stitches := MinHandStitches; stitches <= 120; stitches++ {
		for rows := 20.0; rows <= 50; rows += float64(knittest.Sweep(2, 9)) {
			out, err := PlanMittenTop(MittenTopInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: rows}, HandStitches: &stitches, Kind: TopKindRound})
			if err != nil {
				t.Fatalf("%d: %v", stitches, err)
			}
			planned++
			section := 0
			for i, r := range out.Rounds {
				from, to := r.Instruction.StartStitches, r.Instruction.EndStitches
				if i > 0 && r.RoundNumber < out.Rounds[i-1].RoundNumber+2 {
					t.Fatalf("%d at %v rows: rounds %d and %d both decrease", stitches, rows, r.RoundNumber-1, r.RoundNumber)
				}
				if i == 0 {
					section = from / (from - to)
				}
				if sections := from / max(section-i, 2); from-to != sections && i < len(out.Rounds)-1 {
					t.Fatalf("%d at %v rows: %d to %d stitches, of sections of %d", stitches, rows, from, to, section-i)
				}
			}
			if first := out.Rounds[0]; first.Adjusts || (stitches-first.Instruction.EndStitches)*leastSection > stitches {
				t.Fatalf("%d at %v rows: the first round leaves %d", stitches, rows, first.Instruction.EndStitches)
			}
		}
	}
	if planned < knittest.Sweep(1_500, 400) {
		t.Errorf("%d planned", planned)
	}
}
