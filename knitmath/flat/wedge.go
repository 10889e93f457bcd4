package flat

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The wedges that are looked at where none are asked for: with fewer a disc has corners,
// with more a row has many changes. Own choice.
const fewestWedges, mostWedges = 6, 14

// seldom is how many rows may lie between two changes at most, where there is a choice.
const seldom = 4.5

// everyRows is how many rows lie between two that change, with so many wedges.
func (p *piece) everyRows(wedges int) float64 { return float64(wedges) / p.grows }

// uneasy is how far the rows between two changes are from an even number, in parts of
// them: every second round is what the trade likes best.
func (p *piece) uneasy(wedges int) float64 {
	every := p.everyRows(wedges)
	even := 2 * max(float64(measure.RoundHalfUp(every/2)), 1)
	return math.Abs(every-even) / every
}

// atOnce is the most often that a piece may change: every round, or every second row.
func (p *piece) atOnce() float64 {
	if p.round {
		return 1
	}
	return 2
}

// fitsStart reports whether the stitches at the beginning divide into wedges.
func (p *piece) fitsStart(wedges int) bool {
	switch {
	case p.form == FormRing:
		n := p.base / float64(wedges)
		off := math.Abs(n - float64(max(measure.RoundHalfUp(n), 1)))
		return off*float64(wedges) <= max(p.base*ringPart, 1)
	case p.in.StartStitches == nil:
		return true
	case p.form == FormSector:
		return *p.in.StartStitches > wedges
	}
	return *p.in.StartStitches%wedges == 0
}

// ringPart is how far the inner edge of a ring may lie from its length, as a part of it,
// so that its stitches divide: less than anybody sees. Own choice.
const ringPart = 0.03

// chooseWedges settles how many wedges there are: those asked for, or those for which the
// changes fall most nearly on every second row, or every fourth.
func (p *piece) chooseWedges(c *fault.Checks) bool {
	least := max(measure.CeilQuotient(p.grows*p.atOnce(), 1), MinWedges)
	if least > MaxWedges {
		c.Infeasible("at this gauge a row must gain "+measure.Decimal(p.grows, 2)+" stitches to lie flat, more than any row here",
			"gauge.rows", p.sizeField)
		return false
	}
	best, found := p.easiestWedges(least)
	asked := p.in.WedgeCount
	switch {
	case asked == nil && !found && p.form == FormRing:
		c.Infeasible("round the hole there would be "+report.AmountOf(measure.Decimal(p.base, 1), "stitches")+
			", too few for wedges", "hole_cm")
	case asked == nil && !found:
		c.Infeasible("these stitches do not divide into wedges; leave start_stitches out", "start_stitches")
	case asked == nil:
		p.wedges = best
	case *asked < least:
		c.Infeasible("at this gauge a row must gain "+measure.Decimal(p.grows, 2)+" stitches to lie flat, which so few wedges do not",
			"wedge_count", "gauge.rows")
	case p.form != FormRing && !p.fitsStart(*asked):
		c.Infeasible("the stitches at the beginning do not divide into so many wedges", "start_stitches", "wedge_count")
	default:
		p.wedges = *asked
	}
	return c.Err() == nil
}

// easiestWedges is how many wedges, least or more, change most nearly on every second row or
// every fourth; false if the stitches at the beginning divide into none.
func (p *piece) easiestWedges(least int) (best int, found bool) {
	fewest := fewestWedges
	if p.form == FormSector { // as many of them as the sector is a part of a disc
		fewest = max(int(fewestWedges*fault.Or(p.in.TurnDegrees, halfTurn)/360), MinWedges)
	}
	for n := max(least, fewest); n <= max(least, mostWedges); n++ {
		if p.everyRows(n) > seldom && found {
			break
		}
		if p.fitsStart(n) && (!found || p.uneasy(n) < p.uneasy(best)-1e-9) {
			best, found = n, true
		}
	}
	for n := least; n <= MaxWedges && !found; n++ {
		best, found = n, p.fitsStart(n)
	}
	return best, found
}

// tolerance is how many rows a plan that is easier to remember may lie further from the
// ideal than it must.
func (p *piece) tolerance() float64 {
	usual := max(defaultTolerance, defaultTolerancePart*float64(p.rows))
	if p.edged() {
		usual = max(usual, min(2/p.grows, smallPart*float64(p.rows)))
	}
	if p.form == FormRing { // at its hole rows are as short as the hole, however many there are
		usual = min(usual, max(defaultTolerance, smallPart*p.base/p.grows))
	}
	return fault.Or(p.in.ToleranceRows, usual)
}

// A row more or less is not seen, and of a large piece a fiftieth of its rows; of a triangle, whose edges are straight lines,
// a stitch at each, but where that is more than a part of its rows. Own choice.
const (
	smallPart            = 0.05
	defaultTolerance     = 1.0
	defaultTolerancePart = 0.02
)

// mostTolerance is how many times its default the tolerance may be where nothing within that is easy to remember. Own choice.
const mostTolerance = 2
