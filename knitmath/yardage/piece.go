package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// MaxPieces is the most pieces in one yarn estimate.
const MaxPieces = 100

// MaxRowwiseRows is the most rows that are given one by one, in all pieces together:
// a garment has some two thousand.
const MaxRowwiseRows = 2 * stitch.MaxRows

// A CountedPiece is a rectangle counted in stitches and rows.
type CountedPiece struct {
	Stitches int
	Rows     int
}

// A TrapezoidPiece is measured in cm. A width that is nil is as the other: a rectangle.
type TrapezoidPiece struct {
	StartWidthCm *float64
	EndWidthCm   *float64
	HeightCm     float64
}

// A RowwisePiece is given row by row.
type RowwisePiece struct {
	RowStitches []int
}

// A Piece is one piece of the work. Exactly one of Counted, Trapezoid and
// Rowwise must be given. Its own gauge is given where its fabric has another than the
// question's: a border in garter stitch, a rib.
type Piece struct {
	Name          string
	Times         *int
	Pattern       StitchPattern
	PatternFactor *float64
	Gauge         *gauge.Gauge
	Counted       *CountedPiece
	Trapezoid     *TrapezoidPiece
	Rowwise       *RowwisePiece
}

// PieceYarn is the yarn of one piece, all its copies together, by loop, reserve
// not included.
type PieceYarn struct {
	Name         string
	Stitches     float64
	AreaCm2      float64
	LengthM      float64
	LoopLengthCm float64
	LoopConstant float64
}

// Ranges of a piece.
const (
	// MaxQuantity is the most copies of a piece: a blanket of a hundred squares.
	MaxQuantity = 100
	// A caller's own factor: no fabric knit by hand takes half or three times the
	// yarn of plain knitting at its gauge.
	MinPatternFactor = 0.5
	MaxPatternFactor = 3.0
)

// vetPieces checks the pieces, of which there must be one.
func vetPieces(c *fault.Checks, field string, given []Piece) {
	if len(given) == 0 {
		c.Add(field, fault.ReasonRequired, "is empty; give one piece or more")
	}
	c.Items("", field, len(given), MaxPieces)
	if !c.Sound(field) {
		return
	}
	rows := 0
	for i, p := range given {
		path := fault.Index(field, i)
		vetPiece(c, path, p)
		if p.Rowwise == nil || rows > MaxRowwiseRows {
			continue
		}
		list := fault.Join(path, "rowwise.row_stitches")
		if rows += len(p.Rowwise.RowStitches); rows > MaxRowwiseRows && c.Sound(list) {
			c.Add(list, fault.ReasonTooMany, "all pieces together have at most %d rows that are given one by one", MaxRowwiseRows)
		}
	}
}

func vetPiece(c *fault.Checks, path string, p Piece) {
	c.Text(path, "name", p.Name)
	c.OptionalCount(path, "times", p.Times, 1, MaxQuantity)
	fault.Enum(c, path, "pattern", p.Pattern, StitchPatternDouble)
	c.OptionalNumber(path, "pattern_factor", p.PatternFactor, MinPatternFactor, MaxPatternFactor)
	c.AtMostOne(p.Pattern != StitchPatternUnspecified, p.PatternFactor != nil,
		fault.Join(path, "pattern"), fault.Join(path, "pattern_factor"))
	if p.Gauge != nil {
		gauge.Vet(c, fault.Join(path, "gauge"), p.Gauge)
	}
	vetOneShape(c, path, p)
	if p.Counted != nil {
		vetCounted(c, fault.Join(path, "counted"), *p.Counted)
	}
	if p.Trapezoid != nil {
		vetTrapezoid(c, fault.Join(path, "trapezoid"), *p.Trapezoid)
	}
	if p.Rowwise != nil {
		vetRowwise(c, fault.Join(path, "rowwise"), *p.Rowwise)
	}
}

// vetOneShape checks that a piece has one shape.
func vetOneShape(c *fault.Checks, path string, p Piece) {
	shapes := []struct {
		field string
		given bool
	}{{"counted", p.Counted != nil}, {"trapezoid", p.Trapezoid != nil}, {"rowwise", p.Rowwise != nil}}
	n := 0
	for _, s := range shapes {
		if s.given {
			n++
		}
	}
	for _, s := range shapes {
		switch {
		case n == 0:
			c.Add(fault.Join(path, s.field), fault.ReasonRequired, "is missing, and so are the other shapes; give one of them")
		case n > 1 && s.given:
			c.Add(fault.Join(path, s.field), fault.ReasonContradictory, "excludes the other shapes; give one of them")
		}
	}
}

