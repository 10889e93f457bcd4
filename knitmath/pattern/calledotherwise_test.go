package pattern

import "testing"

// TestRowsCalledOtherwise: a row that is called by the change it does not make is asked about, at its label, whatever its counts say; one
// that makes it, or both, is not.
func TestRowsCalledOtherwise(t *testing.T) {
	rows := map[string]int{"K1, k2tog, k to last 3 sts, ssk, k1. 38 sts.": -1, "K1, M1L, k to last st, M1R, k1. 42 sts.": 1,
		"*K8, k2tog; rep from * to end. 36 sts.": -1, "[K9, M1L, k1] 4 times. 44 sts.": 1, "Kfb, k to last 3 sts, k2tog, k1. 40 sts.": 0,
		"K20, (k1, yo, k1) in next st, k to end. 42 sts.": 1, "K2tog, yo, k to end. 40 sts.": 0, "Knit. 40 sts.": 0}
	for name, sign := range map[string]int{"Inc row": 1, "Dec row": -1, "Increase row (RS)": 1, "Decrease Row": -1, "Row 1 (inc)": 1,
		"Row 1 (dec row)": -1, "Next row": 0, "Row 1": 0} {
		for row, change := range rows {
			text := "CO 40 sts.\n" + name + ": " + row
			want := sign*change < 0
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees == want || out.mistakes > 0 || want && out.Findings[0].LineNumber != 2 {
				t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
			}
		}
	}
}
