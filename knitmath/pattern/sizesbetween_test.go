package pattern

import (
	"fmt"
	"slices"
	"testing"
)

// TestSizesPartlyInBrackets: 5 (6) 7 are three sizes wherever such a list stands in a row, and 5 (6) 7 (8) four.
// By hand: half the stitches, one fewer, are knit before the turn, or the rest after them.
func TestSizesPartlyInBrackets(t *testing.T) {
	for _, c := range []struct{ all, first, rest, last string }{
		{"60 (64) 72", "29 (31) 35", "31 (33) 37", "2 (2) 2"},
		{"60 (64) 72 (80)", "29 (31) 35 (39)", "31 (33) 37 (41)", "2 (2) 2 (2)"},
		{"60 (64) 72 (80) 88", "29 (31) 35 (39) 43", "31 (33) 37 (41) 45", "2 (2) 2 (2) 2"},
		{"60 [64] 72", "29 [31] 35", "31 [33] 37", "2 [2] 2"},
	} {
		sizes := []int{60, 64, 72, 80, 88}[:len(slices.DeleteFunc([]byte(c.last), func(b byte) bool { return b != '2' }))]
		for _, row := range []string{
			"K%[1]s, turn.\nRow 2: Purl.\nRow 3: Knit across all %[3]s sts.", "K%[1]s, k%[2]s.", "Knit %[1]s sts, k%[2]s.", "K%[1]s, p%[2]s; turn.",
			"K%[1]s, M1, k2tog, k to end. (%[3]s sts)", "K%[1]s, knit %[2]s\nRow 2: Purl.", "Sl 1, k%[1]s, k to end.",
		} {
			text := "Cast on " + c.all + " sts.\nRow 1 (RS): " + fmt.Sprintf(row, c.first, c.rest, c.all)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || !out.Agrees || !slices.Equal(out.EndStitches, sizes) {
				t.Errorf("%q: %v, %s, %v", text, err, said(&out), out.EndStitches)
			}
		}
	}
}
