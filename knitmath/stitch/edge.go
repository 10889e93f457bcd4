package stitch

import (
	"math"
	"slices"
)

// An EdgePart is one part of an edge: the side of a row, a stitch bound off, the foot
// of a stitch cast on, or a stitch that is live.
type EdgePart struct {
	Kind   EdgeKind
	Row    int  // the row that made it, counted as RowsWorked counts, 0 for a first cast-on
	Hand   Hand // where in that row it lies
	Across int  // half stitches by which the edge moves inward here
	Up     int  // rows by which it rises
}

// An Edge is a part of the line around a fabric, in the order in which it is picked
// up along with the right side facing: live stitches from right to left, the left
// selvedge down, the cast-on from left to right, the right selvedge up.
type Edge struct {
	fabric *Fabric
	cells  []int32
}

// Len returns how many parts the edge has: places to pick up in.
func (e Edge) Len() int { return len(e.cells) }

// Parts returns the parts in order.
func (e Edge) Parts() []EdgePart {
	parts := make([]EdgePart, len(e.cells))
	for i, id := range e.cells {
		parts[i] = e.fabric.part(id)
	}
	return parts
}

func (f *Fabric) part(id int32) EdgePart {
	c := &f.cells[id]
	return EdgePart{c.kind, int(c.row), c.hand, int(c.across), int(c.up)}
}

// Slice returns the parts from index i up to j.
func (e Edge) Slice(i, j int) Edge { return Edge{e.fabric, e.cells[i:j]} }

// Runs returns the longest pieces of a closed line all of whose parts keep wants.
func (e Edge) Runs(keep func(EdgePart) bool) []Edge {
	n, start := len(e.cells), 0
	for start < n && keep(e.fabric.part(e.cells[start])) {
		start++
	}
	if start == n {
		return []Edge{e}
	}
	var runs []Edge
	var run []int32
	for i := range n {
		id := e.cells[(start+1+i)%n] // it begins after a part that is not wanted, and ends with it
		if keep(e.fabric.part(id)) {
			run = append(run, id)
		} else if len(run) > 0 {
			runs, run = append(runs, Edge{e.fabric, run}), nil
		}
	}
	return runs
}

// Boundary returns every closed line around the fabric: its outer edge and its holes.
func (f *Fabric) Boundary() []Edge {
	seen := make([]bool, len(f.cells))
	var all []Edge
	for id := range f.cells {
		if seen[id] || f.cells[id].kind == edgeNone {
			continue
		}
		var ring []int32
		for at := int32(id); !seen[at]; at = f.cells[at].next {
			seen[at] = true
			if f.cells[at].kind != edgeCorner {
				ring = append(ring, at)
			}
		}
		if len(ring) > 0 {
			all = append(all, Edge{f, ring})
		}
	}
	return all
}

// Selvedge returns the edge on one hand that the rows from first to last have made,
// what they bound off or cast on at that end included; where they made several, the
// one that was begun first.
func (f *Fabric) Selvedge(h Hand, first, last int) Edge {
	wanted := func(id int32) bool {
		c := &f.cells[id]
		bare := c.kind == EdgeRow || c.kind == EdgeBoundOff || c.kind == EdgeCastOn
		return bare && c.hand == h && int(c.row) >= first && int(c.row) <= last
	}
	var start int32
	for id := range f.cells {
		if c := &f.cells[id]; wanted(int32(id)) && (start == 0 || c.row < f.cells[start].row) {
			start = int32(id)
		}
	}
	if start == 0 {
		return Edge{f, nil}
	}
	back := []int32{start}
	for at := f.cells[start].prev; at != start && wanted(at); at = f.cells[at].prev {
		back = append(back, at)
	}
	slices.Reverse(back)
	for at := f.cells[start].next; at != back[0] && wanted(at); at = f.cells[at].next {
		back = append(back, at)
	}
	return Edge{f, back}
}

// LengthCm measures the edge along its steps, for stitches and rows of the given
// sizes in cm. Stitches bound off or cast on, and live ones, lie flat. From one row in
// which the edge moves to the next it is one stroke, as the selvedge of a slope is one
// line and no stair; where it moves no more it rises straight.
func (e Edge) LengthCm(stitchCm, rowCm float64) float64 {
	length := 0.0
	parts := e.Parts()
	for i := 0; i < len(parts); {
		if parts[i].Kind != EdgeRow {
			length += stitchCm
			i++
			continue
		}
		j := i + 1
		for j < len(parts) && parts[j].Kind == EdgeRow && parts[j].Hand == parts[i].Hand {
			j++
		}
		length += slopeCm(parts[i:j], stitchCm, rowCm)
		i = j
	}
	return length
}

// slopeCm measures the sides of rows that follow one another, from the lowest up.
func slopeCm(rows []EdgePart, stitchCm, rowCm float64) float64 {
	if rows[0].Row > rows[len(rows)-1].Row {
		rows = slices.Clone(rows)
		slices.Reverse(rows)
	}
	length, up := 0.0, 0
	for _, r := range rows {
		up += r.Up
		if r.Across != 0 {
			length += math.Hypot(float64(r.Across)/2*stitchCm, float64(up)*rowCm)
			up = 0
		}
	}
	return length + float64(up)*rowCm
}

// LayEdge lays an edge of the fabric that the machine remembers beyond the last stitch
// of the next row, or before empty needles, to be picked up along: each of its parts
// waits where a stitch would, and counts as one until it is passed.
func (m *Machine) LayEdge(e Edge) error {
	switch {
	case len(e.cells) == 0 || m.fabric == nil || e.fabric != m.fabric, m.ShortRowOpen():
		return m.refuse(PickUp, ReasonNotPossible)
	case len(m.left)+len(e.cells) > MaxStitches:
		return m.refuse(PickUp, ReasonTooLarge)
	}
	row := make(needle, len(e.cells))
	for i, id := range e.cells {
		if k := m.fabric.cells[id].kind; k != EdgeRow && k != EdgeBoundOff && k != EdgeCastOn {
			return m.refuse(PickUp, ReasonNotEdge)
		}
		row[i] = loop{kind: edgeRow, id: id}
	}
	if m.StitchCount() == 0 {
		m.begin(RightSide)
		m.fabric.yarn = 0
	}
	if m.side == WrongSide {
		slices.Reverse(row)
	}
	m.lay(row)
	return nil
}
