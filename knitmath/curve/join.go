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

// goesOn reports whether another run is a group of as many stitches that comes two rows on: the
// trade tells both as one.
func (r Run) goesOn(next Run) bool {
	const apart = 2
	even := func(r Run) bool { return r.Times == 1 || r.EveryRows == apart }
	return r.Kind.Groups() && next.Kind == r.Kind && next.Stitches == r.Stitches && next.FirstRowNumber == r.lastRow()+apart &&
		even(r) && even(next)
}

// Before is a run and those after it, the first of which goes on with it if it can.
func (r Run) Before(runs []Run) []Run {
	if len(runs) > 0 && r.goesOn(runs[0]) {
		r.EveryRows, r.Times = runs[0].FirstRowNumber-r.lastRow(), r.Times+runs[0].Times
		runs = runs[1:]
	}
	return append([]Run{r}, runs...)
}

// told is runs as the trade tells them, and how many fewer there are: equal bind-offs on end are
// one, and a step alone that comes soon before others is a short run with the first of them.
func told(runs []Run) (list []Run, joined int) {
	for i := len(runs) - 2; i >= 0; i-- {
		switch r, next := &runs[i], &runs[i+1]; {
		case r.goesOn(*next): // no steady search has two of them alone as one run
			runs = append(runs[:i], r.Before(runs[i+1:])...)
			joined++
		case r.leads(*next):
			r.EveryRows, r.Times = next.FirstRowNumber-r.FirstRowNumber, 2
			next.FirstRowNumber += next.EveryRows
			if next.Times--; next.Times == 1 {
				next.EveryRows = 0
			}
		}
	}
	return runs, joined
}

// leads reports whether a step stands alone, nearer to the run after it than that run's steps are
// to one another.
func (r Run) leads(next Run) bool {
	return !r.Kind.Groups() && next.Kind == r.Kind && next.Stitches == r.Stitches && r.Times == 1 && next.Times > 1 &&
		next.AlternateRows == 0 && next.FirstRowNumber-r.FirstRowNumber < next.EveryRows
}
