package pattern

// firstOnes is the index after "the first of these rows", "the 1st of them" at token i: the first of some rows that were
// just repeated; 0 if that is not what stands there.
func (p *parser) firstOnes(i int) int {
	if p.tokens[i].is("the") {
		i++
	}
	end := p.ordinalEnd(i)
	if end == 0 || p.ordinalValue(i) != 1 || !p.tokens[end].is("of") || !p.tokens[end+1].is("these", "them", "those") {
		return 0
	}
	if end += 2; p.tokens[end].kind == tokenNumber && p.tokens[end+1].row() || p.tokens[end].row() {
		end++
	}
	if p.tokens[end].row() {
		end++
	}
	return end
}

// firstOfThese reads "the first of these rows" after rows that are repeated.
func (p *parser) firstOfThese(info, before *lineInfo) bool {
	end := p.firstOnes(p.next)
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
