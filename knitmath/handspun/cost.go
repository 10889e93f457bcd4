package handspun

// Cost is the price of a plan: a count to read for every ply, and the rest.
func (in Input) Cost() int { return 50 + 10*min(len(in.Plies), MaxPlies) }
