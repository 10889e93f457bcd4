package shaping

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// Every spacing of small rows is knit: it leaves the count it says, its gaps
// are even, its ends are half gaps, and mirrored rows are palindromes.
func TestEvenSpacingIsKnit(t *testing.T) {
	planned, refused := 0, 0
	for start := 1; start <= 22; start++ {
		for end := 1; end <= 2*start+1; end++ {
			for _, op := range knittest.ShapingOps {
				if end == start || (end-start)*op.Net() < 0 || (end-start)%op.Net() != 0 {
					continue
				}
				for _, cons := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
					for border := 0; border <= 2; border++ {
						if border > 0 && cons == stitch.InTheRound {
							continue
						}
						for order := GapSpreadGrouped; order <= GapSpreadMirrored; order++ {
							in := EvenSpacingInput{start, end, op, cons, &border, order, true}
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
		}
	}
	if planned < 10000 || refused < 1000 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

func checkSpacing(t *testing.T, in EvenSpacingInput, out EvenSpacing) {
	t.Helper()
	round := in.Construction == stitch.InTheRound
	m := knittest.CastOn(t, in.StartStitches, round)
	// A decrease to a few stitches in the round still works: the machine starts
	// from a plain round, so that every strand lies between worked stitches.
	row := out.Instruction.Row
	if err := m.Work(row); err != nil {
		t.Fatalf("%+v: %q cannot be knit: %v", in, row.Text(), err)
	}
	if m.StitchCount() != in.EndStitches {
		t.Fatalf("%+v: %q leaves %d stitches", in, row.Text(), m.StitchCount())
	}
	low, high, sum := 1<<30, -1, out.FirstGapStitches+out.LastGapStitches
	gaps := 0
	for _, g := range out.Gaps {
		low, high = min(low, g.Stitches), max(high, g.Stitches)
		sum += g.Stitches * g.Times
		gaps += g.Times
	}
	split := round && in.Spread == GapSpreadMirrored
	if split { // the two halves at the beginning of the round are one gap
		low, high = min(low, 2*out.FirstGapStitches), max(high, 2*out.FirstGapStitches)
	}
	if high-low > 1 && gaps > 0 {
		t.Fatalf("%+v: gaps from %d to %d", in, low, high)
	}
	if want := out.PlainStitches + 2**in.EdgeStitches; sum != want {
		t.Fatalf("%+v: gaps hold %d plain stitches, want %d", in, sum, want)
	}
	if !round && gaps > 0 {
		// Half a gap at each end, to the nearest stitch either way; one stitch
		// where an increase needs it.
		for _, end := range []int{out.FirstGapStitches - *in.EdgeStitches, out.LastGapStitches - *in.EdgeStitches} {
			if 2*end > high+2 || 2*end < low-2 {
				t.Fatalf("%+v: end gap %d beside inner gaps of %d to %d (%s)", in, end, low, high, row.Text())
			}
		}
	}
	if in.Spread == GapSpreadMirrored {
		word := knittest.OpWord(t, row, in.StartStitches)
		for i := range word {
			if word[i] != word[len(word)-1-i] {
				t.Fatalf("%+v: %q is no palindrome", in, row.Text())
			}
		}
	}
}

// A refusal is right only when no arrangement exists: the stitches do not go
// round, an increase finds no strand of its own, or no palindrome has these
// counts.
func checkRefusal(t *testing.T, in EvenSpacingInput, err error) {
	t.Helper()
	k := (in.EndStitches - in.StartStitches) / in.Operation.Net()
	border := *in.EdgeStitches
	inner := in.StartStitches - 2*border
	plain := inner - k*in.Operation.Takes()
	if inner < 1 || plain < 0 {
		return
	}
	if in.Operation.Takes() == 0 {
		strands := inner - 1
		if in.Construction == stitch.InTheRound {
			strands = inner
		} else if border > 0 {
			strands = inner + 1
		}
		if k > strands {
			return
		}
	}
	if in.Spread == GapSpreadMirrored && !palindromeExists(in, k, plain) {
		return
	}
	t.Fatalf("%+v refused though it can be worked: %v", in, err)
}

// palindromeExists tries every gap sequence whose inner gaps differ by at most
// one and that reads the same both ways.
func palindromeExists(in EvenSpacingInput, k, plain int) bool {
	least := 0
	if in.Operation.Takes() == 0 {
		least = 1
	}
	outer := least
	if *in.EdgeStitches > 0 {
		outer = 0
	}
	round := in.Construction == stitch.InTheRound
	for end := outer; 2*end <= plain; end++ {
		rest := plain - 2*end
		if k == 1 {
			if rest == 0 {
				return true
			}
			continue
		}
		small, larger := rest/(k-1), rest%(k-1)
		if small < least || (k-1)%2 == 0 && larger%2 == 1 {
			continue
		}
		if round {
			high := small
			if larger > 0 {
				high++
			}
			if max(high, 2*end)-min(small, 2*end) > 1 {
				continue
			}
		}
		return true
	}
	return false
}

// In the round no arrangement has a smaller sum of squared gaps (tried over all
// of them), and in the interleaved order every stretch of neighbouring gaps is
// as long as every other with as many gaps, to within one stitch: the property
// that Euclidean words alone have.
func TestEvenSpacingIsMostEven(t *testing.T) {
	for k := 1; k <= 6; k++ {
		for plain := 0; plain <= 14; plain++ {
			best := fewestSquares(k, plain)
			var gaps []int
			got := 0
			for i := range k {
				g := spread.Share(i, k, plain)
				gaps = append(gaps, g)
				got += g * g
			}
			if got != best {
				t.Errorf("k=%d plain=%d: gaps %v have squares %d, the best have %d", k, plain, gaps, got, best)
			}
			for length := 1; length < k; length++ {
				low, high := 1<<30, 0
				for at := range k {
					sum := 0
					for i := range length {
						sum += gaps[(at+i)%k]
					}
					low, high = min(low, sum), max(high, sum)
				}
				if high-low > 1 {
					t.Errorf("k=%d plain=%d: stretches of %d gaps hold %d to %d stitches", k, plain, length, low, high)
				}
			}
		}
	}
}

func fewestSquares(k, plain int) int {
	if k == 1 {
		return plain * plain
	}
	best := 1 << 30
	for g := 0; g <= plain; g++ {
		best = min(best, g*g+fewestSquares(k-1, plain-g))
	}
	return best
}

// Toussaint, "The Euclidean algorithm generates traditional musical rhythms",
// BRIDGES 2005, section 4, writes E(k,n) with x for an onset. E(3,8) and E(5,8)
// are quoted from it; the others are from memory. A rhythm is compared up to
// rotation, as the paper does for necklaces.
func TestEuclideanRhythms(t *testing.T) {
	for _, word := range []string{
		"x..x..x.", "x.xx.xx.",
		"x.x..", "x.xx", "x.x.x", "x.x.x.x", "x.x.x.x..", "x.xxxx", "x.xx.xx", "x.x.x.x.x", "x.x.x.x.x..",
		"x..x.x..x.x.", "x..x..x..x..x...", "x.xxxxxx", "x.xx.x.xx.x.", "x..x.x.x..x.x.x.", "x.xx.x.x.xx.x.x.",
		"x..x.x.x.x.x..x.x.x.x.x.", "x.xx.x.x.x.x.xx.x.x.x.x.",
	} {
		k := strings.Count(word, "x")
		n := len(word)
		var bySharing strings.Builder
		for i := range k {
			bySharing.WriteString("x" + strings.Repeat(".", spread.Share(i, k, n-k)))
		}
		for _, p := range []spread.Phase{spread.AtStart, spread.Centred} {
			bySpread := []byte(strings.Repeat(".", n))
			for i := range k {
				bySpread[spread.Place(i, k, n, p)] = 'x'
			}
			if !rotation(string(bySpread), word) {
				t.Errorf("spread gives %s for E(%d,%d), want %s", bySpread, k, n, word)
			}
		}
		if !rotation(bySharing.String(), word) {
			t.Errorf("share gives %s for E(%d,%d), want %s", bySharing.String(), k, n, word)
		}
	}
}

func rotation(a, b string) bool { return len(a) == len(b) && strings.Contains(a+a, b) }

// Worked by hand, as a pattern would print them.
func TestEvenSpacingText(t *testing.T) {
	two := 2
	for _, c := range []struct {
		in   EvenSpacingInput
		text string
	}{
		// 54 - 4*2 = 46 plain; 46/4 = 11.5 a gap, 5.75 at the ends: 5, 12+12+11, 6.
		{EvenSpacingInput{StartStitches: 54, EndStitches: 50}, "k5, [k2tog, k12] twice, k2tog, k11, k2tog, k6"},
		// 80 plain over 10 strands in the round: 8 each.
		{EvenSpacingInput{StartStitches: 80, EndStitches: 90, Construction: stitch.InTheRound}, "[k8, m1l] 10 times"},
		// Percentage system's first round on 268: a quarter, (k2, k2tog).
		{EvenSpacingInput{StartStitches: 268, EndStitches: 201, Construction: stitch.InTheRound}, "[k2, k2tog] 67 times"},
		// 20 - 4 = 16 in the middle, one increase at 8, edges of 2.
		{EvenSpacingInput{StartStitches: 20, EndStitches: 21, EdgeStitches: &two}, "k10, m1l, k10"},
		{EvenSpacingInput{StartStitches: 10, EndStitches: 5}, "[k2tog] 5 times"},
		{EvenSpacingInput{StartStitches: 40, EndStitches: 32, Operation: stitch.P2tog}, "p1, [p2tog, p3] 7 times, p2tog, p2"},
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

func TestEvenSpacingRefusals(t *testing.T) {
	one := 1
	big := gauge.MaxEdges + 1
	ten := 10
	for name, c := range map[string]struct {
		in   EvenSpacingInput
		want []string
	}{
		"empty": {EvenSpacingInput{}, []string{"start_stitches REQUIRED", "end_stitches REQUIRED"}},
		"negative": {EvenSpacingInput{StartStitches: -1, EndStitches: -2},
			[]string{"start_stitches OUT_OF_RANGE", "end_stitches OUT_OF_RANGE"}},
		"too large": {EvenSpacingInput{StartStitches: stitch.MaxStitches + 1, EndStitches: stitch.MaxStitches + 2},
			[]string{"start_stitches OUT_OF_RANGE", "end_stitches OUT_OF_RANGE"}},
		"equal": {EvenSpacingInput{StartStitches: 5, EndStitches: 5},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"no shaping": {EvenSpacingInput{StartStitches: 5, EndStitches: 6, Operation: stitch.Knit}, []string{"operation UNKNOWN_VALUE"}},
		"unknown op": {EvenSpacingInput{StartStitches: 5, EndStitches: 6, Operation: 250}, []string{"operation UNKNOWN_VALUE"}},
		"wrong way": {EvenSpacingInput{StartStitches: 5, EndStitches: 6, Operation: stitch.K2tog},
			[]string{"operation CONTRADICTORY"}},
		"odd by doubles": {EvenSpacingInput{StartStitches: 20, EndStitches: 17, Operation: stitch.CDD},
			[]string{"end_stitches INFEASIBLE", "operation INFEASIBLE"}},
		"edge in round": {EvenSpacingInput{StartStitches: 20, EndStitches: 18, Construction: stitch.InTheRound, EdgeStitches: &one},
			[]string{"edge_stitches CONTRADICTORY"}},
		"edge too large": {EvenSpacingInput{StartStitches: 20, EndStitches: 18, EdgeStitches: &big},
			[]string{"edge_stitches OUT_OF_RANGE"}},
		"all edge": {EvenSpacingInput{StartStitches: 20, EndStitches: 18, EdgeStitches: &ten},
			[]string{"start_stitches INFEASIBLE", "edge_stitches INFEASIBLE"}},
		"too many": {EvenSpacingInput{StartStitches: 20, EndStitches: 9},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"no palindrome": {EvenSpacingInput{StartStitches: 20, EndStitches: 21, Construction: stitch.InTheRound,
			Spread: GapSpreadMirrored, Operation: stitch.KFB},
			[]string{"start_stitches INFEASIBLE", "end_stitches INFEASIBLE", "spread INFEASIBLE"}},
		"enums": {EvenSpacingInput{StartStitches: 20, EndStitches: 18, Construction: 3, Spread: -1},
			[]string{"construction UNKNOWN_VALUE", "spread UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanEvenSpacing(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// At the limit the answer stays bounded: the longest row the service can be
// asked for.
func TestEvenSpacingAtTheLimit(t *testing.T) {
	for _, end := range []int{5001, 6667, 7071, 9999} {
		for order := GapSpreadGrouped; order <= GapSpreadInterleaved; order++ {
			in := EvenSpacingInput{StartStitches: stitch.MaxStitches, EndStitches: end, Spread: order}
			out, err := PlanEvenSpacing(in)
			if err != nil {
				t.Fatal(err)
			}
			m := knittest.CastOn(t, in.StartStitches, false)
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
		in := EvenSpacingInput{start, end, stitch.Op(op), stitch.Construction(cons), &border, GapSpread(order), false}
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
