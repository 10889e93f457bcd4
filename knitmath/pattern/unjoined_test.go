package pattern

import (
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestUnjoinedPieceIsFlat: a toy in the round has ears that are cast on, not joined and worked in rows: their second
// row is on the wrong side. A piece that is joined, or whose rows are called rounds, stays in the round, and so does
// the first, of which the question says so; common practice.
func TestUnjoinedPieceIsFlat(t *testing.T) {
	const body = "CO 20 sts and join in the rnd.\nKnit 4 rnds.\nBind off.\n"
	for _, c := range []struct {
		text   string
		agrees bool
	}{
		{body + "EARS\nCO 14 sts.\nRow 1 (RS): Knit.\nRow 2 (WS): Purl.\nRow 3 (RS): K2tog, k to end. 13 sts.", true},
		{body + "EARS (make 2)\nCast on 14 sts.\nRow 1 (RS): Knit.\nRow 2 (WS): Purl.\nBind off.\n" +
			"TAIL\nCO 6 sts and join in the rnd.\nKnit 9 rnds.", true},
		{body + "CO 14 sts.\nRow 1 (WS): Purl.\nRow 2 (RS): Knit.\nRow 3 (WS): Purl.", true},
		{body + "CO 14 sts.\nRow 1 (RS): Knit.\nRow 2 (WS): Purl.\nRow 3 (WS): Knit.\nRow 4 (RS): Knit.", false},
		{body + "CO 14 sts and join in the rnd.\nRnd 1 (RS): Knit.\nRnd 2 (WS): Purl.", false},
		{body + "CO 14 sts.\nRnd 1 (RS): Knit.\nRnd 2 (WS): Purl.", false},
		{"CO 14 sts.\nRow 1 (RS): Knit.\nRow 2 (WS): Purl.", false},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text, Construction: stitch.InTheRound})
		if err != nil || out.Agrees != c.agrees {
			t.Errorf("%q: agrees is %v, %v, %s", c.text, out.Agrees, err, said(&out))
		}
	}
}
