package yarn

import "example.com/knitmath/knitmath/cost"

// rowsAStep is how many rows of a piece are added up in one step.
const rowsAStep = 20

// Cost is the price of an estimate: three steps for every piece and for every
// colour, and one for so many rows that are given one by one.
func (in Input) Cost() int {
	rows := 0
	for _, p := range in.Pieces[:min(len(in.Pieces), MaxPieces)] {
		if p.Rowwise != nil {
			rows = cost.Sum(rows, len(p.Rowwise.RowStitches))
		}
	}
	pieces, colours := min(len(in.Pieces), MaxPieces), min(len(in.Colours), MaxColours)
	return cost.Sum(20, cost.Product(3, pieces), cost.Product(3, colours), min(rows, MaxRowwiseRows)/rowsAStep)
}
