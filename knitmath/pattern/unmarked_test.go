package pattern

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestMarkersAtAGusset: stitches are picked up along a flap of a heel, markers placed beside the instep and the round moved to the
// centre of the heel; then a round or two by the markers. Right only where every marker is come to: at the places that are counted
// here by hand, round the needle from the centre.
func TestMarkersAtAGusset(t *testing.T) {
	for _, c := range []struct{ heel, flap, instep int }{{18, 16, 32}, {16, 14, 28}, {20, 17, 36}, {12, 10, 24}} {
		sole := c.heel/2 + c.flap
		total := 2*sole + c.instep
		setups := []string{
			"K%[1]d, pick up and knit %[2]d sts, pm, pick up and knit %[3]d sts, pm, " +
				"pick up and knit %[2]d sts, k%[4]d. Beg of rnd is now at centre of heel. %[5]d sts.",
			"K%[1]d, pick up and knit %[2]d sts along edge of flap, pm, pick up and knit %[3]d sts, pm, " +
				"pick up and knit %[2]d sts, k%[4]d. (%[5]d sts)",
		}
		for _, setup := range setups {
			start := fmt.Sprintf("CO %d sts.\nSet-up rnd: ", c.heel) + fmt.Sprintf(setup, c.heel, c.flap, c.instep, c.heel/2, total) + "\n"
			for before := 1; before < 5; before++ {
				for off := -2; off <= 2; off++ {
					text := start + fmt.Sprintf("Rnd 1: K to %d sts before m, k2tog, k1, sl m, k%d, sl m, k1, ssk, k to end. (%d sts)\n"+
						"Rnd 2: K%d, sl m, k%[2]d, sl m, k%[4]d.", before, c.instep+off, total-2, sole-1)
					out := readHeel(t, text)
					if out.Agrees != (before == 3 && off == 0) {
						t.Errorf("%v: %s\n%s", out.Agrees, judgedText(out.Findings), text)
					}
				}
			}
		}
	}
}

// TestRoundsMoved: a round that is begun elsewhere from now on, after plain stitches or with a decrease among them, takes the markers
// along.
func TestRoundsMoved(t *testing.T) {
	for by := 3; by < 12; by++ {
		for off := -1; off <= 1; off++ {
			for _, change := range [...]string{"", ", k2tog"} {
				taken, lost := by+2*bit(change != ""), bit(change != "")
				text := fmt.Sprintf("CO 56 sts. Join in the rnd.\nRnd 1: K14, pm, k28, pm, k14.\nRnd 2: K%d%s, pm for new beg of rnd.\n"+
					"Rnd 3: K%d, sl m, k28, sl m, k%d.", by, change, 14-taken+off, 14+taken-lost-off)
				if 14-taken+off < 1 {
					continue
				}
				if out := readHeel(t, text); out.Agrees != (off == 0) {
					t.Errorf("%v: %s\n%s", out.Agrees, judgedText(out.Findings), text)
				}
			}
		}
	}
}

// TestShortOfMarkers: where markers are is not known, what stands between "k to n sts before m" and "sl m" takes n all the same.
func TestShortOfMarkers(t *testing.T) {
	for _, c := range []struct {
		said  string
		takes int
	}{
		{"k2tog, k1", 3}, {"ssk", 2}, {"k3tog, k1", 4}, {"k2tog, k2", 4}, {"m1l, k1", 1}, {"k2tog", 2}, {"p2tog, p1", 3},
		{"sl 1, k1, psso, k1", 3}, {"k2, k2tog, k1", 5}, {"yo, k2tog, k1", 3},
	} {
		for n := 1; n < 7; n++ {
			text := fmt.Sprintf("Rnd 1: K to %d sts before m, %s, sl m, k to end.", n, c.said)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text, StartStitches: []int{82}, Construction: stitch.InTheRound})
			if err != nil || out.Agrees != (n == c.takes) {
				t.Errorf("%v, %v: %s\n%s", err, out.Agrees, judgedText(out.Findings), text)
			}
		}
	}
}
