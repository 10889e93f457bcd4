package edge

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
)

// Every answer tells its figures, what to do, and where they come from.
func TestAnswersInWords(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 20, Rows: 28}
	pickUp := func(in PickUpInput) report.Answer {
		out, err := PlanPickUp(in)
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	holes := func(in ButtonholesInput) report.Answer {
		out, err := PlanButtonholes(in)
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	const how = "k and p stand for the stitch pattern of the band. The stitch left on the right needle by binding off " +
		"is the first of those worked next."
	for name, c := range map[string]struct {
		answer     report.Answer
		summary    string
		directions []string
	}{
		// 28 rows are 10 cm, and so are 20 stitches: 5 for every 7.
		"fewer": {pickUp(PickUpInput{LengthRows: new(28), Gauge: standard}),
			"Pick up 20 stitches along 28 rows: a band of 10 cm on an edge of 10 cm. As a ratio, 5 stitches for every 7 rows, " +
				"which by itself gives just as many.",
			[]string{"", "8 of the 28 rows along the edge are skipped."}},
		"one skipped": {pickUp(PickUpInput{LengthRows: new(4), Gauge: standard}), "",
			[]string{"", "1 of the 4 rows along the edge is skipped."}},
		// 30 stitches to 28 rows are 15 for every 14, which is beyond 8: 1 a row, 2 too few.
		"more": {pickUp(PickUpInput{LengthRows: new(28), Gauge: standard, BandGauge: &gauge.Gauge{Stitches: 30, Rows: 28}}),
			"Pick up 30 stitches along 28 rows: a band of 10 cm on an edge of 10 cm. As a ratio, 1 stitch for every row, " +
				"which by itself gives 2 stitches fewer.",
			[]string{"", "Along the edge opposite, as of the other front, work these in reverse order.",
				"2 of the 28 rows along the edge take two stitches."}},
		// 15 stitches to 14 rows, half of the same.
		"one doubled": {pickUp(PickUpInput{LengthRows: new(14), Gauge: standard, BandGauge: &gauge.Gauge{Stitches: 30, Rows: 28}}),
			"Pick up 15 stitches along 14 rows: a band of 5 cm on an edge of 5 cm. As a ratio, 1 stitch for every row, " +
				"which by itself gives 1 stitch fewer.",
			[]string{"", "1 of the 14 rows along the edge takes two stitches."}},
		// 3 holes of 2 on 20 stitches with 3 before the first and after the last: 8 in two gaps.
		"across": {holes(ButtonholesInput{BandStitches: 20, BandRows: 8, HoleCount: 3, HoleStitches: new(2), BeforeFirstPlaces: new(3),
			Gauge: standard}),
			"3 holes of 2 stitches (1 cm): 3 stitches before the first, 3 stitches after the last, 4 stitches between.",
			[]string{how, "Work 3 rows even.", "Row 4 (RS): k3, [BO 2, k4] twice, BO 2, k3. 3 holes of 2 stitches bound off.",
				"Row 5 (WS): p3, [CO 2, p4] twice, CO 2, p3. 20 stitches again.", "Work 3 rows even."}},
		// 3 holes of two rows on 30 rows, 4 before and after: 16 in two gaps.
		"along": {holes(ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 7, BandRows: 30, HoleCount: 3,
			HoleStitches:      new(3),
			BeforeFirstPlaces: new(4)}),
			"3 holes of 3 stitches: 4 rows before the first, 4 rows after the last, 8 rows between.",
			[]string{how, "Hole (RS): k2, BO 3, k2; next row p2, CO 3, p2.",
				"Begin a hole on rows 5, 15, 25, of two rows each; work all other rows even, to row 30."}},
		"any row": {holes(ButtonholesInput{Direction: BandDirectionAlongRows, BandStitches: 7, BandRows: 20, HoleCount: 2,
			HoleStitches:      new(3),
			BeforeFirstPlaces: new(4), AfterLastPlaces: new(5), RowChoice: shaping.RowChoiceAny}),
			"2 holes of 3 stitches: 4 rows before the first, 5 rows after the last, 7 rows between.",
			[]string{how, "Hole (RS): k2, BO 3, k2; next row p2, CO 3, p2.", "Hole (WS): p2, BO 3, p2; next row k2, CO 3, k2.",
				"Begin a hole on rows 5 (RS), 14 (WS), of two rows each; work all other rows even, to row 20."}},
	} {
		if got := c.answer.Summary(); c.summary != "" && got != c.summary {
			t.Errorf("%s: got %q, want %q", name, got, c.summary)
		}
		got := c.answer.Directions()
		if last := len(got) - 1; got[last] == buttonCare { // with every plan of buttonholes
			got = got[:last]
		}
		for i, want := range c.directions {
			if len(got) != len(c.directions) || want != "" && got[i] != want {
				t.Errorf("%s: got\n%s\nwant\n%s", name, strings.Join(got, "\n"), strings.Join(c.directions, "\n"))
				break
			}
		}
		for _, s := range c.answer.Sources() {
			if s.Figure == "" || s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%s: source %+v", name, s)
			}
		}
		if len(c.answer.Sources()) < 3 {
			t.Errorf("%s: %d sources", name, len(c.answer.Sources()))
		}
	}
}
