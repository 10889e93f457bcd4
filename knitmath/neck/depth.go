package neck

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// How deep a neck is where nobody says: half as deep in front as it is wide, deeper if the
// head wants it, up to 0.85, and 0.15 of that behind, at most as deep as published ones, which
// are 5 to 7.5 cm and 1.3 to 3.8 cm for necks of some 10 to 25 cm. Own choice. Between the straps of
// saddles it is less by half a strap in front, and straight behind.
const (
	frontShare, frontMostCm = 0.5, 7.5
	mostOfWidth             = 0.85
	backShare, backMostCm   = 0.15, 3.8
	// headSpare is how much longer an edge is planned than a head wants, for what steps and
	// whole stitches take. Tried out on ordinary necks.
	headSpare = 1.02
	// rowsOfSlant: a V loses a stitch at each edge every 4th row. Where rows are so high that it
	// would reach below vMostCm it loses some of them faster, though none oftener than every
	// fastSlant rows. Common practice: a V ends above the fullest part of the chest.
	rowsOfSlant, fastSlant = 4, 2
	vMostCm                = 23.0
	// leastOfDefault is the shallowest front that is taken if nobody says, in rows: with fewer a
	// round edge has none to be shaped in.
	leastOfDefault = 2 * evenAbove
)

// leastDepth is the shallowest neck: where short rows slope the shoulders the row that
// divides and the one that closes the last gap lie above its foot.
func (p setting) leastDepth() int {
	if p.shortRows {
		return 2
	}
	return 0
}

// A foot is how many rows deep the neck of a piece is, and the field that says so.
type foot struct {
	depth      int
	depthField string
	given      bool
	known      bool // nothing is wrong with it
}

// frontFoot settles the depth of the front, of which so many stitches slant at each edge.
func (p setting) frontFoot(c *fault.Checks, slants int) foot {
	f := p.givenDepth(c, p.in.FrontDepthRows, p.in.FrontDepthCm, "front")
	if f.known = f.known || !f.given && p.edged; f.known && !f.given {
		f.depth = p.frontDepth(slants)
	}
	return f
}

// backFoot settles the depth of the back.
func (p setting) backFoot(c *fault.Checks) foot {
	f := p.givenDepth(c, p.in.BackDepthRows, p.in.BackDepthCm, "back")
	if f.known = f.known || !f.given && p.edged; f.known && !f.given {
		f.depth = p.backDepth()
	}
	return f
}

// frontDepth is the depth of a front that nobody says.
func (p setting) frontDepth(slants int) int {
	switch p.in.Shape {
	case ShapeBoat:
		return p.leastDepth()
	case ShapeV:
		most := max(p.depthWithin(vMostCm-p.strapCm()/2), fastSlant*slants+evenAbove)
		return min(rowsOfSlant*slants+evenAbove, most, MaxDepthRows)
	}
	most := min(frontMostCm, mostOfWidth*p.st.SizeCm(p.neck)) - p.strapCm()/2
	wanted := p.usualDepth(min(frontShare*p.st.SizeCm(p.neck), frontMostCm) - p.strapCm()/2)
	forHead := 2 * measure.CeilQuotient(p.headDepthCm(most)*p.rw.PerCm(), 2)
	return max(min(max(wanted, forHead), p.depthWithin(most)), leastOfDefault)
}

// headDepthCm is about how deep a front lets the head through, 0 where nobody's has to: the
// girth of the band that is wanted less the back's edge and the straps is that of a half
// ellipse, or of the three sides of a square; at most so deep. A little more, since steps and
// whole stitches are shorter.
func (p setting) headDepthCm(most float64) float64 {
	head := p.in.head(p.st.SizeCm(p.width))
	if head == nil {
		return 0
	}
	across := p.st.SizeCm(p.neck)
	edge := func(depth float64) float64 {
		if p.in.Shape == ShapeSquare {
			return across + 2*depth
		}
		a, b := across/2, depth
		return math.Pi / 2 * (3*(a+b) - math.Sqrt((3*a+b)*(a+3*b))) // Ramanujan's
	}
	wanted := headSpare**head/fault.Or(p.in.StretchRatio, usualStretch) - p.behindCm(edge)
	low, high := 0.0, max(0, most)
	for range 12 {
		if half := (low + high) / 2; edge(half) < wanted {
			low = half
		} else {
			high = half
		}
	}
	return high
}

// backDepth is the depth of a back that nobody says.
func (p setting) backDepth() int {
	if p.in.Shape == ShapeBoat {
		return p.leastDepth()
	}
	if p.in.strap() > 0 {
		return 0
	}
	return min(p.usualDepth(backShare*p.st.SizeCm(p.neck)), p.depthWithin(backMostCm))
}

// behindCm is about how long the edge of the back is, with the straps beside it.
func (p setting) behindCm(edge func(depth float64) float64) float64 {
	across := p.st.SizeCm(p.neck)
	if p.in.strap() > 0 {
		return across + 2*p.strapCm()
	}
	return edge(backShare * across)
}

// usualDepth is a default in rows, to the nearest even number.
func (p setting) usualDepth(cm float64) int {
	return min(max(p.rw.CountedEven(nil, new(max(0, cm))), p.leastDepth()), MaxDepthRows)
}

// depthWithin is the most rows, an even number, that are no deeper than so many cm.
func (p setting) depthWithin(cm float64) int {
	rows := p.usualDepth(cm)
	if p.rw.SizeCm(rows) > cm+nearlyCm {
		rows -= 2
	}
	return max(rows, p.leastDepth())
}

// nearlyCm is what a depth in cm may be off by the rounding of floats.
const nearlyCm = 1e-9

// givenDepth is the depth that was asked for, to an even number of rows.
func (p setting) givenDepth(c *fault.Checks, rows *int, cm *float64, piece string) foot {
	f := foot{depthField: piece + "_depth_rows", given: rows != nil || cm != nil}
	if rows == nil && cm != nil {
		f.depthField = piece + "_depth_cm"
	}
	if !f.given || !c.Sound(piece+"_depth_rows", piece+"_depth_cm", "shoulder_method") {
		return f
	}
	f.depth = p.rw.CountedEven(rows, cm)
	f.known = c.Passes(func() {
		switch {
		case f.depth > MaxDepthRows:
			c.Infeasible(fmt.Sprintf("the depth is %d rows at this gauge; at most %d are planned", f.depth, MaxDepthRows), f.depthField)
		case f.depth < p.leastDepth():
			c.Infeasible("short rows at the shoulders need a depth of "+report.CountOf(p.leastDepth(), "rows")+
				" at least; stepped bind-offs need none", f.depthField, "shoulder_method")
		}
	})
	return f
}
