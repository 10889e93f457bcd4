package yardage

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

// Each answer names a source for every kind of figure it has, and for no other: by
// state, by fabric, by colours and by method.
func TestYarnSources(t *testing.T) {
	const unwashed, relaxed, relaxedRange = "loop constant ks 19.0 dry relaxed, 21.6 wet relaxed", "loop constant ks 23.1 fully relaxed",
		"range of ks fully relaxed, 21.2 to 25.52"
	plain := Piece{Counted: &CountedPiece{Stitches: 100, Rows: 100}}
	for _, c := range []struct {
		name string
		in   EstimateInput
		want []string
	}{
		{"any state", EstimateInput{}, []string{"loop length", unwashed, relaxed, relaxedRange, "reserve"}},
		{"dry", EstimateInput{State: FabricStateDryRelaxed}, []string{"loop length", unwashed, "reserve"}},
		{"wet", EstimateInput{State: FabricStateWetRelaxed}, []string{"loop length", unwashed, "reserve"}},
		{"relaxed", EstimateInput{State: FabricStateFullyRelaxed}, []string{"loop length", relaxed, relaxedRange, "reserve"}},
		{"a factor of the table", EstimateInput{State: FabricStateDryRelaxed,
			Pieces: []Piece{{Pattern: StitchPatternRib, Counted: plain.Counted}}},
			[]string{"loop length", unwashed, "pattern factors", "reserve"}},
		{"the caller's own factor", EstimateInput{State: FabricStateDryRelaxed,
			Pieces: []Piece{{PatternFactor: new(1.2), Counted: plain.Counted}}},
			[]string{"loop length", unwashed, "reserve"}},
		{"two colours", EstimateInput{State: FabricStateDryRelaxed, Colours: []ColourShare{{"a", 50}, {"b", 50}}},
			[]string{"loop length", unwashed, "floats", "reserve"}},
		{"a swatch", EstimateInput{State: FabricStateDryRelaxed, Swatch: &WeighedSwatch{MassG: 20, WidthCm: 10, HeightCm: 10}},
			[]string{"loop length", unwashed, "by swatch", "reserve"}},
	} {
		c.in.Gauge = &gauge.Gauge{Stitches: 22, Rows: 30}
		if c.in.Pieces == nil {
			c.in.Pieces = []Piece{plain}
		}
		var got []string
		for _, s := range estimateOf(t, c.in).Sources() {
			got = append(got, s.Figure)
			if s.Citation == "" || s.Status == report.SourceStatusUnspecified {
				t.Errorf("%s: source %+v", c.name, s)
			}
		}
		if strings.Join(got, "; ") != strings.Join(c.want, "; ") {
			t.Errorf("%s: sources of %q, want %q", c.name, got, c.want)
		}
	}
}

// Without a put-up an answer has metres alone; a colour without a name has its
// place.
func TestYarnSummary(t *testing.T) {
	in := EstimateInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, State: FabricStateFullyRelaxed,
		Pieces: []Piece{{Counted: &CountedPiece{Stitches: 100, Rows: 100}}}, ReservePercent: new(0.0)}
	// 6.6 stitches to the cm2, loops of sqrt(23.1/6.6) = 1.8708 cm: 187.1 m; 179.2 and 196.6 m at the ends of ks.
	if got, want := estimateOf(t, in).Summary(), "You need 187 m of yarn (179 m to 197 m)."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	// Floats add 10,000 stitches of 1/2.2 cm, 45.45 m, times 1.05, 1.26 and 1.47: 226.9, 244.4 and 263.5 m, of which 131.7 m is
	// half the high figure.
	in.PutUp, in.Colours = &yarn.PutUp{BallM: 100, BallG: 50}, []ColourShare{{"", 50}, {"red", 50}}
	if got, want := estimateOf(t, in).Summary(), "You need 244 m of yarn (227 m to 263 m), 122 g. "+
		"Buy 4 balls, each colour of one dye lot: 2 balls of the 1st colour, 2 balls of red, for the high figure."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// A range that reads as one figure is not said twice: a stitch is 2.06 cm of yarn.
func TestRangeOfOneFigure(t *testing.T) {
	in := EstimateInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, State: FabricStateFullyRelaxed,
		Pieces: []Piece{{Counted: &CountedPiece{Stitches: 1, Rows: 1}}}}
	if got, want := estimateOf(t, in).Summary(), "You need 0.02 m of yarn, reserve included."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}
