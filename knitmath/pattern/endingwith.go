package pattern

import "example.com/knitmath/knitmath/stitch"

// endKind is with which of the rows that are worked again the last of them is to be one: "ending with a dec rnd".
type endKind uint8

const (
	endUnsaid   endKind = iota
	endChanging         // a row that changes the count
	endEven             // a plain one
)

// endingKind reads "with a dec rnd", "on a plain row" at token i; its end is 0 if that is not what stands there.
func (p *parser) endingKind(i int) (end int, kind endKind) {
	if !p.acceptedAt(&i, "with", "on", "after", "in") {
		return 0, endUnsaid
	}
	for p.acceptedAt(&i, "a", "an", "the", "last") {
	}
	switch t := &p.tokens[i]; {
	case t.among("dec decrease decreasing inc increase increasing shaping shaped narrowing widening"):
		kind = endChanging
	case t.among("plain even straight non-dec non-decrease unshaped rest"),
		t.among("knit k purl p") && p.tokens[i+1].is("rnd", "round"):
		kind = endEven
	default:
		return 0, endUnsaid
	}
	if !p.tokens[i+1].row() {
		return 0, endUnsaid
	}
	return i + 2, kind
}

// endsInSentence reports whether "End with a WS row" stands at token i, a sentence of its own about the rows before it.
func (p *parser) endsInSentence(i int) bool {
	return p.tokens[i].among("end ending finish finishing") && p.tokens[i+1].is("with", "on", "after")
}

// passesEnding works rows so many times that they come to a count, and as many fewer or more of them as the row with which
// they are said to end asks for: "rep last 2 rows until 18 sts rem, ending with a RS row".
func (r *runner) passesEnding(l *Line, lines []int16, passes int) bool {
	over := 0
	if l.info.until != nil && passes > 0 {
		over = r.rowsOver(l, lines, passes*len(lines))
	}
	switch {
	case over < 0:
		return r.passes(lines, passes-1, l.info.at) && r.passes(lines[:len(lines)+over], 1, l.info.at)
	case over > 0 && r.keepsCount(lines[0]):
		return r.passes(lines, passes, l.info.at) && r.passes(lines[:1], 1, l.info.at)
	}
	return r.passes(lines, passes, l.info.at)
}

// rowsOver is how many rows are worked after so many that come to a count, below 0 where the last of them are left out, to end
// with the row that is said, or on its side.
func (r *runner) rowsOver(l *Line, lines []int16, rows int) int {
	even := 0 // of them stand at the end
	for even < len(lines) && r.keepsCount(lines[len(lines)-1-even]) {
		even++
	}
	switch end := l.info.endSide; {
	case even == len(lines):
	case l.info.endKind == endChanging:
		return -even
	case l.info.endKind == endEven:
		return bit(even == 0)
	case end == stitch.SideUnspecified, r.round, r.side == stitch.SideUnspecified, (r.side == end) == (rows%2 != 0):
	case even > 0:
		return -1
	default:
		return 1
	}
	return 0
}

// keepsCount reports whether a row, -1 for a plain one, is known to leave the count as it is.
func (r *runner) keepsCount(line int16) bool {
	change, ok := r.changedBy([]int16{line})
	return ok && change == 0
}

// rowsInAll is how many rows so many passes are that are not worked as they are written, with those for the row at their end.
func (r *runner) rowsInAll(l *Line, lines []int16, passes int) int {
	rows := passes * len(lines)
	if rows > 0 {
		rows += r.rowsOver(l, lines, rows)
	}
	return rows
}
