package curve

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/stitch"
)

// work plans every course and writes the rows, or says why that cannot be.
func (e *curvedEdge) work(c *fault.Checks) (Plan, []Row) {
	e.plans = make([]Plan, len(e.courses))
	for i, course := range e.courses {
		plan, ok := Follow(course, e.settings)
		if !ok {
			c.Infeasible(e.tooSteep(i), "points")
			return Plan{}, nil
		}
		e.plans[i] = plan
	}
	plan := Joined(e.plans)
	w := e.working()
	w.ShapingOnly = true
	rows, lacking := Worked(e.start, plan.Right, plan.Left, w)
	if lacking > 0 {
		c.Infeasible(e.tooFew(plan, w), "start_stitches", "points")
	}
	return plan, rows
}

// rows is how many the piece has.
func (e *curvedEdge) rows() int {
	last := e.courses[len(e.courses)-1]
	return last.RowsBefore + last.Rows
}

func (e *curvedEdge) working() Working {
	return Working{FirstRow: 1, LastRow: e.rows(), FirstSide: e.settings.FirstSide, EdgeStitches: e.edge}
}

// answer writes the answer.
func (e *curvedEdge) answer(in CurvedEdgeInput, plan Plan, rows []Row) CurvedEdge {
	out := CurvedEdge{HeightRows: e.rows(), HeightCm: e.rw.SizeCm(e.rows()), EndStitches: e.start, Runs: plan.Runs,
		CurveLengthCm: e.path.Length(), GreatestDepartureStitches: plan.Departure,
		GreatestDepartureRows:  plan.Departure / e.courses[0].perRow,
		LeastDepartureStitches: plan.Least, Effort: plan.Effort, edge: *e, plan: plan}
	if len(rows) > 0 {
		out.Rows, out.EndStitches = rows, rows[len(rows)-1].Instruction.EndStitches
	}
	asKnit := func(steps []Step) *KnitEdge {
		if steps == nil {
			return nil
		}
		return &KnitEdge{steps, LengthCm(steps, 1, e.rows(), e.st, e.rw), SewnCm(steps, 1, e.rows(), 0, e.st, e.rw)}
	}
	out.RightEdge, out.LeftEdge = asKnit(plan.Right), asKnit(plan.Left)
	out.Notices = e.notices(plan)
	if in.WithOutline {
		out.Outline = e.outline(plan)
	}
	return out
}

// manyInSuccession is how many rows one after another may decrease at both edges before
// they draw in. Common practice, as of tapers.
const manyInSuccession = 8

// drawnIn reports whether more rows than that do.
func (p Plan) drawnIn() bool {
	if p.Right == nil || p.Left == nil {
		return false
	}
	row, many := 0, 0
	for _, s := range p.Right {
		if s.Kind != KindDecrease || s.RowNumber != row+1 {
			many = 0
		}
		row = s.RowNumber
		if s.Kind == KindDecrease {
			if many++; many > manyInSuccession {
				return true
			}
		}
	}
	return false
}

// shapesIn reports whether a row of either edge decreases or increases.
func (p Plan) shapesIn(row int) bool {
	return slices.ContainsFunc(slices.Concat(p.Right, p.Left), func(s Step) bool {
		return s.RowNumber == row && (s.Kind == KindDecrease || s.Kind == KindIncrease)
	})
}

// both reports whether both edges follow the curve.
func (e *curvedEdge) both() bool {
	return e.settings.Edges == EdgesBoth || e.settings.Edges == EdgesUnspecified
}

// firstSide is the side of row 1.
func (e *curvedEdge) firstSide() stitch.Side { return SideOf(1, e.settings.FirstSide) }
