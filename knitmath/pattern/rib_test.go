package pattern

import (
	"fmt"
	"slices"
	"testing"
)

// ribForms name ribs of so many knit and so many purl stitches; common practice.
var ribForms = []string{"Work in k%d, p%d rib for 20 rnds.", "Work in k%d, p%d rib for 5 cm.", "Rib (k%d, p%d) for 10 rnds.",
	"Work 10 rnds in %dx%d rib.",
	"Work 10 rnds in %d/%d ribbing.", "Work 10 rnds in %d x %d rib.",
	"Work in K%d, P%d ribbing until cuff measures 5 cm.",
	"Work 10 rnds in k%d/p%d rib.", "Work in k%d, p%d ribbing as follows for 10 rnds.",
	"Using smaller needles, work in k%d, p%d rib for 10 rnds.",
	"Rnds 1-10: Work in k%d, p%d rib.", "Change to smaller needles and work in k%d, p%d rib for 3 cm."}

// TestRibsInTheRound: a rib that is named comes out in the round on a multiple of its stitches, and
// on no other number; what is asked instead is not agreed with either. Back and forth it may end
// within a repeat, and so it may where it is shaped in its first round.
func TestRibsInTheRound(t *testing.T) {
	for _, form := range ribForms {
		for _, rib := range [][2]int{{1, 1}, {2, 2}, {3, 1}, {2, 3}} {
			for on := 40; on < 52; on++ {
				rows := fmt.Sprintf(form, rib[0], rib[1])
				text := fmt.Sprintf("CO %d sts. Join in the round.\nKnit 2 rnds.\n%s", on, rows)
				round, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				if fits := on%(rib[0]+rib[1]) == 0; round.mistakes > 0 || !fits && round.Agrees || fits && asksOfRib(&round) {
					t.Errorf("%d sts, %q: %s", on, rows, said(&round))
				}
				flat, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf("CO %d sts.\nKnit 2 rows.\n%s", on, rows)})
				if err != nil || flat.mistakes > 0 || asksOfRib(&flat) {
					t.Errorf("%d sts back and forth, %q: %v, %s", on, rows, err, said(&flat))
				}
			}
		}
	}
	const shaped = "CO 63 sts. Join in the round.\nWork in k2, p2 rib for 10 rnds, dec 3 sts evenly on first rnd. 60 sts."
	if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: shaped}); err != nil || !out.Agrees {
		t.Errorf("%q: %v, %s", shaped, err, said(&out))
	}
}

func asksOfRib(out *CheckedInstructions) bool {
	return slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonUneven })
}
