package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// holes are the stitches bound off within a row, or cast on: how many in all and in each place, in every size.
type holes struct {
	total, each []int
	open        bool // the places are as many as fit
}

// holesClosed asks about a row that casts on, over the stitches which the row before has bound off within it, another number of them
// and does not say what it comes to: a buttonhole of two is not closed with three by mistake only.
func (p *parser) holesClosed(line *Line) {
	if line.info.kind == linePassed || p.trying {
		return
	}
	before := p.holesBefore
	p.holesBefore = holesOf(line.Steps, stitch.BindOff, p.sizes)
	on := holesOf(line.Steps, stitch.CastOn, p.sizes)
	if before == nil || on == nil || p.holesBefore != nil || p.saysCount(line) {
		return
	}
	off, cast := before.total, on.total
	if before.open || on.open {
		off, cast = before.each, on.each
	}
	if slices.Equal(off, cast) {
		return
	}
	size := 0
	for off[size] == cast[size] {
		size++
	}
	p.ask(ReasonAmbiguous, line.Steps[0].at.to(p.last()), "are "+stitches(cast[size])+" cast on where the row before binds off "+
		strconv.Itoa(off[size])+"? write the count after this row")
}

// saysCount reports whether a row says what it comes to, also in the next sentence.
func (p *parser) saysCount(line *Line) bool {
	if line.ClaimedStitches != nil || line.ClaimedChangeStitches != nil {
		return true
	}
	save := p.next
	p.accept(".")
	said := p.claimAhead()
	p.next = save
	return said
}

// holesOf are the stitches that steps bind off, or cast on, between others; nil if there are none.
func holesOf(steps []Step, op stitch.Op, sizes int) *holes {
	for len(steps) > 0 && steps[0].Operation == op {
		steps = steps[1:]
	}
	for len(steps) > 0 && steps[len(steps)-1].Operation == op {
		steps = steps[:len(steps)-1]
	}
	if !hasOperation(steps, op) {
		return nil
	}
	h := holes{total: make([]int, sizes), each: make([]int, sizes)}
	for size := range sizes {
		h.add(steps, op, size, 1)
	}
	return &h
}

// add adds the stitches of steps that are worked so many times.
func (h *holes) add(steps []Step, op stitch.Op, size, times int) {
	for i := range steps {
		s := &steps[i]
		switch {
		case s.Operation == op:
			n := s.workings(size)
			h.open = h.open || s.stretch()
			h.total[size], h.each[size] = min(h.total[size]+n*times, MaxNumber), max(h.each[size], n)
		case s.Steps != nil && hasOperation(s.Steps, op):
			h.open = h.open || s.stretch()
			h.add(s.Steps, op, size, min(times*s.workings(size), MaxNumber))
		}
	}
}

// hasOperation reports whether an operation is among steps.
func hasOperation(steps []Step, op stitch.Op) bool {
	return slices.ContainsFunc(steps, func(s Step) bool { return s.Operation == op || hasOperation(s.Steps, op) })
}
