package pattern

import "slices"

// begun reads a text with the stitches that the question gives. Where just as many are cast on below what can only be told, a
// title, the sizes, how an abbreviation is worked, they are those: none were there before, and what stands above works none.
func (in *room) begun(q CheckInstructionsInput, own map[string]meaning, sizes int) (piece *Piece, given []int) {
	began := len(q.StartStitches) > 0
	piece = in.read(q.Text, parser{own: own, sizes: sizes, began: began, given: began})
	if began && piece.castOnBelow(q.StartStitches) {
		if piece = in.read(q.Text, parser{own: own, sizes: sizes}); piece.onlyToldAbove(q.StartStitches) {
			return piece, nil
		}
		piece = in.read(q.Text, parser{own: own, sizes: sizes, began: true, given: true})
	}
	return piece, q.StartStitches
}

// castOnBelow reports whether the first cast-on is of so many stitches, and something is read above it that is more than told.
func (p *Piece) castOnBelow(counts []int) bool {
	i := p.firstCastOn()
	return i > 0 && slices.Equal(p.Lines[i].info.counts, counts) &&
		slices.ContainsFunc(p.Lines[:i], func(l Line) bool { return l.info.kind != linePassed })
}

// onlyToldAbove reports whether everything above the first cast-on, which is of so many stitches, is passed over, and asks nothing.
func (p *Piece) onlyToldAbove(counts []int) bool {
	i := p.firstCastOn()
	return i >= 0 && slices.Equal(p.Lines[i].info.counts, counts) &&
		!slices.ContainsFunc(p.Lines[:i], func(l Line) bool { return l.info.kind != linePassed }) &&
		!slices.ContainsFunc(p.found.list, func(f Finding) bool { return f.Kind != KindReading && f.at.start < p.Lines[i].info.at.start })
}

// firstCastOn is the first line that casts on, -1 if none does.
func (p *Piece) firstCastOn() int {
	return slices.IndexFunc(p.Lines, func(l Line) bool { return l.info.kind == lineCastOn })
}
