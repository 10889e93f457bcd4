package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// TestHeelThatEnds: a heel turned on stitches of which the others were put aside, or left, ends with its piece wherever the round
// begins. By hand: as many stitches on either side as rows take.
func TestHeelThatEnds(t *testing.T) {
	for _, lead := range []string{
		"CO %[1]d sts and join. Place %[2]d sts on holder for instep.\n",
		"CO %[1]d sts and join. Place the last %[2]d sts on hold.\n",
		"CO %[1]d sts and join. Place next %[2]d sts on waste yarn.\n",
		"CO %[1]d sts and join. Set aside %[2]d sts for the instep.\n",
		"CO %[1]d sts and join. The heel flap is worked over the first %[2]d sts. The remaining %[2]d sts rest for the instep.\n",
		"CO %[1]d sts and join. Heel flap is worked over %[2]d sts.\nRow 1: K%[2]d, turn.\nRow 2: P%[2]d, turn.\n",
		"CO %[1]d sts and join. K%[2]d, turn, leaving the other %[2]d sts on hold.\nRow 1 (WS): P%[2]d.\n",
		"CO %[1]d sts and join. The heel is worked back and forth over the next %[2]d sts.\n",
		"CO %[2]d sts.\n",
	} {
		for heel := 28; heel < 37; heel += 4 {
			for off := -1; off <= 3; off++ {
				text := fmt.Sprintf(lead, 2*heel, heel)
				first := heel/2 + 1
				rem := heel - first - 3 // beyond the first turn, as beyond the second
				text += fmt.Sprintf("Row 1 (RS): K%d, ssk, k1, turn.\nRow 2 (WS): Sl 1, p3, p2tog, p1, turn.\n"+
					"Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn.\nRow 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.\n"+
					"Rep Rows 3 and 4 %d more times.", first+off, rem/2-1)
				agreeing(t, text, nil, false, off == 0, -1)
			}
		}
	}
}

// TestPiecesPlacedTogether: pieces that are put on one needle are joined, in other words than "join". By hand: the body and twice the
// sleeve.
func TestPiecesPlacedTogether(t *testing.T) {
	for _, words := range []string{"Place the sleeves on the same circular needle as the body = %d stitches.",
		"Place body and sleeves on one circular needle = %d stitches.", "Place body and sleeves on one needle: %d sts.",
		"Slip body and both sleeves onto one long circular needle (%d sts).", "Put the sleeves on the needle together with the body - %d sts.",
		"Transfer the sleeves to the body needle: %d sts.", "Place all pieces, sleeves and body, on one circular needle = %d sts.",
		"Place sleeves and body from holders onto the same needle = %d stitches.", "Arrange body and sleeves on one needle, %d sts.",
		"Join sleeves and body: %d sts.", "Place the two sleeves and the body on the same needle = %d sts in total."} {
		for body := 160; body < 170; body += 4 {
			for _, off := range []int{0, -12, 1} {
				all := body + 120
				agreeing(t, fmt.Sprintf("BODY\nCO %d sts and join. Knit 10 rnds. Place sts on hold.\nSLEEVES (make 2)\nCO 60 sts and join. "+
					"Knit 10 rnds. Place sts on hold.\nYOKE\n"+words+"\nKnit 4 rnds. %d sts.", body, all+off, all+off), nil, false, off == 0, all)
			}
		}
	}
}

