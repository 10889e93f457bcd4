package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// shape works rows of which some change the count: by a row that the text calls, or by
// a change that it says.
func (r *runner) shape(i int) {
	l := &r.piece.Lines[i]
	r.record(i)
	r.setUp(l)
	start, before := r.now, r.known
	r.lastRow = 0
	if l.info.onLast {
		r.takeBack()
	}
	r.noneToShape(l)
	r.changeGoesOn(i)
	row, ok := r.shapedBy(i)
	if !ok {
		r.lost(l)
		return
	}
	if l.info.spread && l.info.lines == nil {
		if !r.another(l.info.at) {
			return
		}
		r.spreadRow(i)
		r.ended(l)
		r.close(i, start)
		return
	}
	r.calling = l.info.lines != nil
	defer func() { r.calling = false }()
	for k := range l.info.parts {
		if !r.shapePart(l, row, &l.info.parts[k], len(l.info.parts) == 1) {
			break
		}
	}
	if !before {
		r.known = false
	}
	if l.info.places { // of a row of which only the count is followed
		r.marks = marks{lost: true}
	}
	r.toEndSide(l)
	r.ended(l)
	r.close(i, start)
}

// noneToShape goes on with the stitches that were put aside last where a change is made of those on the needle and none
// are there; if none wait either, it is asked which they are.
func (r *runner) noneToShape(l *Line) {
	if !r.known || r.now.total() != 0 || r.quiet || l.info.hidden == nil {
		return
	}
	last := len(r.held) - 1
	if last < 0 {
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "no stitches are on the needle: which are these?")
		r.known = false
		return
	}
	n := r.held[last]
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked on the "+stitches(int(n))+" that were put aside last")
	r.held = r.held[:last]
	r.begin(n)
}

// toEndSide works the row even that comes between two changes where the text ends with it: "inc 4 sts
// every RS row 5 times, ending with a WS row".
func (r *runner) toEndSide(l *Line) {
	n := len(l.info.parts)
	if n == 0 || l.info.endKind != endEven && (r.round || l.info.endSide == stitch.SideUnspecified || r.side != l.info.endSide) {
		return
	}
	if s := &l.info.parts[n-1]; s.side != stitch.SideUnspecified || at(s.interval, r.size) > 1 {
		r.plain(1, l.info.at)
	}
}

// shapedBy is the line whose row makes the changes of line i: one that is called by its name or its
// number, the row before, or the change of the line itself. It is not ok, which has been said, if
// there is no such row.
func (r *runner) shapedBy(i int) (row int16, ok bool) {
	info := &r.piece.Lines[i].info
	switch {
	case info.lines != nil:
		return info.lines[0], true
	case info.hidden != nil:
	case info.ranges != nil:
		line := r.lineOf(info.ranges[0].first, 0)
		if line < 0 && r.wanted(ReasonNoRow, info.at) {
			r.fault(KindMistake, ReasonNoRow, info.at, 0, "row "+strconv.Itoa(int(info.ranges[0].first))+" is not written")
		}
		return int16(line), line >= 0
	case info.last > 0:
		if n := len(r.history); n > 0 && r.history[n-1] >= 0 {
			return r.history[n-1], true
		}
		r.fault(KindMistake, ReasonNoRow, info.at, 0, "no row came before")
		return 0, false
	}
	return int16(i), true
}

// shapePart works one stretch of a schedule, and reports whether all of it could be
// worked.
func (r *runner) shapePart(l *Line, row int16, s *shapings, alone bool) bool {
	n, ok := r.shapeTimes(l, row, s, alone)
	if !ok || n == 0 && s.within == nil || r.sideOpen(l, s) {
		return ok
	}
	if s.second != nil || s.turns != nil {
		return r.alternate(l, row, s, n)
	}
	lead, interval := r.leadTo(s)
	rest := 0
	if s.within != nil {
		if n, rest = rowsWithin(at(s.within, r.size), lead, interval); n == 0 {
			return r.plain(rest, l.info.at)
		}
	}
	if lead > 0 && !r.plain(lead, l.info.at) {
		return false
	}
	r.turns = r.turns[:0]
	for range interval - 1 {
		r.turns = append(r.turns, -1)
	}
	r.turns = append(r.turns, row)
	r.spend(interval / chargedNames)
	r.work(int(row), false)
	return !r.stopped && r.passes(r.turns, n-1, l.info.at) && (rest == 0 || r.plain(rest, l.info.at))
}

