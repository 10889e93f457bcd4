package curve

import (
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// A row fits on so many stitches where hands can work it as written: every pair of steps, on every
// number of stitches up to 20, by the machine. Where it does not they cannot, but that after a
// cast-on or an increase a stitch more is wanted, and one that is left where a row ends.
func TestRowsFitWhereHandsWorkThem(t *testing.T) {
	rows, fit := 0, 0
	for _, faces := range []stitch.Side{stitch.RightSide, stitch.WrongSide} {
		for edge := 1; edge <= 3; edge++ {
			for _, begins := range append(stepsUpTo(3, KindBindOff, KindCastOn), stepsUpTo(2, KindDecrease, KindIncrease)...) {
				for _, ends := range stepsUpTo(2, KindDecrease, KindIncrease) {
					for count := 1; count <= 20; count++ {
						rows++
						r := rowOf{faces, edge, begins, ends}
						err := worksOn(t, count, r)
						spare := count == r.taken(begins)+r.taken(ends)
						if fits := r.fits(count); fits && err != nil || !fits && err == nil && !spare {
							t.Errorf("%s on %d stitches: fits is %v, the machine says %v", stitch.RowOf(r.steps(count)...).Text(), count, fits, err)
						} else if fits {
							fit++
						}
					}
				}
			}
		}
	}
	t.Logf("%d rows, %d fit", rows, fit)
}

// stepsUpTo is no step, and each kind of so many stitches at most.
func stepsUpTo(most int, kinds ...Kind) []Step {
	all := []Step{{}}
	for _, k := range kinds {
		for n := 1; n <= most; n++ {
			all = append(all, Step{Kind: k, Stitches: n})
		}
	}
	return all
}

// worksOn works the row in stockinette on so many stitches.
func worksOn(t *testing.T, count int, r rowOf) error {
	t.Helper()
	m := knittest.CastOn(t, count, false)
	for m.RowsWorked() < 2 || m.Side() != r.faces {
		if err := m.Work(knittest.PlainRow(m)); err != nil {
			t.Fatal(err)
		}
	}
	return m.Work(stitch.RowOf(r.steps(count)...))
}
