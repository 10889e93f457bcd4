package shaping

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// A piece is what is knit to see whether shaping rows are what they are said to be.
type piece struct {
	start, rows int
	cons        stitch.Construction
	first       stitch.Side
	shaping     []ShapingRow
	written     func(ShapingRow) *stitch.Instruction
}

// knit works a piece, its shaping rows as they are written and the others plain,
// and returns the stitches after every row, beginning with those cast on.
func (p piece) knit(t *testing.T, at string) []int {
	t.Helper()
	m := knittest.CastOn(t, p.start, p.cons == stitch.InTheRound)
	if p.first == stitch.WrongSide {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	counts, next := []int{p.start}, 0
	for row := 1; row <= p.rows; row++ {
		work, want := knittest.PlainRow(m), counts[row-1]
		if next < len(p.shaping) && p.shaping[next].RowNumber == row {
			s := p.shaping[next]
			written := p.written(s)
			if (m.Side() == stitch.WrongSide) != (s.Side == stitch.WrongSide) || written == nil {
				t.Fatalf("%s: row %d is planned on the other side", at, row)
			}
			if written.EndStitches-written.StartStitches != s.EndStitches-want {
				t.Fatalf("%s: row %d goes from %d to %d, written from %d to %d", at, row, want, s.EndStitches,
					written.StartStitches, written.EndStitches)
			}
			work, want = written.Row, s.EndStitches
			next++
		}
		if err := m.Work(work); err != nil {
			t.Fatalf("%s: row %d, %q: %v", at, row, work.Text(), err)
		}
		if m.StitchCount() != want {
			t.Fatalf("%s: %d stitches after row %d, %d said", at, m.StitchCount(), row, want)
		}
		counts = append(counts, want)
	}
	if next != len(p.shaping) {
		t.Fatalf("%s: %d of %d shaping rows worked", at, next, len(p.shaping))
	}
	return counts
}

// ofSide is the row written for the side of a shaping row.
func ofSide(s ShapingRow, right, wrong *stitch.Instruction) *stitch.Instruction {
	if s.Side == stitch.WrongSide {
		return wrong
	}
	return right
}

// rowStep is how far it is from one row that may shape to the next.
func rowStep(rows RowChoice, cons stitch.Construction) int {
	if rows == RowChoiceRightSide || rows == RowChoiceUnspecified && cons != stitch.InTheRound {
		return 2
	}
	return 1
}

// rowsThatMayShape counts them, after one row and up to another.
func rowsThatMayShape(rows RowChoice, first stitch.Side, after, to int) int {
	may := 0
	for row := after + 1; row <= to; row++ {
		if rows == RowChoiceAny || (row%2 == 1) == (first != stitch.WrongSide) {
			may++
		}
	}
	return may
}

// checkIntervals: from one shaping row to the next it is a multiple of the step,
// and but for a spread of least effort the same throughout or one step more.
func checkIntervals(t *testing.T, at string, rows []ShapingRow, step int, spread IntervalSpread) {
	t.Helper()
	low, high := 1<<30, 0
	for i := 1; i < len(rows); i++ {
		d := rows[i].RowNumber - rows[i-1].RowNumber
		if d%step != 0 {
			t.Fatalf("%s: interval %d", at, d)
		}
		low, high = min(low, d), max(high, d)
	}
	if high > 0 && high-low > step && !eased(spread) {
		t.Fatalf("%s: intervals from %d to %d", at, low, high)
	}
}
