package pattern

// joining reads "join in the round", "join yarn", "rejoin yarn to rem 30 sts".
func (p *parser) joining(line *Line) bool {
	from := p.peek().span
	p.next++
	end := p.sentenceEnd(p.next)
	for i := p.next; i < end && !p.tokens[i].is(",", ";"); i++ {
		if p.tokens[i].is("where") { // "at the edge where 15 sts were left"
			break
		}
		if !p.tokens[i-1].is("to", "onto") {
			continue
		}
		of := p.edgeOf(i)
		if p.takingRest(line, of) {
			return true
		}
		if p.heldSts(of) != 0 {
			return p.taking(line, of)
		}
	}
	if p.joinsPieces(line, end) {
		return true
	}
	if p.joinsRound(end) {
		line.info.kind = lineJoin
		p.accept("to")
		p.accept("work", "knit", "form")
		p.accept("for", "in", "into")
		p.accept("working")
		p.accept("in")
		p.accept("the", "a")
		p.acceptAmong("rnd round rnds rounds circle ring")
		if p.overAll(line) {
			line.info.joinsAside = joinsAll
		}
		return true
	}
	// "Join A at beg of rnd": yarn.
	line.info.kind = linePassed
	if p.squaresJoined(end) {
		p.passed(from.to(p.last()))
		return true
	}
	for p.peek().kind == tokenWord && !p.clauseEnds() {
		if p.peek().among("at in to for with on") {
			break
		}
		p.next++
	}
	p.passed(from.to(p.last()))
	return true
}

// joinsPieces reads "join body and sleeves in the round: 112 stitches", "join body and sleeves: 112 stitches": with
// them a piece begins.
func (p *parser) joinsPieces(line *Line, end int) bool {
	if p.trying || !p.peek().among("the body back sleeves front fronts") || !p.anyOf(p.next, end, "sleeves") {
		return false
	}
	i := p.next
	for i < end && !p.tokens[i].is(":", "-", "(") {
		i++
	}
	if i == end || !p.claimAt(i) {
		return false
	}
	return p.piecesCounted(line, i)
}

// piecesCounted begins a piece with the count at token i, which is that of pieces that are joined.
func (p *parser) piecesCounted(line *Line, i int) bool {
	p.next = i
	p.accept(",")
	if !p.claim(line) || line.ClaimedStitches == nil {
		return false
	}
	line.info.kind, line.info.counts, line.info.inRounds, line.info.joins = lineCastOn, without(line.ClaimedStitches), true, true
	line.ClaimedStitches = nil
	return true
}

// joinsRound reports whether "join" in a sentence that goes on to a token closes a round: "CO 60
// sts and join.", "join, to work in the round".
func (p *parser) joinsRound(end int) bool {
	if p.clauseEnds() || p.peek().is("to") && p.ahead(1).among("work knit form begin") {
		return true
	}
	for i := p.next; i < end && !p.tokens[i].is(",", ";"); i++ {
		if p.tokens[i].among("rnd round rnds rounds circle ring") && p.tokens[i-1].among("in the a into") {
			return true
		}
	}
	return false
}
