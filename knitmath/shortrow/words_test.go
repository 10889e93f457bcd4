package shortrow

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// One of a thing is told in the singular, and a step that is taken once without
// its "once": 5 pairs over 44 stitches turn 8.8 apart, the first after 4.4, at 40,
// 31, 22, 13 and 4 stitches from the tall edge; over 43 at 39, 30, 22, 13 and 4.
func TestWordsOfOne(t *testing.T) {
	ten, one := 10, 1
	for width, want := range map[int]string{
		44: "Turn with 4 stitches unworked, then 9 stitches before the last turn 4 times. ",
		43: "Turn with 4 stitches unworked, then 9 stitches before the last turn; " +
			"then 8 stitches before the last turn; then 9 stitches before the last turn twice. ",
	} {
		out, err := PlanWedge(WedgeInput{WidthStitches: width, RiseRows: &ten, TallEnd: TallEndRight, Spread: TurnSpreadInterleaved})
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

// Equal steps from the edge are told from there, whichever row is first; a double is
// worked beyond them.
func TestWordsOfEqualGroups(t *testing.T) {
	for want, in := range map[string]WedgeInput{
		"Turn with 5 stitches unworked, then 5 stitches before the last turn 3 times. ": {},
		"Turn after 5 stitches, then 5 stitches past the last turn 3 times. ":           {Order: OrderShortestFirst},
		"Turn after 5 stitches and the one made double, then 5 stitches past the last turn 3 times. ": {
			Order: OrderShortestFirst, TurnMethod: TurnMethodGerman},
		"Turn with 5 stitches unworked (the one made double among them), then 5 stitches before the last turn 3 times. ": {
			TurnMethod: TurnMethodGerman},
	} {
		in.WidthStitches, in.RiseRows, in.TallEnd = 25, new(8), TallEndRight
		out, err := PlanWedge(in)
		if err != nil || !strings.Contains(out.Summary(), want) {
			t.Errorf("%q, want %q; %v", out.Summary(), want, err)
		}
	}
}

// A circle says whether its outer edge is too long or too short, and calls only a
// whole turn a disc. 2 pi 10 cm at 2.8 rows are 175.929 rows, 176 knit; of them 300
// degrees are 146.608, 146 knit; 400 degrees are 195.477, 196 knit. At 2.9 rows
// 182.212 rows are wanted and 182 knit.
func TestCircleWordsOfClosing(t *testing.T) {
	for _, c := range []struct {
		rows, degrees float64
		want          string
	}{
		{28, 360, "A disc of 10 cm radius from 8 wedges of 20 stitches: 176 rows round the outer edge, " +
			"0.07 rows too long to close flat (0.14 degrees)."},
		{29, 360, "A disc of 10 cm radius from 8 wedges of 20 stitches: 182 rows round the outer edge, " +
			"0.21 rows too short to close flat (0.42 degrees)."},
		{28, 300, "A part of a disc, 300 degrees of it, of 10 cm radius from 8 wedges of 20 stitches: 146 rows round the outer edge, " +
			"0.61 rows too short to fill 300 degrees (1.24 degrees)."},
		{28, 400, "A disc that ruffles, of 400 degrees and 10 cm radius from 8 wedges of 20 stitches: 196 rows round the outer edge, " +
			"0.52 rows too long to fill 400 degrees (1.07 degrees)."},
	} {
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: c.rows}, WidthStitches: new(20),
			WedgeCount: new(8), TurnDegrees: &c.degrees})
		if err != nil || out.Summary() != c.want {
			t.Errorf("got %q, want %q, %v", out.Summary(), c.want, err)
		}
	}
}

// A ring of a stitch is told in the singular, and one whose edges are the wrong
// way about without a number of stitches below none.
func TestCircleWordsOfNarrowRings(t *testing.T) {
	for radius, want := range map[float64]string{5.5: "there is 1 stitch; there must be from 2", 4: "the inner edge does not lie inside",
		5: "the inner edge does not lie inside"} {
		_, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, OuterRadiusCm: &radius,
			InnerRadiusCm: new(5.0)})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v cm: %v", radius, err)
		}
	}
}

// A sentence tells six steps, and sends the reader to the rows for the rest.
func TestWordsOfManySteps(t *testing.T) {
	s := TurnSequence{FirstUnworkedStitches: 3}
	for i := range 8 {
		s.add(2 + i%2)
	}
	got := Wedge{shortest: true, width: 40}.sentence(s)
	if !strings.HasSuffix(got, "; then 3 stitches past the last turn; and so on (see the rows)") ||
		strings.Count(got, "past the last turn") != 6 {
		t.Error(got)
	}
}
