package pattern

// schedule works a row again and again, with rows between that change nothing.
func (r *runner) schedule(i int) {
	l := &r.piece.Lines[i]
	r.record(i)
	start := r.now
	line, ok := r.scheduledRow(l)
	r.lastRow = 0
	if !ok {
		r.lost(l)
		return
	}
	for _, run := range l.info.schedule.runs {
		lines := r.lines[:0]
		for _, every := range run.every {
			rows := at(every, r.size)
			r.spend(rows / chargedNames)
			for range rows - 1 {
				lines = append(lines, -1)
			}
			lines = append(lines, line)
		}
		r.lines = lines
		if !r.passes(lines, at(run.times, r.size), l.info.at) {
			return
		}
	}
	r.close(i, start)
}

// scheduledRow finds the line of the row that is worked again.
func (r *runner) scheduledRow(l *Line) (line int16, ok bool) {
	s := l.info.schedule
	if s.line >= 0 {
		return s.line, true
	}
	at := l.info.at
	if s.row.ranges == nil && s.row.last == 0 {
		r.fault(KindMistake, ReasonNoRow, at, 0, "no row of that name is written before")
		return 0, false
	}
	row := s.row
	row.at = at
	lines, ok := r.repeated(&row) // one, since one number was read
	if !ok {
		return 0, false
	}
	return lines[0], true
}
