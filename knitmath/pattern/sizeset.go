package pattern

import "strings"

// sizesAt is the sizes for which something is worked that follows, "Size M only:", "(1st and 2nd sizes only)", "All sizes.", a bit for
// each and none for all, and the index after them; 0 if the words at token i name none, or the sentence goes on otherwise.
func (p *parser) sizesAt(i int) (mask uint32, end int) {
	closer := closers[p.tokens[i].text]
	if closer != "" {
		i++
	}
	led := p.tokens[i].is("for", "in", "on")
	for p.tokens[i].among("for in on the") {
		i++
	}
	if p.tokens[i].is("size", "sizes") && p.tokens[i+1].is("-") && p.names != nil {
		return p.sizesByList(i + 1)
	}
	all := p.allSizes(i)
	if mask, end = p.sizeSet(i); end == 0 || p.agesNamed(mask, end) {
		return 0, 0
	}
	if all != 0 {
		mask = 0
	}
	if end = p.sizesSaidEnd(end, closer, led); end == 0 {
		return 0, 0
	}
	return mask, end
}

// sizesSaidEnd is the index after what ends words of sizes at token i, in brackets or not: "only:", ".", a line break, and where
// "for" leads them in a verb; 0 if the sentence goes on otherwise.
func (p *parser) sizesSaidEnd(i int, closer string, led bool) int {
	only := p.tokens[i].is("only", "again", "alone")
	if only {
		i++
	}
	t := &p.tokens[i]
	switch {
	case closer != "" && !t.is(closer):
		return 0
	case closer != "":
		return i + 1 + bit(p.tokens[i+1].is(":", "-"))
	case t.among(": - , . ; ) ]"):
		return i + 1
	case only, led && directing[t.text], t.kind == tokenNewline, t.kind == tokenEnd: // "For the 3rd size work 2 rows"
		return i
	}
	return 0
}

// sizeSet is the sizes that are named at token i, in whatever way, and the index after the words.
func (p *parser) sizeSet(i int) (mask uint32, end int) {
	for p.tokens[i].is("the") {
		i++
	}
	if end = p.allSizes(i); end != 0 {
		return 1<<p.sizes - 1, end
	}
	if p.tokens[i].is("size", "sizes") {
		return p.sizeMask(i + 1)
	}
	for _, read := range [...]func(*parser, int) (uint32, int){(*parser).otherSizes, (*parser).sizesByOrdinal, (*parser).sizesByDegree} {
		if mask, end = read(p, i); mask != 0 {
			return mask, end
		}
	}
	if p.names != nil { // "M and L only"
		if mask, end = p.sizeMask(i); mask != 0 && p.tokens[end].is("only") {
			return mask, end
		}
	}
	return 0, 0
}

// allSizes is the index after "all sizes", "both sizes" at token i; 0 if that is not what stands there.
func (p *parser) allSizes(i int) int {
	if !p.tokens[i].among("all both every each") {
		return 0
	}
	if i++; p.tokens[i].howMany() == p.sizes {
		i++
	}
	if !p.tokens[i].is("sizes", "size") {
		return 0
	}
	return i + 1
}

// otherSizes is the sizes for which nothing was said yet, "other sizes", "all other sizes", "remaining sizes" at token i.
func (p *parser) otherSizes(i int) (mask uint32, end int) {
	if p.tokens[i].is("all") {
		i++
	}
	if !p.tokens[i].is("other", "remaining", "rem") || !p.tokens[i+1].is("sizes", "size") || p.sizesSaid == 0 {
		return 0, 0
	}
	return (1<<p.sizes - 1) &^ p.sizesSaid, i + 2
}

// sizesByOrdinal is "1st size", "2nd and 4th sizes", "second to fourth sizes", "2nd (3rd) sizes" at token i.
func (p *parser) sizesByOrdinal(i int) (mask uint32, end int) {
	for from := 0; ; {
		next := p.ordinalEnd(i)
		if next == 0 {
			return 0, 0
		}
		n := p.ordinalValue(i)
		if n < 1 || n > p.sizes {
			return 0, 0
		}
		if from == 0 || from > n {
			from = n
		}
		mask |= 1<<n - 1<<(from-1)
		from, i = 0, next
		for ; p.tokens[i].among(", and & / ( ) [ ] or - to through"); i++ {
			if p.tokens[i].is("-", "to", "through") {
				from = n
			}
		}
		if p.tokens[i].is("size", "sizes") {
			return mask, i + 1
		}
	}
}

