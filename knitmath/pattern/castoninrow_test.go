package pattern

import "testing"

// Stitches that are cast on within a row are on the right needle, whatever is said of where:
// what follows works the rest of the left one and not them.
func TestCastOnWithinARow(t *testing.T) {
	const round = "CO 100 sts. Join in the rnd.\nRnd 1: "
	for _, c := range []struct {
		text   string
		agrees bool
	}{
		{round + "Place next 40 sts on holder, CO 8 sts for underarm, k60. 68 sts.", true},
		{round + "Place next 40 sts on holder, CO 8 sts for underarm, k68. 68 sts.", false},
		{round + "Place next 40 sts on holder, CO 8 sts at the underarm, k60. 68 sts.", true},
		{round + "Place next 40 sts on holder, CO 8 sts at underarm, k68. 68 sts.", false},
		{round + "Place next 40 sts on holder, cast on 8 sts over the gap, knit to end. 68 sts.", true},
		{round + "K10, place next 40 sts on holder, CO 8 sts for underarm, k50. 68 sts.", true},
		{"CO 60 sts.\nRow 1 (RS): CO 8 sts for neck, k60. 68 sts.", true},
		{"CO 60 sts.\nRow 1 (RS): CO 8 sts for neck, k68. 68 sts.", false},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		if err != nil {
			t.Fatal(err)
		}
		if out.Agrees != c.agrees {
			t.Errorf("%q: agrees %v: %v", c.text, out.Agrees, out.Findings)
		}
	}
}
