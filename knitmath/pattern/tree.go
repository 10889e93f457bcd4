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
	// BeforeMarkerStitches says how many stitches before the next marker it ends; 0 is
	// "to m". Not together with the two others.
	BeforeMarkerStitches []int
	// IntoOneStitch: the group is worked into a single stitch.
	IntoOneStitch bool
	// Manner is how a stitch is slipped.
	Manner SlipManner

	at            span
	counted       bool  // a number is written with it, and up to where
	takes, leaves int16 // of one working of an operation or a name
	brought       bool  // the stitches come from a holder, or may come from another piece
	loose         bool  // up to a place that is not followed
	gap           bool  // the marker is the gap that the last turn left
	toFit         bool  // "rep from *, end k2": until what follows just remains
	ended         bool  // so it was said of a step without brackets, "k2tog across, end k1"
}

// stretch reports whether the step is worked until some stitches remain.
func (s *Step) stretch() bool {
	return s.RemainingStitches != nil || s.BeforeMarkerStitches != nil || s.toFit
}

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
	lineEven               // work even
	linePlain              // knit or purl some rows
	lineCastOn             // cast on the piece
	lineBeginning          // bind off or cast on at the beginning of the next rows
	lineJoin               // join in the round
	linePassed             // nothing that counts
	lineShape              // a change of the count that is known, on rows that are said
	lineHold               // stitches are put aside
	lineTake               // stitches that were put aside are taken up again
	linePickUp             // stitches are picked up along an edge
	lineOff                // all stitches leave the needle without a row
	lineAgain              // directions are worked again
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
	everyAll
	everyOdd
	everyEven
)

// lineInfo is what a line was read as.
type lineInfo struct {
	kind     lineKind
	at       span // the whole line
	claimAt  span
	changeAt span       // of a change that is claimed, within claimAt
	ranges   []rowRange // rows named by the label or repeated
	every    every
	nowToo   bool // "next row and all WS rows": it is worked, and stands for others from then on
	side     stitch.Side
	counts   []int       // a number of rows, times or stitches
	last     int         // "rep last 2 rows"
	until    []int       // "until 76 sts rem"
	open     bool        // until a length
	endSide  stitch.Side // "ending with a WS row"
	endRow   int32       // "ending with Row 3", 0 if it is not said
	endKind  endKind     // "ending with a dec rnd"
	op       stitch.Op
	ownLine  int

	firsts, lasts []int // of the only range, where the sizes differ
	forRows       []int // "next 4 rows": how many rows the label stands for; "for 10 rows" of a repeat
	halves        []int // the first of two parts of all stitches, with a marker between them and none elsewhere
	perSide       []int // "20 sts each side" of stitches that are bound off in the row
	inset         []int // "21 sts in from each end": where two markers are placed
	ofMarks       bool  // they are those of the two sides that markers part, where there are two
	half          bool  // half of the stitches go on being worked
	beyond        []int // "10 sts unworked": those beyond the turn
	beyondAt      span
	perNeedle     []int           // "16 sts on each needle"
	laid          *laidOut        // how the stitches lie on the needles before a round that is
	onNeedles     []needleSection // written needle by needle
	onNeedle      []int           // "knit 54 sleeve sts" of them
	waiting       []Step          // "and knit 26 sts from back holder" of stitches that are picked up
	forSizes      uint32          // the sizes it is for, a bit for each; 0 for all
	allDone       bool            // it says that all stitches have been worked
	defined       bool            // it belongs to a stitch pattern, and is worked only where that is
	heading       bool            // it is the heading of a part
	part          span            // that heading, the last one of those in it
	lines         []int16         // the row that is called by its name
	pattern       int             // the stitch pattern of the text that is worked, from 1; 0 for none
	afresh        bool            // rows are worked, not repeated: the number of times is the whole
	total         bool            // the number of times holds those that were worked already
	hidden        []Step          // what a row of shaping comes to
	parts         []shapings      // when it is shaped
	spread        bool            // one row that comes to a count
	edges         []edgeRows      // "BO 4 sts at beg of next 2 rows, 3 sts at beg of next 2 rows"
	only          []int           // "on these 28 sts only"
	these         bool            // after a turn: those that were worked
	others        bool            // "the remaining 28 sts"
	turns         turning         // "back and forth", "in the round"
	multiple      int             // "multiple of 6 sts plus 2", which a number of stitches should be
	plus          int
	adds          bool     // it is cast on beside what is there
	all           bool     // all stitches
	row           bool     // it is worked as a row
	either        []Step   // another way to read a row
	whole         wholeOf  // the number of stitches put aside is said to be of all of some
	worked        bool     // stitches put aside are of those that were worked
	partial       []int    // "38 sts rem for back": a count of a part of the stitches
	inWork        bool     // which is what is worked from here on
	between       bool     // and that between two markers
	beside        bool     // it stands beside a count of all of them
	halfNamed     bool     // it names a part that may be half of them: "26 instep sts"
	labelClaim    int      // the token at which the label says a count, 0 for none
	places        bool     // it places markers, and does not say where
	inRounds      bool     // its label calls it a round
	fastens       bool     // it ends with "fasten off": the last stitch goes
	tidies        bool     // wraps and double stitches are worked with their stitches
	brings        bool     // the other way brings stitches of other pieces to the needle
	chartStitches int      // that a repeat of a chart takes, 0 for none
	partsTold     []partOf // all that the count is made of, at partsAt
	partsAt       span
	rib           int      // stitches that a repeat of a rib takes which is worked on all, 0 for none
	ribAs         bool     // in the rib that rows of the text write
	chartOver     []int    // stitches that it is worked on in all
	chartTimes    []int    // how often it is worked in a row
	unnamed       bool     // the other way is another way to make its increases
	labelLast     int32    // the last number of the label of a repeat, 0 for none
	eachSide      bool     // the sides of what was bound off are worked one after the other
	speaksOfHeld  bool     // a line that could not be read may put stitches aside
	onThese       bool     // what the last turn left is put aside
	turnsWork     bool     // it says "turn"
	restOf        restOf   // stitches without a number that are taken up again
	holdRest      bool     // "turn, leaving rem 38 sts on holder"
	rest          []int    // how many those are, if it is said
	again         [2]int16 // the lines that are worked again, from and before
	edgeTimes     []int    // how often stitches are bound off at an edge, on rows that are not followed
	joinsAside    joinsLeftOut
	unwrapped     bool  // the part is what lies between the turns of short rows
	wrapped       []int // so many lie beyond them on each side, at wrappedAt
	wrappedAt     span
	edges1        []int // stitches at the edges that are kept out of a stitch pattern
	adapting      bool  // the rows are worked with as many plain stitches as there are
	inSet         bool  // they are the last that make a set
	centre        []int // markers are placed on either side of so many stitches in the middle
	holes         []int // so many buttonholes are told, at holesAt
	holesAt       span
	holesMore     bool        // they are more than those before
	tellsPart     bool        // a sentence that only tells says the count of a part
	saidChange    []int       // by how many stitches it says that the rows before, that go on, change the count; nil if not
	matches       bool        // it refers to a side that was worked before
	asPart        bool        // it is worked as another part, up to a place in it
	allWorked     bool        // "until all sts have been worked"
	untilBetween  bool        // "until" counts the stitches between markers
	otherSide     bool        // it says how it is worked on the other side
	anotherStays  bool        // a piece like the one put aside last is made, and stays on the needle
	toRoundEnd    bool        // it goes to the end of the round
	keeps         bool        // what it takes off the beginnings of rows waits on a holder
	bothNeedles   bool        // its stitches may be those of one of two needles
	live          bool        // the stitches taken up are those of a cast-on that was undone
	untilTurned   turnedUntil // until is of stitches between turns, or beyond them
	reachesBack   bool        // it puts more stitches aside than it has worked in some size
	startMoves    bool        // the round begins after it, says its text
	needles       int         // it lays all its stitches evenly on so many needles
	needlesAt     span
	marked        [][]int // markers are placed after so many stitches of a cast-on
	joins         bool    // other pieces are joined: all that is on the needle then
	onLast        bool    // its change is made in the last of the rows before it
	copied        bool    // it is written as another row, "Row 5: Rep Row 3"
	coloured      bool    // it says what its stitches are worked in
	ledBy         span    // words before its steps that are told by no step, "With MC,"
	picots        *picots // all stitches are bound off with points
	asGiven       bool    // words of it are told by no step: it is not written anew
}

