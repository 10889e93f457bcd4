package pattern

import (
	"strconv"
	"strings"
	"testing"
)

// TestTheRestIsCompared: {H} stitches of 56 are put aside, and the others are named by their number {R} in any words; another
// number is not agreed with. All the words are common practice.
func TestTheRestIsCompared(t *testing.T) {
	aside := []string{"Put {H} sts on holder.", "Place first {H} sts on a holder.", "Slip {H} sts to waste yarn.",
		"Leave {H} sts on a spare needle."}
	rest := []string{"Work on rem {R} sts.", "Working on rem {R} sts, knit 4 rows.", "On the rem {R} sts, work 4 rows in garter st.",
		"Cont on rem {R} sts for front.", "Continue in St st on remaining {R} sts for 10 rows.", "Work back and forth on rem {R} sts.",
		"BO rem {R} sts.", "Place rem {R} sts on another holder.", "Knit 2 rows on rem {R} sts.", "Place last {R} sts on another holder."}
	for _, first := range aside {
		for _, then := range rest {
			for _, held := range []int{20, 13, 31} {
				for _, off := range []int{0, -2, -1, 1, 2} {
					text := strings.NewReplacer("{H}", strconv.Itoa(held), "{R}", strconv.Itoa(56-held+off)).Replace(first + " " + then)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{56}})
					if err != nil || out.Agrees != (off == 0) {
						t.Errorf("%s: agrees %v, %v: %s", text, out.Agrees, err, judgedText(out.Findings))
					}
				}
			}
		}
	}
}

// TestMoreThatCannotBe: a claim that no reading comes to, with the one beside it that does.
func TestMoreThatCannotBe(t *testing.T) {
	for _, c := range []struct {
		start, end int
		right, bad string
	}{
		{56, 36, "K20, slip these 20 sts to a holder, k to end.", "K20, slip these 19 sts to a holder, k to end."},
		{56, 20, "K20, slip these 20 sts onto a holder, BO 16, k to end.", "K20, slip these 19 sts onto a holder, BO 16, k to end."},
		{60, 68, "Inc 1 st each end of next row, then every 4th row 3 times. 68 sts.",
			"Inc 1 st each end of next row, then every 4th row 3 times. 66 sts."},
		{60, 59, "Beg with a k row, work 9 rows in st st, ending with a k row. Next row (WS): P2tog, p to end.",
			"Beg with a k row, work 10 rows in st st, ending with a k row. Next row (RS): K2tog, k to end."},
	} {
		for i, text := range []string{c.right, c.bad} {
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{c.start}})
			if err != nil || out.Agrees != (i == 0) || i == 0 && !single(out.EndStitches, c.end) {
				t.Errorf("%s: agrees %v, %v, %v: %s", text, out.Agrees, out.EndStitches, err, judgedText(out.Findings))
			}
		}
	}
}
