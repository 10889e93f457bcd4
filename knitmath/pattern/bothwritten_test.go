package pattern

import (
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestCountAndChangeAreWritten: a row that claims both is written with both, and says the same when it is read again.
func TestCountAndChangeAreWritten(t *testing.T) {
	row := Row{Label: "Row 1 (RS)", Steps: []Step{{Operation: stitch.K2tog, Times: one}, {Operation: stitch.Knit, RemainingStitches: toEnd}},
		ClaimedStitches: []int{94, 102}, ClaimedChangeStitches: []int{-1}}
	out, err := FormatInstructions(FormatInstructionsInput{Rows: []Row{row}})
	if err != nil {
		t.Fatal(err)
	}
	const want = "Row 1 (RS): k2tog, k to end (1 st dec; 94, 102 sts)"
	if out.Text != want {
		t.Errorf("%q, not %q", out.Text, want)
	}
	in := CheckInstructionsInput{Text: out.Text, StartStitches: []int{95, 103}}
	if again, err := CheckInstructions(t.Context(), in); err != nil || !again.Agrees {
		t.Errorf("%q: %v, %s", out.Text, err, judgedText(again.Findings))
	}
	in.StartStitches = []int{95, 104}
	if again, err := CheckInstructions(t.Context(), in); err != nil || again.Agrees {
		t.Errorf("%q on 104 agrees, %v", out.Text, err)
	}
}
