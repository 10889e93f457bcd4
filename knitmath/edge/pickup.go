package edge

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// PickUpSpread is how the rows that are skipped, or worked twice, lie among the
// others.
type PickUpSpread int32

// The orders.
const (
	PickUpSpreadUnspecified PickUpSpread = iota // least effort
	PickUpSpreadInterleaved
	PickUpSpreadGrouped
	PickUpSpreadLeastEffort
)

// Ranges of picking up.
const (
	// MinLargestNumber and MaxLargestNumber bound the numbers of a ratio: "19 for
	// every 20" is as much as anybody counts while picking up.
	MinLargestNumber     = 2
	MaxLargestNumber     = 20
	defaultLargestNumber = 8
	// mostAlone and mostAlonePercent are by how many stitches along the edge, and by how much of them, a
	// ratio by itself may miss before greater numbers are taken, if nobody said how great they may
	// be: as much as rows of least effort may stray, and as nobody sees in a band. Own choice.
	mostAlone        = 2
	mostAlonePercent = 3
	// mostShortPercent is by how much a band may be shorter than its edge: one a little shorter
	// lies flat. Common practice.
	mostShortPercent = 5
	// MaxPerRow is the most stitches through one row of an edge: a third would
	// pucker it. Common practice.
	MaxPerRow = 2
)

// PickUpInput asks for the stitches of a band along an edge. It mirrors
// PlanPickUpRequest.
type PickUpInput struct {
	LengthRows  *int
	LengthCm    *float64
	Gauge       *gauge.Gauge
	BandGauge   *gauge.Gauge
	StitchRule  *gauge.CountRule
	LargestTerm *int
	Spread      PickUpSpread
	DisplayUnit measure.DisplayUnit
	WithOutline bool
}

// A PickUpRatio is a ratio as a knitter says it.
type PickUpRatio struct {
	Stitches      int
	Rows          int
	Text          string
	ErrorPercent  float64
	ErrorStitches float64
}

// PickUp is the answer to PickUpInput.
type PickUp struct {
	LengthRows  int
	Stitches    gauge.FittedCount
	Ratio       PickUpRatio
	SkippedRows int
	DoubledRows int
	Instruction stitch.Instruction
	// GreatestDepartureStitches is how far the row strays from an even spread.
	GreatestDepartureStitches float64
	// Effort is how much there is to remember: the items of the row.
	Effort  int
	Notices []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	unit measure.DisplayUnit
}

// PlanPickUp finds the stitches of a band as long as an edge of r rows,
//
//	stitches = r * (row length of the piece) / (stitch width of the band)
//
// exactly, then the nearest count its rule allows, half-way up; the ratio of
// stitches to rows in the smallest numbers that come nearest to the same
// quotient (see [spread.Fraction.NearestSmall]); and the row that picks them up,
// the easiest of those (see leastEffort) that stray from an even share by no more than
// [MaxPickUpDeparture] at any place, or evenly spread (see pickUpRow), which keeps to
// that too.
//
// An edge must have from 1 to 10000 rows; a length in [0.1, 1000] cm is taken to
// the nearest row, half-way up. More than two stitches a row are refused.
//
// Source: own derivation; the sum is the definition of gauge.
func PlanPickUp(in PickUpInput) (PickUp, error) {
	var c fault.Checks
	c.OptionalCount("", "length_rows", in.LengthRows, 1, stitch.MaxRows)
	c.OptionalNumber("", "length_cm", in.LengthCm, measure.MinCm, measure.MaxCm)
	c.OneOf(in.LengthRows != nil, in.LengthCm != nil, "length_rows", "length_cm")
	st, rw := gauge.Vet(&c, "gauge", in.Gauge)
	if in.BandGauge != nil {
		st, _ = gauge.Vet(&c, "band_gauge", in.BandGauge)
	}
	r := gauge.VetRule(&c, "stitch_rule", in.StitchRule)
	c.OptionalCount("", "largest_term", in.LargestTerm, MinLargestNumber, MaxLargestNumber)
	fault.Enum(&c, "", "spread", in.Spread, PickUpSpreadLeastEffort)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)

	out := PickUp{unit: in.DisplayUnit}
	if c.Sound("length_rows", "length_cm", "gauge", "band_gauge", "stitch_rule") {
		vetPickUp(&c, &out, in, st, rw, r)
	}
	if err := c.Err(); err != nil {
		return PickUp{}, err
	}
	out.Ratio = pickUpRatio(gauge.Change(rw, st), out, in.LargestTerm)
	var row stitch.Row
	switch in.Spread {
	case PickUpSpreadInterleaved, PickUpSpreadGrouped:
		var evened bool
		if row, evened = pickUpRow(out.LengthRows, out.Stitches.Count, in.Spread == PickUpSpreadGrouped); evened {
			out.Notices = append(out.Notices, evenedNotice)
		}
	default:
		row = leastEffort(out.LengthRows, out.Stitches.Count)
	}
	out.Instruction = stitch.Instruction{Row: row, StartStitches: out.LengthRows, EndStitches: out.Stitches.Count}
	out.Effort = row.Items()
	out.GreatestDepartureStitches = edgeDeparture(out.Instruction.Row, out.LengthRows, out.Stitches.Count)
	out.SkippedRows = max(0, out.LengthRows-out.Stitches.Count)
	out.DoubledRows = max(0, out.Stitches.Count-out.LengthRows)
	if in.WithOutline {
		out.Outline = out.outline(rw)
	}
	return out, nil
}

