package pattern

import "testing"

// TestTensionAfterCastOn: a tension or gauge that is told after the cast-on, by whatever name, is no count of the piece.
func TestTensionAfterCastOn(t *testing.T) {
	for _, line := range []string{"Knitting tension: 30 sts in stocking st = 10 cm", "Tension: 30 sts and 40 rows = 10 cm",
		"Stitch gauge: 30 sts = 10 cm", "Knitting gauge (St st): 30 sts = 10 cm", "Row tension: 40 rows = 10 cm"} {
		text := "CO 64 sts.\n" + line + ".\nRow 1 (RS): K1, ssk, k to end. 63 sts."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees || out.EndStitches[0] != 63 {
			t.Errorf("%s: %v, %v, %s", line, err, out.EndStitches, said(&out))
		}
	}
}
