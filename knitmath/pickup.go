package knitmath

import "strconv"

// PickUpOrder is how the rows that are skipped, or worked twice, lie among the
// others.
type PickUpOrder int32

// The orders.
const (
	PickUpOrderUnspecified PickUpOrder = iota // interleaved
	PickUpOrderInterleaved
	PickUpOrderGrouped
)

// Ranges of picking up.
const (
	// MinLargestNumber and MaxLargestNumber bound the numbers of a ratio: "19 for
	// every 20" is as much as anybody counts while picking up.
	MinLargestNumber     = 2
	MaxLargestNumber     = 20
	defaultLargestNumber = 8
	// MaxPerRow is the most stitches through one row of an edge: a third would
	// pucker it. Common practice.
	MaxPerRow = 2
)

// PickUpInput asks for the stitches of a band along an edge. It mirrors
// PlanPickUpRequest.
type PickUpInput struct {
	RowCount      *int
	LengthCm      *float64
	Gauge         *Gauge
	BandGauge     *Gauge
	Rule          *CountRule
	LargestNumber *int
	Order         PickUpOrder
	DisplayUnit   DisplayUnit
	WithOutline   bool
}

// A PickUpRatio is a ratio as a knitter says it.
type PickUpRatio struct {
	StitchCount   int
	RowCount      int
	Text          string
	ErrorPercent  float64
	ErrorStitches float64
}

// PickUp is the answer to PickUpInput.
type PickUp struct {
	RowCount     int
	Stitches     FittedCount
	Ratio        PickUpRatio
	SkippedCount int
	DoubledCount int
	Instruction  Instruction
	// GreatestDepartureStitches is how far the row strays from an even spread.
	GreatestDepartureStitches float64
	Directions                []string
	Notices                   []Notice
	// Outline is nil unless asked for.
	Outline *Outline

	unit DisplayUnit
}

// PlanPickUp finds the stitches of a band as long as an edge of r rows,
//
//	stitches = r * (row length of the piece) / (stitch width of the band)
//
// exactly, then the nearest count its rule allows, half-way up; the ratio of
// stitches to rows in the smallest numbers that come nearest to the same
// quotient (see nearestSmall); and the row that picks them up, evenly spread (see
// pickUpRow).
//
// An edge must have from 1 to 10000 rows; a length in [0.1, 1000] cm is taken to
// the nearest row, half-way up. More than two stitches a row are refused.
//
// Source: own derivation; the sum is the definition of gauge.
func PlanPickUp(in PickUpInput) (PickUp, error) {
	var c checks
	okRows := c.optionalCount("", "row_count", in.RowCount, 1, MaxRows)
	okRows = c.optionalNumber("", "length_cm", in.LengthCm, MinCm, MaxCm) && okRows
	okRows = c.oneOf(in.RowCount != nil, in.LengthCm != nil, "row_count", "length_cm") && okRows
	st, rw, okGauge := c.gauge("gauge", in.Gauge)
	if in.BandGauge != nil {
		var ok bool
		st, _, ok = c.gauge("band_gauge", in.BandGauge)
		okGauge = ok && okGauge
	}
	r, okRule := c.rule("rule", in.Rule)
	c.optionalCount("", "largest_number", in.LargestNumber, MinLargestNumber, MaxLargestNumber)
	enum(&c, "", "order", in.Order, PickUpOrderGrouped)
	enum(&c, "", "display_unit", in.DisplayUnit, DisplayUnitIn)

	out := PickUp{unit: in.DisplayUnit}
	if okRows && okGauge && okRule {
		c.pickUp(&out, in, regauge{rw, st}, r)
	}
	if err := c.err(); err != nil {
		return PickUp{}, err
	}
	out.Ratio = regauge{rw, st}.pickUpRatio(out, int64(or(in.LargestNumber, defaultLargestNumber)))
	out.Instruction = Instruction{
		Row:        pickUpRow(out.RowCount, out.Stitches.Count, in.Order == PickUpOrderGrouped),
		StartCount: out.RowCount, EndCount: out.Stitches.Count,
	}
	out.GreatestDepartureStitches = edgeDeparture(out.Instruction.Row, out.RowCount, out.Stitches.Count)
	out.SkippedCount = max(0, out.RowCount-out.Stitches.Count)
	out.DoubledCount = max(0, out.Stitches.Count-out.RowCount)
	out.Directions = out.directions()
	if in.WithOutline {
		out.Outline = out.outline(rw)
	}
	return out, nil
}

// oneOf checks that exactly one of two fields is given.
func (c *checks) oneOf(first, second bool, firstField, secondField string) bool {
	switch {
	case first && second:
		c.add(firstField, ReasonContradictory, "excludes %s; give one of them", secondField)
		c.add(secondField, ReasonContradictory, "excludes %s; give one of them", firstField)
	case !first && !second:
		c.add(firstField, ReasonRequired, "is missing, and so is %s; give one of them", secondField)
		c.add(secondField, ReasonRequired, "is missing, and so is %s; give one of them", firstField)
	}
	return first != second
}

