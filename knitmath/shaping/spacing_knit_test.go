package shaping

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Every spacing of small rows is knit: it leaves the count it says, its gaps
// are even, its ends are half gaps, and mirrored rows are palindromes.
func TestEvenSpacingIsKnit(t *testing.T) {
	planned, refused := 0, 0
	for start := 1; start <= knittest.Sweep(22, 15); start++ {
		for end := 1; end <= 2*start+1; end++ {
			for _, op := range knittest.ShapingOps {
				if end == start || (end-start)*op.Net() < 0 || (end-start)%op.Net() != 0 {
					continue
				}
				for _, in := range spacingVariants(EvenSpacingInput{StartStitches: start, EndStitches: end, Operation: op}) {
					out, err := PlanEvenSpacing(in)
					if err != nil {
						refused++
						checkRefusal(t, in, err)
						continue
					}
					planned++
					checkSpacing(t, in, out)
				}
			}
		}
	}
	if planned < knittest.Sweep(10000, 5000) || refused < knittest.Sweep(1000, 500) {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

// spacingVariants are a spacing in every spread, flat with edges of up to two
// stitches and in the round.
func spacingVariants(in EvenSpacingInput) []EvenSpacingInput {
	var variants []EvenSpacingInput
	for order := GapSpreadGrouped; order <= GapSpreadLeastEffort; order++ {
		for border := range 3 {
			in.Construction, in.EdgeStitches, in.Spread, in.WithOutline = stitch.Flat, &border, order, true
			variants = append(variants, in)
		}
		in.Construction, in.EdgeStitches = stitch.InTheRound, new(0)
		variants = append(variants, in)
	}
	return variants
}

func checkSpacing(t *testing.T, in EvenSpacingInput, out EvenSpacing) {
	t.Helper()
	// A decrease to a few stitches in the round still works: the machine starts
	// from a plain round, so that every strand lies between worked stitches.
	m := knittest.CastOn(t, in.StartStitches, in.Construction == stitch.InTheRound)
	row := out.Instruction.Row
	if err := m.Work(row); err != nil {
		t.Fatalf("%+v: %q cannot be knit: %v", in, row.Text(), err)
	}
	if m.StitchCount() != in.EndStitches {
		t.Fatalf("%+v: %q leaves %d stitches", in, row.Text(), m.StitchCount())
	}
	checkSpacingGaps(t, in, out)
	checkSpacingEffort(t, in, out)
	if in.Spread == GapSpreadMirrored {
		word := knittest.OpWord(t, row, in.StartStitches)
		in.Operation = out.Operation
		unlike := slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == BarsUnlike })
		if k, plain := out.ChangeCount, out.PlainStitches; unlike == palindromeExists(in, k, plain, barOf(in.Operation)) {
			t.Fatalf("%+v: %q: bars unlike is %v", in, row.Text(), unlike)
		}
		if !unlike {
			word = seen(word)
		}
		for i := range word {
			if word[i] != word[len(word)-1-i] {
				t.Fatalf("%+v: %q is no palindrome", in, row.Text())
			}
		}
	}
}

// seen is what is seen in the row of what was worked: of kfb and pfb a stitch like those beside it, and
// then their bar. Common practice.
func seen(word []stitch.Op) []stitch.Op {
	var out []stitch.Op
	for _, op := range word {
		switch op {
		case stitch.KFB:
			out = append(out, stitch.Knit)
		case stitch.PFB:
			out = append(out, stitch.Purl)
		}
		out = append(out, op)
	}
	return out
}

// checkSpacingGaps: the gaps hold all plain stitches, differ by one at most, and
// the ends of a flat row are half gaps.
func checkSpacingGaps(t *testing.T, in EvenSpacingInput, out EvenSpacing) {
	t.Helper()
	low, high, sum := 1<<30, -1, out.FirstGapStitches+out.LastGapStitches
	for _, g := range out.Gaps {
		low, high = min(low, g.Stitches), max(high, g.Stitches)
		sum += g.Stitches * g.Times
	}
	round := in.Construction == stitch.InTheRound
	if round && in.Spread == GapSpreadMirrored { // the two halves at the beginning of the round are one gap
		across := out.FirstGapStitches + out.LastGapStitches
		low, high = min(low, across), max(high, across)
	}
	if want := out.PlainStitches + 2**in.EdgeStitches; sum != want {
		t.Fatalf("%+v: gaps hold %d plain stitches, want %d", in, sum, want)
	}
	if len(out.Gaps) == 0 {
		return
	}
	if in.Spread == GapSpreadLeastEffort || in.Spread == GapSpreadUnspecified {
		return // checkSpacingEffort says how uneven they may be
	}
	if high-low > 1 {
		t.Fatalf("%+v: gaps from %d to %d", in, low, high)
	}
	// Half a gap at each end, to the nearest stitch either way; one stitch where an
	// increase needs it.
	for _, end := range []int{out.FirstGapStitches + out.bar - *in.EdgeStitches, out.LastGapStitches - *in.EdgeStitches} {
		if !round && (2*end > high+2 || 2*end < low-2) {
			t.Fatalf("%+v: end gap %d beside inner gaps of %d to %d (%s)", in, end, low, high, out.Instruction.Row.Text())
		}
	}
}
