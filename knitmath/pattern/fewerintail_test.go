package pattern

import "testing"

// TestFewerBeforeEachDecrease: rows worked again with fewer plain stitches each time come to the count that their changes say:
// 10 decreases in every second round, from 90 to 80 in the first.
func TestFewerBeforeEachDecrease(t *testing.T) {
	const rows = "Rnd 1: [K7, k2tog] 10 times. 80 sts.\nRnd 2: Knit.\n"
	for _, c := range []struct {
		text string
		sure bool // it is right
	}{
		{"Rep last 2 rnds 3 more times, working 1 st fewer before each dec. 50 sts.", true},
		{"Rep last 2 rnds 3 more times, working one stitch fewer between decreases. 50 sts.", true},
		{"Rep last 2 rnds 3 more times, working 2 sts fewer before each dec. 50 sts.", false},
		{"Rep last 2 rnds 3 more times, working two stitches fewer between decreases. 50 sts.", false},
		{"Rep last 2 rnds 3 more times, working 1 st fewer before each dec. 51 sts.", false},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: rows + c.text, StartStitches: []int{90}})
		if err != nil || out.Agrees != c.sure || c.sure && (out.EndStitches[0] != 50 || out.WorkedRows[0] != 8) {
			t.Errorf("%q: %v, %d stitches after %d rows: %s", c.text, err, out.EndStitches, out.WorkedRows, judgedText(out.Findings))
		}
	}
}
