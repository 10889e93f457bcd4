package yardage

import "example.com/knitmath/knitmath/cost"

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
	return cost.Sum(20, cost.Product(3, pieces), cost.Product(3, colours), min(rows, MaxRowwiseRows))
}
