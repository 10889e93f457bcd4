package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// hand is the stitches on the left needle and, while a short row is open, behind
// on the right one.
type hand struct{ left, behind int64 }

func (h hand) total() int64 { return h.left + h.behind }

// runner works a text in one size.
type runner struct {
	*engine
	tracing
	size        int
	now         hand
	known       bool        // whether the counts are known
	other       *hand       // the counts if the last claim that disagreed was right
	side        stitch.Side // of the next row; stitch.SideUnspecified if not known
	round       bool
	rows        int
	turned      stitch.Op // how the last row ended
	since       int       // the first line of the rows that now count
	rule        int       // the line of "all WS rows" without a number, -1 for none
	lastRow     int       // the last number worked, 0 if any may follow
	here        span      // of the line of the text that is at hand
	lastLine    int       // the line of the row just worked, -1 for a plain one
	leftOpen    bool      // the rows before are as many as a length takes
	quiet       bool      // nothing is recorded: a trial
	misfits     bool      // a row did not fit: what a trial wants to know
	stopped     bool      // too many rows, or too dear ones
	machine     *stitch.Machine
	oversHeld   int64  // yarn overs of short rows that may be among stitches put aside, whose number does not count them
	turnsLeft   bool   // it went while it knew of stitches that were wrapped or made double
	overs       int64  // yarn overs of short rows made since no short row was open
	ruleOf      every  // for which rows the line of rule stands
	heldOnce    bool   // stitches have been put aside
	broughtLast int64  // stitches picked up, cast on or taken up last
	fresh       bool   // a heading came since the last row: a cast-on begins a piece
	first       bool   // no row has been worked since the cast-on
	repeating   bool   // lines are worked again, whose claims are of the first time
	brings      []Step // the steps of the row at hand, where some bring stitches of other pieces
	placed      bool   // the text has placed markers
	calling     bool   // a row is worked that the text calls by its name
	divided     bool   // some stitches were put aside, bound off or left: in the round the rest may be worked flat
	unjoined    bool   // a later piece, which was cast on and not joined, and no row of it was called a round
	sideGiven   bool   // the question says the side of the first row of this piece
	leftRound   bool   // a piece in the round is worked back and forth for a while
	turnSaid    bool   // the text has just said "turn"
	sides       sideClaims
	sideSaid    bool    // the text has said which side a row was on
	turnGap     int64   // where the last turn left a gap, below 0 for nowhere
	turnsHeels  bool    // the row before was one of a heel that is turned
	crossed     bool    // rows that turn were worked back past the beginning of the round
	apart       []int64 // the parts of those that "on these only" left out, as they were worked; nil where they are not known
	aside       int64   // stitches that "on these only" left out, and no holder has taken
	asideAt     int     // the row behind which they were left out
	asideAhead  int64   // those of them that lie beyond the others, with the side of the next row as it was then
	asideSide   stitch.Side
	noting      int // the line whose first working is noted
	marks       marks
	gaps        marks           // in what the next row comes to, where the row before has bound some off or put some aside
	nextMarks   *marks          // of a row that was no whole round
	shifted     movedMark       // a marker that was moved for a claim
	offBy       map[*Line]int64 // rows whose count disagreed with their claim, and by how many stitches
	owed        int64           // by how many stitches such rows, worked again since the last claim, were off
	switched    bool            // the other count was taken
	counted     int             // the line whose count was noted last
	oneMore     int             // a row that leaves unworked what its binding off leaves on the right needle
	astray      bool            // a mistake was found after which the count is not sure: the next claim tells it
	uneven      *unevenCounts   // what an earlier repeat lacked, or had too many
	told        rowsTold
	laid        *laidOut // how the stitches were told to lie on needles that are followed
	lying       []int64  // on each of them; none where that is not known
	leftPieces  []int64  // stitches of pieces that stayed on a needle while another was cast on
	skippedOff  int      // a line that ended a piece in other sizes, from 1; 0 for none
	wrapsGiven  bool     // stitches that it began with may be wrapped
	tidiedRows  int      // whole rows, one after the other, that have picked up wraps along their way
	holesRow    int64    // holes that the row at hand has made
	holesAll    int64    // and all rows
	holesPass   int64    // and the rows that are worked again, once
	lastTaking  int      // the last line that may work stitches of another piece, 0 until it was looked for
}

