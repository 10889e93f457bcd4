package flat

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

const (
	// leastWide is the least side of a triangle: more than any point.
	leastWide = 7
	// mostWide is how wide MaxChanges rows can make a triangle.
	mostWide = 5 + 4*MaxChanges
	// pointStitches are those that a point is cast on with, and those of which the last row makes one. Common practice.
	pointStitches = 3
)

// settleTriangle settles a triangle from a point to a side, or back: from a stitch in the row at its tip to the whole width in the
// row at its side,
//
//	1 + (width - 1) * (row - 1) / (rows - 1)
//
// The rows that change it are right-side rows if that is enough, or else all, or else all with two stitches at each edge.
func (p *piece) settleTriangle(c *fault.Checks) {
	p.sizeField, p.inwards = "width_cm", p.form == FormTriangleFromSide
	wide := p.oddNear(*p.in.WidthCm)
	if wide < leastWide {
		c.Infeasible("the long side would have "+report.CountOf(wide, "stitches")+"; it must have at least "+
			report.CountOf(leastWide, "stitches"), "width_cm")
		return
	}
	p.rows = p.rowsOf(*p.in.HeightCm)
	if p.rows < 2 || p.rows > MaxRows || wide > mostWide {
		c.Infeasible("the triangle would have "+report.CountOf(p.rows, "rows")+" and "+report.CountOf(wide, "stitches")+
			"; it must have from 2 to 4000 rows and at most 2005 stitches", "width_cm", "height_cm")
		return
	}
	p.grows = float64(wide-1) / float64(p.rows-1)
	p.base = 1 - p.grows/2
	for _, way := range [...]struct {
		step   int
		anyRow bool
	}{{2, false}, {2, true}, {4, true}} {
		p.step, p.anyRow = way.step, way.anyRow
		p.beginAtPoint(wide)
		changes := p.climb()
		if n := len(changes); n > 0 && n <= MaxChanges && changes[n-1].to == wide {
			return
		}
	}
	c.Infeasible("the sides lie too flat for rows that gain or lose two stitches at each edge", "width_cm", "height_cm")
}

// oddNear is the odd number of stitches nearest to a width, half-way up: both edges gain alike from an odd point.
func (p *piece) oddNear(cm float64) int {
	n := p.stitchesOf(cm)
	switch {
	case n%2 != 0:
		return n
	case p.st.SizeCm(n) > cm:
		return n - 1
	}
	return n + 1
}

// beginAtPoint settles the counts from the tip on, until all that is left to the width are whole steps.
func (p *piece) beginAtPoint(wide int) {
	p.start, p.opens = pointStitches, nil
	switch {
	case p.inwards: // the last rows decrease without edge stitches
		p.start, p.opens = 1, []int{pointStitches, pointStitches + 2}
	case p.step > 2: // two increases at each edge need two stitches there, and one between
		p.opens = []int{pointStitches + 2}
	}
	if p.step > 2 && (wide-pointStitches-2)%p.step != 0 {
		p.opens = append(p.opens, pointStitches+4)
	}
}

// steep says that wrong-side rows change the count of a triangle too, and how high it would be without: every second row of
// those after the cast-on gains two stitches, and the last of a triangle that comes to a point takes the last two.
func (p *piece) steep() report.Notice {
	rows := int(measure.RoundHalfUp(p.wants(p.rows))) - pointStitches + 1
	if p.inwards {
		rows++
	}
	return report.Notice{Reason: ShapedOnBothSides, Field: "height_cm",
		Description: "the sides lie so flat that wrong-side rows change the count too; from about " +
			p.in.DisplayUnit.Size(p.rw.SizeCm(rows)) + " high right-side rows are enough"}
}

// edgeRow is a row of a triangle, which gains or loses as many stitches beside both edge stitches. What is left at
// the tip has no edge stitches.
func edgeRow(from, to int, side stitch.Side) []stitch.Step {
	if from == pointStitches && to == 1 {
		if side == stitch.WrongSide {
			return row{stitch.Do(stitch.P3tog, 1)}
		}
		return row{stitch.Do(stitch.CDD, 1)}
	}
	change, plain := (to-from)/2, side.Plain()
	first, last := stitch.Shaped(side, false, change), stitch.Shaped(side, true, change)
	if to < from && from == pointStitches+2 {
		return slices.Concat(first, row{stitch.Do(plain, 1)}, last)
	}
	left := 1
	for _, s := range last {
		left += s.Count * s.Op.Takes()
	}
	return slices.Concat(row{stitch.Do(plain, 1)}, first, row{stitch.ToLast(plain, left)}, last, row{stitch.Do(plain, 1)})
}
