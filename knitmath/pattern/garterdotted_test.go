package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestGarterDotted: "g.st" is garter stitch, and its full stop ends no sentence that goes on.
func TestGarterDotted(t *testing.T) {
	for _, name := range []string{"g.st", "g.st.", "gst", "g-st", "G.st."} {
		for _, form := range []string{"Work in %s for 10 rows. %d sts.", "Work 10 rows in %s. %d sts.",
			"Work 10 rows %s, then knit 2 rows. %d sts."} {
			for _, claim := range []int{60, 59} {
				told(t, "CO 60 sts.\n"+strings.ReplaceAll(fmt.Sprintf(form, name, claim), "..", "."), claim == 60)
			}
		}
	}
}

// TestNeedlesShortTogether: "N2 and N3:" are two needles: by hand, each decrease of a heading is worked on as many.
func TestNeedlesShortTogether(t *testing.T) {
	for _, and := range []string{"and", "&"} {
		for claim := 51; claim < 56; claim++ {
			told(t, fmt.Sprintf("CO 56 sts and join. 14 sts on each of 4 needles.\nRnd 1: N1: K to last 3 sts, k2tog, k1; N2 %s N3: knit; "+
				"N4: k1, ssk, k to end. %d sts.", and, claim), claim == 54)
			told(t, fmt.Sprintf("CO 56 sts and join. 14 sts on each of 4 needles.\nRnd 1: N1 %s N3: K1, ssk, k to end; "+
				"N2 %s N4: k to last 3 sts, k2tog, k1. %d sts.", and, and, claim), claim == 52)
		}
	}
}
