package yardage

import (
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/stitch"
)

// Cost is the price of an estimate: three steps for every piece and for every colour,
// and one for each row that is given by itself. To add a row up takes a twentieth of
// that; it is one that is wrong that takes a step, for its fault is told.
func (in EstimateInput) Cost() int {
	rows := 0
	for _, p := range in.Pieces[:min(len(in.Pieces), MaxPieces)] {
		if p.Rowwise != nil {
			rows = cost.Sum(rows, len(p.Rowwise.RowStitches))
		}
	}
	pieces, colours := min(len(in.Pieces), MaxPieces), min(len(in.Colours), MaxColours)
	return cost.Sum(
		20,
		cost.Product(3, pieces),
		cost.Product(3, colours),
		min(len(in.Edges), MaxEdges),
		cost.Product(4, pieces),
		min(rows, MaxRowwiseRows),
	)
}

// Cost is the price of a question on what is left: a step for every row that is looked
// at and every ten rows of a yarn, which adds it up, and 20 for every yarn; a step for each row that is
// given by itself, of which a wrong one is told. Rows that are open may be as many as there may be at all.
func (in RemainingInput) Cost() int {
	rows, given := 0, 0
	for i, s := range in.Sections[:min(len(in.Sections), MaxSections)] {
		given = cost.Sum(given, len(s.RowStitches))
		if rows = cost.Sum(rows, fault.Or(s.Rows, 0), len(s.RowStitches)); i == len(in.Sections)-1 && s.Rows == nil && len(s.RowStitches) == 0 {
			rows = stitch.MaxRows
		}
	}
	rows, yarns := min(rows, stitch.MaxRows), min(len(in.Yarns), MaxYarns)
	lines := 0
	if in.WithOutline {
		lines = cost.Product(10, max(3, yarns))
	}
	return cost.Sum(
		20,
		cost.Product(20, yarns),
		min(given, stitch.MaxRows),
		rows/10,
		cost.Product(rows, yarns)/10,
		len(in.SharePercents[:min(len(in.SharePercents), MaxMarks)])*(rows/20)*max(1, yarns)/5,
		lines,
	)
}
