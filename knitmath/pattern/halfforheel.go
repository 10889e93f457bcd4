package pattern

import "example.com/knitmath/knitmath/stitch"

// halfForHeel reads "Place half the stitches (26) on one needle for the heel", "slip next 26 sts onto one needle for heel": what
// follows is worked on these alone,
// back and forth. Where no heel is spoken of it may only say how the stitches lie.
func (p *parser) halfForHeel(line *Line) bool {
	i := p.next
	if p.onlyRows || !p.tokens[i].among("place put slip sl take arrange leave knit set") {
		return false
	}
	half := p.tokens[i+1].is("half")
	end, numberAt, heel := p.halfOnNeedle(i+1+bit(half), half)
	if end == 0 || !p.endsClause(end) || !half && !heel || !heel && !p.tokens[max(i-2, 0)].is("heel") && !p.tokens[max(i-3, 0)].is("heel") {
		return false
	}
	if numberAt > 0 {
		p.next = numberAt
		line.info.only = p.number()
	}
	line.info.kind, line.info.half, line.info.turns = lineEven, half, constructionFlat
	line.info.counts, p.next = []int{0}, end
	return true
}

// halfOnNeedle is the index after "the stitches (26) on one needle for the heel" at token i, where the number stands in it,
// 0 for nowhere, and whether a heel is spoken of; 0 if that is not what stands there.
func (p *parser) halfOnNeedle(i int, half bool) (end, numberAt int, heel bool) {
	for p.tokens[i].among("of the your next first last") {
		i++
	}
	if !half {
		numberAt = i
		i, _ = p.sizedEnd(i)
	}
	if !p.tokens[i].stitches() {
		return 0, 0, false
	}
	i++
	bracket := bit(p.tokens[i].is("(", ","))
	if end, _ = p.sizedEnd(i + bracket); end == 0 {
		end = i
	} else {
		numberAt, end = i+bracket, end+bit(p.tokens[end].stitches())+bracket
	}
	if !p.tokens[end].among("on onto upon to") || !p.tokens[end+1].among("one a 1 the first") {
		return 0, 0, false
	}
	for end += 2; p.tokens[end].among("first single needle dpn"); end++ {
	}
	if p.tokens[end].is("for") {
		for end++; p.tokens[end].is("the", "heel"); end++ {
			heel = heel || p.tokens[end].is("heel")
		}
	}
	return end, numberAt, heel
}

// halfAlone goes on with half of the stitches, and compares their number with what is said.
func (r *runner) halfAlone(l *Line) {
	total := r.now.total()
	if !l.info.half || !r.known {
		return
	}
	n := total / 2
	if l.info.only != nil {
		if n = int64(at(l.info.only, r.size)); 2*n != total && r.wanted(ReasonClaim, l.info.at) {
			r.fault(KindMistake, ReasonClaim, l.info.at, int(n-total/2), stitches(int(n))+" are not half of "+stitches(int(total)))
		}
	}
	r.round, r.side = false, stitch.RightSide
	r.only(l, min(n, total))
}
