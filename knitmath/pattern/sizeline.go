package pattern

import "strings"

// sizeWords are what sizes are called.
var sizeWords = wordSet(`xxs xs s m l xl xxl xxxl small medium large newborn preemie baby toddler child children adult
	women woman men man youth teen doll extra kids kid`)

// sizeWord reports whether a word is what a size is called, "XS", or two that share one, "XS/S".
func sizeWord(word string) bool {
	first, second, _ := strings.Cut(word, "/")
	return sizeWords[first] && (second == "" || sizeWords[second])
}

// sizeNamesAlone reports whether nothing stands in a line but names of sizes, "S (M, L)",
// "Baby, Toddler, Child", "XS/S (M/L, 2XL)".
func (p *parser) sizeNamesAlone(i, end int) bool {
	names, parted := 0, false
	for ; i < end; i++ {
		t := &p.tokens[i]
		switch {
		case t.kind == tokenWord && sizeWord(t.text):
			names++
		case t.kind == tokenNumber && p.tokens[i+1].is("x", "xl") && p.tokens[i+1].start == t.end:
			names, i = names+1, i+1
		case t.partsNames():
			parted = true
		default:
			return false
		}
	}
	return names > 1 && parted
}

// namesInLine notes the names of sizes where a line that begins at token i has nothing else.
func (p *parser) namesInLine(i int) bool {
	if i > 0 && p.tokens[i-1].kind != tokenNewline || !p.sizeNamesAlone(i, p.lineEnd(i)) {
		return false
	}
	names := p.sizeNames(i)
	if len(names) < 2 || len(names) > MaxSizes {
		return false
	}
	p.names = names
	return true
}
