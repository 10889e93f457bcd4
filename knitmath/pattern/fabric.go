package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/draft"
)

// fabricEnd is the index after the name of a stitch pattern that every knitter knows
// and that keeps the count, at token i: "St st", "k2, p2 rib", "1x1 rib"; 0 if there
// is none.
func (p *parser) fabricEnd(i int) int {
	from := i
	for p.tokens[i].among("reverse rev twisted double single broken fisherman's est established plain the a") {
		i++
	}
	switch t := &p.tokens[i]; {
	case t.is("st", "stocking", "stockinette") && p.tokens[i+1].is("st", "stitch"):
		return i + 2
	case t.is("st") && p.tokens[i+1].is("-") && p.tokens[i+2].is("st"):
		return i + 3
	case t.kind == tokenWord && draft.Fabric(t.text):
		i++
		for p.tokens[i].among("st stitch patt pattern pat ribbing rib ridge ridges") {
			i++
		}
		return max(i, p.ribOf(i))
	}
	if end := p.ribNamed(i); end != 0 {
		return end
	}
	if i > from+1 && p.tokens[i-1].is("est", "established") {
		return i
	}
	return 0
}

// ribNamed is the index after "plain knitting" or a rib at token i, which is told by its stitches alone only after "in" and "of".
func (p *parser) ribNamed(i int) int {
	if p.tokens[i].is("knitting") && i > 0 && p.tokens[i-1].is("plain") {
		return i + 1
	}
	if end := p.ribEnd(i); end != 0 || i == 0 || !p.tokens[i-1].is("in", "of") || p.onlyRows {
		return end
	}
	return p.ribSpeltEnd(i)
}

// ribEnd is the index after "k2, p2 rib", "1x1 rib", "2/2 rib".
func (p *parser) ribEnd(i int) int {
	stitches := 0
	for n := 0; n < 24; n++ {
		switch t := &p.tokens[min(i+n, len(p.tokens)-1)]; {
		case t.is("rib", "ribbing") && stitches > 0:
			return i + n + 1
		case t.is("rib", "ribbing"), t.kind == tokenEnd, t.kind == tokenNewline, t.is("."):
			return 0
		case t.kind == tokenNumber, t.among(", / x by k p tbl - * ( )"), t.kind == tokenStar:
			stitches++
		case ribWord(t.text):
			stitches++
		default:
			return 0
		}
	}
	return 0
}

// ribOf is the index after the stitches of a rib at token i, the "of k 2, p 2" of "ribbing of k 2, p 2"; 0
// if they are not alone there.
func (p *parser) ribOf(i int) int {
	if !p.tokens[i].is("of") {
		return 0
	}
	i++
	for n := 0; n < 4; n++ {
		switch {
		case p.tokens[i].among("k p knit purl") && p.tokens[i+1].kind == tokenNumber:
			i += 2
		case p.tokens[i].kind == tokenWord && ribWord(p.tokens[i].text):
			i++
		default:
			return 0
		}
		if n > 0 && !p.tokens[i].is(",", "and") || !p.tokens[i+1].among("k p knit purl") && !ribWord(p.tokens[i+1].text) {
			return i
		}
		i++
	}
	return 0
}

// ribApart parts "k2p2".
func ribApart(word string) string {
	for i := 1; i+1 < len(word); i++ {
		if c := word[i-1]; (word[i] == 'k' || word[i] == 'p') && c >= '0' && c <= '9' {
			return word[:i] + "/" + ribApart(word[i:])
		}
	}
	return word
}

// ribWord is "k2", "p2tbl", "x1" or "k2/p2", "k1-p1".
func ribWord(word string) bool {
	for _, part := range strings.FieldsFunc(ribApart(word), func(c rune) bool { return c == '/' || c == '-' }) {
		base, _, _, ok := split(part)
		if (!ok || base != "k" && base != "p") && (part[0] != 'x' || len(part) < 2 || part[1] < '0' || part[1] > '9') {
			return false
		}
	}
	return word != ""
}

// fabricWord reports whether a stitch pattern that every knitter knows begins at token i.
func (p *parser) fabricWord(i int) bool {
	t := &p.tokens[i]
	return t.kind == tokenWord && draft.Fabric(t.text) || t.is("st") && p.tokens[i+1].is("st")
}
