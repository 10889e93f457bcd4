package yardage

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/yarn"
)

// gateGauge has loops of exactly 0.5 cm when fully relaxed: 84 wales and 110
// courses to 10 cm are 92.4 to the cm2, and sqrt(23.1/92.4) is 0.5.
func gateGauge() *gauge.Gauge { return &gauge.Gauge{Stitches: 84, Rows: 110} }

func estimateOf(t *testing.T, in EstimateInput) Estimate {
	t.Helper()
	out, err := EstimateYarn(in)
	if err != nil {
		t.Fatal(err)
	}
	knittest.CheckFinite(t, out)
	return out
}

// The three shapes of one rectangle agree: 84 stitches and 110 rows are 10 cm by
// 10 cm and 9240 stitches of 0.5 cm, 46.2 m. Copies multiply.
func TestShapesAgree(t *testing.T) {
	rows := make([]int, 110)
	for i := range rows {
		rows[i] = 84
	}
	three := 3
	for _, p := range []Piece{
		{Counted: &CountedPiece{84, 110}},
		{Trapezoid: &TrapezoidPiece{new(10.0), new(10.0), 10}},
		{Trapezoid: &TrapezoidPiece{new(0.0), new(20.0), 10}},
		{Trapezoid: &TrapezoidPiece{StartWidthCm: new(10.0), HeightCm: 10}}, // one width alone is no triangle
		{Trapezoid: &TrapezoidPiece{EndWidthCm: new(10.0), HeightCm: 10}},
		{Rowwise: &RowwisePiece{rows}},
	} {
		out := estimateOf(t, EstimateInput{Gauge: gateGauge(), State: FabricStateFullyRelaxed, Pieces: []Piece{p}})
		knittest.Near(t, "stitches", out.Stitches, 9240, 1e-12)
		knittest.Near(t, "area", out.AreaCm2, 100, 1e-12)
		knittest.Near(t, "metres", out.ByLoop.LengthM.Likely, 46.2, 1e-12)
		p.Times, p.Name = &three, "three"
		out = estimateOf(t, EstimateInput{Gauge: gateGauge(), State: FabricStateFullyRelaxed, Pieces: []Piece{p}})
		knittest.Near(t, "three", out.ByLoop.LengthM.Likely, 3*46.2, 1e-12)
		if got := out.Pieces[0]; got.Name != "three" {
			t.Errorf("piece %+v", got)
		}
		knittest.Near(t, "area of three", out.Pieces[0].AreaCm2, 300, 1e-12)
	}
}

// Pattern factors: rib takes 1.00 to 1.20, likely 1.10, on top of the range of ks
// (21.2 to 25.52 about 23.1); the caller's own factor has no range.
func TestPatternFactors(t *testing.T) {
	ask := func(p Piece) Range {
		p.Counted = &CountedPiece{84, 110}
		return *estimateOf(t, EstimateInput{Gauge: gateGauge(), State: FabricStateFullyRelaxed, Pieces: []Piece{p}}).ByLoop.LengthM
	}
	plain := ask(Piece{})
	if got := ask(Piece{Pattern: StitchPatternStockinette}); got != plain {
		t.Errorf("plain %+v and %+v", got, plain)
	}
	// sqrt(21.2/23.1) = 0.957991, sqrt(25.52/23.1) = 1.051077.
	knittest.Near(t, "low", plain.Low, 46.2*0.9579912, 1e-6)
	knittest.Near(t, "high", plain.High, 46.2*1.0510766, 1e-6)
	for motif, f := range map[StitchPattern]Range{
		StitchPatternGarter: {1.06, 1.17, 1.24}, StitchPatternRib: {1, 1.1, 1.2}, StitchPatternCables: {1.1, 1.2, 1.3},
	} {
		got := ask(Piece{Pattern: motif})
		knittest.Near(t, "low", got.Low, plain.Low*f.Low, 1e-12)
		knittest.Near(t, "likely", got.Likely, plain.Likely*f.Likely, 1e-12)
		knittest.Near(t, "high", got.High, plain.High*f.High, 1e-12)
	}
	own := ask(Piece{PatternFactor: knittest.Ptr(1.35)})
	knittest.Near(t, "own factor", own.High/own.Likely, plain.High/plain.Likely, 1e-12)
	knittest.Near(t, "own factor", own.Likely, 1.35*46.2, 1e-12)
}

// By swatch, by hand: 10 by 10 cm weigh 5 g to half a gram; 9342 cm2 are 467.1 g,
// 420.39 to 513.81; with 10 % 513.81 (462.429 to 565.191). Balls of 50 g: 11 for
// the likely figure, 12 for the high one.
func TestBySwatch(t *testing.T) {
	in := EstimateInput{
		Gauge: &gauge.Gauge{Stitches: 18, Rows: 18 * 5.5 / 4.2}, Pieces: handbookPieces("adult_sweater"), State: FabricStateFullyRelaxed,
		Swatch: &WeighedSwatch{MassG: 5, WidthCm: 10, HeightCm: 10},
	}
	out := estimateOf(t, in)
	knittest.Near(t, "likely", out.BySwatch.MassG.Likely, 467.1, 1e-14)
	knittest.Near(t, "low", out.BySwatch.MassG.Low, 420.39, 1e-14)
	knittest.Near(t, "high", out.BySwatch.MassG.High, 513.81, 1e-14)
	knittest.Near(t, "reserve", out.MassG.High, 565.191, 1e-14)
	// Without a put-up metres come by loop and grams by swatch.
	if out.BySwatch.LengthM != nil || out.ByLoop.MassG != nil || out.BallCount != nil {
		t.Errorf("without a put-up: %+v", out)
	}
	knittest.Near(t, "metres by loop", out.LengthM.Likely, 1017.3438, 1e-7)

	in.PutUp = &yarn.PutUp{BallM: 100, BallG: 50}
	out = estimateOf(t, in)
	knittest.Near(t, "metres by swatch", out.LengthM.Likely, 2*513.81, 1e-14)
	if *out.BallCount != 12 {
		t.Errorf("%d balls in one purchase, want 12", *out.BallCount)
	}
	in.DyeLot = DyeLotMoreLater
	if out = estimateOf(t, in); *out.BallCount != 11 {
		t.Errorf("%d balls with more to be had, want 11", *out.BallCount)
	}
}

