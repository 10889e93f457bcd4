package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// Options say how a text is read.
type Options struct {
	// SizeCount is the number of sizes; 0 takes it from the first list of
	// numbers in the text, 1 if there is none.
	SizeCount int
	// Abbreviations are the caller's own. Names are told apart by the first.
	Abbreviations []Abbreviation
	// Began says that rows before a cast-on are worked: there are stitches on the
	// needle already. Otherwise they define a stitch pattern, if a cast-on follows.
	Began bool
}

// Read reads a text of at most MaxTextBytes; what is beyond is not read. It
// takes any bytes, and memory in proportion to them.
func Read(text string, o Options) *Piece {
	if len(text) > MaxTextBytes {
		text = text[:MaxTextBytes]
	}
	return read(text, o.SizeCount, ownNames(o.Abbreviations), o.Began)
}

// read reads a text that is not too long. began says that there are stitches before
// it, so that rows are worked although no cast-on comes first.
func read(text string, sizes int, own map[string]meaning, began bool) *Piece {
	return new(room).read(text, parser{own: own, sizes: sizes, began: began, given: began})
}

// read reads a text with a parser that knows what is to be known of it.
func (in *room) read(text string, p parser) *Piece {
	p.tokens, p.found.list, p.inHand, p.stepRoom = in.tokens, in.said[:0], in.inHand, in.steps[:0]
	piece := p.read(text, in.lines[:0])
	in.tokens, in.said, in.lines, in.inHand = p.tokens, p.found.list, piece.Lines, p.inHand
	in.stepCount, piece.room = p.steps, in
	return piece
}

// read reads a text; lines are memory for its lines.
func (p *parser) read(text string, lines []Line) *Piece {
	p.tokens = padded(text, p.tokens)
	p.found.source = text
	if p.sizes < 1 {
		p.sizes = min(p.sizesIn(), MaxSizes)
	}
	p.plainLengths()
	piece := &Piece{Lines: lines, source: text, SizeCount: p.sizes}
	p.piece = piece
	for {
		p.skipBreaks()
		t := p.peek()
		if t.kind == tokenEnd {
			break
		}
		if len(piece.Lines) == MaxLines {
			p.mistake(ReasonTooMany, t.span,
				"a text has at most "+strconv.Itoa(MaxLines)+" rows and directions; nothing is read from here on")
			break
		}
		p.line()
	}
	p.define()
	p.setOrder()
	p.misnumbered()
	p.tellPassed()
	piece.rows = p.rowsClaims()
	p.neverPlaced()
	piece.found, piece.patterns, piece.looked = p.found, p.patterns, p.looked+len(p.tokens)
	return piece
}

// readRow reads a text that was written from a row or a direction.
func readRow(text string, sizes int, own map[string]meaning) *Piece {
	return new(room).readRow(text, sizes, own)
}

func (in *room) readRow(text string, sizes int, own map[string]meaning) *Piece {
	return in.read(text, parser{own: own, sizes: sizes, began: true, given: true, onlyRows: true})
}

