package pattern

import "testing"

// What may be given as the label of a row is what is read as one.
func TestIsLabel(t *testing.T) {
	for text, want := range map[string]bool{
		"Row 1": true, "Row 1 (RS)": true, "Rnd 12": true, "Rows 3-8": true, "Next row": true, "Row 2 and all WS rows": true,
		"": false, "k5": false, "Row 1: k5": false, "Sleeve": false, "Row 1\nRow 2": false, "sts": false,
	} {
		if got := isLabel(text); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}
