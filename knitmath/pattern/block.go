package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// block works the numbered rows that stand together from line i on, in the order
// of their numbers. It returns the line after them.
func (r *runner) block(i int) int {
	from := i
	if r.piece.Lines[i].info.ranges[0].first == 1 { // a new set of rows
		r.since, r.lastRow = i, 0
		r.written.forgetRules()
	}
	next, low, high := r.noteBlock(from)
	r.ruleAfter(next)
	at := r.piece.Lines[from].info.at
	others := from > 0 && r.piece.Lines[from-1].info.inRounds != r.piece.Lines[from].info.inRounds
	expected := 1
	if r.lastRow > 0 && !others {
		expected = r.lastRow + 1
	}
	if !r.mayBegin(from, int(low), expected) && r.wanted(ReasonRowNumber, at) {
		r.fault(KindMistake, ReasonRowNumber, at, 0, "row "+strconv.Itoa(expected)+" is expected here")
	}
	for n := low; n <= high && !r.stopped; n++ {
		line := r.lineOf(n, from)
		if line < 0 {
			if !r.ofOtherSizes(n, next) {
				n = r.passGap(n, high, from, at)
			}
			continue
		}
		r.onNothing(line)
		r.work(line, n == r.lastNumber(line))
		r.noteLast(line)
	}
	// The row that goes with the last one, where a rule says so.
	if line := r.ruled(high+1, from); line >= 0 && !r.stopped && r.wantsOneMore(next, high+1) {
		r.work(line, false)
		high++
	}
	r.lastRow = int(high)
	r.told.numbered, r.told.numberedAt = int(high), r.rows
	return next
}

// noteLast notes where the last of several rows comes to for which a label stands: it is that one
// whose count the text claims.
func (r *runner) noteLast(line int) {
	c := &r.out.Lines[line]
	if r.quiet || c.StartStitches[r.size] < 0 || labelRows(&r.piece.Lines[line].info, r.size) < 2 && r.piece.Lines[line].info.forRows == nil {
		return
	}
	if c.lastEnd == nil {
		c.lastEnd = slices.Repeat([]int{-1}, r.piece.SizeCount)
	}
	if r.size == 0 {
		c.lastRow = r.rows
	}
	if c.lastEnd[r.size] = -1; r.known {
		c.lastEnd[r.size] = int(r.now.total())
	}
}

// wantsOneMore reports whether what follows shows that a row of a rule was worked after
// the last one that is written: it repeats that row, or begins on the other side.
func (r *runner) wantsOneMore(next int, number int32) bool {
	for i := next; i < len(r.piece.Lines) && i < next+3; i++ {
		info := &r.piece.Lines[i].info
		if info.kind == linePassed || info.onlyRules() {
			continue
		}
		for _, q := range info.ranges {
			if info.kind == lineRepeat && q.last >= number {
				return true
			}
		}
		return info.last > 0 && info.kind == lineRepeat && info.last%2 == 0 && number%2 == 0 ||
			info.side != stitch.SideUnspecified && !r.round && r.side == info.side.Other()
	}
	return false
}

// gap is the first number after n, one that no line stands for, for which there is
// a line, or high+1.
func (r *runner) gap(n, high int32, from int) int32 {
	if r.sideRuled() && r.side != stitch.SideUnspecified {
		return n + 1 // the rule is for the other side, which comes next
	}
	return min(r.written.next(n+1), r.written.nextRuled(n+1, min(from, r.since)), high+1)
}

// passGap passes over the rows from n on that no line stands for, and returns the last of them. at is where the rows begin.
func (r *runner) passGap(n, high int32, from int, at span) int32 {
	to := r.gap(n, high, from)
	if next := r.exactly(to, from); next >= 0 {
		at = r.piece.Lines[next].info.at // what stands in the place of the row that is not written
	}
	r.unwritten(n, int(to-n), at)
	return to - 1
}

// unwritten passes over so many rows from n on.
func (r *runner) unwritten(n int32, rows int, at span) {
	if r.wantedTimes(ReasonRowNumber, at, rows) {
		r.fault(KindMistake, ReasonRowNumber, at, 0, "row "+strconv.Itoa(int(n))+" is not written")
	}
	if !r.round && rows%2 != 0 {
		r.side = r.side.Other()
	}
}

// noteBlock notes which numbers are written on which line, of the numbered lines
// that stand together. It returns the line after them, and the lowest and highest
// number.
func (r *runner) noteBlock(from int) (next int, low, high int32) {
	lines := r.piece.Lines
	low = MaxRows
	r.written.begin()
	for next = from; next < len(lines) && (lines[next].numbered() || lines[next].rules()); next++ {
		info := &lines[next].info
		if lines[next].rules() {
			r.ruleAfter(next)
			continue
		}
		if info.defined || !info.isFor(r.size) {
			continue
		}
		if next > from && r.newSet(next, from) {
			break
		}
		first, last := r.noteNumbers(next, from)
		low, high = min(low, first), max(high, last)
	}
	return next, low, high
}