// parser reads tokens by recursive descent, one function for each rule of the
// grammar. A rule that fails has left a finding that says why.
type parser struct {
	tokens []token
	next   int
	sizes  int
	own    map[string]meaning
	found  findings
	depth  int // of brackets and stars
	inside int // brackets open, within which line breaks count for nothing
	stars  []string
	steps  int
	listed int
	named  int // row numbers in labels and repeats
	looked int // tokens looked at ahead, where they may be many: what reading costs

	piece         *Piece
	names         []string   // of the sizes, in lower case
	sizesSaid     uint32     // sizes that something was said for alone
	sizesTold     int        // how often the sentence at hand says for which sizes something is
	scopeFrom     int        // the lines before it stand before what is for some sizes
	forSizes      uint32     // the sizes that what is read is for, 0 for all
	patterns      []defined  // stitch patterns that the text defines
	current       int        // the pattern that is being defined, from 1; 0 for none
	began         bool       // a cast-on has been read, or the stitches are given
	given         bool       // the stitches are given
	bare          bool       // everything has been bound off
	quiet         quietWords // none of them knits
	unknown       quietWords // none of them is of the language
	lineSeen      [2]int     // the tokens from the first to the second are of one line, which ends there
	sentenceSeen  [2]int     // the tokens from the first to the second are of one sentence, which ends there
	ordersSeen    ordersSeen
	castLater     uint8 // whether the text casts on: 0 not looked yet, 1 no, 2 yes
	endingRepeat  bool  // "ending last rep k3 in place of k5" is read
	trying        bool  // a direction is read on trial
	trial         Line  // what it is read into
	blank         *Line // what the next sentence is read into: 12,000 of them would be 18 MB
	onlyRows      bool  // what is read was written from a row
	inFabricRow   bool  // a row is read that is told of a fabric
	rowHoles      []int // buttonholes that are told in the row at hand, at rowHolesAt
	rowHolesAt    span
	tidies        bool         // wraps are taken along with their stitches in the row at hand
	rowSizes      uint32       // the sizes that the label at hand says, 0 for all
	fastens       bool         // the row at hand ends with "fasten off"
	inNeedles     bool         // a round is read needle by needle
	inHand        [][]Step     // memory for the steps of a row, and of the brackets within, while they are read
	within        int          // so many of them
	stepRoom      []Step       // memory for those that were read
	sofar         []Step       // of the row or the bracket at hand, what comes before the next step
	shapedBracket bool         // the brackets of "work 8 rows (dec 1 st on last row)" are open
	inRow         bool         // a label has been read: what follows is a row
	rest          unworkedRest // what the row at hand leaves unworked
	beyond        []int        // how many stitches lie beyond the turn of the row at hand, as it says
	beyondAt      span
	begun         *starOpen      // a star before directions that are worked again
	lastFrom      map[string]int // where "from *" comes last, by the star; nil while nobody asked
	cable         *onCable       // stitches that wait on a cable needle
	firstWaited   bool           // those of the first of two pieces were taken from a holder
	otherSide     bool           // the row at hand says how it is worked on the other side
	toRoundEnd    bool           // the row at hand goes to the end of the round
	reachesBack   bool           // the row at hand puts more stitches aside than it has worked in some size
	startMoves    bool           // the row at hand says that the round begins after it
	coloured      bool           // so is a colour
	asGiven       bool           // words of the row at hand are told by no step
	inTurn        bool           // two stitches are worked in turn
	rowsSaid      int            // "these 4 rows form the pattern"
	sameTime      bool           // a change is made in the rows that were just said
	stacked       bool           // the steps of the row at hand stand below its label
	lastRowSaid   bool           // a change is made in the last of the rows before it
	after         []Step         // that follow a repeat, whose last working ends otherwise
	section       sectionKind
	led           ledPlace        // a place before the verb at hand
	changing      []int           // by how many stitches the change at hand is
	changingAt    int             // at how many places of a row
	lastPassed    int             // the finding of what was passed over last, from 1
	passedEnd     int32           // where that ends
	markNames     map[string]bool // letters by which the text tells its markers apart
	starsFrom     map[string]int  // where the text last repeats from stars; nil where nobody has asked
	spanned       string          // the chart of which a row said between which of its stitches it is worked
	order         *ordered        // in which headed sets of rows are worked
	holesBefore   *holes          // what the row before binds off within it, nil if it does not
	laid          *laidOut        // how the stitches lie on the needles, nil where that is not told
	matched       [2]int          // the sentence that has been looked through for another part
}

func (p *parser) peek() *token { return &p.tokens[p.next] }

// ahead is the token n further on, or the last one.
func (p *parser) ahead(n int) *token { return &p.tokens[min(p.next+n, len(p.tokens)-1)] }

// is reports whether the token is one of the texts. A thousand places ask it: a copy in
// each of them, and of what asks it in turn, would take 0.4 MB of the program.
//
//go:noinline
func (t *token) is(texts ...string) bool {
	if t.kind == tokenStar || t.kind == tokenEnd || t.kind == tokenNewline {
		return false
	}
	for _, s := range texts {
		if t.text == s {
			return true
		}
	}
	return false
}

// accept passes over the next token if it is one of the texts.
//
//go:noinline
func (p *parser) accept(texts ...string) bool {
	if p.peek().is(texts...) {
		p.next++
		return true
	}
	return false
}

// acceptAll passes over the words if they all come next, in this order.
//
//go:noinline
func (p *parser) acceptAll(texts ...string) bool {
	for i, s := range texts {
		if !p.ahead(i).is(s) {
			return false
		}
	}
	p.next += len(texts)
	return true
}

// last is the span of the token before the next.
func (p *parser) last() span { return p.tokens[max(p.next-1, 0)].span }

//go:noinline
func (p *parser) mistake(reason report.Reason, at span, description string) {
	p.found.add(KindMistake, reason, at, description)
}

//go:noinline
func (p *parser) ask(reason report.Reason, at span, description string) {
	p.found.add(KindQuestion, reason, at, description)
}

//go:noinline
func (p *parser) reading(at span, description string) {
	p.found.add(KindReading, ReasonReading, at, description)
}
