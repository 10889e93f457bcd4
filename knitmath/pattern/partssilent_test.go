package pattern

import "testing"

// partSilences are texts about parts, lengths and changes that are told beside a count; of each
// kind one that is right and others that were once agreed with although they cannot be.
var partSilences = []struct {
	name, text string
	line       int // of the mistake, 0 if the text is right
}{
	{"lengths of two sizes for three", "CO 40 (44, 48) sts.\nWork in St st until piece measures 19 (20) cm from CO edge.", 2},
	{"lengths of four for three", "Sizes S (M, L)\nCO 40 (44, 48) sts.\nCont even for 5 (6, 6, 7) inches.", 3},
	{"square brackets", "CO 40 [44: 48] sts.\nRow 1: K.\nRep Row 1 until work measures 19 [20] cm.", 3},
	{"lengths of all", "CO 40 (44, 48) sts.\nWork in St st until piece measures 19 (20, 21) cm from CO edge.", 0},
	{"one length", "CO 40 (44, 48) sts.\nWork in St st until piece measures 19 cm (7½ in) from CO edge.", 0},
	{"between markers after a repeat",
		"CO 41 sts.\nRow 1: K20, pm, k1, pm, k20.\nRow 2: K to m, sm, m1l, k to m, m1r, sm, k to end.\n" +
			"Rep Row 2 5 more times. 53 sts; 12 sts between markers.", 4},
	{"between markers after a repeat, right",
		"CO 41 sts.\nRow 1: K20, pm, k1, pm, k20.\nRow 2: K to m, sm, m1l, k to m, m1r, sm, k to end.\n" +
			"Rep Row 2 5 more times. 53 sts; 13 sts between markers.", 0},
	{"front and back", "CO 42 sts.\nRow 1: K1, k2tog, k to last 3 sts, ssk, k1 (40 sts: 20 front, 22 back).", 2},
	{"front and back, right", "CO 42 sts.\nRow 1: K1, k2tog, k to last 3 sts, ssk, k1 (40 sts: 20 front, 20 back).", 0},
	{"instep and heel", "CO 60 (64, 70) sts.\nRow 1: Knit [60 (64, 70) sts: 30 (32, 36) sts for instep, 30 (32, 35) sts for heel].", 2},
	{"on each of four needles", "CO 42 sts.\nJoin in the rnd.\n" +
		"Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1. 40 sts: 11 on each of 4 needles.", 3},
	{"on each of four needles, right",
		"CO 42 sts.\nJoin in the rnd.\nRnd 1: K1, k2tog, k to last 3 sts, ssk, k1. 40 sts: 10 on each of 4 needles.", 0},
	{"on needles by number", "CO 60 sts, join.\nRnd 1: Knit (60 sts: 15 on needle 1, 30 on needle 2, 16 on needle 3).", 2},
	{"on needles by number, right", "CO 60 sts, join.\nRnd 1: Knit (60 sts: 15 on needle 1, 30 on needle 2, 15 on needle 3).", 0},
	{"by dashes", "CO 46 sts.\nRow 1: Knit. [46 sts: 10-25-10]", 2},
	{"by dashes, right", "CO 45 sts.\nRow 1: Knit. [45 sts: 10-25-10]", 0},
	{"on each needle beside the count", "CO 60 sts, join.\nRnd 1: Knit (60 sts; 18 sts on each needle).", 2},
	{"on each needle beside the count, right", "CO 60 sts, join.\nRnd 1: Knit (60 sts; 20 sts on each needle).", 0},
	{"a change beside the count", "CO 62 sts.\nRow 1: K29, k2tog, k29, k2tog. (60 sts: 2 dec)", 0},
	{"grafted", "CO 20 sts.\nKnit 2 rows.\nGraft 22 toe sts.", 3},
	{"grafted, right", "CO 20 sts.\nKnit 2 rows.\nGraft 20 toe sts.", 0},
	{"grafted from two needles", "CO 20 sts.\nKnit 2 rows.\nGraft the 10 sts on front needle to the 11 sts on back needle.", 3},
	{"grafted from two needles, right", "CO 20 sts.\nKnit 2 rows.\nGraft the 10 sts on front needle to the 10 sts on back needle.", 0},
	{"a change that goes on",
		"CO 64 sts, join.\nRnd 1: *K6, k2tog; rep from * to end. 56 sts.\n" +
			"Rnd 2: Knit.\nCont to dec 6 sts every other rnd until 8 sts rem.", 4},
	{"a change that goes on, right",
		"CO 64 sts, join.\nRnd 1: *K6, k2tog; rep from * to end. 56 sts.\n" +
			"Rnd 2: Knit.\nCont to dec 8 sts every other rnd until 8 sts rem.", 0},
	{"in this way",
		"CO 64 sts, join.\nRnd 1: *K6, k2tog; rep from * to end. 56 sts.\n" +
			"Rnd 2: Knit.\nCont in this way, dec 6 sts every other rnd, until 8 sts rem.", 4},
	{"one row written twice", "CO 20 sts.\nRow 1: K to end.\nRow 1: P to end.\nRow 2: Knit.", 3},
	{"two sets of one row", "CO 20 sts.\nRow 1: K to end.\n\nRow 1: P to end.\nRow 2: Knit.", 0},
}

// TestPartsAreNotSilent: what is told beside a count is compared with it.
func TestPartsAreNotSilent(t *testing.T) {
	for _, c := range partSilences {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		if c.line == 0 {
			if !out.Agrees {
				t.Errorf("%s: right, but %s", c.name, said(&out))
			}
			continue
		}
		at := false
		for _, f := range out.Findings {
			at = at || f.Kind == KindMistake && f.LineNumber == c.line
		}
		if !at || out.mistakes != 1 {
			t.Errorf("%s: no mistake at line %d, or more than one: %s", c.name, c.line, said(&out))
		}
	}
}
