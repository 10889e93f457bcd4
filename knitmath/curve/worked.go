package curve

import (
	"math"

	"example.com/knitmath/knitmath/stitch"
)

// Working is how the rows of a piece are worked.
type Working struct {
	// FirstRow and LastRow are the rows to write, counted as the steps are.
	FirstRow, LastRow int
	// FirstSide is the side that faces in row 1, not in FirstRow; the right side if it is
	// not said.
	FirstSide stitch.Side
	// EdgeStitches are worked outside a decrease or an increase, 1 if it is 0.
	EdgeStitches int
	// ShapingOnly leaves out the rows that leave as many stitches as they find.
	ShapingOnly bool
}

// A Row is one row of a piece, whether it shapes an edge or not.
type Row struct {
	RowNumber   int
	Side        stitch.Side
	Instruction stitch.Instruction
}

// Worked writes the rows of a piece of so many stitches whose two edges are shaped by
// the steps given, in stockinette. Bind-offs and cast-ons must lie in rows that begin
// at their edge: right-side rows begin at the right one. It stops before a row that has
// too few stitches for what is to be done, and says which; of all written rows that is 0.
//
// The last row may bind off all stitches.
func Worked(start int, right, left []Step, w Working) (rows []Row, lacking int) {
	kept := len(right) + len(left)
	if !w.ShapingOnly {
		kept = w.LastRow - w.FirstRow + 1
	}
	rows = make([]Row, 0, max(kept, 0))
	lacking, _ = w.walk(start, right, left, func(number, count, after int, r rowOf) {
		if !w.ShapingOnly || count != after {
			rows = append(rows, Row{number, r.faces,
				stitch.Instruction{Row: stitch.RowOf(r.steps(count)...), StartStitches: count, EndStitches: after}})
		}
	})
	return rows, lacking
}

// Lacking is the first row that [Worked] could not write, and the stitches that it finds;
// without one, 0 and the stitches that the last row leaves.
func Lacking(start int, right, left []Step, w Working) (row, found int) {
	w.ShapingOnly = true
	return w.walk(start, right, left, func(int, int, int, rowOf) {})
}

// walk goes from row to row, or from one that shapes to the next, with what each does and the stitches
// before and after it, up to the first that has too few.
func (w Working) walk(start int, right, left []Step, each func(number, count, after int, r rowOf)) (lacking, found int) {
	edge, count := max(w.EdgeStitches, 1), start
	for number := w.FirstRow; number <= w.LastRow; number++ {
		if w.ShapingOnly {
			if number = max(number, nextStep(right, left)); number > w.LastRow {
				break
			}
		}
		faces := SideOf(number, w.FirstSide)
		begins, ends := stepIn(&right, number), stepIn(&left, number)
		if faces == stitch.WrongSide {
			begins, ends = ends, begins
		}
		r := rowOf{faces, edge, begins, ends}
		if !r.fits(count) {
			return number, count
		}
		after := count + begins.change() + ends.change()
		each(number, count, after, r)
		count = after
	}
	return 0, count
}

// nextStep is the row of the first step of either list, beyond all rows where there is none.
func nextStep(right, left []Step) int {
	next := math.MaxInt
	for _, steps := range [2][]Step{right, left} {
		if len(steps) > 0 {
			next = min(next, steps[0].RowNumber)
		}
	}
	return next
}

// SideOf is the side that faces in a row, with that of row 1.
func SideOf(row int, first stitch.Side) stitch.Side {
	if (first == stitch.WrongSide) == (row%2 == 1) {
		return stitch.WrongSide
	}
	return stitch.RightSide
}

// stepIn is the step of a row, taken from the front of the list, or none.
func stepIn(steps *[]Step, row int) Step {
	for len(*steps) > 0 && (*steps)[0].RowNumber < row {
		*steps = (*steps)[1:]
	}
	if len(*steps) > 0 && (*steps)[0].RowNumber == row {
		return (*steps)[0]
	}
	return Step{}
}

// change is how many stitches more there are after the step.
func (s Step) change() int {
	if s.Kind.Gains() {
		return s.Stitches
	}
	return -s.Stitches
}

// rowOf is one row that is to be written.
type rowOf struct {
	faces        stitch.Side
	edge         int
	begins, ends Step
}

// gains reports whether an edge is widened. An increase wants a stitch on both sides of its
// strand, as the last stitch bound off wants one that stays, to be passed over it.
func (r rowOf) gains() bool { return r.begins.Kind.Gains() || r.ends.Kind.Gains() }

// bindsOffAll reports whether the row leaves none of so many stitches.
func (r rowOf) bindsOffAll(count int) bool {
	return r.begins.Kind == KindBindOff && r.begins.Stitches == count && r.ends.Stitches == 0
}

// fits reports whether so many stitches are enough for the row. The stitch that a bind-off leaves
// on the right needle is no half of a decrease.
func (r rowOf) fits(count int) bool {
	if r.bindsOffAll(count) {
		return true
	}
	between := count - r.taken(r.begins) - r.taken(r.ends)
	return between > 0 || between == 0 && !r.gains() && r.begins.Kind != KindBindOff && (r.begins.Stitches == 0 || r.ends.Stitches > 0)
}

// taken is how many stitches a step takes off the left needle, with those outside it.
func (r rowOf) taken(s Step) int {
	switch {
	case s.Stitches == 0 || s.Kind == KindCastOn:
		return 0
	case s.Kind == KindBindOff:
		return s.Stitches
	case s.Kind.Gains():
		return r.edge + s.Stitches - 1 // those between the strands
	}
	return r.edge + s.Stitches + 1
}

// steps writes the row on so many stitches, which must fit.
func (r rowOf) steps(count int) []stitch.Step {
	if r.bindsOffAll(count) {
		return []stitch.Step{stitch.Do(stitch.BindOff, count)}
	}
	plain, most := r.faces.Plain(), 5
	if r.begins.Kind.Groups() && r.ends.Stitches == 0 {
		most = 2
	}
	all := make([]stitch.Step, 0, most)
	switch {
	case r.begins.Kind == KindBindOff:
		all = append(all, stitch.Do(stitch.BindOff, r.begins.Stitches))
	case r.begins.Kind == KindCastOn:
		all = append(all, stitch.Do(stitch.CastOn, r.begins.Stitches))
	case r.begins.Stitches > 0:
		all = stitch.AppendShaped(append(all, stitch.Do(plain, r.edge)), r.faces, false, r.begins.change())
	}
	last := r.taken(r.ends)
	switch {
	case last == 0:
		return append(all, stitch.ToEnd(plain))
	case count > r.taken(r.begins)+last:
		all = append(all, stitch.ToLast(plain, last))
	}
	return append(stitch.AppendShaped(all, r.faces, true, r.ends.change()), stitch.Do(plain, r.edge))
}
