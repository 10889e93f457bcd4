package edge

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// BandDirection is which way a band runs.
type BandDirection int32

// The directions.
const (
	BandDirectionUnspecified BandDirection = iota // along the stitches
	BandDirectionAlongStitches
	BandDirectionAlongRows
)

// Ranges of a band.
const (
	// MinBandStitches and MinBandRows leave room for one hole of a stitch: a
	// stitch on each side of it; a row before it and the two that make it.
	MinBandStitches = 3
	MinBandRows     = 3
	// MaxButtonholes is the most holes of one band. A cassock has 33 buttons.
	MaxButtonholes = 100
	// MaxHoleStitches is the widest hole, by the same measure as MaxTaperEdge.
	MaxHoleStitches = 100
	// holeRows is how many rows a hole takes: bound off in one, cast on in the
	// next.
	holeRows = 2
)

// ButtonholesInput asks for the buttonholes of a band. It mirrors
// PlanButtonholesRequest.
type ButtonholesInput struct {
	Direction         BandDirection
	BandStitches      int
	BandRows          int
	HoleCount         int
	HoleStitches      *int
	HoleCm            *float64
	BeforeFirstPlaces *int
	BeforeFirstCm     *float64
	AfterLastPlaces   *int
	AfterLastCm       *float64
	Gauge             *gauge.Gauge
	HoleRowNumber     *int
	RowChoice         shaping.RowChoice
	DisplayUnit       measure.DisplayUnit
	WithOutline       bool
}

// A Buttonhole is one hole of a band.
type Buttonhole struct {
	FirstStitchNumber int
	LastStitchNumber  int
	BindOffRowNumber  int
	CastOnRowNumber   int
	MiddleCm          *float64
}

// A BandRow is one row of a band that makes or closes holes.
type BandRow struct {
	RowNumber   int
	Side        stitch.Side
	Instruction stitch.Instruction
}

// Buttonholes is the answer to ButtonholesInput.
type Buttonholes struct {
	BandStitches      int
	BandRows          int
	HoleStitches      int
	BeforeFirstPlaces int
	GapPlaces         []int
	AfterLastPlaces   int
	Holes             []Buttonhole
	Rows              []BandRow
	Notices           []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	b    band
	unit measure.DisplayUnit
}

// PlanButtonholes spaces k holes along a band, the first and the last at given
// distances from its ends. With d places between those distances and holes that
// take t places each,
//
//	inner = d - k*t
//
// places are left for the k-1 gaps between them, which differ by at most one
// (along the rows, where only right-side rows bind off, by two), the larger ones
// outermost so that the band reads the same from both ends (see
// [spread.Palindrome]). An even number of gaps cannot share an odd number of
// larger ones that way; they are then mixed evenly, and a notice says so.
//
// Distances in cm are taken to the nearest stitch or row, half-way up.
//
// Source: own derivation.
func PlanButtonholes(in ButtonholesInput) (Buttonholes, error) {
	var c fault.Checks
	b := vetBand(&c, in)
	if err := c.Err(); err != nil {
		return Buttonholes{}, err
	}
	b.vetSizes(&c, in)
	if b.alongRows || b.wide() {
		b.vetPlaces(&c, in)
	}
	if err := c.Err(); err != nil {
		return Buttonholes{}, err
	}
	out := b.plan(in)
	if in.WithOutline {
		out.Outline = b.outline(out)
	}
	return out, nil
}

// band is a checked question.
type band struct {
	alongRows      bool
	st, rw         gauge.Density
	stitches, rows int
	holes, width   int
	row            int // along the stitches: the row that binds off
	step           int // along the rows: from one row that may bind off to the next
	// Places before the first hole and after the last, as asked.
	askedFirst, askedLast *int
	first, last           int // the same as they come out
	gaps                  []int
	notices               []report.Notice
}

// measured reports whether there is a gauge.
func (b band) measured() bool { return !b.st.IsZero() }

// noun is what the distances along the band count.
func (b band) noun() string {
	if b.alongRows {
		return "rows"
	}
	return "stitches"
}

// side is the side of a row of the band: a band knit upward begins on the right
// side; a picked-up one on the wrong side, the right side having picked it up.
func (b band) side(row int) stitch.Side {
	if (row%2 == 1) == b.alongRows {
		return stitch.RightSide
	}
	return stitch.WrongSide
}

