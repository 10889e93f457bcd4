package shortrow

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
)

// Every answer tells its figures, what to do, and where they come from.
func TestAnswersInWords(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 28}
	twenty, eight := 20, 8
	wedge, err := PlanWedge(WedgeInput{WidthStitches: 20, RiseRows: &eight, TallEnd: TallEndCentre, Gauge: standard})
	if err != nil {
		t.Fatal(err)
	}
	curve, err := PlanWedge(WedgeInput{WidthStitches: 40, ProfileRows: []float64{0, 8, 2, 8, 0}, Gauge: standard})
	if err != nil {
		t.Fatal(err)
	}
	many, err := PlanWedge(WedgeInput{WidthStitches: 150, RiseRows: new(60), TallEnd: TallEndRight, Order: OrderShortestFirst})
	if err != nil {
		t.Fatal(err)
	}
	disc, err := PlanCircleOfWedges(CircleInput{Gauge: standard, WidthStitches: &twenty, WedgeCount: &eight})
	if err != nil {
		t.Fatal(err)
	}
	ring, err := PlanCircleOfWedges(CircleInput{Gauge: standard, WidthStitches: &twenty, WedgeCount: &eight, InnerRadiusCm: new(5.0)})
	if err != nil {
		t.Fatal(err)
	}
	for want, answer := range map[string]report.Answer{
		// 8 rows are 2.86 cm over half of 10 cm: tan 29.7 degrees = 0.571.
		"A wedge of 20 stitches that rises 8 rows (2.9 cm, 29.7 degrees). " +
			"Turn with 2 stitches unworked, then 2 stitches before the last turn 3 times, at each side. 8 turns to close.": wedge,
		"A wedge of 40 stitches that rises 8 rows (2.9 cm). Follow the rows: 4 pairs of short rows lie under the tallest place. " +
			"14 turns to close.": curve,
		"A wedge of 150 stitches that rises 60 rows. Turn with 147 stitches unworked, then 5 stitches past the last turn 29 times. " +
			"30 turns to close.": many,
		// 2 pi 10 cm at 2.8 rows are 175.929 rows: 0.07 off, or 0.14 degrees.
		"A disc of 10 cm radius from 8 wedges of 20 stitches: 176 rows round the outer edge, " +
			"0.07 rows too long to close flat (0.14 degrees).": disc,
		// 2 pi 15 cm: 263.894.
		"A ring of 15 cm radius from 8 wedges of 20 stitches: 264 rows round the outer edge, " +
			"0.11 rows too long to close flat (0.14 degrees).": ring,
	} {
		if got := answer.Summary(); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
		if len(answer.Directions()) == 0 || len(answer.Sources()) < 2 {
			t.Errorf("%q: %d directions, %d sources", want, len(answer.Directions()), len(answer.Sources()))
		}
		for _, s := range answer.Sources() {
			if s.Figure == "" || s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%q: source %+v", want, s)
			}
		}
		if got := answer.Directions(); strings.Contains(strings.Join(got, " "), "  ") {
			t.Errorf("%q", got)
		}
	}
}
