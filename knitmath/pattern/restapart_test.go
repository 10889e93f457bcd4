package pattern

import (
	"fmt"
	"testing"
)

// TestRestOfATurn: 24 stitches of 78 are worked and the work is turned; "the rest", called by whatever word, are the 54 that the
// turn left, and not all. When the first side is done 30 of them wait for the neck, and the second side has the other 24.
func TestRestOfATurn(t *testing.T) {
	seen := map[bool]int{}
	for _, rest := range []string{"Place rem sts on holder.", "Leave remaining stitches on a holder.",
		"Leave the other sts on a spare needle.",
		"Slip rem unworked sts to waste yarn.", "Leave the rest on a holder.", "Place the rest of the sts on a stitch holder.",
		"Put the others on a thread.", "Leave rem 54 sts on a holder."} {
		for _, how := range []string{"turn. ", "turn.\n"} {
			for _, done := range []string{"BO all sts.", "Break yarn and place sts on a holder.", "Place these 22 sts on a holder."} {
				for n := 20; n < 28; n++ {
					text := "Next row (RS): K24, " + how + rest + "\nBO 2 sts at beg of next row.\nKnit 1 row. 22 sts.\n" + done +
						fmt.Sprintf("\nWith RS facing, place centre 30 sts on holder, rejoin yarn to rem sts and k to end. %d sts.", n)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{78}})
					if seen[n == 24]++; err != nil || (n == 24) != out.Agrees {
						t.Errorf("%d: %v %s\n%s", n, err, said(&out), text)
					}
				}
			}
		}
	}
	t.Logf("%d right and %d planted", seen[true], seen[false])
}
