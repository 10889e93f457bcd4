package knitmath

import "example.com/knitmath/knitmath/stitch"

// Limits on questions. They bound every answer: no reply grows beyond what
// these allow, and the largest of them is tested.
const (
	// MaxStitches is the most stitches in a row. A blanket two metres wide at
	// 40 stitches to 10 cm has 800; ten thousand leaves room for lace edgings
	// counted along their length.
	MaxStitches = stitch.MaxStitches
	// MaxRows is the most rows in a piece, by the same measure.
	MaxRows = stitch.MaxRows
	// MaxWedgeRows is the greatest rise of a wedge, in rows: each pair of rows
	// comes back written out, so the limit is tighter.
	MaxWedgeRows = 2_000
	// MaxYokeRounds is the most rounds in a yoke: two metres at 10 rounds a cm.
	MaxYokeRounds = 2_000
	// MaxYokeSteps is the most decrease rounds in a yoke: each comes back
	// written out.
	MaxYokeSteps = 200
	// MaxReadings is the most readings in one list of a swatch.
	MaxReadings = 100
	// MaxItems is the most pattern counts in one conversion.
	MaxItems = 1_000
	// MaxSizes is the most printed sizes in one conversion.
	MaxSizes = 100
	// MaxPieces is the most pieces in one yarn estimate.
	MaxPieces = 100
	// MaxColours is the most colours carried in one row: more is not practical
	// in the hand.
	MaxColours = 5
	// MaxViolations is the most faults listed of one question. Transports carry
	// errors in headers, which are not made for more; a question with a thousand
	// wrong items learns of the first hundred.
	MaxViolations = 100
	// MaxNameLength is the most characters in a caller's own name for something.
	MaxNameLength = 100

	// MinCm and MaxCm bound lengths of a piece: a millimetre is finer than any
	// tape, ten metres longer than any piece.
	MinCm = 0.1
	MaxCm = 1_000.0
)
