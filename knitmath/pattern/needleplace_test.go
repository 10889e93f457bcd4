package pattern

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestOnTheNeedlesOfARound: each thing in several wordings (common practice), with the stitches after it, worked by
// hand beside it, or the reason that is found.
func TestOnTheNeedlesOfARound(t *testing.T) {
	for _, c := range []struct {
		text   string
		on     int
		end    int
		reason string
	}{
		// Places on a needle: one decrease at the end of each of so many needles.
		{"*K to last 3 sts of needle, k2tog, k1; rep from * on second needle.", 40, 38, ""},
		{"*K to last 3 sts on dpn, k2tog, k1; rep from * on other 3 needles.", 40, 36, ""},
		{"*K to 3 sts before end of needle, k2tog, k1; rep from * on needles 2, 3 and 4.", 40, 36, ""},
		{"Divide sts over 4 needles.\nNext rnd: [K to last 3 sts of needle, k2tog, k1] on each needle.", 40, 36, ""},
		{"Divide sts over three dpns.\nNext rnd: *K to last 2 sts on needle, k2tog; rep from * on each needle.", 42, 39, ""},
		{"*Ssk, k to end of needle; rep from * on second and third needles.", 42, 39, ""},
		{"[K1, ssk, k to last 3 sts of needle, k2tog] twice.", 40, -1, "STITCHES_UNWORKED"}, // k1 is wanting
		{"Knit until 1 st remains on the needle, k1.", 40, 40, ""},
		{"*K1, ssk, k5, k2tog; rep on each needle.", 40, 32, ""}, // 10 on each of 4: 2 go
		{"Divide sts over 4 needles.\nNext rnd: *K1, ssk, k5, k2tog; rep on each needle.", 42, -1, "STITCHES_UNWORKED"},
		// Stitches that are dealt to the needles.
		{"Set-up: 20 sts for the palm and 20 for the back.\nRnd 1: Knit.", 40, 40, ""},
		{"You now have 20 sts for the palm and 20 sts for the back.\nRnd 1: Knit.", 40, 40, ""},
		{"20 sts for the front and 22 for the back of the hand.\nRnd 1: Knit.", 40, -1, "COUNT_DISAGREES"},
		// Markers that go on the way, gaps that are closed.
		{"Next rnd: Removing markers as you come to them, k38, k2tog.", 40, 39, ""},
		{"Next rnd: Remove all markers, k38, k2tog.", 40, 39, ""},
		{"Next rnd: K38, k2tog, removing markers.", 40, 39, ""},
		{"Next rnd: Pick up and knit 2 sts, closing gaps, k40.", 40, 42, ""},
		{"Next rnd: K20, pick up and knit 2 sts to close the gap, k20.", 40, 42, ""},
		{"Next rnd: K20, pick up 2 sts to avoid a hole, k20.", 40, 42, ""},
		// Stitches left out come back, and their number is compared.
		{"The heel is worked over the first 20 sts.\nRow 1: K20, turn.\nRow 2: P20, turn.\nNext rnd: K20, pick up and knit 5 sts, k20, " +
			"pick up and knit 5 sts.", 40, 50, ""},
		{"Work back and forth on the first 20 sts only.\nRow 1: K20, turn.\nRow 2: P20, turn.\nNext rnd: K40.", 40, 40, ""},
		{"The heel is worked over the first 20 sts.\nRow 1: K20, turn.\nRow 2: P20, turn.\nNext rnd: K20, pick up and knit 5 sts, k21, " +
			"pick up and knit 5 sts.", 40, -1, "STITCHES_MISSING"},
		// Rests that are told, not ordered.
		{"K10, turn, p20. Leave the other 20 sts on one needle for the instep.\nRow 1: Sl 1, k19.", 40, 20, ""},
		{"K10, turn, p20, leaving the remaining 20 sts on two needles.\nRow 1: Sl 1, k19.", 40, 20, ""},
		{"K10, turn, p20. The remaining 20 sts wait on their needle for the instep.\nRow 1: Sl 1, k19.", 40, 20, ""},
		// So many times in all.
		{"Row 1: K2tog, k to end.\nRep this row until it has been worked 4 times in all.", 40, 36, ""},
		{"Row 1: K2tog, k to end.\nRow 2: Knit.\nRep these 2 rows until you have worked them 5 times.", 40, 35, ""},
		{"Row 1: K2tog, k to end.\nRow 2: Knit.\nRep Rows 1 and 2 until they have been worked twice in total.", 40, 38, ""},
		{"Rnd 1: K2tog, k to end.\nRnd 2: Knit.\nAlternate these 2 rnds until 30 sts remain (10-10-10).", 40, 30, ""},
		{"Rnd 1: K2tog, k to end.\nRnd 2: Knit.\nAlternate these 2 rnds until 30 sts remain (10-12-10).", 40, -1, "COUNT_DISAGREES"},
		// A round from one picked-up edge to the other goes over all stitches.
		{"Pick up and knit 5 sts, k40, pick up and knit 5 sts; pm for beg of rnd.", 40, 50, ""},
		{"Pick up and knit 5 sts, k38, pick up and knit 5 sts; pm for beg of rnd.", 40, -1, "STITCHES_UNWORKED"},
	} {
		out := asked(t, c.text, c.on, stitch.InTheRound)
		switch {
		case c.reason != "" && (out.Agrees || !slices.ContainsFunc(out.Findings, func(f Finding) bool { return string(f.Reason) == c.reason })):
			t.Errorf("%q: %s is not found: %s", c.text, c.reason, judgedText(out.Findings))
		case c.reason == "" && (!out.Agrees || out.EndStitches[0] != c.end):
			t.Errorf("%q: %d stitches, not %d: %s", c.text, out.EndStitches, c.end, judgedText(out.Findings))
		}
	}
}

