package shaping

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// graded asks for sizes of start, end and rows.
func graded(sizes ...[3]int) GradedTaperInput {
	var in GradedTaperInput
	for _, s := range sizes {
		in.Sizes = append(in.Sizes, TaperSize{StartStitches: s[0], EndStitches: s[1], HeightRows: &s[2]})
	}
	return in
}

// Sleeves by hand. 44 to 64 and 46 to 66 in 80 rows are 10 shaping rows, one every 8
// rows; 48 to 72 and 50 to 74 in 72 rows are 12, one every 6. Before row 5 the line of
// the first has come to 45, and after row 3 that of the third to 49 where there are 50.
func TestGradedTaperByHand(t *testing.T) {
	out, err := PlanGradedTaper(graded([3]int{44, 64, 80}, [3]int{46, 66, 80}, [3]int{48, 72, 72}, [3]int{50, 74, 72}))
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"Work 4 (4, 2, 2) rows even.",
		"Increase row (RS): k1, M1L, k to last st, M1R, k1.",
		"Repeat the increase row every 8th (8th, 6th, 6th) row 9 (9, 11, 11) more times: 64 (66, 72, 74) stitches.",
		"Work 3 rows even.",
	}
	if got := strings.Join(out.Directions(), "\n"); got != strings.Join(want, "\n") {
		t.Errorf("%s", got)
	}
	const summary = "4 sizes, from 44 (46, 48, 50) to 64 (66, 72, 74) stitches over 80 (80, 72, 72) rows: " +
		"10 (10, 12, 12) shaping rows, 2 stitches each, no edge more than 0.5 stitches from a straight line."
	if got := out.Summary(); got != summary {
		t.Errorf("%s", got)
	}
	// 1 for the row and 2 for the run; four runs and a change.
	if s := out.Sizes[0]; s.Effort != 3 || out.Effort != 10 || fmt.Sprint(s.Intervals) != "[{[8] 9}]" || out.RightSideRow.EndStitches != 46 {
		t.Errorf("%+v", out)
	}
}

