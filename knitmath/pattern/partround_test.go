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