// leadTo is how many plain rows come before the first change of a stretch, and its interval: in the
// round every row is on the right side.
func (r *runner) leadTo(s *shapings) (lead, interval int) {
	interval = max(at(s.interval, r.size), 1)
	switch {
	case s.lead != nil:
		return max(at(s.lead, r.size), 0), interval
	case s.side != stitch.SideUnspecified && r.round:
		if !s.next || interval == 2 {
			interval = 1
		}
		return 0, interval
	case s.side != stitch.SideUnspecified && r.side != stitch.SideUnspecified:
		if r.side != s.side {
			return 1, interval
		}
		return 0, interval
	case s.next:
		return 0, interval
	}
	return interval - 1, interval
}

// alternate works a row after one interval and then after another, or after more in turn, again and again: "next
// row, then every 4th and 2nd row alternately" works it first where it is.
func (r *runner) alternate(l *Line, row int16, s *shapings, n int) bool {
	if s.next {
		if r.work(int(row), false); r.stopped {
			return false
		}
		n--
	}
	r.turns = r.turns[:0]
	turn := func(every int) {
		for range every - 1 {
			r.turns = append(r.turns, -1)
		}
		r.turns = append(r.turns, row)
	}
	if s.second != nil {
		turn(at(s.interval, r.size))
		turn(at(s.second, r.size))
	}
	for _, t := range s.turns {
		for range t.times[0] {
			turn(t.interval[0])
		}
	}
	r.spend(len(r.turns) / chargedNames)
	return r.passes(r.turns, n, l.info.at)
}

// shapeTimes is how many rows of a stretch are shaped.
func (r *runner) shapeTimes(l *Line, row int16, s *shapings, alone bool) (int, bool) {
	if s.until != nil && !l.info.spread {
		if !r.known {
			r.lost(l)
			return 0, false
		}
		n, ok := r.passesTo(l, []int16{row}, int64(at(s.until, r.size)))
		return n, ok
	}
	if at(s.interval, r.size) == 0 || s.within != nil {
		return 0, true
	}
	n := at(s.times, r.size)
	if s.total && (s.named || s.more != nil) || s.worked && r.timesHold(l, row, s) { // a change that is told here was never made before
		n = max(n-r.already([]int16{row}), 0)
	}
	if s.more == nil {
		return n, true
	}
	more := at(s.more, r.size)
	if !s.after && r.firstAmong(l, row, s, alone) {
		return more, true
	}
	return n + more, true
}

// firstAmong reports whether "next and every foll 4th row 5 times" is five times in all:
// five times more than the first, unless the count that is claimed in the first size says
// that the first is one of them. It is read alike in all sizes, or a wrong number in one
// of them would only seem to be read otherwise.
func (r *runner) firstAmong(l *Line, row int16, s *shapings, alone bool) bool {
	if among, decided := r.among[s]; decided {
		return among
	}
	among := false
	if want, ok := r.claim(l); ok && alone && r.known {
		change, fits := r.trial([]int16{row})
		among = fits && r.now.total()+change*int64(at(s.more, r.size)) == want
	}
	if r.among == nil {
		r.among = map[*shapings]bool{}
	}
	r.among[s] = among
	return among
}

// spreadRow is a row that comes to a count that is said, "inc evenly to 88 sts".
func (r *runner) spreadRow(i int) {
	l := &r.piece.Lines[i]
	want := int64(at(l.info.parts[0].until, r.size))
	if change := want - r.now.total(); r.known && (change < 0 && l.info.op == stitch.CastOn || change > 0 && l.info.op == stitch.BindOff) &&
		r.wanted(ReasonClaim, l.info.at) {
		r.fault(KindMistake, ReasonClaim, l.info.at, int(change), "there are "+stitches(int(r.now.total()))+" already")
	}
	r.now, r.known, r.other, r.machine = hand{left: want}, true, nil, nil
	r.loseMarks()
	r.worked(i, 0)
}
