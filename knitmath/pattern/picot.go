package pattern

import "strconv"

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
