package pattern

import (
	"fmt"
	"testing"
)

// TestRunsByHand: the rows of a piece as runs; the counts are worked beside each case.
func TestRunsByHand(t *testing.T) {
	for _, c := range []struct {
		text, want string
	}{
		// 40, less 2 in each first row: 38 after the first pass, 26 after seven.
		{"CO 40 sts\nRow 1: ssk, k to last 2 sts, k2tog\nRow 2: purl\nRep Rows 1 and 2 6 more times",
			"1:1 [2] x1 40 [-2]; 1:2 [3] x1 38 [0]; 1:3 [2 3] x6 38 [-2 0]"},
		{"CO 40 sts\nKnit 200 rows\nRow 1: k1, M1L, k to end", "1:1 [2] x200 40 [0]; 1:201 [3] x1 40 [1]"},
		{"CO 8 (16) sts\nRow 1: [k2tog] to end\nRow 2: knit\nRep Rows 1 and 2 1 (2) more times",
			"1:1 [2] x1 8 [-4]; 1:2 [3] x1 4 [0]; 1:3 [2 3] x1 4 [-2 0]; " +
				"2:1 [2] x1 16 [-8]; 2:2 [3] x1 8 [0]; 2:3 [2 3] x1 8 [-4 0]; 2:5 [2 3] x1 4 [-2 0]"},
		{"CO 10 sts\nRow 1: knit\nRow 2: purl\nRep Rows 1 and 2 49 more times", "1:1 [2] x1 10 [0]; 1:2 [3] x1 10 [0]; 1:3 [2 3] x49 10 [0 0]"},
		{"CO 10 sts\nKnit 1 row\nBind off", "1:1 [2] x1 10 [0]; 1:2 [3] x1 10 [-10]"},
		{"CO 9 sts\nRow 1: knit\nRow 2: purl\nRep Rows 1 and 2 3 more times, inc 1 st at each end of last row",
			"1:1 [2] x1 9 [0]; 1:2 [3] x1 9 [0]; 1:3 [2 3] x2 9 [0 0]; 1:7 [2] x1 9 [0]; 1:8 [5] x1 9 [2]"},
		{"CO 10 sts\nBO 2 sts at beg of next 2 rows\nRow 1: k6", "1:1 [2] x2 10 [-2]; 1:3 [3] x1 6 [0]"},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text, WithRuns: true})
		if err != nil || !out.Agrees {
			t.Fatalf("%q: %v, %s", c.text, err, said(&out))
		}
		got := ""
		for i, r := range out.Runs {
			if i > 0 {
				got += "; "
			}
			got += fmt.Sprintf("%d:%d %v x%d %d %v", r.SizeNumber, r.FirstRowNumber, r.LinePlaces, r.Times, r.StartStitches, r.ChangeStitches)
		}
		if got != c.want {
			t.Errorf("%q:\n%s, want\n%s", c.text, got, c.want)
		}
	}
}

// TestRunsAreWhole: the runs of a right text are its rows, one after the other, and come
// to what it ends with, unless something other than a row changes the count.
func TestRunsAreWhole(t *testing.T) {
	text, counts := gradedPiece(40)
	text += "Rep Rows 1 and 2 7 more times\nWork 12 rows even\nRep last 2 rows 3 times\n"
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: counts, WithRuns: true})
	if err != nil || !out.Agrees {
		t.Fatalf("%v, %s", err, said(&out))
	}
	size, row, stitches := 0, 0, 0
	for _, r := range out.Runs {
		if r.SizeNumber != size {
			size, row, stitches = r.SizeNumber, 1, counts[r.SizeNumber-1]
		}
		if r.FirstRowNumber != row || r.StartStitches != stitches {
			t.Fatalf("size %d: a run begins with row %d on %d, the one before ended with row %d on %d", size, r.FirstRowNumber,
				r.StartStitches, row-1, stitches)
		}
		row += r.Times * len(r.LinePlaces)
		stitches += r.Times * sum(r.ChangeStitches)
		if last := size == len(counts) && row > out.WorkedRows[size-1]; last && stitches != out.EndStitches[size-1] {
			t.Errorf("size %d ends with %d, not %d", size, stitches, out.EndStitches[size-1])
		}
	}
	if size != len(counts) || row != out.WorkedRows[size-1]+1 {
		t.Errorf("the runs end with row %d of size %d", row-1, size)
	}
}
