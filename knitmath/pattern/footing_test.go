package pattern

import (
	"slices"
	"testing"
)

// TestStandsOnUnread: what disagrees after words that cannot be read is asked about, and a mistake again once the text has said what
// was lost.
func TestStandsOnUnread(t *testing.T) {
	for _, c := range []struct {
		text    string
		mistake int // the line that is called mistaken, 0 for none
	}{
		{"CO 40 sts.\nFlurb the wibble as you like.\nNext row: K38, k2tog, k2.", 0},
		{"CO 40 sts.\nFlurb the wibble as you like.\nNext row: K to end. 44 sts.\nNext row: K2tog, k to end. 42 sts.", 4},
		{"CO 40 sts.\nK5, flurble 3 sts onto the gribbles, k to end. 37 sts.\nNext row: K2tog, k to end. 35 sts.", 3},
		{"CO 40 sts.\nRow 1: Knit.\nFlurb the wibble: Purl.\nRep Rows 1 and 2 three times more.", 0},
		{"CO 40 sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 3 three times more.", 4},
		{"CO 32 sts.\nRow 1: K2, yo, k2tog; rep from * to last 2 sts, k2.", 0},
		{"CO 52 sts.\nRow 1: K2, [k2tog, k4, k to end.", 0},
		{"CO 52 sts.\nRow 1: K2, [k2tog, k3 10 times.", 2},
		{"CO 80 (88, 96) sts.\nNext row: BO 5 (6) sts, k to end.", 0},
		{"Sizes: S (M, L)\nCO 80 (88, 96) sts.\nNext row: BO 5 (6) sts, k to end.", 3},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		at := 0
		if i := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Kind == KindMistake }); i >= 0 {
			at = out.Findings[i].LineNumber
		}
		if err != nil || at != c.mistake || out.Agrees {
			t.Errorf("%s\n%v, mistaken in line %d, want %d: %s", c.text, err, at, c.mistake, judgedText(out.Findings))
		}
	}
}
