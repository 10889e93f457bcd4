package curve

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// curvedEdge is a checked question.
type curvedEdge struct {
	in       CurvedEdgeInput
	st, rw   gauge.Density
	start    int
	edge     int
	path     Path
	courses  []Course
	plans    []Plan // of each course
	settings Settings
	unit     measure.DisplayUnit
	asked    bool // by a caller, who is told what would do
	sought   int  // the price of what was asked in search of it
}

// vetCurvedEdge checks each field for itself, then what the points are together;
// asked is whether a caller asks, and not a search for what would do.
func vetCurvedEdge(c *fault.Checks, in CurvedEdgeInput, asked bool) curvedEdge {
	c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	var standard fault.Checks // its faults come after those of the points, which need it
	e := curvedEdge{in: in, start: in.StartStitches, edge: fault.Or(in.EdgeStitches, 1), unit: in.DisplayUnit, asked: asked}
	e.st, e.rw = gauge.Vet(&standard, "gauge", in.Gauge)
	rule := gauge.VetRule(&standard, "end_rule", in.EndRule)
	points := in.Points
	if in.EndRule != nil && len(points) > 0 && len(points) <= MaxPoints && c.Err() == nil && standard.Err() == nil && in.Edges <= EdgesLeft {
		points = e.ruledPoints(c, points, rule)
	}
	path, ok := e.vetPoints(c, points)
	c.Violations = append(c.Violations, standard.Violations...)
	fault.Enum(c, "", "edges", in.Edges, EdgesLeft)
	c.OptionalCount("", "edge_stitches", in.EdgeStitches, 1, maxEdgeStitch)
	fault.Enum(c, "", "row_choice", in.RowChoice, RowChoiceAny)
	fault.Enum(c, "", "first_side", in.FirstSide, stitch.WrongSide)
	c.OptionalCount("", "largest_change_stitches", in.LargestChangeStitches, 0, MaxChange)
	c.OptionalCount("", "largest_group_stitches", in.LargestGroupStitches, 0, MaxInward)
	if change, group := in.LargestChangeStitches, in.LargestGroupStitches; change != nil && group != nil && *change == 0 && *group == 0 {
		c.Add("largest_group_stitches", fault.ReasonContradictory, "is 0, and so is largest_change_stitches: nothing may be shaped")
	}
	c.OptionalNumber("", "tolerance_stitches", in.ToleranceStitches, 0, MaxTolerance)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if !ok || c.Err() != nil {
		return e
	}
	e.path, e.courses, e.settings = path, path.Courses(e.st, e.rw), in.settings()
	e.vetShape(c)
	if in.ToleranceStitches == nil && e.straight() {
		e.settings.Tolerance = StraightTolerance
	}
	return e
}

// straight reports whether the edge runs along straight lines alone.
func (e *curvedEdge) straight() bool {
	return !slices.ContainsFunc(e.courses, func(c Course) bool { return !c.straight })
}

// settings is what the question lets be done.
func (in CurvedEdgeInput) settings() Settings {
	none := func(n *int, otherwise int) int {
		switch {
		case n == nil:
			return otherwise
		case *n == 0:
			return -1
		}
		return *n
	}
	return Settings{Edges: in.Edges, FirstSide: in.FirstSide, AnyRow: in.RowChoice == RowChoiceAny,
		LargestChange: none(in.LargestChangeStitches, 1), LargestGroup: none(in.LargestGroupStitches, 0),
		Tolerance: fault.Or(in.ToleranceStitches, DefaultTolerance)}
}

// vetPoints checks the points and goes along them; it is false where they are no path.
func (e *curvedEdge) vetPoints(c *fault.Checks, points []CurvePoint) (Path, bool) {
	if len(points) == 0 {
		c.Add("points", fault.ReasonRequired, "are missing; give from 1 to %d", MaxPoints)
	}
	c.Items("", "points", len(points), MaxPoints)
	if !c.Sound("points") {
		return Path{}, false
	}
	path, known := From(Point{}), true
	below := 0
	for i, p := range points {
		at := fault.Index("points", i)
		to, rows, ok := e.vetPoint(c, at, p)
		if known = known && ok; !known {
			continue
		}
		if to.Y < path.End().Y {
			c.Add(p.heightField(at), fault.ReasonContradictory, "is row %d, and the point before is row %d; it may not lie below that",
				rows, below)
			known = false
			continue
		}
		below = rows
		path = e.goTo(c, at, path, p, to)
	}
	return path, known
}

// heightField is the field that has the height of a point.
func (p CurvePoint) heightField(at string) string {
	if p.HeightRows == nil {
		return fault.Join(at, "height_cm")
	}
	return fault.Join(at, "height_rows")
}

// inwardField is the field that says how far in it lies.
func (p CurvePoint) inwardField(at string) string {
	if p.InwardStitches == nil {
		return fault.Join(at, "inward_cm")
	}
	return fault.Join(at, "inward_stitches")
}

