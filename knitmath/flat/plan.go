package flat

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// PlanFlatShape plans a shape that lies flat. A stitch is 1/st wide and a row 1/rw high; a
// row at the distance r from the centre, measured at its middle, holds
//
//	turn * r * st           a disc, a ring, a sector: turn = 2 pi for the whole
//	2 n tan(pi/n) * r * st  a polygon of n sides, r to the middle of a side
//	2 * r * st              a mitred square, r from its corner
//	4 * r * st              a triangle from the top, r from the middle of its long side
//	width * r / height      another triangle, r from its tip; see settleTriangle
//
// so that with R = rw/st rows to the stitch every row wants turn/R stitches more than the
// one before it, whatever the size. They are gained some at a time, in the rows that are
// least to remember among those that lie near enough to where they should.
//
// Lengths go to the nearest row, half-way up. At most MaxChanges rows change the count.
//
// Source: own derivation; the circumference of a circle, and elementary geometry.
func PlanFlatShape(in Input) (Shape, error) {
	out, err := planFlatShape(in)
	if err != nil {
		err = in.advised(err)
	}
	return out, err
}

func planFlatShape(in Input) (Shape, error) {
	var c fault.Checks
	st, rw := vet(&c, in)
	if err := c.Err(); err != nil {
		return Shape{}, err
	}
	var out Shape
	switch {
	case in.Arrangement == ArrangementShortRows:
		out = ofShortRows(&c, in)
	case in.Form == FormStar:
		out = star(&c, in, st, rw)
	case in.Form == FormBiasStrip:
		out = strip(&c, in, st, rw)
	default:
		p := settle(&c, in, st, rw)
		if c.Err() != nil {
			return Shape{}, c.Err()
		}
		out = p.plan(&c)
	}
	if err := c.Err(); err != nil {
		return Shape{}, err
	}
	if in.WithOutline && out.circle == nil {
		out.Outline = out.outline()
	}
	return out, nil
}

// plan writes a piece that grows from its centre, or comes in to it.
func (p *piece) plan(c *fault.Checks) Shape {
	changes := p.changes()
	end := p.start
	if n := len(changes); n > 0 {
		end = changes[n-1].to
	}
	if len(changes) > MaxChanges || end > stitch.MaxStitches {
		c.Infeasible("the piece would have "+report.CountOf(len(changes), "rows")+" that change the count and "+
			report.CountOf(end, "stitches")+"; there may be at most "+measure.Decimal(MaxChanges, 0)+" and "+
			measure.Decimal(stitch.MaxStitches, 0), p.sizeField)
		return Shape{}
	}
	if len(changes) == 0 && p.cornered() {
		c.Infeasible("with so few rows no stitch is gained", p.sizeField)
		return Shape{}
	}
	out := Shape{Construction: stitch.Flat, StartStitches: p.start, EndStitches: end, TotalRows: p.rows, GrowthStitches: p.grows,
		WedgeCount: p.wedges, WantedRimStitches: p.base + p.grows*float64(p.rows), of: *p}
	if p.round {
		out.Construction = stitch.InTheRound
	}
	out.Rows = p.writeRows(changes)
	if p.inwards {
		out.StartStitches, out.EndStitches = out.EndStitches, out.StartStitches
	}
	rows := make([]int, len(out.Rows))
	for i, r := range out.Rows {
		rows[i] = r.RowNumber
	}
	out.Effort = schedule.RunsInTurn(rows).Effort()
	out.WidthCm, out.HeightCm = p.size(end)
	off := p.departures(changes)
	out.GreatestDepartureStitches = off.greatest
	out.Recipes = p.compared(p.recipes(), end)
	out.Notices = p.notices(off)
	return out
}

// changes are the rows that change the count, from the centre.
func (p *piece) changes() []change {
	if p.in.Arrangement == ArrangementDoubling {
		return p.doubles()
	}
	changes := p.climb()
	if p.in.ToleranceRows != nil || p.departures(changes).flat() {
		return changes
	}
	// Rows that are easy to remember are no good where the piece would not lie flat.
	for _, nearer := range nearerTolerances {
		exact := *p
		exact.in.ToleranceRows = &nearer
		if closer := exact.climb(); exact.departures(closer).flat() {
			return closer
		}
	}
	return changes
}

// nearerTolerances are what is tried where the default tolerance leaves a piece that cups
// or ruffles. Own choice.
var nearerTolerances = [...]float64{3, 2, 1, 0.5, 0}

