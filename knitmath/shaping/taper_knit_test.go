package shaping

import (
	"fmt"
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Small tapers of every kind are knit row by row: each shaping row can be
// worked on the side it is planned for and leaves the count it says, intervals
// take two neighbouring legal values, and the departure from the straight line
// is the one worked out here over every row.
func TestTaperIsKnit(t *testing.T) {
	planned := 0
	for start := 2; start <= 14; start += knittest.Sweep(3, 5) {
		for end := 4; end <= 24; end += knittest.Sweep(1, 5) {
			for rows := 1; rows <= 27; rows += knittest.Sweep(2, 6) {
				for _, plain := range [][2]*int{{nil, nil}, {new(2), new(0)}, {new(1), new(3)}} {
					in := TaperInput{StartStitches: start, EndStitches: end, HeightRows: &rows,
						EvenBeforeRows: plain[0], EvenAfterRows: plain[1]}
					planned += knitTapers(t, in)
				}
			}
		}
	}
	if planned < knittest.Sweep(10000, 1000) {
		t.Errorf("planned %d tapers: the sweep has shrunk", planned)
	}
}

// knitTapers knits a taper of every kind, and says how many there were.
func knitTapers(t *testing.T, in TaperInput) int {
	t.Helper()
	planned := 0
	for variant := range 3 * 2 * 2 * 4 * 3 {
		per := 1 + variant%2
		in.EdgeChangeStitches = &per
		in.Edges = ShapedEdges(1 + variant/2%3)
		in.RowChoice = RowChoice(1 + variant/6%2)
		in.Spread = IntervalSpread(1 + variant/12%4)
		in.FirstSide, in.Construction = stitch.SideUnspecified, stitch.ConstructionUnspecified
		switch variant / 48 {
		case 1:
			in.FirstSide = stitch.WrongSide
		case 2:
			in.Construction = stitch.InTheRound
		}
		out, err := PlanTaper(in)
		if err != nil {
			checkTaperRefusal(t, in, err)
			continue
		}
		planned++
		checkTaper(t, in, out)
	}
	return planned
}

func describeTaper(in TaperInput) string {
	return fmt.Sprintf("%d to %d in %d rows, plain %d/%d, per edge %d, edges %d, rows %d, spread %d, first %d, round %v",
		in.StartStitches, in.EndStitches, fault.Or(in.HeightRows, 0), fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0),
		fault.Or(in.EdgeChangeStitches, 1), in.Edges, in.RowChoice, in.Spread, in.FirstSide, in.Construction == stitch.InTheRound)
}

// checkTaper knits a taper and compares it with the answer.
func checkTaper(t *testing.T, in TaperInput, out Taper) {
	t.Helper()
	at := describeTaper(in)
	before, after := fault.Or(in.EvenBeforeRows, 0), fault.Or(in.EvenAfterRows, 0)
	counts := piece{in.StartStitches, out.HeightRows, in.Construction, in.FirstSide, out.Rows,
		func(s ShapingRow) *stitch.Instruction { return ofSide(s, out.RightSideRow, out.WrongSideRow) }}.knit(t, at)
	if counts[out.HeightRows] != in.EndStitches {
		t.Fatalf("%s: ends with %d stitches", at, counts[out.HeightRows])
	}
	first, last := out.Rows[0].RowNumber, out.Rows[len(out.Rows)-1].RowNumber
	if first <= before || first != out.FirstShapingRowNumber || out.HeightRows-last < after || out.EvenAfterRows != out.HeightRows-last {
		t.Fatalf("%s: shaping from row %d to %d", at, out.FirstShapingRowNumber, last)
	}
	if in.RowChoice == RowChoiceRightSide && in.Construction != stitch.InTheRound && out.WrongSideRow != nil {
		t.Fatalf("%s: shapes on the wrong side", at)
	}
	checkIntervals(t, at, out.Rows, rowStep(in.RowChoice, in.Construction), in.Spread)
	// Before and after the line the count is that of its ends, as the rows said.
	if worst := strays(counts, before, out.HeightRows-after) / edgesOf(in); math.Abs(worst-out.GreatestDepartureStitches) > 1e-9 {
		t.Fatalf("%s: departs by %v, %v said", at, worst, out.GreatestDepartureStitches)
	}
	checkEffort(t, in, out)
}
