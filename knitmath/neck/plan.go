package neck

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
)

// PlanNeckline divides the stitches across the shoulders into neck and shoulders, plans
// the neck's edge in front and behind with the slope of the shoulders beside it, and
// counts what a band picks up all round.
//
// Width = neck + 2 * shoulder, where two are known or the neck is a third of the width;
// what is in cm comes to the nearest count that the rules and two equal shoulders allow.
//
// A round edge follows a quarter of an ellipse from the middle of the neck to its depth
// (see roundEdge), with the bind-offs and decreases of [curve.Follow]. A V is a taper of
// one stitch a row from its point (see [shaping.PlanTaper]). A square and a boat neck go
// at once. The depth is measured from the shoulder's end at the neck to the foot of the
// neck, in an even number of rows, since yarn is at both edges every second row.
//
// A shoulder of w stitches that falls by h rows has h/2 steps of w/(h/2) stitches each.
//
// Source: own derivation, with the trade's proportions as defaults (see Sources).
func PlanNeckline(in Input) (Neckline, error) {
	out, err := plan(in, true)
	if err != nil {
		return Neckline{}, err
	}
	if in.findsWidth() && out.tooNarrow() {
		out = out.widened()
	}
	out.Notices = append(out.Notices, out.senseNotices()...)
	return out, nil
}

// plan is the answer but for what compares it with bodies and other garments; asked is whether a
// caller asks, and not a search for what would do.
func plan(in Input, asked bool) (Neckline, error) {
	var c fault.Checks
	st, rw := vetFields(&c, in)
	if err := c.Err(); err != nil {
		return Neckline{}, err
	}
	s := settler{c: &c, in: in, st: st, asked: asked}
	p := setting{counts: s.settle(), st: st, rw: rw, in: in, margin: fault.Or(in.EdgeStitches, defaultEdge),
		anyRow: in.RowChoice == shaping.RowChoiceAny, rowChoice: in.RowChoice,
		shortRows: in.ShoulderMethod == ShoulderMethodShortRows}
	if c.Err() == nil {
		p.slope = s.slopeOf(p.shoulder, rw)
	}
	if err := c.Err(); err != nil {
		return Neckline{}, err
	}
	front, back := s.frontOf(p).front(&c), p.back(&c)
	if err := c.Err(); err != nil {
		return Neckline{}, err
	}
	out := Neckline{
		WidthStitches: p.width, NeckStitches: p.neck, ShoulderStitches: p.shoulder,
		WidthCm: st.SizeCm(p.width), NeckCm: st.SizeCm(p.neck), ShoulderCm: st.SizeCm(p.shoulder),
		ShoulderStepStitches: p.steps, SlopeRows: p.slope.rows(), SlopeCm: rw.SizeCm(p.slope.rows()),
		Front: front.answer(), Back: back.answer(), Notices: s.notices, in: in, rw: rw,
	}
	out.SlopeDegrees = math.Atan2(out.SlopeCm, out.ShoulderCm) * 180 / math.Pi
	out.Notices = append(out.Notices, front.edges.notices...)
	if err := out.pickUp(p); err != nil {
		return Neckline{}, err
	}
	out.judge()
	if in.WithOutline {
		out.Outline = out.outline()
	}
	return out, nil
}

// front plans the front.
func (p setting) front(c *fault.Checks) *layout {
	centre, given := p.centreOf(c, p.in.FrontCentreStitches, "front_centre_stitches")
	if p.in.Shape == ShapeV && !given {
		centre = 2 - p.neck%2
	}
	depth, field := p.frontDepth(c, max(0, p.neck-centre)/2)
	l := &layout{setting: p, piece: "front", depth: depth}
	if p.in.Shape == ShapeV {
		l.centre, l.held = centre, p.in.Centre == CentreHeld || p.in.Centre == CentreUnspecified && centre <= 2
		lost := (p.neck - centre) / 2
		if c.Err() == nil && lost > 0 {
			vetSlant(c, p, lost, depth, field)
		}
		if c.Err() == nil && lost > 0 {
			var err error
			if l.edges, err = slantedEdge(p, lost, depth); err != nil {
				c.Infeasible(err.Error(), field)
			}
		}
		return l.done(c)
	}
	return l.round(c, centre, given, field, "front_centre_stitches")
}

