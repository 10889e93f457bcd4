package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestEachToldBesideACount: what lies on each needle, or on each side of a round that markers part in two, is told beside a
// count, before a toe is grafted or for needles in a list of their own. It must come to the stitches that there are: so many on
// each of n are n times as many (arithmetic). Any number but the right one is found, once.
func TestEachToldBesideACount(t *testing.T) {
	const sides = "CO %d sts, join. Rnd 1: K%d, pm, k%d.\nRnd 2: *K1, ssk, k to 3 sts before m, k2tog, k1, sl m; rep from * once."
	for half := 20; half <= knittest.Sweep(60, 25); half += 5 {
		for off := -3; off <= 3; off++ {
			n := 2 * half
			round := fmt.Sprintf(sides, n+4, half+2, half+2)
			for _, text := range []string{
				fmt.Sprintf("CO %d sts and join. Knit 1 rnd.\nGraft toe, %d sts on each needle.", n, half+off),
				fmt.Sprintf("CO %d sts and join. Knit 1 rnd.\nGraft toe (%d sts on each of 2 needles).", n, half+off),
				fmt.Sprintf("CO %d sts and join. Knit 1 rnd. %d sts; %d sts on each needle.", n, n, half+off),
				fmt.Sprintf("%s %d sts; %d sts each side.", round, n, half+off),
				fmt.Sprintf("%s %d sts, %d sts on each side.", round, n, half+off),
				fmt.Sprintf("%s (%d sts; %d sts each side)", round, n, half+off),
				fmt.Sprintf("CO %d sts and join. Knit 3 rnds.\nNeedles: %d sts on N1, 8 sts on N2, 9 sts on N3, %d sts on N4.\nKnit 1 rnd.",
					n+17, half+off, half),
			} {
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || out.Agrees != (off == 0) || off != 0 && out.mistakes != 1 {
					t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
				}
			}
		}
	}
}

// TestEachSideLeftAlone: of a round with more markers than two, and of one with none, it is not known what a side is.
func TestEachSideLeftAlone(t *testing.T) {
	for _, text := range []string{
		"CO 100 sts, join. Rnd 1: K40, pm, k10, pm, k40, pm, k10.\nRnd 2: Knit. 100 sts; 40 sts each side.",
		"CO 100 sts, join. Rnd 1: Knit. 100 sts; 40 sts each side.",
		"CO 100 sts, join. Rnd 1: K40, pm, k60.\nRnd 2: Knit. 100 sts; 50 sts each side.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees {
			t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
		}
	}
}
