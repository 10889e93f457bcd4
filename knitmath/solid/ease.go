package solid

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/schedule"
)

// ease lets the count change by a schedule that is least to remember along each straight
// part, where no more than one step falls on a round.
func (b *revolved) ease() {
	n := len(b.counts)
	first := 0
	for i := 1; i < len(b.way); i++ {
		last := min(int(measure.RoundHalfUp(b.way[i].along*float64(n)/b.way.length())), n)
		if !b.way[i-1].bends && last-first > 2 {
			b.easeRounds(first, last, b.easing(i))
		}
		first = last
	}
}

// unit is how finely the lines of growth are read: a millionth of a round.
const unit = 1_000_000

// easing is by how much of a round, in units, changes may lie off along the way to a place for a schedule that is easier to
// remember: a flat part that begins or ends in the middle is small there, and few stitches worked even for long would be a
// tube and no disc. Own choice.
func (b *revolved) easing(i int) int {
	if b.way.levels(i) && (b.way[i-1].radius == 0 || b.way[i].radius == 0) {
		return 0
	}
	return unit
}

// easeRounds is ease of the rounds from first to before last, between which what is wanted
// is a straight line, by so much. The first and the last count stay.
func (b *revolved) easeRounds(first, last, easing int) {
	from, to := b.counts[first], b.counts[last-1]
	step := b.wedges
	if to < from {
		step = -step
	}
	slope := (b.wanted[last-1] - b.wanted[first]) / float64(last-1-first)
	times := (to - from) / step
	if times < 1 || slope*float64(step) <= 0 {
		return
	}
	// The count wants to change where the line is half a step from either count; place 0 is
	// the round after the first.
	begin := (float64(from)+float64(step)/2-b.wanted[first])/slope - 0.5
	l := schedule.Line{Times: times, Places: last - 1 - first, Unit: unit,
		Start: int(measure.RoundHalfUp(begin * unit)), Step: int(measure.RoundHalfUp(float64(step) / slope * unit))}
	if l.Step < l.Unit || times > l.Places {
		return
	}
	at, plan, ok := l.Easiest(l.Departure(l.Nearest()) + easing)
	if !ok {
		return
	}
	count, next := from, first+1
	for place := range plan.From(at) {
		for ; next <= first+place; next++ {
			b.counts[next] = count
		}
		count += step
	}
	for ; next < last; next++ {
		b.counts[next] = count
	}
}
