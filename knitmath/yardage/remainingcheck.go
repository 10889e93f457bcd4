package yardage

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yarn"
)

// vetRemaining checks a question on what is left.
func vetRemaining(in RemainingInput) (*remainder, error) {
	var c fault.Checks
	q := &remainder{in: in}
	if len(in.Yarns) == 0 {
		c.Add("yarns", fault.ReasonRequired, "is empty; give one yarn or more")
	}
	c.Items("", "yarns", len(in.Yarns), MaxYarns)
	if c.Sound("yarns") {
		vetYarnsLeft(&c, in)
	}
	vetSections(&c, "sections", in.Sections)
	vetBorder(&c, "border", in)
	vetBorderRate(&c, in)
	vetStripes(&c, "stripes", in)
	if in.Gauge != nil || slices.ContainsFunc(in.Yarns, func(y YarnLeft) bool { return y.Used == nil }) {
		q.st, q.rw = gauge.Vet(&c, "gauge", in.Gauge)
	}
	fault.Enum(&c, "", "state", in.State, FabricStateFullyRelaxed)
	c.Number("", "gauge_off_percent", in.GaugeOffPercent, 0, MaxGaugeOff)
	c.Items("", "share_percents", len(in.SharePercents), MaxMarks)
	if c.Sound("share_percents") {
		for i, p := range in.SharePercents {
			c.RequiredNumber("", fault.Index("share_percents", i), p, MinSharePercent, 100)
		}
	}
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	return q, c.Err()
}

// stranded says whether every row takes of several yarns.
func (in RemainingInput) stranded() bool { return len(in.Yarns) > 1 && len(in.Stripes) == 0 }

// vetYarnsLeft checks the yarns, each by itself and then together.
func vetYarnsLeft(c *fault.Checks, in RemainingInput) {
	var shares []ColourShare
	var fields []string
	used := 0
	for i, y := range in.Yarns {
		path := fault.Index("yarns", i)
		vetYarnLeft(c, path, y)
		share := fault.Join(path, "share_percent")
		switch needs := in.stranded() && y.Used == nil; {
		case needs:
			if c.OptionalNumber(path, "share_percent", y.SharePercent, MinSharePercent, 100); y.SharePercent == nil {
				c.Add(share, fault.ReasonRequired, "is missing; without used every yarn of a stranded row needs it")
			}
		case y.SharePercent != nil:
			c.OptionalNumber(path, "share_percent", y.SharePercent, MinSharePercent, 100)
			if c.Sound(share) {
				c.Add(share, fault.ReasonContradictory, "is for several yarns without stripes and without used; leave it out")
			}
		}
		if y.Used != nil {
			used++
		}
		shares, fields = append(shares, ColourShare{SharePercent: fault.Or(y.SharePercent, 0)}), append(fields, share)
	}
	switch {
	case !in.stranded():
	case used > 0 && used < len(in.Yarns):
		for i, y := range in.Yarns {
			if y.Used != nil {
				c.Add(fault.Join(fault.Index("yarns", i), "used"), fault.ReasonContradictory,
					"is given of some of the yarns of a stranded row and not of all; give it of all or of none")
			}
		}
	case used == 0 && c.Sound(fields...):
		vetWhole(c, shares, fields)
	}
}

func vetYarnLeft(c *fault.Checks, path string, y YarnLeft) {
	c.Text(path, "name", y.Name)
	left, step := fault.Join(path, "left_g"), fault.Join(path, "scale_step_g")
	c.OneOf(y.LeftG != nil, y.LeftM != nil, left, fault.Join(path, "left_m"))
	c.OptionalNumber(path, "left_g", y.LeftG, MinLeftG, MaxLeftG)
	c.OptionalNumber(path, "left_m", y.LeftM, MinLeftM, MaxLeftM)
	c.OptionalNumber(path, "scale_step_g", y.ScaleStepG, MinScaleStepG, MaxScaleStepG)
	if y.LeftG != nil && c.Sound(left, step) && *y.LeftG <= y.stepG()/2 {
		c.Infeasible("a scale with steps of "+measure.Decimal(y.stepG(), 3)+" g does not show "+measure.Decimal(*y.LeftG, 3)+
			" g; give the step of the scale", left, step)
	}
	yarn.VetPutUp(c, fault.Join(path, "put_up"), y.PutUp)
	if y.Used != nil {
		vetUsed(c, path, y)
	}
	if y.PutUp == nil && y.convert() {
		c.Add(fault.Join(path, "put_up"), fault.ReasonRequired,
			"is missing; what is left and what a stitch takes are not both in grams or both in metres, and it turns one into the other")
	}
}

