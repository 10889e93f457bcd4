package pattern

import (
	"slices"
	"testing"
)

// offers are texts with one mistake, and the correction that is offered first.
var offers = []struct{ name, text, first string }{
	{"an increase left out", "CO 54 sts.\nRow 1: K1, k to last st, M1R, k1. 56 sts.", "M1L put in after K1"},
	{"a decrease left out", "CO 40 sts.\nRow 1: K1, ssk, k to last 3 sts, k1. 38 sts.", "k2tog put in after k to last 3 sts"},
	{"a yarn over left out of a repeat", "CO 48 sts.\nRow 1: [k2tog, yo, k3, ssk, k1] 6 times. 48 sts.", "yo put in after k3"},
	{"a decrease worked twice", "CO 40 sts.\nRow 1: K1, ssk, ssk, k to last 3 sts, k2tog, k1. 38 sts.", "ssk left out"},
	{"a row that is the same from both ends", "CO 30 sts.\nRow 1: K5, p3, k2, p9, k2, p3, k5.", "p10 instead of p9"},
	{"the numbers of the sizes",
		"CO 92 (100, 108, 116) sts.\nBO 3 (4, 5, 8) sts at beg of next 2 rows. 86 (92, 98, 104) sts.", "6 instead of 8"},
	{"a cast-on on which nothing comes out",
		"CO 95 sts, join.\nRnd 1: *K1, p1; rep from * to end.\nRnd 2: *Yo, k2tog, k4; rep from * to end.", "96 cast on instead of 95"},
	{"how often, by the rows after it",
		"CO 40 sts.\nRow 1: K2tog, k to end.\nRep Row 1 4 times more. 34 sts.\nNext row: K2tog, k to end. 33 sts.\n" +
			"Next row: K2tog, k to end. 32 sts.", "5 times instead of 4"},
	{"the claim, by the rows after it",
		"CO 40 sts.\nRow 1: K2tog, k to end. 38 sts.\nRow 2: K2tog, k to end. 38 sts.\nRow 3: K2tog, k to end. 37 sts.", "39 sts instead of 38"},
	{"a count that is never reached",
		"CO 40 sts.\nRow 1: K1, ssk, k to last 3 sts, k2tog, k1.\nRep Row 1 until 29 sts rem.", "28 sts instead of 29"},
	{"how many rows", "CO 97 sts.\nBO 10 sts at beg of next 4 rows. 37 sts.\nK2tog, k to end. 36 sts.", "6 rows instead of 4"},
}

// TestFirstOffer: what is offered first is what an editor would write.
func TestFirstOffer(t *testing.T) {
	for _, c := range offers {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		if err != nil {
			t.Fatal(err)
		}
		i := slices.IndexFunc(out.Findings, func(f Finding) bool { return f.Kind == KindMistake })
		if out.mistakes != 1 || len(out.Findings[i].Corrections) == 0 || out.Findings[i].Corrections[0].Description != c.first {
			t.Errorf("%s: want %q first: %s", c.name, c.first, offered(&out))
		}
	}
}

// One mistake is said once, however many lines after it count on.
func TestOneMistakeIsSaidOnce(t *testing.T) {
	for _, text := range []string{
		"CO 72 sts.\nBO 4 sts at beg of next 2 rows. 66 sts.\nBO 3 sts at beg of next 2 rows. 60 sts.\nDec 1 st each end of next 3 rows. 54 sts.",
		"CO 40 sts.\nRow 1: K1, M1L, k to end. 42 sts.\nRow 2: Purl.\nRep Rows 1 and 2 4 times more. 50 sts.\nRow 11: Knit. 50 sts.",
		"CO 40 sts, pm, join.\nRnd 1: K2tog, k20, pm, k to end. 40 sts.\nRnd 2: K to m, M1L, sm, k to end. 41 sts.\nRnd 3: Knit. 41 sts.",
		"CO 62 sts.\nRow 1: *K2, p2; rep from * to end.\nRow 2: *P1, k3; rep from * to end.\nRow 3: K2tog, k to end. 59 sts.",
		"CO 40 sts.\nRow 1: Knit, inc 6 sts evenly across. 44 sts.\nPlace next 10 sts on holder. 34 sts.\nCO 4 sts. 38 sts.\nBO rem 38 sts.",
		"CO 40 sts.\nRow 1: K to end, p1.\nRow 2: Knit.\nRow 3: As Row 1.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil || out.mistakes != 1 {
			t.Errorf("%d mistakes, %v: %s\n%s", out.mistakes, err, judgedText(out.Findings), text)
		}
	}
}
