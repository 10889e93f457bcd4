package pattern

import (
	"fmt"
	"testing"
)

// TestPartsToldNearACount: each text tells one part of the stitches, worked by hand beside it; another number is a mistake,
// said once, at the line where it stands.
func TestPartsToldNearACount(t *testing.T) {
	for _, c := range []struct {
		text        string
		right, line int
	}{
		// 60 - 20 - 2 x 2 = 36, on two shoulders
		{"CO 60 sts.\nNext row (RS): K20, join second ball of yarn, BO 20 sts, k to end. 40 sts.\n" +
			"Dec 1 st at each neck edge every RS row 2 times. 36 sts, %d sts each shoulder.", 18, 3},
		// 40 over 4
		{"CO 40 sts. Divide evenly over 4 needles and join: %d sts on each needle.\nKnit 3 rnds.", 10, 1},
		{"CO 40 sts.\nDistribute evenly over 4 dpns and join: %d sts on each needle.\nKnit 3 rnds.", 10, 2},
		// 2 + 2 x 6 between the markers
		{"Cast on 44 sts. Join in the round.\nPlace markers for the thumb gusset: K23, place marker, k2, place marker, knit to end.\n" +
			"Gusset round: Knit to marker, slip marker, M1L, knit to marker, M1R, slip marker, knit to end = 46 sts.\nKnit 2 rounds.\n" +
			"Repeat the last 3 rounds 5 times more = 56 sts (%d sts between the markers).\nKnit 3 rounds.", 14, 5},
		// 44 in two
		{"CO 44 sts. Join in the round.\nKnit 2 rnds.\nTOP\nDivide the sts with a marker at each side, %d sts for the palm and 22 sts for " +
			"the back.\nKnit 2 rnds.", 22, 4},
		{"CO 44 sts. Join in the round.\nKnit 2 rnds.\nDivide the sts with a marker at each side: 22 sts for the palm and %d sts for " +
			"the back.\nKnit 2 rnds.", 22, 3},
		{"CO 66 sts. Join in the round.\nDivide: %d sts on instep needle, 33 sts on sole needle; 66 sts.\nKnit 2 rnds.", 33, 2},
	} {
		for by := -4; by <= 4; by++ {
			text := fmt.Sprintf(c.text, c.right+by)
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
			if err != nil || out.Agrees != (by == 0) || by != 0 && (out.mistakes != 1 || out.questions != 0) {
				t.Errorf("%q: agrees is %v, %v, %s", text, out.Agrees, err, said(&out))
			}
			for _, f := range out.Findings {
				if f.Kind == KindMistake && f.LineNumber != c.line {
					t.Errorf("%q: found at line %d: %s", text, f.LineNumber, said(&out))
				}
			}
		}
	}
}

// TestMarkersAtEachSide: where the markers lie is known from then on. By hand: each half is 22 and loses 2.
func TestMarkersAtEachSide(t *testing.T) {
	for claim := 38; claim <= 42; claim++ {
		text := "CO 44 sts. Join in the round.\nSet-up rnd: K10, pm, k2, pm, k to end.\nKnit 2 rnds.\nTOP\n" +
			"Divide the sts with a marker at each side, 22 sts for the palm and 22 sts for the back.\n" +
			fmt.Sprintf("Dec rnd: *K1, ssk, k to 3 sts before m, k2tog, k1; rep from * once more = %d sts.", claim)
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.Agrees != (claim == 40) {
			t.Errorf("%d: %v, %s", claim, err, said(&out))
		}
	}
}

// TestMarkerAfterStitches: where a marker lies is no count of all stitches.
func TestMarkerAfterStitches(t *testing.T) {
	for _, text := range []string{
		"Cast on 170 sts. Join in the round.\nOn the first round place a second marker after 85 sts, for the side.\nKnit 10 rounds.",
		"Cast on 101 stitches.\nMark the centre stitch, the 51st, and move the mark up with the work.\nKnit 2 rows.",
		"Cast on 170 (190) sts. Join in the round.\nKnit 1 round.\nPlace a marker after 85 (95) sts.\nKnit 10 rounds. 170 (190) sts.",
	} {
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || !out.Agrees {
			t.Errorf("%q: %v, %s", text, err, said(&out))
		}
	}
}

// TestSizesChainedToAStitch: "k23-25-27" is a number for each of three sizes.
func TestSizesChainedToAStitch(t *testing.T) {
	for claim := 54; claim <= 58; claim++ {
		text := fmt.Sprintf("CO 48-52-56 sts. Join in the round.\nRound 1: K23-25-27, k2tog, p1-2-2, knit to end. 47-51-%d sts.", claim)
		if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.Agrees != (claim == 55) {
			t.Errorf("%d: %v, %s", claim, err, said(&out))
		}
	}
}

// TestLabelsThatRunBackwards: the first row is none after the last.
func TestLabelsThatRunBackwards(t *testing.T) {
	for _, label := range []string{"4th to %dth rows", "Rows 4-%d", "Rows 4 to %d"} {
		for last := 1; last <= 7; last++ {
			text := "Cast on 20 sts.\nRows 1-3: Knit.\n" + fmt.Sprintf(label, last) + ": Purl."
			if out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text}); err != nil || out.Agrees != (last >= 4) {
				t.Errorf("%q: %v, %s", text, err, said(&out))
			}
		}
	}
}
