package shortrow

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/measure"
)

// One of a thing is told in the singular, and a step that is taken once without
// its "once": 5 pairs over 44 stitches turn 8.8 apart, the first after 4.4, at 40,
// 31, 22, 13 and 4 stitches from the tall edge; over 43 at 39, 30, 22, 13 and 4.
func TestWordsOfOne(t *testing.T) {
	ten, one := 10, 1
	for width, want := range map[int]string{
		44: "Turn with 4 stitches unworked, then 9 stitches before the last turn 4 times. ",
		43: "Turn with 4 stitches unworked, then 9 stitches before the last turn; then 8 stitches; then 9 stitches twice. ",
	} {
		out, err := PlanWedge(WedgeInput{WidthStitches: width, RiseRows: &ten, TallEnd: TallEndRight})
		if err != nil || !strings.Contains(out.Summary(), want) {
			t.Errorf("%d stitches: %q, %v", width, out.Summary(), err)
		}
	}
	out, err := PlanWedge(WedgeInput{WidthStitches: 20, RiseRows: &one, TallEnd: TallEndRight})
	if err != nil || !strings.HasPrefix(out.Notices[0].Description, "asks for 1 row; ") {
		t.Errorf("%+v, %v", out.Notices, err)
	}
	_, err = PlanWedge(WedgeInput{WidthStitches: 20, RiseRows: &one, TallEnd: TallEndRight, Rounding: measure.RoundingDown})
	if err == nil || !strings.Contains(err.Error(), "the rise is 1 row and rounds to no pair") {
		t.Error(err)
	}
}
