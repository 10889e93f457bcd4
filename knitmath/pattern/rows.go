package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// repeat works rows again.
func (r *runner) repeat(i int) {
	l := &r.piece.Lines[i]
	info := &l.info
	lines, ok := r.repeated(info)
	r.record(i)
	if !ok {
		r.lost(l)
		return
	}
	if info.forRows != nil && info.counts == nil {
		r.cycle(i, lines)
		return
	}
	if info.adapting && r.heelGoesOn(i, lines) {
		return
	}
	r.endsAmong(l, lines)
	adapting := info.adapting && !r.worksAsWritten(info, lines)
	passes, ok := r.passesSaid(l, lines, adapting)
	if !ok {
		r.lost(l)
		if info.endSide != stitch.SideUnspecified {
			r.side = info.endSide.Other()
		}
		return
	}
	if passes > 0 {
		r.onOtherSide(l, lines)
		r.oddRowsTurn(l, lines, true)
	}
	start := r.now
	r.withoutEdges(l, func() {
		if adapting { // the plain stitches between the changes are other ones each time
			ok = r.adaptingRows(l, lines, passes)
		} else {
			ok = r.passesEnding(l, lines, passes) && r.toSaidSide(info, lines)
		}
	})
	if !ok {
		return
	}
	if info.untilBetween && !adapting {
		r.checkBetween(l)
	}
	r.ended(l)
	r.numberedTo(info)
	r.close(i, start)
}

// passesSaid is how often rows are worked again: a number of times, or until something is reached.
func (r *runner) passesSaid(l *Line, lines []int16, adapting bool) (int, bool) {
	switch info := &l.info; {
	case info.counts != nil:
		passes := at(info.counts, r.size)
		if info.total {
			passes = max(passes-r.already(lines), 0)
		}
		return passes, true
	case adapting:
		return r.passesAdapting(l, lines)
	case info.untilTurned != turnedNone:
		return r.passesTurned(l, lines)
	case info.untilBetween:
		return r.passesBetween(l, lines)
	case info.until != nil:
		return r.passesTo(l, lines, int64(at(info.until, r.size)))
	}
	return r.openPasses(l, lines)
}

// adaptingRows works so many passes of rows whose plain stitches are other ones each time: they
// come to the count that is said.
func (r *runner) adaptingRows(l *Line, lines []int16, passes int) bool {
	info := &l.info
	end, _ := r.countUntil(l)
	if info.counts != nil && r.known {
		r.compareFewer(l, lines)
		change, ok := r.changedBy(lines)
		if end = r.now.total() + change*int64(passes); !ok || end < 0 {
			r.lost(l)
			return false
		}
	}
	if !r.plain(r.rowsInAll(l, lines, passes), info.at) {
		return false
	}
	if passes > 0 {
		r.begin(end)
	}
	return true
}

// numberedTo goes on with the numbers after those of the label of a repeat.
func (r *runner) numberedTo(info *lineInfo) {
	if info.labelLast > 0 {
		r.lastRow = int(info.labelLast)
	}
}

// betweenTwo are the stitches between two markers: those of the only part that has one on
// either side; false where that is not known.
func (r *runner) betweenTwo() (int64, bool) {
	parts := r.betweenMarks()
	if !r.known || len(parts) != 3 || r.round && r.marks.count != 2 {
		if r.known && r.round && len(parts) == 4 { // two markers, and the beginning of the round
			return parts[1], true
		}
		return 0, false
	}
	return parts[1], true
}

// passesBetween is how often rows are worked until so many stitches are between two markers.
func (r *runner) passesBetween(l *Line, lines []int16) (int, bool) {
	n, ok := r.betweenTwo()
	if !ok {
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "between which markers? where they are is not known")
		return 0, false
	}
	return r.passesTo(l, lines, r.now.total()+int64(at(l.info.until, r.size))-n)
}

// checkBetween compares the stitches between two markers with those up to which rows were
// worked.
func (r *runner) checkBetween(l *Line) {
	want := int64(at(l.info.until, r.size))
	switch n, ok := r.betweenTwo(); {
	case !ok:
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "between which markers? where they are is not known")
	case n != want:
		r.fault(KindMistake, ReasonClaim, l.info.at, int(want-n), stitches(int(n))+" are between the markers, not "+strconv.Itoa(int(want)))
	}
}

// lost goes on after rows of which not even the number is known.
func (r *runner) lost(l *Line) {
	r.unknown(l, true)
	r.side = stitch.SideUnspecified
	if r.round {
		r.side = stitch.RightSide
	}
}

// close notes the count after a direction and compares it with its claim.
func (r *runner) close(i int, start hand) {
	l := &r.piece.Lines[i]
	if !r.known {
		r.unknown(l, true)
		return
	}
	if c := &r.out.Lines[i]; c.EndStitches[r.size] < 0 && !r.quiet {
		c.EndStitches[r.size] = int(r.now.total())
		r.counted = i
	}
	if l.info.kind != linePickUp || l.info.counts != nil { // of a rate the count has been taken
		r.compare(l, start)
	}
	if l.info.beside && l.info.kind != lineRow && len(l.ClaimedStitches) > 0 && r.known { // of a row it is compared when it is worked
		r.compareParts(l, start)
	}
	if l.info.kind != lineRow && !r.countWrong(l) {
		r.partsBetweenMarks(l)
	}
}

