package pattern

// steering are verbs that make a line more than a heading, beside the reserved
// words and the abbreviations.
var steering = map[string]bool{"work": true, "cont": true, "continue": true, "slip": true, "turn": true, "wrap": true,
	"cast": true, "bind": true, "pick": true, "picking": true, "join": true}

// headingAhead reports whether the rest of the line is a heading, such as
// "Feather and fan" or "Sleeves:". A heading has two words or ends with a colon,
// and holds no number, no star, no bracket and no word of the notation: whatever
// might be a row is read as one, so that nothing is lost by mistake.
func (p *parser) headingAhead() bool {
	words := 0
	for i := 0; ; i++ {
		p.looked++
		t := p.ahead(i)
		switch {
		case t.kind == tokenEnd || t.kind == tokenNewline:
			return words > 1
		case t.is(":"):
			next := p.ahead(i + 1)
			return words > 0 && (next.kind == tokenEnd || next.kind == tokenNewline)
		case t.is(",", "-", "&", "and", "or", "the", "of"):
			continue
		case t.kind != tokenWord || steering[t.text] || reserved[t.text] || phrases[t.text] != nil || p.notation(t.text):
			return false
		}
		words++
	}
}

// notation reports whether a word stands for something that is worked, or may.
func (p *parser) notation(word string) bool {
	if _, ok := lookUp(word, p.own); ok {
		return true
	}
	if _, ok := questions[word]; ok {
		return true
	}
	base, _, _, ok := split(word)
	if !ok {
		return false
	}
	_, ok = lookUp(base, p.own)
	return ok
}
