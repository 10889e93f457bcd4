package yardage

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/yarn"
)

// The handbook's ranges of yardage for a hat, a scarf and an adult's sweater,
// by category (testdata/yardage/yardage.csv). It gives no dimensions; those below
// are ordinary ones, from common practice and memory:
//
//	pullover  drop-shoulder, 102 cm round the bust, 66 cm long; two sleeves 45 cm
//	          long, 20 cm wide at the cuff and 38 cm at the top; plain
//	hat       an adult's, 54 cm round: 12 cm of rib, turned up, 13 cm plain, 8 cm of
//	          crown down to 6 cm
//	scarf     the usual first one, 6 by 48 in (15.24 by 121.92 cm), plain
//
// The fabric is fully relaxed with the rows that belong to it, stitches * 5.5 /
// 4.2. The handbook's figures are for buying, so the reserve is in them.
func handbookPieces(article string) []Piece {
	switch article {
	case "adult_sweater":
		two := 2
		return []Piece{
			{Name: "back and front", Times: &two, Trapezoid: &TrapezoidPiece{new(51.0), new(51.0), 66}},
			{Name: "sleeves", Times: &two, Trapezoid: &TrapezoidPiece{new(20.0), new(38.0), 45}},
		}
	case "hat":
		return []Piece{
			{Name: "brim", Pattern: StitchPatternRib, Trapezoid: &TrapezoidPiece{new(54.0), new(54.0), 12}},
			{Name: "body", Trapezoid: &TrapezoidPiece{new(54.0), new(54.0), 13}},
			{Name: "crown", Trapezoid: &TrapezoidPiece{new(54.0), new(6.0), 8}},
		}
	case "scarf":
		return []Piece{{Trapezoid: &TrapezoidPiece{new(15.24), new(15.24), 121.92}}}
	}
	return nil
}

// handbookYards is the likely yardage, reserve included, at stitches to the inch.
func handbookYards(t *testing.T, article string, perInch float64) float64 {
	t.Helper()
	over := measure.CmPerInch
	out, err := EstimateYarn(EstimateInput{
		Gauge:  &gauge.Gauge{Stitches: perInch, Rows: perInch * 5.5 / 4.2, OverCm: &over},
		Pieces: handbookPieces(article), State: FabricStateFullyRelaxed,
	})
	if err != nil {
		t.Fatal(err)
	}
	return out.LengthM.Likely / yarn.MetresPerYard
}

// Pullover and hat: at the middle of the category's gauge the likely figure lies
// inside the handbook's range, in every category. Scarf: the handbook has one
// figure for a category whose gauge spans a range, so it must lie between the
// estimates at the two ends of that range; no other tolerance is taken.
func TestHandbookYardage(t *testing.T) {
	seen := map[string]int{}
	for _, row := range knittest.Table(t, "yardage/yardage.csv") {
		article := row["article"]
		seen[article]++
		low, high := knittest.Cell(t, row["st_per_in_low"]), knittest.Cell(t, row["st_per_in_high"])
		from, to := knittest.Cell(t, row["yards_low"]), knittest.Cell(t, row["yards_high"])
		middle := handbookYards(t, article, (low+high)/2)
		loose, tight := handbookYards(t, article, low), handbookYards(t, article, high)
		t.Logf("%-13s %-11s %4.0f yd (%.0f to %.0f over its gauges), handbook %.0f to %.0f",
			article, row["name"], middle, loose, tight, from, to)
		if from != to && (middle < from || middle > to) {
			t.Errorf("%s in %s: %.0f yd, the handbook has %.0f to %.0f", article, row["name"], middle, from, to)
		}
		if from == to && (from < loose || from > tight) {
			t.Errorf("%s in %s: %.0f to %.0f yd, the handbook has %.0f", article, row["name"], loose, tight, from)
		}
	}
	for _, article := range []string{"hat", "scarf", "adult_sweater"} {
		if seen[article] != 6 {
			t.Errorf("%s in %d categories", article, seen[article])
		}
	}
}

// The pullover by hand: 2*51*66 + 2*(20+38)/2*45 = 9342 cm2; at 18 stitches fully
// relaxed 990 m to the m2, so 924.858 m, and 1017.34 with the reserve.
func TestPulloverByHand(t *testing.T) {
	out, err := EstimateYarn(EstimateInput{
		Gauge: &gauge.Gauge{Stitches: 18, Rows: 18 * 5.5 / 4.2}, Pieces: handbookPieces("adult_sweater"), State: FabricStateFullyRelaxed,
		PutUp: &yarn.PutUp{BallM: 200, BallG: 100},
	})
	if err != nil {
		t.Fatal(err)
	}
	knittest.Near(t, "area", out.AreaCm2, 9342, 1e-15)
	knittest.Near(t, "metres", out.ByLoop.LengthM.Likely, 924.858, 1e-7)
	knittest.Near(t, "with the reserve", out.LengthM.Likely, 1017.3438, 1e-7)
	knittest.Near(t, "grams", out.MassG.Likely, 508.6719, 1e-7)
	// High: sqrt(25.52/23.1) = 1.051077, 1069.31 m; 5.35 balls, so 6.
	knittest.Near(t, "high", out.LengthM.High, 1017.3438*1.0510766, 1e-6)
	if *out.BallCount != 6 {
		t.Errorf("%d balls", *out.BallCount)
	}
	want := "You need 1017 m of yarn (975 m to 1069 m), 509 g, reserve included. Buy 6 balls of one dye lot, for the high figure."
	if got := out.Summary(); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func BenchmarkEstimateYarn(b *testing.B) {
	in := EstimateInput{
		Gauge:  &gauge.Gauge{Stitches: 18, Rows: 24},
		Pieces: handbookPieces("adult_sweater"),
		PutUp:  &yarn.PutUp{BallM: 200, BallG: 100},
		Swatch: &WeighedSwatch{MassG: 5, WidthCm: 10, HeightCm: 10},
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := EstimateYarn(in); err != nil {
			b.Fatal(err)
		}
	}
}
