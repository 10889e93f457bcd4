package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// rowsTold is from where the rows that a text tells may be counted. A designer counts them from
// the cast-on, from a heading, from where stitches were put aside or taken up, from Row 1 of a set,
// from the sentence, or from the count told before; which of them is not said.
type rowsTold struct {
	next     int     // the claim that is compared next
	begins   []int32 // rows that were worked before each of them
	sureFrom int     // of rows before it some were not counted
	unsure   bool    // there are such rows

	numbered, numberedAt int // the last number of rows, and how many had been worked then
}

// beganRows notes where a set of numbered rows begins.
func (r *runner) beganRows(i int) {
	if r.piece.Lines[i].info.ranges[0].first == 1 {
		r.told.begins = append(r.told.begins, int32(r.rows))
	}
}

// beganAfter notes that something began with a line, or that its rows could not all be counted.
func (r *runner) beganAfter(l *Line) {
	switch l.info.kind {
	case lineUnread:
		r.unsureHeld = r.unsureHeld || r.rows > 0 && r.mayHold(l)
		r.notAllCounted()
	case linePassed:
		if l.info.heading {
			r.told.begins = append(r.told.begins, int32(r.rows))
		}
	case lineCastOn, lineHold, lineTake, linePickUp, lineJoin:
		r.told.begins = append(r.told.begins, int32(r.rows))
	}
	if l.info.open || l.info.edgeTimes != nil || !r.known {
		r.notAllCounted()
	}
}

// notAllCounted forgets from where rows are counted: some that are worked since are not.
func (r *runner) notAllCounted() {
	r.told.sureFrom, r.told.unsure, r.told.begins = r.rows, true, r.told.begins[:0]
}

// mayHold reports whether a line that could not be read may put stitches aside, or take some up: it speaks of them, or it
// sends to another part of the text where some have been put aside before.
func (r *runner) mayHold(l *Line) bool { return l.info.matches && r.heldOnce || l.info.speaksOfHeld }

// speaksOfHeld reports whether words from a place of the text up to the next token speak of stitches, or of what holds
// some that are put aside.
func (p *parser) speaksOfHeld(from span, matches bool) bool {
	for i := p.next - 1; i >= leading && p.tokens[i].start >= from.start; i-- {
		t := &p.tokens[i]
		if t.is(puttingAside...) || !matches && t.among("aside leave place slip sl put return rem remaining these "+
			"other each separately") {
			return true
		}
	}
	return false
}

// rowsCompared compares the rows that are told of lines before one with those that were worked.
func (r *runner) rowsCompared(before int) {
	claims := r.piece.rows
	for ; r.told.next < len(claims) && claims[r.told.next].line < before; r.told.next++ {
		if c := &claims[r.told.next]; r.piece.Lines[c.line].info.isFor(r.size) && !r.stopped {
			r.compareRows(c)
		}
	}
}

// rowsSaid is a count of rows that is told, in a size.
type rowsSaid struct {
	at   int32
	size int
}

func (r *runner) compareRows(c *rowsClaim) {
	if r.piece.Lines[c.line].info.edgeTimes != nil {
		r.compareEdgeRows(c)
		return
	}
	own, after := r.rowsOf(c.line)
	told := at(c.rows, r.size)
	if told < 0 || !r.rowsSure(c.line, own, after) {
		return
	}
	counts, word := r.rowCounts(c.line, own, after), "rows"
	if c.ridge {
		counts, own, word = ridgesOf(counts), own/2, "ridges"
	}
	asked := r.withFirst(c, counts)
	if r.out.rowsMeant == nil {
		r.out.rowsMeant = map[rowsSaid][]int{}
	}
	r.out.rowsMeant[rowsSaid{c.at.start, r.size}] = counts
	r.told.begins = append(r.told.begins, int32(after))
	if asked && told == own {
		r.fault(KindQuestion, ReasonRows, c.at, 0, strconv.Itoa(own)+" without the first working, "+strconv.Itoa(counts[0])+
			" with it: say which")
		return
	}
	if told == own+1 && slices.Contains(counts, told) && r.besideLabel(c, own) {
		r.fault(KindQuestion, ReasonRows, c.at, 0, strconv.Itoa(own)+" are worked here, "+strconv.Itoa(told)+" with the one before: say which")
		return
	}
	if !slices.Contains(counts, told) && !(c.inAll && r.told.unsure) && r.wanted(ReasonRows, c.at) {
		r.fault(KindMistake, ReasonRows, c.at, 0, rowsText(counts, own, told, word)+", not "+strconv.Itoa(told))
	}
}

