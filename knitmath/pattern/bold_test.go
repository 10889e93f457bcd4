package pattern

import (
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestBoldWithinALine: what Markdown makes bold within a line is read as if it were not; two pairs of stars around
// steps are a repeat as before.
func TestBoldWithinALine(t *testing.T) {
	for _, text := range []string{"**Cast on** 120 sts.\nKnit 5 rows. %", "Cast on **120** sts.\nKnit 5 rows. %",
		"**CO 120 sts**.\nKnit 5 rows. %",
		"**CO 120 sts.** Join.\nKnit 5 rnds. %", "CO 120 sts.\nNext row: **K2tog**, k to last 2 sts, **kfb**, k1. %",
		"CO 120 sts.\n**Knit** 5 rows, then **purl** 2 rows. %",
		"CO 120 sts.\nRow 1: **k2, p2** to end. %", "CO 120 sts.\nRow 1: **k2, p2; rep from ** to end. %",
		"CO 120 sts.\nRow 1: **k2, p2**, rep from ** to ** 29 more times. %", "CO 120 sts.\nRow 1: **k1, p1** 60 times. %"} {
		for claim, right := range map[string]bool{"120 sts.": true, "121 sts.": false} {
			text := text[:len(text)-1] + claim
			out := asked(t, text, 0, stitch.Flat)
			if out.Agrees != right {
				t.Errorf("%q: %s", text, judgedText(out.Findings))
			}
		}
	}
}