// vetPickUp settles the rows and the stitches.
func vetPickUp(c *fault.Checks, out *PickUp, in PickUpInput, st, rw gauge.Density, r gauge.Rule) {
	field := "length_rows"
	if in.LengthRows != nil {
		out.LengthRows = *in.LengthRows
	} else {
		field = "length_cm"
		out.LengthRows = rw.Nearest(measure.Micrometres(*in.LengthCm))
		if out.LengthRows < 1 || out.LengthRows > stitch.MaxRows {
			c.Infeasible("the edge has "+report.CountOf(out.LengthRows, "rows")+" at this gauge; it must have from 1 to "+
				strconv.Itoa(stitch.MaxRows), field, "gauge")
			return
		}
	}
	fields := []string{field, "gauge"}
	if in.BandGauge != nil {
		fields[1] = "band_gauge"
	}
	if in.StitchRule != nil {
		fields = append(fields, "stitch_rule")
	}
	most := MaxPerRow * out.LengthRows
	tooMany := func(count int) {
		c.Infeasible(report.CountOf(count, "stitches")+" are wanted, and an edge of "+report.CountOf(out.LengthRows, "rows")+
			" takes at most "+strconv.Itoa(most)+", two in every row"+tooManyStitches(count, out.LengthRows, st, rw, r), fields...)
	}
	if least := int(r.Smallest()); least > most { // however it is rounded
		tooMany(least)
		return
	}
	f := gauge.Change(rw, st).VetFit(c, out.LengthRows, r, "stitches", fields...)
	if f == nil {
		return
	}
	if f.Count > most {
		tooMany(f.Count)
		return
	}
	out.Stitches = *f
	if f.Halfway {
		out.Notices = append(out.Notices, gauge.HalfwayNotice(field, f.Count))
	}
	if in.StitchRule != nil {
		field = "stitch_rule"
	}
	if short := f.Exact - float64(f.Count); short > 1 && 100*short > mostShortPercent*f.Exact {
		out.Notices = append(out.Notices, tightensNotice(field, out))
	}
}

// pickUpRatio is the small fraction nearest to the stitches of the band for one
// row of the edge: of numbers up to the greatest asked for, or else of the smallest from 8 on with
// which it does not miss by more than mostAlone or mostAlonePercent, 20 at the most.
func pickUpRatio(g gauge.Regauge, out PickUp, largest *int) PickUpRatio {
	limit := fault.Or(largest, defaultLargestNumber)
	ratio := ratioUpTo(g, out, int64(limit))
	misses := func() bool {
		return math.Abs(ratio.ErrorStitches) > mostAlone && math.Abs(ratio.ErrorPercent) > mostAlonePercent
	}
	for largest == nil && limit < MaxLargestNumber && misses() {
		limit++
		ratio = ratioUpTo(g, out, int64(limit))
	}
	return ratio
}

// ratioUpTo is that of numbers up to a limit.
func ratioUpTo(g gauge.Regauge, out PickUp, limit int64) PickUpRatio {
	num, den := g.CountRatio()
	exact := spread.Fraction{Num: num, Den: den}
	f := exact.NearestSmall(limit)
	// The ratio less the exact one, times both denominators.
	off := float64(f.Num*exact.Den - f.Den*exact.Num)
	return PickUpRatio{
		Stitches: int(f.Num), Rows: int(f.Den),
		Text:          ratioWords(f),
		ErrorPercent:  100 * off / float64(f.Den) / float64(exact.Num),
		ErrorStitches: float64(out.LengthRows) * off / float64(f.Den) / float64(exact.Den),
	}
}
