package pattern

import (
	"slices"
	"strconv"
)

// partsLeft are the parts into which the row before has divided the stitches, by binding some off or putting some aside
// between them, in the order in which they were worked; without those that have been put aside since. nil where it left
// them together, or where that is not known.
func (r *runner) partsLeft() []int64 {
	if r.lastLine < 0 || r.turned != 0 || r.quiet || !r.known {
		return nil
	}
	row, start := &r.piece.Lines[r.lastLine], int64(r.out.Lines[r.lastLine].StartStitches[r.size])
	if row.info.kind != lineRow || start < 0 {
		return nil
	}
	parts := slices.DeleteFunc(segments(row.worked(), r.size, start), func(n int64) bool { return n < 1 })
	over := sumOf(parts) - r.now.total()
	for k := len(r.held) - 1; k >= 0 && over > 0 && len(parts) > 0; k-- {
		if i := slices.Index(parts, r.held[k]); i >= 0 {
			over -= parts[i]
			parts = slices.Delete(parts, i, i+1)
		}
	}
	if over != 0 || len(parts) < 2 {
		return nil
	}
	return parts
}

// comparedLast compares "on the last 20 stitches only" with what the row before has worked after it had
// bound some off, "k20, BO 26, k to end".
func (r *runner) comparedLast(l *Line, n int64) {
	parts := r.partsLeft()
	if parts == nil || n == r.now.total() || r.marks.count > 0 {
		return
	}
	kind := KindMistake
	if l.info.these {
		kind = KindQuestion
	}
	last := parts[len(parts)-1]
	chosen := slices.Index(parts, n)
	if l.info.these || n == last || r.says(l, "last") {
		chosen = len(parts) - 1
	}
	switch {
	case chosen >= 0 && parts[chosen] == n:
		r.apart = slices.Delete(slices.Clone(parts), chosen, chosen+1)
	case adjacent(parts, n) || !r.wanted(ReasonClaim, l.info.at):
	case chosen >= 0:
		r.fault(kind, ReasonClaim, l.info.at, int(n-last), stitches(int(last))+" were worked last, not "+strconv.Itoa(int(n)))
	case len(parts) > 2:
		r.fault(kind, ReasonClaim, l.info.at, int(n-nearest(parts, n)), partsText(parts)+", not "+strconv.Itoa(int(n)))
	}
}

// adjacent reports whether parts that lie side by side have so many stitches together.
func adjacent(parts []int64, n int64) bool {
	for from := range parts {
		sum := parts[from]
		for _, part := range parts[from+1:] {
			if sum += part; sum == n {
				return true
			}
		}
	}
	return false
}

// putLeftOut puts aside what "on these only" has left out, each of its parts by itself where they are known.
func (r *runner) putLeftOut() {
	if sumOf(r.apart) == r.aside {
		for _, n := range r.apart {
			r.put(n)
		}
	} else {
		r.put(r.aside)
	}
	r.aside, r.apart = 0, nil
}

// heldOf compares stitches that are put aside with those that lie there, and is how many they are.
func (r *runner) heldOf(l *Line, n int64) int64 {
	if parts := r.partsLeft(); parts != nil && r.aside == 0 {
		return r.partHeld(l, parts, n)
	}
	if left := r.now.total() - n; left > 0 && left < 3 && left < n && r.aside == 0 && r.justAside() && r.says(l, "last") {
		r.fault(KindQuestion, ReasonUnread, l.info.at, int(-left), stitches(int(left))+" "+remain(left)+": are they meant to?")
	}
	return r.wholeHeld(l, n)
}

// partHeld compares stitches that are put aside with the parts that the row before has left, and is how many they are:
// one of the parts, or all but one. Whether far fewer are some of a part is asked.
func (r *runner) partHeld(l *Line, parts []int64, n int64) int64 {
	total := r.now.total()
	if l.info.counts == nil || n == total || slices.Contains(parts, n) || slices.Contains(parts, total-n) ||
		slices.Contains(r.betweenMarks(), n) {
		return n
	}
	kind, reason, there := KindMistake, ReasonClaim, nearest(parts, n)
	if 2*n < there {
		kind, reason, there = KindQuestion, ReasonUnread, n
	}
	if r.wanted(reason, l.info.at) {
		r.fault(kind, reason, l.info.at, int(n-there), partsText(parts)+", not "+strconv.Itoa(int(n)))
	}
	return there
}

// oneSide goes on with the side that was worked last of those beside stitches that the last row
// has bound off: "Work each side separately".
func (r *runner) oneSide() {
	parts := r.partsLeft()
	if len(parts) != 2 {
		return
	}
	r.put(parts[0])
	r.now, r.other, r.machine, r.divided = hand{left: parts[1]}, nil, nil, true
	r.loseMarks()
}

// turnsOnPart reports whether a row works just the last of two parts that the row before has left, turns, and has the count of
// that part: the other one waits from then on.
func (r *runner) turnsOnPart(l *Line, p *profile, o outcome, claimed bool) bool {
	parts := r.partsLeft()
	if !claimed || p.turn == 0 || len(parts) != 2 || o.takes != parts[1] || r.aside > 0 || r.now.behind > 0 {
		return false
	}
	n, ok := r.claim(l)
	return ok && n == o.leaves && n != r.now.after(p, o).total()
}

// finishOn ends a row, and puts aside what it has left where it was one of one part.
func (r *runner) finishOn(i int, o outcome, onPart bool) {
	r.finish(i, o)
	if onPart {
		r.holdRest(i)
	}
}

// says reports whether one of some words stands in a line.
func (r *runner) says(l *Line, words ...string) bool {
	for _, t := range scan(r.piece.source[l.info.at.start:max(l.info.at.start, l.info.at.end)]) {
		if t.is(words...) {
			return true
		}
	}
	return false
}
