package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestChangesWhileRowsAreWorked: a change of which the text says the place and not the rows, beside several rows, is asked about; with a
// row, a schedule, one row or a sentence of its own it is not. All words are common practice.
func TestChangesWhileRowsAreWorked(t *testing.T) {
	rows := []string{"Work 10 rows", "Knit 6 rows", "Work 8 rows in St st", "Work even until piece measures 10 cm",
		"Purl 12 rows", "Rib 6 rows"}
	joins := []string{", ", " while ", " and "}
	changes := []string{"increasing", "decreasing", "inc 1 st", "dec 1 st", "increasing 1 st", "decreasing one st"}
	places := []string{" at each end", " at both ends", " at neck edge", " at each side", " at beginning"}
	ask := func(text string, agrees bool) {
		t.Helper()
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 80 sts.\nRow 1: Knit.\n" + text})
		if err != nil || out.Agrees != agrees {
			t.Errorf("agrees %v with %q: %v %s", out.Agrees, text, err, judgedText(out.Findings))
		}
	}
	for _, r := range rows {
		for _, j := range joins {
			for _, c := range changes {
				for _, p := range places {
					if strings.HasSuffix(r, "cm") && j != ", " || j == " while " && !strings.Contains(c, "ing") {
						continue
					}
					ask(fmt.Sprintf("%s%s%s%s.\nBO all sts.", r, j, c, p), false)
				}
			}
		}
	}
	for _, much := range []string{"Decrease evenly.", "Knit 1 row, increasing evenly.", "Next row: Purl, decreasing evenly across.",
		"Dec evenly across next row.",
		"Purl 1 row, inc evenly across row."} {
		ask(much+"\nKnit 2 rows.\nBO all sts.", false)
		ask(strings.Replace(much, "evenly", "8 sts evenly", 1)+"\nKnit 2 rows.\nBO all sts.", true)
	}
	for _, right := range []string{"Work 10 rows, inc 1 st at each end of every other row.", "Purl 1 row, decreasing 1 st at each end.",
		"Work 10 rows, then inc 1 st at each end of next row.", "Knit 6 rows, dec 1 st at each end of last row. 78 sts.",
		"Work 10 rows. Inc 1 st at each end. 82 sts.", "Knit 4 rows, dec 6 sts evenly across last row."} {
		ask(right+"\nBO all sts.", true)
	}
}
