package stitch

import "slices"

// closed improves best by groups of period q that begin at the place (i, r), of
// which the first piece is as large as the token that begins the second repeat.
// The last token of all need only be large enough.
func (f *folder) closed(i, r, q, n int, best *place) {
	run := f.tokens[i+q].count
	if run > r || f.apart[i] != f.apart[i+q] {
		return
	}
	piece := f.whole(i + q - 1)
	inner := f.tokens[i].width(run) + f.widths[i+q] - f.widths[i+1]
	most, low := repeats((n+2)/q+1, q)
	floor := inner + timesWidth(low) + 2
	for t := most; t >= low; t-- {
		last := i + t*q - 1
		if f.hopeless(floor, last, best) {
			break
		}
		if last >= len(f.tokens) || f.tokens[last].key != f.tokens[i+q-1].key || f.whole(last) < piece {
			continue
		}
		f.offer(i, way{plain: r - run, times: t, period: q, width: inner + timesWidth(t) + 2}, last, piece, best)
	}
}

// joined is closed for groups whose end meets their beginning. The first piece is
// all that is left here, or such that the last piece uses up the last token, or
// one of both is a single working, which spares brackets.
func (f *folder) joined(i, r, q, n int, best *place) {
	if f.apart[i] != f.apart[i+q+1] {
		return
	}
	run, between := f.tokens[i+q].count, f.widths[i+q]-f.widths[i+1]
	most, low := repeats((n+1)/q+1, q)
	floor := between + 2*f.tokens[i].width(1) + timesWidth(low) + 2
	for t := most; t >= low; t-- {
		last := i + t*q
		if f.hopeless(floor, last, best) {
			break
		}
		if last >= len(f.tokens) || f.tokens[last].key != f.tokens[i].key {
			continue
		}
		around := between + timesWidth(t) + 2
		pieces := [4]int{r, run - f.whole(last), 1, run - 1}
		for k, s := range pieces {
			end := run - s
			if s < 1 || s > r || end < 1 || end > f.whole(last) || slices.Contains(pieces[:k], s) {
				continue
			}
			inner := f.tokens[i].width(s) + f.tokens[i].width(end)
			f.offer(i, way{plain: r - s, times: t, period: q, end: end, width: inner + around}, last, end, best)
		}
	}
}

// narrowest is the width of the shortest text of two tokens.
const narrowest = 2 * len("?, ")

// hopeless reports whether a group at least so wide, and what it leaves behind
// token last or more, are wider than the best.
func (f *folder) hopeless(floor, last int, best *place) bool {
	return last+2 < len(f.tokens) && floor+narrowest > int(best.cost)
}

// repeats returns the range of repeats worth trying, given the most there are.
func repeats(most, q int) (high, low int) {
	return most, max(2, most-maxPeriod/q-3)
}

// way is a group that may begin at a place: see there. width is that of its text.
type way struct {
	plain, times, period, end int
	width                     int
}

// offer completes the candidate w at token i, whose last piece takes piece
// workings of token last, and keeps it if it is better than best.
func (f *folder) offer(i int, w way, last, piece int, best *place) {
	cost := w.width
	if w.plain > 0 {
		cost += f.tokens[i].width(w.plain)
	}
	if cost > int(best.cost) {
		return
	}
	next, rest := last, f.whole(last)-piece
	if rest == 0 {
		next, rest = last+1, f.whole(last+1)
	}
	cost += int(f.cost(next, rest))
	if cost < int(best.cost) || f.eager && cost == int(best.cost) && w.plain == 0 && best.plain > 0 {
		*best = place{left: best.left, plain: int32(w.plain), end: int32(w.end), rest: int32(rest), next: int32(next), cost: int32(cost),
			times: int32(w.times), period: int32(w.period)}
	}
}

// group returns the step of the group that place p of token i begins with.
func (f *folder) group(i int, p *place) Step {
	g := make([]Step, 0, p.period+1)
	g = append(g, f.tokens[i].part(int(p.left-p.plain)))
	for k := i + 1; k < i+int(p.period); k++ {
		g = append(g, f.tokens[k].step)
	}
	if p.end > 0 {
		g = append(g, f.tokens[i].part(int(p.end)))
	}
	return Repeat(int(p.times), g...)
}
