package curve

import (
	"math"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// A Course is a stretch of a curve on which the edge only moves in, or only out, in
// stitches and rows: how many stitches it wants lost or gained at every height, and at
// which height every stitch. All are whole millionths, so that plans are compared
// exactly.
type Course struct {
	// RowsBefore is how many rows lie below the stretch, StitchesBefore how far in the
	// edge lies there.
	RowsBefore, StitchesBefore int
	// Rows and Stitches are how many rows it has, and stitches that are lost in them or
	// gained, all at the gauge and to the nearest whole one, halves up.
	Rows, Stitches int
	// Gains tells that the edge moves out.
	Gains bool

	straight bool

	across, up []span // at each height from 0 to Rows, of each stitch from 0 to Stitches
	perRow     float64
}

// leastPerRow is the fewest stitches that a row counts as. Brioche, the flattest of rows,
// has about two to a stitch; where there are four and more, that many rows off would be
// as near as one stitch.
const leastPerRow = 0.25

// A span is where the curve crosses a line: from and to are the same but where it runs
// along that line.
type span struct{ from, to int64 }

// off is how far a place lies from the span.
func (s span) off(at int64) int64 { return max(s.from-at, at-s.to, 0) }

// Courses are the stretches of a path at a gauge, from below. Where the edge turns a
// new one begins; a stretch that is upright belongs to the one before.
func (p Path) Courses(st, rw gauge.Density) []Course {
	scale := Point{st.PerCm() * 1e6, rw.PerCm() * 1e6}
	scaled := make([]piece, len(p.pieces))
	courses := make([]Course, 0, 1)
	from, way := 0, 0.0 // 1 in, -1 out, 0 if it is upright so far
	end := func(to int) {
		c := courseOf(scaled[from:to])
		c.perRow = max(scale.X/scale.Y, leastPerRow)
		courses, from, way = append(courses, c), to, 0
	}
	for i, x := range p.pieces {
		scaled[i] = x.scaled(scale)
		goes := scaled[i].to.X - scaled[i].from.X
		if goes*way < 0 {
			end(i)
		}
		if goes != 0 {
			way = math.Copysign(1, goes)
		}
	}
	if len(scaled) > from {
		end(len(scaled))
	}
	return courses
}

// scaled is the piece in millionths of stitches and rows. Its ends are whole ones, so
// that pieces meet, and lines that run along a row are found there.
func (p piece) scaled(by Point) piece {
	whole := func(a Point) Point {
		return Point{float64(measure.NearestInt(a.X * by.X)), float64(measure.NearestInt(a.Y * by.Y))}
	}
	return piece{whole(p.from), whole(p.to), Point{p.centre.X * by.X, p.centre.Y * by.Y}, Point{p.axes.X * by.X, p.axes.Y * by.Y}}
}

// courseOf works out what pieces that all go in, or all out, want of every row.
func courseOf(pieces []piece) Course {
	first, last := pieces[0].from, pieces[len(pieces)-1].to
	in := func(x float64) int { return int(measure.RoundHalfUp(x / 1e6)) }
	c := Course{RowsBefore: in(first.Y), StitchesBefore: in(first.X), Gains: last.X < first.X, straight: straight(pieces)}
	c.Rows, c.Stitches = in(last.Y)-c.RowsBefore, measure.Abs(in(last.X)-c.StitchesBefore)
	base := Point{float64(c.StitchesBefore) * 1e6, float64(c.RowsBefore) * 1e6}
	sign := 1.0
	if c.Gains {
		sign = -1
	}
	turned := make([]piece, len(pieces))
	for i, x := range pieces {
		move := func(a Point) Point { return Point{sign * (a.X - base.X), a.Y - base.Y} }
		pieces[i] = piece{move(x.from), move(x.to), move(x.centre), x.axes}
		turned[i] = pieces[i].turned()
	}
	c.across, c.up = spans(pieces, c.Rows), spans(turned, c.Stitches)
	return c
}

// straight reports whether pieces are one line, but for what goes straight up.
func straight(pieces []piece) bool {
	lines := 0
	for _, x := range pieces {
		if x.axes.X != 0 {
			return false
		}
		if x.from.X != x.to.X {
			lines++
		}
	}
	return lines == 1
}

// spans are where pieces cross the lines at 0, 1 and so on to a number. Beyond their
// ends they are taken to go straight on.
func spans(pieces []piece, to int) []span {
	all := make([]span, to+1)
	low, high := 0, 0 // the first piece that reaches the line, and the last that begins at it
	for i := range all {
		at := float64(i) * 1e6
		for low+1 < len(pieces) && pieces[low].to.Y < at {
			low++
		}
		for high+1 < len(pieces) && pieces[high+1].from.Y <= at {
			high++
		}
		from, end := pieces[low].across(at)
		if high > low {
			_, end = pieces[high].across(at)
		}
		all[i] = span{measure.NearestInt(from), measure.NearestInt(end)}
	}
	return all
}

// off is how far a corner of the edge as knit lies from the curve, in millionths of a
// stitch: so many stitches lost at a height of so many rows. It is measured across the
// row and up the piece, and the less of the two counts.
func (c *Course) off(stitches, row int) int64 {
	across := c.across[row].off(int64(stitches) * 1e6)
	if across == 0 {
		return 0
	}
	up := c.up[stitches].off(int64(row) * 1e6)
	return min(across, int64(float64(up)*c.perRow))
}
