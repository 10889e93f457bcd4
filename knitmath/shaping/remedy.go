package shaping

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
)

// A change is what could be asked instead of a taper that is refused. It is offered
// only when the planner, asked it, plans it.
type change struct {
	anyRow, double bool
	before, after  *int // rows kept even
	end            *int
	more           int // rows of a stretch of a side, by which all above it rises
}

// with is the question changed.
func (in TaperInput) with(ch change) TaperInput {
	if ch.anyRow {
		in.RowChoice = RowChoiceAny
	}
	if ch.double {
		most := MaxChangePerEdge
		in.EdgeChangeStitches = &most
	}
	if ch.before != nil {
		in.EvenBeforeRows = ch.before
	}
	if ch.after != nil {
		in.EvenAfterRows = ch.after
	}
	if ch.end != nil {
		in.EndStitches = *ch.end
	}
	return in
}

// with is the question changed, the end count being that of point i.
func (in ShapedSideInput) with(i int, ch change) ShapedSideInput {
	shape := in.shape().with(change{anyRow: ch.anyRow, double: ch.double})
	in.RowChoice, in.EdgeChangeStitches = shape.RowChoice, shape.EdgeChangeStitches
	if ch.end != nil {
		in.Points = slices.Clone(in.Points)
		in.Points[i].Stitches = *ch.end
	}
	if ch.more > 0 {
		in.Points = slices.Clone(in.Points)
		for k := i; k < len(in.Points); k++ {
			if rows := in.Points[k].HeightRows; rows != nil {
				in.Points[k].HeightRows = new(*rows + ch.more)
			}
		}
	}
	return in
}

// A remedy is a change in words.
type remedy struct {
	words string
	change
}

// tried are those of the remedies that the planner would plan.
func (t taper) tried(remedies ...remedy) []string {
	var words []string
	for _, r := range remedies {
		if t.would != nil && t.would(r.change) {
			words = append(words, r.words)
		}
	}
	return words
}

// notWhole says that no whole number of shaping rows makes the change, and which end
// counts they would lead to.
func (t taper) notWhole() string {
	per := t.perRow()
	s := "each shaping row changes " + report.CountOf(per, "stitches") + ", and " + strconv.Itoa(t.total()) +
		" is not a multiple of that"
	whole := t.total() / per * per
	near, far := t.start+whole, t.start+whole+per
	if t.end < t.start {
		near, far = t.start-whole, t.start-whole-per
	}
	var remedies []remedy
	for _, end := range []int{near, far} {
		if end != t.start { // to shape nothing is no remedy
			remedies = append(remedies, remedy{strconv.Itoa(end), change{end: &end}})
		}
	}
	if ends := t.tried(remedies...); len(ends) > 0 {
		s += "; " + t.to + " of " + strings.Join(ends, " or ") + " would do"
	}
	return s
}

// tooFewRows says how many rows it would take, and what else would do.
func (t taper) tooFewRows() string {
	may := strconv.Itoa(t.slots)
	if t.slots == 0 {
		may = "none"
	}
	s := report.CountOf(t.k, "shaping rows") + " " + report.Are(t.k) + " needed and " + may + " may shape; it takes at least " +
		report.CountOf(t.leastRows(), "rows")
	remedies := t.tried(
		remedy{"shaping on any row", change{anyRow: true}},
		remedy{"2 stitches at each edge", change{double: true}})
	if len(remedies) == 0 {
		remedies = t.tried(remedy{"shaping on any row and 2 stitches at each edge", change{anyRow: true, double: true}})
	}
	remedies = append(remedies, t.lessEven()...)
	if len(remedies) > 0 {
		s += ", or " + strings.Join(remedies, ", or ")
	}
	return s
}

// leastRows is how many rows the shaping rows take at least. On a side it is one more where the
// stretch above it would begin on the other side, and would not do.
func (t taper) leastRows() int {
	least := t.first + (t.k-1)*t.step + t.after
	does := func(rows int) bool { return t.would(change{more: rows - t.rows}) }
	if t.through != nil && t.would != nil && !does(least) && does(least+1) {
		return least + 1
	}
	return least
}

// lessEven offers fewer rows kept even: at the end first, then at the start, then at
// both.
func (t taper) lessEven() []string {
	if t.through != nil {
		return nil
	}
	last := (t.k - 1) * t.step // rows from the first shaping row to the last
	none, after := 0, t.rows-t.first-last
	var remedies []remedy
	if after >= 0 && after < t.after {
		remedies = append(remedies, remedy{report.CountOf(after, "rows") + " kept even at the end", change{after: &after}})
	}
	for fewer := range 2 { // one fewer, when the row after them is a wrong-side row
		if before := t.rows - t.after - last - 1 - fewer; before >= 0 && before < t.before {
			remedies = append(remedies, remedy{report.CountOf(before, "rows") + " kept even at the start", change{before: &before}})
		}
	}
	if t.before+t.after > 0 {
		remedies = append(remedies, remedy{"no rows kept even", change{before: &none, after: &none}})
	}
	for _, r := range remedies {
		if words := t.tried(r); words != nil {
			return words
		}
	}
	return nil
}

// accepts asks the planner whether it would plan a taper.
func (in TaperInput) accepts() bool {
	var c fault.Checks
	_, _, _ = vetTaper(&c, in, nil)
	return c.Err() == nil
}

// accepts asks the planner whether it would plan a shaped side.
func (in ShapedSideInput) accepts() bool {
	var c fault.Checks
	side, _, _ := vetShapedSide(&c, in, nil)
	if c.Err() == nil {
		side.vetStretchesFit(&c)
	}
	return c.Err() == nil
}
