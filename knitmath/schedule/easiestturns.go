package schedule

// leastTurns is how often intervals take turns at least, if they are three or more. Own choice.
const leastTurns = 2

// tryTurns tries what has three or four intervals in turn, all but the last alike: alone, or before or after another
// run of any kind. How often either run comes is bounded by where the line ends: a form that
// ends further from there than twice what is allowed departs by more, wherever it begins.
func (f *finder) tryTurns() {
	intervals := f.line.Times - 1
	for short := max(f.line.Step/f.line.Unit-1, 1); short <= max(f.line.Step/f.line.Unit, 1); short++ {
		kinds := turnsAbout(short)
		for _, turns := range kinds {
			if turns.more == 0 {
				continue
			}
			if size := turns.intervals(); intervals%size == 0 {
				f.tryForm(form{turns.of(intervals / size)})
			}
			for _, other := range kinds {
				f.tryBoth(turns, other, intervals)
			}
		}
	}
}

// turnsAbout are the runs that can be made of an interval and the next longer one.
func turnsAbout(short int) (kinds [8]turn) {
	long := short + 1
	for more := range mostSteps - 1 {
		kinds[2*more] = turn{every: short, second: long, more: more}
		kinds[2*more+1] = turn{every: long, second: short, more: more}
	}
	kinds[6], kinds[7] = turn{every: short}, turn{every: long}
	return kinds
}

func (t turn) of(times int) turn {
	t.times = times
	return t
}

// tryBoth tries two kinds of run for so many intervals, in either order, where they end about where the line does.
func (f *finder) tryBoth(one, other turn, intervals int) {
	size, rest := one.intervals(), other.intervals()
	ends := intervals * f.line.Step
	for n := 1; n*size < intervals; n++ {
		left := intervals - n*size
		length := (n*one.places() + left*other.places()/rest) * f.line.Unit
		if left%rest != 0 || max(length-ends, ends-length)/2 > f.departure {
			continue
		}
		f.tryForm(form{one.of(n), other.of(left / rest)})
		f.tryForm(form{other.of(left / rest), one.of(n)})
	}
}

// tryForm is try of what takes turns often enough.
func (f *finder) tryForm(s form) {
	for _, t := range s {
		if t.more > 0 && t.times < leastTurns {
			return
		}
	}
	f.try(s)
}