// writeRows writes the changes in working order. A piece that is worked inwards has its
// last row first: the row below which the count changes is then the row after it.
func (p *piece) writeRows(changes []change) []Row {
	rows := make([]Row, 0, len(changes))
	for i := range changes {
		ch, number := changes[i], p.number(changes[i].row)
		if p.inwards {
			ch = changes[len(changes)-1-i]
			number = p.number(ch.row)
			ch = change{ch.row - 1, ch.to, ch.from}
		}
		wanted := p.wants(ch.row)
		rows = append(rows, Row{RowNumber: number, Side: p.side(number), WantedStitches: wanted,
			DepartureStitches: float64(ch.to) - wanted, Instruction: p.written(ch.from, ch.to, i, p.side(number))})
	}
	return rows
}

// departed is how far the counts lie from what lies flat.
type departed struct {
	greatest     float64 // stitches, once a row wants as many as the centre begins with
	fewest, most far
}

// flat reports whether no row does.
func (d departed) flat() bool { return d.fewest.row == 0 && d.most.row == 0 }

// far is a row that has too few or too many stitches by more than blocking takes out.
type far struct {
	row, count int
	percent    float64
}

// blockedOut is the part of its stitches that a row may have too many or too few of and
// still be blocked flat, in percent: a yoke's steepness of 1.15. Common practice.
const blockedOut = 15.0

// departures looks at every row. Near the centre, where there are few stitches, a part of
// them says little; a ring may begin with many.
func (p *piece) departures(changes []change) departed {
	var d departed
	count, next, few := p.start, 0, 3*float64(p.start)
	if p.form == FormRing {
		few = 3 * float64(p.wedges)
	}
	for row := 1; row <= p.rows; row++ {
		if next < len(changes) && changes[next].row == row {
			count = changes[next].to
			next++
		}
		wanted := p.wants(row)
		off := float64(count) - wanted
		if wanted >= float64(p.start) {
			d.greatest = max(d.greatest, math.Abs(off))
		}
		if percent := 100 * off / wanted; wanted >= few && math.Abs(off) > p.unseen() {
			if percent < min(-blockedOut, d.fewest.percent) {
				d.fewest = far{row, count, percent}
			}
			if percent > max(blockedOut, d.most.percent) {
				d.most = far{row, count, percent}
			}
		}
	}
	return d
}

// tipRows is by how many rows the tip of a piece in rows may come early or late, or a fiftieth of them: it is blocked out. Own choice.
const tipRows = 3

// unseen is how many stitches more or fewer are not seen where a row has few: a step, or at a tip what some rows gain.
func (p *piece) unseen() float64 {
	if p.edged() { // what its rows have more or fewer lies at its edges
		return math.Inf(1)
	}
	if p.round {
		return float64(p.step)
	}
	return max(float64(p.step), max(tipRows, defaultTolerancePart*float64(p.rows))*p.grows)
}

// size is how wide and high the piece lies.
func (p *piece) size(rim int) (width, height float64) {
	r := p.rw.SizeCm(p.rows)
	switch p.form {
	case FormRing:
		r += p.st.SizeCm(p.start) / 2 / math.Pi
	case FormSector:
		half := fault.Or(p.in.TurnDegrees, halfTurn) / 360 * math.Pi
		return 2 * r * math.Sin(min(half, math.Pi/2)), r * (1 - min(math.Cos(half), 0))
	case FormPolygon:
		return polygonSize(p.wedges, r)
	case FormMitredSquare:
		return p.st.SizeCm(rim) / 2, r // either side has half of the centre stitch
	case FormTriangleFromPoint, FormTriangleFromSide:
		return p.st.SizeCm(rim), r
	case FormTriangleFromTop:
		return 2 * math.Sqrt2 * r, math.Sqrt2 * r
	}
	return 2 * r, 2 * r
}

// polygonSize is the width and height of a polygon that stands on a side, of so much from
// its centre to the middle of a side.
func polygonSize(n int, apothem float64) (width, height float64) {
	corner := apothem / math.Cos(math.Pi/float64(n))
	switch {
	case n%4 == 0:
		return 2 * apothem, 2 * apothem
	case n%2 == 0:
		return 2 * corner, 2 * apothem
	}
	return 2 * corner * math.Cos(math.Pi/float64(2*n)), apothem + corner
}
