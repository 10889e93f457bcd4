package edge

import (
	"fmt"
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// pickUpWorked picks stitches up as the row says and returns, for every row of
// the edge in order, how many stitches it took.
func pickUpWorked(t *testing.T, row stitch.Row, rows, n int) []int {
	t.Helper()
	m := stitch.NewMachine(stitch.Flat)
	if err := m.LoadEdge(rows); err != nil {
		t.Fatal(err)
	}
	if err := m.Work(row); err != nil {
		t.Fatalf("%d along %d: %q: %v", n, rows, row.Text(), err)
	}
	if m.StitchCount() != n || m.Side() != stitch.WrongSide {
		t.Fatalf("%d along %d: %q picks up %d", n, rows, row.Text(), m.StitchCount())
	}
	took := make([]int, 0, rows)
	for _, op := range knittest.OpWord(t, row, rows) {
		took = append(took, op.Leaves())
	}
	return took
}

// Every count along every short edge is picked up: the skipped rows (or those
// that take two) never stand at an end where that can be avoided, their runs
// differ by one, and the distance from even is the one said: below two stitches,
// and interleaved below that of grouped, give or take half a stitch.
func TestPickUpRowIsWorked(t *testing.T) {
	for rows := 1; rows <= 60; rows++ {
		for n := 1; n <= MaxPerRow*rows; n++ {
			strays := checkPickUpRow(t, rows, n, true)
			if worst := checkPickUpRow(t, rows, n, false); worst >= 2 || worst > strays+0.5 {
				t.Fatalf("%d along %d: %v stitches from even, %v grouped", n, rows, worst, strays)
			}
		}
	}
}

// checkPickUpRow works a row and returns how far it strays from even.
func checkPickUpRow(t *testing.T, rows, n int, grouped bool) float64 {
	t.Helper()
	row, _ := pickUpRow(rows, n, grouped)
	took := pickUpWorked(t, row, rows, n)
	at := fmt.Sprintf("%d along %d, grouped %v: %v", n, rows, grouped, took)
	once, so, worst := 0, 0, 0.0
	for i, k := range took {
		if k == 1 {
			once++
		}
		if n < rows && k > 1 || n > rows && k < 1 {
			t.Fatalf("%s: skips and doubles", at)
		}
		so += k
		worst = max(worst, math.Abs(float64(so)-float64(n*(i+1))/float64(rows)))
	}
	if once >= 2 && (took[0] != 1 || took[rows-1] != 1) {
		t.Fatalf("%s: an exception at an end", at)
	}
	checkRuns(t, at, took, once)
	if said := edgeDeparture(row, rows, n); math.Abs(worst-said) > 1e-9 {
		t.Fatalf("%s: %v stitches from even, %v said", at, worst, said)
	}
	return worst
}

// checkRuns: runs of the commoner kind differ by one, those of the rarer are
// single; but for the two stitches that hold the ends.
func checkRuns(t *testing.T, at string, took []int, once int) {
	t.Helper()
	low, high := map[bool]int{}, map[bool]int{} // of rows that take one, and of the others
	run := 0
	for i, k := range took {
		if run++; i+1 == len(took) || took[i+1] != k {
			if low[k == 1] == 0 || run < low[k == 1] {
				low[k == 1] = run
			}
			high[k == 1] = max(high[k == 1], run)
			run = 0
		}
	}
	if common := 2*once > len(took); once >= 2 && (high[!common] > 1 || high[common] > low[common]+1) {
		t.Fatalf("%s: uneven runs", at)
	}
}

// Groups within groups, by hand. 174 rows at 22 to 30 are 127.6, so 128 stitches
// and 46 skipped rows: 47 runs, 34 of 3 and 13 of 2. One of 2 stands at the end;
// the other 12 close 12 groups, which share 34: ten with 3 and two with 2. 100
// rows at 33 to 30 are 110: 10 rows take two, 90 are eleven runs, two of 9 and
// nine of 8. One of 8 stands at the end; the two of 9 close two groups with 4 of
// the other 8 each.
func TestPickUpGroupsByHand(t *testing.T) {
	for _, c := range []struct {
		rows int
		st   float64
		want string
	}{
		{174, 22, "[[pick up and knit 3, skip 1] 3 times, pick up and knit 2, skip 1] 10 times, " +
			"[[pick up and knit 3, skip 1] twice, pick up and knit 2, skip 1] twice, pick up and knit 2"},
		{100, 33, "[[pick up and knit 8, pick up and knit 2 in one row] 4 times, " +
			"pick up and knit 9, pick up and knit 2 in one row] twice, " +
			"pick up and knit 8"},
	} {
		out, err := PlanPickUp(PickUpInput{LengthRows: &c.rows, Gauge: &gauge.Gauge{Stitches: c.st, Rows: 30}, Spread: PickUpSpreadInterleaved})
		if err != nil || out.Instruction.Row.Text() != c.want {
			t.Errorf("%d rows: %q, %v", c.rows, out.Instruction.Row.Text(), err)
		}
	}
}