func vetCounted(c *fault.Checks, path string, p CountedPiece) {
	c.RequiredCount(path, "stitches", p.Stitches, 1, stitch.MaxStitches)
	c.RequiredCount(path, "rows", p.Rows, 1, stitch.MaxRows)
}

func vetTrapezoid(c *fault.Checks, path string, p TrapezoidPiece) {
	c.OptionalNumber(path, "start_width_cm", p.StartWidthCm, 0, measure.MaxCm)
	c.OptionalNumber(path, "end_width_cm", p.EndWidthCm, 0, measure.MaxCm)
	if c.Sound(path) && p.widths() == 0 {
		c.Add(fault.Join(path, "start_width_cm"), fault.ReasonRequired, "is missing or 0, and so is end_width_cm; give one of them or both")
		c.Add(fault.Join(path, "end_width_cm"), fault.ReasonRequired, "is missing or 0, and so is start_width_cm; give one of them or both")
	}
	c.RequiredNumber(path, "height_cm", p.HeightCm, measure.MinCm, measure.MaxCm)
}

func vetRowwise(c *fault.Checks, path string, p RowwisePiece) {
	field := fault.Join(path, "row_stitches")
	if len(p.RowStitches) == 0 {
		c.Add(field, fault.ReasonRequired, "is empty; give the stitches of every row")
	}
	c.Items("", field, len(p.RowStitches), stitch.MaxRows)
	if !c.Sound(field) {
		return
	}
	for i, n := range p.RowStitches {
		if n < 1 || n > stitch.MaxStitches { // the path of a row is written only for one that is wrong
			c.Count("", fault.Index(field, i), n, 1, stitch.MaxStitches)
		}
	}
}

// piece is a Piece whose fields are in order: either stitches or an area is known,
// all copies together; its gauge gives the other.
type piece struct {
	name     string
	fabric   StitchPattern
	factor   Range
	stitches int64
	// area2 is twice the area in square micrometres, 0 where stitches are given.
	area2 int64
	// Stitches and rows to the cm.
	wales, courses float64
	// ownGauge: they are the piece's; derived: its rows are, from its stitches.
	ownGauge, derived bool
	ratio             Range // rows to a stitch of width that are derived
}

// worked is a checked piece with all its copies: at most 1e8 stitches or 4e14
// square micrometres a copy.
func (q *question) worked(p Piece) piece {
	out := piece{name: p.Name, fabric: max(p.Pattern, StitchPatternStockinette), factor: patternFactors[p.Pattern],
		wales: q.st.PerCm(), courses: q.rowsPerCm()}
	if q.in.StitchGauge != nil {
		out.derived, out.ratio = true, rowsOf(p.Pattern)
		out.courses = out.wales * out.ratio.Likely
	}
	if f := p.PatternFactor; f != nil {
		out.factor = Range{*f, *f, *f}
		if *f != 1 {
			out.fabric = StitchPatternUnspecified // the caller's own
		}
	}
	if g := p.Gauge; g != nil {
		var c fault.Checks // it has been checked
		st, rw := gauge.Vet(&c, "", g)
		out.wales, out.courses, out.derived, out.ownGauge = st.PerCm(), rw.PerCm(), false, true
	}
	switch {
	case p.Counted != nil:
		out.stitches = int64(p.Counted.Stitches) * int64(p.Counted.Rows)
	case p.Trapezoid != nil:
		out.area2 = p.Trapezoid.widths() * measure.Micrometres(p.Trapezoid.HeightCm)
	case p.Rowwise != nil:
		for _, n := range p.Rowwise.RowStitches {
			out.stitches += int64(n)
		}
	}
	times := int64(fault.Or(p.Times, 1))
	out.stitches *= times
	out.area2 *= times
	return out
}

// widths is both widths together, in micrometres.
func (p TrapezoidPiece) widths() int64 {
	start := fault.Or(p.StartWidthCm, fault.Or(p.EndWidthCm, 0))
	return measure.Micrometres(start) + measure.Micrometres(fault.Or(p.EndWidthCm, start))
}

// measure is the stitches and the area in cm2 of a piece at its gauge, which may be off.
func (p piece) measure(off misgauge) (stitches, areaCm2 float64) {
	wales, courses := off.of(p)
	if p.area2 == 0 {
		return float64(p.stitches), float64(p.stitches) / (wales * courses)
	}
	areaCm2 = float64(p.area2) / 2e8
	return areaCm2 * wales * courses, areaCm2
}