// stepG is the step of the scale.
func (y YarnLeft) stepG() float64 { return fault.Or(y.ScaleStepG, DefaultScaleStepG) }

// convert says whether what is left is in another unit than what a stitch takes, which
// by the geometry of the loop is a length.
func (y YarnLeft) convert() bool {
	takesG := y.Used != nil && y.Used.MassG != nil
	return (y.LeftG != nil) != takesG
}

func vetUsed(c *fault.Checks, path string, y YarnLeft) {
	step := fault.Join(path, "scale_step_g")
	path = fault.Join(path, "used")
	u := y.Used
	mass := fault.Join(path, "mass_g")
	c.OneOf(u.MassG != nil, u.LengthM != nil, mass, fault.Join(path, "length_m"))
	c.OptionalNumber(path, "mass_g", u.MassG, MinUsedG, MaxLeftG)
	c.OptionalNumber(path, "length_m", u.LengthM, MinUsedM, MaxLeftM)
	c.OptionalCount(path, "rows", u.Rows, 1, stitch.MaxRows)
	c.RequiredCount(path, "first_row_stitches", u.FirstRowStitches, 1, stitch.MaxStitches)
	c.OptionalCount(path, "last_row_stitches", u.LastRowStitches, 1, stitch.MaxStitches)
	if u.MassG != nil && c.Sound(mass, step) && *u.MassG <= y.stepG() {
		c.Infeasible("a difference of two weighings on a scale with steps of "+measure.Decimal(y.stepG(), 3)+" g says nothing of "+
			measure.Decimal(*u.MassG, 3)+" g; weigh over more rows, or give the step of the scale", mass, step)
	}
}

// vetSections checks the rows ahead.
func vetSections(c *fault.Checks, field string, sections []RowsAhead) {
	if len(sections) == 0 {
		c.Add(field, fault.ReasonRequired, "is empty; give the rows that are still to work")
	}
	c.Items("", field, len(sections), MaxSections)
	if !c.Sound(field) {
		return
	}
	rows := 0
	for i, s := range sections {
		path := fault.Index(field, i)
		vetSection(c, path, s, i == len(sections)-1)
		rows += max(0, min(fault.Or(s.Rows, 0), stitch.MaxRows)) + len(s.RowStitches)
		if at := fault.Join(path, s.rowsField()); rows > stitch.MaxRows && c.Sound(path) {
			c.Add(at, fault.ReasonTooMany, "all items together have at most %d rows", stitch.MaxRows)
			return
		}
	}
}

// rowsField is the field that says how many rows there are.
func (s RowsAhead) rowsField() string {
	if len(s.RowStitches) > 0 {
		return "row_stitches"
	}
	return "rows"
}

func vetSection(c *fault.Checks, path string, s RowsAhead, last bool) {
	c.Text(path, "name", s.Name)
	list := len(s.RowStitches) > 0
	switch {
	case s.Rows != nil && list:
		c.Add(fault.Join(path, "rows"), fault.ReasonContradictory, "excludes row_stitches, which are as many; leave it out")
	case s.Rows != nil:
		c.OptionalCount(path, "rows", s.Rows, 1, stitch.MaxRows)
	case !list && !last:
		c.Add(fault.Join(path, "rows"), fault.ReasonRequired, "is missing; only the last item may go on as long as there is yarn")
	}
	c.OneOf(s.Stitches != nil, list, fault.Join(path, "stitches"), fault.Join(path, "row_stitches"))
	c.OptionalCount(path, "stitches", s.Stitches, 1, stitch.MaxStitches)
	c.Count(path, "change_stitches", s.ChangeStitches, -MaxChange, MaxChange)
	c.OptionalCount(path, "change_every_rows", s.ChangeEveryRows, 1, MaxChange)
	c.Needs(s.ChangeStitches != 0 && list, fault.Join(path, "change_stitches"), s.Stitches != nil, "stitches")
	if list {
		vetRowwise(c, path, RowwisePiece{s.RowStitches})
	}
	c.OptionalNumber(path, "pattern_factor", s.PatternFactor, MinPatternFactor, MaxPatternFactor)
	if c.Sound(path) && s.Rows != nil {
		if most, changes := s.mostRows(); *s.Rows > most {
			c.Infeasible("the "+changes+" allow "+report.CountOf(most, "rows")+", of which the last has "+
				report.CountOf(s.at(most-1), "stitches")+"; a row has 1 to 10000",
				fault.Join(path, "rows"), fault.Join(path, "change_stitches"))
		}
	}
}

