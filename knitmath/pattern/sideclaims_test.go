package pattern

import (
	"regexp"
	"slices"
	"strings"
	"testing"
)

// sidesOnce is how many of the sides exchanged in right drafts are said once, at their line. Where
// a piece says only two, nobody can tell which of them is wrong.
const sidesOnce = 19

// TestSwappedSideIsSaidOnce exchanges each side that right drafts say of a row.
func TestSwappedSideIsSaidOnce(t *testing.T) {
	side := regexp.MustCompile(`\((RS|WS)\)|\b(RS|WS) facing`)
	other := strings.NewReplacer("RS", "WS", "WS", "RS")
	swapped, once := 0, 0
	for _, text := range agreeingDrafts(t) {
		for _, at := range side.FindAllStringIndex(text, -1) {
			out, err := CheckInstructions(t.Context(),
				CheckInstructionsInput{Text: text[:at[0]] + other.Replace(text[at[0]:at[1]]) + text[at[1]:]})
			if err != nil {
				t.Fatal(err)
			}
			swapped++
			line := strings.Count(text[:at[0]], "\n") + 1
			switch {
			case out.mistakes > 1:
				t.Errorf("%q: %s", strings.Split(text, "\n")[line-1], judgedText(out.Findings))
			case out.mistakes == 1 && slices.ContainsFunc(out.Findings, func(f Finding) bool {
				return f.Reason == ReasonSide && f.LineNumber == line
			}):
				once++
			}
		}
	}
	t.Logf("%d sides exchanged, %d said once at their line", swapped, once)
	if once < sidesOnce {
		t.Errorf("%d of %d are said once at their line, %d stood", once, swapped, sidesOnce)
	}
}

// TestSidesOfAPiece: which of several labels is wrong, and what is said where a row is missing.
func TestSidesOfAPiece(t *testing.T) {
	const start, end = "CO 9 sts.\nNext row (RS): K9.\n", "Next row (RS): K9.\nNext row (WS): P9."
	for text, want := range map[string]string{
		"CO 9 sts.\nRow 1 (RS): K9.\nRow 2 (RS): P9.\nRow 3 (RS): K9.\nRow 4 (WS): P9.":           "3:8 SIDE_DISAGREES",
		"CO 9 sts.\nRow 1 (WS): K9.\nRow 2 (WS): P9.\nRow 3 (RS): K9.\nRow 4 (WS): P9.":           "2:8 SIDE_DISAGREES",
		start + "Next row (WS): P9.\nNext row (WS): K9.\nNext row (RS): P9.\nNext row (WS): K9.":  "4:11 SIDE_DISAGREES",
		start + "Next row (WS): P9.\nWork 3 rows even, ending with a RS row.\nNext row (RS): K9.": "5:11 SIDE_DISAGREES",
		start + "Knit 1 row, ending with a RS row.\n" + end:                                       "3:1 SIDE_DISAGREES",
		start + "Next row (RS): K9.\nBO all sts.\nCO 9 sts.\n" + end:                              "3:11 SIDE_DISAGREES",
	} {
		w := Read(text, Options{}).Work(Start{})
		if got := found(w.Findings); got != want {
			t.Errorf("%q: found %q, want %q", text, got, want)
		}
	}
}
