package pattern

// firstOnes are the first of some rows that were just repeated.
var firstOnes = wordings("the first of these rows", "first of these rows", "the first of these",
	"the first of them", "the first of these rnds")

// firstOfThese reads "the first of these rows" after rows that are repeated.
func (p *parser) firstOfThese(info, before *lineInfo) bool {
	end := p.phraseEnd(p.next, firstOnes)
	k := len(p.piece.Lines) - 1 - before.last
	switch {
	case end == 0:
		return false
	case before.ranges != nil:
		first := before.ranges[0].first
		info.ranges = []rowRange{{first, first}}
	case before.last > 0 && k >= 0 && p.piece.Lines[k].info.kind == lineRow:
		for i := k; i < k+before.last; i++ {
			if row := &p.piece.Lines[i].info; row.kind != lineRow || labelRows(row, 0) != 1 {
				return false
			}
		}
		info.lines = []int16{int16(k)}
	default:
		return false
	}
	p.next = end
	return true
}
