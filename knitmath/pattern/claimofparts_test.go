package pattern

import (
	"fmt"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestClaimOfParts: the parts of a count stand in its place. By hand: fronts of a and c stitches and a back of b, between which 10
// are bound off twice; needles of a, b and c stitches. One that is wrong is told, of a body also where the sum is right.
func TestClaimOfParts(t *testing.T) {
	bodies := []string{"%d sts for right front, %d sts for back, %d sts for left front.",
		"(%d sts for right front, %d sts for back, %d sts for left front)", "%d sts right front, %d sts back and %d sts left front."}
	needles := []string{": %d sts on N1, %d sts on N2, %d sts on N3.", ". %d sts on N1, %d sts on N2, %d sts on N3.",
		" (%d sts on N1, %d sts on N2, %d sts on N3).", ": %d sts on needle 1, %d sts on needle 2 and %d sts on needle 3."}
	for _, n := range [][3]int{{45, 85, 44}, {30, 62, 31}, {12, 24, 11}} {
		for _, off := range [][3]int{{}, {1, 0, 0}, {0, -1, 0}, {0, 0, 2}, {1, -1, 0}} {
			said := [3]int{n[0] + off[0], n[1] + off[1], n[2] + off[2]}
			for _, form := range bodies {
				text := fmt.Sprintf("CO %d sts. Knit 2 rows.\nNext row (RS): K%d, BO 10 sts, k%d, BO 10 sts, k%d. "+form,
					n[0]+n[1]+n[2]+20, n[0], n[1], n[2], said[0], said[1], said[2])
				told(t, text, off == [3]int{})
			}
			for _, form := range needles {
				text := fmt.Sprintf("CO %d sts and join"+form+"\nRnd 1: Knit.", n[0]+n[1]+n[2], said[0], said[1], said[2])
				told(t, text, off[0]+off[1]+off[2] == 0)
			}
		}
	}
	told(t, "CO 195 sts.\nNext row: K45, BO 10 sts, k85, BO 10 sts, k45. 45 sts each front, 85 sts back.", true)
	told(t, "CO 195 sts.\nNext row: K45, BO 10 sts, k85, BO 10 sts, k45. 45 sts each front, 84 sts back.", false)
}

// told asks a text, which is right or of which a count is wrong.
func told(t *testing.T, text string, right bool) {
	t.Helper()
	out := asked(t, text, 0, stitch.Flat)
	wrong := slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Reason == ReasonClaim })
	if out.Agrees != right || wrong == right {
		t.Errorf("%q: %s", text, said(&out))
	}
}

// TestWorkedAndPlacedOnHolder: "k20 and place on holder" puts aside what was worked: by hand, as many as "place these sts".
func TestWorkedAndPlacedOnHolder(t *testing.T) {
	for _, words := range []string{"and place on holder", "and slip onto waste yarn", "and place these sts on a holder",
		"and leave on a spare needle"} {
		for _, n := range []int{15, 20, 22} {
			for _, claim := range []int{n, n + 1, 2 * n} {
				told(t, fmt.Sprintf("CO %d sts. Next row: K%d %s, BO 20, k to end - %d sts.", 2*n+20, n, words, claim), claim == n)
			}
		}
	}
}
