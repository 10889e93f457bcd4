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

// TestNeedlesListed: 16, 32 and 16 stitches on three needles are the 64 of a sock; any other number on one of them is
// found there, and the round after it is worked on all.
func TestNeedlesListed(t *testing.T) {
	for _, form := range []string{
		"N1: 16 sts; N2: %d sts; N3: 16 sts.", "Needle 1: 16 sts, Needle 2: %d sts, Needle 3: 16 sts.", "N1: 16 sts. N2: %d sts. N3: 16 sts.",
	} {
		for n := 30; n <= 34; n++ {
			text := "CO 64 sts and join in the rnd.\n" + fmt.Sprintf(form, n) + "\nRnd 1: N1: k to last 3 sts, k2tog, k1; " +
				"N2: k1, ssk, k to last 3 sts, k2tog, k1; N3: k1, ssk, k to end. 60 sts."
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees != (n == 32) || n != 32 && out.mistakes != 1 || out.questions > 0 {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}
