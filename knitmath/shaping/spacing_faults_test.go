package shaping

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

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
	if in.Spread == GapSpreadMirrored && !palindromeExists(in, k, plain, 0) && !palindromeExists(in, k, plain, barOf(in.Operation)) {
		return
	}
	t.Fatalf("%+v refused though it can be worked: %v", in, err)
}

// palindromeExists tries every gap sequence whose inner gaps differ by at most
// one and that reads the same both ways, with bars that stand so many stitches after their change.
func palindromeExists(in EvenSpacingInput, k, plain, barred int) bool {
	least := 0
	if in.Operation.Takes() == 0 {
		least = 1
	}
	outer := least
	if *in.EdgeStitches > 0 {
		outer = 0
	}
	round := in.Construction == stitch.InTheRound
	for end := outer; 2*end+barred <= plain; end++ {
		rest := plain - 2*end - barred
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
			if across := 2*end + barred; max(high, across)-min(small, across) > 1 {
				continue
			}
		}
		return true
	}
	return false
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
		"no palindrome": {EvenSpacingInput{StartStitches: 21, EndStitches: 22, Construction: stitch.InTheRound,
			Spread: GapSpreadMirrored, Operation: stitch.M1L},
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

// A refusal says what else would do.
func TestEvenSpacingRemedies(t *testing.T) {
	const rest = "work the rest in another row"
	for want, in := range map[string]EvenSpacingInput{
		// 3 stitches are a k2tog and one more.
		"k2tog is needed twice and fits at most once, which gives 2 stitches; " +
			"use a double decrease (k3tog, sssk, CDD), or " + rest: {StartStitches: 3, EndStitches: 1},
		// 20 stitches are 6 times 3, which leaves 20 - 12.
		"CDD is needed 7 times and fits at most 6 times, which gives 8 stitches; " + rest: {StartStitches: 20, EndStitches: 6,
			Operation: stitch.CDD},
		// 4 stitches have 3 strands between them.
		"M1L is needed 4 times and fits at most 3 times, which gives 7 stitches; " +
			"two increases cannot share the strand between two stitches: " +
			"use kfb, which is worked into a stitch, or " + rest: {StartStitches: 4, EndStitches: 8},
		"kfb is needed 5 times and fits at most 4 times, which gives 8 stitches; " + rest: {StartStitches: 4, EndStitches: 9,
			Operation: stitch.KFB},
		// A single stitch has no strand beside it; between two edges of one neither
		// has a k2tog, but narrower edges would do.
		"M1L is needed once and does not fit; two increases cannot share the strand between two stitches: " +
			"use kfb, which is worked into a stitch": {StartStitches: 1, EndStitches: 2},
		"k2tog is needed once and does not fit; edge_stitches may be at most 0": {StartStitches: 3, EndStitches: 2, EdgeStitches: new(1)},
		// 47 is odd, and a double decrease takes 2.
		"k2tog is needed 47 times and fits at most 44 times, which gives 44 stitches; " +
			"use a double decrease (k3tog, sssk, CDD) to 40 or 42 stitches, or " + rest: {StartStitches: 88, EndStitches: 41},
		// 3, 5, 9, 10: kfb makes 6 of 3 at most.
		"M1L is needed 7 times and fits at most twice, which gives 5 stitches; " +
			"work it over 3 rows, to 5, then 9, then 10": {StartStitches: 3, EndStitches: 10},
		"k3tog changes the count by 2 each, and 3 is not a multiple of that; end with 16 or 18 stitches": {StartStitches: 20, EndStitches: 17,
			Operation: stitch.K3tog},
	} {
		_, err := PlanEvenSpacing(in)
		var refusal *fault.InputError
		if !errors.As(err, &refusal) || refusal.Violations[0].Detail != want {
			t.Errorf("%d to %d: %v, want %q", in.StartStitches, in.EndStitches, err, want)
		}
	}
}

// An operation that goes the other way is said to, also where it would change more
// than is wanted.
func TestOperationTheOtherWay(t *testing.T) {
	for word, in := range map[string]EvenSpacingInput{
		"is CDD, which removes stitches;": {StartStitches: 5, EndStitches: 6, Operation: stitch.CDD},
		"is M1R, which adds stitches;":    {StartStitches: 6, EndStitches: 5, Operation: stitch.M1R},
	} {
		_, err := PlanEvenSpacing(in)
		knittest.WantViolations(t, err, "operation CONTRADICTORY")
		if !strings.Contains(err.Error(), word) {
			t.Errorf("%v, want %q", err, word)
		}
	}
}

// The widest edges that are said to leave a stitch between them do, and no wider.
func TestEdgeRemedyFits(t *testing.T) {
	for start := 2; start <= 30; start++ {
		_, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: start, EndStitches: start + 1, EdgeStitches: &start})
		var most int
		var refusal *fault.InputError
		if !errors.As(err, &refusal) {
			t.Fatalf("%d stitches, all edge: %v", start, err)
		}
		if _, err := fmt.Sscanf(refusal.Violations[0].Detail, "the two edges leave no stitches between them; "+
			"edge_stitches may be at most %d", &most); err != nil || 2*most >= start || 2*(most+1) < start {
			t.Errorf("%d stitches: %v", start, refusal)
		}
	}
}
