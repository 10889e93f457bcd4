package pattern

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestChangesGoOn: so many rows in which changes go on as they were.
func TestChangesGoOn(t *testing.T) {
	const rows = "Row 1 (RS): K3, yo, k to last 3 sts, yo, k3.\nRow 2: Knit.\n"
	ways := []string{"as set", "as est", "as established", "as before", "in the same way", "in this manner", "as set on RS rows"}
	forms := []string{"Knit 6 rows, continuing to increase <", "Work 6 more rows, increasing <", "Work 6 rows in St st, cont to inc <",
		"Knit the next 6 rows, keeping increases <", "Work 6 rows in garter st and continue to increase <", "Keeping increases <, knit 6 rows",
		"Maintaining increases <, work 6 rows in garter st", "Knit 6 rows continuing to increase <", "Work 6 rows, still increasing <",
		"Knit 6 rows, increasing at each end <", "Continuing to increase <, work 6 rows more", "Work 6 more rows, with increases <"}
	var texts []worded
	for _, w := range ways {
		for _, f := range forms {
			texts = append(texts, worded{rows + strings.Replace(f, "<", w, 1) + ". 109 sts.", []int{101}, false, []int{109}, []int{8}})
		}
	}
	askWorded(t, texts, 94, 0)
	// Rows that say how many stitches they work do not go on by themselves.
	const fixed = "Row 1 (RS): K3, yo, k95, yo, k3. 103 sts\nRow 2: Knit.\n"
	for _, f := range forms {
		text := fixed + strings.Replace(f, "<", ways[0], 1) + ". 109 sts."
		if out := asked(t, text, 101, stitch.Flat); out.Agrees || slices.ContainsFunc(out.Findings, mistaken) {
			t.Errorf("%q: not asked about: %s", text, judgedText(out.Findings))
		}
	}
}

func mistaken(f Finding) bool { return f.Kind == KindMistake }
