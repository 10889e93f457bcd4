package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// shapedSide is a checked question.
type shapedSide struct {
	taper     // what all stretches share, from the first count to the last
	stretches []taper
	apart     bool // a row beside joins is kept even
}

// shape is what a side asks as a taper would.
func (in ShapedSideInput) shape() TaperInput {
	return TaperInput{Construction: in.Construction, Edges: in.Edges, EdgeChangeStitches: in.EdgeChangeStitches,
		EdgeStitches: in.EdgeStitches, RowChoice: in.RowChoice, FirstSide: in.FirstSide, Spread: in.Spread,
		ToleranceStitches: in.ToleranceStitches}
}

// vetShapedSide checks each field for itself and settles the stretches. would says of
// a change to the stretch below point i whether it would be planned; nil when no
// remedies are wanted.
func vetShapedSide(c *fault.Checks, in ShapedSideInput, would func(i int, ch change) bool) (s shapedSide, st, rw gauge.Density) {
	c.RequiredCount("", "start_stitches", in.StartStitches, 1, stitch.MaxStitches)
	var standard fault.Checks // its faults come after those of the points, which need it
	if in.Gauge != nil {
		st, rw = gauge.Vet(&standard, "gauge", in.Gauge)
	}
	heights := vetSidePoints(c, in, rw, in.Gauge != nil && standard.Err() == nil)
	c.Violations = append(c.Violations, standard.Violations...)
	vetEdges(c, in.shape())
	vetSpread(c, in.Spread, in.ToleranceStitches)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Err() == nil {
		s = in.stretches(heights)
		for i := range s.stretches {
			if would != nil {
				s.stretches[i].would = func(ch change) bool { return would(i, ch) }
			}
		}
	}
	return s, st, rw
}

// vetSidePoints checks the points and gives the height of each, in rows. A height
// is judged although other fields are wrong.
func vetSidePoints(c *fault.Checks, in ShapedSideInput, rw gauge.Density, measured bool) []sideHeight {
	if len(in.Points) == 0 {
		c.Add("points", fault.ReasonRequired, "are missing; give from 1 to %d", MaxSidePoints)
	}
	c.Items("", "points", len(in.Points), MaxSidePoints)
	if !c.Sound("points") {
		return nil
	}
	heights, below := make([]sideHeight, len(in.Points)), 0
	for i, p := range in.Points {
		path := fault.Index("points", i)
		rows, cm := fault.Join(path, "height_rows"), fault.Join(path, "height_cm")
		c.OptionalCount(path, "height_rows", p.HeightRows, 1, stitch.MaxRows)
		c.OptionalNumber(path, "height_cm", p.HeightCm, measure.MinCm, measure.MaxCm)
		c.OneOf(p.HeightRows != nil, p.HeightCm != nil, rows, cm)
		if c.Sound(rows, cm) && (p.HeightRows != nil || measured) {
			h := &heights[i]
			h.rows, h.field = vetHeight(c, path, p.HeightRows, p.HeightCm, rw)
			if h.rows > 0 && h.rows <= below {
				c.Add(h.field, fault.ReasonContradictory, "is row %d, and the point before is row %d; it must lie above that", h.rows,
					below)
			}
			below = max(below, h.rows)
		}
		c.RequiredCount(path, "stitches", p.Stitches, 1, stitch.MaxStitches)
	}
	if in.Gauge == nil && slices.ContainsFunc(in.Points, func(p SidePoint) bool { return p.HeightCm != nil }) {
		c.Add("gauge", fault.ReasonRequired, "is missing; height_cm needs it")
	}
	return heights
}

// sideHeight is the height of a point, and the field it came from.
type sideHeight struct {
	rows  int
	field string
}

// stretches makes a taper of every stretch, of checked points.
func (in ShapedSideInput) stretches(heights []sideHeight) shapedSide {
	s := shapedSide{taper: in.shape().edges()}
	s.through = curve.Strokes[int64]{{Value: int64(in.StartStitches)}}
	for i, h := range heights {
		s.through = append(s.through, curve.Mark[int64]{Place: int64(h.rows), Value: int64(in.Points[i].Stitches)})
	}
	below, count, from := 0, in.StartStitches, "start_stitches"
	for i, h := range heights {
		x := s.taper
		x.start, x.end, x.below, x.rows = count, in.Points[i].Stitches, below, h.rows-below
		x.from, x.to, x.rowField = from, fault.Join(fault.Index("points", i), "stitches"), h.field
		x.firstSide = s.side(below + 1)
		x.evenFirst, x.evenLast = i == 0, i == len(heights)-1
		s.stretches = append(s.stretches, x)
		below, count, from = h.rows, x.end, x.to
	}
	s.start, s.end, s.rows = in.StartStitches, count, below
	return s
}

// vetStretchesFit checks that the shaping rows of every stretch exist, fit, and can
// be worked.
func (s *shapedSide) vetStretchesFit(c *fault.Checks) {
	shaped := false
	for i := range s.stretches {
		x := &s.stretches[i]
		if x.straight() {
			continue
		}
		shaped = true
		x.placeSlots()
		x.vetFits(c, "between these points ")
	}
	if !shaped {
		c.Infeasible("all counts are equal: there is nothing to shape", "start_stitches", "points")
	}
}

// keepApart keeps shaping rows apart across joins, where a row can be spared.
func (s *shapedSide) keepApart() {
	if !s.meet() {
		return
	}
	for i := 1; i < len(s.stretches); i++ {
		lower, upper := &s.stretches[i-1], &s.stretches[i]
		switch {
		case lower.straight() || upper.straight():
		case lower.spare():
			s.apart, lower.after = true, 1
			lower.placeSlots()
		case upper.spare():
			s.apart, upper.before = true, 1
			upper.placeSlots()
		}
	}
}

// meet reports whether two shaping rows are neighbours across any join.
func (s shapedSide) meet() bool {
	last := 0
	for _, x := range s.stretches {
		if x.straight() {
			continue
		}
		rows := x.shapingRowNumbers()
		if last > 0 && x.below+rows[0]-last < 2 {
			return true
		}
		last = x.below + rows[len(rows)-1]
	}
	return false
}
