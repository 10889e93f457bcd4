package pattern

import "testing"

// Rows on which a row is worked again, by their numbers: they are read where the row
// that is called was the last, with its number; elsewhere they are asked, and no count is
// said to agree.
func TestRowsNamedByTheirNumbers(t *testing.T) {
	const dec = "k1, ssk, k to last 3 sts, k2tog, k1.\n"
	for _, c := range []struct {
		text      string
		agrees    bool
		end, rows int
	}{
		{"Work 4 rows even.\nRow 5 (RS, decrease row): " + dec +
			"Repeat the decrease row on rows 9, 11 and 15: 32 stitches.\nWork 2 rows even.", true, 32, 17},
		{"Row 1 (RS, decrease row): " + dec + "Repeat the decrease row on rows 5 (RS) and 9 (RS): 34 stitches.", true, 34, 9},
		{"Row 1 (RS, decrease row): " + dec + "Repeat the decrease row on row 5: 36 stitches.", true, 36, 5},
		// One row too few for what is claimed.
		{"Row 1 (RS, decrease row): " + dec + "Repeat the decrease row on rows 5 and 9: 32 stitches.", false, 34, 9},
		// It has no number, or is not the last row, or they do not go up.
		{"Decrease row (RS): " + dec + "Repeat the decrease row on rows 5 and 9: 34 stitches.", false, -1, 0},
		{"Row 1 (RS, decrease row): " + dec + "Row 2: p.\nRepeat the decrease row on rows 5 and 9: 34 stitches.", false, -1, 0},
		{"Row 5 (RS, decrease row): " + dec + "Repeat the decrease row on rows 3 and 9: 34 stitches.", false, -1, 0},
		{"Row 5 (RS, decrease row): " + dec + "Repeat the decrease row on rows 9 and 9: 34 stitches.", false, -1, 0},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text, StartStitches: []int{40}})
		if err != nil {
			t.Fatal(err)
		}
		if out.Agrees != c.agrees || c.end > 0 && (out.EndStitches[0] != c.end || out.WorkedRows[0] != c.rows) {
			t.Errorf("%s\nagrees %v, %v after %v rows: %+v", c.text, out.Agrees, out.EndStitches, out.WorkedRows, out.Findings)
		}
	}
}

// Two intervals in alternation, "each" so often, and what comes after them.
func TestAlternatingSoOftenEach(t *testing.T) {
	text := "Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1.\n" +
		"Repeat the decrease row every 4th and 6th row alternately twice more each, then every 6th row twice: 26 stitches."
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{40}})
	if err != nil || !out.Agrees || out.EndStitches[0] != 26 || out.WorkedRows[0] != 1+2*10+12 {
		t.Errorf("%v, %+v", err, out)
	}
}
