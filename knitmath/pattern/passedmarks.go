package pattern

// after is where the markers are for the next row.
func (w *walker) after(before hand, turned bool) marks {
	if w.marks.lost {
		return marks{lost: true}
	}
	var room [2 * maxMarks]int64 // no list made anew for each of the thousands of rows that a trial works
	next := w.keptMarks(w.passedMarks(room[:0], before, turned), before, turned)
	inOrder(next)
	out := marks{lost: w.out.lost}
	total := w.new + before.behind + w.left - w.pos
	for _, place := range next {
		if w.round && (place == 0 || place == total) && !turned {
			continue // that of the beginning of the round
		}
		out.add(place)
	}
	return out
}

// passedMarks adds where the markers are for the next row that this one has placed or passed.
func (w *walker) passedMarks(next []int64, before hand, turned bool) []int64 {
	turnsBack := turned || !w.round
	beyond := int64(0) // made after the marker of the beginning of the round: the first of the next
	if w.began >= 0 && !turnsBack {
		beyond = w.new - w.began
	}
	for _, q := range w.out.at[:w.out.count] {
		if turnsBack {
			next = append(next, w.new-int64(q))
		} else {
			next = append(next, before.behind+int64(q)+beyond)
		}
	}
	return next
}

// keptMarks adds where the markers are for the next row that this one has not come to: those that an
// earlier turn left behind, and those beyond its own.
func (w *walker) keptMarks(next []int64, before hand, turned bool) []int64 {
	turnsBack := turned || !w.round
	for k, p := range w.marks.at[:w.marks.count] {
		switch {
		case p < 0 && turnsBack:
			next = append(next, w.new-int64(p))
		case p < 0:
			next = append(next, before.behind+int64(p))
		case k >= w.next && turned:
			next = append(next, w.pos-int64(p))
		case k >= w.next && turnsBack:
			next = append(next, 0)
		}
	}
	return next
}
