package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// TestPiecesJoined: two sleeves and the halves of a body are joined for a yoke. By hand: front and back together are the body, and
// either sleeve is the one that was put aside; any other row takes stitches that are not there, or leaves some behind.
func TestPiecesJoined(t *testing.T) {
	const body, sleeve = "CO %[1]d sts and join in the round. Knit 10 rounds.", "CO %[2]d sts and join in the round. Knit 10 rounds."
	pieces := []string{
		"Body: " + body + " Place body on hold.\nSleeve: " + sleeve + " Place sts on hold. Make second sleeve the same.\n",
		"Sleeve: " + sleeve + " Place sts on hold. Make second sleeve the same.\nBody: " + body + "\n",
		"Body: " + body + " Break yarn.\nSleeve: " + sleeve + " Place sts on hold. Make second sleeve the same.\n",
		"Body: " + body + " Set aside.\nSleeves (make 2): " + sleeve + "\n",
	}
	joins := []string{
		"Joining rnd: Knit across %[2]d sts of left sleeve, %[3]d sts of front, %[2]d sts of right sleeve, %[4]d sts of back.",
		"Joining rnd: Knit %[2]d sleeve sts, pm, %[3]d back sts, pm, %[2]d sleeve sts, pm, %[4]d front sts, pm. %[5]d sts.",
	}
	for all := 150; all < knittest.Sweep(200, 156); all += 6 {
		for off := -5; off <= 5; off++ {
			for k, made := range pieces {
				for _, join := range joins {
					front, back, arm := all/2, all/2+off, all/3+1
					text := fmt.Sprintf(made, all, arm) + fmt.Sprintf(join, all, arm, front, back, front+back+2*arm)
					out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
					if right := off == 0; err != nil || out.Agrees != right || out.questions > 0 || !right && out.mistakes != 1 {
						t.Errorf("%d %q: %v, %s", k, text, err, said(&out))
					}
				}
			}
		}
	}
}
