package shaping

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/schedule"
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

// Words where the numbers are 0, 1 or the same.
func TestGradedWords(t *testing.T) {
	round := func(in GradedTaperInput) GradedTaperInput { in.Construction = stitch.InTheRound; return in }
	backwards := graded([3]int{30, 34, 12}, [3]int{30, 36, 16})
	backwards.FirstSide = stitch.WrongSide
	for want, in := range map[string]GradedTaperInput{
		// One shaping row in all sizes.
		"Work 4 rows even.|Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1: 18 (28) stitches.|Work 2 rows even.": graded(
			[3]int{20, 18, 7}, [3]int{30, 28, 7}),
		// Two in all sizes; two and three.
		"Work 1 round even.|Increase round: k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase round every round once more: 24 stitches.": round(graded([3]int{20, 24, 3}, [3]int{20, 24, 3})),
		"Work 3 (1) rows even, ending with a WS row.|Increase row (RS): k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase row every 6th row 1 (2) more times: 34 (36) stitches.|Work 2 rows even.": backwards,
		// Every round, and a size that goes without.
		"Increase round: k1, M1L, k to last st, M1R, k1.|Repeat the increase round every round twice more: 26 (28) stitches.": round(graded(
			[3]int{20, 26, 3}, [3]int{22, 28, 3})),
		"Where your size has 0, skip that part.|Work 0 (1) rounds even.|Increase round: k1, M1L, k to last st, M1R, k1.|" +
			"Repeat the increase round every round 2 (0) more times: 26 (24) stitches.|Work 0 (1) rounds even.": round(graded(
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

// Sizes of every kind are knit, each by the machine, from what the answer says of it:
// the counts and heights, the rows, and how far it departs from the straight line.
func TestGradedTapersAreKnit(t *testing.T) {
	rng := rand.New(rand.NewPCG(20, 11))
	planned, beyond, turns, runs := 0, 0, 0, [3]int{}
	for range knittest.Sweep(3000, 400) {
		in := randomGraded(rng)
		out, err := PlanGradedTaper(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		planned++
		checkGraded(t, in, out)
		runs[len(out.Runs)]++
		if saysBeyond(out) {
			beyond++
		}
		if slices.ContainsFunc(out.Runs, func(r schedule.GradedRun) bool { return r.AlternateRows != nil }) {
			turns++
		}
	}
	if turns < knittest.Sweep(100, 10) {
		t.Errorf("%d with a run that alternates: the sweep has shrunk", turns)
	}
	if planned < knittest.Sweep(1500, 200) || beyond < 20 || runs[0] < knittest.Sweep(10, 1) || runs[1] < 100 || runs[2] < 100 {
		t.Errorf("%d planned, %d of them beyond the excess, runs %v: the sweep has shrunk", planned, beyond, runs)
	}
}

// randomGraded is a question about one to six sizes, each a little larger than the one
// before.
func randomGraded(rng *rand.Rand) GradedTaperInput {
	in := GradedTaperInput{Construction: stitch.Construction(1 + rng.IntN(2)), Edges: ShapedEdges(1 + rng.IntN(3)),
		EdgeChangeStitches: knittest.Ptr(1 + rng.IntN(2)), RowChoice: RowChoice(rng.IntN(2))}
	if in.Construction == stitch.InTheRound && rng.IntN(2) == 0 {
		in.RowChoice = RowChoiceAny
	} else if in.Construction == stitch.Flat && rng.IntN(3) == 0 {
		in.FirstSide = stitch.WrongSide
	}
	if rng.IntN(2) == 0 {
		in.EvenBeforeRows, in.EvenAfterRows = knittest.Ptr(rng.IntN(5)), knittest.Ptr(rng.IntN(5))
	}
	if rng.IntN(3) == 0 {
		in.ToleranceStitches = knittest.Ptr(float64(rng.IntN(4)) / 2)
	}
	start, change, rows := 20+rng.IntN(40), 4*(1+rng.IntN(10)), 10+rng.IntN(80)
	for range 1 + rng.IntN(6) {
		size := TaperSize{StartStitches: start, EndStitches: start + change, HeightRows: knittest.Ptr(rows)}
		if in.Edges == ShapedEdgesBeginning {
			size.StartStitches, size.EndStitches = size.EndStitches, size.StartStitches
		}
		in.Sizes = append(in.Sizes, size)
		start, change, rows = start+rng.IntN(5), change+4*rng.IntN(2), rows+rng.IntN(8)-1
	}
	return in
}

// checkGraded knits every size and compares it with the answer, and the answer with
// the numbers of the sentence.
func checkGraded(t *testing.T, in GradedTaperInput, out GradedTaper) {
	t.Helper()
	effort := 0
	for i, s := range out.Sizes {
		one := in.of(in.Sizes[i])
		at := fmt.Sprintf("size %d of %d: %s", i+1, len(out.Sizes), describeTaper(one))
		rows := []ShapingRow{}
		for k, row := range following(s.FirstShapingRowNumber, s.Intervals.Intervals()) {
			rows = append(rows, ShapingRow{row, stitch.RightSide, s.StartStitches + (k+1)*out.RowChangeStitches})
		}
		counts := piece{s.StartStitches, s.HeightRows, in.Construction, in.FirstSide, rows,
			func(ShapingRow) *stitch.Instruction { return &out.RightSideRow }}.knit(t, at)
		before, after := fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0)
		if counts[s.HeightRows] != s.EndStitches || len(rows) != s.ShapingRows || s.EndStitches != in.Sizes[i].EndStitches ||
			s.FirstShapingRowNumber <= before || s.EvenAfterRows < after || s.EvenAfterRows != s.HeightRows-rows[len(rows)-1].RowNumber {
			t.Fatalf("%s: %+v ends with %d", at, s, counts[s.HeightRows])
		}
		checkIntervals(t, at, rows, rowStep(in.RowChoice, in.Construction), IntervalSpreadLeastEffort)
		if worst := strays(counts, before, s.HeightRows-after) / edgesOf(one); math.Abs(worst-s.GreatestDepartureStitches) > 1e-9 {
			t.Fatalf("%s: departs by %v, %v said", at, worst, s.GreatestDepartureStitches)
		}
		checkNearEnough(t, at, one, s, saysBeyond(out))
		effort += s.Effort - 1
	}
	if effort > out.Effort {
		t.Fatalf("%+v: the sizes take %d, the form %d", out.Runs, effort, out.Effort)
	}
	checkRunsOfSizes(t, out)
}

// checkNearEnough: a size departs by no more than was asked beyond the least possible,
// which is that of the same taper alone; or half as much again where that keeps the first row
// and the last even.
func checkNearEnough(t *testing.T, at string, one TaperInput, s SizedTaper, beyond bool) {
	t.Helper()
	allowed := fault.Or(one.ToleranceStitches, 1)
	if one.EvenBeforeRows == nil && s.FirstShapingRowNumber > 1 && s.EvenAfterRows > 0 {
		allowed *= endsWorth
	}
	one.Spread, one.ToleranceStitches = IntervalSpreadInterleaved, nil
	nearest, err := PlanTaper(one)
	if err != nil {
		t.Fatalf("%s: alone %v", at, err)
	}
	// The nearest rows may need one that was to be kept even, so that less is possible.
	if s.LeastDepartureStitches > nearest.LeastDepartureStitches+1e-9 {
		t.Fatalf("%s: at least %v said, alone %v", at, s.LeastDepartureStitches, nearest.LeastDepartureStitches)
	}
	if excess := s.GreatestDepartureStitches - s.LeastDepartureStitches; !beyond && excess > allowed+1e-9 {
		t.Fatalf("%s: departs by %v more than it must", at, excess)
	}
}

// checkRunsOfSizes: two runs at most, in the same order in all sizes, and together the
// intervals of each.
func checkRunsOfSizes(t *testing.T, out GradedTaper) {
	t.Helper()
	if len(out.Runs) > 2 {
		t.Fatalf("%+v", out.Runs)
	}
	first := -1 // a size that has both runs
	for i, s := range out.Sizes {
		var mine []int
		for _, r := range out.Runs {
			if r.Times[i] == 0 && (r.EveryRows[i] != 0 || r.AlternateRows != nil && r.AlternateRows[i] != 0) {
				t.Fatalf("size %d does without a run of an interval: %+v", i+1, r)
			}
			for range r.Times[i] {
				mine = append(mine, r.EveryRows[i])
				if r.AlternateRows != nil {
					mine = append(mine, r.AlternateRows[i])
				}
			}
		}
		if fmt.Sprint(mine) != fmt.Sprint(s.Intervals.Intervals()) {
			t.Fatalf("size %d: %v of %+v", i+1, s.Intervals, out.Runs)
		}
		if len(out.Runs) == 2 && out.Runs[0].Times[i]*out.Runs[1].Times[i] > 0 &&
			out.Runs[0].AlternateRows == nil && out.Runs[1].AlternateRows == nil {
			a, b := out.Runs[0].EveryRows, out.Runs[1].EveryRows
			if rises := a[i] < b[i]; a[i] == b[i] || i > 0 && first >= 0 && rises != (a[first] < b[first]) {
				t.Fatalf("the order changes: %+v", out.Runs)
			}
			first = i
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
		if got := ordinals(numbers); got != want {
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
