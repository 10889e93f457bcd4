package pattern

import (
	"slices"
	"strings"
	"testing"
)

// atPlaces are texts that say where in its row a count changes, before the verb or after
// another verb than "dec": each end is one of two. Counts and rows are counted by hand.
var atPlaces = []struct {
	text     string
	on       int
	end      int // -1 for a question
	rows     int // -1 for any
	question string
}{
	{"At each end of next row, dec 1 st.", 40, 38, 1, ""},
	{"At both ends, dec 1 st every RS row 4 times.", 40, 32, 7, ""},
	{"At each armhole edge, dec 1 st on next row.", 40, 38, 1, ""},
	{"At each neck edge, dec 1 st every other row 4 times.", 40, 32, 8, ""},
	{"At neck edge, dec 1 st every other row 4 times.", 40, 36, 8, ""},
	{"At neck edge of next 4 rows, dec 1 st.", 40, 36, 4, ""},
	{"On both sides, dec 1 st every 4th row 3 times.", 40, 34, 12, ""},
	{"At beg and end of next RS row, dec 1 st.", 40, 38, 1, ""},
	{"At the beg and end of the next 4 rows, dec 1 st.", 40, 32, 4, ""},
	{"At each end of every 4th row, dec 1 st 3 times.", 40, 34, 12, ""},
	{"At each end of every row, dec 1 st until 30 sts rem.", 40, 30, 5, ""},
	{"At each end, dec 1 st until 30 sts rem.", 40, -1, -1, "which rows"},
	{"Next row: at each end, dec 1 st.", 40, 38, 1, ""},
	{"Next row (RS): At both ends dec 1 st.", 40, 38, 1, ""},
	{"At each end of next row, k2tog.", 40, 38, 1, ""},
	{"At each end of next row, work k2tog.", 40, 38, 1, ""},
	{"At each end of next row, k2tog, k to end.", 40, -1, -1, "both ends"},
	{"At each end of front and back, dec 1 st.", 40, -1, -1, "how many times"},
	{"At beg of next row and at end of foll row, dec 1 st.", 40, 38, 2, ""},
	{"CO 5 sts at each end of next row.", 40, 50, 1, ""},
	{"Cast on 5 sts at each end.", 40, 50, 0, ""},
	{"Cast on 5 sts at both ends of next row.", 40, 50, 1, ""},
	{"At each end, cast on 5 sts.", 40, 50, 0, ""},
	{"At end of next 2 rows, cast on 5 sts.", 40, 50, 2, ""},
	{"Cast on 5 sts at each underarm.", 40, 50, 0, ""},
	{"Place 10 sts at each end on holders.", 40, 20, 0, ""},
	{"At each end, place 10 sts on holders.", 40, 20, 0, ""},
	{"Slip 10 sts from each end onto holders.", 40, 20, 0, ""},
	{"Put 5 sts at each side on a thread.", 40, 30, 0, ""},
	{"Place 10 sts for each shoulder on holders.", 40, -1, -1, "in all"},
	{"Pick up and knit 10 sts along each side edge.", 40, 60, 0, ""},
	{"Pick up and knit 10 sts down each side of neck.", 40, 60, 0, ""},
	{"At each side edge, pick up and knit 10 sts.", 40, 60, 0, ""},
	{"Pick up and knit 10 sts along each front edge.", 40, -1, -1, "in all"},
	{"At each side, bind off 3 sts once.", 40, 34, 1, ""},
	{"At each side of next 4 rows, bind off 2 sts.", 40, -1, -1, "which end"},
	{"At neck edge, BO 10 sts once, 3 sts once, 2 sts twice. 20 sts.", 37, 20, -1, ""},
	{"BO at neck edge 10 sts once, then 3 sts once, then 2 sts twice.", 37, 20, -1, ""},
	{"Cast off at neck edge 5 sts.", 37, 32, 1, ""},
	{"At beg of next 2 rows, BO 5 sts.", 37, 27, 2, ""},
	{"At beg of next 2 rows, BO 5 sts, 3 sts at beg of foll 2 rows.", 37, 21, 4, ""},
	{"At armhole edge bind off 5 sts once, then 2 sts twice.", 37, 28, -1, ""},
	{"At neck edge, bind off 10 sts once, then dec 1 st every row 4 times.", 37, 23, -1, ""},
	{"At neck edge, BO 5 sts, k to end.", 37, 32, 1, ""},
}

// TestPlacesBeforeTheVerb: where a change is made counts as much before its verb as after it.
func TestPlacesBeforeTheVerb(t *testing.T) {
	for _, c := range atPlaces {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text, StartStitches: []int{c.on}})
		switch {
		case err != nil:
			t.Errorf("%q: %v", c.text, err)
		case c.end < 0:
			if out.Agrees || !asks(out.Findings, c.question) {
				t.Errorf("%q: %v stitches, not asked %q: %s", c.text, out.EndStitches, c.question, judgedText(out.Findings))
			}
		case !out.Agrees || out.EndStitches[0] != c.end || c.rows >= 0 && out.WorkedRows[0] != c.rows:
			t.Errorf("%q: %v stitches after %v rows, want %d after %d: %s", c.text, out.EndStitches, out.WorkedRows, c.end, c.rows,
				judgedText(out.Findings))
		}
	}
}

// Of two sizes each has its own.
func TestPlaceBeforeTheVerbInSizes(t *testing.T) {
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{
		Text: "At neck edge, BO 10 (11) sts once, 3 sts once, 2 sts twice. 20 (22) sts.", StartStitches: []int{37, 40}})
	if err != nil || !out.Agrees || !slices.Equal(out.EndStitches, []int{20, 22}) {
		t.Errorf("%v, agrees %v: %v, %s", out.EndStitches, out.Agrees, err, judgedText(out.Findings))
	}
}

// asks reports whether a question has some words, and no mistake is found.
func asks(list []Finding, words string) bool {
	found := false
	for _, f := range list {
		if f.Kind == KindMistake {
			return false
		}
		found = found || f.Kind == KindQuestion && strings.Contains(f.Description, words)
	}
	return found
}
