package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// labelRows is how many rows the numbers of a label are in a size: 7 of "Rows 2-8".
func labelRows(info *lineInfo, size int) int {
	rows := 0
	for _, q := range info.ranges {
		first, last := info.rangeIn(q, size)
		rows += last - first + 1
	}
	return rows
}

// rowsAsNumbered compares how many rows a direction works with the numbers of its label, "Rows
// 2-8: Work 6 rows in st st", and reports whether they are as many. label is what the label
// said before the direction was read, and rows how many are worked in a size, -1 where that is
// not said.
func (p *parser) rowsAsNumbered(label *lineInfo, rows func(size int) int) bool {
	for size := range p.sizes {
		numbered, worked := labelRows(label, size), rows(size)
		if worked < 0 || worked == numbered {
			continue
		}
		p.notAsNumbered(label, numbered, worked)
		return false
	}
	return true
}

// notAsNumbered says that other rows are worked than a label numbers.
func (p *parser) notAsNumbered(label *lineInfo, numbered, worked int) {
	p.mistake(ReasonRowNumber, label.at, report.CountOf(numbered, "rows")+" are numbered here, and "+strconv.Itoa(worked)+" are worked")
}

// repeatedRows is how many rows a repeat works in a size, -1 where it is not said.
func repeatedRows(info *lineInfo, size int) int {
	rows := info.last
	switch {
	case info.kind != lineRepeat || info.total || info.pattern > 0 && info.ranges == nil:
		return -1
	case info.forRows != nil:
		return at(info.forRows, size)
	case info.counts == nil:
		return -1
	case info.lines != nil:
		rows = len(info.lines)
	case info.ranges != nil:
		rows = labelRows(info, size)
	}
	return rows * at(info.counts, size)
}
