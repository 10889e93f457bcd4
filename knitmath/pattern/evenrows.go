package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// even works rows that change nothing, or those of a stitch pattern, so many or until
// a length.
func (r *runner) even(i int) {
	l := &r.piece.Lines[i]
	info := &l.info
	r.record(i)
	r.setUp(l)
	if r.rows == 0 && r.known { // "CO 40 sts on 4 needles. Work 18 rnds rib."
		r.namedRound(info)
	}
	start := r.now
	r.chartFits(l)
	r.ribFits(i)
	r.ribAsWritten(i)
	r.fabricFits(l)
	r.lastRow = 0
	if info.ranges != nil {
		r.lastRow = int(r.lastNumber(i))
	}
	rows := 0
	if info.counts != nil {
		if rows = at(info.counts, r.size); info.total { // "until 14 rows in all": with those since the cast-on
			rows = r.rowsBeyond(l, rows, len(r.history))
		}
	}
	lines := r.patternLines(info)
	switch {
	case info.counts != nil && lines != nil:
		ok := false
		if r.withoutEdges(l, func() { ok = r.cyclic(lines, rows, info.at) }); !ok {
			return
		}
		r.ended(l)
	case info.counts != nil:
		if !r.plain(rows, info.at) {
			return
		}
		r.ended(l)
	case info.open:
		r.openEven(l, lines)
	}
	r.close(i, start)
}

// openEven is rows until a length: those of a stitch pattern are worked once on trial,
// so that it is seen whether they come out.
func (r *runner) openEven(l *Line, lines []int16) {
	if !r.quiet {
		r.out.RowsOpen = true
	}
	if lines != nil && r.known {
		switch change, ok := r.trial(lines); {
		case !ok:
			r.pass(lines, l.info.at) // which shows what is wrong
		case change != 0:
			r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how many rows? the pattern changes the count by "+signed(change)+" each time")
			r.known = false
		}
	}
	r.fault(KindReading, ReasonOpenLength, l.info.at, 0, "the number of rows is left open; the count stays the same")
	r.now = hand{left: r.now.total()}
	r.turned, r.machine, r.first, r.leftOpen = 0, nil, false, true
	if !r.round {
		r.side = stitch.SideUnspecified
		r.ended(l)
	}
}

// setUp takes what a direction says before its rows: the side, flat or in the round,
// and on how many stitches only.
func (r *runner) setUp(l *Line) {
	info := &l.info
	r.roundAgain(info)
	switch {
	case info.side == stitch.SideUnspecified || r.round:
	case info.kind == lineEven && info.turns == turningSame && info.only == nil && !r.fresh:
		other := sideText(info.side.Other())
		r.saidSide(info.at, info.side, "its first row is worked on the "+other, "by the rows after it its first row is worked on the "+other)
	case !r.sideSaid || r.side == stitch.SideUnspecified:
		r.side, r.sideSaid = info.side, true
	}
	switch info.turns {
	case constructionFlat:
		if r.round {
			r.round, r.side, r.leftRound = false, stitch.RightSide, true
		}
	case constructionRound:
		r.round, r.side = true, stitch.RightSide
	}
	r.setUpOn(l)
}

// setUpOn goes on with half of the stitches, or with so many, if a direction says so.
func (r *runner) setUpOn(l *Line) {
	info := &l.info
	if info.half {
		r.halfAlone(l)
		return
	}
	if info.only == nil || info.kind == lineTake {
		return
	}
	n := int64(at(info.only, r.size))
	if !r.known { // the text says how many they are
		r.begin(n)
		r.sayTaken(l)
		return
	}
	r.only(l, n)
}

// only goes on with some of the stitches; the others are left out.
func (r *runner) only(l *Line, n int64) {
	total := r.now.total()
	if n > total {
		if r.wanted(ReasonMissing, l.info.at) {
			r.fault(KindMistake, ReasonMissing, l.info.at, int(total-n), stitches(int(n-total))+" missing: "+areThere(total))
		}
		r.now = hand{left: n}
		return
	}
	r.comparedThese(l, n)
	r.comparedOthers(l, n)
	r.comparedLast(l, n)
	r.askOthers(l, n)
	r.aside = total - n
	r.asideAhead, r.asideSide, r.asideAt = r.now.left-n, r.side, r.rows
	r.divided = r.divided || n < total
	r.now, r.other, r.machine = hand{left: n}, nil, nil
	r.turned = 0
	r.loseMarks()
}

// comparedThese compares "these 28 sts" after a turn with those that were worked before it, and where others have
// just been put aside with those that are left.
func (r *runner) comparedThese(l *Line, n int64) {
	worked, behind := r.now.left, r.now.behind
	if !l.info.these || n == worked || n == behind || n == r.turnGap || !r.wanted(ReasonClaim, l.info.at) {
		return
	}
	if behind == 0 && r.justAside() && !slices.Contains(r.held, n) && !slices.Contains(r.inRows, n) {
		r.fault(KindMistake, ReasonClaim, l.info.at, int(n-worked), "there are "+stitches(int(worked))+", not "+strconv.Itoa(int(n)))
	}
	if r.turned == 0 || behind == 0 {
		return
	}
	r.fault(KindMistake, ReasonClaim, l.info.at, int(n-worked),
		stitches(int(worked))+" were worked before the turn, not "+strconv.Itoa(int(n)))
}