// noLine is for no row worked yet.
const noLine = -2

func (e *engine) size(size int) {
	e.left, e.history = e.share, e.history[:0]
	e.written.forget()
	clear(e.seen)
	e.held, e.inRows, e.partly, e.emptied, e.unsureHeld = e.held[:0], e.inRows[:0], e.partly[:0], e.emptied[:0], false
	for i := range e.rowsBefore {
		e.rowsBefore[i] = -1
	}
	r := &runner{engine: e, size: size, side: e.start.side(), round: e.start.inTheRound(), rule: -1, lastLine: noLine, first: true, noting: -1,
		turnGap: -1, oneMore: -1}
	r.sideGiven = e.start.Side != stitch.SideUnspecified
	if len(e.start.Counts) > 0 {
		r.now.left, r.known = int64(at(e.start.Counts, size)), true
		r.wrapsGiven = true
	}
	lines := e.piece.Lines
	for i := 0; i < len(lines) && !r.stopped; {
		r.here, r.directing = lines[i].info.at, i
		r.heelBefore(i)
		if info := &lines[i].info; info.defined || !info.isFor(size) {
			r.compareOther(i)
			r.offSkipped(i)
			i++
			continue
		}
		if lines[i].numbered() {
			r.beganRows(i)
			i = r.block(i)
			r.rowsCompared(i)
			continue
		}
		before, holes := r.rows, r.holesAll
		r.offSince()
		r.onNothing(i)
		r.line(i)
		r.compareHoles(&lines[i], holes)
		r.beganAfter(&lines[i])
		r.rowsCompared(i + 1)
		if r.size == 0 && r.rows > before {
			e.out.Lines[i].firstRow, e.out.Lines[i].lastRow = before+1, r.rows
		}
		i++
	}
	r.heelOver(len(lines))
	r.forgotten()
	r.leftOnHolders()
	r.settleSide()
	e.out.EndStitches[size] = -1
	if r.known {
		e.out.EndStitches[size] = int(r.now.total())
	}
	e.out.WorkedRows[size] = r.rows
}

// line works a line that is no numbered row.
func (r *runner) line(i int) {
	l := &r.piece.Lines[i]
	r.flatSaid(l)
	r.theseLed(l)
	switch l.info.kind {
	case lineRow, lineUnread:
		r.unnumbered(i)
	case lineRepeat:
		r.repeat(i)
	case lineAgain:
		r.again(i)
	case lineEven, linePlain:
		if l.info.asPart {
			r.likePart(i)
		} else {
			r.even(i)
		}
	case lineCastOn:
		r.castOn(i)
	case lineBeginning:
		r.beginning(i)
	case lineShape:
		r.shape(i)
	case lineHold, lineTake, linePickUp, lineOff:
		r.moved(i)
	case lineJoin:
		if !r.round && r.side == stitch.WrongSide {
			r.marks.turnBack(r.now.total()) // the work is not turned after its last row
		}
		if l.info.joinsAside != joinsNone {
			r.joinAside(l)
		}
		r.round, r.side, r.machine, r.unjoined = true, stitch.RightSide, nil, false
		r.compareAlone(i)
	case linePassed:
		r.toldBeside(i)
	}
}

// toldBeside takes what words that work no row say of markers, of the work and of its pieces.
func (r *runner) toldBeside(i int) {
	info := &r.piece.Lines[i].info
	if r.markCentre(info) {
		return
	}
	if info.halves != nil {
		r.marks = marks{}
		r.marks.add(int64(at(info.halves, r.size)))
		r.compareAlone(i)
		return
	}
	r.placed = r.placed || info.places
	r.turnSaid = r.turnSaid || info.turnsWork
	if info.turnsWork && r.turnedOnCastOn(i) {
		r.rows-- // the row goes on
	}
	r.piecesTold(i)
	r.marks.lost = r.marks.lost || info.places && r.marks.count == 0
	r.fresh = r.fresh || info.heading
	r.allWorked(info)
	r.setUpOn(&r.piece.Lines[i]) // "On these 28 sts work the heel as follows:"
	r.compareAlone(i)
}

