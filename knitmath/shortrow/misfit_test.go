package shortrow

import (
	"strings"
	"testing"
)

// Just inside and just outside of every reason why rows do not go into wedges: a
// pair of short rows for each; turns a stitch apart, of which 3 stitches hold two; the
// rows of one wedge, short and full; and those of all kinds, where 2,000 and 1,999
// pairs on two wedges are of two kinds.
func TestRowsThatDoNotGoIntoWedges(t *testing.T) {
	const noPair, turns, rows, kinds = "no pair of short rows", "turns on ", "more than 2000 rows", "its different wedges"
	for _, c := range []struct {
		width, wedges, pairs, full int
		want                       string
	}{
		{3, 2, 1, 2, noPair}, {3, 2, 2, 2, ""},
		{3, 2, 4, 2, ""}, {3, 2, 5, 2, turns},
		{5000, 2, 2000, 2, ""}, {5000, 2, 2001, 2, rows},
		{5000, 2, 2, 2000, ""}, {5000, 2, 2, 2001, rows},
		{5000, 2, 2000, 2000, ""}, {5000, 2, 2000, 1999, kinds},
	} {
		q := circle{width: c.width, wedges: c.wedges, pairs: c.pairs, full: c.full}
		if got := q.misfit(); (got == "") != (c.want == "") || !strings.Contains(got, c.want) {
			t.Errorf("%+v: %q", c, got)
		}
	}
	// 600 rows round 3 stitches are 300 pairs, at most two short ones and a full one
	// a wedge: the most wedges there are.
	if got := (circle{width: 3, wantOuter: 600}).nearestCount(5); got != MaxWedges {
		t.Errorf("%d wedges", got)
	}
	q := circle{width: 9, wantOuter: 20, wantInner: 14, wedges: 4, pairs: 3, full: 7}
	if got := q.misfit(); !strings.HasPrefix(got, "the outer edge has 20 rows and the inner edge 14 rows; ") {
		t.Errorf("%q", got)
	}
}
