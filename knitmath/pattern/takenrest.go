package pattern

import "example.com/knitmath/knitmath/stitch"

// restSts is the index after "rem sts", "the sts on the holder", "held sts" at token i, which are
// as many as were put aside last; 0 if that is not what stands there. onHolder says that the
// words send to where they were put.
func (p *parser) restSts(i int) (end int, onHolder bool) {
	from := i
	for p.tokens[i].among("the these rem remaining other held resting left right neck front back shoulder") {
		onHolder = onHolder || p.tokens[i].is("held", "resting")
		i++
	}
	if !p.tokens[i].is("sts", "stitches") {
		return 0, false
	}
	i++
	if p.tokens[i].among("left held resting waiting") {
		i++
	}
	if p.tokens[i].is("on", "from") {
		for i++; p.tokens[i].among("a the your first second spare stitch waste left right front back " +
			"other"); i++ {
		}
		if !p.tokens[i].among("holder holders needle needles yarn hold thread stitch-holder pin") {
			return 0, false
		}
		return i + 1, true
	}
	if i == from+1 {
		return 0, false // "sts" alone
	}
	return i, onHolder
}

// edgeOf is the index after "the neck edge of", to which yarn is joined, at token i; i if that is not what stands there.
func (p *parser) edgeOf(i int) int {
	k := i
	for p.tokens[k].among("the neck armhole inner outer side front centre center left right beg beginning " +
		"other") {
		k++
	}
	if p.tokens[k].is("edge", "end") {
		k++
	}
	if k > i && p.tokens[k-1].among("edge end beg beginning") && p.tokens[k].is("of") {
		return k + 1
	}
	return i
}

// takingRest reads them after "rejoin yarn to" or "return to": they are worked now.
func (p *parser) takingRest(line *Line, i int) bool {
	end, onHolder := p.restSts(i)
	if end == 0 {
		return false
	}
	p.next = end
	line.info.kind, line.info.counts, line.info.only, line.info.restOf = lineTake, nil, nil, restOnNeedle
	if onHolder {
		line.info.restOf = restOnHolder
	}
	return true
}

// takingUp reads "take up the held sts": they are worked again.
func (p *parser) takingUp(line *Line) bool {
	if !p.peek().is("take") || !p.ahead(1).is("up") || p.onlyRows {
		return false
	}
	n := p.heldSts(p.next + 2)
	if n != 0 {
		ok := p.taking(line, n)
		line.info.only = nil // they come to those that are there
		return ok
	}
	return p.takingRest(line, p.next+2)
}

// restOf is which stitches without a number are taken up again.
type restOf uint8

const (
	restNone     restOf = iota
	restOnNeedle        // "rem sts": those on the needle, or where there are none those put aside last
	restOnHolder        // "sts on holder"
)

// takeRest takes up the stitches that were put aside last.
func (r *runner) takeRest(l *Line) {
	total := r.now.total()
	switch {
	case r.known && total > 0 && (l.info.restOf == restOnNeedle || len(r.held) == 0):
		r.now, r.turned = hand{left: total}, 0
	case len(r.held) == 0:
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "how many stitches are these?")
		r.known = false
		return
	default:
		last := len(r.held) - 1
		n := r.held[last]
		r.held = r.held[:last]
		r.broughtLast = n
		if r.known && !r.fresh {
			n += total
		}
		r.begin(n)
	}
	if !r.round {
		r.side = stitch.SideUnspecified
	}
}

// fromHeld works a row for which no stitches are on the needle on those that were put aside
// last, where it fits them: "Rejoin yarn and k20".
func (r *runner) fromHeld(i int, p *profile, claimed bool) bool {
	last := len(r.held) - 1
	if r.now.total() != 0 || last < 0 || r.quiet {
		return false
	}
	n := r.held[last]
	o := p.work(n)
	if o.reason != "" || o.takes < n {
		return false
	}
	l := &r.piece.Lines[i]
	r.fault(KindReading, ReasonReading, l.info.at, 0, "read as worked on the "+stitches(int(n))+" that were put aside last")
	r.held = r.held[:last]
	r.begin(n)
	r.fitting(i, p, o, claimed)
	return true
}

// onTheseOnly reads "and work on these 10 sts only", "cont on this side first" after a turn:
// what it leaves is put aside.
func (p *parser) onTheseOnly(steps []Step) bool {
	if n := len(steps); n == 0 || !steps[n-1].Operation.EndsRow() {
		return false
	}
	numberAt, end := p.onTheseEnd(p.next)
	if end == 0 {
		return false
	}
	from := p.peek().span
	p.rest = unworkedRest{held: true}
	if numberAt != 0 {
		p.next = numberAt
		n := p.number()
		if n == nil {
			return false
		}
		p.rest.worked = without(n)
	}
	p.next = end
	p.rest.at = from.to(p.last())
	return true
}

// onTheseEnd is the index after "work on these 10 sts only" at token i, and the token of the
// number; 0 if that is not what stands there, or if there is no number.
func (p *parser) onTheseEnd(i int) (numberAt, end int) {
	if !p.tokens[i].among("work working cont continue continuing complete completing finish finishing and") {
		return 0, 0
	}
	for i++; p.tokens[i].among("work working cont continue back and forth in rows flat"); i++ {
	}
	if !p.tokens[i].is("on", "over") {
		return 0, 0
	}
	for i++; p.tokens[i].among("these this those the first last set of group heel left right neck"); i++ {
	}
	if to, _ := p.sizedEnd(i); to != 0 {
		numberAt, i = i, to
	}
	for p.tokens[i].among("heel neck shoulder front back") {
		i++
	}
	if !p.tokens[i].among("st sts stitches side half part") {
		return 0, 0
	}
	for i++; p.tokens[i].among("of neck the only first for heel flap back front shoulder side left " +
		"right this"); i++ {
	}
	if !p.endsAt(i) && !p.tokens[i].is(",", ";", ":") {
		return 0, 0
	}
	return numberAt, i
}
