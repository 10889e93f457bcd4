package yoke

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/shortrow"
)

// The words of a way of turning are explained before the first short row. A yarn
// over of the wrong side is closed in the round after, by another decrease than
// within a wedge, and that is said too.
func TestARaiseExplainsItsTurns(t *testing.T) {
	for method, c := range map[shortrow.TurnMethod]struct{ begins, closes string }{
		shortrow.TurnMethodUnspecified: {"w&t: ", "work it with its stitch as one."},
		shortrow.TurnMethodGerman:      {"make DS: ", "as one stitch."},
		shortrow.TurnMethodYarnOver: {"The yo ",
			"Round 67 closes those that the wrong side has left: ssk there takes the stitch beyond the turn together with the yo after it."},
	} {
		out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200,
			BackRaise: &BackRaise{Place: RaisePlaceAfterBands, TurnMethod: method}})
		if err != nil {
			t.Fatal(err)
		}
		d := out.Directions()
		first := slices.IndexFunc(d, func(line string) bool { return strings.HasPrefix(line, "Short row 1 ") })
		if first < 1 || !strings.HasPrefix(d[first-1], c.begins) || !strings.HasSuffix(d[first-1], c.closes) {
			t.Errorf("method %d: no line on its words before the first short row:\n%s", method, strings.Join(d, "\n"))
		}
	}
}

// The parts of the round are told in order, and where it begins. 200 less 2 * 16
// of the underarms are 84 of back and front each, and 66 less 16 are 50; of 201
// the back has the stitch more. A raise has rounds that begin elsewhere.
func TestAJoinTellsItsParts(t *testing.T) {
	for _, c := range []struct {
		body  int
		raise *BackRaise
		want  string
	}{
		{200, nil, "Join body and sleeves in the round: 268 stitches. From the beginning of the round, left and right as worn: " +
			"back 84, left sleeve 50, front 84, right sleeve 50."},
		{201, nil, "Join body and sleeves in the round: 269 stitches. From the beginning of the round, left and right as worn: " +
			"back 85, left sleeve 50, front 84, right sleeve 50."},
		{200, &BackRaise{Place: RaisePlaceBeforeBands}, "Join body and sleeves in the round: 268 stitches. In working order, " +
			"left and right as worn: back 84, left sleeve 50, front 84, right sleeve 50. Note: the rounds begin 67 stitches before " +
			"the centre of the back, where the short rows will have their right edge as worn."},
	} {
		out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: c.body, BackRaise: c.raise})
		if err != nil {
			t.Fatal(err)
		}
		got := out.Directions()[1]
		if c.raise != nil {
			got += " " + out.Directions()[2]
		}
		if got != c.want {
			t.Errorf("body %d: got %q, want %q", c.body, got, c.want)
		}
	}
}
