package pattern

import (
	"fmt"
	"testing"
)

// TestChangesInTheLastRow: a change "across last row" is made in a row that has been counted, however
// the rows before it are said. Each way to say twelve rows is asked with each way to say the change, and
// the row after them is on the right side.
func TestChangesInTheLastRow(t *testing.T) {
	const rib = "Row 1: *K1, p1; rep from * to end.\nRow 2: *K1, p1; rep from * to end.\n"
	for _, rows := range []string{
		"Work 12 rows even", "Knit 12 rows", "Work in k1, p1 rib for 12 rows", rib + "Rep Rows 1 and 2 5 more times",
		rib + "Rep Rows 1 and 2 until 12 rows have been worked", rib + "Rep the last 2 rows another 5 times",
		rib + "Rep Rows 1 and 2 for 10 more rows", rib + "Rep Rows 1-2, 5 times more",
	} {
		for _, change := range []struct {
			text string
			by   int
		}{
			{"inc 8 sts evenly across last row", 8}, {"dec 4 sts evenly on last row", -4}, {"increasing 6 sts evenly across the final row", 6},
			{"dec 1 st at each end of last row", -2}, {"inc 1 st in centre of last row", 1}, {"inc 2 sts evenly over the last of these rows", 2},
		} {
			text := fmt.Sprintf("CO 40 sts.\n%s, %s. %d sts.\nNext row (RS): Knit.", rows, change.text, 40+change.by)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || !out.Agrees || out.WorkedRows[0] != 13 || out.EndStitches[0] != 40+change.by {
				t.Errorf("%v: %v stitches after %v rows, %s\n%s", err, out.EndStitches, out.WorkedRows, said(&out), text)
			}
		}
	}
}

// TestChangesInListedRows: rows that are listed in the sentence that says how many there are, are among
// them; after "then", or in a sentence of their own, they come after them.
func TestChangesInListedRows(t *testing.T) {
	for text, rows := range map[string]int{
		"Knit 10 rows, dec 1 st at each end of 3rd and 7th rows. 56 sts.":                  10,
		"Work 12 rows in St st, dec 1 st at each end of 5th and 11th rows. 56 sts.":        12,
		"Knit 10 rows, then dec 1 st at each end of 3rd and 7th rows. 56 sts.":             17,
		"Knit 10 rows. Dec 1 st at each end of 3rd and 7th rows. 56 sts.":                  17,
		"Knit 4 rows, dec 1 st at each end of 3rd and 7th rows. 56 sts.":                   11,
		"Work 20 rows even, inc 1 st at each end of 3rd, 9th, 15th and 20th rows. 68 sts.": 20,
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 60 sts.\n" + text})
		if err != nil || !out.Agrees || out.WorkedRows[0] != rows {
			t.Errorf("%v: %v stitches after %v rows, %s\n%s", err, out.EndStitches, out.WorkedRows, said(&out), text)
		}
	}
}

// TestChangesInTheLastOfOpenRows: it is one of those that a length takes, and on the side that was said.
func TestChangesInTheLastOfOpenRows(t *testing.T) {
	for _, rows := range []string{"Knit until it measures 5 cm, ending with a WS row", "Work in k1, p1 rib for 5 cm, ending with a WS row",
		"Row 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 until it measures 5 cm, ending with Row 2"} {
		text := "CO 40 sts.\n" + rows + ", inc 8 sts evenly across last row. 48 sts.\nNext row (RS): Knit."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees || out.EndStitches[0] != 48 {
			t.Errorf("%v: %v stitches, %s\n%s", err, out.EndStitches, said(&out), text)
		}
	}
}
