package pattern

import (
	"strings"
	"testing"
)

// TestPickUpRate reads how closely stitches are picked up: it is no number of stitches, which the line counts.
func TestPickUpRate(t *testing.T) {
	rates := []string{"3 sts for every 4 rows", "2 sts in every 3 rows", "1 st in each slipped st", "1 st for every row",
		"1 st for each ridge", "3 sts out of every 4 rows"}
	counts := []string{". 96 sts.", " (96 sts).", ", 96 sts.", ": 96 sts.", " = 96 sts."}
	const bound, live = "Cast on 100 sts.\nKnit 40 rows.\nBind off.\nBUTTON BAND\n", "Cast on 100 sts.\nKnit 40 rows.\n"
	type asked struct {
		begin, pick, end string
		mistakes, asks   int
	}
	var all []asked
	for _, rate := range rates {
		for _, where := range []string{"", " along left front edge"} {
			for _, count := range counts {
				pick := "pick up and knit " + rate + where + count
				all = append(all, asked{bound, pick, "96", 0, 0}, asked{bound, pick, "95", 1, 0}, asked{live, pick, "196", 0, 0},
					asked{live, strings.ReplaceAll(pick, "96", "196"), "196", 0, 0})
			}
			all = append(all, asked{bound, "pick up and knit " + rate + where + ".", "96", 0, 1},
				asked{bound, "pick up and knit 96 sts" + where + " (" + rate + ").", "96", 0, 0},
				asked{bound, "pick up and knit 96 sts" + where + " (about " + rate + ").", "95", 1, 0})
		}
	}
	all = append(all, asked{bound, "pick up and knit 96 sts in the 96 edge sts.", "96", 0, 0},
		asked{bound, "pick up and knit 3 sts for every 4 rows along left front edge, 30 sts across back neck, and 3 sts for every 4 rows along " +
			"right front edge. 210 sts.", "210", 0, 0})
	for _, a := range all {
		text := a.begin + "With RS facing, " + a.pick + "\nKnit 6 rows.\nBind off all " + a.end + " sts."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil {
			t.Fatal(err)
		}
		if out.mistakes != a.mistakes || out.questions != a.asks {
			t.Errorf("%q: %d mistakes and %d questions, %d and %d stood: %v", text, out.mistakes, out.questions, a.mistakes, a.asks, out.Findings)
		}
	}
}