// turning says whether the work goes on flat or in the round.
type turning uint8

const (
	turningSame turning = iota
	constructionFlat
	constructionRound
)

// shapings is a stretch of a schedule: so many times, or until there are so many
// stitches, every so many rows.
type shapings struct {
	lead     []int // rows even before the first; nil: one less than the interval
	interval []int
	second   []int       // of two intervals that alternate
	turns    []shapings  // of more in turn, each so many times: interval is the first of them
	side     stitch.Side // "every RS row"
	times    []int       // nil: once, or until the count is reached
	until    []int
	within   []int // of so many rows all that the interval comes to
	named    bool  // it is a row of the text that is worked again
	total    bool  // the times hold those that were worked already
	worked   bool  // so they may: see timesHold
	timesAt  span  // where they stand, if so
	next     bool  // the first is on the next row
	more     []int // times after the first, "next and every foll 4th row 5 times"
	after    bool  // they are surely after it: "next row and foll 5 alt rows"
}

// Piece is a text as it was read.
type Piece struct {
	// Lines are the rows and directions in order.
	Lines []Line
	// SizeCount is the number of sizes.
	SizeCount int

	source    string
	found     findings
	patterns  []defined
	rows      []rowsClaim // in the order of the text
	looked    int         // tokens, as often as they were looked at
	holesSaid bool        // buttonholes are told somewhere
	forSome   bool        // some of its rows are for some sizes alone
	room      *room       // in which it was read
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
		case lineCastOn, linePickUp, lineTake:
			return true
		case lineUnread:
			if p.Lines[i].info.op == stitch.CastOn {
				return true // its number cannot be read, which is said
			}
		case linePassed, lineJoin, lineHold:
		case lineRow, lineRepeat, lineEven, linePlain:
			if p.Lines[i].info.brings {
				return true
			}
			if !p.Lines[i].info.defined {
				return false
			}
		default:
			return false
		}
	}
	return false
}
