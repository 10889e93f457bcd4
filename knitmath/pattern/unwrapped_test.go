package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestUnwrapped: short rows on 32 stitches each leave one more: after the first two and n times two more 30-2n lie between the
// turns, and n+1 beyond them on each side. Any other number is told.
func TestUnwrapped(t *testing.T) {
	for n := 2; n < 11; n++ {
		for off := -2; off < 3; off++ {
			for _, words := range []string{"%d sts rem unwrapped.", "%d sts rem unwrapped in center.", "(%d sts unwrapped)",
				"%d sts rem between wraps.", "%d sts rem unwrapped in the center, %d wrapped sts at each side."} {
				claim := fmt.Sprintf(words, 30-2*n+off)
				if words[len(words)-5:] == "side." {
					claim = fmt.Sprintf(words, 30-2*n, n+1+off)
				}
				text := fmt.Sprintf("CO 32 sts.\nRow 1 (RS): K31, w&t.\nRow 2 (WS): P30, w&t.\nRow 3: K to 1 st before wrapped st, w&t.\n"+
					"Row 4: P to 1 st before wrapped st, w&t.\nRep Rows 3 and 4 %d more times. %s", n-1, claim)
				if out := asked(t, text, 0, stitch.Flat); out.Agrees != (off == 0) {
					t.Errorf("%q: %s", text, said(&out))
				}
			}
		}
	}
}

// TestNumbersOfSizesByStrokes: "2/3/4 times" after "1-8" is how often in each of three sizes, and no fraction; a length keeps its.
func TestNumbersOfSizesByStrokes(t *testing.T) {
	for _, form := range []string{"Rep Rnds 1-8 %d/%d/%d more times.", "Rep Rnds 1-8 %d/%d/%d times more.",
		"Work Rnds 1-8 %d/%d/%d more times."} {
		for _, n := range [][]int{{2, 3, 4}, {1, 2, 3}, {4, 4, 5}, {3, 4, 8}} {
			text := "CO 96/104/112 sts, join.\nRnds 1-8: Knit.\n" + fmt.Sprintf(form, n[0], n[1], n[2])
			out := asked(t, text, 0, stitch.Flat)
			if !out.Agrees || out.WorkedRows[0] != 8+8*n[0] || out.WorkedRows[2] != 8+8*n[2] {
				t.Errorf("%q: %v, %s", text, out.WorkedRows, said(&out))
			}
		}
	}
	text := "CO 96 sts. Knit until piece measures 8 2/3 inches. Knit 2 rows. 96 sts."
	if out := asked(t, text, 0, stitch.Flat); !out.Agrees {
		t.Error(said(&out))
	}
}
