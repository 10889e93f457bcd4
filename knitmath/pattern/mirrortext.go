package pattern

// rereads is how often a text is read again at most before one that is read otherwise with some of its
// rows mirrored is left as it was.
const rereads = 4

// text is the piece's text with the rows that have a mirror image written where they stand, and all
// else as it was. It is asked of the reader itself: a row that would be read otherwise where it
// stands is left as it was, and so are all where what does this is not found soon.
func (m *mirror) text(style RepeatStyle, own []Abbreviation) string {
	p := m.piece
	if _, more := p.Findings(); more > 0 {
		return m.leftAsGiven() // it has to be mended first
	}
	trials := p.room.forTrials()
	for spare := rereads; spare > 0; spare-- {
		text, next := p.spliced(m.lines, style), 0
		if len(text) <= min(MaxTextBytes, 2*len(p.source)+100) {
			again := trials.read(text, parser{own: ownNames(own)})
			if next = m.readOtherwise(again, style); next < 0 {
				return text
			}
		}
		for ; next >= 0 && !writtenAnew(m.lines, next); next-- {
		}
		if next < 0 {
			break
		}
		m.refuse(m.lines[next].info.at, "from its other end it would be read otherwise where it stands: it is left as it was")
		m.keep(next)
	}
	return m.leftAsGiven()
}

// readOtherwise is the first line that was not read again as it was written, -1 for none. A row that is
// written as others is what those have become.
func (m *mirror) readOtherwise(again *Piece, style RepeatStyle) int {
	if again.SizeCount != m.piece.SizeCount {
		return len(m.lines) - 1
	}
	for i := range m.lines {
		switch {
		case i >= len(again.Lines):
			return i
		case m.piece.Lines[i].follows() && again.Lines[i].follows():
			m.lines[i].Steps = again.Lines[i].Steps
		case !sameLine(&m.lines[i], &again.Lines[i], style):
			return i
		}
	}
	if len(again.Lines) > len(m.lines) {
		return len(m.lines) - 1
	}
	return -1
}

// leftAsGiven leaves all rows as they were.
func (m *mirror) leftAsGiven() string {
	for i := range m.lines {
		if writtenAnew(m.lines, i) {
			m.refuse(m.lines[i].info.at, "with its rows from the other end the text would be read otherwise: it is left as it was")
			m.keep(i)
		}
	}
	return m.piece.source
}
