package pattern

import (
	"slices"
	"strings"
	"testing"
)

// asking is a line that has to be asked about, so that the count after it is not known.
const asking = "Work the fancy edge of the book."

// carried are texts in which something has to be asked, and what is said after it.
var carried = []struct {
	name, text string
	mistake    int    // the line of the mistake that is found, 0 for none
	taken      int    // the line from which the counts are those of the text, 0 for none
	counts     string // stitches before and after the last line, "" if they are not looked at
}{
	{"a row that takes just so many", "CO 60 sts.\n" + asking + "\nRow 1: P47.\nRow 2: K2tog, k to end. 46 sts.", 0, 3, "47-46"},
	{"and claims too few", "CO 60 sts.\n" + asking + "\nRow 1: K20, k2tog, k20. 40 sts.", 3, 3, ""},
	{"and those of the row after it", "CO 60 sts.\n" + asking + "\nRow 1: P47.\nRow 2: K2tog, k to end. 45 sts.", 4, 3, ""},
	{"a repeat that comes out by its claim",
		"CO 60 sts.\n" + asking + "\nRow 1: K3, *yo, k2tog; rep from * to last 4 sts, yo, k1, yo, k3. 239 sts.", 0, 3,
		"237-239"},
	{"a repeat that cannot come to its claim",
		"CO 60 sts.\n" + asking + "\nRow 1: K3, *yo, k2tog; rep from * to last 4 sts, yo, k1, yo, k3. 238 sts.",
		3, 3, ""},
	{"a repeat that leaves one over whatever the count",
		"CO 60 sts.\n" + asking + "\nRow 1: K3, *yo, k2tog; rep from * to last 5 sts, yo, k1, yo, k3. 239 sts.",
		3, 3, ""},
	{"decreases around by their claim", "CO 60 sts.\n" + asking + "\nRow 1: *K2, k2tog; rep from * to end. 36 sts.", 0, 3, "48-36"},
	{"a claim of what could not be read", "CO 60 sts.\nRow 1: Fancy edge of the book. 47 sts.\nRow 2: K2tog, k to end.", 0, 2, "47-46"},
	{"the change that it claims", "CO 60 sts.\nRow 1: Fancy edge of the book. (4 sts dec'd)\nRow 2: K2tog, k to end.", 0, 2, "56-55"},
	{"it is worked again as often",
		"CO 48 sts.\nRow 1: Fancy edge of the book. 50 sts.\nRow 2: Purl.\nRep last 2 rows 5 times. 60 sts.", 0, 2, "50-60"},
	{"and again too often",
		"CO 48 sts.\nRow 1: Fancy edge of the book. 50 sts.\nRow 2: Purl.\nRep last 2 rows 5 times. 62 sts.", 4, 2, ""},
	{"on so many stitches", "CO 60 sts.\n" + asking + "\nOn these 11 stitches knit 20 rows. 11 stitches.", 0, 3, ""},
	{"on others than it claims", "CO 60 sts.\n" + asking + "\nOn these 11 stitches knit 20 rows. 12 stitches.", 3, 3, ""},
	{"words after a claim", "CO 48 sts.\nRow 1: Inc 1 st at each end of next row. 50 sts; as the tide says.\nPurl 1 row.", 0, 0, "50-50"},
	{"words after a wrong claim", "CO 48 sts.\nRow 1: Inc 1 st at each end of next row. 52 sts; as the tide says.", 2, 0, ""},
	{"words after the claim of a row", "CO 48 sts.\nRow 1: K2tog, k to end. 46 sts, fancy edge.", 2, 0, ""},
	{"a claim beside the joining", "CO 48 sts.\nRow 1: K2tog, k to end.\nJoin. 48 sts.", 3, 0, ""},
	{"the others that were left out",
		"CO 56 sts.\nWork back and forth on the first 28 sts only; leave the other 26 sts on a holder.", 2, 0, ""},
}

// TestCountsGoOnPastAQuestion: where something has to be asked, what comes after it is still
// checked as far as it can be, and what is not is said.
func TestCountsGoOnPastAQuestion(t *testing.T) {
	for _, c := range carried {
		t.Run(c.name, func(t *testing.T) {
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
			if err != nil {
				t.Fatal(err)
			}
			if out.Agrees && (c.mistake != 0 || strings.Contains(c.text, "ancy")) {
				t.Errorf("agrees")
			}
			said := func(fits func(f Finding) bool) int {
				if i := slices.IndexFunc(out.Findings, fits); i >= 0 {
					return out.Findings[i].LineNumber
				}
				return 0
			}
			if line := said(func(f Finding) bool { return f.Kind == KindMistake }); line != c.mistake {
				t.Errorf("a mistake at line %d, want %d: %s", line, c.mistake, judgedText(out.Findings))
			}
			if line := said(func(f Finding) bool { return f.Reason == ReasonCountTaken }); line != c.taken {
				t.Errorf("counts taken from line %d on, want %d", line, c.taken)
			}
			last := out.Lines[len(out.Lines)-1]
			if got := numeral(last.StartStitches[0]) + "-" + numeral(last.EndStitches[0]); c.counts != "" && got != c.counts {
				t.Errorf("%s stitches, want %s", got, c.counts)
			}
		})
	}
}
