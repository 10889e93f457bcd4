package shaping

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// No choice of rows that may shape lies nearer to the straight line, where it
// departs most from it, than an interleaved taper: every choice there is of up to
// 14 rows is tried.
func TestNoLegalRowsLieNearerToTheStraightLine(t *testing.T) {
	asked := 0
	for rows := 1; rows <= knittest.Sweep(14, 10); rows++ {
		for k := 1; k <= rows; k++ {
			for _, kept := range [][2]int{{0, 0}, {1, 0}, {0, 1}, {2, 3}} {
				for variant := range 6 {
					in := TaperInput{StartStitches: 60, EndStitches: 60 - 2*k, HeightRows: knittest.Ptr(rows),
						EvenBeforeRows: &kept[0], EvenAfterRows: &kept[1], RowChoice: RowChoice(1 + variant%2),
						Spread: IntervalSpreadInterleaved}
					switch variant / 2 {
					case 1:
						in.FirstSide = stitch.WrongSide
					case 2:
						in.Construction = stitch.InTheRound
					}
					out, err := PlanTaper(in)
					if err != nil {
						continue
					}
					asked++
					if best := leastDeparture(in, k); out.GreatestDepartureStitches > best+1e-9 {
						t.Fatalf("%s: departs by %v on %v, and %v is possible", describeTaper(in), out.GreatestDepartureStitches, out.Rows, best)
					}
				}
			}
		}
	}
	if asked < knittest.Sweep(1000, 400) {
		t.Errorf("%d tapers: the sweep has shrunk", asked)
	}
}

// leastDeparture tries every choice of k rows.
func leastDeparture(in TaperInput, k int) float64 {
	from, to := *in.EvenBeforeRows, *in.HeightRows-*in.EvenAfterRows
	first := 1 // the first row that is a right-side row
	if in.FirstSide == stitch.WrongSide {
		first = 2
	}
	best := math.Inf(1)
	for chosen := range 1 << (to - from) {
		shaped, worst, ok := 0, 0.0, true
		for row := from + 1; row <= to && ok; row++ {
			if chosen>>(row-from-1)&1 == 1 {
				ok = in.RowChoice == RowChoiceAny || (row-first)%2 == 0
				shaped++
			}
			due := float64(k) * float64(row-from) / float64(to-from)
			worst = max(worst, math.Abs(float64(shaped)-due))
		}
		if ok && shaped == k {
			best = min(best, worst)
		}
	}
	return best
}
