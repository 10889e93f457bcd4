package flat

import (
	"slices"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
)

// change is one row, counted from the centre, from which on the count is another.
type change struct{ row, from, to int }

// unit is how finely the lines of growth are read: a millionth of a row.
const unit = 1_000_000

// halfway is where the count wants to change that lies half-way between two: in rows
// after the first, since a row's count is that of its middle.
func (p *piece) halfway(from, to int) float64 {
	return (float64(from+to)/2 - p.base) / p.grows
}

// flatSides is how many stitches a row of a triangle gains where its sides lie so flat that no row that may shape is spared
// at the tip. Own choice.
const flatSides = 0.8

// climb settles in which rows the count changes: first through the counts of the opening,
// each nearest to where it should be, then step by step along a straight line, by the
// schedule that is least to remember among those that lie near enough to it. The first row
// after the cast-on is even.
func (p *piece) climb() []change {
	var list []change
	count, last := p.start, 1
	for _, to := range p.opens {
		row := max(last+1, int(measure.RoundHalfUp(p.halfway(count, to)))+1)
		switch {
		case count == 1: // what is left in the last row
			row = last + 1
		case p.edged() && p.grows > flatSides:
			row = last + 1
		}
		if count > 1 && !p.shapes(row) {
			row++
		}
		if row > p.rows {
			return list
		}
		list = append(list, change{row, count, to})
		count, last = to, row
	}
	at := p.straight(count, last)
	for _, row := range at {
		list = append(list, change{row, count, count + p.step})
		count += p.step
	}
	return list
}

// straight are the rows of equal steps from a count on, after row last.
func (p *piece) straight(count, last int) []int {
	first, apart := last+1, 1
	if !p.round && !p.anyRow {
		apart = 2
		if !p.shapes(first) {
			first++
		}
	}
	places := (p.rows - first + apart) / apart
	times := min(int(measure.RoundHalfUp((p.wants(p.rows)-float64(count))/float64(p.step))), places)
	if times < 1 {
		return nil
	}
	scale := float64(unit) / float64(apart)
	l := schedule.Line{Times: times, Places: places, Unit: unit, Even: apart == 1,
		Start: int(measure.RoundHalfUp((p.halfway(count, count+p.step) - float64(first-1)) * scale)),
		Step:  int(measure.RoundHalfUp(float64(p.step) / p.grows * scale))}
	at := p.easiest(l, scale)
	for i, place := range at {
		at[i] = first + place*apart
	}
	return at
}

// doubles are the rounds in which the stitches of a disc are doubled: each count is kept
// over rounds that hold as many stitches as the disc has there, so that nothing is lost
// or gained in all,
//
//	count = 3/2 * growth * round
//
// since a section from round r to 2r has 3/2 r^2 * growth of them.
func (p *piece) doubles() []change {
	var list []change
	for count, last := p.start, 1; ; count *= 2 {
		row := max(last+1, int(measure.RoundHalfUp(float64(2*count)/1.5/p.grows)))
		if row > p.rows {
			return list
		}
		list = append(list, change{row, count, 2 * count})
		last = row
	}
}

// easiest are the places of the schedule that is least to remember among those that lie near enough to a line, of which a row
// has so many parts; the nearest if there is none.
func (p *piece) easiest(l schedule.Line, scale float64) []int {
	nearest := l.Nearest()
	most := mostTolerance
	if p.in.ToleranceRows != nil || !p.edged() && !p.cornered() {
		most = 1
	}
	for times := 1; times <= most; times++ {
		allowed := l.Departure(nearest) + int(measure.RoundHalfUp(float64(times)*p.tolerance()*scale))
		if begin, plan, ok := l.Easiest(allowed); ok {
			return slices.Collect(plan.From(begin))
		}
	}
	return nearest
}