// Sizes that go the other way or keep their width have sentences of their own, in which the others have a
// dash, and the counts are those on the needle then.
func TestSizesThatAreNotAlike(t *testing.T) {
	out, err := PlanGradedTaper(graded([3]int{44, 64, 80}, [3]int{46, 46, 80}, [3]int{48, 40, 72}, [3]int{50, 74, 72}))
	if err != nil {
		t.Fatal(err)
	}
	want := []string{
		"Where your size has -, skip that part.",
		"1st and 4th sizes only:",
		"Work 4 (-, -, 2) rows even.",
		"Increase row (RS): k1, M1L, k to last st, M1R, k1.",
		"Repeat the increase row every 8th (-, -, 6th) row 9 (-, -, 11) more times: 64 (-, -, 74) stitches.",
		"Work 3 rows even.",
		"3rd size only:",
		"Work 8 rows even.",
		"Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1.",
		"Repeat the decrease row every 18th row 3 more times: 40 stitches.",
		"Work 9 rows even.",
		"2nd size only:",
		"Work 80 rows even.",
	}
	if got := out.Directions(); !slices.Equal(got, want) {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
	if r := out.OppositeRow; r == nil || r.StartStitches != 48 || r.EndStitches != 46 ||
		fmt.Sprint(out.Runs) != "[{[8 0 0 6] [] [9 0 0 11]}]" {
		t.Errorf("%v, %v", r, out.Runs)
	}
}

// Words where the numbers are 0, 1 or the same.
func TestGradedWords(t *testing.T) {
	round := func(in GradedTaperInput) GradedTaperInput { in.Construction = stitch.InTheRound; return in }
	const rightLast = "|Note: the last row is a right-side row; what comes next begins with a wrong-side row."
	const begins = "The round begins between the two shaped edges, in the middle of an underarm, say.|"
	backwards := graded([3]int{30, 34, 12}, [3]int{30, 36, 16})
	backwards.FirstSide = stitch.WrongSide
	for want, in := range map[string]GradedTaperInput{
		// One shaping row in all sizes.
		"Work 4 rows even.|Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1: 18 (28) stitches.|Work 2 rows even." +
			rightLast: graded([3]int{20, 18, 7}, [3]int{30, 28, 7}),
		// Two in all sizes; two and three.
		begins + "Work 1 round even.|Increase round: k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase round every round once more: 24 stitches.": round(graded([3]int{20, 24, 3}, [3]int{20, 24, 3})),
		"Work 3 (1) rows even, ending with a WS row.|Increase row (RS): k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase row every 6th row 1 (2) more times: 34 (36) stitches.|Work 2 rows even." + rightLast: backwards,
		// Every round, and a size that goes without.
		begins + "Increase round: k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase round every round twice more: 26 (28) stitches.": round(graded(
			[3]int{20, 26, 3}, [3]int{22, 28, 3})),
		"Where your size has -, skip that part.|" + begins + "Work - (1) rounds even.|Increase round: k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase round every round 2 (-) more times: 26 (24) stitches.|Work - (1) rounds even.": round(graded(
			[3]int{20, 26, 3}, [3]int{22, 24, 3})),
	} {
		out, err := PlanGradedTaper(in)
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(out.Directions(), "|"); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Sleeves of ordinary yarns: in sizes 2 cm apart, from the wrist to the upper arm, a
// sentence of two runs serves all of them within one stitch at each edge.
func TestOrdinarySleevesShareASentence(t *testing.T) {
	asked, beyond, zeros, changes := 0, 0, 0, 0
	for stitches := 16; stitches <= 30; stitches += 2 {
		for _, cons := range []stitch.Construction{stitch.Flat, stitch.InTheRound} {
			in := GradedTaperInput{Gauge: &gauge.Gauge{Stitches: float64(stitches), Rows: float64(stitches) * 1.4}, Construction: cons}
			for i := range 8 {
				wrist, arm, length := 18+0.8*float64(i), 28+2.2*float64(i), 42+0.5*float64(i)
				size := TaperSize{StartStitches: 2 * int(wrist*float64(stitches)/20), HeightCm: &length}
				size.EndStitches = 2 * int(arm*float64(stitches)/20)
				in.Sizes = append(in.Sizes, size)
			}
			out, err := PlanGradedTaper(in)
			if err != nil {
				t.Fatal(err)
			}
			asked++
			if beyond += len(out.Notices); len(out.Notices) > 0 {
				t.Errorf("%v", out.Notices)
			}
			for _, r := range out.Runs {
				for i := range r.Times {
					if r.Times[i] == 0 {
						zeros++
					}
					if i > 0 && r.Times[i]*r.Times[i-1] > 0 && r.EveryRows[i] != r.EveryRows[i-1] {
						changes++
					}
				}
			}
		}
	}
	t.Logf("%d sleeves in 8 sizes: %d beyond the excess, %d zeros, %d changes of an interval", asked, beyond, zeros, changes)
	if beyond > 0 || zeros > asked || changes > 4*asked {
		t.Errorf("%d beyond, %d zeros, %d changes in %d", beyond, zeros, changes, asked)
	}
}

// The excess that a notice names is enough.
func TestExcessOfSizesThatIsNamedIsEnough(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 8))
	named := 0
	for range 600 {
		in := randomGraded(rng)
		in.ToleranceStitches = knittest.Ptr(0.0)
		out, err := PlanGradedTaper(in)
		if err != nil || !saysBeyond(out) {
			continue
		}
		m := excessAllowing.FindStringSubmatch(out.Notices[0].Description)
		if m == nil {
			t.Fatalf("%q", out.Notices[0].Description)
		}
		var excess float64
		if _, err := fmt.Sscan(m[1], &excess); err != nil {
			t.Fatal(err)
		}
		in.ToleranceStitches = &excess
		if again, err := PlanGradedTaper(in); err != nil || saysBeyond(again) {
			t.Fatalf("%+v: with %v as named: %v, %v", in, excess, again.Notices, err)
		}
		named++
	}
	if named < 50 {
		t.Errorf("%d named", named)
	}
}

func FuzzPlanGradedTaper(f *testing.F) {
	f.Add(44, 64, 80, 46, 66, 80, 48, 72, 72, 1, 1, int32(0), int32(0), int32(0), int32(0), 1.0)
	f.Add(60, 40, 70, 62, 40, 33, 70, 68, 9, 2, 2, int32(1), int32(2), int32(0), int32(2), 0.0)
	f.Fuzz(func(t *testing.T, s1, e1, r1, s2, e2, r2, s3, e3, r3, per, border int, edges, cons, first, shaped int32, excess float64) {
		in := graded([3]int{s1 % 400, e1 % 400, r1 % 400}, [3]int{s2 % 400, e2 % 400, r2 % 400}, [3]int{s3 % 400, e3 % 400, r3 % 400})
		in.EdgeChangeStitches, in.EdgeStitches, in.Edges, in.Construction = &per, &border, ShapedEdges(edges), stitch.Construction(cons)
		in.FirstSide, in.RowChoice, in.ToleranceStitches = stitch.Side(first), RowChoice(shaped), &excess
		out, err := PlanGradedTaper(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkGraded(t, in, out)
	})
}

func BenchmarkGradedTaper(b *testing.B) {
	for name, n := range map[string]int{"one": 1, "five": 5, "twenty": 20} {
		b.Run(name, func(b *testing.B) {
			var in GradedTaperInput
			for i := range n {
				in.Sizes = append(in.Sizes, TaperSize{StartStitches: 52 + 2*i, EndStitches: 84 + 4*i, HeightRows: knittest.Ptr(120 + i)})
			}
			for b.Loop() {
				if _, err := PlanGradedTaper(in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// A size that does without a run has no interval of it, and where a size shapes in its first
// row or its last a notice names it: 6 stitches in 3 rows have no row to spare.
func TestSizesWithoutARun(t *testing.T) {
	for want, numbers := range map[string][]int{"8th": {0, 8, 8}, "- (8th, 6th)": {0, 8, 6}, "8th (-, 6th)": {8, 0, 6}} {
		if got := (GradedTaper{}).ordinals(numbers); got != want {
			t.Errorf("%v: %q, want %q", numbers, got, want)
		}
	}
	out, err := PlanGradedTaper(GradedTaperInput{Construction: stitch.InTheRound, Sizes: []TaperSize{
		{StartStitches: 20, EndStitches: 26, HeightRows: new(3)}, {StartStitches: 20, EndStitches: 26, HeightRows: new(9)},
		{StartStitches: 20, EndStitches: 26, HeightRows: new(3)}}, RowChoice: RowChoiceAny})
	if err != nil {
		t.Fatal(err)
	}
	var said []string
	for _, n := range out.Notices {
		said = append(said, fmt.Sprint(n.Reason, " ", n.Field, ": ", n.Description))
	}
	want := []string{
		"SHAPED_AT_AN_END even_before_rows: in sizes 1 and 3 the first round shapes; after a cast-on, work a round even first",
		"SHAPED_AT_AN_END even_after_rows: in sizes 1 and 3 the last round shapes; before a bind-off, work a round even after it"}
	if !slices.Equal(said, want) {
		t.Errorf("%q", said)
	}
}
