package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestRowsToldInManyPlaces: a count of rows after a repeat, in words of many kinds and whatever follows, is compared with
// the rows that were worked: 2 and twice 16 more. Common practice.
func TestRowsToldInManyPlaces(t *testing.T) {
	const repeat = "CO 36 sts.\nRow 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2 (WS): Sl 1, p to end.\nRep Rows 1 and 2 16 more times"
	told := []string{". # rows.", ". # rows in total.", ".\n# rows worked.", " (# rows).", " (# rows of pattern).", " (# rows of lace).",
		" (# pattern rows).", " (# rows of rib).", ". (# rows of the pattern)", ". (# rows.)", " (# rows of slip-stitch pattern)."}
	then := []string{"", "\nHEEL TURN\nRow 1 (RS): Knit.", "\nTurn heel as follows:\nRow 1 (RS): Knit.", "\nHeel turn:\nRow 1 (RS): Knit.",
		"\nKnit 4 rows.", "\n\nInstep\nKnit 4 rows."}
	for _, words := range told {
		for _, next := range then {
			for by := -3; by <= 3; by++ {
				text := repeat + strings.Replace(words, "#", fmt.Sprint(34+by), 1) + next
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || by == 0 && !out.Agrees || by != 0 && by != -2 && out.Agrees { // 32 are those of the repeat alone
					t.Errorf("off by %d: agrees is %v, %v %s\n%s", by, out.Agrees, err, said(&out), text)
				}
			}
		}
	}
}
