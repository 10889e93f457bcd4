package pattern

// bareAside reports whether a number stands here that says without a word how many stitches are put aside,
// "slip 48 onto waste yarn".
func (p *parser) bareAside() bool {
	if !p.peek().is("onto", "on", "to") {
		return false
	}
	i := p.next + 1
	for p.tokens[i].among("a the another hold length of piece") {
		i++
	}
	return p.tokens[i].among("holder holders waste scrap stitch-holder") || p.tokens[i].is("stitch") &&
		p.tokens[i+1].is("holder", "holders") || p.tokens[i].is("spare") && p.tokens[i+1].is("needle", "yarn", "dpn") ||
		p.tokens[i-1].is("hold")
}
