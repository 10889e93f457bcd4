package pattern

import (
	"fmt"
	"testing"
)

// TestRowsLedOften: a row that is led in as one of many, and of which nothing says how often, is asked; it is not worked once. Where the
// number of times follows, or the count until which it goes on, the rows are as many as that makes: by hand, n changes of d stitches.
func TestRowsLedOften(t *testing.T) {
	for _, rows := range []string{"every 4th row", "every RS row", "every 6th row", "every other row", "each alt row", "every row"} {
		for _, in := range []string{"In ", "On "} {
			for work, by := range map[string]int{"k2tog, k to end": 1, "k1, ssk, k to last 3 sts, k2tog, k1": 2, "k1, kfb, k to end": -1,
				"dec 1 st at each end": 2, "inc 1 st at each end": -2} {
				for _, claim := range []string{".", fmt.Sprintf(". %d sts.", 40-by)} {
					text := "CO 40 sts.\n" + in + rows + ", " + work + claim
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees || out.questions == 0 || out.mistakes > 0 {
						t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
					}
				}
			}
			for n := 2; n < 6; n++ {
				text := fmt.Sprintf("CO 40 sts.\n%s%s, dec 1 st at each end %d times. %d sts.", in, rows, n, 40-2*n)
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || !out.Agrees {
					t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
				}
			}
		}
	}
	for n := 2; n < 12; n++ {
		for _, claim := range []string{"", " 39 sts.", fmt.Sprintf(" %d sts.", 40-n)} {
			text := fmt.Sprintf("CO 40 sts.\nKnit %d rows: k2tog, k to end.%s\nPurl 1 row.", n, claim)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees || out.questions != 1 || out.mistakes > 0 {
				t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
			}
		}
	}
}
