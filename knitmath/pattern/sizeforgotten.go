package pattern

// What binds off, grafts or puts aside the stitches of a piece may be written for some sizes alone, where the sizes that it is not for
// were forgotten: "Second size only: ... Bind off all sts.", and no "All sizes" between them. Those go on with all their stitches on the
// needle, up to the next piece or the end of the text.

// offSkipped notes a line that ends a piece and is not for the size at hand.
func (r *runner) offSkipped(i int) {
	info := &r.piece.Lines[i].info
	if !info.defined && (info.kind == lineOff && info.rest == nil || info.kind == lineHold && info.all) && r.known && r.now.total() > 0 {
		r.skippedOff = i + 1
	}
}

// offSince forgets such a line where the stitches have ended otherwise.
func (r *runner) offSince() {
	if r.known && r.now.total() == 0 {
		r.skippedOff = 0
	}
}

// forgotten asks about the stitches of a size where a piece ended in other sizes and not in it.
func (r *runner) forgotten() {
	if r.skippedOff > 0 && r.known && !r.quiet && r.now.total() > 0 {
		r.fault(KindQuestion, ReasonUnread, r.piece.Lines[r.skippedOff-1].info.at, 0, "this is for other sizes: "+r.becomes())
	}
	r.skippedOff = 0
}
