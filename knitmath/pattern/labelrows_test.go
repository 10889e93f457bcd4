package pattern

import (
	"fmt"
	"testing"
)

// TestLabelsOfRepeats: "Rows 3-10: Rep Rows 1 and 2 four times", with another number of times, is one mistake, the right number is
// offered, and the rows that are numbered stand for a repeat of all of them.
func TestLabelsOfRepeats(t *testing.T) {
	words := []string{"", "once", "twice", "three times", "four times", "five times", "6 times", "7 times"}
	for right := 2; right < 7; right++ {
		for said := 1; said < 8; said++ {
			last := 2 + 2*right
			text := fmt.Sprintf("CO 40 sts.\nRow 1 (RS): *K2, p2; rep from * to end.\nRow 2: Purl.\nRows 3-%d: Rep Rows 1 and 2 %s.\n"+
				"Row %d: Knit.\nRow %d: Purl.\nRep Rows 1-%[4]d once more.", last, words[said], last+1, last+2)
			out := readHeel(t, text)
			if said == right {
				if !out.Agrees || out.WorkedRows[0] != 2*(last+2) {
					t.Errorf("%v rows: %s\n%s", out.WorkedRows, judgedText(out.Findings), text)
				}
				continue
			}
			if out.Agrees || out.mistakes != 1 || out.questions > 0 || out.WorkedRows[0] != 2*(last+2) {
				t.Errorf("%v rows: %s\n%s", out.WorkedRows, judgedText(out.Findings), text)
			}
			if max(said-right, right-said) > 1 {
				continue
			}
			c := out.Findings[0].Corrections
			if len(c) == 0 {
				t.Errorf("nothing is offered\n%s", text)
			} else if mended := readHeel(t, corrected(t, text, c[0])); !mended.Agrees || mended.WorkedRows[0] != 2*(last+2) {
				t.Errorf("%+v: %s\n%s", c[0], judgedText(mended.Findings), text)
			}
		}
	}
}
