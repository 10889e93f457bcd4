package pattern

// claim writes "(96, 104, 112 sts)" or "(2 sts dec)".
func (w *writer) claim(l *Line) {
	claimed, word := l.ClaimedStitches, ""
	if len(l.ClaimedChangeStitches) > 0 {
		word = " inc"
		claimed = make([]int, len(l.ClaimedChangeStitches))
		for i, n := range l.ClaimedChangeStitches {
			if claimed[i] = n; n < 0 {
				claimed[i], word = -n, " dec"
			}
		}
	}
	if len(claimed) == 0 {
		return
	}
	w.WriteString(" (")
	for i, n := range claimed {
		if i > 0 {
			w.WriteString(", ")
		}
		if n < 0 {
			w.WriteString("-")
		} else {
			w.int(n)
		}
	}
	if single(claimed, 1) {
		w.WriteString(" st")
	} else {
		w.WriteString(" sts")
	}
	w.WriteString(word)
	w.WriteString(")")
}
