package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// of is the question for one size alone.
func (in GradedTaperInput) of(size TaperSize) TaperInput {
	return TaperInput{
		StartStitches: size.StartStitches, EndStitches: size.EndStitches, HeightRows: size.HeightRows, HeightCm: size.HeightCm,
		Gauge: in.Gauge, Construction: in.Construction, Edges: in.Edges, EdgeChangeStitches: in.EdgeChangeStitches,
		EdgeStitches: in.EdgeStitches, RowChoice: in.RowChoice, FirstSide: in.FirstSide,
		EvenBeforeRows: in.EvenBeforeRows, EvenAfterRows: in.EvenAfterRows, ToleranceStitches: in.ToleranceStitches,
	}
}

// with is the question changed, an end count being that of size i.
func (in GradedTaperInput) with(i int, ch change) GradedTaperInput {
	one := in.of(in.Sizes[i]).with(ch)
	in.RowChoice, in.EdgeChangeStitches = one.RowChoice, one.EdgeChangeStitches
	in.EvenBeforeRows, in.EvenAfterRows = one.EvenBeforeRows, one.EvenAfterRows
	in.Sizes = slices.Clone(in.Sizes)
	in.Sizes[i].EndStitches = one.EndStitches
	return in
}

// would says of a change whether it would make a plan of size i and of all sizes that
// have one already.
func (in GradedTaperInput) would(i int, ch change) bool {
	changed := in.with(i, ch)
	var sizes []TaperSize
	for k, size := range changed.Sizes {
		if k == i || in.of(in.Sizes[k]).accepts() {
			sizes = append(sizes, size)
		}
	}
	changed.Sizes = sizes
	var c fault.Checks
	vetGradedTaper(&c, changed, nil)
	return c.Err() == nil
}

// vetGradedTaper checks everything and settles the rows of every size. would says of a
// change to size i whether it would be planned; nil when no remedies are wanted.
func vetGradedTaper(c *fault.Checks, in GradedTaperInput, would func(int, change) bool) (tapers []taper, st, rw gauge.Density) {
	vetTaperSizes(c, in)
	if in.Gauge != nil {
		st, rw = gauge.Vet(c, "gauge", in.Gauge)
	} else if slices.ContainsFunc(in.Sizes, func(s TaperSize) bool { return s.HeightCm != nil }) {
		c.Add("gauge", fault.ReasonRequired, "is missing; height_cm needs it")
	}
	vetEdges(c, in.of(TaperSize{}))
	if in.RowChoice == RowChoiceAny && in.Construction != stitch.InTheRound {
		c.Add("row_choice", fault.ReasonContradictory,
			"must be right-side rows when flat: one sentence for all sizes has one shaping row; other rows can be planned size by size")
	}
	c.OptionalCount("", "even_before_rows", in.EvenBeforeRows, 0, stitch.MaxRows)
	c.OptionalCount("", "even_after_rows", in.EvenAfterRows, 0, stitch.MaxRows)
	vetTolerance(c, in.ToleranceStitches, true)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Err() != nil {
		return nil, st, rw
	}
	for i, size := range in.Sizes {
		var mine func(change) bool
		if would != nil {
			mine = func(ch change) bool { return would(i, ch) }
		}
		tapers = append(tapers, in.of(size).settle(c, fault.Index("sizes", i), rw, mine))
	}
	return tapers, st, rw
}

// vetTaperSizes checks the fields of each size.
func vetTaperSizes(c *fault.Checks, in GradedTaperInput) {
	if len(in.Sizes) == 0 {
		c.Add("sizes", fault.ReasonRequired, "are missing; give from 1 to %d", MaxTaperSizes)
	}
	c.Items("", "sizes", len(in.Sizes), MaxTaperSizes)
	if !c.Sound("sizes") {
		return
	}
	for i, s := range in.Sizes {
		path := fault.Index("sizes", i)
		start, end := fault.Join(path, "start_stitches"), fault.Join(path, "end_stitches")
		c.Text(path, "name", s.Name)
		c.RequiredCount(path, "start_stitches", s.StartStitches, 1, stitch.MaxStitches)
		c.RequiredCount(path, "end_stitches", s.EndStitches, 1, stitch.MaxStitches)
		c.OptionalCount(path, "height_rows", s.HeightRows, 1, stitch.MaxRows)
		c.OptionalNumber(path, "height_cm", s.HeightCm, measure.MinCm, measure.MaxCm)
		c.OneOf(s.HeightRows != nil, s.HeightCm != nil, fault.Join(path, "height_rows"), fault.Join(path, "height_cm"))
		if first := in.Sizes[0]; c.Sound(start, end, "sizes[0].start_stitches", "sizes[0].end_stitches") &&
			(s.EndStitches-s.StartStitches)*(first.EndStitches-first.StartStitches) < 0 {
			c.Add(end, fault.ReasonContradictory,
				"goes the other way than the first size: a sentence for all sizes increases in all of them, or decreases in all")
		}
	}
}