// newSet reports whether a line begins the next set of rows: its number is written already,
// among those from a line on, and it is the first, or of rows where the others are of rounds.
func (r *runner) newSet(line, from int) bool {
	info := &r.piece.Lines[line].info
	first, _ := info.rangeIn(info.ranges[0], r.size)
	return r.exactly(int32(first), from) >= 0 &&
		(first == 1 && !r.rowTwice(line) || info.inRounds != r.piece.Lines[from].info.inRounds)
}

// noteNumbers notes the numbers of a line in this size, of which it returns the lowest and the
// highest, and finds fault with those that are written already among the lines from one on.
func (r *runner) noteNumbers(line, from int) (low, high int32) {
	info := &r.piece.Lines[line].info
	low = MaxRows
	twice, times := int32(0), 0
	for _, q := range info.ranges {
		first, last := info.rangeIn(q, r.size)
		q = rowRange{int32(first), int32(last)}
		for n := q.first; n <= q.last; n++ {
			if r.exactly(n, from) >= 0 {
				if times++; times == 1 {
					twice = n
				}
			}
			r.besideRule(n, line, from)
			r.written.write(n, line)
		}
		r.spend(int(q.last-q.first)/chargedNames + 1)
		if info.every != everyNone {
			r.written.every(q.last, line)
		}
		low, high = min(low, q.first), max(high, q.last)
	}
	if times > 0 && r.wantedTimes(ReasonRowNumber, info.at, times) {
		r.fault(KindMistake, ReasonRowNumber, info.at, 0, "row "+strconv.Itoa(int(twice))+" is written already")
	}
	return low, high
}

// rowTwice reports whether a first row stands at once below another one: a set of one row would
// be repeated before the next begins, or a line would be left free.
func (r *runner) rowTwice(next int) bool {
	above, row := &r.piece.Lines[next-1], &r.piece.Lines[next]
	return single1(above.info.ranges) && single1(row.info.ranges) && row.info.ownLine == above.info.ownLine+1 &&
		above.info.kind == lineRow && row.info.kind == lineRow && above.Label == row.Label
}

// single1 reports whether a label names the first row alone.
func single1(ranges []rowRange) bool { return len(ranges) == 1 && ranges[0] == rowRange{1, 1} }

// numbered reports whether a line is a row with a number.
func (l *Line) numbered() bool {
	if l.info.ranges == nil || l.Label == "" {
		return false
	}
	switch l.info.kind {
	case lineRow, lineUnread:
		return true
	case lineShape:
		return len(l.info.parts) == 1 && l.info.lines == nil
	case lineEven, linePlain:
		return l.info.hidden != nil
	}
	return false
}

// rules reports whether a line without a number stands for other rows.
func (l *Line) rules() bool {
	return l.info.kind == lineRow && l.info.onlyRules()
}

// onlyRules reports whether a label without a number says for which rows it stands, and is worked at
// no place of its own.
func (info *lineInfo) onlyRules() bool {
	return info.every != everyNone && info.ranges == nil && !info.nowToo
}

// lineOf finds the line of a row number among those from a line on, or the one
// that a rule says; -1 if there is none.
func (r *runner) lineOf(n int32, from int) int {
	if line := r.exactly(n, from); line >= 0 {
		return line
	}
	return r.ruled(n, from)
}

func (r *runner) exactly(n int32, from int) int {
	if n > MaxRows {
		return -1
	}
	if line := int(r.written.line[n]) - 1; line >= max(from, r.since) {
		return line
	}
	return -1
}

// ruled finds the line that says that it stands for every other row.
func (r *runner) ruled(n int32, from int) int {
	if line := r.written.ruled(n, min(from, r.since)); line >= 0 { // also behind rows without a number
		return line
	}
	if r.rule < 0 {
		return -1
	}
	stands := false
	switch r.ruleOf {
	case everyRS:
		stands = !r.round && r.side == stitch.RightSide
	case everyWS:
		stands = !r.round && r.side == stitch.WrongSide
	case everyEven:
		stands = n%2 == 0
	case everyOdd:
		stands = n%2 == 1
	case everyAll:
		stands = true
	}
	if stands {
		return r.rule
	}
	return -1
}

// sideRuled reports whether a line stands for all rows of one kind.
func (r *runner) sideRuled() bool { return r.rule >= 0 && (!r.round || r.ruleOf >= everyAll) }

// ruleAfter notes a line that stands for others and comes after them.
func (r *runner) ruleAfter(i int) {
	if i >= len(r.piece.Lines) {
		return
	}
	info := &r.piece.Lines[i].info
	if info.kind == lineRow && info.onlyRules() && !info.defined && info.isFor(r.size) {
		r.rule, r.ruleOf = i, info.every
	}
}

// lastNumber is the greatest number that the label of a line names.
func (r *runner) lastNumber(line int) int32 {
	info := &r.piece.Lines[line].info
	if info.lasts == nil && info.firsts == nil {
		return r.facts[line].lastNumber
	}
	_, last := info.rangeIn(info.ranges[0], r.size)
	return int32(last)
}