// pickUp settles the rows and the stitches.
func (c *checks) pickUp(out *PickUp, in PickUpInput, g regauge, r rule) {
	field := "row_count"
	if in.RowCount != nil {
		out.RowCount = *in.RowCount
	} else {
		field = "length_cm"
		out.RowCount = g.pattern.nearest(micrometres(*in.LengthCm))
		if out.RowCount < 1 || out.RowCount > MaxRows {
			c.infeasible("the edge has "+countOf(out.RowCount, "rows")+" at this gauge; it must have from 1 to "+
				strconv.Itoa(MaxRows), field, "gauge")
			return
		}
	}
	fields := []string{field, "gauge"}
	if in.BandGauge != nil {
		fields[1] = "band_gauge"
	}
	if in.Rule != nil {
		fields = append(fields, "rule")
	}
	f, ok := g.fit(out.RowCount, r)
	if !ok {
		c.misfit(g.convert(out.RowCount), r, "stitches", fields...)
		return
	}
	if most := MaxPerRow * out.RowCount; f.Count > most {
		c.infeasible(countOf(f.Count, "stitches")+" are wanted, and an edge of "+countOf(out.RowCount, "rows")+
			" takes at most "+strconv.Itoa(most)+", two in every row; so many stitches need an edge of "+
			countOf((f.Count+1)/MaxPerRow, "rows")+", or a band with fewer stitches to the cm", fields...)
		return
	}
	out.Stitches = f
	if f.Halfway {
		out.Notices = append(out.Notices, halfwayNotice(field, f.Count))
	}
}

// pickUpRatio is the small fraction nearest to the stitches of the band for one
// row of the edge.
func (g regauge) pickUpRatio(out PickUp, limit int64) PickUpRatio {
	exact := fraction{g.own.count * g.pattern.span, g.own.span * g.pattern.count}
	f := exact.nearestSmall(limit)
	// The ratio less the exact one, times both denominators.
	off := float64(f.num*exact.den - f.den*exact.num)
	return PickUpRatio{
		StitchCount: int(f.num), RowCount: int(f.den),
		Text:          f.words(),
		ErrorPercent:  100 * off / float64(f.den) / float64(exact.num),
		ErrorStitches: float64(out.RowCount) * off / float64(f.den) / float64(exact.den),
	}
}

// words is "3 stitches for every 4 rows".
func (x fraction) words() string {
	s := countOf(int(x.num), "stitches") + " for every "
	if x.den == 1 {
		return s + "row"
	}
	return s + countOf(int(x.den), "rows")
}

// directions writes what to do.
func (o PickUp) directions() []string {
	d := []string{"With the right side facing, pick up and knit " + countOf(o.Stitches.Count, "stitches") +
		" along the edge, about " + o.Ratio.Text + ": " + o.Instruction.Row.Text() + "."}
	of := " of the " + countOf(o.RowCount, "rows") + " along the edge "
	switch {
	case o.SkippedCount == 1:
		d = append(d, "1"+of+"is skipped.")
	case o.SkippedCount > 1:
		d = append(d, strconv.Itoa(o.SkippedCount)+of+"are skipped.")
	case o.DoubledCount == 1:
		d = append(d, "1"+of+"takes two stitches.")
	case o.DoubledCount > 1:
		d = append(d, strconv.Itoa(o.DoubledCount)+of+"take two stitches.")
	}
	return d
}

// Summary says the answer in words.
func (o PickUp) Summary() string {
	return "Pick up " + countOf(o.Stitches.Count, "stitches") + " along " + countOf(o.RowCount, "rows") + ": a band of " +
		o.unit.size(o.Stitches.SizeCm) + " on an edge of " + o.unit.size(o.Stitches.AskedCm) + ". As a ratio, " +
		o.Ratio.Text + " (" + overall(o.Ratio.ErrorStitches) + ")."
}

// overall writes how many stitches a ratio gives too many or too few over the
// whole edge, to a tenth.
func overall(off float64) string {
	much, direction := decimal(max(off, -off), 1), " too many over the whole edge"
	if off < 0 {
		direction = " too few over the whole edge"
	}
	switch {
	case off == 0:
		return "exactly"
	case much == "0":
		return "less than 0.1 stitch off over the whole edge"
	case much == "1":
		return "1 stitch" + direction
	}
	return much + " stitches" + direction
}

// Sources says where the figures come from.
func (PickUp) Sources() []Source {
	return []Source{
		{"stitches", "rows × row length of the piece / stitch width of the band, exactly; rounded as the rule says",
			SourceStatusOwnDerivation},
		{"ratio", "continued fraction with semiconvergents, walked as the tree of fractions: Stern (1858), Brocot (1861); " +
			"Graham, Knuth and Patashnik, Concrete Mathematics, section 4.5", SourceStatusFromMemory},
		{"spread along the edge", "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30",
			SourceStatusOwnDerivation},
		{"at most two stitches in a row of an edge", "common practice", SourceStatusCommonPractice},
	}
}
