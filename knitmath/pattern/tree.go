package pattern

import "example.com/knitmath/knitmath/stitch"

// SlipManner says how a stitch is slipped.
type SlipManner int32

// The manners of slipping. The trade slips purlwise where nothing is said.
const (
	SlipMannerUnspecified SlipManner = iota // nothing is said
	SlipMannerKwise                         // as if to knit
	SlipMannerPwise                         // as if to purl
	SlipMannerWyif                          // with the yarn in front
	SlipMannerWyib                          // with the yarn in back
	SlipMannerKwiseWyif                     // as if to knit, with the yarn in front
	SlipMannerKwiseWyib                     // as if to knit, with the yarn in back
	SlipMannerPwiseWyif                     // as if to purl, with the yarn in front
	SlipMannerPwiseWyib                     // as if to purl, with the yarn in back

	slipMannerEnd
)

// said reports whether anything is said of a slip.
func (m SlipManner) said() bool { return m > SlipMannerUnspecified && m < slipMannerEnd }

// Step is one part of a row. What is worked is one of an operation, a name and a
// group of steps. How often is Times times, or until RemainingStitches stitches remain.
// Both are lists of numbers, one for all sizes or one for each.
type Step struct {
	// Operation is what is worked; 0 for a name or a group.
	Operation stitch.Op
	// Name is an abbreviation that is no operation: declared, or one of those
	// that this package knows, such as "c4f".
	Name string
	// Steps is a group.
	Steps []Step
	// Times says how many times; 0 for a size that does without.
	Times []int
	// RemainingStitches says how many stitches remain after it; 0 is "to end".
	RemainingStitches []int
	// IntoOneStitch: the group is worked into a single stitch.
	IntoOneStitch bool
	// Manner is how a stitch is slipped.
	Manner SlipManner

	at            span
	takes, leaves int16 // of one working of an operation or a name
	toFit         bool  // "rep from *, end k2": until what follows just remains
}

// stretch reports whether the step is worked until some stitches remain.
func (s *Step) stretch() bool { return s.RemainingStitches != nil || s.toFit }

// Line is a row, or a direction about rows.
type Line struct {
	// Label is what stands before the colon: "Row 1 (RS)"; may be empty.
	Label string
	// Steps is the row.
	Steps []Step
	// ClaimedStitches are the stitches that the text says there are after it, one
	// for all sizes or one for each, -1 for a size without; empty if it says none.
	ClaimedStitches []int
	// ClaimedChangeStitches are the stitches that the text says it adds, or takes away
	// (below 0), one for all sizes or one for each; empty if it says none.
	ClaimedChangeStitches []int
	// Direction is a line that is no row of steps, "Rep Rows 3 and 4 twice more",
	// or that could not be read, as it stands in the text, label and claim included.
	Direction string

	info lineInfo
}

// lineKind says what a line asks to be done.
type lineKind uint8

const (
	lineRow       lineKind = iota
	lineUnread             // a row or direction that could not be read
	lineRepeat             // rep rows
	lineSchedule           // work a row again every so many rows
	lineEven               // work even
	linePlain              // knit or purl some rows
	lineCastOn             // cast on the piece
	lineBeginning          // bind off or cast on at the beginning of the next rows
	lineJoin               // join in the round
	linePassed             // nothing that counts
)

// rowRange is rows by their numbers, first to last.
type rowRange struct{ first, last int32 }

// every is "and all WS rows".
type every uint8

const (
	everyNone every = iota
	everyRS
	everyWS
	everyOther
)

// lineInfo is what a line was read as.
type lineInfo struct {
	kind    lineKind
	at      span // the whole line
	claimAt span
	ranges  []rowRange // rows named by the label or repeated
	every   every
	side    stitch.Side
	counts  []int       // a number of rows, times or stitches
	last    int         // "rep last 2 rows"
	until   []int       // "until 76 sts rem"
	open    bool        // until a length
	endSide stitch.Side // "ending with a WS row"
	op      stitch.Op
	ownLine int

	schedule *scheduled // of a lineSchedule
}

// Piece is a text as it was read.
type Piece struct {
	// Lines are the rows and directions in order.
	Lines []Line
	// SizeCount is the number of sizes.
	SizeCount int

	source string
	found  findings
	looked int // tokens, as often as they were looked at
}

// at is the number for a size, counted from 0.
func at(numbers []int, size int) int {
	if len(numbers) == 1 {
		return numbers[0]
	}
	return numbers[size]
}

// one is a list that says 1; it is never written to.
var one = []int{1}

// Number is the line of the text on which a row or direction begins, from 1.
func (l *Line) Number() int { return l.info.ownLine }

// CastsOn reports whether a cast-on comes before anything that needs stitches.
func (p *Piece) CastsOn() bool {
	for i := range p.Lines {
		switch p.Lines[i].info.kind {
		case lineCastOn:
			return true
		case linePassed, lineJoin, lineUnread:
		default:
			return false
		}
	}
	return false
}
