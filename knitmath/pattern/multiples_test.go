package pattern

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// TestMultiplesOfAHeading: a traditional lace of 8 stitches and 1 comes out on multiples of 8 plus 1
// and on nothing else that a heading may say: it takes 1 + 8n, n counted by hand from its row. A
// multiple of that, 16 plus 1 or 8 plus 9, is as right.
func TestMultiplesOfAHeading(t *testing.T) {
	for each := 2; each < 20; each++ {
		for plus := range 12 {
			text := fmt.Sprintf("Old lace (multiple of %d sts + %d)\nRow 1: K1, *yo, k2, sk2p, k2, yo, k1; rep from * to end.\nRow 2: Purl.\n\n"+
				"CO 33 sts.\nWork in Old lace for 8 rows.", each, plus)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if right := each%8 == 0 && plus%8 == 1; err != nil || right != out.Agrees {
				t.Errorf("%d plus %d: %v, %s", each, plus, err, said(&out))
			}
		}
	}
}

// TestNeedlesTold: so many stitches on each of so many needles are all there are.
func TestNeedlesTold(t *testing.T) {
	for needles := 3; needles < 6; needles++ {
		for each := 10; each < 31; each++ {
			text := fmt.Sprintf("CO 60 sts. Arrange sts on %d dpns: %d sts per needle. Join.\nKnit 4 rnds.", needles, each)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || (needles*each == 60) != out.Agrees {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}

// TestRowsNamedTwice: a repeat names each of its rows once.
func TestRowsNamedTwice(t *testing.T) {
	for first := 1; first < 4; first++ {
		for second := 1; second < 4; second++ {
			text := "CO 60 sts.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: Knit.\nRep Rows " + strconv.Itoa(first) + " and " +
				strconv.Itoa(second) + " 4 more times."
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			twice := slices.ContainsFunc(out.Findings, func(f Finding) bool {
				return f.Reason == ReasonRowNumber && strings.Contains(f.Description, "twice")
			})
			if err != nil || (first == second) != twice {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}

// TestHeelsWorkedToTheEnd: a heel of 30 stitches is turned over 6 and narrowed by 1 each row, until
// all are worked and 18 are left: 12 rows take 2 each from beyond the gap, by hand, where one is left before
// it, so that the decrease closes it, and one is worked after the decrease. Else stitches stay behind, are not there, or
// the gap stays open: that is asked or found, though the count that is claimed would be passed on the way.
func TestHeelsWorkedToTheEnd(t *testing.T) {
	for before := 1; before < 4; before++ {
		for after := 1; after < 3; after++ {
			text := fmt.Sprintf("CO 30 sts.\nRow 1 (RS): K17, ssk, k1, turn.\nRow 2: Sl 1, p5, p2tog, p1, turn.\n"+
				"Row 3: Sl 1, k to %[1]s before gap, ssk, k%[2]d, turn.\nRow 4: Sl 1, p to %[1]s before gap, p2tog, p%[2]d, turn.\n"+
				"Rep Rows 3 and 4 until all heel sts have been worked. 18 heel sts rem.", stitches(before), after)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || (before == 1 && after == 1) != out.Agrees {
				t.Errorf("%d before and %d after: %v, %s", before, after, err, said(&out))
			}
		}
	}
}
