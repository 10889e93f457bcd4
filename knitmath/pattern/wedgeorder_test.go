package pattern

import "testing"

// TestWedgesInOrder: sets of rows that stand below an order are worked as often and in the order that it
// says. Wedge 1 takes a stitch away, wedge 2 adds three; the counts are worked beside each order.
func TestWedgesInOrder(t *testing.T) {
	const rows = " The rows of each follow, written once; nothing is cast on or bound off between them.\n" +
		"Wedge 1:\nRow 1 (RS): k2tog, k to end.\nRow 2 (WS): p to end.\n" +
		"Wedge 2:\nRow 1 (RS): kfb, kfb, kfb, k to end.\nRow 2 (WS): p to end.\n"
	for _, c := range []struct {
		order     string
		end, rows int
		agrees    bool
	}{
		{"Work 4 wedges: wedge 1 (3 times), then wedge 2.", 40 - 3 + 3, 8, true},
		{"Work 3 wedges: wedge 2, then wedge 1 (twice).", 40 + 3 - 2, 6, true},
		{"Work 7 wedges: [wedge 1, then wedge 2 (twice)] twice, then wedge 1.", 40 - 1 + 6 - 1 + 6 - 1, 14, true},
		{"Work 5 wedges: wedge 1 (3 times), then wedge 2.", 0, 0, false}, // which are four
		{"Work 2 wedges: wedge 1, then wedge 3.", 0, 0, false},           // which is not written
	} {
		text := "Cast on 40 stitches.\n" + c.order + rows +
			"Once all 4 wedges are worked:\nBind off 1 st, k to end."
		if !c.agrees {
			text = "Cast on 40 stitches.\n" + c.order + rows
		}
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.Agrees != c.agrees ||
			c.agrees && (out.EndStitches[0] != c.end-1 || out.WorkedRows[0] != c.rows+1) {
			t.Errorf("%v: %v stitches after %v rows, agrees %v, %s\n%s", err, out.EndStitches, out.WorkedRows, out.Agrees,
				said(&out), text)
		}
	}
}

// TestPiecesAreJoined: a yoke begins with the stitches that are joined, whatever was on the needle.
func TestPiecesAreJoined(t *testing.T) {
	for _, before := range []string{"", "Place 7 stitches on hold at each underarm.\n", "CO 84 sts. Join in the round.\nKnit 10 rounds.\n"} {
		text := before + "Join body and sleeves in the round: 112 stitches.\n" +
			"Round 1, to adjust the count: [k12, k2tog] 8 times (104 stitches).\n" +
			"Rounds 2-10: band 1 on 104 stitches, 13 repeats of 8.\nRounds 11-15: work even."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees || out.EndStitches[0] != 104 {
			t.Errorf("%v: %v, %s\n%s", err, out.EndStitches, said(&out), text)
		}
	}
}
