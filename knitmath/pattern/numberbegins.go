package pattern

import (
	"strconv"
	"strings"
)

// mayBegin reports whether numbered rows may begin with a number: the one that is expected, or the
// one after all rows so far. Where no number comes before that is Row 1, but rows without a number
// may be counted, since the last number or since something began.
func (r *runner) mayBegin(i, low, expected int) bool {
	if low == expected || low == len(r.history)+1 || r.rows == 0 && len(r.start.Counts) > 0 { // rows of a piece that was begun
		return true
	}
	if low > expected && r.othersBetween(expected, low, i) {
		return true
	}
	since := r.rows - r.told.numberedAt
	if expected > 1 { // "Rows 1, 2; rep them twice more; Row 7"
		return since > 0 && low == r.told.numbered+1+since
	}
	if r.told.numbered > 0 && (low == r.told.numbered+1 || low == r.told.numbered+1+since) {
		return true
	}
	return r.countedSince(low) || low == 2 && r.firstRowTold(i)
}

// countedSince reports whether a number may count the rows since something began, or where that is
// not known.
func (r *runner) countedSince(low int) bool {
	if n := len(r.told.begins); r.told.unsure && (n == 0 || r.told.sureFrom >= int(r.told.begins[n-1])) {
		return true
	}
	for _, n := range r.told.begins {
		if low == r.rows-int(n)+1 && r.rows > int(n) || low == int(n)+1 { // the second: short rows within rounds are counted apart
			return true
		}
	}
	return false
}

// firstRowTold reports whether words before line i, since the last number, speak of the first row:
// "cast on 40 sts (counts as Row 1)", or are it: "Next rnd: [k1, kfb] to end. Rnd 2: Knit."
func (r *runner) firstRowTold(i int) bool {
	for k := i - 1; k >= 0 && !r.piece.Lines[k].numbered(); k-- {
		if l := &r.piece.Lines[k]; l.info.kind == lineRow && l.Label != "" {
			return true
		}
		at := r.piece.Lines[k].info.at
		said := strings.ToLower(r.piece.source[at.start:max(at.start, min(at.end, at.start+400))])
		for _, first := range []string{"row 1", "rnd 1", "round 1", "first r", "1st r"} {
			if strings.Contains(said, first) {
				return true
			}
		}
	}
	return false
}

// numberOfOff compares the number of a row that binds all off, "Row 12: BO all sts", with that of the row before it, which a
// rule for other rows may leave unwritten.
func (r *runner) numberOfOff(i int) {
	l := &r.piece.Lines[i]
	if l.info.kind != lineOff || len(l.info.ranges) != 1 || r.lastRow == 0 {
		return
	}
	first, _ := l.info.rangeIn(l.info.ranges[0], r.size)
	next := r.lastRow + 1
	ruled := first == next+1 && r.ruled(int32(next), i) >= 0
	if first == next || ruled || r.mayBegin(i, first, next) || !r.wanted(ReasonRowNumber, l.info.at) {
		return
	}
	r.fault(KindMistake, ReasonRowNumber, l.info.at, 0, "row "+strconv.Itoa(next)+" is expected here")
}

// besideRule says that a row is written knit where a rule for others has it purled, or the other way round: it is worked as it
// is written itself.
func (r *runner) besideRule(n int32, line, from int) {
	rule := r.written.ruled(n, min(from, r.since))
	if rule < 0 {
		return
	}
	own, other, at := r.piece.Lines[line].Steps, r.piece.Lines[rule].Steps, r.piece.Lines[line].info.at
	if !evenSteps(own) && evenSteps(other) && r.skippedAfter(line, n) && r.wanted(ReasonRowNumber, at) {
		r.fault(KindQuestion, ReasonRowNumber, at, 0, "is this row "+strconv.Itoa(int(n))+"? a rule for other rows is for it, too, and row "+
			strconv.Itoa(int(n)+1)+" is not written")
		return
	}
	if len(own) == 1 && len(other) == 1 && own[0].Operation != other[0].Operation && own[0].stretch() && other[0].stretch() &&
		r.wanted(ReasonReading, at) {
		r.fault(KindReading, ReasonReading, at, 0, "read as written here, although a rule for other rows is for this one too")
	}
}

// skippedAfter reports whether the row after one with a number is not written, and the next is written that no rule is for.
func (r *runner) skippedAfter(line int, n int32) bool {
	if line+1 >= len(r.piece.Lines) || !r.piece.Lines[line+1].numbered() {
		return false
	}
	return r.piece.Lines[line+1].info.ranges[0].first == n+3
}
