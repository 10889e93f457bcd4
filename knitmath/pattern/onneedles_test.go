package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestNeedlesFollowed: what a round has for one needle fits the stitches that are told to lie on it. By hand: a repeat of so many
// comes out where the needle is a multiple of it; steps that are written out take just its stitches; and a needle that loses one in
// each of three rounds has three fewer for the fourth.
func TestNeedlesFollowed(t *testing.T) {
	layings := []func(n int) string{
		func(n int) string {
			return fmt.Sprintf("Divide evenly onto 4 needles (%d sts on each) and join in the round.\n", n)
		},
		func(n int) string {
			return fmt.Sprintf("Divide on 4 needles: %d-%d-%d-%d. Join in the round.\n", n, n, n, n)
		},
		func(n int) string {
			return fmt.Sprintf("Join in the round.\nN1: %d sts; N2: %d sts; N3: %d sts; N4: %d sts.\n", n, n, n, n)
		},
		func(n int) string {
			return fmt.Sprintf("Join in the round. %d sts on each of 4 needles.\nKnit 3 rnds.\n", n)
		},
	}
	for n := 20; n < knittest.Sweep(40, 24); n++ {
		for each := 2; each < 7; each++ {
			for _, laid := range layings {
				for _, form := range []string{"*k%d, p1*", "*k%d, p1; rep from * to end", "[k%d, p1] to end of needle"} {
					needle := strings.Replace(fmt.Sprintf(form, each-1), "k", "K", 1)
					text := fmt.Sprintf("CO %d sts. ", 4*n) + laid(n) + "Rnd 1: Needle 1: " + needle + ". Needles 2-4: Knit.\nRnd 2: Knit."
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if right := n%each == 0; err != nil || out.Agrees != right || !right && out.mistakes != 1 || out.questions > 0 {
						t.Errorf("%q: %v, %s", text, err, said(&out))
					}
				}
			}
		}
	}
	for n := 12; n < knittest.Sweep(30, 15); n++ {
		for last := n - 7; last < n; last++ {
			text := fmt.Sprintf("CO %d sts. ", 4*n) + layings[1](n) + "Rnd 1: Needle 1: K to last 3 sts, k2tog, k1. Needle 2: K1, ssk, k to end. " +
				"Needles 3 and 4: Knit.\nRnd 2: Knit.\nRep Rnds 1 and 2 twice more.\n" +
				fmt.Sprintf("Rnd 7: Needle 1: K%d, k2tog. Needle 2: Knit. Needle 3: Knit. Needle 4: Knit. %d sts.", last, 4*n-7)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if right := last+2 == n-3; err != nil || out.Agrees != right || !right && out.mistakes != 1 || out.questions > 0 {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}

// TestNeedlesMoved: stitches that are moved to other needles, or lie as nobody says, are not followed.
func TestNeedlesMoved(t *testing.T) {
	for _, moved := range []string{
		"Rearrange the sts as follows: slip the first 2 sts of Needle 2 to Needle 1.\n",
		"Rnd 1: Needle 1: K14, k2tog. Needle 2: Ssk, k14. Needles 3 and 4: Knit.\nPlace 2 sts from each side needle onto the next needle.\n",
	} {
		text := "CO 64 sts. Divide on 4 needles: 16-16-16-16. Join in the round.\n" + moved + "Next rnd: Needle 1: K18. Needles 2-4: Knit.\n"
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.mistakes > 0 {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}
