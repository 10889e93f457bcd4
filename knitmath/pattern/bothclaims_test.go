package pattern

import "testing"

// Where a line says both by how much the stitches change and how many there are, both
// are compared: the change is right here, and the count is right only where it is 39.
func TestBothClaimsAreCompared(t *testing.T) {
	const row = "CO 40 sts.\nRow 1: K2, k2tog, k to end"
	for text, right := range map[string]bool{
		row + ". 1 st dec; 39 sts.":        true,
		row + ". 1 st dec; 38 sts.":        false,
		row + " (1 st dec'd) — 39 sts.":    true,
		row + " (1 st dec'd) — 38 sts.":    false,
		row + " — 1 st dec'd; 38 sts rem.": false,
		row + " — 2 sts dec'd; 39 sts.":    false,
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil {
			t.Fatal(err)
		}
		if out.Agrees != right {
			t.Errorf("%q: agrees is %v, %v", text, out.Agrees, out.Findings)
		}
	}
}
