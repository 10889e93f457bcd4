package armhole_test

import (
	"fmt"
	"strings"

	"example.com/knitmath/knitmath/armhole"
	"example.com/knitmath/knitmath/gauge"
)

// A set-in sleeve for a chest of 92 cm, at 22 stitches and 30 rows to 10 cm.
func ExamplePlan() {
	out, err := armhole.Plan(armhole.Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, ChestCm: new(92.0), AcrossBackCm: new(36.0),
		ArmholeDepthCm: new(19.5), UpperArmCm: new(28.5)})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, sentence := range strings.SplitAfter(out.Summary(), ". ") {
		fmt.Println(strings.TrimSpace(sentence))
	}
	for _, line := range out.Directions() {
		fmt.Println(line)
	}
	// Output:
	// The back goes from 107 to 79 stitches, and so does the front; armholes 19.3 cm deep.
	// The sleeve's cap is 14 cm high, from 74 to 18 stitches.
	// Along the seam an armhole is 47.5 cm around and the edge of the cap 48.8 cm long: 2.7 % longer.
	// Note: RS decrease rows are k1, ssk, k to last 3 sts, k2tog, k1.
	// Back and front:
	// Note: the first bind-off is in a right-side row, on 107 stitches.
	// BO 7 sts at beg of next 2 rows, 3 sts at beg of next 2 rows: 87 stitches.
	// Dec 1 st each end of every RS row 4 times: 79 stitches.
	// Work 47 rows even.
	// Note: the shoulders begin here, and the neck where its depth wants it; 79 stitches are left for both.
	// Sleeve cap:
	// Note: the first bind-off is in a right-side row, on 74 stitches.
	// BO 7 sts at beg of next 2 rows, 2 sts at beg of next 6 rows: 48 stitches.
	// Dec 1 st each end of next row, then every 4th row 4 times: 38 stitches.
	// Dec 1 st each end of every RS row 7 times: 24 stitches.
	// Work 1 row even.
	// BO 3 sts at beg of next 2 rows: 18 stitches.
	// BO remaining 18 stitches.
	// Sew the cap in: its foot to the underarm, the middle of its top to the shoulder seam; ease in what is longer over the top.
}
