package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestRowsBesideEdges: a count of rows beside stitches that are bound off or cast on at the beginning of rows is compared.
func TestRowsBesideEdges(t *testing.T) {
	for _, verb := range []string{"BO", "CO", "Cast off"} {
		sign := -1
		if verb == "CO" {
			sign = 1
		}
		for _, n := range []int{2, 4} {
			for rows := 1; rows < 12; rows++ {
				for _, form := range []string{" (%d rows). ", ", %d rows in all. "} {
					text := fmt.Sprintf("CO 60 sts. %s 3 sts at beg of next %d rows"+form+"(%d sts)", verb, n, rows, 60+3*sign*n)
					if out := asked(t, text, 0, stitch.Flat); out.Agrees != (rows == n) {
						t.Errorf("%q: %s", text, said(&out))
					}
				}
			}
		}
	}
}

// TestRowsOfEdgeTotals: stitches bound off n times at one edge are bound off on every second row: over 2n-1 rows, or 2n with
// the one back.
func TestRowsOfEdgeTotals(t *testing.T) {
	for _, form := range []string{"BO 3 sts at neck edge %d times (%d rows). (%d sts)",
		"BO 3 sts at neck edge every other row %d times (%d rows). (%d sts)",
		"At neck edge, BO 3 sts every other row %d times (%d rows). (%d sts)"} {
		for n := 2; n < 6; n++ {
			for rows := 2; rows < 14; rows++ {
				text := "CO 40 sts. " + fmt.Sprintf(form, n, rows, 40-3*n)
				if out := asked(t, text, 0, stitch.Flat); out.Agrees != (rows == 2*n || rows == 2*n-1) {
					t.Errorf("%q: %s", text, said(&out))
				}
			}
		}
	}
}

// TestWrapTakenLate: of 20 stitches the 16th is wrapped. A row that takes up a wrap anywhere else is asked about.
func TestWrapTakenLate(t *testing.T) {
	for wrapped := 5; wrapped < 18; wrapped++ {
		for at := 3; at < 19; at++ {
			text := fmt.Sprintf("CO 20 sts. Row 1: k%d, w&t. Row 2: p%d. Row 3: k%d, k1 tog with its wrap, k to end. (20 sts)",
				wrapped, wrapped, at)
			if out := asked(t, text, 0, stitch.Flat); out.Agrees != (at == wrapped) {
				t.Errorf("%q: %s", text, said(&out))
			}
		}
	}
}
