package edge

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/stitch"
)

// MaxPickUpDeparture is how many stitches the row may stray from an even share at any
// place of the edge: so many more or fewer are eased along it unseen. Common practice.
const MaxPickUpDeparture = 2

// pickUpRow writes the row that picks up n stitches along an edge of so many
// rows, n from 1 to two a row. Every row of the edge is either picked up once or
// an exception: skipped where there are fewer stitches than rows, worked twice
// where there are more. Fewer exceptions than rows picked up once part these into
// runs, one more than there are exceptions, which differ by at most one:
//
//	runs = exceptions + 1,  each floor(once / runs) or one more
//
// so that no exception lies at an end. Otherwise a row picked up once stands at
// each end and the others part the exceptions in the same way. A single row
// picked up once among exceptions lies in the middle. evened says that the order
// asked for would stray too far.
func pickUpRow(rows, n int, grouped bool) (row stitch.Row, evened bool) {
	e := alongEdge{rows: rows, n: n, bound: MaxPickUpDeparture * rows, grouped: grouped}
	op, exceptions := stitch.SkipRow, rows-n
	if n > rows {
		op, exceptions = stitch.PickUpTwo, n-rows
	}
	switch once := rows - exceptions; {
	case exceptions < once:
		e.part(stitch.PickUp, once, op, exceptions)
	case once == 0:
		e.add(op, exceptions)
	case once == 1:
		before := exceptions / 2
		e.add(op, before)
		e.add(stitch.PickUp, 1)
		e.add(op, exceptions-before)
	default:
		e.add(stitch.PickUp, 1)
		e.part(op, exceptions, stitch.PickUp, once-2)
		e.add(stitch.PickUp, 1)
	}
	return stitch.RowOf(e.steps...), e.evened
}

// alongEdge gathers the steps of the row.
type alongEdge struct {
	rows, n int // of the edge, and along it
	bound   int // how far the row may stray, in parts of which a stitch has as many as there are rows
	grouped bool
	steps   []stitch.Step
	evened  bool
	strayed int // how far it has strayed so far, in the same parts
}

// strays is how far so many of an operation take the row from an even share.
func (e *alongEdge) strays(op stitch.Op, times int) int { return times * (op.Leaves()*e.rows - e.n) }

func (e *alongEdge) add(op stitch.Op, times int) {
	if times > 0 {
		e.steps = append(e.steps, stitch.Do(op, times))
		e.strayed += e.strays(op, times)
	}
}

// repeat adds a group worked some times.
func (e *alongEdge) repeat(times int, group ...stitch.Step) {
	e.steps = appendTimes(e.steps, times, group)
}

func appendTimes(steps []stitch.Step, times int, group []stitch.Step) []stitch.Step {
	switch times {
	case 0:
		return steps
	case 1:
		return append(steps, group...)
	}
	return append(steps, stitch.Repeat(times, group...))
}

// part adds n times the common operation, parted by k of the rare one, k below n,
// into k+1 runs. The last of them is one of the shorter runs and stands alone;
// the others are units of a run and what parts it from the next.
//
// Grouped, the units with the longer runs come first. Interleaved, each unit of
// the rarer kind closes a group that the commoner units are shared out over, the
// groups with one unit more first: once more the step of Euclid's algorithm that
// parted the runs, and as far as a written row can go, which nests one deep. Where
// that would stray farther than it may, see evenly.
func (e *alongEdge) part(common stitch.Op, n int, rare stitch.Op, k int) {
	size, long := n/(k+1), n%(k+1)
	u := units{
		long: unit{e.strays(common, size+1), e.strays(rare, 1)}, short: unit{e.strays(common, size), e.strays(rare, 1)},
		from: e.strayed,
	}
	word := u.asked(long, k-long, e.grouped)
	if u.strays(word) > e.bound {
		word, e.evened = u.evenly(long, k-long, e.bound), true
	}
	e.write(word, common, size, rare)
	e.strayed += long*u.long.all() + (k-long)*u.short.all()
	e.add(common, size)
}

// write adds a word, of which the shorter runs have so many of the common operation.
func (e *alongEdge) write(word []stretch, common stitch.Op, size int, rare stitch.Op) {
	one := func(run int) []stitch.Step { return []stitch.Step{stitch.Do(common, run), stitch.Do(rare, 1)} }
	for _, s := range word {
		var group []stitch.Step
		if s.shortFirst {
			group = appendTimes(group, s.short, one(size))
			group = appendTimes(group, s.long, one(size+1))
		} else {
			group = appendTimes(group, s.long, one(size+1))
			group = appendTimes(group, s.short, one(size))
		}
		e.repeat(s.times, group...)
	}
}

// edgeDeparture is the greatest distance, over all rows of the edge, between the
// stitches picked up so far and an even share of n,
//
//	| picked up by row i  -  n * i / rows |
//
// in stitches. Between two runs both go straight, so that the ends of the runs
// are enough.
func edgeDeparture(row stitch.Row, rows, n int) float64 {
	runs, err := stitch.Expand(row, rows)
	if err != nil {
		return 0 // no row of ours, as the tests show
	}
	worst, at, so := 0, 0, 0
	for _, r := range runs {
		at += r.Count
		so += r.Count * r.Op.Leaves()
		worst = max(worst, measure.Abs(so*rows-n*at))
	}
	return float64(worst) / float64(rows)
}
