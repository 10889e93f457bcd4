package pattern

import (
	"fmt"
	"testing"
)

// TestOnTheseAsFollows: a heel on so many stitches, whose rows stand "as follows:" below, leaves the others out. By hand: 28 of 56
// stay 28; a count of all, or another one, is a mistake.
func TestOnTheseAsFollows(t *testing.T) {
	for _, lead := range []string{"On these 28 sts work heel as follows:", "On the first 28 sts work heel flap as follows:",
		"Working on these 28 sts only, work heel as follows:", "On the next 28 sts only, work the heel flap as follows:"} {
		for _, claim := range []int{26, 27, 28, 29, 56} {
			text := "CO 56 sts and join. Knit 10 rnds.\n" + lead + "\nRow 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2: Sl 1, p to end.\n" +
				fmt.Sprintf("Rep Rows 1 and 2 12 more times. %d sts.", claim)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees != (claim == 28) || claim != 28 && out.mistakes == 0 {
				t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
			}
		}
	}
}
