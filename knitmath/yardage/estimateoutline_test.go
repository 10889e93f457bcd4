package yardage

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/yarn"
)

// The bars are the ranges of the answer, one below the other, and the whole balls stand
// across them. The frame is that of all of them.
func TestEstimateOutline(t *testing.T) {
	in := EstimateInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, PutUp: &yarn.PutUp{BallM: 115, BallG: 50}, WithOutline: true,
		Pieces: []Piece{{Counted: &CountedPiece{Stitches: 220, Rows: 120}}},
		Swatch: &WeighedSwatch{MassG: 10, WidthCm: 15, HeightCm: 15}}
	out, err := EstimateYarn(in)
	if err != nil {
		t.Fatal(err)
	}
	outlinetest.CheckFrame(t, out.Outline)
	bars := []struct {
		name string
		r    Range
	}{{"by swatch", *out.BySwatch.LengthM}, {"by gauge", *out.ByLoop.LengthM}, {"with the reserve", out.LengthM}}
	for i, b := range bars {
		line := out.Outline.Lines[i]
		if line.Name != b.name || len(line.Points) != 3 {
			t.Fatalf("%+v, want %s", line, b.name)
		}
		for k, want := range []float64{b.r.Low, b.r.Likely, b.r.High} {
			if p := line.Points[k]; p.X != want || p.Y != float64(3-i) {
				t.Errorf("%s: %+v, want %v at %d", b.name, p, want, 3-i)
			}
		}
	}
	balls := out.Outline.Lines[3]
	knittest.Near(t, balls.Name, balls.Points[0].X, 115*float64(*out.BallCount), 1e-12)
	if balls.Points[0].Y != 1 || balls.Points[1].Y != 3 || len(out.Outline.Lines) != 4 {
		t.Errorf("%+v", balls)
	}

	in.Swatch, in.Colours = nil, []ColourShare{{"", 60}, {"red", 40}}
	if out, err = EstimateYarn(in); err != nil {
		t.Fatal(err)
	}
	names := ""
	for _, line := range out.Outline.Lines {
		names += line.Name + "; "
	}
	if want := "by gauge; with the reserve; the 1st colour; red; "; names != want {
		t.Errorf("%q, want %q", names, want)
	}
	in.WithOutline = false
	if out, err = EstimateYarn(in); err != nil || out.Outline != nil {
		t.Errorf("an outline that nobody asked for, or %v", err)
	}
}