// sizesByDegree is "smallest size", "two larger sizes", "last 2 sizes", "middle size", of two sizes also "larger size", at token i.
func (p *parser) sizesByDegree(i int) (mask uint32, end int) {
	t, n := &p.tokens[i], p.tokens[i].howMany()
	if n > 0 {
		t = &p.tokens[i+1]
	} else {
		n = p.tokens[i+1].howMany()
	}
	end = i + 1 + bit(n > 0)
	said := n > 0
	n = max(n, 1)
	if !p.tokens[end].is("size", "sizes") || p.tokens[end].is("sizes") != (said && n > 1) || n >= p.sizes {
		return 0, 0
	}
	if !said && p.sizes != 2 && t.among("smaller larger bigger small large big") { // which of them?
		return 0, 0
	}
	mask = 1<<n - 1
	switch {
	case t.among("smallest smaller small first"):
	case t.among("largest larger large bigger big biggest last"):
		mask <<= p.sizes - n
	case t.is("middle") && (p.sizes-n)%2 == 0:
		mask <<= (p.sizes - n) / 2
	default:
		return 0, 0
	}
	return mask, end + 1
}

// agesNamed reports whether all sizes are named by ages, "Sizes 2 (4, 6) years", up to token i.
func (p *parser) agesNamed(mask uint32, i int) bool {
	return mask == 1<<p.sizes-1 && p.sizes > 1 && p.tokens[i].among("years yrs months mths")
}

// sizeMask is "M", "1 and 2", "L, XL and 2XL", "M (L)", "1-3" at token i.
func (p *parser) sizeMask(i int) (mask uint32, end int) {
	for open := 0; ; {
		size, next := p.sizeAt(i)
		if size < 0 {
			return mask, end
		}
		mask |= 1<<size | p.sizesJoined(&p.tokens[i])
		if i = next; p.tokens[i].is("-", "to", "through") && (p.names == nil || !p.tokens[i].is("-")) { // "sizes 1-3"
			if last, after := p.sizeAt(i + 1); last > size {
				mask |= 1<<(last+1) - 1<<size
				i = after
			}
		}
		for end = i; p.partsSizes(i, &open); i++ {
			end = i + 1
		}
	}
}

// partsSizes reports whether token i stands between two sizes, or closes one of so many brackets that are open.
func (p *parser) partsSizes(i int, open *int) bool {
	t, then := &p.tokens[i], &p.tokens[i+1]
	switch {
	case t.is(")", "]") && *open > 0:
		*open--
	case t.is("(", "[") && p.sizeStands(i+1):
		*open++
	default:
		return t.among(", and & or / : ;") && (p.sizeStands(i+1) || t.is(",") && then.is("and", "&") && p.sizeStands(i+2))
	}
	return true
}

// sizeStands reports whether the name or the number of a size stands at token i.
func (p *parser) sizeStands(i int) bool {
	size, _ := p.sizeAt(i)
	return size >= 0
}

// sizeAt is the size, from 0, whose name or number stands at token i; -1 for none.
func (p *parser) sizeAt(i int) (size, end int) {
	best, length := -1, 0
	for k, name := range p.names {
		if n := p.nameLength(i, name); n > length {
			best, length = k, n
		}
	}
	if best >= 0 {
		return best, i + length
	}
	t := &p.tokens[i]
	for k, name := range p.names {
		if first, _, _ := strings.Cut(t.text, "/"); t.kind == tokenWord && sizeLetter(name) == sizeLetter(first) {
			return k, i + 1
		}
	}
	if t.kind == tokenNumber && t.number >= 1 && int(t.number) <= p.sizes &&
		!strings.ContainsAny(strings.Join(p.names, ""), "0123456789") {
		return int(t.number) - 1, i + 1
	}
	return -1, i
}
