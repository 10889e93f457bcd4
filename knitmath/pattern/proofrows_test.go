package pattern

import (
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// TestProofShowsWhatIsClaimed: beside a line that stands for several rows the count after the last of
// them is shown, which is what the text claims; and the rows are all of them. By hand: 60 less one
// every other row.
func TestProofShowsWhatIsClaimed(t *testing.T) {
	for _, c := range []struct {
		text        string
		line        int
		rows        string
		start, last int
	}{
		{"CO 60 sts.\nRow 1 (RS): K1, k2tog, k to end. 59 sts.\nRow 2: Purl.\nRows 3-28: Rep Rows 1 and 2. 46 sts.", 4, "3-28", 59, 46},
		{"CO 60 sts.\nRows 1-6: K1, k2tog, k to end. 54 sts.\nKnit 1 row.", 2, "1-6", 60, 54},
		{"CO 60 sts.\nRow 1: Knit.\nNext 4 rows: K2tog, k to end. 56 sts.", 3, "2-5", 60, 56},
		{"CO 60 sts.\nRow 1: K2tog, k to end. 59 sts.\nRow 2: Purl.\nRep Rows 1 and 2 3 more times. 56 sts.", 4, "3-8", 59, 56},
		{"CO 60 sts.\nRow 1: K2tog, k to end. 59 sts.\nRow 2: Purl.", 2, "1", 60, 59},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text, WithProof: true})
		if err != nil || !out.Agrees {
			t.Fatalf("%q: %v, %s", c.text, err, said(&out))
		}
		want := regexp.MustCompile(`(?m)^ +` + strconv.Itoa(c.line) + ` +` + c.rows + ` .* ` + strconv.Itoa(c.start) + ` +` +
			strconv.Itoa(c.last) + `$`)
		if !want.MatchString(out.Proof) || strings.Count(out.Proof, "  RS  ")+strings.Count(out.Proof, "  WS  ") > 4 {
			t.Errorf("%q:\n%s", c.text, out.Proof)
		}
	}
}

// One row and one stitch are no plural at the end of a proof.
func TestProofEndsInTheSingular(t *testing.T) {
	for text, want := range map[string]string{
		"CO 22 sts.\nRow 1: Knit.":    "At the end: 22 sts, after 1 row.",
		"CO 2 sts.\nRow 1: K2tog.":    "At the end: 1 st, after 1 row.",
		"CO 2 (3) sts.\nKnit 2 rows.": "At the end: 2 (3) sts, after 2 rows.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, WithProof: true})
		if err != nil || !strings.Contains(out.Proof, want) {
			t.Errorf("%q: %v\n%s", text, err, out.Proof)
		}
	}
}
