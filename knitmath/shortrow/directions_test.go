package shortrow

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// What a designer prints: where to begin, every row in order, what is on the
// needle after them. A wedge tall at the left begins on the wrong side and has an
// odd number of rows, so that a right-side row is next.
func TestWedgeDirections(t *testing.T) {
	six := 6
	out, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndLeft})
	if err != nil {
		t.Fatal(err)
	}
	d := out.Directions()
	want := []string{"Row 1 (WS): p20, w&t.", "Row 2 (RS): k20.", "Row 3 (WS): p12, w&t.", "Row 4 (RS): k12.", "Row 5 (WS): p4, w&t.",
		"Row 6 (RS): k4.", "Row 7 (WS): [p4, p1 tog with its wrap, p3] 3 times.",
		"All gaps are closed: 24 stitches, and a right-side row is next."}
	if d[0] != "Begin with 24 stitches on the needle and a wrong-side row to work." || !slices.Equal(d[2:], want) {
		t.Errorf("%q", d)
	}
	for method, word := range map[TurnMethod]string{TurnMethodUnspecified: "w&t: ", TurnMethodGerman: "make DS: ",
		TurnMethodYarnOver: "The yo "} {
		out, err := PlanWedge(WedgeInput{WidthStitches: 24, RiseRows: &six, TallEnd: TallEndLeft, TurnMethod: method})
		if err != nil || !strings.HasPrefix(out.Directions()[1], word) {
			t.Errorf("method %d: %q, %v", method, out.Directions()[1], err)
		}
	}
}

// A disc is gathered at its centre, a ring is not; less than a full turn lies flat
// or makes a cone, more ruffles. All have their rows, kind by kind.
func TestCircleDirections(t *testing.T) {
	width, wedges := 20, 8
	for _, c := range []struct {
		inner, turn float64
		join, last  string
	}{
		{0, 360, "To close the circle, bind off and sew", "Close the centre: "},
		{5, 360, "To close the circle, bind off and sew", "To close the circle, "},
		{0, 270, "Bind off to have it lie flat as part of a circle. For a cone, bind off", "Close the centre: "},
		{5, 400, "The piece is more than a full turn and ruffles. To close it, bind off", "The piece is"},
	} {
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, WidthStitches: &width, WedgeCount: &wedges,
			InnerRadiusCm: &c.inner, TurnDegrees: &c.turn})
		if err != nil {
			t.Fatal(err)
		}
		d := out.Directions()
		rows := 0
		for _, w := range out.Wedges {
			rows += len(w.Rows)
		}
		named := 0
		for _, line := range d {
			if strings.HasPrefix(line, "Row ") {
				named++
			}
		}
		joined := slices.ContainsFunc(d, func(line string) bool { return strings.HasPrefix(line, c.join) })
		if named != rows || !joined || !strings.HasPrefix(d[len(d)-1], c.last) {
			t.Errorf("inner %v, turn %v: %d of %d rows, %q", c.inner, c.turn, named, rows, d[len(d)-3:])
		}
	}
}
