package pattern

import (
	"fmt"
	"testing"
)

// TestOffCentre: what a row binds off or puts aside in its middle leaves as many stitches on each side as is told, or the text does not
// agree, although both sides together are right. The words are common practice.
func TestOffCentre(t *testing.T) {
	for _, row := range []string{"K%d, BO %d sts, k to end. %d sts each side.",
		"K%d, join a second ball of yarn and BO center %d sts, k to end. %d sts each side.",
		"K%d, place center %d sts on a holder, k to end. %d sts each side.", "K%d, bind off next %d sts, k to end (%d sts each side)."} {
		for side := 9; side <= 21; side += 6 {
			for middle := 8; middle <= 30; middle += 11 {
				for off := -2; off <= 2; off++ {
					text := fmt.Sprintf("CO %d sts. Knit 20 rows.\nNext row (RS): ", 2*side+middle) + fmt.Sprintf(row, side+off, middle, side)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (off == 0) || out.questions > 0 {
						t.Errorf("%v %s\n%s", err, said(&out), text)
					}
				}
			}
		}
	}
}

// TestLastRowOnOtherSide: the last row of a set that names its sides cannot be worked once more by itself. The first can.
func TestLastRowOnOtherSide(t *testing.T) {
	for _, sides := range [][2]string{{"WS", "RS"}, {"RS", "WS"}} {
		for times := 1; times <= 6; times++ {
			for row := 1; row <= 2; row++ {
				for _, again := range []string{"then work Row %d once more.", "then rep Row %d once more.", "ending with Row 2.\nRep Row %d once."} {
					text := fmt.Sprintf("CO 85 sts.\nRow 1 (%s): P1, *k1, p1; rep from * to end.\nRow 2 (%s): K1, *p1, k1; rep from * to end.\n"+
						"Rep Rows 1 and 2 %d more times, "+again+"\nBO all sts.", sides[0], sides[1], times, row)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if err != nil || out.Agrees != (row == 1) {
						t.Errorf("%v %s\n%s", err, said(&out), text)
					}
				}
			}
		}
	}
}
