package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestNeedlesAfterCastOn: 120 stitches, or 120, 132 and 144, are 40, 44 and 48 on each of three needles. Any other number
// is found wherever it stands after the cast-on; common practice.
func TestNeedlesAfterCastOn(t *testing.T) {
	for _, sizes := range [][]int{{120}, {120, 132, 144}} {
		for _, form := range []string{
			"Cast on %s sts. (%s on each of 3 needles).", "Cast on %s sts (%s on each of 3 needles).",
			"Cast on %s sts, %s on each of 3 needles.", "Cast on %s sts. %s sts on each of 3 needles.",
			"Cast on %s sts.\n(%s sts on each of 3 dpns)", "Cast on %s sts and join in the rnd. (%s on each of three needles).",
			"Cast on %s sts and divide over 3 needles. (%s on each of 3 needles).",
		} {
			for off := -3; off <= 3; off++ {
				each := make([]int, len(sizes))
				for i, n := range sizes {
					each[i] = n/3 + off
				}
				text := fmt.Sprintf(form, listOf(sizes), listOf(each)) + "\nKnit 3 rnds."
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				if out.Agrees != (off == 0) || off != 0 && (out.mistakes != 1 || !strings.Contains(said(&out), "COUNT_DISAGREES")) {
					t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
				}
			}
		}
	}
}