// vetPoint checks one point by itself, and says where it lies.
func (e *curvedEdge) vetPoint(c *fault.Checks, at string, p CurvePoint) (to Point, rows int, ok bool) {
	before := len(c.Violations)
	c.OptionalCount(at, "height_rows", p.HeightRows, 0, MaxRows)
	c.OptionalNumber(at, "height_cm", p.HeightCm, 0, measure.MaxCm)
	c.OneOf(p.HeightRows != nil, p.HeightCm != nil, fault.Join(at, "height_rows"), fault.Join(at, "height_cm"))
	c.OptionalCount(at, "inward_stitches", p.InwardStitches, -MaxInward, MaxInward)
	c.OptionalNumber(at, "inward_cm", p.InwardCm, -measure.MaxCm, measure.MaxCm)
	c.OneOf(p.InwardStitches != nil, p.InwardCm != nil, fault.Join(at, "inward_stitches"), fault.Join(at, "inward_cm"))
	fault.Enum(c, at, "shape", p.Shape, ShapeArc)
	fault.Enum(c, at, "leaving", p.Leaving, LeavingUp)
	if line := p.Shape == ShapeLine || p.Shape == ShapeUnspecified; line && p.Leaving != LeavingUnspecified {
		c.Add(fault.Join(at, "leaving"), fault.ReasonContradictory, "is of an ellipse or an arc; a line leaves in one way")
	}
	c.OptionalNumber(at, "radius_cm", p.RadiusCm, measure.MinCm, MaxRadiusCm)
	switch arc := p.Shape == ShapeArc; {
	case arc && p.RadiusCm == nil:
		c.Add(fault.Join(at, "radius_cm"), fault.ReasonRequired, "is missing; an arc needs it")
	case !arc && p.RadiusCm != nil:
		c.Add(fault.Join(at, "radius_cm"), fault.ReasonContradictory, "is of an arc; the shape is another")
	}
	if len(c.Violations) > before || e.st.IsZero() {
		return Point{}, 0, false
	}
	return e.place(c, at, p)
}

// place is where a point lies, in cm, if it lies within the limits in rows and stitches.
func (e *curvedEdge) place(c *fault.Checks, at string, p CurvePoint) (to Point, rows int, ok bool) {
	rows = e.rw.Counted(p.HeightRows, p.HeightCm)
	if to.Y = e.rw.SizeCm(rows); p.HeightCm != nil {
		to.Y = *p.HeightCm
	}
	inward := e.st.Counted(p.InwardStitches, p.InwardCm)
	if to.X = e.st.SizeCm(inward); p.InwardCm != nil {
		to.X = *p.InwardCm
	}
	ok = true
	if rows > MaxRows {
		c.Infeasible("the height is "+report.CountOf(rows, "rows")+" at this gauge; it must be from 0 to "+strconv.Itoa(MaxRows),
			p.heightField(at), "gauge")
		ok = false
	}
	if measure.Abs(inward) > MaxInward {
		c.Infeasible("it lies "+report.CountOf(measure.Abs(inward), "stitches")+" from where the edge began at this gauge; it must be "+
			strconv.Itoa(MaxInward)+" at the most", p.inwardField(at), "gauge")
		ok = false
	}
	return to, rows, ok
}

// goTo goes to a point as it says; where there is no such arc, straight, so that the points
// after it can be judged too.
func (e *curvedEdge) goTo(c *fault.Checks, at string, path Path, p CurvePoint, to Point) Path {
	switch p.Shape {
	case ShapeQuarterEllipse:
		return path.Ellipse(to, p.Leaving)
	case ShapeArc:
		if along, ok := path.Arc(to, *p.RadiusCm, p.Leaving); ok {
			return along
		}
		c.Infeasible(e.noArc(path, p, to), fault.Join(at, "radius_cm"))
	}
	return path.Line(to)
}

// noArc says why there is no arc, and which is the least radius of one.
func (e *curvedEdge) noArc(path Path, p CurvePoint, to Point) string {
	from := path.End()
	dx, dy := to.X-from.X, to.Y-from.Y
	if dy <= 0 {
		return "no arc joins points of one height; a line does"
	}
	// The steepest arc is upright at one of its ends: chord^2 = 2 * height * radius.
	part := 0.1
	if e.unit == measure.DisplayUnitIn {
		part = measure.CmPerInch / 100
	}
	least := float64(measure.CeilQuotient((dx*dx+dy*dy)/(2*dy), part)) * part
	s := "no arc of this radius rises from the point before to this one"
	if _, ok := path.Arc(to, least, p.Leaving); ok && least <= MaxRadiusCm {
		s += "; the least that does is " + e.unit.Size(least)
	}
	return s
}

// vetShape asks what all points are together: a height, and something to shape.
func (e *curvedEdge) vetShape(c *fault.Checks) {
	rows, moved := 0, false
	for _, x := range e.courses {
		rows = max(rows, x.RowsBefore+x.Rows)
		moved = moved || x.Stitches > 0
	}
	switch {
	case e.in.Cost() > cost.Limit:
		e.tooDear(c)
	case rows == 0:
		c.Infeasible("all points lie at the start: there is no row to work", "points")
	case !moved:
		c.Infeasible("no point lies a stitch from where the edge began: there is nothing to shape", "points")
	}
}