// rowsSure reports whether it is known how many rows a line has worked.
func (r *runner) rowsSure(line, own, after int) bool {
	return own >= 0 && after-own >= r.told.sureFrom && !r.piece.Lines[line].info.open && r.known
}

// besideLabel reports whether a count of rows in brackets is that of the several rows of its label alone.
func (r *runner) besideLabel(c *rowsClaim, own int) bool {
	return own > 1 && r.piece.Lines[c.line].numbered() && !c.inAll && r.bracketed(c)
}

// bracketed reports whether a count of rows stands alone in brackets, "[4 rounds]".
func (r *runner) bracketed(c *rowsClaim) bool {
	source := r.piece.source
	return c.at.start > 0 && int(c.at.end) < len(source) && source[c.at.start-1] == '[' && source[c.at.end] == ']'
}

// rowsText says how many rows are worked, alone and with those before them.
func rowsText(counts []int, own, told int, word string) string {
	text := report.CountOf(own, word) + " " + areWorked(own) + " here"
	if n := max(nearestCount(counts, told), counts[min(1, len(counts)-1)]); n > own {
		text += ", " + strconv.Itoa(n) + " with those before"
	}
	return text
}

// withFirst leaves the rows of a repeat alone out of those that are counted "in all" beside so many times more: with the first
// working there are more. It reports whether it has: not where as many may be counted from elsewhere.
func (r *runner) withFirst(c *rowsClaim, counts []int) bool {
	l := &r.piece.Lines[c.line]
	if !c.inAll || c.ridge || !r.besideFirst(l) || l.info.total || len(counts) < 2 || slices.Contains(counts[1:], counts[0]) {
		return false
	}
	counts[0] = counts[1]
	return true
}

// besideFirst reports whether a line works rows again that were worked before it: "rep Rows 1 and 2 5 times", "work them 5
// times more".
func (r *runner) besideFirst(l *Line) bool {
	return l.info.kind == lineRepeat && (!l.info.afresh || r.says(l, "more"))
}

// ridgesOf are the garter ridges of numbers of rows: of an odd number the row that makes no whole one may be counted,
// as that of the cast-on is, or not.
func ridgesOf(rows []int) []int {
	var ridges []int
	for _, n := range rows {
		ridges = append(ridges, n/2, (n+1)/2)
	}
	return ridges
}

// rowsOf is how many rows a line worked, and how many were worked after it; -1 where it was not
// worked.
func (r *runner) rowsOf(line int) (own, after int) {
	l, before := &r.piece.Lines[line], int(r.rowsBefore[line])
	switch {
	case before < 0:
		return -1, -1
	case l.numbered():
		for k := line; k >= 0 && r.piece.Lines[k].info.at.start == l.info.at.start; k-- { // "Rows 3-28: Rep Rows 1 and 2"
			own += labelRows(&r.piece.Lines[k].info, r.size)
			before = min(before, int(r.rowsBefore[k]))
		}
		return own, before + own
	}
	after = r.rows
	for k := line + 1; k < len(r.piece.Lines); k++ {
		if n := int(r.rowsBefore[k]); n >= 0 {
			after = n // a later line of the same sentence
			break
		}
	}
	return after - before, after
}

