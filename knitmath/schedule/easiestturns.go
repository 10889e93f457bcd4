package schedule

// leastTurns is how often intervals take turns at least, if they are three or more. Own choice.
const leastTurns = 2

// A rhythm is a form in which the first interval of a run may come so many times more before its second: three or four
// intervals in turn.
type rhythm struct {
	form
	more [2]int
}

// A kind is one run of a rhythm.
type kind struct {
	turn
	more int
}

func (k kind) intervals() int { return k.turn.intervals() + k.more }
func (k kind) places() int    { return k.turn.places() + k.more*k.every }

// run writes it out.
func (k kind) run() Run {
	r := Run{EveryRows: []int{k.every}, Times: k.times}
	for range k.more {
		r.EveryRows = append(r.EveryRows, k.every)
	}
	if k.second > 0 {
		r.EveryRows = append(r.EveryRows, k.second)
	}
	return r
}

// runs are the runs of a rhythm, of which some may come no times.
func (s rhythm) runs() [2]kind { return [2]kind{{s.form[0], s.more[0]}, {s.form[1], s.more[1]}} }

// schedule writes the rhythm out.
func (s rhythm) schedule() Schedule {
	var all Schedule
	for _, k := range s.runs() {
		if k.times > 0 {
			all = append(all, k.run())
		}
	}
	return all
}

// effort is that of its schedule.
func (s rhythm) effort() int {
	effort := 0
	for _, k := range s.runs() {
		if k.times > 0 {
			effort += runEffort(min(k.intervals(), threeInTurn))
		}
	}
	return effort
}

// drift is how far a rhythm runs from the line that its first thing lies on: the
// farthest below and above it, in parts, and how many places it takes after the
// first.
func (l Line) drift(s rhythm) (low, high, length int) {
	at := 0
	for _, k := range s.runs() {
		if k.times == 0 {
			continue
		}
		length += k.times * k.places()
		// Along a run the drift is straight but for what takes turns in it, so that it
		// is greatest in the first or in the last turn.
		whole := k.places()*l.Unit - k.intervals()*l.Step
		part := (1 + k.more) * (k.every*l.Unit - l.Step)
		end := at + k.times*whole
		low = min(low, at+part, end-whole+part, at+whole, end)
		high = max(high, at+part, end-whole+part, at+whole, end)
		at = end
	}
	return low, high, length
}

// tryTurns tries what has three or four intervals in turn, all but the last alike: alone, or before or after another
// run of any kind.
func (f *finder) tryTurns() {
	intervals := f.line.Times - 1
	for short := max(f.line.Step/f.line.Unit-1, 1); short <= max(f.line.Step/f.line.Unit, 1); short++ {
		kinds := kindsAbout(short)
		for _, turns := range kinds {
			if turns.more == 0 {
				continue
			}
			if size := turns.intervals(); intervals%size == 0 {
				f.tryKinds(turns.of(intervals/size), kind{})
			}
			for _, other := range kinds {
				f.tryBoth(turns, other, intervals)
			}
		}
	}
}

// kindsAbout are the runs that can be made of an interval and the next longer one.
func kindsAbout(short int) (kinds [8]kind) {
	long := short + 1
	for more := range mostSteps - 1 {
		kinds[2*more] = kind{turn{every: short, second: long}, more}
		kinds[2*more+1] = kind{turn{every: long, second: short}, more}
	}
	kinds[6], kinds[7] = kind{turn: turn{every: short}}, kind{turn: turn{every: long}}
	return kinds
}

func (k kind) of(times int) kind {
	k.times = times
	return k
}

// tryBoth tries two kinds of run for so many intervals, in either order, where they end about where the line does: one that
// ends further from there than twice what is allowed departs by more, wherever it begins.
func (f *finder) tryBoth(one, other kind, intervals int) {
	size, rest := one.intervals(), other.intervals()
	ends := intervals * f.line.Step
	for n := 1; n*size < intervals; n++ {
		left := intervals - n*size
		length := (n*one.places() + left*other.places()/rest) * f.line.Unit
		if left%rest != 0 || max(length-ends, ends-length)/2 > f.departure {
			continue
		}
		f.tryKinds(one.of(n), other.of(left/rest))
		f.tryKinds(other.of(left/rest), one.of(n))
	}
}

// tryKinds tries two runs, where what takes turns does so often enough.
func (f *finder) tryKinds(first, second kind) {
	for _, k := range [2]kind{first, second} {
		if k.more > 0 && k.times < leastTurns {
			return
		}
	}
	f.tryRhythm(rhythm{form{first.turn, second.turn}, [2]int{first.more, second.more}})
}
