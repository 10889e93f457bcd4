package pattern

import "testing"

// TestPatternRowsInTotal: the rows of the pattern just written are worked so often in all, or more.
func TestPatternRowsInTotal(t *testing.T) {
	rows := "CO 40 sts.\nRow 1 (RS): *K3, p1; rep from * to end.\nRow 2: K.\nRow 3: *K1, p1; rep from * to end.\nRow 4: Purl.\n"
	var texts []toldCase
	for _, lead := range []string{"Work", "Work the", "Work these", "Repeat the", "Rep these", "Work all"} {
		for _, what := range []string{"4 pattern rows", "4 rows", "4 patt rows", "4 rows of pattern", "4 rows of patt", "last 4 rows"} {
			for _, often := range []string{" «5» times in total", " «5» times in all", " «5» times altogether", " a total of «5» times",
				" «5» times in total, ending with Row 4", " «5» times in total"} {
				texts = append(texts, toldCase{text: rows + lead + " " + what + often + " (20 rows).\nKnit 2 rows.", ends: []int{40}, rows: []int{22}})
			}
		}
	}
	askMarked(t, texts, 90)
}

// TestRowsAsRows: rows that are as those before, in their order.
func TestRowsAsRows(t *testing.T) {
	first := "CO 42 sts.\n1st row. P2, * k6, p2, rep from * to end.\n2nd row. K2, * p6, k2, rep from * to end.\n"
	askMarked(t, wordsIn([]toldCase{
		{text: first + "3rd and 4th rows. W~.\n5th row. Purl.\n6th row. As 2nd row.\nThese 6 rows form patt.", ends: []int{42}, rows: []int{6}},
		{text: first + "3rd and 4th rows: W~.\n5th row. Inc in first st, k to end. («43» sts)", ends: []int{43}, rows: []int{5}},
		{text: first + "Rows 3 and 4: W~.\nRow 5: K2tog, k to end. («41» sts)", ends: []int{41}, rows: []int{5}},
		{text: first + "Rows 3-4: W~.\nRow 5: K2tog, k to end. («41» sts)", ends: []int{41}, rows: []int{5}},
		{text: first + "3rd-4th rows: W~.\nKnit 2 rows. («42» sts)", ends: []int{42}, rows: []int{6}},
	}, "As 1st and 2nd", "As 1st and 2nd rows", "As Rows 1 and 2", "As rows 1 & 2", "Work as 1st and 2nd rows", "Same as 1st and 2nd rows",
		"as 1st and 2nd",
		"Like 1st and 2nd rows", "Rep 1st and 2nd rows", "Repeat Rows 1 and 2", "As for 1st and 2nd rows", "Work as for Rows 1 and 2",
		"As Rows 1-2",
		"Same as Rows 1 and 2", "As first and second rows", "As first and second", "Rep 1st & 2nd rows once", "As last 2 rows"), 95)
}

// TestFabricTold: what a fabric is stands in brackets behind its name.
func TestFabricTold(t *testing.T) {
	told := []string{"(every row: *k1, p1; rep from * to last st, k1)", "(every row *k1, p1; rep from * to last st, k1)",
		"(every row: k1, *p1, k1; rep from * to end)", "(all rows: k1, * p1, k1, rep from * to end)",
		"(each row: *K1, p1; rep from * to last st, k1)",
		"[every row: k1, (p1, k1) to end]", "(k1, *p1, k1; rep from * to end every row)", "(K1, *p1, k1; rep from * to end, every row)",
		"(k1, *p1, k1; rep from * on every row)", "(every row = k1, *p1, k1; rep from * to end)"}
	askMarked(t, wordsIn([]toldCase{
		{text: "Cast on 105 sts. Work 8 rows in moss st W~.\nKnit 2 rows, inc «5» sts evenly across last row. («110» sts)",
			ends: []int{110}, rows: []int{10}},
		{text: "CO 45 sts.\nWork in seed st W~ for 6 rows.\nNext row: K2tog, k to end. «44» sts.", ends: []int{44}, rows: []int{7}},
		{text: "Cast on 81 (85: 89) sts and work in moss st W~ for 10 rows. BO «4» sts at beg of next 2 rows. 73 (77: «81») sts.",
			ends: []int{73, 77, 81}, rows: []int{12, 12, 12}},
		{text: "Cast on 81 sts.\n10 rows moss st W~. Knit 1 row. «81» sts.", ends: []int{81}, rows: []int{11}},
	}, told...), 90)
}
