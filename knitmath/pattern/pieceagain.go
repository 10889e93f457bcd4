package pattern

import "example.com/knitmath/knitmath/draft"

// pieceAgain reports whether "Knit the other sleeve in the same way" stands at token i: a whole piece more, of which nothing is on
// the needle. An edge is one only where everything is bound off.
func (p *parser) pieceAgain(i int) bool {
	if !p.tokens[i].among("work knit make complete finish do") {
		return false
	}
	for i++; p.tokens[i].among("the a your"); i++ {
	}
	if !p.tokens[i].among("other opposite second remaining next another third fourth matching") {
		return false
	}
	for i++; p.tokens[i].among("short long three two 2 3 side end"); i++ {
	}
	if t := &p.tokens[i]; !wholePieces[t.text] && !(p.bare && t.among("edge edges edging border band strap side end")) {
		return false
	}
	end := p.phraseEnd(i+1, likeTheFirst)
	return end != 0 && p.endsAt(end)
}

// acrossFirst goes over the stitches of the first needle alone, before the others are worked by themselves.
var acrossFirst = wordings("knit across n1", "work across n1")

// wholePieces are begun anew, each on stitches of its own.
var wholePieces = wordSet(`sleeve sleeves sock socks mitten mittens glove gloves mitt mitts slipper slippers bootie booties ear ears
	arm arms leg legs square squares pocket pockets wing wings strip strips paw paws foot feet handle handles`)

var likeTheFirst = wordings("in the same way", "in same way", "the same way", "the same", "just the same", "likewise", "alike",
	"in the same manner",
	"in exactly the same way", "the same as the first", "same as the first", "same as first", "like the first", "like this one", "to match",
	"exactly the same", "in this way", "as the first", "as the first one", "just like the first",
	"to match the first", "like the first one")

// pieceLaidAside reports whether "Lay the piece aside and knit the sleeves" stands at token i: the stitches stay on their needle
// until the text says what becomes of them.
func (p *parser) pieceLaidAside(i int) bool {
	if !p.tokens[i].among("lay set put leave") {
		return false
	}
	i++
	before := p.tokens[i].is("aside")
	i += bit(before)
	for p.tokens[i].among("the this your") {
		i++
	}
	if !p.tokens[i].among("piece work knitting body") && !draft.Part(p.tokens[i].text) {
		return false
	}
	if i++; !before && !p.acceptedAt(&i, "aside") {
		return false
	}
	p.acceptedAt(&i, "for")
	p.acceptedAt(&i, "now")
	if p.endsAt(i) {
		return true
	}
	for p.tokens[i].among(", and then while you") {
		i++
	}
	if !p.acceptedAt(&i, "knit", "work", "make") {
		return false
	}
	for p.tokens[i].among("the two both 2") {
		i++
	}
	return draft.Part(p.tokens[i].text) && p.endsAt(i+1)
}

// squaresJoined passes over "join the squares into 5 rows of 4" from the word after "join" up to the end of the sentence: pieces
// are sewn, and no stitch is worked.
func (p *parser) squaresJoined(end int) bool {
	i := p.next
	for p.tokens[i].among("the all your finished 2 two of these") {
		i++
	}
	if !p.tokens[i].among("squares blocks strips motifs panels hexagons triangles patches") {
		return false
	}
	for n := i + 1; n < end; n++ {
		if t := &p.tokens[n]; t.stitches() || t.kind == tokenStar || t.among("bind cast co bo pick picking 3-needle three-needle with") {
			return false
		}
	}
	p.next = end
	return true
}

// rowsOfHeading reports whether what is worked follows a heading in its line, from token i on.
func (p *parser) rowsOfHeading(i int) bool {
	for p.tokens[i].among(": - .") {
		i++
	}
	return p.labelEnd(i) != 0 || p.startsItem(i) || p.verbAt(i) || p.tokens[i].among("multiple mult worked over a any")
}
