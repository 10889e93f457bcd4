package shaping

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Worked by hand, as a pattern would print them.
func TestEvenSpacingText(t *testing.T) {
	two := 2
	for _, c := range []struct {
		in   EvenSpacingInput
		text string
	}{
		// 54 - 4*2 = 46 plain; 46/4 = 11.5 a gap, 5.75 at the ends: 5, 12+12+11, 6. With 12
		// for all three and 5 at both ends no change lies further than 0.75 from its place.
		{EvenSpacingInput{StartStitches: 54, EndStitches: 50, Spread: GapSpreadGrouped}, "k5, [k2tog, k12] twice, k2tog, k11, k2tog, k6"},
		{EvenSpacingInput{StartStitches: 54, EndStitches: 50}, "k5, [k2tog, k12] 3 times, k2tog, k5"},
		// 80 plain over 10 strands in the round: 8 each.
		{EvenSpacingInput{StartStitches: 80, EndStitches: 90, Construction: stitch.InTheRound}, "[k8, M1L] 10 times"},
		// Percentage system's first round on 268: a quarter, (k2, k2tog).
		{EvenSpacingInput{StartStitches: 268, EndStitches: 201, Construction: stitch.InTheRound}, "[k2, k2tog] 67 times"},
		// 20 - 4 = 16 in the middle, one increase at 8, edges of 2.
		{EvenSpacingInput{StartStitches: 20, EndStitches: 21, EdgeStitches: &two}, "k10, M1L, k10"},
		{EvenSpacingInput{StartStitches: 10, EndStitches: 5}, "[k2tog] 5 times"},
		{EvenSpacingInput{StartStitches: 40, EndStitches: 32, Operation: stitch.P2tog, Spread: GapSpreadGrouped},
			"p1, [p2tog, p3] 7 times, p2tog, p2"},
		{EvenSpacingInput{StartStitches: 40, EndStitches: 32, Operation: stitch.P2tog}, "[p1, p2tog, p2] 8 times"},
		// 100 to 60: two groups would take a third from one part and half from the rest.
		{EvenSpacingInput{StartStitches: 100, EndStitches: 60, Construction: stitch.InTheRound}, "[k1, k2tog, k2tog] 20 times"},
		{EvenSpacingInput{StartStitches: 200, EndStitches: 134, Construction: stitch.InTheRound}, "[k1, k2tog] 66 times, k2"},
	} {
		out, err := PlanEvenSpacing(c.in)
		if err != nil {
			t.Errorf("%+v: %v", c.in, err)
			continue
		}
		if got := out.Instruction.Row.Text(); got != c.text {
			t.Errorf("%+v: %q, want %q", c.in, got, c.text)
		}
	}
}

// At the limit the answer stays bounded: the longest row the service can be
// asked for.
func TestEvenSpacingAtTheLimit(t *testing.T) {
	for _, end := range []int{5001, 6667, 7071, 9999} {
		for variant := range 4 {
			in := EvenSpacingInput{StartStitches: stitch.MaxStitches, EndStitches: end,
				Construction: stitch.Construction(1 + variant/2), Spread: GapSpread(1 + variant%2)}
			out, err := PlanEvenSpacing(in)
			if err != nil {
				t.Fatal(err)
			}
			m := knittest.CastOn(t, in.StartStitches, variant/2 == 1)
			if err := m.Work(out.Instruction.Row); err != nil || m.StitchCount() != end {
				t.Fatalf("%+v: %d stitches, %v", in, m.StitchCount(), err)
			}
			if n := len(out.Instruction.Row.Text()); n > 100_000 {
				t.Errorf("%+v: text of %d characters", in, n)
			}
		}
	}
}

func FuzzPlanEvenSpacing(f *testing.F) {
	f.Add(54, 50, uint8(0), int32(0), 0, int32(0))
	f.Add(20, 30, uint8(stitch.M1L), int32(2), 1, int32(3))
	f.Fuzz(func(t *testing.T, start, end int, op uint8, cons int32, border int, order int32) {
		in := EvenSpacingInput{start, end, stitch.Op(op), stitch.Construction(cons), &border, GapSpread(order), nil, false}
		out, err := PlanEvenSpacing(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		checkSpacing(t, in, out)
	})
}

func BenchmarkEvenSpacingGrouped(b *testing.B) {
	b.ReportAllocs()
	in := EvenSpacingInput{StartStitches: 10_000, EndStitches: 9_990}
	for b.Loop() {
		if _, err := PlanEvenSpacing(in); err != nil {
			b.Fatal(err)
		}
	}
}

// Ten times the stitches and as many changes: the same answer length, so the
// same time as BenchmarkEvenSpacingGrouped.
func BenchmarkEvenSpacingGroupedShort(b *testing.B) {
	in := EvenSpacingInput{StartStitches: 1_000, EndStitches: 990}
	for b.Loop() {
		if _, err := PlanEvenSpacing(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkEvenSpacingInterleaved(b *testing.B) {
	in := EvenSpacingInput{StartStitches: 10_000, EndStitches: 9_300, Spread: GapSpreadInterleaved}
	for b.Loop() {
		if _, err := PlanEvenSpacing(in); err != nil {
			b.Fatal(err)
		}
	}
}
