package shortrow

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// knitRows works rows on the sides that they are planned for.
func knitRows(t *testing.T, at string, m *stitch.Machine, rows []WedgeRow) {
	t.Helper()
	for _, r := range rows {
		if (m.Side() == stitch.WrongSide) != (r.Side == stitch.WrongSide) {
			t.Fatalf("%s: row %d is planned on the other side", at, r.RowNumber)
		}
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatalf("%s: row %d, %q: %v", at, r.RowNumber, r.Instruction.Row.Text(), err)
		}
	}
}

// knitWedge knits a wedge on stitches cast on for it, with all its gaps closed, and
// gives the rows under every stitch from the right edge.
func knitWedge(t *testing.T, at string, width int, rows []WedgeRow) []int {
	t.Helper()
	m := knittest.CastOn(t, width, false)
	if rows[0].Side == stitch.WrongSide {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	below := m.RowsWorked()
	knitRows(t, at, m, rows)
	if m.StitchCount() != width || m.Unresolved() != 0 || m.ShortRowOpen() {
		t.Fatalf("%s: %d stitches, %d gaps open", at, m.StitchCount(), m.Unresolved())
	}
	heights := m.Heights()
	for x := range heights {
		heights[x] -= below
	}
	return heights
}

// checkHeights compares what was knit with what the answer says of it, and gives
// the rows by which it leaves the profile that was wanted under every stitch.
func checkHeights(t *testing.T, at string, out Wedge, heights []int, wanted func(x int) float64) float64 {
	t.Helper()
	worst := 0.0
	for x, rows := range heights {
		worst = max(worst, math.Abs(float64(rows-out.FullRows)-wanted(x)))
	}
	tallest, shortest := slices.Max(heights), slices.Min(heights)
	if tallest-shortest != out.RiseRows || tallest != out.TallRows || math.Abs(worst-out.GreatestDepartureRows) > 1e-9 {
		t.Fatalf("%s: %d to %d rows, departs by %v; said to rise %d to %d and depart by %v", at, shortest, tallest, worst, out.RiseRows,
			out.TallRows, out.GreatestDepartureRows)
	}
	return worst
}

// knitCircle knits every wedge of a circle one after the other, and tells of each
// when it is knit.
func knitCircle(t *testing.T, in CircleInput, out Circle, knit func(m *stitch.Machine)) {
	t.Helper()
	m := knittest.CastOn(t, out.WidthStitches, false)
	wedges := 0
	for _, run := range out.Sequence {
		wedges += run.Times
		for range run.Times {
			knitRows(t, fmt.Sprintf("%+v", in), m, out.Wedges[run.WedgeNumber-1].Rows)
			if m.Unresolved() != 0 || m.ShortRowOpen() {
				t.Fatalf("%+v: gaps open after a wedge", in)
			}
			knit(m)
		}
	}
	if wedges != out.WedgeCount {
		t.Fatalf("%+v: %d wedges, %d said", in, wedges, out.WedgeCount)
	}
}
