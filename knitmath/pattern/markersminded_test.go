package pattern

import "testing"

// TestMarkersPlacedAfter: markers are placed while a row is worked, after stitches that are counted from its beginning.
func TestMarkersPlacedAfter(t *testing.T) {
	askMarked(t, wordsIn([]toldCase{
		{text: "CO 58 sts.\n1st row (WS): Purl, W~.\n2nd row: *K to 1 st before marker, inc in next st, sm, inc in next st; rep from * 3 " +
			"times more, k to end.\n" +
			"3rd row: Purl.\nRep 2nd and 3rd rows «11» times more. «154» sts.", ends: []int{154}, rows: []int{25}},
		{text: "CO 58 sts.\nNext row: Knit W~.\nInc row: *K to 1 st before m, kfb, sl m, kfb; rep from * three more times, k to end. («66» " +
			"sts)",
			ends: []int{66}, rows: []int{2}},
		{text: "CO 58 sts.\nPurl 1 row, W~.\nInc row: (K to 1 st before m, m1, k1, sm, k1, m1) 4 times, k to end. («66» sts)",
			ends: []int{66}, rows: []int{2}},
	}, "placing a marker after the 10th, 20th, 38th and 48th sts", "placing markers after the 10th, 20th, 38th and 48th sts",
		"placing markers after 10th, 20th, 38th and 48th stitch", "and place markers after the 10th, 20th, 38th and 48th sts",
		"placing a m after 10, 20, 38 and 48 sts", "placing markers after sts 10, 20, 38 and 48", "pm after the 10th, 20th, 38th, and 48th sts",
		"placing a marker after the 10th, 20th, 38th and 48th stitch for the raglans",
		"placing 4 markers, after the 10th, 20th, 38th and 48th sts"), 70)
	askMarked(t, wordsIn([]toldCase{
		{text: "CO 72 sts and join in the round.\nNext rnd: Knit, W~.\nDec rnd: *K to 2 sts before m, k2tog, sm; rep from * around. («66» sts)",
			ends: []int{66}, rows: []int{2}},
		{text: "CO 72 sts and join in the round.\nKnit 1 rnd, W~.\nDec rnd: *K to 2 sts before m, k2tog, sm; rep from * around. («66» " +
			"sts)\nKnit 1 rnd.\n" +
			"Rep last 2 rnds 4 more times. («42» sts)", ends: []int{42}, rows: []int{11}},
	}, "placing a marker after every 12th st (6 markers)", "placing a marker after every 12th st", "placing markers every 12 sts",
		"placing a marker every 12 sts", "placing a marker after every 12 sts", "pm every 12 sts", "placing a marker after each 12th stitch",
		"pm after every 12th st", "placing a m every 12th st"), 70)
}

// TestMarkersRemovedWhile: markers are removed while rows are worked, which is no stitch.
func TestMarkersRemovedWhile(t *testing.T) {
	askMarked(t, wordsIn([]toldCase{
		{text: "CO 60 sts. Row 1 (RS): K20, pm, k20, pm, k20. Row 2: Purl.\nW~, work 45 rows in st st.\nK2tog, k to end. («59» sts)",
			ends: []int{59}, rows: []int{48}},
		{text: "CO 60 sts. Row 1 (RS): K20, pm, k20, pm, k20. Row 2: Purl.\nNext row: W~, k2tog, k to end. («59» sts)", ends: []int{59},
			rows: []int{3}},
		{text: "CO 60 sts. Row 1 (RS): K20, pm, k20, pm, k20. Row 2: Purl.\nKnit 4 rows, W~. BO «5» sts at beg of next 2 rows. 50 sts.",
			ends: []int{50}, rows: []int{8}},
		{text: "CO 60 sts. Row 1 (RS): K20, pm, k20, pm, k20. Row 2: Purl.\nNext row: K2tog, k to end, W~. («59» sts)", ends: []int{59},
			rows: []int{3}},
		{text: "CO 60 sts. Row 1 (RS): K20, pm, k20, pm, k20. Row 2: Purl.\nW~, knit 4 rows. BO «5» sts at beg of next 2 rows. 50 sts.",
			ends: []int{50}, rows: []int{8}},
	}, "Removing markers", "removing all markers", "removing markers as you go", "removing markers as you come to them",
		"removing the markers",
		"removing markers as they appear", "slipping markers", "discarding markers", "dropping markers as you come to them", "taking out markers",
		"removing raglan markers", "removing markers when you come to them", "removing all the markers on the first row"), 90)
}

// TestClippedWords: words that are clipped as notes are.
func TestClippedWords(t *testing.T) {
	askMarked(t, []toldCase{
		{text: "Cast on 92/100 sts w/ smaller needles. K 8 rows. Switch to larger needles. Next row (RS): knit, inc'ing «2/4» sts evenly " +
			"across: «94/104» sts.",
			ends: []int{94, 104}, rows: []int{9, 9}},
		{text: "CO 40 sts w/ MC. K 8 rows. Next row: knit, dec'ing «4» sts evenly: «36» sts.", ends: []int{36}, rows: []int{9}},
		{text: "W/ smaller needle, CO 40 sts. K 8 rows. Next row: k across, inc'g «4» sts evenly. «44» sts.", ends: []int{44},
			rows: []int{9}},
		{text: "W/ CC & 4 mm needles, CO 40 sts. Rib 8 rows. Next row: p, inc'ing «4» sts evenly spaced. «44» sts.", ends: []int{44},
			rows: []int{9}},
		{text: "CO 40 sts. W/ RS facing, BO «5» sts at beg of next 2 rows. 30 sts.", ends: []int{30}, rows: []int{2}},
		{text: "CO 40 sts w/o twisting, join. Rnds 1-4: K. Rnd 5: w/ B, k2tog, k to end. «39» sts.", ends: []int{39}, rows: []int{5}},
		{text: "CO 60 sts. Cont in st st, dec'ing 1 st ea end of every 4th row «5» times. «50» sts.", ends: []int{50}, rows: []int{20}},
		{text: "CO 60 sts. Work 6 rows, inc'ing 1 st at ea end of every RS row. «66» sts.", ends: []int{66}, rows: []int{6}},
	}, 80)
}

// TestMadeRoundAfterwards: that the piece is joined stands behind what is worked.
func TestMadeRoundAfterwards(t *testing.T) {
	askMarked(t, wordsIn([]toldCase{
		{text: "CO 88 sts. Work 6 rnds in k2, p2 rib, W~.\nInc rnd: *K2, m1; rep from * around. «132» sts.\nKnit 8 rnds.", ends: []int{132},
			rows: []int{15}},
		{text: "CO 88 (92) sts. Work 1\" in k2, p2 rib, W~.\nInc rnd: *K2, m1; rep from * around. «132 (138)» sts.", ends: []int{132, 138}},
		{text: "CO 88 sts, W~. Knit 4 rnds.\nInc rnd: *K2, m1; rep from * around. «132» sts.", ends: []int{132}, rows: []int{5}},
		{text: "CO 88 sts. Knit 4 rnds, W~.\nInc rnd: *K2, m1; rep from * around. «132» sts.", ends: []int{132}, rows: []int{5}},
	}, "joined in the round", "joining in the round", "joined in rnd", "joined into a round", "working in the round", "worked in the round",
		"in the round", "joining to work in the round", "joined to work in rounds", "knitting in the round"), 90)
}
