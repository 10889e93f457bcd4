package pattern

// thisChange reads "dec" of "repeat this dec every 4th row", and "dec row" where no row is called so: the last row
// that changed the count in that way.
func (p *parser) thisChange(info *lineInfo) bool {
	t, named := p.peek(), p.ahead(1).row()
	if !t.among("dec inc decrease increase shaping decreases increases decreasing increasing") ||
		named && p.lineCalled([]string{nameWord(t.text)}) >= 0 {
		return false
	}
	n := p.lastChange()
	if n < 0 || !t.is("shaping") && !stepsChange(p.piece.Lines[n].Steps, nameWord(t.text)[0] == 'i') {
		return false
	}
	p.next++
	if named {
		p.next++
	}
	info.lines, info.last = []int16{int16(n)}, 0
	return true
}

// lastChange is the last row, with none but rows after it, that changed the count by its steps; -1 if there is none.
func (p *parser) lastChange() int {
	n := len(p.piece.Lines) - 1
	for n >= 0 && (p.piece.Lines[n].info.kind == linePassed || !changesCount(p.piece.Lines[n].Steps)) {
		if k := p.piece.Lines[n].info.kind; k != linePassed && k != lineRow && k != lineEven && k != linePlain {
			return -1
		}
		p.looked++
		n--
	}
	if n >= 0 && p.piece.Lines[n].info.kind != lineRow {
		return -1
	}
	return n
}

// stepsChange reports whether increases, or decreases, are among the steps of a row.
func stepsChange(steps []Step, increases bool) bool {
	for i := range steps {
		s := &steps[i]
		if stepsChange(s.Steps, increases) || s.Steps == nil && (increases && s.takes < s.leaves || !increases && s.takes > s.leaves) {
			return true
		}
	}
	return false
}
