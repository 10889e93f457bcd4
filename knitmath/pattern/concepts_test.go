package pattern

import (
	"slices"
	"testing"
)

// Texts that are right, by what they need to be read: each agrees, with these stitches.
var concepts = []struct {
	name, text string
	end        int
}{
	{"an increase of no name in a row with a stretch", "CO 14 sts.\nRow 1: K1, inc, k to last 2 sts, inc, k1.", 16},
	{"an increase of no name that only fits between stitches", "CO 8 sts.\nRow 1: K4, inc, k4.", 9},
	{"a count and its change", "CO 40 sts.\nRow 1: K2tog, k to end (39 sts, 1 st dec).", 39},
	{"the last of some rows", "CO 40 sts.\nKnit 2 rows (dec 1 st on last row). 39 sts.", 39},
	{"a count in the label", "CO 20 sts.\nRow 1 (21 sts): Kfb, k to end.", 21},
	{"the last stitch drawn through", "CO 3 sts.\nRow 1: K3tog and fasten off.", 0},
	{"needle by needle",
		"CO 48 sts, join.\nRnd 1: Needles 1 and 3: K to last 3 sts, k2tog, k1; needles 2 and 4: K1, ssk, k to end. 44 sts.", 44},
	{"as another needle", "CO 48 sts, join.\nRnd 1: N1: K to last 3 sts, k2tog, k1. N2: As N1. 46 sts.", 46},
	{"until so many are on the right needle",
		"CO 60 sts.\nRow 1: BO 20 sts, k until there are 20 sts on right needle, BO 20 sts. 20 sts.", 20},
	{"stitches from a holder",
		"CO 25 sts. Knit 6 rows. Leave sts on a holder.\nCO 25 sts.\nRow 1: K25, CO 5 sts, knit across 25 sts from holder. 55 sts.", 55},
	{"picked up within a row", "CO 18 sts.\nRow 1: K18, pick up and knit 9 sts along edge. 27 sts.", 27},
	{"a called row with fewer plain stitches",
		"CO 120 sts, join.\nDec rnd: [K1, k2tog, k54, ssk, k1] twice. 116 sts.\nRep dec rnd every 8 rnds 3 more times.", 104},
	{"every 21st row", "CO 50 sts.\nInc 1 st at each end of every 21st row twice.\nDec 1 st at each end of foll 31st row.", 52},
	{"on rows that are listed", "CO 50 sts.\nInc 1 st at each end of 3rd, 7th and 13th rows.", 56},
	{"the repeat of a chart", "CO 60 sts, join.\nWork Rnds 1-12 of Chart A (10-st rep) 6 times around. 60 sts.", 60},
	{"wraps taken along", "CO 20 sts.\nRow 1: K15, w&t.\nRow 2: P10, w&t.\nRow 3: K to end, picking up wraps.", 20},
	{"cast on meanwhile", "CO 94 sts.\nRow 1: Purl, casting on 6 sts over the held sts.", 100},
}

func TestConcepts(t *testing.T) {
	for _, c := range concepts {
		t.Run(c.name, func(t *testing.T) {
			out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
			if err != nil {
				t.Fatal(err)
			}
			if !out.Agrees || !slices.Equal(out.EndStitches, []int{c.end}) {
				t.Errorf("agrees %v, %v stitches, want %d: %s", out.Agrees, out.EndStitches, c.end, judgedText(out.Findings))
			}
		})
	}
}

// The same with one number wrong: it is said.
func TestConceptsWrong(t *testing.T) {
	for name, text := range map[string]string{
		"needle by needle":     "CO 48 sts, join.\nRnd 1: N1: K to last 3 sts, k2tog, k1. N2: As N1. 45 sts.",
		"right needle":         "CO 60 sts.\nRow 1: BO 20 sts, k until there are 21 sts on right needle, BO 20 sts. 20 sts.",
		"the repeat of charts": "CO 60 sts, join.\nWork Rnds 1-12 of Chart A (8-st rep) 7 times around.",
		"a chart that is over": "CO 61 sts, join.\nWork 12 rnds of Chart A (8-st rep).",
		"on rows":              "CO 50 sts.\nInc 1 st at each end of 3rd, 7th and 13th rows. 58 sts.",
		"picked up":            "CO 18 sts.\nRow 1: K18, pick up and knit 9 sts along edge. 28 sts.",
	} {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: text})
		if err != nil {
			t.Fatal(err)
		}
		if !slices.ContainsFunc(out.Findings, func(f Finding) bool { return f.Kind == KindMistake }) {
			t.Errorf("%s: %v stitches, %s", name, out.EndStitches, judgedText(out.Findings))
		}
	}
}