// piecesTold takes what words say of which stitches are worked: those of a piece that stays on the
// needle, these alone, each side by itself, or none, as the last is fastened off.
func (r *runner) piecesTold(i int) {
	info := &r.piece.Lines[i].info
	if n := len(r.held); info.anotherStays && n > 0 && r.known && r.now.total() == 0 {
		r.begin(r.held[n-1])
	}
	if info.onThese {
		r.restAside()
	}
	if info.joinsAside != joinsNone {
		r.joinAside(&r.piece.Lines[i])
	}
	if info.eachSide {
		r.oneSide()
	}
	if info.fastens && r.known && r.now.total() == 1 {
		r.begin(0)
	}
}

// compareAlone compares the stitches with what is claimed beside words that work none.
func (r *runner) compareAlone(i int) {
	l := &r.piece.Lines[i]
	r.needlesEven(l)
	if len(l.ClaimedStitches) > 0 || l.info.perNeedle != nil || l.info.tellsPart && r.known {
		r.record(i)
		r.close(i, r.now)
	}
}

// unnumbered works a row without a number, or notes that it stands for others.
func (r *runner) unnumbered(i int) {
	l := &r.piece.Lines[i]
	info := &l.info
	if info.every != everyNone {
		r.rule, r.ruleOf = i, info.every
		if !info.nowToo {
			return
		}
		if info.every == everyOther && r.lastRow > 0 { // "next and every alternate round" after round 1: the even ones
			r.ruleOf = [...]every{everyOdd, everyEven}[r.lastRow%2]
		}
	}
	r.lastRow = 0
	if l.Label == "" && info.kind == lineUnread && l.ClaimedStitches == nil && l.Steps == nil && r.rows == 0 && !r.known {
		return
	}
	if info.forRows == nil {
		r.work(i, true)
		return
	}
	if n := at(info.forRows, r.size); n > 0 {
		r.rowsOfLabel(i, n)
	}
}

// turnWork exchanges the sides after a row.
func (r *runner) turnWork() {
	if !r.round || r.turned != 0 {
		r.side = r.side.Other()
	}
}

// checkSide compares the side of a row with what its label says. Of several rows
// in succession, "Rows 1-8 (RS)", it is the side of the first.
func (r *runner) checkSide(l *Line, repeated bool) {
	want := l.info.side
	if l.info.ranges != nil && !repeated { // "Row 2 and all WS rows"
		want = l.info.sideNamed()
	}
	r.roundAgain(&l.info)
	switch {
	case want == stitch.SideUnspecified || l.info.otherSide && r.lastLine != noLine && r.sideSaid:
	case r.leavesRound(l):
		r.round, r.side, r.sideSaid, r.leftRound = false, want, true, true // what is left is worked back and forth
	case !r.round:
		if !repeated || r.sides.pending.text == "" && r.side != want {
			r.saidSide(l.info.at, want, "this row is worked on the "+sideText(want.Other()), "by the rows after it this one is worked on the "+
				sideText(want.Other()))
		}
	case want != r.side && r.wanted(ReasonSide, l.info.at):
		r.fault(KindMistake, ReasonSide, l.info.at, 0, "this row is worked on the "+sideText(r.side)+
			": in the round it always is, unless the work is turned")
	}
}

// leavesRound reports whether a row on the wrong side shows that what is left of a piece that was
// divided is no longer worked in the round, or that a piece which was not joined never was.
func (r *runner) leavesRound(l *Line) bool {
	return r.round && (r.divided || r.unjoined) && l.info.side == stitch.WrongSide && !l.info.inRounds &&
		(r.side != stitch.WrongSide || !turnsAtEnd(l.Steps))
}

// roundAgain goes on in the round where what was left back and forth is worked so again: it is
// called a round.
func (r *runner) roundAgain(info *lineInfo) {
	r.unjoined = r.unjoined && !info.inRounds
	if r.leftRound && (info.inRounds || info.toRoundEnd) {
		r.round, r.leftRound, r.side = true, false, stitch.RightSide
	}
	if r.round && info.toRoundEnd && r.known && !r.quiet { // over those that "on these only" left out
		r.now.left, r.aside = r.now.left+r.aside, 0
	}
}
