package pattern

import (
	"fmt"
	"testing"
)

// oneNumber are texts with one number left open, which is right alone, worked by hand beside it.
var oneNumber = []struct {
	text  string
	right int
}{
	// 60 - 11 x 4
	{"CO 64 sts. Join.\nRnd 1: *K1, ssk, k26, k2tog, k1; rep from * once more. 60 sts.\nRnd 2: Knit.\n" +
		"Dec 4 sts every other rnd in this way %d more times. 16 sts.", 11},
	// 1 + 2 x 2 = 5 taken, 4 left
	{"co 45 st\nknit 1 row plain so you can rest\ndec row: k1, k2tog, yo, k2tog, knit to end (%d st)", 44},
	// the chart keeps 96, and 5 of them are decreased
	{"CO 96 sts, join.\n### Colourwork\nRnds 1-15: Work Rnds 1-15 of Chart A (12-st repeat), 8 times around. 96 sts.\nRnd 16: Knit.\n" +
		"Rnds 17-31: Work Rnds 1-15 of Chart A once more.\nNext rnd: Knit, dec 5 sts evenly. %d sts.\n\nHIP\nRnd 1: Knit. 91 sts.", 91},
	// 4 + 9 x 10 + 4 taken
	{"With No. 2 needles cast on %d sts. Work in ribbing of k 2, p 2 for 3 inches, ending each right side row with k 2.\n" +
		"Inc Row: K 4, * inc in next st, k 9; repeat from * 8 times more, k 4. (107 sts)", 98},
	// five gaps of 2
	{"CO 72 sts.\nButtonhole row (RS): Rib 8, [BO 2 sts, rib until there are 11 sts on right needle after bound-off sts] 4 times, BO 2 sts, " +
		"rib to end. 62 sts.\nNext row: Rib to end, casting on %d sts over those bound off. 72 sts.", 2},
	// 5 from the thread, 5 along the edge, 1 at each side
	{"CO 32 sts, join.\nNext rnd: K5, place next 5 sts on a thread, CO 5 sts, k to end. 32 sts.\nKnit 3 rnds.\nBO.\nThumb\n" +
		"Take up the 5 sts from the thread on 5.5 mm needles, pick up %d sts along the cast-on edge above and 1 st at each side = 12 sts.", 5},
	// 80 + 100 + 80 + 100 and four corners, after a part of which nothing is known
	{"CO 40 sts.\nWork as for Square from Row 1 to end.\nBORDER\nWith RS facing, pick up and knit 80 sts along the lower edge, pm, 1 st in " +
		"the corner, pm, 100 sts along the side, pm, 1 st in the corner, pm, 80 sts along the upper edge, pm, 1 st in the corner, pm, " +
		"%d sts along the other side, pm, 1 st in the corner, pm. 364 sts. Join.\nRnd 1: Purl.", 100},
	// 83 - 31 - 21
	{"CO 83 sts.\nNeck: K 31 and slip these sts to a holder; bind off the center %d sts, k to end. (31 sts)\nP 1 row.", 21},
	// the flap is worked on all 36
	{"CO 36 sts.\nRow 1 (RS): *Sl 1, k1; rep from * 17 more times, turn.\nRow 2 (WS): Sl 1, p%d, turn.\n" +
		"Rep Rows 1 and 2 another 5 times.", 35},
	// 61 + 24, then twice 6 off
	{"CO 61 sts.\nWork in pattern as on back, increasing 1 st. at both ends of the 9th and every following 8th row until there are " +
		"85 sts., working the extra sts. into the pattern.\nCast off %d sts. at the beginning of the next 2 rows. 73 sts.", 6},
	// 66 - 26 = 20 + 20
	{"CO 66 sts.\nRow 1: Knit.\nRow 2: Purl.\nContinue in this manner, one row plain and one row purl, for thirty rows more.\nKnit 20, " +
		"cast off %d, knit to end.\nWork on the last 20 stitches only, leaving the others on a spare needle.\nKnit 30 rows.", 26},
}

// TestOneNumberIsRight: of each text only one number is not called a mistake.
func TestOneNumberIsRight(t *testing.T) {
	for i, c := range oneNumber {
		for by := -2; by <= 2; by++ {
			n := c.right + by
			if n < 1 {
				continue
			}
			text := fmt.Sprintf(c.text, n)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || (by == 0) != (out.mistakes == 0) {
				t.Errorf("%d: with %d, not %d: %v, %s\n%s", i, n, c.right, err, said(&out), text)
			}
		}
	}
}

// TestRoundsOfShortRows: short rows that grow around the beginning of a round. By hand: between the
// turns lie 24 stitches, then 12 + 12 + 1 + 5 up to the next; the round keeps its 84.
func TestRoundsOfShortRows(t *testing.T) {
	text := "CO 84 sts. PM and join to work in the round.\nRnd 1: Knit.\nRow 1 (RS): K12, w&t.\nRow 2 (WS): P24, w&t.\n" +
		"Row 3: K to wrapped st, knit wrap with its st, k5, w&t.\nRow 4: P to wrapped st, purl wrap with its st, p5, w&t.\n" +
		"Next row (RS): K to beg-of-rnd marker.\nNext rnd: Knit all sts, picking up the remaining wraps. %d sts.\nKnit 20 rnds."
	for n := 82; n < 87; n++ {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, n)})
		if err != nil || (n == 84) != (out.mistakes == 0) {
			t.Errorf("%d: %v, %s", n, err, said(&out))
		}
	}
}
