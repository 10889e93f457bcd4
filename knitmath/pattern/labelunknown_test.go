package pattern

import (
	"strings"
	"testing"
)

// TestRowsOfUnknownName: of a row that is called by a made-up word it is said that it is worked where it stands, at the word; not of
// one whose name says what it is, nor of one that the text calls again. Names of rows: common practice.
func TestRowsOfUnknownName(t *testing.T) {
	for _, word := range strings.Fields("flurble grumph xyzzy plonkit Wibble Snorf quuxle tazzle") {
		for _, form := range []string{"% row: K20. 20 sts.\nPurl 1 row.", "Knit 1 row.\n% row (WS): P20.", "% rnd: K20."} {
			text := "CO 20 sts.\n" + strings.Replace(form, "%", word, 1)
			for _, called := range []bool{false, true} {
				if called {
					text += "\nWork " + word + " row once more."
				}
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil || saysUnknownRow(&out, word) == called {
					t.Errorf("%q: %v, %s", text, err, judgedText(out.Findings))
				}
			}
		}
	}
	for _, name := range strings.Fields(`Set-up Setup Buttonhole Eyelet Increase Dec Foundation Joining Dividing Picot Turning Ridge Next
		Last Thumb Gusset`) {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 20 sts.\nKnit 2 rows.\n" + name + " row: K20. 20 sts."})
		if err != nil || !out.Agrees || saysUnknownRow(&out, name) {
			t.Errorf("%s row: %v, %s", name, err, judgedText(out.Findings))
		}
	}
}

// saysUnknownRow reports whether a reading stands at a name of a row.
func saysUnknownRow(out *CheckedInstructions, name string) bool {
	for _, f := range out.Findings {
		if f.Kind == KindReading && f.Text == name {
			return true
		}
	}
	return false
}