// back plans the back, which is round behind a V too.
func (p setting) back(c *fault.Checks) *layout {
	centre, given := p.centreOf(c, p.in.BackCentreStitches, "back_centre_stitches")
	depth, field := p.backDepth(c)
	l := &layout{setting: p, piece: "back", depth: depth}
	return l.round(c, centre, given, field, "back_centre_stitches")
}

// round plans a round edge, or one that goes at once.
func (l *layout) round(c *fault.Checks, centre int, given bool, depthField, centreField string) *layout {
	l.held = l.in.Centre == CentreHeld || l.in.Centre == CentreUnspecified && l.in.strap() > 0 // as the straps are
	switch {
	case l.in.Shape == ShapeSquare || l.in.Shape == ShapeBoat:
		centre = l.neck
	case !given:
		centre = roundCentre(l.neck, l.depth)
	}
	l.centre = centre
	if c.Err() != nil || centre >= l.neck {
		return l.done(c)
	}
	if l.depth <= evenAbove {
		c.Infeasible(fmt.Sprintf("%s beside the middle need rows to go in, and the depth has %s; a depth of %d rows is the least, "+
			"or a middle of %d", report.CountOf(l.neck-centre, "stitches"), report.CountOf(l.depth, "rows"), 2*evenAbove, l.neck),
			depthField, centreField)
		return l
	}
	l.edges = roundEdge(l.setting, centre, l.depth)
	if len(l.edges.first) == 0 {
		c.Infeasible("no bind-offs lose so many stitches in this depth", depthField)
	}
	return l.done(c)
}

// done writes the rows of a sound layout.
func (l *layout) done(c *fault.Checks) *layout {
	if c.Err() == nil {
		l.write()
	}
	if l.lacking > 0 {
		c.Infeasible(fmt.Sprintf("row %d of the %s has too few stitches for what goes at the armhole and at the neck", l.lacking, l.piece),
			l.stepsField())
	}
	return l
}

// centreOf is the middle that was asked for.
func (p setting) centreOf(c *fault.Checks, asked *int, field string) (centre int, given bool) {
	if asked == nil {
		return 0, false
	}
	switch n := *asked; {
	case n > p.neck:
		c.Infeasible(fmt.Sprintf("the middle of %s is more than the neck of %d; at most %d can be",
			report.CountOf(n, "stitches"), p.neck, p.neck), field)
	case (p.neck-n)%2 != 0:
		c.Infeasible(fmt.Sprintf("a middle of %s leaves an odd number of the neck's %d for two equal edges; %s",
			report.CountOf(n, "stitches"), p.neck, either(max(n-1, 0), n+1)), field)
	}
	return *asked, true
}

// answer is the piece for the caller.
func (l *layout) answer() Piece {
	out := Piece{
		DepthRows: l.depth, SecondSideDepthRows: l.lastBindOff(second), DepthCm: l.rw.SizeCm(l.depth),
		StartStitches: l.width + 2*l.beside, NeckStitches: l.neck, CentreStitches: l.centre, NeckRowNumber: l.number(0),
		SlopeRowNumber: l.number(min(l.slopeRow(first, 0), l.slopeRow(second, 0))),
		HeightRows:     l.number(max(l.lastRow(first), l.lastRow(second))),
		Rows:           l.rows, GreatestDepartureStitches: l.edges.departure, LeastDepartureStitches: l.edges.least,
		Effort: l.edges.effort, layout: l,
	}
	for i, e := range l.edges.first {
		out.Steps = append(out.Steps, Step{FirstSideRowNumber: l.number(e.row), SecondSideRowNumber: l.number(l.edges.second[i].row),
			Stitches: e.stitches, BoundOff: e.bindOff})
	}
	out.EdgeCm = l.edgeCm(l.st, l.rw)
	return out
}

// edgeCm is the length of the first side's edge from the end of the middle to the shoulder,
// as it lies smooth (see [curve.SewnCm]): along the corners of the bind-offs it would be
// longer, and a band of that length would flare. The second side's begins a row later, and
// with short rows ends one sooner.
func (l *layout) edgeCm(st, rw gauge.Density) float64 {
	return curve.SewnCm(stepsAt(l.edges.first), 1, l.depth, 0, st, rw)
}
