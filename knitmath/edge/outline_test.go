package edge

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
)

// Along every short edge, with rows skipped and with rows that take two, the
// places are those where the row, written out, picks stitches up: the middle of a
// row, or a third and two thirds of it. At the end of every row they are as far
// from an even spread as the answer says, and no further.
func TestPickUpOutlineIsWorked(t *testing.T) {
	planned := 0
	for rows := 1; rows <= 60; rows++ {
		for _, band := range []float64{6, 14, 22, 29, 30, 31, 38, 47, 60} {
			for order := PickUpSpreadInterleaved; order <= PickUpSpreadLeastEffort; order++ {
				out, err := PlanPickUp(PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
					BandGauge: &gauge.Gauge{Stitches: band, Rows: 40}, Spread: order, WithOutline: true})
				if err != nil {
					continue // no stitch at all, or more than two a row
				}
				planned++
				checkPlaces(t, rows, out)
			}
		}
	}
	if planned < 1200 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}

// checkPlaces compares places with what the machine picks up, at 3 rows to the cm.
func checkPlaces(t *testing.T, rows int, out PickUp) {
	t.Helper()
	outlinetest.CheckFrame(t, out.Outline)
	border, places := out.Outline.Lines[0].Points, out.Outline.Lines[1].Points
	if len(border) != 2 || border[0] != (outline.Point{}) || math.Abs(border[1].X-float64(rows)/3) > 1e-9 ||
		len(places) != out.Stitches.Count {
		t.Fatalf("%d rows: edge %v, %d places for %d stitches", rows, border, len(places), out.Stitches.Count)
	}
	next, worst := 0, 0.0
	for row, took := range pickUpWorked(t, out.Instruction.Row, rows, out.Stitches.Count) {
		for i := range took {
			want := (float64(row) + float64(i+1)/float64(took+1)) / 3
			if p := places[next]; math.Abs(p.X-want) > 1e-9 || p.Y != 1 {
				t.Fatalf("%d rows: place %d at %v, worked at %v", rows, next, p, want)
			}
			next++
		}
		so := 0
		for _, p := range places {
			if p.X < float64(row+1)/3 {
				so++
			}
		}
		worst = max(worst, math.Abs(float64(so)-float64(len(places)*(row+1))/float64(rows)))
	}
	knittest.Near(t, "departure of the places", worst, out.GreatestDepartureStitches, 1e-9)
}

// Worked by hand: 5 rows at 10 to 10 cm with 3 stitches to pick up skip two rows,
// 1 and 3 counted from 0, and pick up in the middle of the others: 0.5, 2.5 and
// 4.5 cm. 3 rows with 4 stitches take two in the middle row: 0.5, 4/3, 5/3, 2.5.
func TestPickUpOutlineByHand(t *testing.T) {
	for _, c := range []struct {
		rows int
		band float64
		want []float64
	}{
		{5, 6, []float64{0.5, 2.5, 4.5}},
		{3, 13, []float64{0.5, 4.0 / 3, 5.0 / 3, 2.5}},
	} {
		out, err := PlanPickUp(PickUpInput{LengthRows: &c.rows, Gauge: &gauge.Gauge{Stitches: 10, Rows: 10},
			BandGauge: &gauge.Gauge{Stitches: c.band, Rows: 10}, WithOutline: true})
		if err != nil {
			t.Fatal(err)
		}
		got := out.Outline.Lines[1].Points
		if len(got) != len(c.want) {
			t.Fatalf("%d rows: %v, want %v", c.rows, got, c.want)
		}
		for i := range got {
			knittest.Near(t, "place", got[i].X, c.want[i], 1e-12)
		}
	}
}

// Small bands of both kinds are knit: in the row after a stroke's the stitches
// under it, and no others, are newly cast on. At a gauge the same drawing is in
// cm.
func TestButtonholesOutlineIsKnit(t *testing.T) {
	planned := 0
	for _, in := range smallBands() {
		if in.BeforeFirstPlaces == nil || in.AfterLastPlaces != nil || in.HoleCount > 4 {
			continue
		}
		in.WithOutline = true
		out, err := PlanButtonholes(in)
		if err != nil {
			continue
		}
		planned++
		checkStrokes(t, in, out)
		in.Gauge = &gauge.Gauge{Stitches: 22, Rows: 30}
		sized, err := PlanButtonholes(in)
		if err != nil {
			t.Fatal(err)
		}
		outlinetest.CheckFrame(t, sized.Outline)
		for i, l := range sized.Outline.Lines {
			for j, p := range l.Points {
				want := out.Outline.Lines[i].Points[j]
				if math.Abs(p.X*2.2-want.X) > 1e-9 || math.Abs(p.Y*3-want.Y) > 1e-9 {
					t.Fatalf("%s: %v in cm, %v in stitches and rows", describeBand(in), p, want)
				}
			}
		}
	}
	if planned < 300 {
		t.Errorf("planned %d: the sweep has shrunk", planned)
	}
}

