package flat

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// piece is a question as it is settled: how many stitches lie flat in each row, and by
// which counts the work comes near to that.
type piece struct {
	in     Input
	form   Form
	st, rw gauge.Density
	ratio  float64 // rows to stitches of one length

	round  bool
	rows   int
	grows  float64 // stitches that a row more wants
	base   float64 // what a row at the centre wants, 0 but for a ring
	start  int     // stitches that the centre begins with
	opens  []int   // counts that come first and do not go by steps
	step   int     // stitches that a row gains
	wedges int

	before, after int  // stitches beside the wedges of a flat piece
	anyRow        bool // wrong-side rows gain too
	inwards       bool
	sizeField     string

	tip, valley float64 // of a star, from its centre, in cm
}

// wants is how many stitches lie flat in a row, from its middle, counted from the centre.
func (p *piece) wants(row int) float64 { return p.base + p.grows*(float64(row)-0.5) }

// rowsOf is a length in rows, nearest, half-way up.
func (p *piece) rowsOf(cm float64) int { return p.rw.Nearest(measure.Micrometres(cm)) }

// stitchesOf is the same in stitches.
func (p *piece) stitchesOf(cm float64) int { return p.st.Nearest(measure.Micrometres(cm)) }

// settle settles the rows and how they grow, by the form.
func settle(c *fault.Checks, in Input, st, rw gauge.Density) piece {
	p := piece{in: in, form: in.Form, st: st, rw: rw, ratio: rw.PerCm() / st.PerCm(), inwards: in.Direction == DirectionInwards}
	switch in.Form {
	case FormDisc, FormRing, FormSector:
		p.settleRound(c)
	case FormPolygon:
		p.settlePolygon(c)
	case FormTriangleFromPoint, FormTriangleFromSide:
		p.settleTriangle(c)
	default:
		p.settleCorner(c)
	}
	if c.Err() == nil && (p.rows < 2 || p.rows > MaxRows) {
		c.Infeasible("from the centre to the edge there would be "+countRows(p.rows, p.round)+"; there must be from 2 to "+
			measure.Decimal(MaxRows, 0), p.sizeField, "gauge.rows")
	}
	return p
}

// settleRound settles a disc, a ring or a sector: the rim is a part of 2 pi times the
// radius, so that every row wants so many more, whatever the size.
func (p *piece) settleRound(c *fault.Checks) {
	in := p.in
	p.round, p.sizeField = in.Form != FormSector, "across_cm"
	turn := 2 * math.Pi
	if in.Form == FormSector {
		turn *= fault.Or(in.TurnDegrees, halfTurn) / 360
	}
	p.grows = turn / p.ratio
	p.rows = p.rowsOf(*in.AcrossCm / 2)
	if in.Form == FormRing {
		if *in.HoleCm >= *in.AcrossCm {
			c.Infeasible("so wide a hole leaves no ring", "hole_cm", "across_cm")
			return
		}
		p.rows = p.rowsOf((*in.AcrossCm - *in.HoleCm) / 2)
		p.base = math.Pi * *in.HoleCm * p.st.PerCm()
	}
	if in.Arrangement == ArrangementDoubling {
		p.start = fault.Or(in.StartStitches, doublingStart)
		return
	}
	if !p.chooseWedges(c) {
		return
	}
	p.step = p.wedges
	switch {
	case in.Form == FormRing:
		p.start = p.wedges * int(max(measure.RoundHalfUp(p.base/float64(p.wedges)), 1))
	case in.Form == FormSector:
		p.start = fault.Or(in.StartStitches, p.wedges+1)
		beside := (p.start-1)%p.wedges + 1
		p.before, p.after = (beside-1)/2, beside-(beside-1)/2
	default:
		p.start = fault.Or(in.StartStitches, p.wedges)
	}
}

const (
	halfTurn = 180.0
	// doublingStart is what shawls by doubling mostly begin with. Common practice.
	doublingStart = 8
)

// settlePolygon settles a polygon in rounds: each of its n sides is 2 tan(pi/n) of its
// distance from the centre.
func (p *piece) settlePolygon(c *fault.Checks) {
	n := *p.in.CornerCount
	tangent := math.Tan(math.Pi / float64(n))
	p.round, p.sizeField, p.wedges = true, "side_cm", n
	p.grows = 2 * float64(n) * tangent / p.ratio
	p.rows = int(measure.RoundHalfUp(*p.in.SideCm / 2 / tangent * p.rw.PerCm()))
	p.step, p.start = 2*n, n
	if n > 4 {
		p.opens = append(p.opens, 2*n) // a stitch beside every corner
	} else {
		p.start = 2 * n
	}
	if p.grows > float64(p.step)*(1+slack) { // each corner gains two at both of its sides, once there are three between
		p.step = 4 * n
		p.opens = append(p.opens, 4*n)
	}
	p.vetStep(c)
}

// settleCorner settles what grows from a corner or along a spine: a mitred square has two
// sides of one row, a triangle from the top two halves that lie over a quarter turn each.
func (p *piece) settleCorner(c *fault.Checks) {
	switch p.form {
	case FormMitredSquare:
		p.sizeField, p.grows, p.step, p.start = "side_cm", 2/p.ratio, 2, 3
		if p.inwards { // the last row makes one stitch of the last three
			p.start, p.opens = 1, []int{3}
		}
		p.rows = p.rowsOf(*p.in.SideCm)
	case FormTriangleFromTop:
		p.sizeField, p.grows, p.step, p.start = "width_cm", 4/p.ratio, 4, 5
		p.rows = int(measure.RoundHalfUp(*p.in.WidthCm / 2 / math.Sqrt2 * p.rw.PerCm()))
	}
	p.anyRow = float64(p.step)/(2*p.grows) < 1-liesFlat/100-slack // by as much the rule leaves the rim too short
	p.vetStep(c)
}

// slack is what the last bits of a float may make of a gauge of exactly two rows to a stitch.
const slack = 1e-9

// vetStep refuses a gauge at which a row would have to gain more than it can.
func (p *piece) vetStep(c *fault.Checks) {
	if p.grows > float64(p.step)*(1+slack) {
		c.Infeasible("at this gauge a row must gain "+measure.Decimal(p.grows, 2)+" stitches to lie flat and can gain "+
			measure.Decimal(float64(p.step), 0)+"; a stitch pattern with more rows to the cm would do", "gauge.rows", "form")
	}
}

// shapes reports whether a row, counted from the centre, may change the count: all rounds, and of rows those
// that are worked on the right side unless others are needed.
func (p *piece) shapes(row int) bool {
	return p.round || p.anyRow || p.side(p.number(row)) == stitch.RightSide
}

// number is the number, as worked, of the row in which the count changes that changes in this row from the centre.
// Worked inwards, that is the row after it.
func (p *piece) number(row int) int {
	if p.inwards {
		return p.rows + 2 - row
	}
	return row
}

// side is the side of a row of a flat piece.
func (p *piece) side(row int) stitch.Side {
	switch {
	case p.round:
		return stitch.SideUnspecified
	case row%2 == 1:
		return stitch.RightSide
	}
	return stitch.WrongSide
}
