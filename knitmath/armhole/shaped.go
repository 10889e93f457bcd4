package armhole

import "example.com/knitmath/knitmath/curve"

// shaped is a piece whose two edges are bound off at the underarm and follow a curve.
type shaped struct {
	start, lost, rows int
	top               int // of a cap, bound off in the row after the last
	strap             int // rows of a strap of the top's stitches, which are then held
	plan              curve.Plan
}

// underarmRows are the rows in which the underarm is bound off, first at the one edge
// and then at the other.
const underarmRows = 2

// effortOfUnderarm is what the first bind-off is to remember: a number of stitches and
// that it comes in two rows.
const effortOfUnderarm = 2

// follow works out the edges of a piece whose curve lies above the underarm, with no more
// than so many bound off at once. It is false where the curve is too short for its
// stitches.
func (s *settled) follow(start, lost, rows, group int, path curve.Path, steady bool) (shaped, bool) {
	p := shaped{start: start, lost: lost, rows: rows}
	u := s.underarm
	if lost > u {
		courses := path.Courses(s.st, s.rw)
		if *s.budget -= s.unitsOf(rows, lost-u); *s.budget < 0 {
			return p, false
		}
		group = min(group, MaxGroup)
		if group < 2 {
			group = -1
		}
		plan, ok := curve.Follow(courses[0], curve.Settings{Edges: curve.EdgesBoth, LargestGroup: group, AnyRow: s.way == onEveryRow,
			Steady: steady, LargestBend: s.way.bend(), Tolerance: s.tolerance})
		if !ok || len(courses) > 1 || courses[0].Stitches != lost-u {
			return p, false
		}
		p.plan = plan
	}
	bindOff := func(row int, steps []curve.Step) []curve.Step {
		return append([]curve.Step{{RowNumber: row, Kind: curve.KindBindOff, Stitches: u}}, steps...)
	}
	p.plan.Right, p.plan.Left = bindOff(1, p.plan.Right), bindOff(underarmRows, p.plan.Left)
	p.plan.Runs = withUnderarm(u, p.plan.Runs)
	p.plan.Effort += effortOfUnderarm
	if start-2*lost >= enough {
		return p, true
	}
	lacking, _ := curve.Lacking(p.start, p.plan.Right, p.plan.Left, curve.Working{FirstRow: 1, LastRow: rows})
	return p, lacking == 0 // too few stitches for a decrease at either end
}

// enough is how many stitches an edge leaves at its end if every row before has enough: with what it loses there, a
// decrease at either end and one between them.
const enough = 5

// withUnderarm are runs after the first bind-off; one of as many stitches goes on with it.
func withUnderarm(stitches int, runs []curve.Run) []curve.Run {
	return curve.Run{Kind: curve.KindBindOff, Stitches: stitches, FirstRowNumber: 1, Times: 1}.Before(runs)
}

// edgeCm is how long an edge is along the line that a seam takes, the mean of the right
// edge and the left; of a cap as far as the middle of its top, or to its strap.
func (s *settled) edgeCm(p shaped) float64 {
	if len(p.plan.Right) == 0 {
		return s.uprightCm(p)
	}
	over := s.st.SizeCm(p.top) / 2
	if p.strap > 0 {
		over = 0
	}
	return (curve.SewnCm(p.plan.Right, 1, p.rows, over, s.st, s.rw) +
		curve.SewnCm(p.plan.Left, underarmRows, p.rows, over, s.st, s.rw)) / 2
}

// steppedCm is how long it is along its steps, to the beginning of a cap's top.
func (s *settled) steppedCm(p shaped) float64 {
	if len(p.plan.Right) == 0 {
		return s.rw.SizeCm(p.rows)
	}
	return (curve.LengthCm(p.plan.Right, 1, p.rows, s.st, s.rw) + curve.LengthCm(p.plan.Left, underarmRows, p.rows, s.st, s.rw)) / 2
}

// capEdgeCm is how long the edge of a cap is: both sides and the top.
func (s *settled) capEdgeCm(p shaped) float64 { return 2 * s.edgeCm(p) }

// excess is by how many percent the one edge is longer than the other.
func excess(top, armhole float64) float64 { return (top/armhole - 1) * 100 }

// shapingRows are the rows after which there are fewer stitches, the last bind-off of a cap
// among them.
func (p shaped) shapingRows() []curve.Row {
	right, left, last := p.plan.Right, p.plan.Left, p.rows
	if p.top > 0 && p.strap == 0 {
		last++
		step := curve.Step{RowNumber: last, Kind: curve.KindBindOff, Stitches: p.top}
		if last%2 == 1 {
			right = append(right[:len(right):len(right)], step)
		} else {
			left = append(left[:len(left):len(left)], step)
		}
	}
	rows, _ := curve.Worked(p.start, right, left, curve.Working{FirstRow: 1, LastRow: last, ShapingOnly: true})
	return rows
}

// steps are those of the right edge.
func (p shaped) steps() []Step {
	list := make([]Step, len(p.plan.Right))
	for i, s := range p.plan.Right {
		list[i] = Step{RowNumber: s.RowNumber, Stitches: s.Stitches, BoundOff: s.Kind == curve.KindBindOff}
	}
	return list
}
