package knitmath

// StitchPattern is a fabric, by how much yarn a stitch of it takes beside plain
// knitting at the same gauge.
type StitchPattern int32

// The stitch patterns.
const (
	StitchPatternUnspecified StitchPattern = iota // plain
	StitchPatternPlain
	StitchPatternGarter
	StitchPatternRib
	StitchPatternCables
)

// patternFactors is the yarn of a stitch beside a plain one, by StitchPattern.
// Plain is 1 by definition. The others are common practice, without an author:
// their ranges say how far the practice goes. For rib and purl fabrics the
// literature has constants of a repeat unit rather than of a stitch, which are
// not used here.
var patternFactors = [...]YarnRange{
	StitchPatternUnspecified: {1, 1, 1},
	StitchPatternPlain:       {1, 1, 1},
	StitchPatternGarter:      {1.00, 1.05, 1.10},
	StitchPatternRib:         {1.00, 1.10, 1.20},
	StitchPatternCables:      {1.10, 1.20, 1.30},
}

// A CountedPiece is a rectangle counted in stitches and rows.
type CountedPiece struct {
	StitchCount int
	RowCount    int
}

// A TrapezoidPiece is measured in cm.
type TrapezoidPiece struct {
	StartWidthCm float64
	EndWidthCm   float64
	HeightCm     float64
}

// A RowwisePiece is given row by row.
type RowwisePiece struct {
	StitchCounts []int
}

// A Piece is one piece of the work. Exactly one of Counted, Trapezoid and
// Rowwise must be given.
type Piece struct {
	Name          string
	Quantity      *int
	Pattern       StitchPattern
	PatternFactor *float64
	Counted       *CountedPiece
	Trapezoid     *TrapezoidPiece
	Rowwise       *RowwisePiece
}

// PieceYarn is the yarn of one piece, all its copies together, by loop, reserve
// not included.
type PieceYarn struct {
	Name        string
	StitchCount float64
	AreaCm2     float64
	LengthM     float64
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

// piece is a checked Piece: either stitches or an area is known, all copies
// together; the gauge gives the other.
type piece struct {
	name     string
	factor   YarnRange
	stitches int64
	// area2 is twice the area in square micrometres, 0 where stitches are given.
	area2 int64
}

// pieces checks the pieces, of which there must be one.
func (c *checks) pieces(field string, given []Piece) []piece {
	if len(given) == 0 {
		c.add(field, ReasonRequired, "is empty; give one piece or more")
	}
	if !c.items("", field, len(given), MaxPieces) {
		return nil
	}
	pieces := make([]piece, len(given))
	for i, p := range given {
		pieces[i] = c.piece(index(field, i), p)
	}
	return pieces
}

func (c *checks) piece(path string, p Piece) piece {
	c.text(path, "name", p.Name)
	okQuantity := c.optionalCount(path, "quantity", p.Quantity, 1, MaxQuantity)
	okPattern := enum(c, path, "pattern", p.Pattern, StitchPatternCables)
	c.optionalNumber(path, "pattern_factor", p.PatternFactor, MinPatternFactor, MaxPatternFactor)
	if p.Pattern != StitchPatternUnspecified && p.PatternFactor != nil {
		c.add(join(path, "pattern"), ReasonContradictory, "excludes pattern_factor; give one of them")
		c.add(join(path, "pattern_factor"), ReasonContradictory, "excludes pattern; give one of them")
	}
	out := piece{name: p.Name}
	switch {
	case p.PatternFactor != nil:
		out.factor = YarnRange{*p.PatternFactor, *p.PatternFactor, *p.PatternFactor}
	case okPattern:
		out.factor = patternFactors[p.Pattern]
	}
	c.oneShape(path, p)
	if p.Counted != nil {
		c.counted(join(path, "counted"), *p.Counted, &out)
	}
	if p.Trapezoid != nil {
		c.trapezoid(join(path, "trapezoid"), *p.Trapezoid, &out)
	}
	if p.Rowwise != nil {
		c.rowwise(join(path, "rowwise"), *p.Rowwise, &out)
	}
	if okQuantity {
		// At most 1e8 stitches or 4e14 square micrometres a copy.
		out.stitches *= int64(or(p.Quantity, 1))
		out.area2 *= int64(or(p.Quantity, 1))
	}
	return out
}

// oneShape checks that a piece has one shape.
func (c *checks) oneShape(path string, p Piece) {
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
			c.add(join(path, s.field), ReasonRequired, "is missing, and so are the other shapes; give one of them")
		case n > 1 && s.given:
			c.add(join(path, s.field), ReasonContradictory, "excludes the other shapes; give one of them")
		}
	}
}

func (c *checks) counted(path string, p CountedPiece, out *piece) {
	okStitches := c.requiredCount(path, "stitch_count", p.StitchCount, 1, MaxStitches)
	okRows := c.requiredCount(path, "row_count", p.RowCount, 1, MaxRows)
	if okStitches && okRows {
		out.stitches = int64(p.StitchCount) * int64(p.RowCount)
	}
}

func (c *checks) trapezoid(path string, p TrapezoidPiece, out *piece) {
	ok := c.number(path, "start_width_cm", p.StartWidthCm, 0, MaxCm)
	ok = c.number(path, "end_width_cm", p.EndWidthCm, 0, MaxCm) && ok
	widths := micrometres(p.StartWidthCm) + micrometres(p.EndWidthCm)
	if ok && widths == 0 {
		ok = false
		c.add(join(path, "start_width_cm"), ReasonRequired, "is missing or 0, and so is end_width_cm; give one of them or both")
		c.add(join(path, "end_width_cm"), ReasonRequired, "is missing or 0, and so is start_width_cm; give one of them or both")
	}
	if c.requiredNumber(path, "height_cm", p.HeightCm, MinCm, MaxCm) && ok {
		out.area2 = widths * micrometres(p.HeightCm)
	}
}

func (c *checks) rowwise(path string, p RowwisePiece, out *piece) {
	if len(p.StitchCounts) == 0 {
		c.add(join(path, "stitch_counts"), ReasonRequired, "is empty; give the stitches of every row")
	}
	if !c.items(path, "stitch_counts", len(p.StitchCounts), MaxRows) {
		return
	}
	field := join(path, "stitch_counts")
	for i, n := range p.StitchCounts {
		if n < 1 || n > MaxStitches {
			c.count("", index(field, i), n, 1, MaxStitches)
			continue
		}
		out.stitches += int64(n)
	}
}

// measure is the stitches and the area in cm2 of a piece at a gauge of so many
// stitches to the cm2.
func (p piece) measure(density float64) (stitches, areaCm2 float64) {
	if p.area2 == 0 {
		return float64(p.stitches), float64(p.stitches) / density
	}
	areaCm2 = float64(p.area2) / 2e8
	return areaCm2 * density, areaCm2
}
