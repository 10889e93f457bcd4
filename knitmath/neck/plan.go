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
	out, err := plan(in)
	if err != nil {
		return Neckline{}, in.advised(err)
	}
	if in.findsWidth() && out.tooNarrow() {
		out = out.widened()
	}
	out.Notices = append(out.Notices, out.senseNotices()...)
	return out, nil
}

// edgeFields are what the edges of a neck come from beside its counts and its depth.
var edgeFields = []string{"shape", "row_choice", "tolerance_stitches", "strap_stitches", "head_cm", "body_cm", "stretch_ratio"}

// plan is the answer but for what compares it with bodies and other garments, and a refusal without
// what would do.
func plan(in Input) (Neckline, error) {
	var c fault.Checks
	st, rw := vetFields(&c, in)
	if !c.Sound("gauge") {
		return Neckline{}, c.Err()
	}
	s := settler{c: &c, in: in, st: st}
	p := setting{counts: s.settle(), st: st, rw: rw, in: in, margin: fault.Or(in.EdgeStitches, defaultEdge),
		anyRow: in.RowChoice == shaping.RowChoiceAny, rowChoice: in.RowChoice,
		shortRows: in.ShoulderMethod == ShoulderMethodShortRows}
	p.edged = p.divided && c.Sound(edgeFields...)
	p.slope = s.slopeOf(p)
	front, back := s.frontOf(p).front(&c), p.back(&c)
	if c.Err() == nil {
		if front.pinches() || back.pinches() {
			p.makeRoom() // for both, whose shoulders are joined
		}
		front.write(&c)
		back.write(&c)
	}
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

// front plans the front, as far as nothing is wrong.
func (p setting) front(c *fault.Checks) *layout {
	l := &layout{setting: p, piece: "front"}
	l.settleCentre(c, p.in.FrontCentreStitches)
	if p.in.Shape == ShapeV && !l.centred {
		l.centre = 2 - p.neck%2
	}
	l.foot = p.frontFoot(c, max(0, p.neck-l.centre)/2)
	switch {
	case !l.shapes(c):
	case p.in.Shape == ShapeV:
		l.slanted(c)
	default:
		l.round(c)
	}
	return l
}

// back plans the back, which is round behind a V too.
func (p setting) back(c *fault.Checks) *layout {
	l := &layout{setting: p, piece: "back"}
	l.settleCentre(c, p.in.BackCentreStitches)
	if l.foot = p.backFoot(c); l.shapes(c) {
		l.round(c)
	}
	return l
}

// shapes reports whether nothing is wrong with what its edges come from.
func (l *layout) shapes(c *fault.Checks) bool {
	return l.divided && l.edged && l.foot.known && c.Sound(l.centreField())
}

// slanted plans the edges of a V.
func (l *layout) slanted(c *fault.Checks) {
	l.held = l.in.Centre == CentreHeld || l.in.Centre == CentreUnspecified && l.centre <= 2
	lost := (l.neck - l.centre) / 2
	if lost == 0 || !c.Passes(func() { vetSlant(c, l.setting, lost, l.depth, l.depthField) }) {
		return
	}
	var err error
	if l.edges, err = slantedEdge(l.setting, lost, l.depth); err != nil {
		c.Infeasible(err.Error(), l.depthField)
	}
}

// deepened is how many rows deeper a neck may be than what is usual where nobody says, so that
// what goes beside its middle has rows to go in.
const deepened = 16

// round plans a round edge, or one that goes at once.
func (l *layout) round(c *fault.Checks) {
	l.held = l.in.Centre == CentreHeld || l.in.Centre == CentreUnspecified && l.in.strap() > 0 // as the straps are
	if l.in.Shape == ShapeSquare || l.in.Shape == ShapeBoat {
		l.centre = l.neck
		return
	}
	for deepest := l.depth + deepened; !l.curves() && !l.given && l.depth < deepest; {
		l.depth += 2
	}
	switch beside := report.CountOf(l.neck-l.centre, "stitches"); {
	case l.centre >= l.neck || len(l.edges.first) > 0:
	case !l.given && !l.centred:
		l.depth, l.centre = l.leastDepth(), l.neck // nothing else goes
	case l.depth <= evenAbove:
		c.Infeasible(beside+" beside the middle need rows to go in, and the depth has "+report.CountOf(l.depth, "rows"), l.curveFields()...)
	default:
		c.Infeasible("no bind-offs lose "+beside+" in this depth", l.curveFields()...)
	}
}

// curves finds the edges of a round neck of the depth, and reports whether there are any, or none are wanted.
func (l *layout) curves() bool {
	if !l.centred {
		l.centre = roundCentre(l.neck, l.depth)
	}
	if l.centre < l.neck && l.depth > evenAbove {
		l.edges = roundEdge(l.setting, l.centre, l.depth)
	}
	return l.centre >= l.neck || len(l.edges.first) > 0
}

// curveFields are the fields that the curve of a round neck comes from.
func (l *layout) curveFields() []string {
	switch {
	case !l.centred:
		return []string{l.depthField}
	case !l.given:
		return []string{l.centreField()}
	}
	return []string{l.depthField, l.centreField()}
}

// centreField is the field of the stitches in the middle.
func (l *layout) centreField() string { return l.piece + "_centre_stitches" }

// settleCentre settles the middle that was asked for.
func (l *layout) settleCentre(c *fault.Checks, asked *int) {
	if l.centred = asked != nil; !l.centred || !l.divided || !c.Sound(l.centreField()) {
		return
	}
	l.centre = *asked
	switch n := l.centre; {
	case n > l.neck:
		c.Infeasible(fmt.Sprintf("the middle of %s is more than the neck of %d", report.CountOf(n, "stitches"), l.neck), l.centreField())
	case (l.neck-n)%2 != 0:
		c.Infeasible(fmt.Sprintf("a middle of %s leaves an odd number of the neck's %d for two equal edges",
			report.CountOf(n, "stitches"), l.neck), l.centreField())
	}
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
