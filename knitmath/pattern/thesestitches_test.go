package pattern

import (
	"fmt"
	"testing"
)

// TestStitchesNamedAfterOthersArePutAside: each text names stitches of which there are as many as stands beside it, by
// hand; any other number near it is a mistake.
func TestStitchesNamedAfterOthersArePutAside(t *testing.T) {
	for _, c := range []struct {
		text  string
		right int
	}{
		// 81 - 30 - 21
		{"CO 81 sts.\nKnit 4 rows.\nNext row: K30, slip these sts to a holder; bind off the center 21 sts, k to end. (30 sts)\n" +
			"Working on these %d sts only, p 1 row.\nKnit 2 rows.", 30},
		{"CO 81 sts.\nKnit 4 rows.\nNext row (RS): K30, place rem 51 sts on a holder.\nCont on these %d sts for first side.\nKnit 2 rows.", 30},
		{"CO 81 sts.\nKnit 4 rows.\nNext row (RS): K30, turn and work on these %d sts only.\nKnit 2 rows.", 30},
		{"CO 81 sts.\nKnit 4 rows.\nNext row (RS): K30, slip next 21 sts to a holder, turn, leaving rem 30 sts on a spare needle.\n" +
			"Work on these %d sts only.\nKnit 2 rows.", 30},
		{"CO 81 sts.\nKnit 4 rows.\nPlace first 51 sts on a holder.\nOn these %d sts, work 10 rows in st st.\nKnit 2 rows.", 30},
		// 68 - 8 - 12
		{"CO 68 sts.\nNext row: Cast off 8 sts, K until there are 12 sts on right needle, turn and leave rem sts on a holder.\n" +
			"Work on these %d sts only for first side.\nNext row: P to end.\nCast off.", 12},
		{"CO 68 sts.\nNext row: Cast off 8 sts, K until there are 12 sts on right needle, turn and leave rem sts on a holder.\n" +
			"Work on these 12 sts only for first side.\nNext row: P to end.\nCast off.\n" +
			"With right side facing, rejoin yarn to the %d sts on holder, K to end.", 48},
		{"CO 160 sts.\nKnit 4 rows.\nNext row: K80, place rem 80 sts on waste yarn.\nBACK\nKnit 10 rows.\nBO.\nFRONT\n" +
			"Return %d front sts to needle and join yarn with WS facing.\nPurl 1 row.", 80},
		{"CO 94 sts, join.\nNext rnd: K47, place next 47 sts on scrap yarn for left leg.\nRIGHT LEG\nRnd 1: Knit.\nBO.\nLEFT LEG\n" +
			"Return the %d sts of left leg to larger needle and join yarn.\nRnd 1: Knit.", 47},
	} {
		for by := -3; by <= 3; by++ {
			text := fmt.Sprintf(c.text, c.right+by)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees != (by == 0) || by != 0 && out.mistakes != 1 {
				t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
			}
		}
	}
}

// TestHolderTakenInParts: what is left of a holder and taken up later is no mistake.
func TestHolderTakenInParts(t *testing.T) {
	const text = "CO 60 sts.\nKnit 4 rows.\nPlace first 20 sts on a holder.\nKnit 4 rows.\nBO.\n" +
		"Return %d sts from holder to needle and join yarn.\nKnit 4 rows.\nBO.\n" +
		"Return %d sts from holder to needle and join yarn.\nKnit 4 rows.\nBO."
	for first := 11; first < 20; first++ {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(text, first, 20-first)})
		if err != nil || !out.Agrees {
			t.Errorf("%d: %v, %s", first, err, said(&out))
		}
	}
}

// TestHoldersBesideWhatIsAsked: what is asked elsewhere leaves sure how many stitches wait. By hand: 66 - 26 = 20 + 20 for
// the neck; 94 in two for the legs.
func TestHoldersBesideWhatIsAsked(t *testing.T) {
	const neck = "CO 66 sts.\nKnit 20 rows.\nNext row: Knit 20, cast off 26, knit to end.\nWork on the last 20 stitches only, " +
		"leaving the others on a spare needle.\nKnit 30 rows.\nCast off the 20 stitches.\n" +
		"Join the wool to the other %d stitches at the neck, and knit 30 rows to match.\nCast off."
	const legs = "Knit from the waist down without a seam.\nCO 94 sts, join.\nNext rnd: K47, place next 47 sts on scrap yarn for left leg.\n" +
		"RIGHT LEG\nRnd 1: Knit.\nBO.\nLEFT LEG\nReturn the %d sts of left leg to larger needle and join yarn.\nRnd 1: Knit.\n" +
		"Complete as for right leg."
	for by := -2; by <= 2; by++ {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(neck, 20+by)})
		if err != nil || out.Agrees != (by == 0) || (by == 0) != (out.mistakes == 0) {
			t.Errorf("neck %d: %v, %s", by, err, said(&out))
		}
		out, err = CheckInstructions(t.Context(), CheckInstructionsInput{Text: fmt.Sprintf(legs, 47+by)})
		if err != nil || (by == 0) != (out.mistakes == 0) {
			t.Errorf("legs %d: %v, %s", by, err, said(&out))
		}
	}
}
