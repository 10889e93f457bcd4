package knitmath_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/gauge"
)

// publishedFlat are discs and what else lies flat.
var publishedFlat = map[string]printed{
	"disc_5x7": {work: func(t *testing.T) string { return fmt.Sprintf("%.5f", disc(t, perInch(5, 7), 20).GrowthStitches) }},
	"disc_12x7": {work: func(t *testing.T) string {
		over := 4 * 2.54
		grows := disc(t, &gauge.Gauge{Stitches: 12, Rows: 7, OverCm: &over}, 20).GrowthStitches
		return fmt.Sprintf("%.4f (worked as %.0f)", grows, grows)
	}},
	"disc_inward": {work: func(t *testing.T) string {
		across := 60 / math.Pi / 8 * 2.54
		out := flatShape(t, flat.Input{Gauge: perInch(8, 10), Form: flat.FormDisc, AcrossCm: &across, Direction: flat.DirectionInwards})
		if out.StartStitches < 55 || out.StartStitches > 65 {
			t.Errorf("from %d stitches", out.StartStitches)
		}
		return fmt.Sprintf("%.0f per row (%.2f)", out.GrowthStitches, out.GrowthStitches)
	}},
	// A round wants 8/3 more where the counts hold as many stitches as a disc has there, which is at 2.356 rounds to a stitch.
	"doubling_even": {work: func(t *testing.T) string {
		out := flatShape(t, flat.Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20 * 3 * math.Pi / 4}, Form: flat.FormDisc, AcrossCm: new(40.0),
			Arrangement: flat.ArrangementDoubling})
		words := ""
		for _, r := range out.Rows {
			words += fmt.Sprintf(" %d@%d", r.Instruction.EndStitches, r.RowNumber)
		}
		return words
	}},
	"crescent_61": {work: func(t *testing.T) string {
		turn := 4 * 1.4 * 180 / math.Pi
		out := flatShape(t, flat.Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: flat.FormSector, AcrossCm: new(20.0),
			TurnDegrees: &turn, StartStitches: new(13), WedgeCount: new(8)})
		return fmt.Sprint(out.Rows[5].Instruction.EndStitches)
	}},
	"pie_44": {
		work: func(t *testing.T) string {
			out := flatShape(t, flat.Input{Gauge: perInch(4, 6), Form: flat.FormDisc, AcrossCm: new(44 * 2.54), WedgeCount: new(5),
				Arrangement: flat.ArrangementShortRows})
			rows := 0
			for _, w := range out.Wedges {
				rows = max(rows, len(w.Rows))
			}
			return fmt.Sprintf("%d sts; %d rows; %d per wedge", out.StartStitches, 5*rows, rows)
		},
		ours: "88 sts; 830 rows; 166 per wedge",
		why:  "5 wedges of 166 rows are 830; 138 in were taken for the 138.2 of the rim, which are 828 and in 5 wedges 165.6",
	},
	"square_garter": {work: func(t *testing.T) string {
		grows := polygon(t, 4, 2).GrowthStitches
		return fmt.Sprintf("%v per row; %v per ridge", grows, 2*grows)
	}},
	"hexagon_14": {work: func(t *testing.T) string { return fmt.Sprintf("%.3f", polygon(t, 6, 1.4).GrowthStitches) }},
	"bias_garter": {work: func(t *testing.T) string {
		var lean []string
		for _, ratio := range []float64{2, 1.4} {
			out := flatShape(t, flat.Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20 * ratio}, Form: flat.FormBiasStrip, WidthCm: new(20.0),
				LengthCm: new(20.0)})
			lean = append(lean, fmt.Sprintf("%.2f", *out.LeanDegrees))
		}
		return strings.Join(lean, " / ")
	}},
}

func perInch(stitches, rows float64) *gauge.Gauge {
	return &gauge.Gauge{Stitches: stitches, Rows: rows, OverCm: new(2.54)}
}

func flatShape(t *testing.T, in flat.Input) flat.Shape {
	t.Helper()
	out, err := flat.PlanFlatShape(in)
	return must(t, out, err)
}

func disc(t *testing.T, g *gauge.Gauge, cm float64) flat.Shape {
	t.Helper()
	return flatShape(t, flat.Input{Gauge: g, Form: flat.FormDisc, AcrossCm: &cm})
}

// polygon is one of so many sides, at so many rows to a stitch.
func polygon(t *testing.T, sides int, ratio float64) flat.Shape {
	t.Helper()
	return flatShape(t, flat.Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20 * ratio}, Form: flat.FormPolygon, SideCm: new(20.0),
		CornerCount: &sides})
}
