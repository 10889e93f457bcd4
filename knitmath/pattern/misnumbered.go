package pattern

import (
	"slices"
	"strconv"
	"strings"
)

// misnumbered finds rows whose number is out of order among those that stand together. Where those
// above and below leave room for just one number it is taken for that one: so a number that is
// written wrong is found once, at its place, and what follows is worked as it is meant.
func (p *parser) misnumbered() {
	lines, above := p.piece.Lines, false
	for from := 0; from < len(lines); {
		to, plain := p.numberedRun(from)
		if to-from > 1 {
			p.numbersOfRun(from, to, plain, above)
		}
		above = above || len(lines[from].info.ranges) > 0
		from = max(to, from+1)
	}
}

// numberedRun is the line after the numbered rows that stand together from a line on, and whether
// each of them has one number, or one span of numbers, in all sizes.
func (p *parser) numberedRun(from int) (to int, plain bool) {
	lines := p.piece.Lines
	plain = true
	for to = from; to < len(lines) && (lines[to].numbered() || lines[to].rules()); to++ {
		info := &lines[to].info
		plain = plain && lines[to].oneRange() && info.every == everyNone && info.inRounds == lines[from].info.inRounds
	}
	return to, plain
}

// numbersOfRun looks through the lines from one to before another. Lists, and rules for other rows,
// have no order of their own. Where rows above say their numbers, as "Row 4: Work the dec row" does, the
// first need not begin with 1.
func (p *parser) numbersOfRun(from, to int, plain, above bool) {
	lines, mended := p.piece.Lines[from:to], false
	for i := range lines {
		if i == 0 && above {
			continue
		}
		info := &lines[i].info
		want, ok := roomFor(lines, i)
		if !ok && i == len(lines)-1 {
			want, ok = p.calledLater(lines, to)
		}
		if ok {
			p.expectedRows(info, want)
			info.ranges, mended = []rowRange{want}, true
		}
	}
	if !mended && plain {
		p.outOfOrder(lines)
	}
}

// oneRange reports whether a label has one number, or one span of numbers, in all sizes.
func (l *Line) oneRange() bool {
	info := &l.info
	return len(info.ranges) == 1 && info.firsts == nil && info.lasts == nil && info.forSizes == 0 && !info.defined
}

// calledLater is the number after the one before the last row, where a repeat at once below names it
// and not the one that the last row has: "Row 1, Row 3; rep Rows 1 and 2".
func (p *parser) calledLater(lines []Line, next int) (rowRange, bool) {
	last := len(lines) - 1
	if last < 1 || next >= len(p.piece.Lines) || !lines[last].oneRange() || !lines[last-1].oneRange() {
		return rowRange{}, false
	}
	info, have := &p.piece.Lines[next].info, lines[last].info.ranges[0]
	want := lines[last-1].info.ranges[0].last + 1
	named := func(n int32) bool {
		for _, q := range info.ranges {
			if q.first <= n && n <= q.last {
				return true
			}
		}
		return false
	}
	return rowRange{want, want}, info.kind == lineRepeat && have.first == have.last && named(want) && !named(have.first)
}

// roomFor is the numbers that a row must have between its neighbours, where it has others. The last
// row of all may leave numbers out, or be the first of another set, but not have one that was
// written just before.
func roomFor(lines []Line, i int) (rowRange, bool) {
	for k := max(i-1, 0); k < min(i+2, len(lines)); k++ {
		if !lines[k].oneRange() || lines[k].info.inRounds != lines[i].info.inRounds {
			return rowRange{}, false
		}
	}
	have, want := lines[i].info.ranges[0], rowRange{1, 0}
	if i > 0 {
		want.first = lines[i-1].info.ranges[0].last + 1
	}
	if i+1 == len(lines) {
		if i > 0 && have.first < want.first && want.first < have.last && standsBelow(&lines[i], &lines[i-1]) {
			return rowRange{want.first, have.last}, true // "Row 2, Rows 1-6": the first of them stand above
		}
		return roomAtEnd(lines, i, want.first)
	}
	want.last = lines[i+1].info.ranges[0].first - 1
	switch {
	case have == want || want.first > want.last:
		return have, false
	case have.first == have.last:
		return want, want.first == want.last
	}
	want.first = afterListed(lines[:i], want.first)
	return want, have != want && shortSpan(have, want) && !slices.ContainsFunc(lines, ruling)
}

// afterListed is the first number from n on that no list of the rows has: after "Rnds 2 and 4" and "Rnd 3" comes 5.
func afterListed(lines []Line, n int32) int32 {
	for slices.ContainsFunc(lines, func(l Line) bool { return len(l.info.ranges) > 1 && slices.Contains(l.info.ranges, rowRange{n, n}) }) {
		n++
	}
	return n
}

// shortSpan reports whether a span of numbers begins or ends as the one that there is room for does.
func shortSpan(have, want rowRange) bool {
	return want.first < want.last && (have.first == want.first || have.last == want.last)
}

// ruling reports whether a line stands for other rows beside its own: one that seems to be left out may be one of them.
func ruling(l Line) bool { return l.info.every != everyNone }

// roomAtEnd is the number of a last row that goes on from another, where it has one that cannot stand
// there: the very number of the row before it, or a lower one that begins no other set. Where rows are
// written of one side alone, beside "all WS rows", the last may be one more of them.
func roomAtEnd(lines []Line, i int, next int32) (rowRange, bool) {
	have, want := lines[i].info.ranges[0], rowRange{next, next}
	switch {
	case i == 0 || have.first != have.last || have.first >= next:
		return want, false
	case have.first == next-1:
		return want, have.first > 1 || i == 1 && lines[0].calledAs() == lines[1].calledAs()
	case have.first == 1 || i == 1:
		return want, false
	}
	last, before := lines[i-1].info.ranges[0], lines[i-2].info.ranges
	if len(before) == 0 || before[0].last >= last.first {
		return want, false // no order is kept
	}
	if before[0].last == last.first-2 && (next-have.first)%2 != 0 {
		want = rowRange{next + 1, next + 1}
	}
	return want, true
}

// standsBelow reports whether a row stands in the very line below another: after a blank one another set may begin.
func standsBelow(row, above *Line) bool {
	return row.info.ownLine == above.info.ownLine+1 && row.info.forSizes == 0 && above.info.forSizes == 0
}

// calledAs is a label without what stands in brackets: its side.
func (l *Line) calledAs() string {
	name, _, _ := strings.Cut(l.Label, "(")
	return strings.TrimSpace(name)
}

func (p *parser) expectedRows(info *lineInfo, want rowRange) {
	text := "row " + strconv.Itoa(int(want.first)) + " is expected here"
	if want.last > want.first {
		text = "rows " + strconv.Itoa(int(want.first)) + "-" + strconv.Itoa(int(want.last)) + " are expected here"
	}
	p.mistake(ReasonRowNumber, info.at, text)
}

// outOfOrder says of the first row that stands before one with a lower number which is expected in
// its place. Another Row 1 begins another set.
func (p *parser) outOfOrder(lines []Line) {
	for i := range lines {
		have, lowest := lines[i].info.ranges[0].first, lines[i].info.ranges[0].first
		one := have == 1
		for k := range lines[:i] {
			one = one || lines[k].info.ranges[0].first == 1
		}
		for k := i + 1; k < len(lines); k++ {
			n := lines[k].info.ranges[0].first
			if n == 1 && one {
				break
			}
			one = one || n == 1
			lowest = min(lowest, n)
		}
		if lowest < have {
			p.expectedRows(&lines[i].info, rowRange{lowest, lowest})
			return
		}
	}
}
