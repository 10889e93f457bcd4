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
	for i := range in.Sizes {
		var mine func(change) bool
		if would != nil {
			mine = func(ch change) bool { return would(i, ch) }
		}
		tapers = append(tapers, in.settleSize(c, i, rw, mine))
	}
	return tapers, st, rw
}

// settleSize settles the shaping rows of a size. One that keeps its width among others that do not
// has none.
func (in GradedTaperInput) settleSize(c *fault.Checks, i int, rw gauge.Density, would func(change) bool) taper {
	size, path := in.Sizes[i], fault.Index("sizes", i)
	if size.keeps() && !in.everySizeKeeps() {
		t := in.of(size).edges()
		t.start, t.end = size.StartStitches, size.EndStitches
		t.rows, t.rowField = vetHeight(c, path, size.HeightRows, size.HeightCm, rw)
		return t
	}
	return in.of(size).settle(c, path, rw, would)
}

// keeps reports whether a size has as many stitches at its end as at its start.
func (s TaperSize) keeps() bool { return s.StartStitches == s.EndStitches }

func (in GradedTaperInput) everySizeKeeps() bool {
	return !slices.ContainsFunc(in.Sizes, func(s TaperSize) bool { return !s.keeps() })
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
		c.Text(path, "name", s.Name)
		c.RequiredCount(path, "start_stitches", s.StartStitches, 1, stitch.MaxStitches)
		c.RequiredCount(path, "end_stitches", s.EndStitches, 1, stitch.MaxStitches)
		c.OptionalCount(path, "height_rows", s.HeightRows, 1, stitch.MaxRows)
		c.OptionalNumber(path, "height_cm", s.HeightCm, measure.MinCm, measure.MaxCm)
		c.OneOf(s.HeightRows != nil, s.HeightCm != nil, fault.Join(path, "height_rows"), fault.Join(path, "height_cm"))
	}
}
