package shaping

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Every answer tells its figures, what to do, and where they come from.
func TestAnswersInWords(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 28}
	even, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: 20, EndStitches: 24})
	if err != nil {
		t.Fatal(err)
	}
	round, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: 21, EndStitches: 17, Construction: stitch.InTheRound})
	if err != nil {
		t.Fatal(err)
	}
	taper, err := PlanTaper(TaperInput{StartStitches: 40, EndStitches: 30, HeightRows: new(28), Gauge: standard,
		EvenBeforeRows: new(2), EvenAfterRows: new(2)})
	if err != nil {
		t.Fatal(err)
	}
	tube, err := PlanTaper(TaperInput{StartStitches: 30, EndStitches: 32, HeightRows: new(9), Construction: stitch.InTheRound})
	if err != nil {
		t.Fatal(err)
	}
	side, err := PlanShapedSide(ShapedSideInput{StartStitches: 40, Gauge: standard, Construction: stitch.InTheRound,
		Points: []SidePoint{{HeightRows: new(10), Stitches: 36}, {HeightRows: new(11), Stitches: 36}, {HeightRows: new(28), Stitches: 40}}})
	if err != nil {
		t.Fatal(err)
	}
	const between = "The round begins between the two shaped edges, in the middle of an underarm, say."
	for name, c := range map[string]struct {
		answer     report.Answer
		summary    string
		directions []string
	}{
		// 20 stitches for 4 strands: 5 each, of which 2 and 3 lie at the ends.
		"even": {even, "Increase 4 stitches evenly across one row, from 20 to 24. 5 stitches between changes.",
			[]string{"Increase row: [k2, M1L, k3] 4 times (24 stitches)."}},
		// 4 decreases take 8 of 21; 13 others in 4 gaps of 3 and one over, which makes the
		// gap across the beginning one of 4.
		"round": {round, "Decrease 4 stitches evenly across one round, from 21 to 17. 3 or 4 stitches between changes.",
			[]string{"Decrease round: [k3, k2tog] 4 times, k1 (17 stitches)."}},
		// Every 4th row is the one interval that 5 rows can keep to; from row 7 on it departs
		// as far below the line at first as above it at last. 28 rows are 10 cm. After row 23
		// there are 30 stitches, and the line has 40 - 10 * 20/24.
		"taper": {taper, "From 40 to 30 stitches over 28 rows (10 cm): 5 shaping rows, 2 stitches each, " +
			"no edge more than 0.83 stitches from a straight line.",
			[]string{"Work 6 rows even.", "Row 7 (RS, decrease row): k1, ssk, k to last 3 sts, k2tog, k1.",
				"Repeat the decrease row every 4th row 4 more times: 30 stitches.",
				"Work 5 rows even."}},
		// After round 4 the line has 2 * 4/9 more than 30.
		"tube": {tube, "From 30 to 32 stitches over 9 rounds: 1 shaping round of 2 stitches, " +
			"no edge more than 0.44 stitches from a straight line.",
			[]string{between, "Work 4 rounds even.",
				"Round 5 (increase round): k1, M1L, k to last st, M1R, k1: 32 stitches.", "Work 4 rounds even."}},
		// After round 3 the line has 4 * 3/10 fewer than 40. Every 5th round would lie nearer,
		// and an even number is liked better.
		"side": {side, "From 40 to 36, kept for 1 round, to 40 stitches over 28 rounds (10 cm): 4 shaping rounds, " +
			"no edge more than 0.6 stitches from the straight lines between the points.",
			[]string{between, "Work 3 rounds even.", "Round 4 (decrease round): k1, ssk, k to last 3 sts, k2tog, k1.",
				"Repeat the decrease round on the following 4th round: 36 stitches.", "Work 7 rounds even.",
				"Round 16 (increase round): k1, M1L, k to last st, M1R, k1.",
				"Repeat the increase round on the following 8th round: 40 stitches.", "Work 4 rounds even."}},
	} {
		if got := c.answer.Summary(); got != c.summary {
			t.Errorf("%s: got %q, want %q", name, got, c.summary)
		}
		if got, want := strings.Join(c.answer.Directions(), "\n"), strings.Join(c.directions, "\n"); got != want {
			t.Errorf("%s: got\n%s\nwant\n%s", name, got, want)
		}
		for _, s := range c.answer.Sources() {
			if s.Figure == "" || s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%s: source %+v", name, s)
			}
		}
		if len(c.answer.Sources()) < 2 {
			t.Errorf("%s: %d sources", name, len(c.answer.Sources()))
		}
	}
}

// An even round is the row that PlanEvenSpacing writes, and refused only where a
// mirrored one does not exist.
func TestEvenRound(t *testing.T) {
	for start := 4; start <= 40; start++ {
		for end := (start + 1) / 2; end < start; end++ {
			for order := GapSpreadGrouped; order <= GapSpreadLeastEffort; order++ {
				got, ok := EvenRound(start, end, stitch.K2tog, order)
				want, err := PlanEvenSpacing(EvenSpacingInput{StartStitches: start, EndStitches: end, Operation: stitch.K2tog,
					Construction: stitch.InTheRound, Spread: order})
				if ok != (err == nil) || ok && got.Row.Text() != want.Instruction.Row.Text() {
					t.Fatalf("%d to %d, spread %d: %q, %v; want %q, %v", start, end, order, got.Row.Text(), ok,
						want.Instruction.Row.Text(), err)
				}
			}
		}
	}
}
