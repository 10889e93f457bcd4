package curve

import "example.com/knitmath/knitmath/stitch"

// Working is how the rows of a piece are worked.
type Working struct {
	// FirstRow and LastRow are the rows to write, counted as the steps are.
	FirstRow, LastRow int
	// FirstSide is the side that faces in row 1, not in FirstRow; the right side if it is
	// not said.
	FirstSide stitch.Side
	// EdgeStitches are worked outside a decrease or an increase, 1 if it is 0.
	EdgeStitches int
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
	edge := max(w.EdgeStitches, 1)
	count := start
	for number := w.FirstRow; number <= w.LastRow; number++ {
		faces := SideOf(number, w.FirstSide)
		begins, ends := stepIn(&right, number), stepIn(&left, number)
		if faces == stitch.WrongSide {
			begins, ends = ends, begins
		}
		r := rowOf{faces, edge, begins, ends}
		steps, ok := r.steps(count)
		if !ok {
			return rows, number
		}
		after := count + begins.change() + ends.change()
		rows = append(rows, Row{number, faces, stitch.Instruction{Row: stitch.RowOf(steps...), StartStitches: count, EndStitches: after}})
		count = after
	}
	return rows, 0
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

// steps writes the row on so many stitches; false if they are too few.
func (r rowOf) steps(count int) ([]stitch.Step, bool) {
	if r.begins.Kind == KindBindOff && r.begins.Stitches == count && r.ends.Stitches == 0 {
		return []stitch.Step{stitch.Do(stitch.BindOff, count)}, true
	}
	plain := r.faces.Plain()
	var first, last []stitch.Step
	switch {
	case r.begins.Kind == KindBindOff:
		first = append(first, stitch.Do(stitch.BindOff, r.begins.Stitches))
	case r.begins.Kind == KindCastOn:
		first = append(first, stitch.Do(stitch.CastOn, r.begins.Stitches))
	case r.begins.Stitches > 0:
		first = append(append(first, stitch.Do(plain, r.edge)), stitch.Shaped(r.faces, false, r.begins.change())...)
	}
	if r.ends.Stitches > 0 {
		last = append(append(last, stitch.Shaped(r.faces, true, r.ends.change())...), stitch.Do(plain, r.edge))
	}
	between := count - taken(first) - taken(last)
	if between < 0 || between == 0 && (first != nil && last == nil || r.gains()) {
		return nil, false
	}
	switch {
	case last == nil:
		first = append(first, stitch.ToEnd(plain))
	case between > 0:
		first = append(first, stitch.ToLast(plain, taken(last)))
	}
	return append(first, last...), true
}

// taken is how many stitches steps take off the left needle.
func taken(steps []stitch.Step) int {
	n := 0
	for _, s := range steps {
		n += s.Count * s.Op.Takes()
	}
	return n
}
