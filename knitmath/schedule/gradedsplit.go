package schedule

// tryTurns lays what alternates between the two intervals that the line lies between, or
// the two below, with a run of one of them beside it.
func (l Line) tryTurns(kind GradedForm, lay func(form) (int, bool)) {
	n := l.Times - 1
	for short := max(l.Step/l.Unit-1, 1); short <= max(l.Step/l.Unit, 1); short++ {
		for _, p := range [2][2]int{{short, short + 1}, {short + 1, short}} {
			if n%2 == 0 {
				lay(form{{p[0], p[1], n / 2}})
			}
			for _, other := range p {
				l.splitTurns(p, other, kind, lay)
			}
		}
	}
}

// splitTurns lays a pair that alternates and a run of one of the two.
func (l Line) splitTurns(pair [2]int, other int, kind GradedForm, lay func(form) (int, bool)) {
	n := l.Times - 1
	runs := func(m int) form {
		turns, rest := turn{pair[0], pair[1], m}, turn{other, 0, n - 2*m}
		if kind == AlternatingLast {
			return form{rest, turns}
		}
		return form{turns, rest}
	}
	most := (n - 1) / 2
	for _, m := range []int{1, most} {
		if 1 <= m && m <= most {
			lay(runs(m))
		}
	}
	low, high := 2, (n-2)/2
	// A turn takes a place less than two of the longer interval, and one more than two of
	// the shorter.
	spare := l.Places - 1 - n*other
	if other == max(pair[0], pair[1]) {
		low = max(low, -spare)
	} else {
		high = min(high, spare)
	}
	l.nearestSplit(low, high, runs, lay)
}

// split lays two runs of these intervals: those of which one comes once, and of the
// others the nearest and some beside it.
func (l Line) split(a, b int, lay func(form) (int, bool)) {
	n := l.Times - 1
	runs := func(m int) form { return form{{a, 0, m}, {b, 0, n - m}} }
	lay(runs(1))
	if n > 2 {
		lay(runs(n - 1))
	}
	low, high := l.room(a, b)
	l.nearestSplit(low, high, runs, lay)
}

// nearestSplit lays the nearest of the splits from low to high, and some beside it.
//
// How far two runs depart, if the first place need not be whole, is convex in how often
// the first comes: along the runs the drift is straight, what is farthest below and
// above is the least and the greatest of sums that are straight in that number, and so
// is the room for the first place. So its least is found by halving, and a schedule
// whose first place is whole and that departs less lies where the convex one does: the
// numbers about it are tried for as long as it does.
func (l Line) nearestSplit(low, high int, runs func(int) form, lay func(form) (int, bool)) {
	if low > high {
		return
	}
	from, to := low, high
	for from < to {
		if mid := (from + to) / 2; l.drawn(runs(mid)) <= l.drawn(runs(mid+1)) {
			to = mid
		} else {
			from = mid + 1
		}
	}
	best := -1
	try := func(m int) bool {
		if best >= 0 && l.drawn(runs(m)) >= 2*best {
			return false
		}
		if off, _ := lay(runs(m)); best < 0 || off < best {
			best = off
		}
		return true
	}
	for m := from; m <= high && try(m); {
		m++
	}
	for m := from - 1; m >= low && try(m); {
		m--
	}
}

// room is how often the first of two runs may come, both at least twice, for both to
// fit on the places.
func (l Line) room(a, b int) (low, high int) {
	n := l.Times - 1
	low, high = 2, n-2
	spare := l.Places - 1 - n*b // to be taken by m * (a - b)
	if a > b {
		if spare < 0 {
			return 1, 0
		}
		return low, min(high, spare/(a-b))
	}
	return max(low, (-spare+b-a-1)/(b-a)), high
}

// drawn is twice how far a form departs, in parts, if its first place need not be
// whole.
func (l Line) drawn(s form) int {
	low, high, length := l.drift(rhythm{form: s})
	at := min(max(-low-high, -2*l.Start), 2*((l.Places-1-length)*l.Unit-l.Start))
	return max(at+2*high, -at-2*low)
}
