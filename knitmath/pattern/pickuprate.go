package pattern

// rateAt is the index after "1 st in every 2 rows", "3 sts for every 4 rows" at token i: how closely
// stitches are picked up; 0 if that is not what stands there.
func (p *parser) rateAt(i int) int {
	for p.tokens[i].is("picking", "up", "approx", "approximately", "about", "working", "and", "knitting") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].stitches() || !p.tokens[end+1].is("in", "for", "per", "from", "to") {
		return 0
	}
	end += 2
	each := p.tokens[end-1].is("per")
	for p.tokens[end].is("every", "each", "the") {
		each = true
		end++
	}
	if to, _ := p.sizedEnd(end); to != 0 {
		end = to
	}
	for p.tokens[end].is("selvedge", "selvage", "edge", "garter", "cast-on", "bound-off", "bo", "slipped", "chain") {
		end++
	}
	if !each || !p.tokens[end].row() && !p.tokens[end].stitches() && !p.tokens[end].is("ridge", "ridges", "bump", "loop") {
		return 0
	}
	return end + 1
}

// pickUpTo is the index after "pick up and knit no more than" at token i.
func (p *parser) pickUpTo(i int) int {
	for p.tokens[i].is("pick", "picking", "up", "and", "knit", "knitting", "no", "not", "more", "fewer", "than", "at", "most", "about",
		"approx", "roughly") {
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
	if !p.tokens[end].is("from", "of", "on", "off", "across") {
		return false
	}
	knit := p.tokens[first-1].is("k", "knit", "p", "purl", "across") && !p.anyOf(max(first-4, 0), first, "up")
	return knit || p.anyOf(end, p.next, "holder", "holders", "stitch-holder", "waste", "scrap")
}