// An amount of exactly so many balls takes so many, by either method. By swatch:
// 10 g to 100 cm2 are 10 g to every cm of a piece one metre wide. By loop: 2000
// stitches of 0.5 cm are 10 m.
func TestWholeBalls(t *testing.T) {
	for _, reserve := range []int{0, 5, 7, 10, 13, 20, 33} {
		r := float64(reserve)
		for n := 1; n <= 400; n++ {
			// 10n*(100+reserve)/100 in balls of 50.
			want := (10*n*(100+reserve) + 4999) / 5000
			bySwatch := estimateOf(t, EstimateInput{
				Gauge: gateGauge(), Pieces: []Piece{{Trapezoid: &TrapezoidPiece{new(100.0), new(100.0), float64(n)}}}, ReservePercent: &r,
				Swatch: &WeighedSwatch{MassG: 10, WidthCm: 10, HeightCm: 10}, PutUp: &yarn.PutUp{BallM: 130, BallG: 50}, DyeLot: DyeLotMoreLater,
			})
			byLoop := estimateOf(t, EstimateInput{
				Gauge: gateGauge(), Pieces: []Piece{{Counted: &CountedPiece{2000, n}}}, ReservePercent: &r, State: FabricStateFullyRelaxed,
				PutUp: &yarn.PutUp{BallM: 50, BallG: 130}, DyeLot: DyeLotMoreLater,
			})
			if *bySwatch.BallCount != want || *byLoop.BallCount != want {
				t.Fatalf("%d and %d %%: %d balls by swatch, %d by loop, want %d", n, reserve, *bySwatch.BallCount, *byLoop.BallCount, want)
			}
		}
	}
}

// Stranded, by hand: 20000 stitches of 0.5 cm, in 60 and 40 %. The stitches take 100 m, a
// float behind all of them 0.30 of that, 30 m (0.25 to 0.35). Main 0.6*100 + 0.4*30 = 72,
// contrast 0.4*100 + 0.6*30 = 58; together 130: 95.8 + 25 to 105.1 + 35. Drawn straight
// floats take 20000/8.4/100 = 23.8095 m, and 1 + 1/4.2 times the plain fabric in all.
func TestStrandedColours(t *testing.T) {
	zero := 0.0
	in := EstimateInput{
		Gauge: gateGauge(), State: FabricStateFullyRelaxed, Pieces: []Piece{{Counted: &CountedPiece{200, 100}}}, ReservePercent: &zero,
		Colours: []ColourShare{{"main", 60}, {"contrast", 40}}, PutUp: &yarn.PutUp{BallM: 25, BallG: 10}, DyeLot: DyeLotMoreLater,
	}
	out := estimateOf(t, in)
	knittest.Near(t, "together", out.LengthM.Likely, 130, 1e-12)
	knittest.Near(t, "main", out.Colours[0].LengthM.Likely, 60+0.4*30, 1e-12)
	knittest.Near(t, "contrast", out.Colours[1].LengthM.Likely, 40+0.6*30, 1e-12)
	knittest.Near(t, "grams of main", out.Colours[0].MassG.Likely, (60+0.4*30)*10/25, 1e-12)
	knittest.Near(t, "piece", out.Pieces[0].LengthM, 130, 1e-12)
	// 72 and 58 m in balls of 25: 3 and 3.
	if *out.Colours[0].BallCount != 3 || *out.Colours[1].BallCount != 3 || *out.BallCount != 6 {
		t.Errorf("balls %d and %d, in all %d", *out.Colours[0].BallCount, *out.Colours[1].BallCount, *out.BallCount)
	}
	if got, want := out.Summary(), "You need 130 m of yarn (121 m to 140 m), 52 g. "+
		"Buy 6 balls: 3 balls of main, 3 balls of contrast, for the likely figure."; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	in.FloatSlackPercent = &zero
	straight := estimateOf(t, in)
	knittest.Near(t, "drawn straight", straight.LengthM.Likely, 100*(1+1/4.2), 1e-12)
	knittest.Near(t, "and at the most", straight.LengthM.High, 100*(math.Sqrt(25.52/23.1)+1/4.2), 1e-12)
	in.FloatSlackPercent = nil
	// By swatch the mass holds the floats already, and is divided in the same parts.
	in.Swatch = &WeighedSwatch{MassG: 10, WidthCm: 10, HeightCm: 10}
	sample := estimateOf(t, in)
	for i := range 2 {
		knittest.Near(t, "part", sample.Colours[i].MassG.Likely/sample.MassG.Likely,
			out.Colours[i].LengthM.Likely/out.LengthM.Likely, 1e-12)
		knittest.Near(t, "part of the high figure", sample.Colours[i].MassG.High/sample.MassG.High,
			sample.Colours[i].MassG.Low/sample.MassG.Low, 1e-12)
	}
	// Thirds, as written.
	in.Colours = []ColourShare{{"a", 33.33}, {"b", 33.33}, {"c", 33.33}}
	thirds := estimateOf(t, in)
	knittest.Near(t, "a third", 3*thirds.Colours[0].MassG.Likely, thirds.MassG.Likely, 1e-12)
}
