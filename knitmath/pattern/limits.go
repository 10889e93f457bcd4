package pattern

import "example.com/knitmath/knitmath/stitch"

// Limits on what is read. Beyond the first three nothing is read at all; the
// others are findings at the place where they are passed.
const (
	// MaxTextBytes is the longest text: some thirty printed pages of rows.
	MaxTextBytes = 48 << 10
	// MaxSizes is the most sizes of one pattern: twice what is usually printed.
	MaxSizes = 20
	// MaxLines is the most rows and directions in one text; the reply tells of
	// each in every size.
	MaxLines = 500
	// MaxSteps is the most steps in one text: each comes back in the reply.
	MaxSteps = 5_000
	// MaxListed is the most numbers of graded lists in one text, which come
	// back too.
	MaxListed = 20_000
	// MaxRowsGiven, MaxStepsGiven and MaxListedGiven are the same of rows that are
	// given as trees, in which a step is some twenty times as long as in a text.
	// No row depends on another, so that more can be asked for in parts.
	MaxRowsGiven   = 100
	MaxStepsGiven  = 1_200
	MaxListedGiven = 6_000
	// MaxNumber is the greatest number in a text: no row has more stitches.
	MaxNumber = stitch.MaxStitches
	// MaxRows is the most rows worked in one size, repeats included: as many as
	// in the largest piece.
	MaxRows = 10_000
	// MaxNamed is the most row numbers that all labels and repeats of a text name
	// together: ten times the rows of the largest piece.
	MaxNamed = 10 * MaxRows
	// MaxFindings is the most findings listed. A text with more has to be
	// mended and asked again.
	MaxFindings = 200
	// maxReadings is the most of them that only say how something was read.
	maxReadings = MaxFindings * 3 / 4
	// MaxAbbreviations is the most abbreviations of the caller's own: the trade's
	// whole list has about a hundred.
	MaxAbbreviations = 100
	// MaxAbbreviationLength is the most characters of one.
	MaxAbbreviationLength = 20
	// MaxTakes is the most stitches that a declared abbreviation takes or
	// leaves: a wide cable crossing has twenty or so.
	MaxTakes = 100
	// MaxLabelLength is the most characters of a label or a direction.
	MaxLabelLength = 200
	// handWork is how many stitches the machine works for one text before only
	// counting goes on: a few milliseconds.
	handWork = 200_000
)
