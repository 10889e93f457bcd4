package schedule

// Easiest looks for the choice of rows with the least to remember: of those in which
// each thing has a schedule of at most two runs, each of equal intervals or of two in
// alternation, and departs from its line by at most so many parts, the one whose
// [Block]s take the least effort. Among those of equal effort it is the one that
// departs least, see Nest.Late, and of these the first found, which has the shorter intervals first.
//
// The intervals of the commonest thing are one apart, counted in rows that may be
// used: those around what its line gives or the next shorter ones. So are those of
// every other thing, counted in times of the one before, and they too are two runs at most.
//
// It stops when it has laid things out in mostLaid rows, which takes allowances far
// beyond a few times. Source: own derivation.
func (n Nest) Easiest(departure int) (best Nested, ok bool) {
	f := nestFinder{Nest: n, allowed: departure, rows: make([][]int, len(n.Times)),
		forms: make([][]form, len(n.Times)), at: make([]int, len(n.Times))}
	every := make([]int, n.slots())
	for i := range every {
		every[i] = i * n.Every
	}
	// A rest beside pairs may be told with them: the first step comes after any rows.
	one, pairs := runEffort(1), runEffort(2)
	f.commonest(every, 0, one)
	f.commonest(every, one+1, 2*one)
	if !f.found || f.effort >= pairs {
		f.commonest(every, 2*one+1, one+pairs)
	}
	return f.best, f.found
}

// commonest tries the forms of the commonest thing whose effort lies within bounds.
func (f *nestFinder) commonest(every []int, least, most int) {
	if f.found && least > f.effort {
		return
	}
	intervals, ideal := f.Times[0]-1, len(every)/f.Times[0]
	for short := max(1, ideal-1); short <= ideal; short++ {
		for shorts := range intervals + 1 {
			f.forms[0] = appendForms(f.forms[0][:0], short, shorts, intervals-shorts)
			for _, s := range f.forms[0] {
				if e := s.effort(); e >= least && e <= most && f.laid <= mostLaid && f.mayLie(s) {
					f.lay(0, every, s, span{f.First, f.Rows})
				}
			}
		}
	}
}

// mayLie looks at the ends of the runs of the commonest thing alone, before it is laid
// out.
func (f *nestFinder) mayLie(s form) bool {
	first, before, row := span{f.First, f.Rows}, 0, 0
	first = f.narrowedAt(0, 0, 0, first)
	for _, t := range s {
		before += t.times * t.intervals()
		row += t.times * t.places() * f.Every
		first = f.narrowedAt(0, before, row, first)
	}
	return first.from <= first.to
}

// mostLaid is how many rows the search may lay out in all, with what it looks at besides.

const mostLaid = 150_000

// stepsToTell is what telling a row in blocks takes, in rows laid out.
const stepsToTell = 4

// nestFinder keeps the best choice seen so far.
type nestFinder struct {
	Nest
	allowed int // the greatest departure
	laid    int

	rows [][]int // of each thing, counted from the first of the commonest

	// Room that is used again and again.
	forms [][]form
	at    []int
	level []int
	told  blocks

	found  bool
	best   Nested
	effort int
	liked  int // see offFrom
}

// A span is where the first row of all may lie.
type span struct{ from, to int }

// lay puts a thing on some of the rows it may have, from the first of these on, and
// goes on with the next thing.
func (f *nestFinder) lay(thing int, on []int, s form, first span) {
	rows := append(f.rows[thing][:0], on[0])
	at := 0
	for _, t := range s {
		for range t.times {
			if at += t.every; at < len(on) {
				rows = append(rows, on[at])
			}
			if t.second > 0 {
				if at += t.second; at < len(on) {
					rows = append(rows, on[at])
				}
			}
		}
	}
	f.rows[thing] = rows
	f.laid += len(rows)
	if at >= len(on) {
		return
	}
	if thing == 0 {
		first.to = min(first.to, f.Rows-rows[len(rows)-1])
	}
	if first = f.narrowed(thing, rows, first); first.from > first.to || thing > 0 && !twoRuns(rows) {
		return
	}
	if thing+1 < len(f.Times) {
		f.within(thing+1, rows, first)
		return
	}
	f.keep(first)
}

// within lays a thing on the rows of the one before in every way that may do.
func (f *nestFinder) within(thing int, outer []int, first span) {
	intervals := f.Times[thing] - 1
	ratio := len(outer) / f.Times[thing]
	for short := max(1, ratio-1); short <= ratio; short++ {
		spare := len(outer) - 1 - short*intervals
		for skipped := 0; skipped <= spare && f.laid <= mostLaid; skipped++ {
			// The first row and the last are known before any other.
			first := f.narrowedAt(thing, 0, outer[skipped], first)
			for left := 0; left <= spare-skipped && first.from <= first.to && f.laid <= mostLaid; left++ {
				longs := spare - skipped - left
				f.laid++
				if longs > intervals {
					continue
				}
				if end := f.narrowedAt(thing, intervals, outer[len(outer)-1-left], first); end.from > end.to {
					continue
				}
				forms := appendForms(f.forms[thing][:0], short, intervals-longs, longs)
				f.forms[thing] = forms
				for _, s := range forms {
					f.lay(thing, outer[skipped:], s, first)
				}
			}
		}
	}
}

// narrowed is where the first row of all may lie so that a thing, laid out from it,
// departs by no more than is allowed.
func (f *nestFinder) narrowed(thing int, rows []int, first span) span {
	for i, row := range rows {
		if first = f.narrowedAt(thing, i, row, first); first.from > first.to {
			break
		}
	}
	return first
}

// narrowedAt is the same for one time of a thing, so many times after its first. What
// is behind its line before the row sets an end, what is ahead after it a beginning.
func (f *nestFinder) narrowedAt(thing, before, row int, first span) span {
	k := f.Times[thing]
	return span{
		max(first.from, ceilDiv((before+1)*f.Rows-f.allowed, k)-row),
		min(first.to, (f.allowed+before*f.Rows)/k+1-row),
	}
}

// ceilDiv is a over b, up to the next whole number.
func ceilDiv(a, b int) int {
	if a <= 0 {
		return -(-a / b)
	}
	return (a + b - 1) / b
}
