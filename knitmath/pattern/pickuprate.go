package pattern

// rateAt is the index after "1 st in every 2 rows", "3 sts for every 4 rows" at token i: how closely
// stitches are picked up; 0 if that is not what stands there.
func (p *parser) rateAt(i int) int {
	for p.tokens[i].among("picking up approx approximately about working and knitting") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].stitches() || !p.tokens[end+1].among("in for per from to out") {
		return 0
	}
	if end += 2; p.tokens[end-1].is("out") && p.tokens[end].is("of") {
		end++
	}
	each := p.tokens[end-1].is("per")
	for p.tokens[end].is("every", "each", "the") {
		each = true
		end++
	}
	if to, _ := p.sizedEnd(end); to != 0 {
		end = to
	}
	for p.tokens[end].among("selvedge selvage edge garter cast-on bound-off bo slipped chain") {
		end++
	}
	if !each || !p.tokens[end].row() && !p.tokens[end].stitches() && !p.tokens[end].among("ridge ridges bump bumps loop loops") {
		return 0
	}
	return end + 1
}

// rateFirst passes over the rate that stands where the number of stitches is expected, "pick up and knit 3 sts for
// every 4 rows", and reports whether it does. Many more stitches than rows are a number, not a rate.
func (p *parser) rateFirst() bool {
	end := p.rateAt(p.next)
	if end == 0 || !p.anyOf(p.next, end, "every", "each", "per") {
		return false
	}
	i, rows := p.next, int64(1)
	for p.tokens[i].kind != tokenNumber {
		i++
	}
	for k := i + 1; k < end; k++ {
		if t := &p.tokens[k]; t.kind == tokenNumber {
			rows = int64(t.number)
		}
	}
	if int64(p.tokens[i].number) > 2*rows {
		return false
	}
	p.next = end
	return true
}

// bracketedRate is the index after "(3 sts for every 4 rows)" at token i; 0 if that is not what stands there.
func (p *parser) bracketedRate(i int) int {
	if !p.tokens[i].is("(") {
		return 0
	}
	if end := p.rateAt(p.pickUpTo(i + 1)); end != 0 && p.tokens[end].is(")") {
		return end + 1
	}
	return 0
}

// pickedUp picks stitches up beside those that are there.
func (r *runner) pickedUp(l *Line) {
	if l.info.counts == nil {
		r.byRate(l)
		return
	}
	n := int64(at(l.info.counts, r.size))
	if l.info.onNeedle != nil && r.known && !r.fresh && int64(at(l.info.onNeedle, r.size)) == r.now.total() {
		n -= r.now.total() // they are knit on the way
	}
	r.broughtLast = n
	if r.known && (!r.fresh || r.besideLive(l, n)) {
		r.changeBy(n)
	} else {
		r.begin(n)
	}
}

// byRate picks stitches up of which only a rate is said: as many as the line counts. A count of more than are on
// the needle is of all of them.
func (r *runner) byRate(l *Line) {
	n, ok := r.claim(l)
	live := int64(0)
	if r.known && !r.fresh {
		live = r.now.total()
	}
	switch {
	case !ok:
		r.fault(KindQuestion, ReasonUnread, l.info.at, 0, "how many stitches are picked up in all? only how closely is said")
		r.known = false
		return
	case n > live:
		r.broughtLast = n - live
	default:
		r.broughtLast = n
	}
	r.begin(live + r.broughtLast)
}

// pickUpTo is the index after "pick up and knit no more than" at token i.
func (p *parser) pickUpTo(i int) int {
	for p.tokens[i].among("pick picking up and knit knitting no not more fewer than at most about " +
		"approx roughly") {
		i++
	}
	return i
}

// offHolder says that the stitches of a part were waiting, and are not picked up.
var offHolder = wordings("off the holder", "off holder", "off the holders", "from the holder", "from holder", "off hold", "on hold",
	"off the waste yarn")

// waited reports whether stitches among those that are picked up, whose number stands from one token to another,
// waited on a holder: "26 sts from back holder", or "k 26 sts of back neck", which are not said to be picked up.
func (p *parser) waited(first, end int) bool {
	if !p.tokens[end].among("from of on off across") {
		return false
	}
	knit := p.tokens[first-1].among("k knit p purl across") && !p.anyOf(max(first-4, 0), first, "up")
	return knit || p.anyOf(end, p.next, "holder", "holders", "stitch-holder", "waste", "scrap")
}

// besideLive reports whether stitches that a line brings come to others on the needle: under no heading, or where they are
// counted with those, as for an edging that goes on with the live stitches of what it surrounds.
func (r *runner) besideLive(l *Line, n int64) bool {
	live := r.now.total()
	claim, ok := r.claim(l)
	return live > 0 && (!r.fresh || ok && claim == live+n)
}

// workedOnNeedle reports whether the stitches whose number stands from token first to end are only knit, "knit 54 sleeve sts" among
// others that are picked up: they may be on the needle.
func (p *parser) workedOnNeedle(first, end int) bool {
	return p.tokens[first-1].is("k", "knit", "across") && !p.anyOf(max(first-4, 0), first, "up") && p.tokens[end-1].stitches() &&
		!p.tokens[end].is("from", "off")
}

// changedOnWay is a sum of stitches with those of ", inc 1 st at centre" that stand among the parts.
func (p *parser) changedOnWay(sum []int) []int {
	save, found := p.next, p.found.mark()
	if !p.accept(",", "and", ";") || !p.acceptAmong("inc increasing dec decreasing") {
		p.next = save
		return sum
	}
	more := p.last1().is("inc", "increasing")
	n := p.number()
	if n == nil || !p.acceptAmong("st sts stitch stitches") || !p.peek().is("at", "in", "evenly") || sum == nil {
		p.next = save
		p.found.rewind(found)
		return sum
	}
	for !p.endsAt(p.next) && !p.peek().among(", ; and (") {
		p.next++
	}
	n = perSize(without(n), p.sizes)
	for size := range n {
		if !more {
			n[size] = -n[size]
		}
	}
	return added(sum, tidy(n), p.sizes)
}
