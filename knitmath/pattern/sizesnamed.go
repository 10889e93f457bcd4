package pattern

import "strings"

// sizesByList reads "- (-, M, L, XL):" at token i: those that are named in their places.
func (p *parser) sizesByList(i int) (mask uint32, end int) {
	for size := 0; i < len(p.tokens)-1; {
		switch t := &p.tokens[i]; {
		case t.among("( ) [ ] ,"):
			i++
		case t.is("-"):
			size++
			i++
		case t.is(":"):
			if size != p.sizes {
				return 0, 0
			}
			return mask, i + 1
		default:
			k, next := p.sizeAt(i)
			if k < 0 || k != size {
				return 0, 0
			}
			mask |= 1 << k
			size++
			i = next
		}
	}
	return 0, 0
}

// anyOf reports whether one of the words stands between two tokens.
func (p *parser) anyOf(i, end int, words ...string) bool {
	for ; i < end; i++ {
		if p.tokens[i].is(words...) {
			return true
		}
	}
	return false
}

// sizesJoined is the sizes of a token such as "S/M", where the text calls none of them so.
func (p *parser) sizesJoined(t *token) (mask uint32) {
	if !strings.Contains(t.text, "/") {
		return 0
	}
	for _, part := range strings.Split(t.text, "/") {
		for k, name := range p.names {
			if part == name {
				mask |= 1 << k
			}
		}
	}
	return mask
}

// sizeLetter is the letter for a size that is called by a word.
func sizeLetter(name string) string {
	switch name {
	case "small", "medium", "large":
		return name[:1]
	}
	return name
}
