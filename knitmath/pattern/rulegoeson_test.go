package pattern

import (
	"fmt"
	"testing"
)

// TestRulesGoOnBehindRowsWithoutNumbers: a row that stands for every other one does so behind rows that have no number too, and
// behind spans of numbers, written in several ways. By hand: 9 stitches become 17 and 25, and 19 at last. A row of the other
// kind that is left out is told.
func TestRulesGoOnBehindRowsWithoutNumbers(t *testing.T) {
	for _, rule := range []string{"1st row and all WS rows: Purl.", "1st row (and every following WS row): Purl.",
		"Row 1 (WS) and all WS rows: Purl."} {
		for _, between := range []string{"St st 5 rows.", "Work 5 rows in St st.", "5th-9th rows: Knit.", "5th to 9th rows: Knit.",
			"5th–9th rows: Knit.",
			"5th-8th rows: Knit.", "Rows 5-8: Knit.", "5th, 6th, 7th and 8th rows: Knit."} {
			for _, last := range []int{12, 13, 14} {
				text := "Cast on 9 sts.\n" + rule + "\n2nd row: (K1, m1) 8 times, k1. 17 sts.\n" +
					"4th row: (K2, m1) 8 times, k1. 25 sts.\n" + between +
					fmt.Sprintf("\n10th row: (K2, k2tog) 6 times, k1. 19 sts.\n%dth row: Knit. 19 sts.", last)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if right := last == 12; err != nil || right && (!out.Agrees || out.WorkedRows[0] != 12) || last == 14 && out.mistakes == 0 {
					t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
				}
			}
		}
	}
}