// checkStrokes works the band and looks under the strokes.
func checkStrokes(t *testing.T, in ButtonholesInput, out Buttonholes) {
	t.Helper()
	outlinetest.CheckFrame(t, out.Outline)
	lines := out.Outline.Lines
	if len(lines) != 1+in.HoleCount || out.Outline.X.Unit != outline.UnitStitches || out.Outline.Y.Unit != outline.UnitRows {
		t.Fatalf("%s: %+v", describeBand(in), out.Outline)
	}
	outlinetest.CheckCorners(t, lines[0])
	if out.Outline.X.Greatest != float64(in.BandStitches) || out.Outline.Y.Greatest != float64(in.BandRows) {
		t.Fatalf("%s: frame %+v %+v", describeBand(in), out.Outline.X, out.Outline.Y)
	}
	m := onNeedle(t, in)
	next, seen := 0, 0
	for row := 1; row <= in.BandRows; row++ {
		work := knittest.PlainRow(m)
		if next < len(out.Rows) && out.Rows[next].RowNumber == row {
			work = out.Rows[next].Instruction.Row
			next++
		}
		if err := m.Work(work); err != nil {
			t.Fatal(err)
		}
		open := underStrokes(lines[1:], row-1, in.BandStitches)
		seen += len(open)
		if len(open) == 0 {
			continue // nothing is cast on, unless a hole goes unseen: counted below
		}
		for i, h := range m.Heights() { // from where right-side rows begin
			if (h == 0) != open[i] {
				t.Fatalf("%s: after row %d heights %v, strokes over %v", describeBand(in), row, m.Heights(), open)
			}
		}
	}
	if seen != in.HoleCount*out.HoleStitches {
		t.Fatalf("%s: the strokes lie over %d stitches", describeBand(in), seen)
	}
}

// underStrokes are the stitches, counted from 0, under the strokes at a row.
func underStrokes(strokes []outline.Line, row, stitches int) map[int]bool {
	open := map[int]bool{}
	for _, l := range strokes {
		a, b := l.Points[0], l.Points[1]
		if a.Y != float64(row) || b.Y != a.Y {
			continue
		}
		for i := range stitches {
			if middle := float64(i) + 0.5; a.X < middle && middle < b.X {
				open[i] = true
			}
		}
	}
	return open
}

// Holes lie in the band where their stitches are: 8 to 10 of 60 at row 4, at 22
// stitches and 30 rows to 10 cm, from 7/2.2 to 10/2.2 cm, 4/3 cm up.
func TestButtonholesOutlineByHand(t *testing.T) {
	three, seven, four := 3, 7, 4
	in := ButtonholesInput{BandStitches: 60, BandRows: 9, HoleCount: 4, HoleStitches: &three, BeforeFirstPlaces: &seven,
		HoleRowNumber: &four, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WithOutline: true}
	out, err := PlanButtonholes(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Outline.Lines) != 5 || out.Outline.X.Unit != outline.UnitCm || out.Outline.Y.Unit != outline.UnitCm {
		t.Fatalf("%+v", out.Outline)
	}
	hole := out.Outline.Lines[1].Points
	knittest.Near(t, "first hole from", hole[0].X, 7/2.2, 1e-9)
	knittest.Near(t, "first hole to", hole[1].X, 10/2.2, 1e-9)
	knittest.Near(t, "first hole up", hole[0].Y, 4.0/3, 1e-9)
	knittest.Near(t, "frame", out.Outline.X.Greatest, 60/2.2, 1e-9)
	in.WithOutline = false
	if out, err = PlanButtonholes(in); err != nil || out.Outline != nil {
		t.Errorf("an outline not asked for: %+v, %v", out.Outline, err)
	}
}

func BenchmarkPickUpOutline(b *testing.B) {
	rows := 174
	in := PickUpInput{LengthRows: &rows, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WithOutline: true}
	for b.Loop() {
		if _, err := PlanPickUp(in); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkButtonholesOutline(b *testing.B) {
	three, four := 3, 4
	in := ButtonholesInput{BandStitches: 128, BandRows: 9, HoleCount: 9, HoleStitches: &three, BeforeFirstPlaces: &four,
		Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WithOutline: true}
	for b.Loop() {
		if _, err := PlanButtonholes(in); err != nil {
			b.Fatal(err)
		}
	}
}