// rowCounts are the numbers of rows that may be told of a line.
func (r *runner) rowCounts(line, own, after int) []int {
	info := &r.piece.Lines[line].info
	inAll := info.kind == lineRepeat && info.total && info.counts != nil
	counts := []int{own}
	if inAll {
		counts[0] = rowsInAll(own, at(info.counts, r.size))
	}
	if r.besideFirst(&r.piece.Lines[line]) {
		counts = append(counts, own+r.rowsRepeated(info))
	}
	if len(info.ranges) > 0 && r.piece.Lines[line].numbered() {
		_, last := info.rangeIn(info.ranges[len(info.ranges)-1], r.size)
		counts = append(counts, last)
	}
	for k := line - 1; k >= 0 && !inAll && r.piece.Lines[k].info.ownLine == info.ownLine; k-- {
		if n := int(r.rowsBefore[k]); n >= r.told.sureFrom {
			counts = append(counts, after-n)
		}
	}
	if !r.told.unsure {
		counts = append(counts, after)
	}
	for _, n := range r.told.begins {
		if int(n) >= r.told.sureFrom {
			counts = append(counts, after-int(n))
		}
	}
	return counts
}

// rowsInAll is how many rows "a total of 51 times" is of, where so many are worked after the first time.
func rowsInAll(own, times int) int {
	if times > 1 && own%(times-1) == 0 {
		return own / (times - 1) * times
	}
	return own
}

// rowsRepeated is how many rows a repeat works once.
func (r *runner) rowsRepeated(info *lineInfo) int {
	switch {
	case info.lines != nil:
		return len(info.lines)
	case info.ranges != nil:
		return labelRows(info, r.size)
	}
	return info.last
}

// nearestCount is the number of a list that differs least from another, the first of several.
func nearestCount(numbers []int, to int) int {
	best := numbers[0]
	for _, n := range numbers {
		if max(n-to, to-n) < max(best-to, to-best) {
			best = n
		}
	}
	return best
}

// rowsToldAlike looks at counts of rows beside a repeat in several sizes: where they are with the rows that are
// repeated in some and without them in others, the fewer of these are wrong; of as many, those without.
func (e *engine) rowsToldAlike() {
	for k := range e.piece.rows {
		c := &e.piece.rows[k]
		if e.piece.Lines[c.line].info.kind != lineRepeat || len(c.rows) < 2 || e.faultAt(ReasonRows, c.at) {
			continue
		}
		var sizes [2][]int // without, with
		for size := range e.piece.SizeCount {
			counts := e.out.rowsMeant[rowsSaid{c.at.start, size}]
			if i := slices.Index(counts, at(c.rows, size)); len(counts) > 1 && i >= 0 && i < 2 {
				sizes[i] = append(sizes[i], size)
			}
		}
		wrong, meant := 0, 1
		if len(sizes[1]) < len(sizes[0]) {
			wrong, meant = 1, 0
		}
		for _, size := range sizes[wrong] {
			if len(sizes[meant]) > 0 {
				e.rowsUnlike(c, size, meant)
			}
		}
	}
}

// rowsUnlike says that a size has another number of rows than it would have as the others do.
func (e *engine) rowsUnlike(c *rowsClaim, size, meant int) {
	n := e.out.rowsMeant[rowsSaid{c.at.start, size}][meant]
	r := &runner{engine: e, size: size, rows: int(e.rowsBefore[c.line])}
	r.fault(KindMistake, ReasonRows, c.at, 0, report.CountOf(n, "rows")+" as the other sizes count them, not "+
		strconv.Itoa(at(c.rows, size)))
}

// faultAt reports whether something was found of a reason at a place.
func (e *engine) faultAt(reason report.Reason, at span) bool {
	_, found := e.found.at[findingKey{at.start, reason}]
	return found
}

func areWorked(n int) string {
	if n == 1 {
		return "is worked"
	}
	return "are worked"
}
