package curve

// Joined is the plans of one edge's courses, from below, as one.
func Joined(plans []Plan) Plan {
	var all Plan
	for _, p := range plans {
		all.Right, all.Left = append(all.Right, p.Right...), append(all.Left, p.Left...)
		all.Runs = append(all.Runs, p.Runs...)
		all.Departure, all.Least = max(all.Departure, p.Departure), max(all.Least, p.Least)
		all.Effort += p.Effort
		all.Kinked = all.Kinked || p.Kinked
	}
	return all
}

// rowOf is the number of the row of a step, of which the first is 0.
func (r Run) rowOf(step int) int {
	if r.AlternateRows == 0 {
		return r.FirstRowNumber + step*r.EveryRows
	}
	return r.FirstRowNumber + step/2*(r.EveryRows+r.AlternateRows) + step%2*r.EveryRows
}

// lastRow is the number of the row of its last step.
func (r Run) lastRow() int { return r.rowOf(r.Times - 1) }
