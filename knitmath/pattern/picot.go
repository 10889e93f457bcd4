package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/stitch"
)

// picots is how stitches are bound off with points: so many before the first, and by how many each repeat makes them fewer.
type picots struct {
	first, each int
	whole       bool // "until all sts are bound off": the last point may come out smaller
}

// picotsIn reads the numbers of "BO 2, *CO 2, BO 5; rep from * to end" among the tokens up to one; nil if no stitch is cast on there.
func (p *parser) picotsIn(i, end int) *picots {
	var q picots
	casts, starred := false, false
	for ; i < end; i++ {
		t := &p.tokens[i]
		starred = starred || t.kind == tokenStar
		q.whole = q.whole || t.is("all")
		n, on := p.picotAt(i)
		switch {
		case n < 0:
			return nil
		case on:
			casts = true
			q.each -= n
		case !starred:
			q.first += n
		default:
			q.each += n
		}
	}
	if !casts || !starred {
		return nil
	}
	return &q
}

// picotAt is how many stitches are cast on, or bound off, at token i: 0 for none, below 0 where that is not said.
func (p *parser) picotAt(i int) (n int, on bool) {
	t := &p.tokens[i]
	on = t.is("co") || t.is("cast") && p.tokens[i+1].is("on")
	if !on && !t.is("bo") && !(t.is("bind", "cast") && p.tokens[i+1].is("off")) {
		return 0, false
	}
	number := &p.tokens[i+1]
	if number.is("on", "off") {
		number = &p.tokens[i+2]
	}
	if number.kind != tokenNumber || number.number > MaxNumber {
		return -1, on
	}
	return int(number.number), on
}

// comesOff compares how stitches are bound off with points, told in numbers, with those that are there.
func (r *runner) comesOff(l *Line) {
	q := l.info.picots
	if q == nil {
		return
	}
	left := r.now.total() - int64(q.first)
	switch {
	case q.each <= 0:
		r.fault(KindMistake, ReasonUneven, l.info.at, 0, "each repeat binds off no more than it casts on: it comes to no end")
	case r.known && !q.whole && (left < 0 || left%int64(q.each) > 1): // of one that is over the yarn is drawn through it
		r.fault(KindReading, ReasonReading, l.info.at, 0, "each repeat binds off "+stitches(q.each)+" more than it casts on: "+
			strconv.Itoa(int(max(left, 0)%int64(q.each)))+" are left for the last")
	}
}

// castOffAgain asks about a repeat to a place of the row which casts stitches on and binds some off at once, "*k2, CO 2, BO 2; rep from *
// to end": those are the stitches bound off, and how many of the needle a repeat takes is not what its steps alone would take.
func (p *parser) castOffAgain(steps []Step) bool {
	for i := range steps {
		s := &steps[i]
		if s.Steps == nil || p.onlyRows {
			continue
		}
		for k := 1; k < len(s.Steps) && s.stretch(); k++ {
			if s.Steps[k].Operation == stitch.BindOff && s.Steps[k-1].Operation == stitch.CastOn {
				p.ask(ReasonUnread, s.at, "how many times? of the stitches bound off some are those just cast on")
				return true
			}
		}
	}
	return false
}

// picotRow reads a row of nothing but points, "*CO 2, BO 4; rep from * to end": all stitches come off.
func (p *parser) picotRow(line *Line) bool {
	n := len(line.Steps)
	if n == 0 || n > 2 || line.Steps[n-1].Steps == nil || !single(line.Steps[n-1].RemainingStitches, 0) || p.onlyRows {
		return false
	}
	group := line.Steps[n-1].Steps
	q := picots{first: comesOffIn(line.Steps[:n-1]), each: comesOffIn(group)}
	if !slices.ContainsFunc(group, func(s Step) bool { return s.Operation == stitch.CastOn }) || q.first == mixed || q.each == mixed {
		return false
	}
	line.info.kind, line.info.op, line.info.row, line.info.all, line.info.picots = lineOff, stitch.BindOff, true, true, &q
	return true
}

// mixed is said of steps that do more than bind off and cast on so many stitches in all sizes.
const mixed = -MaxNumber - 1

// comesOffIn is how many more stitches steps bind off than they cast on.
func comesOffIn(steps []Step) (n int) {
	for i := range steps {
		s := &steps[i]
		switch {
		case s.stretch() || len(s.Times) > 1:
			return mixed
		case s.Operation == stitch.BindOff:
			n += s.workings(0)
		case s.Operation == stitch.CastOn:
			n -= s.workings(0)
		default:
			return mixed
		}
	}
	return n
}
