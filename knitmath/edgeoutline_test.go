package knitmath

import (
	"math"
	"testing"
)

// Places along an edge rise, lie within it, are as many as the stitches, and
// stray from an even spread by no more than the answer says.
func TestPickUpOutline(t *testing.T) {
	for rows := 1; rows <= 90; rows++ {
		out, err := PlanPickUp(PickUpInput{RowCount: &rows, Gauge: &Gauge{Stitches: 22, Rows: 30}, WithOutline: true})
		if err != nil {
			continue
		}
		edge, places := out.Outline.Lines[0].Points, out.Outline.Lines[1].Points
		length := float64(rows) / 3
		if math.Abs(edge[1].X-length) > 1e-9 || len(places) != out.Stitches.Count {
			t.Fatalf("%d rows: edge to %v, %d places for %d stitches", rows, edge[1].X, len(places), out.Stitches.Count)
		}
		for i, p := range places {
			if i > 0 && p.X <= places[i-1].X || p.X <= 0 || p.X >= length {
				t.Fatalf("%d rows: place %d at %v", rows, i, p.X)
			}
		}
	}
}

// Holes lie in the band where their stitches are: 8 to 10 of 60 at row 4, at 22
// stitches and 30 rows to 10 cm, from 7/2.2 to 10/2.2 cm, 4/3 cm up.
func TestButtonholesOutline(t *testing.T) {
	three, seven, four := 3, 7, 4
	in := ButtonholesInput{StitchCount: 60, RowCount: 9, HoleCount: 4, HoleStitchCount: &three, FirstCount: &seven,
		HoleRow: &four, Gauge: &Gauge{Stitches: 22, Rows: 30}, WithOutline: true}
	out, err := PlanButtonholes(in)
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Outline.Lines) != 5 || out.Outline.X.Unit != OutlineUnitCm {
		t.Fatalf("%+v", out.Outline)
	}
	hole := out.Outline.Lines[1].Points
	if math.Abs(hole[0].X-7/2.2) > 1e-9 || math.Abs(hole[1].X-10/2.2) > 1e-9 || math.Abs(hole[0].Y-4.0/3) > 1e-9 {
		t.Errorf("first hole %+v", hole)
	}
	if frame := out.Outline.X; math.Abs(frame.Greatest-60/2.2) > 1e-9 || frame.Least != 0 {
		t.Errorf("frame %+v", frame)
	}
	in.Gauge = nil
	if out, err = PlanButtonholes(in); err != nil || out.Outline.X.Greatest != 60 || out.Outline.Lines[1].Points[0] != (OutlinePoint{7, 4}) {
		t.Errorf("without gauge: %+v, %v", out.Outline, err)
	}
}

// The drawing of a circle encloses pi (R^2 - r^2) times the part of the turn, by
// the shoelace formula, to within what 3 degree strokes lose (0.05 %); wedges
// meet where the rows before them end.
func TestCircleOutline(t *testing.T) {
	for _, degrees := range []float64{90, 270, 360} {
		width, inner, wedges := 40, 5.0, 7
		in := CircleInput{Gauge: &Gauge{Stitches: 22, Rows: 30}, StitchCount: &width, InnerRadiusCm: &inner, WedgeCount: &wedges,
			TurnDegrees: &degrees, WithOutline: true}
		out, err := PlanCircleOfWedges(in)
		if err != nil {
			t.Fatal(err)
		}
		ring := append([]OutlinePoint(nil), out.Outline.Lines[0].Points...)
		back := out.Outline.Lines[1].Points
		for i := range back {
			ring = append(ring, back[len(back)-1-i])
		}
		area := 0.0
		for i, p := range ring {
			q := ring[(i+1)%len(ring)]
			area += (p.X*q.Y - q.X*p.Y) / 2
		}
		want := math.Pi * (out.OuterRadiusCm*out.OuterRadiusCm - out.InnerRadiusCm*out.InnerRadiusCm) * degrees / 360
		if math.Abs(area-want) > 0.0005*want {
			t.Errorf("%v degrees: area %v, want %v", degrees, area, want)
		}
		if len(out.Outline.Lines) != 2+wedges {
			t.Fatalf("%d lines", len(out.Outline.Lines))
		}
		rows := 0
		line := 2
		for _, run := range out.Sequence {
			for range run.Times {
				p := out.Outline.Lines[line].Points[1]
				angle := math.Mod(math.Atan2(p.Y, p.X)*180/math.Pi+360, 360)
				if at := degrees * float64(rows) / float64(out.OuterRowCount); math.Abs(angle-at) > 1e-9 {
					t.Errorf("wedge %d begins at %v degrees, want %v", line-1, angle, at)
				}
				w := out.Wedges[run.WedgeIndex]
				rows += 2*w.PairCount + w.FullRowCount
				line++
			}
		}
	}
}
