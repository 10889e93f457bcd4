package curve

import (
	"slices"
	"sort"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// tooFew says that a plan takes more stitches than there are.
func (e *curvedEdge) tooFew(plan Plan, w Working) string {
	row, have := Lacking(e.start, plan.Right, plan.Left, w)
	s := "row " + strconv.Itoa(row) + " finds " + countWords(have) + ", too few for what it would shape"
	who := "the edge takes "
	if e.both() {
		who = "both edges take "
	}
	if taken := e.mostTaken(); taken >= e.start {
		s = who + strconv.Itoa(taken) + " of " + countWords(e.start) + ": " + s
	}
	if !e.asked {
		return s
	}
	more := sort.Search(stitch.MaxStitches-e.start, func(n int) bool {
		row, _ := Lacking(e.start+n, plan.Right, plan.Left, w)
		return row == 0
	})
	enough := e.start + more
	if e.in.EndRule != nil { // of another start it wants another end
		if enough, _ = e.startThatDoes(enough-1, 1); enough == 0 {
			return s + "; no start near it does"
		}
	}
	if enough > 0 && enough < stitch.MaxStitches {
		s += "; a start of " + countWords(enough) + " would do"
	}
	return s
}

// mostTaken is how many stitches are lost where the edge, or both, lie farthest in.
func (e *curvedEdge) mostTaken() int {
	most := 0
	for _, c := range e.courses {
		if end := c.StitchesBefore; c.Gains {
			most = max(most, end)
		} else {
			most = max(most, end+c.Stitches)
		}
	}
	if e.both() {
		return 2 * most
	}
	return most
}

// A remedy is what else could be asked, with its words.
type remedy struct {
	words    string
	settings Settings
	ask      func(in *CurvedEdgeInput)
}

// remedies are what could be let be done beyond what the question lets.
func (e *curvedEdge) remedies() []remedy {
	var all []remedy
	if s := e.settings; !s.AnyRow && s.LargestChange > 0 {
		s.AnyRow = true
		all = append(all, remedy{"shaping on any row", s, func(in *CurvedEdgeInput) { in.RowChoice = RowChoiceAny }})
	}
	if s := e.settings; s.LargestChange < MaxChange {
		s.LargestChange = MaxChange
		all = append(all, remedy{"2 stitches at an edge in one row", s,
			func(in *CurvedEdgeInput) { in.LargestChangeStitches = &s.LargestChange }})
	}
	if s := e.settings; s.LargestGroup != 0 {
		s.LargestGroup = 0
		all = append(all, remedy{"more stitches bound off or cast on at once", s,
			func(in *CurvedEdgeInput) { in.LargestGroupStitches = nil }})
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
	switch first := strconv.Itoa(course.RowsBefore + 1); {
	case len(e.courses) == 1:
	case course.Rows > 1:
		s += " in rows " + first + " to " + strconv.Itoa(course.RowsBefore+course.Rows)
	default:
		s += " in row " + first
	}
	s += ", and no plan comes within " + strconv.Itoa(MaxDeparture) + " stitches of the curve"
	if !e.asked {
		return s
	}
	if ways := e.waysOut(e.start); ways != "" {
		return s + "; this would do: " + ways
	}
	if enough := e.enough(); e.start < enough {
		if e.in.EndRule != nil {
			enough = e.startAllowed(enough-1, 1, true)
		}
		if ways := e.waysOut(enough); ways != "" {
			return s + "; this would do, with a start of " + countWords(enough) + ": " + ways
		}
	}
	if rows, ok := advice.Along(e.rows(), 1, higherAsked, 1, MaxRows, func(rows int) bool { return e.does(lastAt(rows), e.start) }); ok {
		return s + "; a last point at row " + strconv.Itoa(rows) + " would do"
	}
	return s + "; no other setting does, nor a higher last point"
}

// higherAsked are the heights of the last point that are asked for.
const higherAsked = 8

// lastAt asks for the last point at a row.
func lastAt(rows int) remedy {
	return remedy{ask: func(in *CurvedEdgeInput) {
		in.Points = slices.Clone(in.Points)
		last := &in.Points[len(in.Points)-1]
		last.HeightCm, last.HeightRows = nil, &rows
	}}
}

// waysOut are the remedies with which the planner plans the whole edge of so many stitches.
func (e *curvedEdge) waysOut(start int) string {
	var words []string
	for _, r := range e.remedies() {
		if !slices.ContainsFunc(e.courses, func(c Course) bool {
			_, ok := nearest(c, r.settings)
			return !ok && c.Stitches > 0
		}) && e.does(r, start) {
			words = append(words, r.words)
		}
	}
	return strings.Join(words, ", or ")
}

// does reports whether a remedy is planned as somebody asks it who reads of it.
func (e *curvedEdge) does(r remedy, start int) bool {
	in := e.in
	r.ask(&in)
	in.StartStitches = start
	price := in.Cost()
	if start < 1 || e.sought+price > advice.MaxSteps {
		return false
	}
	e.sought += price
	_, _, _, err := planned(in, false)
	return err == nil
}

// enough is a start of which every plan leaves as many stitches as a step takes at either
// edge, with those outside it.
func (e *curvedEdge) enough() int { return e.mostTaken() + 2*(e.edge+MaxChange) + 1 }

// tooDear refuses what takes too long to plan, and says which tolerance would not.
func (e *curvedEdge) tooDear(c *fault.Checks) {
	detail, fields := "so many stitches, in and out over so many rows, take too long to plan: ask for a part of the edge at a time",
		[]string{"points"}
	if t := e.in.ToleranceStitches; t != nil && *t > DefaultTolerance {
		less := e.in
		less.ToleranceStitches = new(DefaultTolerance)
		if fields = append(fields, "tolerance_stitches"); less.Cost() <= cost.Limit {
			detail += ", or with a tolerance of " + measure.Decimal(DefaultTolerance, 1) + ", which would do"
		}
	}
	c.Infeasible(detail, fields...)
}
