package pattern

import (
	"fmt"
	"testing"
)

// TestWrongPartBetweenMarkers: a thumb's gusset grows by two stitches every other round; a wrong number between its markers is one
// mistake, with the right one offered, and the round that puts the thumb's stitches aside stays right.
func TestWrongPartBetweenMarkers(t *testing.T) {
	for times := 2; times < 8; times++ {
		thumb := 4 + 2*times + 2
		for off := -3; off < 4; off++ {
			text := fmt.Sprintf("CO 44 sts and join.\nRnd 1: K21, pm, m1l, k2, m1r, pm, k21. (46 sts)\nRnd 2: Knit.\n"+
				"Rnd 3: K to m, sl m, m1l, k to m, m1r, sl m, k to end. (48 sts)\nRnd 4: Knit.\nRep rnds 3 and 4 %d more times. %d sts; %d sts "+
				"between markers.\nNext rnd: K21, remove m, place next %d sts on scrap yarn, cast on 2 sts over the gap, remove m, k21. 44 sts.",
				times, 42+thumb, thumb+off, thumb)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || (off == 0 || thumb+off == 21) != out.Agrees { // 21 lie before the first marker
				t.Fatalf("%v %s\n%s", err, said(&out), text)
			}
			if off == 0 || 2*(thumb+off) > thumb+21 && thumb < 21 { // nearer to the 21 on the other side of a marker
				continue
			}
			if f := out.Findings; out.mistakes != 1 || len(f[0].Corrections) == 0 || f[0].Corrections[0].Replacement != fmt.Sprint(thumb) {
				t.Errorf("%d for %d: %s %+v", thumb+off, thumb, said(&out), f[0].Corrections)
			}
		}
	}
}

// TestNoMarkerWasPlaced: a round that goes past markers of which none was placed is asked for them, and not called too long; one up to
// the beginning of the round is right.
func TestNoMarkerWasPlaced(t *testing.T) {
	for row, right := range map[string]bool{
		"K to m, sl m, ssk, k to end. (63 sts)":                                     false,
		"K to 3 sts before m, k2tog, k1, sl m, k1, ssk, k to end. (62 sts)":         false,
		"*K to 2 sts before m, k2tog, sm, ssk; rep from * 3 times more. (56 sts)":   false,
		"K1, ssk, k to 3 sts before m, k2tog, k1, sl m, k1. (62 sts)":               false,
		"K to 2 sts before m, k2tog. (63 sts)":                                      true,
		"K1, ssk, k to 3 sts before m, k2tog, k1. (62 sts)":                         true,
		"K20, pm, k to end. (64 sts)\nRnd 2: K to m, sl m, ssk, k to end. (63 sts)": true,
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 64 sts and join.\nRnd 1: " + row})
		if err != nil || right != out.Agrees || out.mistakes > 0 || !right && out.Findings[0].Reason != ReasonNoMarker {
			t.Errorf("agrees is %v: %v %s\n%s", out.Agrees, err, said(&out), row)
		}
	}
}
