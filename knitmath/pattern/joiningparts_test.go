package pattern

import (
	"fmt"
	"testing"
)

// agreeing asks a text that is right or has one number planted in it, and fails where it agrees and should not, or the
// other way; a count below 0 is not compared.
func agreeing(t *testing.T, text string, start []int, round, right bool, want int) {
	t.Helper()
	p := corpusPiece{Text: text, Start: start, Round: round}
	out, err := CheckInstructions(t.Context(), p.input())
	if err != nil || out.Agrees != right || right && want >= 0 && out.EndStitches[0] != want {
		t.Errorf("%q: agrees is %v, %v stitches, %v, %s", text, out.Agrees, out.EndStitches, err, said(&out))
	}
}

// TestJoinedToWhatIsThere: two sleeves are joined to a body that is on the needle; which of the parts were brought is seen by
// what is there. By hand: twice the sleeve and twice the half.
func TestJoinedToWhatIsThere(t *testing.T) {
	for half := 80; half < 88; half += 3 {
		for sleeve := 40; sleeve < 50; sleeve += 3 {
			for off := -1; off <= 1; off++ {
				for _, form := range []string{
					"Joining round: K%[1]d sleeve sts, pm, k%[2]d front sts, pm, k%[1]d sleeve sts from second sleeve, pm, k%[2]d back sts, pm.\n" +
						"You now have %[3]d sts on your needle.",
					"Next rnd: Knit %[2]d front sts, pm, knit %[1]d sleeve sts, pm, knit %[2]d back sts, pm, knit %[1]d sleeve sts, pm. %[3]d sts.",
				} {
					all := 2*half + 2*sleeve
					agreeing(t, fmt.Sprintf(form, sleeve, half, all+off), []int{2 * half}, true, off == 0, all)
				}
			}
		}
	}
}

// TestPartsOfOneHolder: the body was put aside whole and is joined in two or three parts. By hand: they make up the body, and
// with the sleeves all.
func TestPartsOfOneHolder(t *testing.T) {
	for half := 40; half < 50; half += 2 {
		for _, off := range []int{0, 1, 3} {
			body := fmt.Sprintf("CO %d sts and join in the round. Knit 40 rnds. Place sts on waste yarn.\n"+
				"Sleeves (make 2)\nCO 32 sts. Join in the round. Knit 30 rnds. Place on waste yarn.\nYoke\n", 2*half)
			two := fmt.Sprintf("Joining rnd: Knit %d front sts, pm, knit 32 sleeve sts, pm, knit %d back sts, pm, knit 32 sleeve sts, pm. %d sts.",
				half+off, half, 2*half+64+off)
			three := fmt.Sprintf("Joining rnd: Knit %d right front sts, knit 32 sleeve sts, knit %d back sts, knit 32 sleeve sts, knit %d left "+
				"front sts. %d sts.", half/2, half+off, half/2, 2*half+64+off)
			agreeing(t, body+two, nil, false, off == 0, 2*half+64)
			agreeing(t, body+three, nil, false, off == 0, 2*half+64)
		}
	}
}

// TestTimesThatWorkCounts: "work dec rnd 8 times" are eight in all and "rep dec rnd 8 more times" nine, whichever the count
// that is told says; no other agrees.
func TestTimesThatWorkCounts(t *testing.T) {
	for times := 4; times < 10; times++ {
		for off := -1; off <= 1; off++ {
			text := fmt.Sprintf("Sleeve dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\nWork sleeve dec rnd every 6th rnd %d times. %d sts.",
				times, 62-2*times+off)
			agreeing(t, text, []int{62}, true, off == 0, 62-2*times)
			text = fmt.Sprintf("Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1. (60 sts)\nRep dec rnd every 6th rnd %d more times. %d sts.",
				times, 60-2*times+off)
			agreeing(t, text, []int{62}, true, off == 0, 60-2*times)
		}
	}
}

// TestMarkerThatIsHere: "k6, p to m, k6" where the first marker lies after six stitches is up to the second one. By hand: the
// marker before the last six.
func TestMarkerThatIsHere(t *testing.T) {
	for edge := 3; edge < 8; edge++ {
		for off := -1; off <= 1; off++ {
			text := fmt.Sprintf("CO 80 sts.\nRow 1: K%d, pm, k to last %[1]d sts, pm, k%[1]d.\nRow 2: K%[1]d, p to m, k%d.\nRow 3: Knit.",
				edge, edge+off)
			agreeing(t, text, nil, false, off == 0, 80)
		}
	}
}

// TestBoundOffByPart: what is left of a part is bound off by its name, and some of it within a row.
func TestBoundOffByPart(t *testing.T) {
	for n := 30; n < 40; n++ {
		for off := -1; off <= 1; off++ {
			agreeing(t, fmt.Sprintf("BO 8 sts at beg of next 4 rows. BO rem %d back neck sts.", n+off), []int{n + 32}, false, off == 0, 0)
			agreeing(t, fmt.Sprintf("Next rnd: Bind off the 7 steek sts, knit to end of rnd. %d sts.", n+off), []int{n + 7}, true, off == 0, n)
		}
	}
}

// TestPatternOnlyNamed: "and patt." before the first of its rows works none, and one of its own does.
func TestPatternOnlyNamed(t *testing.T) {
	for _, name := range []string{"patt", "pattern", "pat"} {
		text := "CO 20 sts. Knit 2 rows. Change to 4 mm needles and " + name + ".\n1st row: K.\n2nd row: P.\nRep 1st and 2nd rows 3 times more."
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees || out.WorkedRows[0] != 10 {
			t.Errorf("%q: %d rows, %v, %s", text, out.WorkedRows, err, said(&out))
		}
	}
}
