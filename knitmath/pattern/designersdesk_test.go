package pattern

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestFromADesignersDesk: what whole drafts asked about needlessly, or was called mistaken, in several
// wordings each (common practice), with the stitches at the end, worked by hand, or the reason that is
// found.
func TestFromADesignersDesk(t *testing.T) {
	const eight = "CO 45 sts.\nRow 1: Knit.\nRow 2: Purl.\nRows 3-8: Knit.\n"
	const shrinking = "CO 40 sts.\nRow 1: K1, k2tog, k to end. 39 sts\nRow 2: Purl.\n"
	const heel = "CO 40 sts and join in the round.\nKnit 3 rnds.\n"
	const on = "\nRow 1: Sl1, k to end."
	const round = "CO 48 sts and join in the round.\n"
	const shawl = "CO 7 sts.\nSet-up row (RS): K2, yo, k3, yo, k2. 9 sts\n"
	const wider = "Row 1 (RS): K2, yo, k to last 2 sts, yo, k2. (11 sts)\nRow 3: K2, yo, k to last 2 sts, yo, k2. (13 sts)"
	const inThree = "CO 40 sts.\nRow 1: K8, cast off 4, k16, cast off 4, k8. 32 sts.\n" +
		"Working on last set of 8 sts only, work 9 rows st st. Cast off.\n"
	for _, c := range []struct {
		text   string
		end    int
		reason string
	}{
		// A range or a list of rows that says its letter or word again.
		{"CO 10 sts and join.\nR1-R3: K.\nR4: [k3, k2tog] twice. (8)", 8, ""},
		{"CO 10 sts and join.\nR1 - R3: K.\nR4: [k3, k2tog] twice. (8)", 8, ""},
		{"CO 10 sts and join.\nRnd 1 to Rnd 3: K.\nRnd 4: [k3, k2tog] twice. (8)", 8, ""},
		{"CO 10 sts and join.\nR1, R3 and R5: K.\nR2 & R4: K.\nR6: [k3, k2tog] twice. (8)", 8, ""},
		{"CO 10 sts and join.\nR1-R3: K.\nR5: [k3, k2tog] twice. (8)", -1, "ROW_NUMBER"},
		{shrinking + "Rep Row 1 through Row 2 twice more. 37 sts", 37, ""},
		// The rows of a set, by how many they are.
		{eight + "Rep the 8-row pattern 3 more times.", 45, ""},
		{eight + "Repeat 8-row patt until scarf is as long as you like.", 45, ""},
		{eight + "Work the 8-row repeat a total of 30 times, or until it is long enough.", 45, ""},
		{eight + "Work 3 more repeats of the 8-row pattern.", 45, ""},
		{eight + "Cont in this 8-row patt until piece measures 30 cm.", 45, ""},
		{eight + "Rep the 6-row pattern 3 more times.", -1, "NOT_READ"},
		{eight + "Work these 8 rows until piece measures 30 cm.", 45, ""},
		{shrinking + "Work these 2 rows until 20 sts rem.", 20, ""},
		{shrinking + "Work these 2 rows until piece measures 10 cm.", -1, "ROWS_OPEN"},
		{shrinking + "Work Row 1 only 4 times. 35 sts", 35, ""},
		{shrinking + "Work Row 1 alone 4 times. 36 sts", -1, "COUNT_DISAGREES"},
		// A number after the place of what is picked up is a count, not another edge.
		{"CO 11 sts and join.\nPick up and knit 3 sts in the gap; 14 sts.", 14, ""},
		{"CO 11 sts and join.\nPick up and knit 3 sts in the gap, 14 sts.", 14, ""},
		{"CO 11 sts and join.\nPick up and knit 3 sts in the gap, 15 sts.", -1, "COUNT_DISAGREES"},
		{"CO 11 sts and join.\nPick up and knit 3 sts in the gap, 4 sts along the edge; 18 sts.", 18, ""},
		// On which stitches a heel is worked.
		{heel + "The heel is worked over the sts of needles 1 and 2, i.e. 20 sts. Leave the other 20 sts on hold for the instep." + on, 20, ""},
		{heel + "The heel is worked over the sts of needles 1 and 2 (20 sts). Leave the other 20 sts on hold for the instep." + on, 20, ""},
		{heel + "Work the heel over half the sts, that is 20 sts, leaving the other 20 sts on hold for the instep." + on, 20, ""},
		{heel + "The heel is worked over the sts of needles 1 and 2 (20 sts). Leave the other 21 sts on hold for the instep." + on,
			-1, "STITCHES_MISSING"},
		{round + "Knit 12 sts, turn. You will now work on 24 sts only.\nRow 1: Sl 1, p23.", 24, ""},
		{round + "Next rnd: Knit 12 sts, turn. The heel is worked on the next 24 sts.\nRow 1: Sl 1, p23.", 24, ""},
		{round + "You will now be working back and forth on the next 24 sts only.\nRow 1: Sl 1, p22.", -1, "STITCHES_UNWORKED"},
		{"Shoe sizes: child (women's, men's)\n" + round + "Knit 1 rnd.", 48, ""},
		// A row that is worked now, and stands for others from then on.
		{shawl + "Next row and all WS rows: K2, p to last 2 sts, k2.\n" + wider, 13, ""},
		{shawl + "Next and every alternate row: Purl.\n" + wider, 13, ""},
		{shawl + "Next row and all following WS rows: Purl.\nNext RS row: K2, yo, k to last 2 sts, yo, k2. (11 sts)\n" +
			"Rep last 2 rows until there are 21 sts.", 21, ""},
		{round + "Rnd 1: [k10, k2tog] 4 times. 44 sts.\nNext rnd and every alt rnd: Knit.\nRnd 3: [k9, k2tog] 4 times. 40 sts.\n" +
			"Rnd 5: [k8, k2tog] 4 times. 36 sts.", 36, ""},
		{round + "Rnd 1: [k10, k2tog] 4 times. 44 sts.\nNext rnd and every alt rnd: Knit.\nRnd 4: [k9, k2tog] 4 times. 40 sts.",
			-1, "ROW_NUMBER"},
		// Rows by their ordinals, in a row that has one.
		{"CO 28 sts.\n1st row: Knit.\n2nd row: Purl.\n3rd to 6th rows: Rep 1st and 2nd rows twice.", 28, ""},
		// Borders that go along.
		{"CO 45 sts.\nContinue in stockinette with garter borders until body measures 15 cm from underarm, ending with a WS row.", 45, ""},
		{"CO 45 sts.\nWork even in pattern with seed st borders as established for 20 cm.", 45, ""},
		{"CO 45 sts.\nCont in st st, keeping garter borders as set, until piece measures 10 cm.", 45, ""},
		// Where the work goes on.
		{"CO 12 sts.\nRow 1: Knit.\nDo not cast off. Continue with the head:\nRow 2: Kfb in each st. 24 sts", 24, ""},
		{"CO 12 sts.\nRow 1: Knit.\nContinue to the left leg.\nRow 2: Kfb in each st. 24 sts", 24, ""},
		// A label in bold before a repeat between stars; the names of sizes alone in their line.
		{"CO 40 sts and join.\n**Next rnd:** *K8, k2tog; rep from * to end. 36 sts.", 36, ""},
		{"CO 40 sts and join.\n**Shape top:** *K8, k2tog; rep from * to end. 35 sts.", -1, "COUNT_DISAGREES"},
		{"CO 40 sts and join.\n**Divide:** *K10, place next 10 sts on hold, CO 4 sts; rep from * once more. 28 sts.", 28, ""},
		{"Plain Socks\nS (M, L)\n\nLeg\nCO 56 (64, 72) sts.", 56, ""},
		{"Plain Socks\nXS/S (M/L, 2XL)\nCO 56 (64, 72) sts.", 56, ""},
		{"Plain Socks\nBaby, Toddler, Child\nCO 56 (64, 72) sts.\nSize Child only: K71.", -1, "STITCHES_UNWORKED"},
		// Stitches of a set; those of a part that are taken up on needles.
		{inThree + "Rejoin yarn to centre 16 sts and work 9 rows. Cast off.\nRejoin yarn to rem 8 sts and work 9 rows. Cast off.", 0, ""},
		{inThree + "Rejoin yarn to centre 15 sts and work 9 rows. Cast off.", -1, "STITCHES_UNWORKED"},
		{"Slip 23 sleeve sts onto larger dpns. Join yarn at underarm, k23, pick up and k 4 sts. 27 sts.", 27, ""},
		{"Slip 23 sleeve sts onto larger dpns. Join yarn at underarm, k22, pick up and k 4 sts. 27 sts.", -1, "STITCHES_UNWORKED"},
		{"Bodice\nCO 45 sts.\nCast off.\nSkirt\nCO 10 sts.", 10, ""},
		// What is passed over, with dashes.
		{"CO 45 sts.\nRow 1: K3, *yo, k3, sl 1-k2tog-psso, k3, yo, k1; rep from * to last 2 sts, k2.", 45, ""},
		{"CO 45 sts.\nRow 1: K3, *yo, k3, sl 2-k1-p2sso, k3, yo, k1; rep from * to last 2 sts, k2.", 45, ""},
		{"CO 45 sts.\nRow 1: K3, *yo, k3, sl 1-k1-psso, k3, yo, k1; rep from * to last 2 sts, k2. 45 sts.", -1,
			"DOES_NOT_COME_OUT"},
		{"Pattern is worked over a multiple of 10 sts plus 5.\nCO 45 sts.", 45, ""},
		// On which needles a heel is worked, and how many stitches lie on each.
		{"CO 56 sts and join.\nThe heel is worked back and forth over the sts of needles 4 and 1: 28 sts. The other 28 sts wait for the instep." +
			"\nRow 1 (RS): Sl1, k27.", 28, ""},
		{"CO 56 sts and join.\nThe heel is worked over needles 4 and 1, 28 sts. The other 28 sts wait for the instep.\n" +
			"Row 1 (RS): Sl1, k27.", 28, ""},
		{"CO 56 sts and join.\nThe heel is worked over needles 4 and 1, 27 sts. The other 28 sts wait for the instep.\nRow 1 (RS): Sl1, k26.",
			-1, "COUNT_DISAGREES"},
		{"CO 56 sts and join.\nThe heel is worked over the first 27 sts. Leave the other 28 sts on hold for the instep.\nRow 1 (RS): Sl1, k26.",
			-1, "COUNT_DISAGREES"},
		{"CO 56 sts on 4 dpns, 14 sts each, and join.\nKnit 1 rnd.", 56, ""},
		{"CO 56 sts on 4 dpns (14 sts each) and join.\nKnit 1 rnd.", 56, ""},
		{"CO 56 sts on 4 dpns (13 sts each) and join.\nKnit 1 rnd.", -1, "COUNT_DISAGREES"},
	} {
		out := asked(t, c.text, 0, stitch.Flat)
		switch {
		case c.reason != "" && (out.Agrees || !slices.ContainsFunc(out.Findings, func(f Finding) bool { return string(f.Reason) == c.reason })):
			t.Errorf("%q: %s is not found: %s", c.text, c.reason, judgedText(out.Findings))
		case c.reason == "" && (!out.Agrees || out.EndStitches[0] != c.end):
			t.Errorf("%q: %d stitches, not %d: %s", c.text, out.EndStitches, c.end, judgedText(out.Findings))
		}
	}
}
