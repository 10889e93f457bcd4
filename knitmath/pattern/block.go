package pattern

import "strconv"

// block works the numbered rows that stand together from line i on, in the order
// of their numbers. It returns the line after them.
func (r *runner) block(i int) int {
	from := i
	if r.written == nil {
		r.written = make([]int16, MaxRows+1)
	}
	if r.piece.Lines[i].info.ranges[0].first == 1 { // a new set of rows
		r.since, r.lastRow, r.others = i, 0, r.others[:0]
	}
	next, low, high := r.noteBlock(from)
	at := r.piece.Lines[from].info.at
	if expected := r.lastRow + 1; r.lastRow > 0 && int(low) != expected && int(low) != len(r.history)+1 {
		r.fault(KindMistake, ReasonRowNumber, at, 0, "row "+strconv.Itoa(expected)+" is expected here")
	}
	for n := low; n <= high && !r.stopped; n++ {
		line := r.lineOf(n, from)
		if line < 0 {
			r.fault(KindMistake, ReasonRowNumber, at, 0, "row "+strconv.Itoa(int(n))+" is not written")
			if !r.round {
				r.side = r.side.Other()
			}
			continue
		}
		r.work(line, n == r.lastOf(line))
	}
	// The row that goes with the last one, where a rule says so.
	if line := r.ruled(high+1, from); line >= 0 && !r.stopped {
		r.work(line, false)
		high++
	}
	r.lastRow = int(high)
	return next
}

// noteBlock notes which numbers are written on which line, of the numbered lines
// that stand together. It returns the line after them, and the lowest and highest
// number.
func (r *runner) noteBlock(from int) (next int, low, high int32) {
	lines := r.piece.Lines
	low = MaxRows
	for next = from; next < len(lines) && lines[next].numbered(); next++ {
		info := &lines[next].info
		if next > from && info.ranges[0].first == 1 && r.exactly(1, from) >= 0 {
			break // the next set of rows
		}
		for _, q := range info.ranges {
			for n := q.first; n <= q.last; n++ {
				if r.exactly(n, from) >= 0 {
					r.fault(KindMistake, ReasonRowNumber, info.at, 0, "row "+strconv.Itoa(int(n))+" is written already")
				}
				r.written[n] = int16(next + 1)
			}
			low, high = min(low, q.first), max(high, q.last)
			if info.every != everyNone {
				r.others = append(r.others, numbered{q.last, next})
			}
		}
	}
	return next, low, high
}

// numbered reports whether a line is a row with a number.
func (l *Line) numbered() bool { return l.info.ranges != nil && l.info.kind != lineRepeat }

// lastOf is the last number that a line's label names: there its claim holds.
func (r *runner) lastOf(line int) int32 {
	n := int32(0)
	for _, q := range r.piece.Lines[line].info.ranges {
		n = max(n, q.last)
	}
	return n
}

// lineOf finds the line of a row number among those from a line on, or the one
// that a rule says; -1 if there is none.
func (r *runner) lineOf(n int32, from int) int {
	if line := r.exactly(n, from); line >= 0 {
		return line
	}
	return r.ruled(n, from)
}

func (r *runner) exactly(n int32, from int) int {
	if r.written == nil || n > MaxRows {
		return -1
	}
	if line := int(r.written[n]) - 1; line >= max(from, r.since) {
		return line
	}
	return -1
}

// ruled finds the line that says that it stands for every other row.
func (r *runner) ruled(n int32, from int) int {
	for i := len(r.others) - 1; i >= 0; i-- {
		if q := r.others[i]; q.line >= from && n > q.last && (n-q.last)%2 == 0 {
			return q.line
		}
	}
	if r.rule >= 0 && r.side == r.ruleSide && !r.round {
		return r.rule
	}
	return -1
}
