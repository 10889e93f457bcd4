package yardage

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Garter stitch from the loop of stockinette: 22 stitches and 22*5.5/4.2 rows to 10 cm have
// loops of 4.2/2.2 = 1.909 cm. In garter stitch the same loops lie 0.9 to 1 times as many to
// the width (common practice), in 1.82 (22 by 40 printed) to 2 rows to a stitch. The factor
// is what the loop is beside that of a plain fabric of those stitches and rows.
func TestGarterFactor(t *testing.T) {
	const loop = 4.2 / 2.2
	factor := func(width, rows float64) float64 {
		wales := 2.2 * width
		return loop / math.Sqrt(23.1/(wales*wales*rows))
	}
	f := patternFactors[StitchPatternGarter]
	knittest.Near(t, "low", factor(0.9, 40.0/22), f.Low, 0.005)
	knittest.Near(t, "likely", factor(0.95, 2), f.Likely, 0.005)
	knittest.Near(t, "high", factor(1, 2), f.High, 0.005)
}

// One wool on one needle: 22 stitches and 28.8 rows of stockinette, 21 and 42 of garter
// stitch. A stitch takes as much yarn in both, within the range, and the square of garter
// stitch takes 21*42/(22*28.8) = 1.39 times as much; its loop constant is f*f*23.1 = 31.6.
func TestPieceOfItsOwnGauge(t *testing.T) {
	stockinette, garter := &gauge.Gauge{Stitches: 22, Rows: 22 * 5.5 / 4.2}, &gauge.Gauge{Stitches: 21, Rows: 42}
	square := Piece{Trapezoid: &TrapezoidPiece{new(10.0), new(10.0), 10}}
	border := Piece{Pattern: StitchPatternGarter, Gauge: garter, Trapezoid: square.Trapezoid}
	out := estimateOf(t, EstimateInput{Gauge: stockinette, State: FabricStateFullyRelaxed, Pieces: []Piece{square, border}})
	body, edge := out.Pieces[0], out.Pieces[1]
	knittest.Near(t, "stitches of the border", edge.Stitches, 21*42, 1e-12)
	knittest.Near(t, "loop of stockinette", body.LoopLengthCm, 4.2/2.2, 1e-8) // a gauge is read to the millionth
	knittest.Near(t, "its constant", body.LoopConstant, 23.1, 1e-12)
	knittest.Near(t, "constant of garter stitch", edge.LoopConstant, 1.17*1.17*23.1, 1e-12)
	knittest.Near(t, "one loop beside the other", edge.LoopLengthCm, body.LoopLengthCm, 0.01)
	knittest.Near(t, "metres", edge.LengthM, edge.Stitches*edge.LoopLengthCm/100, 1e-12)
	// The same by itself, at the question's gauge.
	border.Gauge = nil
	alone := estimateOf(t, EstimateInput{Gauge: garter, State: FabricStateFullyRelaxed, Pieces: []Piece{border}})
	knittest.Near(t, "alone", alone.Pieces[0].LengthM, edge.LengthM, 1e-12)
	knittest.Near(t, "both", out.AreaCm2, 200, 1e-12)
}

// Where only stitches are known and all is garter stitch, its rows are 2 to a stitch.
func TestGarterRowsDerived(t *testing.T) {
	in := EstimateInput{StitchGauge: &StitchGauge{Stitches: 20}, State: FabricStateFullyRelaxed,
		Pieces: []Piece{{Pattern: StitchPatternGarter, Trapezoid: &TrapezoidPiece{new(50.0), new(50.0), 50}}}}
	out := estimateOf(t, in)
	knittest.Near(t, "ratio", out.RowsToStitch, 2, 1e-12)
	in.StitchGauge, in.Gauge = nil, &gauge.Gauge{Stitches: 20, Rows: 40}
	knittest.Near(t, "as if counted", out.LengthM.Likely, estimateOf(t, in).LengthM.Likely, 1e-12)
	// A piece of stockinette beside it at a gauge of its own changes nothing of that.
	in.Gauge, in.StitchGauge = nil, &StitchGauge{Stitches: 20}
	in.Pieces = append(in.Pieces, Piece{Gauge: &gauge.Gauge{Stitches: 20, Rows: 27}, Counted: &CountedPiece{10, 10}})
	beside := estimateOf(t, in)
	knittest.Near(t, "beside", beside.Pieces[0].LengthM, out.Pieces[0].LengthM, 1e-12)
	// Low is 40/22 rows to a stitch on top of the low factor and constant.
	in.Pieces = in.Pieces[:1]
	in.StitchGauge, in.Gauge = nil, &gauge.Gauge{Stitches: 20, Rows: 20 * 40.0 / 22}
	knittest.Near(t, "low", out.LengthM.Low, estimateOf(t, in).LengthM.Low, 1e-8) // a gauge is read to the millionth
}
