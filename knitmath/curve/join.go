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

// lastRow is the number of the row of its last step.
func (r Run) lastRow() int { return r.FirstRowNumber + (r.Times-1)*r.EveryRows }