// askOthers asks what becomes of a few stitches that are neither those on which the text goes on nor those that it has just put
// aside: of a part like the others it will say so later.
func (r *runner) askOthers(l *Line, n int64) {
	over := r.now.total() - n
	if !l.info.these && !l.info.others && over > 0 && 4*over < n && r.now.behind == 0 && r.justAside() && r.wanted(ReasonClaim, l.info.at) {
		r.fault(KindQuestion, ReasonClaim, l.info.at, 0, "there are "+stitches(int(r.now.total()))+", not "+strconv.Itoa(int(n))+
			": what becomes of the other "+strconv.Itoa(int(over))+"?")
	}
}

// comparedOthers compares "the remaining 28 sts" with those that are left, or have been put aside.
func (r *runner) comparedOthers(l *Line, n int64) {
	there := r.now.left
	if l.info.others && r.now.behind == 0 && n != there && n != r.aside && !slices.Contains(r.held, n) {
		r.fault(KindMistake, ReasonClaim, l.info.at, int(n-there), "there are "+stitches(int(there))+", not "+strconv.Itoa(int(n)))
	}
}

// justAside reports whether the line before this one has put stitches aside.
func (r *runner) justAside() bool {
	for i := r.directing - 1; i >= 0; i-- {
		if l := &r.piece.Lines[i]; l.info.kind != linePassed {
			return l.info.kind == lineHold || l.info.holdRest || putsAside(l.Steps)
		}
	}
	return false
}

// patternLines are the rows of the stitch pattern of a direction, nil if it has none.
func (r *runner) patternLines(info *lineInfo) []int16 {
	if info.pattern == 0 {
		return nil
	}
	lines := r.piece.patterns[info.pattern-1].lines
	if len(lines) == 0 && r.wanted(ReasonNoRow, info.at) {
		r.fault(KindQuestion, ReasonNoRow, info.at, 0, "the rows of this stitch pattern are not all written")
	}
	return lines
}

// patternRows are rows of a stitch pattern by their numbers.
func (r *runner) patternRows(info *lineInfo) ([]int16, bool) {
	lines := r.piece.patterns[info.pattern-1].lines
	for _, q := range info.ranges {
		first, last := info.rangeIn(q, r.size)
		r.spend((last - first) / chargedNames)
		for n := first; n <= last; n++ {
			if n > len(lines) {
				if r.wanted(ReasonNoRow, info.at) {
					r.fault(KindMistake, ReasonNoRow, info.at, 0, "row "+strconv.Itoa(n)+" of the pattern is not written")
				}
				return nil, false
			}
			r.lines = append(r.lines, lines[n-1])
		}
	}
	if info.ranges == nil {
		r.lines = append(r.lines, lines...)
	}
	return r.lines, len(r.lines) > 0
}

// cyclic works so many rows, going through lines again and again.
func (r *runner) cyclic(lines []int16, rows int, at span) bool {
	return r.passes(lines, rows/len(lines), at) && r.pass(lines[:rows%len(lines)], at)
}

// cycle works "for 10 rows" of a repeat.
func (r *runner) cycle(i int, lines []int16) {
	l := &r.piece.Lines[i]
	start := r.now
	n := at(l.info.forRows, r.size)
	if l.info.total {
		n = r.rowsBeyond(l, n, len(lines))
	}
	if r.cyclic(lines, n, l.info.at) {
		r.ended(l)
		r.numberedTo(&l.info)
		r.close(i, start)
	}
}

// rowsBeyond is how many rows are still to be worked of all of them, so many of which have been.
func (r *runner) rowsBeyond(l *Line, all, worked int) int {
	if all < worked && r.wanted(ReasonRows, l.info.at) {
		r.fault(KindMistake, ReasonRows, l.info.at, 0, report.CountOf(worked, "rows")+" have been worked already, not "+strconv.Itoa(all))
	}
	return max(all-worked, 0)
}

// already is how often rows were worked before: once each, or, of a single one, as
// often as it was. Those of a pattern that is only defined where they stand were not.
func (r *runner) already(lines []int16) int {
	if r.onlyDefined(lines) {
		return 0
	}
	if len(lines) != 1 {
		return 1
	}
	n := 0
	for _, line := range r.history {
		if line == lines[0] {
			n++
		}
	}
	return max(n, 1)
}

// onlyDefined reports whether all of some rows stand in the definition of a pattern, and none was worked yet.
func (r *runner) onlyDefined(lines []int16) bool {
	for _, line := range lines {
		if line < 0 || !r.piece.Lines[line].info.defined || slices.Contains(r.history, line) {
			return false
		}
	}
	return len(lines) > 0
}
