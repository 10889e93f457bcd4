package pattern

// claim writes "(96, 104, 112 sts)", "(2 sts dec)" or "(2 sts dec; 94 sts)".
func (w *writer) claim(l *Line) {
	change, count := claimedChange(l), l.ClaimedStitches
	if len(change)+len(count) == 0 {
		return
	}
	w.WriteString(" (")
	if len(change) > 0 {
		w.claimNumbers(change)
		w.WriteString(changeWord(l.ClaimedChangeStitches))
		if len(count) > 0 {
			w.WriteString("; ")
		}
	}
	if len(count) > 0 {
		w.claimNumbers(count)
	}
	w.WriteString(")")
}

// claimNumbers writes "96, 104, 112 sts".
func (w *writer) claimNumbers(numbers []int) {
	for i, n := range numbers {
		if i > 0 {
			w.WriteString(", ")
		}
		if n < 0 {
			w.WriteString("-")
		} else {
			w.int(n)
		}
	}
	if single(numbers, 1) {
		w.WriteString(" st")
	} else {
		w.WriteString(" sts")
	}
}

// changeWord says which way stitches change.
func changeWord(change []int) string {
	for _, n := range change {
		if n < 0 {
			return " dec"
		}
	}
	return " inc"
}