// mostRows is how many rows there are before the stitches run out, or are too many, and which changes do it.
func (s RowsAhead) mostRows() (rows int, changes string) {
	room, changes := fault.Or(s.Stitches, 0)-1, "decreases"
	if s.ChangeStitches > 0 {
		room, changes = stitch.MaxStitches-fault.Or(s.Stitches, 0), "increases"
	}
	if s.ChangeStitches == 0 {
		return stitch.MaxRows, changes
	}
	return (room/measure.Abs(s.ChangeStitches) + 1) * fault.Or(s.ChangeEveryRows, 1), changes
}

// at is how many stitches row i has, counted from 0.
func (s RowsAhead) at(i int) int {
	if len(s.RowStitches) > 0 {
		return s.RowStitches[i]
	}
	return fault.Or(s.Stitches, 0) + s.ChangeStitches*(i/fault.Or(s.ChangeEveryRows, 1))
}

// vetBorder checks a border that may be absent.
func vetBorder(c *fault.Checks, field string, in RemainingInput) {
	b := in.Border
	if b == nil {
		return
	}
	c.Count(field, "rows", b.Rows, 0, maxBorder)
	if b.Rows == 0 && !b.bindsOff() {
		c.Add(field, fault.ReasonContradictory, "has neither rows nor a bind-off; leave it out, or give one of them")
	}
	c.OptionalCount(field, "stitches", b.Stitches, 1, stitch.MaxStitches)
	c.OptionalNumber(field, "pattern_factor", b.PatternFactor, MinPatternFactor, MaxPatternFactor)
	c.OptionalCount(field, "yarn_number", b.YarnNumber, 1, MaxYarns)
	at := fault.Join(field, "yarn_number")
	if n := fault.Or(b.YarnNumber, 1); c.Sound(at) && n > max(1, len(in.Yarns)) {
		c.Infeasible("there is no yarn "+measure.Decimal(float64(n), 0)+"; yarns has "+measure.Decimal(float64(len(in.Yarns)), 0), at)
	}
}

// vetStripes checks the stripes, and that no yarn is left out of them and the border.
func vetStripes(c *fault.Checks, field string, in RemainingInput) {
	if len(in.Stripes) == 0 {
		return
	}
	c.Items("", field, len(in.Stripes), MaxStripes)
	if !c.Sound(field) {
		return
	}
	named := make([]bool, MaxYarns+1)
	if in.Border != nil {
		named[max(0, min(fault.Or(in.Border.YarnNumber, 1), MaxYarns))] = true
	}
	for i, s := range in.Stripes {
		path := fault.Index(field, i)
		c.RequiredCount(path, "yarn_number", s.YarnNumber, 1, MaxYarns)
		c.RequiredCount(path, "rows", s.Rows, 1, stitch.MaxRows)
		at := fault.Join(path, "yarn_number")
		if !c.Sound(at) {
			continue
		}
		named[s.YarnNumber] = true
		if s.YarnNumber > len(in.Yarns) && c.Sound("yarns") {
			c.Infeasible("there is no yarn "+measure.Decimal(float64(s.YarnNumber), 0)+"; yarns has "+
				measure.Decimal(float64(len(in.Yarns)), 0), at)
		}
	}
	for i := range in.Yarns {
		if c.Sound(field, "border", "yarns") && !named[i+1] {
			c.Add(field, fault.ReasonContradictory, "never come to yarn %d, nor does the border; give it a stripe or leave it out", i+1)
		}
	}
}
