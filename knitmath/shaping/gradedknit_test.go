package shaping

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

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
		switch rng.IntN(12) {
		case 0:
			size.StartStitches, size.EndStitches = size.EndStitches, size.StartStitches
		case 1:
			size.EndStitches = size.StartStitches
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
		if s.StartStitches == s.EndStitches {
			if s.ShapingRows != 0 || s.EvenAfterRows != s.HeightRows || len(s.Intervals) > 0 || s.FirstShapingRowNumber != nil {
				t.Fatalf("%s: %+v", at, s)
			}
			continue
		}
		rows, change, row := []ShapingRow{}, out.RowChangeStitches, &out.RightSideRow
		if change*(s.EndStitches-s.StartStitches) < 0 {
			change, row = -change, out.OppositeRow
		}
		for k, number := range following(*s.FirstShapingRowNumber, s.Intervals.Intervals()) {
			rows = append(rows, ShapingRow{number, stitch.RightSide, s.StartStitches + (k+1)*change})
		}
		counts := piece{s.StartStitches, s.HeightRows, in.Construction, in.FirstSide, rows,
			func(ShapingRow) *stitch.Instruction { return row }}.knit(t, at)
		before, after := fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0)
		if counts[s.HeightRows] != s.EndStitches || len(rows) != s.ShapingRows || s.EndStitches != in.Sizes[i].EndStitches ||
			*s.FirstShapingRowNumber <= before || s.EvenAfterRows < after || s.EvenAfterRows != s.HeightRows-rows[len(rows)-1].RowNumber {
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
	if one.EvenBeforeRows == nil && fault.Or(s.FirstShapingRowNumber, 0) > 1 && s.EvenAfterRows > 0 {
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
		if s.StartStitches == s.EndStitches || out.RowChangeStitches*(s.EndStitches-s.StartStitches) < 0 {
			if len(mine) > 0 {
				t.Fatalf("size %d is told elsewhere: %+v", i+1, out.Runs)
			}
			continue
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
