package pattern

import "testing"

// TestCableTold: behind the name of a cable its working with the cable needle is told in brackets.
func TestCableTold(t *testing.T) {
	askMarked(t, wordsIn([]toldCase{
		{text: "CO 42 sts.\n1st row. P2, * k6, p2, rep from * to end.\n2nd row. K2, * p6, k2, rep from * to end.\n3rd row. P2, * W~, p2, rep " +
			"from * to end.\n" +
			"4th row. As 2nd row. «42» sts.", ends: []int{42}, rows: []int{4}},
		{text: "CO 10 sts.\nRow 1: P2, W~, p2.\nRow 2: Knit. «10» sts.", ends: []int{10}, rows: []int{2}},
	}, "C6F (slip next «3» sts on a cable needle and leave at front, k3, then k3 from cable needle)",
		"c6b (sl «3» sts to cn and hold in back, k«3», k«3» from cn)",
		"C6F (slip 3 sts to cable needle and hold in front, k3, k3 from cable needle)",
		"c6f (sl next 3 sts onto cn, hold in front, k3, then k«3» from cn)",
		"C6F (place 3 sts on cn and hold at front, knit 3, knit 3 from cn)",
		"C6B (sl 3 sts onto cable needle and hold at back of work, k3, then k3 from cable needle)"), 90)
}
