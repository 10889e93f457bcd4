package pattern

import "example.com/knitmath/knitmath/cost"

// Cost is the price of checking a text: a step for every byte in every size.
func (in CheckInstructionsInput) Cost() int {
	return cost.Product(min(len(in.Text), MaxTextBytes), cost.Clamp(len(in.StartStitches), 1, MaxSizes))
}

// Cost is the price of writing rows: a step for every byte of a text, or for every
// row that is given.
func (in FormatInstructionsInput) Cost() int { return rewriting(in.Text, in.Rows) }

// Cost is the price of mirroring rows, which is that of writing them.
func (in MirrorInstructionsInput) Cost() int { return rewriting(in.Text, in.Rows) }

func rewriting(text string, rows []Row) int {
	return cost.Sum(20, min(len(text), MaxTextBytes), cost.Product(20, min(len(rows), MaxRowsGiven)))
}
