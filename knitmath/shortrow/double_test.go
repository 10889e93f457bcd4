package shortrow

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// 10 pairs over 20 stitches turn every second stitch, first with one stitch left:
// made double, that stitch would have a row where the wedge has none. The first
// turn moves in by a stitch, so that 19 are worked, the last of them doubled.
func TestGermanTurnLeavesTheEdgeAlone(t *testing.T) {
	twenty := 20
	out, err := PlanWedge(WedgeInput{WidthStitches: 20, RiseRows: &twenty, TallEnd: TallEndRight, TurnMethod: TurnMethodGerman})
	if err != nil {
		t.Fatal(err)
	}
	if got := out.Rows[0].Instruction.Row.Text(); got != "k19, turn" || out.Rows[0].UnworkedStitches != 1 {
		t.Errorf("row 1: %q, %d unworked", got, out.Rows[0].UnworkedStitches)
	}
	m := knittest.CastOn(t, 20, false)
	for _, r := range out.Rows {
		if err := m.Work(r.Instruction.Row); err != nil {
			t.Fatal(err)
		}
	}
	if h := m.Heights(); h[0]-h[19] != 20 || out.RiseRows != 20 {
		t.Errorf("rises %d rows, %d said", h[0]-h[19], out.RiseRows)
	}
}

// A ring whose wedges turn up to the inner edge: by the same rule it has the rows
// there that it says, 2*pi*3 cm * 2.4 rows = 45.2, so 46.
func TestGermanRingHasTheInnerRowsItSays(t *testing.T) {
	width, inner := 67, 3.0
	in := CircleInput{Gauge: &gauge.Gauge{Stitches: 18, Rows: 24}, WidthStitches: &width, InnerRadiusCm: &inner,
		TurnMethod: TurnMethodGerman}
	out, err := PlanCircleOfWedges(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.InnerRows != 46 {
		t.Errorf("%d rows at the inner edge", out.InnerRows)
	}
	checkCircle(t, in, out)
}

// In a dart the doubles of both sides would meet in the middle: the lowest stitch
// there has none, whichever the width.
func TestGermanDartHasALowestStitch(t *testing.T) {
	for width, want := range map[int]bool{4: false, 5: true, 6: true} {
		two := 2
		out, err := PlanWedge(WedgeInput{WidthStitches: width, RiseRows: &two, TallEnd: TallEndSides, TurnMethod: TurnMethodGerman})
		if (err == nil) != want {
			t.Errorf("%d stitches: %v", width, err)
		}
		if err == nil && out.heights[(width-1)/2] != 0 {
			t.Errorf("%d stitches: rows %v", width, out.heights)
		}
	}
}