// vetBand checks each field for itself, and what excludes what.
func vetBand(c *fault.Checks, in ButtonholesInput) band {
	fault.Enum(c, "", "direction", in.Direction, BandDirectionAlongRows)
	b := band{alongRows: in.Direction == BandDirectionAlongRows, stitches: in.BandStitches, rows: in.BandRows,
		holes: in.HoleCount}
	c.RequiredCount("", "band_stitches", in.BandStitches, MinBandStitches, stitch.MaxStitches)
	c.RequiredCount("", "band_rows", in.BandRows, MinBandRows, stitch.MaxRows)
	c.RequiredCount("", "hole_count", in.HoleCount, 1, MaxButtonholes)
	c.OptionalCount("", "hole_stitches", in.HoleStitches, 1, MaxHoleStitches)
	c.OptionalNumber("", "hole_cm", in.HoleCm, measure.MinCm, measure.MaxCm)
	c.OneOf(in.HoleStitches != nil, in.HoleCm != nil, "hole_stitches", "hole_cm")
	c.OptionalCount("", "before_first_places", in.BeforeFirstPlaces, 1, stitch.MaxStitches)
	c.OptionalNumber("", "before_first_cm", in.BeforeFirstCm, measure.MinCm, measure.MaxCm)
	if in.HoleCount == 1 { // a single hole lies in the middle unless asked otherwise
		c.AtMostOne(in.BeforeFirstPlaces != nil, in.BeforeFirstCm != nil, "before_first_places", "before_first_cm")
	} else {
		c.OneOf(in.BeforeFirstPlaces != nil, in.BeforeFirstCm != nil, "before_first_places", "before_first_cm")
	}
	c.OptionalCount("", "after_last_places", in.AfterLastPlaces, 1, stitch.MaxStitches)
	c.OptionalNumber("", "after_last_cm", in.AfterLastCm, measure.MinCm, measure.MaxCm)
	c.AtMostOne(in.AfterLastPlaces != nil, in.AfterLastCm != nil, "after_last_places", "after_last_cm")
	if in.Gauge != nil {
		b.st, b.rw = gauge.Vet(c, "gauge", in.Gauge)
	} else if in.HoleCm != nil || in.BeforeFirstCm != nil || in.AfterLastCm != nil {
		c.Add("gauge", fault.ReasonRequired, "is missing; lengths in cm need it")
	}
	c.OptionalCount("", "hole_row_number", in.HoleRowNumber, holeRows, stitch.MaxRows)
	if b.alongRows && in.HoleRowNumber != nil {
		c.Add("hole_row_number", fault.ReasonContradictory, "belongs to a band along the stitches, whose holes share a row")
	}
	fault.Enum(c, "", "row_choice", in.RowChoice, shaping.RowChoiceAny)
	if !b.alongRows && in.RowChoice != shaping.RowChoiceUnspecified {
		c.Add("row_choice", fault.ReasonContradictory, "belongs to a band along the rows; give hole_row_number")
	}
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	return b
}

// wide reports whether the holes are as wide as holes may be.
func (b band) wide() bool { return b.width >= 1 && b.width <= MaxHoleStitches }

// vetSizes settles the width of the holes, and where they may lie.
func (b *band) vetSizes(c *fault.Checks, in ButtonholesInput) {
	widthField := "hole_stitches"
	if in.HoleCm != nil {
		widthField = "hole_cm"
	}
	b.width = b.st.Counted(in.HoleStitches, in.HoleCm)
	if !b.wide() {
		c.Infeasible("each hole is "+report.CountOf(b.width, "stitches")+" wide at this gauge; it must be from 1 to "+
			strconv.Itoa(MaxHoleStitches), widthField, "gauge")
		return
	}
	if b.alongRows {
		b.step = 2
		if in.RowChoice == shaping.RowChoiceAny {
			b.step = 1
		}
		if most := b.stitches - 2; b.width > most {
			c.Infeasible("a hole of "+report.CountOf(b.width, "stitches")+" leaves no stitch on each side of it in a band of "+
				strconv.Itoa(b.stitches)+"; it may have at most "+strconv.Itoa(most), "band_stitches", widthField)
		}
		return
	}
	b.row = b.middleRow()
	if in.HoleRowNumber == nil {
		return
	}
	b.row = *in.HoleRowNumber
	switch {
	case b.side(b.row) != stitch.RightSide:
		c.Infeasible("row "+strconv.Itoa(b.row)+" is a wrong-side row, row 1 being one; the even rows are right-side rows",
			"hole_row_number")
	case b.row+1 > b.rows:
		c.Infeasible("the holes are cast on again in the row after "+strconv.Itoa(b.row)+", and the band has "+
			report.CountOf(b.rows, "rows")+"; it needs at least "+strconv.Itoa(b.row+1)+", or the holes at most row "+
			strconv.Itoa((b.rows-1)/2*2), "band_rows", "hole_row_number")
	}
}
