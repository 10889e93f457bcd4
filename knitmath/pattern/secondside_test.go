package pattern

import (
	"strings"
	"testing"
)

// TestSecondSideIsWrittenOut: rows that a text only refers to are offered, mirrored, where they
// come out.
func TestSecondSideIsWrittenOut(t *testing.T) {
	head := "CO 80 sts.\nKnit 10 rows.\nNext row (RS): K30 and turn, leaving rem sts on a holder.\n" +
		"Work on these sts only for first side of neck.\n"
	rejoin := "With RS facing, slip centre 20 sts onto a holder, rejoin yarn to rem sts, K to end. 30 sts.\n" +
		"Complete to match first side, reversing shapings.\n"
	for _, c := range []struct{ first, second string }{
		{"Next row (WS): Purl.\nDec row (RS): K to last 3 sts, k2tog, k1. 29 sts.\nDec 1 st at neck edge on next 4 rows. 25 sts.\n" +
			"Work straight until front measures 20 cm, ending with RS facing for next row.\nCast off 11 sts at beg of next RS row.\n" +
			"Next row (WS): Purl.\nCast off rem 14 sts.\n",
			"Next row (WS): Purl.\nDec row (RS): k1, ssk, k to end (29 sts).\nDec 1 st at neck edge on next 4 rows. 25 sts.\n" +
				"Work straight until front measures 20 cm, ending with WS facing for next row.\nCast off 11 sts at beg of next WS row.\n" +
				"Next row (RS): Knit.\nCast off rem 14 sts"},
		{"Next row (WS): Purl.\nNext row (RS): K to last 3 sts, k2tog, k1. 29 sts.\nNext row: Purl.\nBO all sts.\n",
			"Next row (WS): Purl.\nNext row (RS): k1, ssk, k to end (29 sts).\nNext row: Purl.\nBO all sts"},
		// A mistake of the first side is not written a second time.
		{"Next row (WS): Purl.\nNext row (RS): K to last 3 sts, k2tog, k1. 28 sts.\nBO all sts.\n", ""},
		// What is not read is not mirrored.
		{"Next row (WS): Purl.\nFlurble the neck.\nBO all sts.\n", ""},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: head + c.first + rejoin, WithProof: true})
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		for _, f := range out.Findings {
			if strings.HasPrefix(f.Text, "Complete") && len(f.Corrections) > 0 {
				got = f.Corrections[0].Replacement
			}
		}
		if got != c.second {
			t.Errorf("after\n%s\nwritten\n%s\nwant\n%s", c.first, got, c.second)
		}
		if first, _, _ := strings.Cut(c.second, "\n"); !strings.Contains(out.Proof, "+ "+first) && first != "" {
			t.Errorf("the proof does not have %q:\n%s", first, out.Proof)
		}
	}
}
