package pattern

import (
	"example.com/knitmath/knitmath/stitch"
)

// startSaid is the index after words at token i which say that a marker is, or that here is,
// the beginning of the round: "for new beg of rnd", "this is the new start of rnd"; 0 if they
// do not.
func (p *parser) startSaid(i int) int {
	for n := 0; n < 8; n++ {
		switch t := &p.tokens[i]; {
		case t.is("bor", "beg-of-rnd", "beginning-of-round"):
			return i + 1
		case t.is("beg", "beginning", "start") && p.tokens[i+1].is("of"):
			i += 2
			if p.tokens[i].is("the") {
				i++
			}
			if p.tokens[i].row() {
				return i + 1
			}
			return 0
		case t.among("for as to mark marks indicate the a new this that it is now will be becomes " +
			"here"):
			i++
		default:
			return 0
		}
	}
	return 0
}

// startTold passes over "this is the new beg of rnd", "Rnd now begins here" beside the steps of a row.
func (p *parser) startTold() bool {
	end := p.roundBegins(p.next)
	if p.peek().is("this", "that", "it") {
		end = p.startSaid(p.next)
	}
	if end == 0 || !p.endsAt(end) && !p.tokens[end].is(",", ";") {
		return false
	}
	from := p.peek().span
	p.next, p.startMoves = end, true
	p.passed(from.to(p.last()))
	return true
}

// markerLast reports whether ", pm for beg of rnd" stands at token i and nothing more of its
// row: "Knit, pm for beg of rnd." is a whole round.
func (p *parser) markerLast(i int) bool {
	if !p.tokens[i].is(",", ";", "and") {
		return false
	}
	for p.tokens[i].among(", ; and then") {
		i++
	}
	switch {
	case p.tokens[i].is("pm"):
		i++
	case p.tokens[i].is("place") && p.tokens[i+1].is("marker", "m"):
		i += 2
	case p.tokens[i].is("place") && p.tokens[i+1].is("a") && p.tokens[i+2].is("marker", "m"):
		i += 3
	default:
		return false
	}
	if end := p.startSaid(i); end != 0 {
		i = end
	}
	return p.endsAt(i) || p.claimAt(i)
}

// startMoved works a row that only moves the beginning of the round on, over stitches that
// keep their count: "k10, pm for new beg of rnd". It is no round.
func (r *runner) startMoved(i int) bool {
	l := &r.piece.Lines[i]
	if !l.info.startMoves || !r.round || !r.known || r.now.behind > 0 || !movesStart(l.Steps) {
		return false
	}
	p := r.profile(i)
	o := p.work(r.now.left)
	if p.stretches || p.turn != 0 || marksPlaced(l.Steps) > 2 || o.reason != ReasonUnworked || o.takes != o.leaves || o.takes < 1 {
		return false
	}
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as moving the beginning of the round by "+stitches(int(o.takes)))
	total := int32(r.now.total())
	at := r.marks.at[:r.marks.count]
	for k := range at {
		if at[k] >= 0 {
			at[k] = (at[k] - int32(o.takes) + total) % total
		}
	}
	inOrder(at)
	r.other, r.machine = nil, nil
	o.reason, o.unworked = "", 0
	r.finish(i, o)
	r.compare(l, r.now)
	return true
}

// movesStart reports whether steps are plain stitches after which the round may begin.
func movesStart(steps []Step) bool {
	takes := false
	for i := range steps {
		s := &steps[i]
		if s.stretch() || s.takes != s.leaves && s.Operation != stitch.PlaceMarker && s.Steps == nil {
			return false
		}
		takes = takes || s.takes > 0
	}
	return takes
}
