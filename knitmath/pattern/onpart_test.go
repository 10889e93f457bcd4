package pattern

import (
	"fmt"
	"testing"
)

// TestOnOneOfTwoParts: a row binds off in the middle and leaves n stitches on each side; the text goes on with those it worked
// last. By hand: n, of which 3 are bound off, or 2 worked together. Any other count is told.
func TestOnOneOfTwoParts(t *testing.T) {
	for _, n := range []int{30, 24} {
		for _, off := range []int{0, 1, -2, n} {
			for _, words := range []string{"Working on right front sts only, purl 1 row.", "Working on left front sts only, purl 1 row.",
				"Work on right shoulder sts only.\nPurl 1 row."} {
				told(t, fmt.Sprintf("CO %d sts.\nNext row (RS): K%d, BO next 13 sts, k to end. %d sts rem each side.\n%s\n"+
					"Next row (RS): BO 3 sts, k to end. %d sts.", 2*n+13, n, n, words, n-3+off), off == 0)
			}
			told(t, fmt.Sprintf("CO %d sts. Next row: K%d, BO 6, k%d.\nNext row (WS): P%d, p2tog, turn. %d sts.", 2*n+6, n, n, n-2, n-1+off),
				off == 0 || off == n)
		}
	}
}

// TestLengthsWithinAsPart: lengths for all sizes stand in "work as for back until armholes measure 12 (13) cm".
func TestLengthsWithinAsPart(t *testing.T) {
	for _, lengths := range []string{"12 (13, 14) cm", "12 [13, 14] cm, ending with a WS row", "5 (5, 6) inches", "12 cm"} {
		told(t, "BACK\nCO 90 (102, 110) sts. Knit 5 rows. BO all sts.\nFRONT\nWork as for back until armholes measure "+lengths+
			". 90 (102, 110) sts.", true)
	}
}
