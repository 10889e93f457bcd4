package curve

import "example.com/knitmath/knitmath/stitch"

// write lists the steps of every edge, and how far they lie off.
func (p *planner) write(out *Plan) {
	var off int64
	lost, steps := 0, 0
	for _, r := range out.Runs {
		steps += r.Times
	}
	if p.edges != EdgesLeft {
		out.Right = make([]Step, 0, steps)
	}
	if p.edges != EdgesRight {
		out.Left = make([]Step, 0, steps)
	}
	for i := range out.Runs {
		r := &out.Runs[i]
		for t := range r.Times {
			row := r.rowOf(t)
			step, _ := p.step(row, lost, r.Stitches, r.Kind.Groups())
			off = max(off, step)
			p.put(out, row, r)
			lost += r.Stitches
		}
		r.FirstRowNumber += p.RowsBefore
	}
	out.Departure = float64(off) / 1e6
}

// put adds a step to the edges that have it.
func (p *planner) put(out *Plan, row int, r *Run) {
	step := Step{p.RowsBefore + row, r.Kind, r.Stitches}
	leads, follows := &out.Right, &out.Left
	if p.lead == stitch.WrongSide {
		leads, follows = follows, leads
	}
	*leads = append(*leads, step)
	if p.edges != EdgesBoth {
		return
	}
	if r.Kind.Groups() {
		step.RowNumber++
	}
	*follows = append(*follows, step)
}
