package pattern

import (
	"fmt"
	"strings"
	"testing"
)

// holderForms are ways to work stitches of a sleeve or of a back neck straight from where they wait; common
// practice. The first number is that of the stitches, the second how many there are then.
var holderForms = []string{
	"Next row (RS): K60, knit across %[1]s sleeve sts from holder, k60. %[2]s sts.",
	"Next row (RS): K60, k%[1]s sts from holder, k60. %[2]s sts.",
	"Next row (RS): K60, k across %[1]s held sts, k60. %[2]s sts.",
	"Next row (RS): K60, k%[1]s sts of sleeve, k60. %[2]s sts.",
	"Next row (RS): K60, pm, k%[1]s sleeve sts from waste yarn, pm, k60. %[2]s sts.",
	"Next row (RS): Knit across %[1]s sts from holder, k120. %[2]s sts.",
	"NECKBAND\nPick up and knit 50 sts down left neck, 70 sts up right neck, knit across %[1]s sts from back neck holder. %[2]s sts.",
	"NECKBAND\nPick up and knit 120 sts around front neck and %[1]s sts from back holder. %[2]s sts.",
	"NECKBAND\nPick up and knit 120 sts around front neck, k %[1]s sts of back neck. %[2]s sts.",
	"NECKBAND\nPick up and knit 120 sts around front neck, knit %[1]s sts from holder. %[2]s sts.",
}

// TestWorkedFromHolder: as many stitches are worked straight from a holder as wait there. With any other number
// the row is right by its own count, and yet stitches are left on the holder or are wanting.
func TestWorkedFromHolder(t *testing.T) {
	for _, sizes := range [][]int{{48}, {48, 52, 58}} {
		for _, form := range holderForms {
			for off := -6; off <= 6; off++ {
				told, sum := make([]int, len(sizes)), make([]int, len(sizes))
				for i, n := range sizes {
					told[i], sum[i] = n+off, n+off+120
				}
				holds := "Place " + listOf(sizes) + " sts on a holder.\n"
				text := "SLEEVE\nCast on " + listOf(sizes) + " sts.\nKnit 10 rows.\n" + holds + "BODY\nCast on 120 sts.\nKnit 10 rows.\n"
				if strings.HasPrefix(form, "NECK") {
					text += "Cast off.\n"
				}
				text += fmt.Sprintf(form, strings.ReplaceAll(listOf(told), " (", "("), listOf(sum))
				out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
				if err != nil {
					t.Fatal(err)
				}
				if out.Agrees != (off == 0) || off != 0 && out.mistakes != 1 || out.questions > 0 {
					t.Errorf("%q: agrees is %v, %s", text, out.Agrees, said(&out))
				}
			}
		}
	}
}

// TestWorkedFromHoldersRightly: stitches of a holder may be worked in parts, of two holders together, a piece may be
// made twice and told once, and what is left may be worked later.
func TestWorkedFromHoldersRightly(t *testing.T) {
	const sleeve = "SLEEVE\nCast on 48 sts.\nKnit 10 rows.\nPlace 48 sts on a holder.\n"
	const body = "BODY\nCast on 120 sts.\nKnit 10 rows.\n"
	for _, text := range []string{
		sleeve + body + "Next row (RS): K60, k24 sts from holder, pm, k24 sts from holder, k60. 168 sts.",
		"SLEEVES (make 2)\nCast on 48 sts.\nKnit 10 rows.\nPlace 48 sts on a holder.\n" + body +
			"Next row (RS): K30, k48 sleeve sts from holder, k60, k48 sleeve sts from holder, k30. 216 sts.",
		sleeve + body + "Next row (RS): K30, k48 sleeve sts from holder, k60, k48 sleeve sts from holder, k30. 216 sts.",
		sleeve + body + "Next row (RS): K120, k30 sts from holder. 150 sts.\nNext row: Purl.\nNext row: K150, k18 sts from holder. 168 sts.",
		"CO 164 sts and join in the rnd.\nKnit 4 rnds.\nNext rnd: K50, place next 32 sts on waste yarn, k50, place next 32 sts on waste yarn. " +
			"100 sts.\nKnit 4 rnds.\nCast off.\nSLEEVE\nRnd 1: K32 sts from waste yarn, pick up and knit 4 sts. 36 sts.",
		"CO 80 sts.\nKnit 4 rows.\nNext row: K30, place next 20 sts on a holder, k30.\nPlace 60 sts on a holder.\n" + body +
			"Next row (RS): K120, k80 sts from holders. 200 sts.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || !out.Agrees {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}
