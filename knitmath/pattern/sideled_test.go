package pattern

import (
	"slices"
	"testing"
)

// TestSideAfterAHeading: "Divide for neck (RS): k28, turn" is a heading and a row, whose side is compared;
// written anew it keeps both.
func TestSideAfterAHeading(t *testing.T) {
	for _, heading := range []string{"Divide for neck", "Shape neck", "Divide for V-neck", "Left shoulder"} {
		right := "CO 68 sts.\n" + heading + " (RS): K28, k2tog, k to end. 67 sts"
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: right})
		if err != nil || !out.Agrees || out.EndStitches[0] != 67 {
			t.Errorf("%q: %v, %s", right, err, judgedText(out.Findings))
		}
		if f, err := FormatInstructions(FormatInstructionsInput{Text: right}); err != nil ||
			f.Text != "CO 68 sts.\n"+heading+" (RS): k28, k2tog, k to end (67 sts)" {
			t.Errorf("%v, %q", err, f.Text)
		}
		wrong := "CO 68 sts.\nRow 1 (RS): Knit.\n" + heading + " (RS): K28, k2tog, k to end. 67 sts"
		out, err = CheckInstructions(t.Context(), CheckInstructionsInput{Text: wrong})
		if err != nil || out.mistakes != 1 || !slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonSide }) {
			t.Errorf("%q: %v, %s", wrong, err, judgedText(out.Findings))
		}
	}
}
