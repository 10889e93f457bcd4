package pattern

import (
	"strconv"
	"testing"
)

// TestSentencesLedAfterARow: a sentence after a row, led by words of with what and how, is a direction of its own. By how many
// stitches the row and the direction change 72 is said beside them; another count is not agreed with. Common practice all.
func TestSentencesLedAfterARow(t *testing.T) {
	type said struct {
		text string
		by   int
	}
	rows := []said{{"Row 1: K to end.", 0}, {"Next row: K2tog, k to end.", -1}, {"K1, p to last st, k1.", 0},
		{"Row 1: *K2, p2; rep from * to end.", 0}, {"Next row (RS): K1, m1, k to end.", 1}}
	leads := []string{"Using larger needles, ", "With larger needles, ", "Working in patt, ", "Keeping patt correct, ",
		"Working both sides at once, ",
		"Using A, ", "Keeping edge sts correct, ", "Maintaining patt, ", "Working in rib, "}
	directions := []said{{"dec 1 st at each end of next row.", -2}, {"dec 1 st at each end of next and foll 3 alt rows.", -8},
		{"BO 4 sts at beg of next 2 rows.", -8}, {"work 4 rows even.", 0}, {"inc 1 st at each end of every 4th row 5 times.", 10},
		{"dec 1 st at each neck edge every row 4 times.", -8}, {"knit 6 rows.", 0}}
	for _, row := range rows {
		for _, lead := range leads {
			for _, d := range directions {
				for off := range 2 {
					end := 72 + row.by + d.by
					text := row.text + " " + lead + d.text + " " + strconv.Itoa(end+off) + " sts."
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{72}})
					if err != nil || out.Agrees != (off == 0) || off == 0 && !single(out.EndStitches, end) {
						t.Errorf("%s: agrees %v, %v, %v: %s", text, out.Agrees, out.EndStitches, err, judgedText(out.Findings))
					}
				}
			}
		}
	}
}
