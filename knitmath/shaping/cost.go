package shaping

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// Cost is the price of a row of changes: two steps for each, and some for the layouts
// that are compared. Where they are mixed evenly, or may have to be since no easy row
// is found, a short way to write the row has to be found, which tries to share out
// every gap, though not in more than some ways: two steps more for each of so many
// stitches of a gap.
func (in EvenSpacingInput) Cost() int {
	const ways = 8
	start, end := cost.Clamp(in.StartStitches, 1, stitch.MaxStitches), cost.Clamp(in.EndStitches, 1, stitch.MaxStitches)
	changes, shared := measure.Abs(end-start), 0
	if in.Spread != GapSpreadGrouped {
		shared = min(start, ways*changes)
	}
	return cost.Sum(80, cost.Product(2, changes), cost.Product(2, shared))
}

// Cost is the price of a taper: 140 for what compares its schedules, and three steps for every shaping row, nearly all of them
// for the schedules that are compared.
func (in TaperInput) Cost() int {
	rows := gauge.PriceRows(in.Gauge, in.HeightRows, in.HeightCm, stitch.MaxRows)
	return cost.Sum(140, cost.Product(3, shapingRows(in.StartStitches, in.EndStitches, rows)))
}

// Cost is the price of a taper in several sizes: what compares the forms that all sizes
// may share, which goes with the third power of the sizes where these have nothing in
// common, and for every size its splits into runs, and a step for ten shaping rows; three
// for each that is drawn.
func (in GradedTaperInput) Cost() int {
	sizes := min(len(in.Sizes), MaxTaperSizes)
	price, drawn := cost.Sum(40, cost.Product(2, sizes, sizes, sizes)), 0
	for _, s := range in.Sizes[:sizes] {
		rows := gauge.PriceRows(in.Gauge, s.HeightRows, s.HeightCm, stitch.MaxRows)
		shaping := shapingRows(s.StartStitches, s.EndStitches, rows)
		price = cost.Sum(price, 270, shaping/10)
		drawn += shaping
	}
	if in.WithOutline {
		price = cost.Sum(price, cost.Product(3, min(drawn, MaxOutlinedRows)))
	}
	return price
}

// Cost is the price of a shaped side: that of a taper between any two points, twice
// since rows are kept apart between them.
func (in ShapedSideInput) Cost() int {
	price, count, below := 20, in.StartStitches, 0
	for _, p := range in.Points[:min(len(in.Points), MaxSidePoints)] {
		rows := gauge.PriceRows(in.Gauge, p.HeightRows, p.HeightCm, stitch.MaxRows)
		price = cost.Sum(price, 20, cost.Product(4, shapingRows(count, p.Stitches, rows-below)))
		count, below = p.Stitches, max(below, rows)
	}
	return price
}

// shapingRows is the most rows that shape between two counts.
func shapingRows(start, end, rows int) int {
	from, to := cost.Clamp(start, 1, stitch.MaxStitches), cost.Clamp(end, 1, stitch.MaxStitches)
	return cost.Clamp(rows, 0, measure.Abs(to-from))
}
