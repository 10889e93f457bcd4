package swatch

import (
	"slices"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// A swatch read at exactly a printed bound of a category is in that category,
// whatever the length the answer is over: the bounds are those of the
// transcription, and the readings make each of them in several ways. A millionth
// of a stitch below the lower bound over 4 in, or above the upper one over
// 10 cm, is out.
func TestCategoriesAtTheirBounds(t *testing.T) {
	const fourInches = 10.16
	for _, row := range knittest.Table(t, "yarn/yarn_weights.csv") {
		category, err := strconv.Atoi(row["category"])
		if err != nil {
			t.Fatal(err)
		}
		low, high := knittest.Cell(t, row["st_per_4in_low"]), knittest.Cell(t, row["st_per_4in_high"])
		for _, over := range []float64{10, 10.16, 7, 3.3333, 100} {
			check := func(name string, rs []Reading, want bool) {
				t.Helper()
				out, err := ComputeGauge(Input{StitchesBefore: rs, OverCm: &over})
				if err != nil {
					t.Fatal(err)
				}
				got := false
				for _, c := range out.YarnCategories {
					got = got || c.Category == category
				}
				if got != want {
					t.Errorf("%s, answered over %v cm: category %d listed is %v, want %v", name, over, category, got, want)
				}
			}
			for _, cm := range []float64{10, fourInches} {
				for _, n := range []float64{max(low, 2), high} {
					name := strconv.FormatFloat(n, 'f', -1, 64) + " stitches to " + strconv.FormatFloat(cm, 'f', -1, 64) + " cm"
					check(name, readingsOver(cm, n), true)
					check(name+" three times", readingsOver(cm, n, n, n), true)
					check(name+" on average", readingsOver(cm, n-1, n+0.75, n+0.25), true)
					check(name+" over several lengths", slices.Concat(readingsOver(cm, n-0.5), readingsOver(cm/2, n/2+0.25)), true)
				}
			}
			if low > 0 {
				check("below", readingsOver(fourInches, low, low-3e-6, low), false)
			}
			check("above", readingsOver(10, high, high+3e-6, high), false)
		}
	}
}
