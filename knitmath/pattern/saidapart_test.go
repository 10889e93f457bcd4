package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestNumberOfBindOff: after rows 1 to n row n+1 is bound off (counting); any other number is found. A rule for other rows leaves
// one unwritten.
func TestNumberOfBindOff(t *testing.T) {
	for n := 2; n <= 12; n++ {
		for last := max(n-1, 1); last <= n+5; last++ {
			for _, form := range []string{"CO 48 sts. Rows 1-%d: Knit.\nRow %d: BO all sts.", "CO 48 sts.\nRows 1-%d: Knit.\nRow %d: Bind off."} {
				text := fmt.Sprintf(form, n, last)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || out.Agrees != (last == n+1) || last != n+1 && out.mistakes != 1 {
					t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
				}
			}
		}
	}
	for _, text := range []string{
		"CO 48 sts.\nRow 1: Knit.\nRow 2 and all WS rows: Purl.\nRow 3: Knit.\nRow 5: BO all sts.",
		"CO 48 sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 four more times.\nRow 11: BO all sts.",
		"CO 48 sts. Rows 1-10: Knit. Knit 4 rows.\nRow 15: BO all sts.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees {
			t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
		}
	}
}

// TestReadingIsSaid: where a text leaves open whether changes are made within rows or after them, or writes a row in another way
// than its rule for others, what was taken is said; where it leaves nothing open, nothing is.
func TestReadingIsSaid(t *testing.T) {
	const after, ruled = "after the rows that are said before", "although a rule for other rows"
	const garment = "CO 60 sts.\nRow 1: Knit.\nRow 2 and all WS rows: Purl.\nRow 3: Knit.\n"
	for _, c := range []struct {
		text, want string
		there      bool
	}{
		{"CO 60 sts. Work 12 rows in St st, dec 1 st at each end of every 4th row 5 times. (50 sts)", after, true},
		{"CO 60 sts. Knit 8 rows, inc 1 st at each end of every 6th row 3 times. (66 sts)", after, true},
		{"CO 60 sts. Work 12 rows in St st. Dec 1 st at each end of every 4th row 5 times. (50 sts)", after, false},
		{"CO 60 sts. Work 12 rows in St st, then dec 1 st at each end of every 4th row 5 times. (50 sts)", after, false},
		{"CO 60 sts. Work 12 rows in St st, dec 1 st at each end of every 4th row. (54 sts)", after, false},
		{garment + "Row 4: Knit.\nRow 5: Knit.", ruled, true},
		{garment + "Row 4: K across.", ruled, true},
		{garment + "Row 4: Purl.\nRow 5: Knit.", ruled, false},
		{garment + "Row 5: Purl.\nRow 7: Knit.", ruled, false},
		{garment + "Row 4: P2tog, p to end. 59 sts.\nRow 5: Knit.", ruled, false},
		{"CO 60 sts.\nRow 2 and all WS rows: Purl.\nRow 1: Knit.\nRow 3: Knit.\nRow 4: Knit.", ruled, true},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		said := judgedText(out.Findings)
		for _, f := range out.Findings {
			said += f.Description
		}
		if err != nil || !out.Agrees || strings.Contains(said, c.want) != c.there {
			t.Errorf("%q: agrees is %v, %v, %s", c.text, out.Agrees, err, said)
		}
	}
}
