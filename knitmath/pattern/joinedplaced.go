package pattern

// joinsPlaced reads "place the sleeves on the same circular needle as the body = 276 stitches", "slip body and both sleeves onto one
// needle: 276 sts" at the verb: pieces that are put on one needle are joined, and a piece begins with so many stitches.
func (p *parser) joinsPlaced(line *Line) bool {
	if p.trying || p.onlyRows || p.inRow || !p.peek().among("place put slip sl transfer arrange set move bring combine gather return unite "+
		"knit work") {
		return false
	}
	count := p.piecesTogether()
	return count != 0 && (p.began || p.given) && p.piecesCounted(line, count)
}

// piecesTogether is the index of the count after words of sleeves that come onto one needle with a body; 0 if that is not what stands
// behind the next token.
func (p *parser) piecesTogether() int {
	needle, sleeves, end := false, false, p.sentenceEnd(p.next)
	for i := p.next + 1; i < end; i++ {
		switch t := &p.tokens[i]; {
		case t.among(": - = ( [ ,") && p.claimAt(i+bit(t.is(","))):
			return i * bit(needle && sleeves)
		case t.among("needle needles circ circular cir together"):
			needle = true
		case t.is("from"):
			for p.tokens[i+1].among("the their waste scrap yarn holder holders hold stitch") {
				i++
			}
		case t.kind == tokenNumber, t.among("marker markers pm holder holders hold waste scrap spare aside dpn dpns each"),
			p.startsItem(i) && !t.stitches() && !t.is("sleeve", "sleeves"):
			return 0
		}
		sleeves = sleeves || p.tokens[i].is("sleeve", "sleeves")
	}
	return 0
}
