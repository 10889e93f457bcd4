package curve

import "math"

// near are the places that a plan of a course may come by, and how far each lies off: it is
// asked for many times in a search, and worked out once.
type near struct {
	within int64 // no farther off than that
	rows   []nearRow
	offs   []int64
}

// A nearRow is which numbers of stitches are near after a row, and where their departures
// stand in the list.
type nearRow struct{ from, to, at int }

// far is farther off than any plan lies.
const far = math.MaxInt64

// fill works out the places no farther off than that. From row to row both ends only move on.
func (n *near) fill(c *Course, within int64) {
	n.within, n.rows, n.offs = within, ofLength(n.rows, c.Rows+1), n.offs[:0]
	from, to := 0, 0
	for row := range n.rows {
		for from < c.Stitches && c.across[row].from > int64(from)*1e6 && c.off(from, row) > within {
			from++
		}
		to = max(to, from)
		for to < c.Stitches && (c.across[row].to >= int64(to+1)*1e6 || c.off(to+1, row) <= within) {
			to++
		}
		n.rows[row] = nearRow{from, to, len(n.offs)}
		for stitches := from; stitches <= to; stitches++ {
			n.offs = append(n.offs, c.off(stitches, row))
		}
	}
}

// off is how far a place lies from the course, as [Course.off] has it.
func (n *near) off(stitches, row int) int64 {
	r := &n.rows[row]
	if stitches < r.from || stitches > r.to {
		return far
	}
	return n.offs[r.at+stitches-r.from]
}
