package shortrow

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
)

// Small wedges of every kind, straight and curved, are knit: the top edge has over
// every stitch the rows that the machine finds under it, and the area under the
// profile is that of its straight pieces.
func TestWedgeOutlineIsKnit(t *testing.T) {
	planned := 0
	try := func(in WedgeInput) {
		in.WithOutline = true
		out, err := PlanWedge(in)
		if err != nil {
			return
		}
		planned++
		checkTopEdge(t, in, out)
	}
	for width := 2; width <= 14; width += 3 {
		for rise := 2; rise <= width; rise += 2 {
			for tall := TallEndRight; tall <= TallEndSides; tall++ {
				for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
					try(WedgeInput{WidthStitches: width, RiseRows: &rise, TallEnd: tall, TurnMethod: method})
					try(WedgeInput{WidthStitches: width, ProfileRows: []float64{0, float64(rise), 1, float64(rise) / 2},
						TurnMethod: method})
				}
			}
		}
	}
	if planned < 100 {
		t.Errorf("planned %d wedges: the sweep has shrunk", planned)
	}
}

func checkTopEdge(t *testing.T, in WedgeInput, out Wedge) {
	t.Helper()
	outlinetest.CheckFrame(t, out.Outline)
	top := out.Outline.Lines[0]
	outlinetest.CheckCorners(t, top)
	if top.Points[0].X != 0 || top.Points[len(top.Points)-1].X != float64(in.WidthStitches) {
		t.Fatalf("%s: top edge %v", describe(in), top.Points)
	}
	for x, rows := range knitWedge(t, describe(in), in.WidthStitches, out.Rows) { // from the right edge
		middle := float64(in.WidthStitches-1-x) + 0.5
		if got := stepAt(t, top, middle); got != float64(rows) {
			t.Fatalf("%s: %v rows at %v, knit %d: %v", describe(in), got, middle, rows, top.Points)
		}
	}
	// The profile, integrated point by point, in stitches times rows.
	want := float64(out.FullRows * in.WidthStitches)
	switch {
	case in.ProfileRows != nil:
		for i := 1; i < len(in.ProfileRows); i++ {
			want += (in.ProfileRows[i-1] + in.ProfileRows[i]) / 2 * float64(in.WidthStitches) / float64(len(in.ProfileRows)-1)
		}
	default: // one triangle, or two of half the width
		want += float64(out.RiseRows*in.WidthStitches) / 2
	}
	var x, y []float64
	for _, p := range out.Outline.Lines[1].Points {
		x, y = append(x, p.X), append(y, p.Y)
	}
	knittest.Near(t, "area of "+describe(in), integrate.Trapezoidal(x, y), want, 1e-9)
}

// stepAt is the height of the flat stroke over a place.
func stepAt(t *testing.T, l outline.Line, x float64) float64 {
	t.Helper()
	for i := 1; i < len(l.Points); i++ {
		a, b := l.Points[i-1], l.Points[i]
		if a.X != b.X && a.Y != b.Y {
			t.Fatalf("%s slants at point %d: %v", l.Name, i, l.Points)
		}
		if a.X < x && x < b.X {
			return a.Y
		}
	}
	t.Fatalf("nothing over %v: %v", x, l.Points)
	return 0
}

// A wedge by hand: 4 stitches, tall at the right, a rise of 4 rows, which are two
// pairs. The profile is 3.5, 2.5, 1.5, 0.5 rows from the right, so 2, 1, 1, 0
// pairs; one row more picks the wraps up. At 2 stitches and 4 rows to the cm, from
// the left: 1 row for 0.5 cm, 3 rows for 1 cm, 5 rows for 0.5 cm.
func TestWedgeOutlineByHand(t *testing.T) {
	rise := 4
	out, err := PlanWedge(WedgeInput{WidthStitches: 4, RiseRows: &rise, TallEnd: TallEndRight, Spread: TurnSpreadInterleaved,
		Gauge: &gauge.Gauge{Stitches: 20, Rows: 40}, WithOutline: true})
	if err != nil {
		t.Fatal(err)
	}
	low := float64(out.FullRows) / 4
	want := []outline.Point{{X: 0, Y: low}, {X: 0.5, Y: low}, {X: 0.5, Y: low + 0.5}, {X: 1.5, Y: low + 0.5}, {X: 1.5, Y: low + 1},
		{X: 2, Y: low + 1}}
	got := out.Outline.Lines[0].Points
	if len(got) != len(want) {
		t.Fatalf("top edge %v, want %v", got, want)
	}
	for i := range want {
		knittest.Near(t, "x", got[i].X, want[i].X, 1e-12)
		knittest.Near(t, "y", got[i].Y, want[i].Y, 1e-12)
	}
	if l := out.Outline.Lines[1].Points; len(l) != 2 || l[0] != (outline.Point{X: 0, Y: low}) || math.Abs(l[1].Y-low-1) > 1e-12 ||
		l[1].X != 2 {
		t.Errorf("wanted %v", l)
	}
}

func BenchmarkWedgeOutline(b *testing.B) {
	rise := 24
	in := WedgeInput{WidthStitches: 100, RiseRows: &rise, TallEnd: TallEndRight, WithOutline: true}
	for b.Loop() {
		if _, err := PlanWedge(in); err != nil {
			b.Fatal(err)
		}
	}
}