// repeated finds the lines of the rows to be repeated.
func (r *runner) repeated(info *lineInfo) ([]int16, bool) {
	r.lines = r.lines[:0]
	if info.lines != nil {
		r.lines = append(r.lines, info.lines...)
		return r.lines, true
	}
	if info.pattern > 0 {
		return r.patternRows(info)
	}
	if info.ranges == nil {
		n, last := len(r.history), info.last
		if info.inSet {
			last = max(r.setOfRows(), 1)
		}
		if last > n {
			if r.wanted(ReasonNoRow, info.at) {
				r.fault(KindMistake, ReasonNoRow, info.at, 0, "only "+report.CountOf(n, "rows")+" came before")
			}
			return nil, false
		}
		r.spend(last / chargedNames)
		if r.whichAgain(info, n-last) {
			return nil, false
		}
		r.lines = append(r.lines, r.history[n-last:]...)
		return r.lines, true
	}
	for _, q := range info.ranges {
		r.spend(int(q.last-q.first) / chargedNames)
		first, last := info.rangeIn(q, r.size)
		for n := int32(first); n <= int32(last); n++ {
			line := r.lineOf(n, 0)
			if line < 0 {
				if r.wanted(ReasonNoRow, info.at) {
					r.fault(KindMistake, ReasonNoRow, info.at, 0, "row "+strconv.Itoa(int(n))+" is not written")
				}
				return nil, false
			}
			r.lines = append(r.lines, int16(line))
		}
	}
	return r.lines, true
}

// passesTo is how often rows are worked until a count is reached.
func (r *runner) passesTo(l *Line, lines []int16, want int64) (int, bool) {
	if !r.known {
		r.now, r.known = hand{left: want}, true
		return 0, true
	}
	change, ok := r.trial(lines)
	gap := want - r.now.total()
	switch {
	case !ok:
		return r.turnsTo(l, lines, want), true
	case change == 0 && gap == 0:
		return 0, true
	case change == 0 || gap%change != 0 || gap/change < 0:
		r.neverCome(l, change, want)
		return 0, true
	}
	return int(min(gap/change, MaxRows)), true
}

// neverCome says that rows do not come to a count however often they are worked, and goes on with
// that count.
func (r *runner) neverCome(l *Line, change, want int64) {
	if r.wanted(ReasonUneven, l.info.at) {
		r.fault(KindMistake, ReasonUneven, l.info.at, 0, "the rows change the count by "+signed(change)+" each time: from "+
			strconv.Itoa(int(r.now.total()))+" they never come to "+strconv.Itoa(int(want)))
	}
	gap := want - r.now.total()
	r.now, r.other, r.machine = hand{left: want}, nil, nil
	if r.quiet || change == 0 || gap%change == 0 {
		return
	}
	past := gap % change
	// The counts nearest to it that the rows come to, one of which was meant.
	by := [...]int64{-past, change - past}
	r.uneven = &unevenCounts{fewer: -min(by[0], by[1]), more: max(by[0], by[1]), at: l.info.at.start}
	if n := want + by[1]; n > 0 {
		r.other = &hand{left: n}
	}
}

// openPasses is for rows repeated "until it measures ...".
func (r *runner) openPasses(l *Line, lines []int16) (int, bool) {
	if !r.quiet {
		r.out.RowsOpen = true
	}
	r.leftOpen = true
	if !r.known {
		return 0, false
	}
	if l.info.allWorked {
		if n, ok := r.turnsToEnd(lines); ok {
			return n, true
		}
		r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how many times? stitches stay behind the turn however often the rows are worked")
		return 0, false
	}
	change, ok := r.trial(lines)
	switch {
	case !ok:
		return 1, true
	case change == 0:
		r.fault(KindReading, ReasonOpenLength, l.info.at, 0, "the number of rows is left open; the count stays the same")
		r.oddRowsTurn(l, lines, false)
		r.openSide(l, len(lines))
		return 0, true
	}
	if want, ok := r.claim(l); ok {
		return r.passesTo(l, lines, want)
	}
	if r.wanted(ReasonOpenRows, l.info.at) {
		r.fault(KindQuestion, ReasonOpenRows, l.info.at, 0, "how many times? the rows change the count by "+signed(change)+
			" each time; what follows is not counted until the text says how many stitches there are")
	}
	return 0, false
}

// openSide is the side after rows whose number is left open.
func (r *runner) openSide(l *Line, period int) {
	switch {
	case r.round || l.info.endSide != stitch.SideUnspecified:
	case period%2 != 0:
		r.side = stitch.SideUnspecified
	}
}