// TestSizeForgotten: what ends a piece is written for some sizes, and nothing for the others.
func TestSizeForgotten(t *testing.T) {
	for _, only := range []string{"Second size only:", "Size 2 only:", "2nd size only:", "For the second size only:", "Larger size only:"} {
		for _, off := range []string{"BO all 88 sts.", "Bind off all sts.", "Cast off.", "Cut yarn and draw through all sts.",
			"Place all sts on a holder."} {
			text := "CO 96 (104) sts and join.\n" + only + "\nNext round: [k11, k2tog] 8 times. 96 sts.\n" +
				"%sRound 1: [k10, k2tog] 8 times. 88 sts.\n" + off
			for _, close := range []string{"", "All sizes:\n", "\n"} {
				if got := fmt.Sprintf(text, close); close == "" {
					agreeing(t, got, nil, false, false, 0)
					agreeing(t, got+"\nCO 20 (30) sts. Knit 4 rows. BO all sts.", nil, false, false, 0)
				} else {
					agreeing(t, got, nil, false, true, 0)
				}
			}
		}
	}
	agreeing(t, "BACK\nCO 96 (104) sts.\nSecond size only:\nNext row: K2tog, k to last 2 sts, k2tog. 102 sts.\nKnit 2 rows.\nFRONT\n"+
		"Row 1: Knit. 96 (102) sts.\nBO all sts.", nil, false, true, 0)
}

// TestSetAside: stitches that are set aside are put aside, and "new" ones are cast on.
func TestSetAside(t *testing.T) {
	for _, words := range []string{"Set aside %d sts for the thumb.", "Set %d sts aside.", "Set the next %d sts aside for the thumb.",
		"Set aside the last %d sts.", "Put %d sts aside.", "Lay %d sts aside for the thumb.", "Set aside the first %d sts on a thread.",
		"Leave %d sts aside.", "Set the first %d sts aside on a piece of yarn.", "Reserve %d sts for the thumb.", "Set aside %d thumb sts.",
		"Place %d sts aside.", "Set aside the next %d sts for later."} {
		for n := 8; n < 12; n++ {
			for off := -1; off <= 1; off++ {
				agreeing(t, fmt.Sprintf("CO 60 sts.\nKnit 4 rows.\n"+words+"\nKnit 1 row. %d sts.", n, 60-n+off), nil, false, off == 0, 60-n)
				agreeing(t, fmt.Sprintf("CO 60 sts.\nKnit 4 rows.\n"+words+"\nBO all %d sts.", n, 60-n+off), nil, false, off == 0, 0)
			}
		}
	}
	for _, words := range []string{"Make %d new sts at the end of the row.", "Make %d new stitches at end of row.", "Create %d new sts.",
		"Make %d new sts over the gap.", "Make %d extra sts at the end of the row.", "Add %d new sts at the end of the row."} {
		for n := 3; n < 6; n++ {
			for off := -1; off <= 1; off++ {
				agreeing(t, fmt.Sprintf("CO 60 sts.\nKnit 4 rows.\n"+words+"\nKnit 1 row. %d sts.", n, 60+n+off), nil, false, off == 0, 60+n)
			}
		}
	}
}

// TestTotalsTold: a count in other words than "there are".
func TestTotalsTold(t *testing.T) {
	for _, words := range []string{"Stitch total is %d.", "Total number of sts is %d.", "Note: you will have %d sts.", "Stitch total: %d.",
		"The total number of stitches is now %d.", "The stitch count is %d.", "Stitch count should be %d.", "Your stitch count is now %d.",
		"Total stitches: %d.", "Total sts = %d.", "Number of sts is now %d.", "Note: you should have %d sts.", "Note: stitch count is %d.",
		"The number of stitches on the needle is %d.", "Stitches on needle: %d.", "The total is %d sts.", "The count is now %d sts.",
		"Final stitch count: %d.", "Total: %d sts.", "The stitch count remains %d.", "Sts on needle = %d.", "Check: %d sts.",
		"Note: there are %d sts.", "Your total should be %d sts."} {
		for off := -2; off <= 2; off++ {
			for _, way := range []string{"CO 60 sts.\nKnit 4 rows.\n", "CO 60 sts.\nKnit 4 rows. ",
				"CO 62 sts.\nRow 1: K2tog, k to last 2 sts, k2tog.\n",
				"CO 62 sts.\nRow 1: K2tog, k to last 2 sts, k2tog. "} {
				if strings.HasPrefix(words, "Note") || strings.HasPrefix(words, "Check") {
					way = strings.TrimRight(way, " \n") + "\n"
				}
				agreeing(t, way+fmt.Sprintf(words, 60+off), nil, false, off == 0, 60)
			}
		}
	}
}
