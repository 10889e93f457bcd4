package curve

import (
	"sort"
	"strconv"
	"strings"

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
		_, have := Lacking(e.start, plan.Right, plan.Left, w)
		detail := "row " + strconv.Itoa(lacking) + " finds " + countWords(have) + ", too few for what it would shape"
		more := sort.Search(stitch.MaxStitches-e.start, func(n int) bool {
			row, _ := Lacking(e.start+n, plan.Right, plan.Left, w)
			return row == 0
		})
		if enough := e.start + more; enough < stitch.MaxStitches {
			detail += "; a start of " + countWords(enough) + " would do"
		}
		c.Infeasible(detail, "start_stitches", "points")
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

// A remedy is what else could be asked, with its words.
type remedy struct {
	words    string
	settings Settings
}

// remedies are what could be let be done beyond what the question lets.
func (e *curvedEdge) remedies() []remedy {
	var all []remedy
	if s := e.settings; !s.AnyRow && s.LargestChange > 0 {
		s.AnyRow = true
		all = append(all, remedy{"shaping on any row", s})
	}
	if s := e.settings; s.LargestChange < MaxChange {
		s.LargestChange = MaxChange
		all = append(all, remedy{"2 stitches at an edge in one row", s})
	}
	if s := e.settings; s.LargestGroup != 0 {
		s.LargestGroup = 0
		all = append(all, remedy{"more stitches bound off or cast on at once", s})
	}
	return all
}

// tried are the remedies with which the planner keeps a course within so many stitches.
func (e *curvedEdge) tried(course Course, within float64) string {
	var words []string
	for _, r := range e.remedies() {
		if off, ok := nearest(course, r.settings); ok && off <= within {
			words = append(words, r.words)
		}
	}
	return strings.Join(words, ", or ")
}

// tooSteep says that no plan follows a course, and what else would do.
func (e *curvedEdge) tooSteep(i int) string {
	course := e.courses[i]
	verb := "lost"
	if course.Gains {
		verb = "gained"
	}
	s := countWords(course.Stitches) + " are to be " + verb + " at an edge"
	if len(e.courses) > 1 {
		s += " in rows " + strconv.Itoa(course.RowsBefore+1) + " to " + strconv.Itoa(course.RowsBefore+course.Rows)
	}
	s += ", and no plan comes within " + strconv.Itoa(MaxDeparture) + " stitches of the curve"
	if words := e.tried(course, MaxDeparture); words != "" {
		s += "; this would do: " + words
	}
	return s
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

// both reports whether both edges follow the curve.
func (e *curvedEdge) both() bool {
	return e.settings.Edges == EdgesBoth || e.settings.Edges == EdgesUnspecified
}

// firstSide is the side of row 1.
func (e *curvedEdge) firstSide() stitch.Side { return SideOf(1, e.settings.FirstSide) }
