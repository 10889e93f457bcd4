package pattern

import (
	"strings"
	"testing"
)

// What an editor found in patterns as they are printed: each text, whether it is right, its stitches at the end, and a word of what
// is said. The counts are worked by hand.
func TestEditorsFinds(t *testing.T) {
	const toe = "CO 80 sts. Join in the rnd.\nRnd 1: *K8, k2tog; rep from * to end. 72 sts.\nRnd 2: Knit.\n" +
		"Rnd 3: *K7, k2tog; rep from * to end. 64 sts.\nRnd 4: Knit.\nContinue in this manner, "
	const four = "CO 28 sts.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.\n"
	const heel = "CO 56 sts. Join in the rnd.\nKnit 10 rnds.\nPlace the last 28 sts on a holder for the instep.\n" +
		"Row 1 (RS): *Sl 1, k1; rep from * to end.\nRow 2 (WS): Sl 1, p to end.\nRep Rows 1 and 2 13 more times.\n" +
		"Row 1 (RS): Sl 1, k14, ssk, k1, turn.\nRow 2 (WS): Sl 1, p3, p2tog, p1, turn.\n" +
		"Row 3: Sl 1, k to 1 st before gap, ssk, k1, turn.\nRow 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.\n" +
		"Rep Rows 3 and 4 until all sts have been worked. 16 heel sts rem.\n" +
		"Knit across heel sts, pick up and knit 14 sts along edge of flap, pm, k28 instep sts from holder, pm, " +
		"pick up and knit 14 sts along other edge of flap, k8, pm for beg of rnd. (72 sts)\n"
	for _, c := range []struct {
		text string
		end  int    // -1 where it is not right
		says string // in a description of what is found
	}{
		{heel + "Rnd 1: K to 3 sts before m, k2tog, k1, sl m, k to m, sl m, k1, ssk, k to end. (70 sts)", 70, "markers"},
		{heel + "Rnd 1: K to 3 sts before m, k2tog, k1, sl m, k to m, sl m, k1, ssk, k to end. (71 sts)", -1, "70"},
		{"CO 72 sts.\nRow 1: K2, p2 across.\nRows 2-8: As Row 1.", 72, "the same either way"},
		{"CO 72 sts. Join in the rnd.\nRnds 1-8: K2, p2 around.", 72, ""},
		{"CO 70 sts. Join in the rnd.\nRnds 1-8: K2, p2 around.", -1, "alone repeated"},
		{"CO 72 sts. Join in the rnd, don't twist!\nKnit 2 rnds.", 72, ""},
		{"CO 21 sts.\nKnit 2 rows.\nPicot bind-off: *CO 2 sts, BO 4 sts; rep from * to end.", 0, ""},
		{"CO 21 sts.\nKnit 2 rows.\nPicot bind-off: BO 2 sts, *slip st from right needle back to left needle, CO 2 sts, BO 4 sts; " +
			"rep from * to end.", 0, ""},
		{toe + "decreasing 8 sts every other rnd and working 1 fewer st before each k2tog, until 16 sts remain.", 16, ""},
		{toe + "decreasing 8 sts every other rnd and working 2 fewer sts before each k2tog, until 16 sts remain.", -1, "not 2 stitches fewer"},
		{toe + "working 1 more st before each k2tog, until 16 sts remain.", -1, "not 1 stitch more"},
		{"CO 28 (32, 36) sts.\nRow 1: Knit.\nRow 2: Purl.\nRep Rows 1 and 2 13 (15, 17) more times. (29, 32, 36 rows)", -1, "not 29"},
		{"CO 28 (32, 36) sts.\nKnit 28 (32, 36) rows. (28, 32, 36 rows)", 28, ""},
		{"CO 28 (32, 36) sts.\nKnit 28 (32, 36) rows. (29, 33, 37 rows)", -1, "not 37"},
		{four + "Rep Rows 1-4 50 more times (204 rows total).", 28, ""},
		{four + "Rep Rows 1-4 50 more times (200 rows).", 28, ""},
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		if err != nil || out.Agrees != (c.end >= 0) || c.end >= 0 && out.EndStitches[0] != c.end ||
			!strings.Contains(judgedText(out.Findings)+everySaid(&out), c.says) {
			t.Errorf("%q: %v, %v, %v: %s", c.text, err, out.Agrees, out.EndStitches, judgedText(out.Findings))
		}
	}
}

// everySaid is every description of what was found.
func everySaid(out *CheckedInstructions) string {
	text := ""
	for i := range out.Findings {
		text += out.Findings[i].Description + "\n"
	}
	return text
}

// A correction in words closes the bracket that it opens, and stops before what goes on.
func TestCorrectionsCloseBrackets(t *testing.T) {
	out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: "CO 20 (24, 28) sts.\nRow 1: K2tog, k to end.\n" +
		"Row 2: Purl.\nRep Rows 1 and 2 3 (4, 5) more times. 14 (16, 18) sts."})
	if err != nil || len(out.Findings) == 0 || len(out.Findings[0].Corrections) == 0 {
		t.Fatalf("%v, %s", err, judgedText(out.Findings))
	}
	for _, f := range out.Findings {
		for _, c := range f.Corrections {
			if strings.Count(c.Description, "(") != strings.Count(c.Description, ")") {
				t.Errorf("%q", c.Description)
			}
		}
	}
}
