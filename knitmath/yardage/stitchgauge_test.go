package yardage

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Rows that are derived are those of the state fully relaxed; a gauge with such rows has
// the same likely answer, and the range goes from 1.2 to 1.4 rows to a stitch.
func TestRowsDerived(t *testing.T) {
	for _, p := range []Piece{{Counted: &CountedPiece{200, 100}}, {Trapezoid: &TrapezoidPiece{new(50.0), new(50.0), 50}}} {
		in := hundredMetres()
		in.Pieces, in.Gauge, in.StitchGauge = []Piece{p}, nil, &StitchGauge{Stitches: 84}
		out := estimateOf(t, in)
		knittest.Near(t, "ratio", out.RowsToStitch, 5.5/4.2, 1e-12)
		var at [3]Range
		for i, ratio := range []float64{1.2, 5.5 / 4.2, 1.4} {
			in.Gauge, in.StitchGauge = &gauge.Gauge{Stitches: 84, Rows: 84 * ratio}, nil
			at[i] = estimateOf(t, in).LengthM
		}
		knittest.Near(t, "likely", out.LengthM.Likely, at[1].Likely, 1e-9)
		knittest.Near(t, "low", out.LengthM.Low, min(at[0].Low, at[2].Low), 1e-9)
		knittest.Near(t, "high", out.LengthM.High, max(at[0].High, at[2].High), 1e-9)
		if len(out.Notices) != 1 || out.Notices[0].Reason != RowsDerived {
			t.Errorf("%+v", out.Notices)
		}
	}
}

// The notice says what the derived rows are used for, and which fabrics keep to others.
func TestRowsDerivedSaysOfWhat(t *testing.T) {
	of := func(patterns ...StitchPattern) (pieces []Piece) {
		for _, p := range patterns {
			pieces = append(pieces, Piece{Pattern: p, Counted: &CountedPiece{10, 10}})
		}
		return pieces
	}
	own := of(StitchPatternGarter)
	own[0].Gauge = &gauge.Gauge{Stitches: 20, Rows: 40}
	const taken = "has no rows; they are taken to be "
	const plain, garter = "1.31 to a stitch of width as in stockinette, from 1.2 to 1.4 in the range",
		"2 to a stitch of width as in garter stitch, from 1.82 to 2 in the range"
	const count, other = "; count them if you can", " to other rows, so give such a piece its own gauge"
	for _, c := range []struct {
		pieces []Piece
		want   string
		ranged bool
	}{
		{of(StitchPatternUnspecified, StitchPatternStockinette), taken + plain + count, true},
		{of(StitchPatternGarter), taken + garter + count, true},
		{of(StitchPatternBrioche), taken + plain + count + ": brioche keeps" + other, true},
		{of(StitchPatternGarter, StitchPatternBrioche), taken + plain + " and " + garter + count + ": brioche keeps" + other, true},
		{of(StitchPatternSeed, StitchPatternUnspecified, StitchPatternGarter, StitchPatternRib, StitchPatternRib),
			taken + plain + " and " + garter + count + ": rib and seed stitch keep" + other, true},
		{own, taken + "1.31 to a stitch of width, as in stockinette, in rows_to_stitch and loop_length_cm alone, " +
			"since every piece has a gauge of its own", false},
	} {
		out := estimateOf(t, EstimateInput{StitchGauge: &StitchGauge{Stitches: 20}, State: FabricStateFullyRelaxed, Pieces: c.pieces})
		if got := out.Notices[0]; got.Reason != RowsDerived || got.Description != c.want {
			t.Errorf("%+v", got)
		}
		if got := strings.Contains(out.ByLoop.RangeCovers, "rows to a stitch of width"); got != c.ranged {
			t.Errorf("%q", out.ByLoop.RangeCovers)
		}
	}
}

// Each piece has the rows of its own fabric: a garter one beside one of stockinette takes what
// it takes alone.
func TestRowsDerivedByPiece(t *testing.T) {
	of := func(patterns ...StitchPattern) Estimate {
		in := EstimateInput{StitchGauge: &StitchGauge{Stitches: 20}, State: FabricStateFullyRelaxed}
		for _, p := range patterns {
			in.Pieces = append(in.Pieces, Piece{Pattern: p, Trapezoid: &TrapezoidPiece{new(50.0), new(40.0), 40}})
		}
		return estimateOf(t, in)
	}
	garter, plain := of(StitchPatternGarter).LengthM, of(StitchPatternStockinette).LengthM
	both := of(StitchPatternStockinette, StitchPatternGarter).LengthM
	knittest.Near(t, "low", both.Low, garter.Low+plain.Low, 1e-9)
	knittest.Near(t, "likely", both.Likely, garter.Likely+plain.Likely, 1e-9)
	knittest.Near(t, "high", both.High, garter.High+plain.High, 1e-9)
}

// By swatch a piece that is counted is as large as its gauge makes it, which may be off: 20,000
// stitches at 20/26 are 3,846 cm2, and at a fifth more or less 2,671 or 6,010; one in cm stays.
func TestGaugeOffBySwatch(t *testing.T) {
	in := EstimateInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 26}, GaugeOffPercent: 20, Pieces: []Piece{{Counted: &CountedPiece{200, 100}}},
		Swatch: &WeighedSwatch{MassG: 10, WidthCm: 15, HeightCm: 15, ScaleStepG: new(0.001)}}
	out := estimateOf(t, in)
	area := 20_000 / (2 * 2.6)
	m := out.BySwatch.MassG
	knittest.Near(t, "low", m.Low, 9.9995/225*area/1.44, 1e-9)
	knittest.Near(t, "likely", m.Likely, 10.0/225*area, 1e-9)
	knittest.Near(t, "high", m.High, 10.0005/225*area/0.64, 1e-9)
	const want = "half a step of the scale either way, counted pieces of 2671 to 6010 cm2, their gauge 20 % off either way; nothing else"
	if out.BySwatch.RangeCovers != want {
		t.Errorf("%q", out.BySwatch.RangeCovers)
	}
	in.Pieces = []Piece{{Trapezoid: &TrapezoidPiece{new(50.0), new(50.0), 50}}}
	m = estimateOf(t, in).BySwatch.MassG
	knittest.Near(t, "in cm", m.High/m.Low, 10.0005/9.9995, 1e-9)
}