// TestBesideWhatIsWorked: the same of pieces that are cast on, or worked flat.
func TestBesideWhatIsWorked(t *testing.T) {
	for _, c := range []struct {
		text   string
		on     int // 0 where the text casts on
		end    int
		reason string
	}{
		{"Cast on 124 sts, dividing them 42, 40, 42 on three needles.", 0, 124, ""},
		{"Cast on 64 sts, 20 on the 1st needle, 24 on the 2nd and 20 on the 3rd.", 0, 64, ""},
		{"Cast on 64 sts, 20 on the 1st needle, 24 on the 2nd and 22 on the 3rd.", 0, -1, "COUNT_DISAGREES"},
		{"CO 48 sts on double pointed needles and join.", 0, 48, ""},
		{"CO 3 sts. Knit 6 rows. Rotate work 90 degrees, pick up and knit 3 sts.", 0, 6, ""},
		{"CO 3 sts. Knit 6 rows. Rotate the work 90 degrees clockwise and pick up and knit 3 sts.", 0, 6, ""},
		{"CO 3 sts. Knit 6 rows. Do not turn; rotate piece a quarter turn, pick up and knit 3 sts.", 0, 6, ""},
		{"Shape Crown thus:--\n1st row: *K6, k2tog; rep from * to end.", 64, 56, ""},
		{"SHAPE TOP:\u2014\nNext row: *K6, k2tog; rep from * to end.", 64, 56, ""},
		{"Work short rows:\nRow 1: K30, turn.\nRow 2: P20, turn.\nRow 3: K to end.", 40, 40, ""},
		{"Work short rows thus: Row 1: K30, turn. Row 2: P20, turn. Row 3: K to end.", 40, 40, ""},
		{"Work short rows as follows: Row 1: K30, turn. Row 2: P20, turn. Row 3: K to end.", 40, 40, ""},
		{"*Next row: K2tog, k to end.\nNext row: Knit.\nRep from * 3 more times.", 40, 36, ""},
		// A piece may begin with stitches that are picked up or taken up: its rows are compared.
		{"Pick up and knit 60 sts along edge. K2tog across. 30 sts.\nKnit 5 rows. BO all sts.\nSLEEVE\nCO 20 sts. Knit 4 rows.", 0, 20, ""},
		{"Pick up and knit 60 sts along edge. K2tog across. 31 sts.\nKnit 5 rows. BO all sts.\nSLEEVE\nCO 20 sts. Knit 4 rows.", 0, -1,
			"COUNT_DISAGREES"},
		{"Thumb: place 15 held sts on needles. Pick up and k 3 sts at base of thumb. 18 sts.", 0, 18, ""},
		{"Thumb: slip 15 sts from scrap yarn to 3 needles, rejoin yarn, pick up and k 3 sts: 18 sts.", 0, 18, ""},
		// Pieces that are joined have the stitches that were put aside: 80 and twice 24, or not.
		{"BODY\nCO 80 sts. Knit 4 rows. Place sts on holder.\nSLEEVES (make 2)\nCO 24 sts. Knit 4 rows. Place sts on holder.\nYOKE\n" +
			"Join body and sleeves: 128 sts.", 0, 128, ""},
		{"BODY\nCO 80 sts. Knit 4 rows. Place sts on holder.\nSLEEVES (make 2)\nCO 24 sts. Knit 4 rows. Place sts on holder.\nYOKE\n" +
			"Join body and sleeves in the round: 130 sts.", 0, -1, "COUNT_DISAGREES"},
		// The side of a row on other pieces is not that of the last sleeve.
		{"CO 40 sts. Row 1 (RS): Knit. Work 9 rows in st st. Place sts on holder.\nSLEEVES (make 2)\nCO 30 sts. Row 1 (RS): Knit. Work 8 rows " +
			"in st st. Place sts on holder.\nYOKE\nSet-up row: K across 30 sleeve sts, 40 back sts and 30 sleeve sts from holders. 100 sts.\n" +
			"Next row: Purl.\nDec row (RS): K2tog, k to end. 99 sts.", 0, 99, ""},
		// One stitch is on the right needle when all others are bound off.
		{"CO 12 sts, knit 24 rows, bind off 11 sts; 1 st remains.", 0, 1, ""},
		{"CO 13 sts, knit 24 rows, bind off 11 sts; 1 st remains.", 0, -1, "STITCHES_UNWORKED"},
		// A rib by its stitches.
		{"Cast on 32 sts. K2, p2 rib 14 rows, inc 1 st at each end of last row.", 0, 34, ""},
		{"Cast on 32 sts. K1, p1 rib for 14 rows.", 0, 32, ""},
		{"CO 42 sts and join.\nK2, p2 rib 8 rnds.", 0, -1, "DOES_NOT_COME_OUT"},
		// Stitches of two pieces on one needle.
		{"CO 33 sts. Knit 6 rows. Leave sts on spare needle.\nCO 12 sts, knit 2 rows; place these 12 sts on the spare needle after the 33 sts.",
			0, 45, ""},
		// A chart of which it is said between which of its stitches it is worked.
		{"CO 65 sts.\nRow 1 (RS): K4, beg with st 1 of Chart D work to st 57, k4.\nRow 2: P4, work Chart D from left to right to last 4 sts, p4.",
			0, 65, ""},
		{"CO 65 sts.\nRow 1 (RS): K4, beg with st 1 of Chart D work to st 56, k4.", 0, -1, "STITCHES_UNWORKED"},
		// A rib by the name of another part is one of those that are written.
		{"BACK\nCast on 62 sts.\nRow 1: *K2, p2; rep from * to last 2 sts, k2.\nRow 2: P2, *k2, p2; rep from * to end.\nCast off.\nFRONT\n" +
			"Cast on 66 sts.\nRib 18 rows as given for Back.", 0, 66, ""},
		{"BACK\nCast on 62 sts.\nRow 1: *K2, p2; rep from * to last 2 sts, k2.\nRow 2: P2, *k2, p2; rep from * to end.\nCast off.\nFRONT\n" +
			"Cast on 66 sts.\nWork in rib as for Back for 5 cm.", 0, 66, ""},
		{"BACK\nCast on 62 sts.\nRow 1: *K2, p2; rep from * to last 2 sts, k2.\nRow 2: P2, *k2, p2; rep from * to end.\nCast off.\nFRONT\n" +
			"Cast on 64 sts.\nRib 18 rows as given for Back.", 0, -1, "DOES_NOT_COME_OUT"},
		{"BACK\nCast on 62 sts.\nRow 1: *K2, p2; rep from * to last 2 sts, k2.\nRow 2: P2, *k2, p2; rep from * to end.\nCast off.\nFRONT\n" +
			"Cast on 64 sts.\nWork in rib as for Back for 5 cm.", 0, -1, "DOES_NOT_COME_OUT"},
	} {
		out := asked(t, c.text, c.on, stitch.Flat)
		switch {
		case c.reason != "" && (out.Agrees || !slices.ContainsFunc(out.Findings, func(f Finding) bool { return string(f.Reason) == c.reason })):
			t.Errorf("%q: %s is not found: %s", c.text, c.reason, judgedText(out.Findings))
		case c.reason == "" && (!out.Agrees || out.EndStitches[0] != c.end):
			t.Errorf("%q: %d stitches, not %d: %s", c.text, out.EndStitches, c.end, judgedText(out.Findings))
		}
	}
}

// asked checks a text on so many stitches.
func asked(t *testing.T, text string, on int, c stitch.Construction) CheckedInstructions {
	t.Helper()
	in := CheckInstructionsInput{Text: text}
	if on > 0 {
		in.StartStitches, in.Construction = []int{on}, c
	}
	out, err := CheckInstructions(t.Context(), in)
	if err != nil {
		t.Errorf("%q: %v", text, err)
		out.EndStitches = []int{-1}
	}
	return out
}
