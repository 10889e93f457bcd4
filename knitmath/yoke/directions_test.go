package yoke

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shortrow"
)

// The words of a way of turning are explained before the first short row. A yarn
// over of the wrong side is closed in the round after, by another decrease than
// within a wedge, and that is said too.
func TestARaiseExplainsItsTurns(t *testing.T) {
	for method, c := range map[shortrow.TurnMethod]struct{ begins, closes string }{
		shortrow.TurnMethodUnspecified: {"Note: w&t: ", "work it with its stitch as one."},
		shortrow.TurnMethodGerman:      {"Note: make DS: ", "as one stitch."},
		shortrow.TurnMethodYarnOver: {"Note: the yo ",
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
// the back has the stitch more. A raise has rounds that begin elsewhere: half of 134 are 67, of which 42 are half the back.
func TestAJoinTellsItsParts(t *testing.T) {
	for _, c := range []struct {
		body  int
		raise *BackRaise
		want  string
	}{
		{200, nil, "Join body and sleeves in the round: 268 stitches. From the beginning of the round, left and right as worn: " +
			"back 84, left sleeve 50, front 84, right sleeve 50. Note: the rounds begin with the first stitch of the back, at a marker."},
		{201, nil, "Join body and sleeves in the round: 269 stitches. From the beginning of the round, left and right as worn: " +
			"back 85, left sleeve 50, front 84, right sleeve 50. Note: the rounds begin with the first stitch of the back, at a marker."},
		{200, &BackRaise{Place: RaisePlaceBeforeBands}, "Join body and sleeves in the round: 268 stitches. " +
			"From the beginning of the round, left and right as worn: right sleeve 25, back 84, left sleeve 50, front 84, right sleeve 25. " +
			"Note: the rounds begin with the last 25 stitches of the right sleeve, at a marker, " +
			"where the short rows will have their right edge as worn."},
	} {
		out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: c.body, BackRaise: c.raise})
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(out.Directions()[1:3], " "); got != c.want {
			t.Errorf("body %d: got %q, want %q", c.body, got, c.want)
		}
	}
}

// Wherever a raise lets the rounds begin: the parts make up the join, and from the beginning to the
// middle of the back there are as many stitches as the plan has, to half of one.
func TestTheRoundsBeginWhereTheRaiseDoes(t *testing.T) {
	seen := map[string]int{}
	for body := 96; body <= 240; body += knittest.Sweep(3, 17) {
		for share := 1; share <= 26; share++ {
			raise := &BackRaise{Place: RaisePlaceBeforeBands, BackStitches: new(body * share / 21), RiseRows: new(2)}
			if share <= 8 {
				raise.Place = RaisePlaceAfterBands
			}
			out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: body, BackRaise: raise})
			if err == nil {
				seen[checkBeginning(t, out)]++
			}
		}
	}
	t.Log(seen)
	if seen["back"] < 10 || seen["right sleeve"] < 10 || seen["front"] < 5 {
		t.Error(seen)
	}
}

var partAndCount = regexp.MustCompile(`(back|left sleeve|front|right sleeve) (\d+)`)

// checkBeginning reads the parts of a raised yoke's round, and returns the one that it begins in.
func checkBeginning(t *testing.T, out Circular) string {
	t.Helper()
	parts, begins := partAndCount.FindAllStringSubmatch(out.Directions()[1], -1), out.Directions()[2]
	back := out.BodyStitches - 2*out.UnderarmStitches
	back -= back / 2
	all, toCentre := 0, -1 // toCentre in half stitches
	for i, p := range parts {
		n, _ := strconv.Atoi(p[2])
		if p[1] == "back" && toCentre < 0 && (i > 0 || 2*n >= back) {
			toCentre = 2*(all+n) - back
		}
		all += n
	}
	if off := toCentre - 2*out.BackRaise.BeginBeforeCentreStitches; all != out.JoinStitches || off < -1 || off > 1 {
		t.Errorf("%d half stitches off, %d stitches of %d: %q", off, all, out.JoinStitches, parts)
	}
	first := "the last " + parts[0][2] + " stitches of the " + parts[0][1] + ", at"
	switch {
	case len(parts) == 4:
		first = "the first stitch of the " + parts[0][1] + ", at"
	case parts[0][2] == "1":
		first = "the last stitch of the " + parts[0][1] + ", at"
	}
	if !strings.Contains(begins, first) {
		t.Errorf("%q of %q", begins, parts)
	}
	return parts[0][1]
}
