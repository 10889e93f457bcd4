package yardage

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

func TestYarnNotices(t *testing.T) {
	rows := 18 * 5.5 / 4.2
	base := EstimateInput{Gauge: &gauge.Gauge{Stitches: 18, Rows: rows}, State: FabricStateFullyRelaxed,
		Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(50.0), new(50.0), 50}}}, PutUp: &yarn.PutUp{BallM: 200, BallG: 100}}
	with := func(change func(*EstimateInput)) EstimateInput {
		in := base
		change(&in)
		return in
	}
	// 495 g/m2: 4.95 g to 100 cm2.
	sample := func(mass, step float64) *WeighedSwatch { return &WeighedSwatch{mass, 10, 10, &step, 0} }
	for _, c := range []struct {
		name string
		in   EstimateInput
		want []string
	}{
		{"quiet", base, nil},
		{"agreeing swatch", with(func(in *EstimateInput) { in.Swatch = sample(4.95, 0.01) }), nil},
		{"disagreeing swatch", with(func(in *EstimateInput) { in.Swatch = sample(8, 0.1) }), []string{"swatch METHODS_DISAGREE"}},
		{"coarse scale", with(func(in *EstimateInput) { in.Swatch = sample(5, 1) }), []string{"swatch.scale_step_g COARSE_SCALE"}},
		{"no put-up", with(func(in *EstimateInput) { in.Swatch, in.PutUp = sample(4.95, 0.01), nil }), []string{"put_up NOT_COMPARED"}},
		{"state", with(func(in *EstimateInput) { in.State = FabricStateUnspecified }), []string{"state STATE_UNKNOWN"}},
		{"rows and stitches swapped", with(func(in *EstimateInput) { in.Gauge = &gauge.Gauge{Stitches: rows, Rows: 18} }),
			[]string{"gauge UNUSUAL_RATIO"}},
		{"garter may be square", with(func(in *EstimateInput) {
			in.Gauge = &gauge.Gauge{Stitches: 18, Rows: 36}
			in.Pieces = []Piece{{Pattern: StitchPatternGarter, Trapezoid: &TrapezoidPiece{new(50.0), new(50.0), 50}}}
		}), nil},
		{"garter at the gauge of stockinette", with(func(in *EstimateInput) {
			in.Pieces = []Piece{{Pattern: StitchPatternGarter, Counted: &CountedPiece{50, 50}}}
		}), []string{"gauge UNUSUAL_RATIO"}},
		{"a garter border at the gauge of stockinette", with(func(in *EstimateInput) {
			in.Pieces = append(in.Pieces[:1:1], Piece{Pattern: StitchPatternGarter, Counted: &CountedPiece{50, 50}})
		}), []string{"pieces[1].pattern OTHER_GAUGE"}},
		{"at its own gauge", with(func(in *EstimateInput) {
			in.Pieces = append(in.Pieces[:1:1], Piece{Pattern: StitchPatternGarter, Gauge: &gauge.Gauge{Stitches: 17, Rows: 34},
				Counted: &CountedPiece{50, 50}})
		}), nil},
		{"at its own gauge, which is another's", with(func(in *EstimateInput) {
			in.Pieces = append(in.Pieces[:1:1], Piece{Gauge: &gauge.Gauge{Stitches: 17, Rows: 34}, Counted: &CountedPiece{50, 50}})
		}), []string{"pieces[1].gauge OTHER_GAUGE"}},
		{"a factor of her own", with(func(in *EstimateInput) {
			in.Gauge = &gauge.Gauge{Stitches: 18, Rows: 36}
			in.Pieces = []Piece{{PatternFactor: new(1.2), Counted: &CountedPiece{50, 50}}}
		}), nil},
		// Loops of sqrt(23.1/4.24) = 2.33 cm, of 1600 tex: 17.1; and of 250 tex: 6.8.
		{"a rope", with(func(in *EstimateInput) { in.PutUp = &yarn.PutUp{BallM: 62.5, BallG: 100} }), []string{"put_up UNUSUAL_TIGHTNESS"}},
		{"a thread", with(func(in *EstimateInput) { in.PutUp = &yarn.PutUp{BallM: 400, BallG: 100} }), []string{"put_up UNUSUAL_TIGHTNESS"}},
		{"several fabrics", with(func(in *EstimateInput) {
			in.Swatch, in.Pieces = sample(4.95, 0.01), handbookPieces("hat")
		}), []string{"swatch SWATCH_FABRIC"}},
	} {
		out := estimateOf(t, c.in)
		var got []string
		for _, n := range out.Notices {
			got = append(got, n.Field+" "+string(n.Reason))
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

// The finer gauge takes more yarn to an area and less to a stitch; pieces add up;
// metres in yards and grams in ounces are the same yarn.
func TestYarnMetamorphic(t *testing.T) {
	last := 0.0
	for stitches := 10.0; stitches <= 34; stitches++ {
		in := EstimateInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: stitches * 1.3},
			Pieces: handbookPieces("hat"), PutUp: &yarn.PutUp{BallM: 100, BallG: 50}}
		out := estimateOf(t, in)
		if out.LengthM.Likely <= last {
			t.Errorf("%v stitches take %v m, one fewer %v", stitches, out.LengthM.Likely, last)
		}
		last = out.LengthM.Likely
		sum := 0.0
		for _, p := range in.Pieces {
			in.Pieces = []Piece{p}
			sum += estimateOf(t, in).LengthM.Likely
		}
		knittest.Near(t, "pieces one by one", sum, out.LengthM.Likely, 1e-12)
		// Everything twice as large in cm, and the gauge over twice the length: four
		// times the stitches' area, twice their length: twice the loop, as many stitches.
		over := 20.0
		double := estimateOf(t, EstimateInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: stitches * 1.3, OverCm: &over},
			Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(20.0), new(40.0), 60}}}})
		single := estimateOf(t, EstimateInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: stitches * 1.3, OverCm: nil},
			Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(10.0), new(20.0), 30}}}})
		knittest.Near(t, "stitches", double.Stitches, single.Stitches, 1e-12)
		knittest.Near(t, "metres", double.LengthM.Likely, 2*single.LengthM.Likely, 1e-12)
	}
	u := measure.DisplayUnitIn
	if got := yarn.LengthWords(u, 914.4) + ", " + yarn.MassWords(u, 28.349523125); got != "1000 yd, 1 oz" {
		t.Error(got)
	}
}
