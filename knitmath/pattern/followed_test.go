package pattern

import (
	"slices"
	"testing"
)

// followed are texts that are right, with the stitches and rows they come to, counted by hand; or
// that are wrong, with what is found. Common practice.
var followed = []struct {
	text  string
	end   []int
	rows  []int  // nil for any
	found string // but readings
}{
	// A heel back and forth within a round, and in the round again.
	{"CO 56 sts. Join.\nKnit 10 rnds.\nHeel flap is worked back and forth in rows over the first 28 sts; place rem sts on hold.\n" +
		"Row 1 (RS): K28.\nRow 2 (WS): P28.\nReturn the held 28 sts to needle.\nRnd 1: Knit.\nRnd 2: K to last 3 sts, k2tog, k1.",
		[]int{55}, []int{14}, ""},
	{"CO 56 sts. Join.\nHeel is worked back and forth on the first 28 sts.\nRow 1 (RS): K28.\nRow 2 (WS): P28.\n" +
		"Return the held 28 sts to needle.\nKnit 5 rnds. 56 sts.", []int{56}, []int{7}, ""},
	// Where the round begins.
	{"CO 72 sts. Join.\nRnd 1: K16. Rnd now begins at centre of heel.\nRnd 2: Knit. 72 sts.", []int{72}, nil, ""},
	{"CO 72 sts. Join.\nRnd 1: Pick up and knit 14 sts, k8. Rnd now begins at centre of heel.\nRnd 2: Knit. 86 sts.", []int{86}, nil, ""},
	{"CO 72 sts. Join.\nRnd 1: Knit.\nRnd now begins at the side.\nRnd 2: Knit. 72 sts.", []int{72}, []int{2}, ""},
	{"CO 72 sts. Join.\nRnd 1: K16, pick up and knit 14 sts, k56, pick up and knit 14 sts, k8. 100 sts.", []int{100}, []int{1}, ""},
	{"CO 72 sts. Join.\nRnd 1: K16, pick up and knit 14 sts, k56, pick up and knit 14 sts, k8. 108 sts.", []int{100}, []int{1},
		"2:72 COUNT_DISAGREES"},
	{"CO 72 sts. Join.\nRnd 1: K16, pick up and knit 14 sts, k64.", []int{86}, []int{1}, "2:8 STITCHES_MISSING"},
	{"CO 72 sts.\nRow 1: K16, pick up and knit 14 sts, k56, pick up and knit 14 sts, k8.", []int{100}, []int{1}, "2:8 STITCHES_MISSING"},
	// What is made after the marker of the beginning of the round is of the next round.
	{"CO 364 sts. Join.\nRnd 1: K80, pm, k1, pm, k100, pm, k1, pm, k80, pm, k1, pm, k100, pm, k1, pm.\n" +
		"Rnd 2: *K to m, M1R, sm, k1, sm, M1L; rep from * 3 times more. 372 sts.\nRnd 3: Purl.\n" +
		"Rnd 4: *K to m, M1R, sm, k1, sm, M1L; rep from * 3 times more. 380 sts.", []int{380}, []int{4}, ""},
	// On some of the stitches, and over all of them again.
	{"CO 32 sts. Join.\nHeel is worked over the first 16 sts.\nRow 1 (RS): K15, w&t.\nRow 2 (WS): P14, w&t.\nRow 3: K to end of rnd.\n" +
		"Next rnd: K32.", []int{32}, []int{4}, ""},
	{"CO 18 sts.\nKnit across heel sts, pick up and knit 16 sts along edge of flap, work across 32 instep sts, " +
		"pick up and knit 16 sts. 82 sts.",
		[]int{82}, []int{1}, ""},
	{"CO 18 sts.\nKnit across heel sts, pick up and knit 16 sts along edge of flap, work across 32 instep sts, " +
		"pick up and knit 16 sts. 80 sts.",
		[]int{82}, []int{1}, "2:119 COUNT_DISAGREES"},
	// Rows until a count that end on one side, and so many live or last stitches.
	{"CO 27 sts.\nRow 1 (RS): K1, ssk, k to end. 26 sts.\nRow 2: Purl.\nRep last 2 rows until 18 sts rem, ending with a RS row.\n" +
		"Next row (WS): Purl.", []int{18}, []int{18}, ""},
	{"CO 27 sts.\nRow 1 (RS): K1, ssk, k to end. 26 sts.\nRow 2: Purl.\nRep last 2 rows until 18 sts rem, ending with a WS row.\n" +
		"Next row (RS): Knit.", []int{18}, []int{19}, ""},
	{"With scrap yarn, CO 47 sts.\nKnit 4 rows. Leave sts on scrap yarn.\nRemove the scrap yarn of the cast-on and place the 47 live sts on " +
		"the needle.\nNext row: P47.", []int{47}, []int{5}, ""},
	{"CO 20 sts.\nKnit 4 rows. BO all sts.\nPick up and knit 36 sts along the edge, 1 st in every 2 rows. 36 sts.", []int{36}, nil, ""},
	{"CO 9 sts. Knit 4 rows. Place on holder. Make a second the same but do not break yarn.\n" +
		"Join legs: K9, CO 3, k9 from holder, CO 3. 24 sts.", []int{24}, nil, ""},
	// What cannot be known is asked.
	{"CO 80 sts.\nDec 1 st at each end of next 4 rows, at the same time work a neck opening. 72 sts.", []int{72}, nil, "2:38 NOT_READ"},
	{"CO 60 sts. Join.\nPlace 4 markers where you want the raglan lines.\nRnd 1: Knit.", []int{60}, nil, "2:1 NOT_READ"},
	{"CO 45 sts.\nNext row: BO some sts for the neck, k to end.", []int{-1}, nil, "2:11 NOT_READ"},
	// Past a place.
	{"CO 70 sts.\nRow 1: K35, pm, k35.\nRow 2: P to 5 sts past m, turn.\nRow 3: K10, turn.\nRow 4: P to end.", []int{70}, []int{4}, ""},
	{"CO 70 sts.\nRow 1: K35, pm, k35.\nRow 2: P to 5 sts past m, turn.\nRow 3: K41.", []int{70}, []int{3}, "4:8 STITCHES_MISSING"},
	{"CO 30 sts.\nRow 1: K20, w&t.\nRow 2: P10, w&t.\nRow 3: K to 2 sts past wrapped st, w&t.\nRow 4: P14, w&t.\nRow 5: K to end.",
		[]int{30}, []int{5}, ""},
	// Cast on for two parts, and all stitches of a row.
	{"CO 30 sts for the left sole and 30 sts for the right sole: 60 sts. Join.\nRnd 1: Knit.", []int{60}, []int{1}, ""},
	{"CO 20 sts; knit 1 row; cut yarn. CO another 20 sts onto same needle; knit 1 row across all 40 sts.", []int{40}, []int{2}, ""},
	{"CO 20 sts; knit 1 row; cut yarn. CO another 20 sts onto same needle; knit 1 row across all 42 sts.", []int{40}, []int{2},
		"1:92 COUNT_DISAGREES"},
	{"CO 33 sts.\nNext row: BO 30 sts, leaving the last 3 sts on the needle for the strap. 3 sts.", []int{3}, []int{1}, ""},
	{"CO 33 sts.\nNext row: BO 30 sts, leaving the last 4 sts on the needle.", []int{3}, []int{1}, "2:11 STITCHES_MISSING"},
	{"CO 85 sts.\nNext row: P to bound-off sts, p across 25 sts of lining from holder, p to end. 110 sts.", []int{110}, []int{1}, ""},
	// Both needles.
	{"CO 20 sts.\nKnit 4 rows.\nHold needles parallel, 10 sts on each, and join with a three-needle bind-off.", []int{0}, nil, ""},
	{"CO 20 sts.\nKnit 4 rows.\nPlace front and back with RS together and join 20 sts with a three-needle bind-off.", []int{0}, nil, ""},
	{"CO 20 sts.\nKnit 4 rows.\nPlace front and back with RS together and join 18 sts with a three-needle bind-off.", []int{0}, nil,
		"3:1 COUNT_DISAGREES"},
	{"CO 20 sts. Join.\nRnd 1: Knit.\nKnit the sts of N1 onto N3 and graft.", []int{0}, nil, ""},
	// What is told, and what is not done.
	{"CO 33 sts.\nRow 1: Knit, do not BO.\nLeave sts on needle.", []int{33}, []int{1}, ""},
	{"CO 32 sts.\nThe lace repeat is worked over 12 sts and 16 rows.\nRow 1: Knit.", []int{32}, []int{1}, ""},
	{"CO 32 sts. BO all sts.\nFinishing: Sew the seam, pick up no more than 3 sts in every 4 rows.", []int{0}, nil, ""},
	{"CO 27 sts.\nHalf-brioche. Row 1: Knit.\nRow 2: Purl.", []int{27}, []int{2}, ""},
	{"CO 32 sts.\nRow 1: Knit.\nCut one strand, and continue with a single strand: knit 3 rows.", []int{32}, []int{4}, ""},
	{"CO 43 sts.\nMark the centre stitch, the 22nd, and move the mark up with the work.\nRow 1: Knit.", []int{43}, []int{1}, ""},
	{"CO 43 sts.\nRow 1 (RS, decrease row): K1, ssk, k to end.\nWork the decrease row every 2nd row 19 more times, and the rows between " +
		"even (23 stitches).", []int{23}, []int{39}, ""},
	{"CO 43 sts.\nThe stitch left on the right needle by binding off is the first of those worked next.\nRow 1: Purl, for a sharp edge " +
		"where the flat part meets the side.", []int{43}, []int{1}, ""},
	{"CO 43 sts.\nw&t: slip the next stitch, bring the yarn to the front, slip the stitch back, and turn.\nRow 1: K40, w&t.\nRow 2: Purl.",
		[]int{43}, []int{2}, ""},
	{"CO 20 sts. BO all sts.\nPick up and knit 38 across the back, 51 down the left front, 1 across the middle of the front, " +
		"off the holder, 51 up the right front: 141 stitches.", []int{141}, nil, ""},
	// Turns of stitches that are put aside.
	{"CO 20 sts.\nRow 1 (RS): K18, turn.\nRow 2 (WS): Make DS, p15, turn.\nRow 3 (RS): Make DS, k3, place 14 sts on hold: 6 stitches.\n" +
		"Row 4 (WS): P3, p DS, p2.\nRow 5 (RS): K6.", []int{6}, []int{5}, ""},
	// A last working that ends otherwise, short rows that follow one another, both needles bound off, other spellings.
	{"CO 25 sts.\nRow 1: [K1, P1] across, ending K1.", []int{25}, []int{1}, ""},
	{"CO 26 sts.\nRow 1: [K1, P1] across, ending K1.", []int{26}, []int{1}, "2:8 DOES_NOT_COME_OUT"},
	{"CO 100 sts. Join.\nShort rows: K25, w&t; p50, w&t; k to BOR. 100 sts.\nNext rnd: Knit.", []int{100}, []int{4}, ""},
	{"CO 20 sts.\nSeam: with RS together, join 20 shoulder sts using 3-needle bind off.", []int{0}, nil, ""},
	{"Pick up & knit 100 sts evenly around armhole. Join.\nRnds 1-6: *P1, K1; rep from * around.", []int{100}, nil, ""},
	{"Mitts (make 2): CO 32 sts.\nRow 1: Knit w/ MC.", []int{32}, []int{1}, ""},
	// For which sizes.
	{"Sizes: Baby (Toddler, Child, Adult S, Adult L)\nCO 40 (40, 48, 48, 48) sts. Join.\nSizes Child, Adult S and Adult L only:\n" +
		"Next rnd: *K4, k2tog; rep from * around. 40 sts.\nAll sizes:\nNext rnd: *K3, k2tog; rep from * around. 32 sts.",
		[]int{32, 32, 32, 32, 32}, []int{1, 1, 2, 2, 2}, ""},
	// To where the stitches are taken off.
	{"CO 16 sts. Join.\nNext rnd: K4, pm, k8, pm, k4.\nK to m. Cut yarn and graft the first 8 sts to the other 8 sts.", []int{0}, nil, ""},
	{"CO 16 sts. Join.\nKnit 4 rnds.\nK4. Cut yarn, graft the toe.", []int{0}, nil, ""},
	{"CO 16 sts.\nKnit 4 rows.\nK4. Cut yarn, graft the toe.", []int{0}, nil, "3:1 STITCHES_UNWORKED"},
	// Put aside from those that were worked.
	{"CO 60 sts. Join.\nKnit 5 rnds.\nNext rnd: K4, place the last 8 sts worked on hold, k to end. 52 sts.", []int{52}, []int{6}, ""},
	{"CO 60 sts. Join.\nKnit 5 rnds.\nNext rnd: K to end, placing last 8 sts on hold. 52 sts.", []int{52}, []int{6}, ""},
	{"CO 60 sts. Join.\nKnit 5 rnds.\nNext rnd: K to last 8 sts, place these 8 sts on hold. 52 sts.", []int{52}, []int{6}, ""},
	{"CO 60 sts.\nKnit 5 rows.\nNext row: K4, place the last 8 sts worked on hold, k to end.", []int{52}, []int{6}, "3:15 STITCHES_MISSING"},
	// Ways of casting on, and what the stitches are for.
	{"CO 60 sts.\nKnit 1 row.\nCO 8 sts using backward loop method, knit to end. 68 sts.", []int{68}, []int{2}, ""},
	{"CO 60 sts.\nKnit 2 rows.\nNext row: CO 8 sts by the cable method, k60. 68 sts.", []int{68}, []int{3}, ""},
	{"CO 60 sts.\nKnit 2 rows.\nCO 8 sts for front neck, k60. 68 sts.", []int{68}, []int{3}, ""},
	{"CO 60 sts.\nKnit 2 rows.\nNext row: CO 8 sts for left front neck edge, k60. 68 sts.", []int{68}, []int{3}, ""},
	// What is worked until, and how often.
	{"CO 4 sts.\nWork I-cord for 12 cm. Draw yarn through sts.", []int{0}, nil, ""},
	{"CO 60 sts. Join.\nRnd 1: K1, k2tog, k to last 3 sts, ssk, k1. 58 sts.\nWork Rnd 1 every rnd 3 times. 52 sts.", []int{52}, []int{4}, ""},
	{"CO 30 sts.\nRow 1: K29, w&t.\nRow 2: P28, w&t.\nRow 3: K to 1 st before wrapped st, w&t.\nRow 4: P to st before wrapped st, w&t.\n" +
		"Rep Rows 3 and 4 until 10 sts rem unwrapped in the middle.\nRow 5: K to end.", []int{30}, []int{21}, ""},
	{"CO 30 sts.\nRow 1: K29, w&t.\nRow 2: P28, w&t.\nRow 3: K to 1 st before wrapped st, w&t.\nRow 4: P to st before wrapped st, w&t.\n" +
		"Rep Rows 3 and 4 until 28 sts rem unwrapped.", []int{30}, nil, "6:1 ROWS_OPEN"},
	{"CO 30 sts.\nShort-row 1 (RS): K20, turn.\nShort-row 2 (WS): Sl 1, p9, turn.\nShort-row 3: Sl 1, k to gap, k1, turn.\n" +
		"Short-row 4: Sl 1, p to gap, p1, turn.\nRep Short-rows 3 and 4 three more times.\nNext row: Knit to end. 30 sts.",
		[]int{30}, []int{11}, ""},
}

// TestFollowed: each comes to its count, and nothing is asked or called mistaken but what is wrong.
func TestFollowed(t *testing.T) {
	for _, c := range followed {
		out, err := CheckInstructions(t.Context(), CheckInstructionsInput{Text: c.text})
		if err != nil {
			t.Errorf("%s\n%v", c.text, err)
			continue
		}
		what := found(slices.DeleteFunc(out.Findings, func(f Finding) bool { return f.Kind == KindReading }))
		if !slices.Equal(out.EndStitches, c.end) || c.rows != nil && !slices.Equal(out.WorkedRows, c.rows) || what != c.found {
			t.Errorf("%s\n%v stitches after %v rows, found %q", c.text, out.EndStitches, out.WorkedRows, what)
		}
	}
}
