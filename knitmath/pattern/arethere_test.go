package pattern

import (
	"strings"
	"testing"
)

// TestOneIsThere: a verb agrees with the number of stitches that are there.
func TestOneIsThere(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"CO 1 st. Row 1: k2tog.", "the row takes 2, 1 is there"},
		{"CO 3 sts. Row 1: k4.", "the row takes 4, 3 are there"},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		if err != nil || len(out.Findings) == 0 || !strings.Contains(out.Findings[0].Description, c.want) {
			t.Errorf("%q: %v, %+v", c.text, err, out.Findings)
		}
	}
}
