package pattern

// phraseHere reports whether an abbreviation of several words stands at token i.
func (p *parser) phraseHere(i int) bool {
	if p.pickUpCountedAt(i) || p.pickUpBareAt(i) || p.oldOver(i) {
		return true
	}
	if _, end := p.stitchPhrase(i); end != 0 {
		return true
	}
	for k := range phrases[p.tokens[i].text] {
		words := phrases[p.tokens[i].text][k].words
		n := 0
		for n < len(words) && p.tokens[min(i+n, len(p.tokens)-1)].is(words[n]) {
			n++
		}
		if n == len(words) {
			return true
		}
	}
	return false
}

// remarking are words that may be worked and that stand in remarks.
var remarking = map[string]bool{"m": true, "marker": true, "inc": true, "dec": true, "rib": true, "patt": true, "pattern": true,
	"work": true,
	"knit": true, "purl": true, "cont": true, "continue": true, "turn": true}

// zeroAt reports whether a sentence says what a 0 or a dash among the numbers of the sizes means:
// "Where your size has 0, skip that part."
func (p *parser) zeroAt(i int) bool {
	zero := false
	if !p.tokens[i].among("where if when a for note") {
		return false
	}
	for end := p.sentenceEnd(i); i < end; i++ {
		t := &p.tokens[i]
		zero = zero || t.kind == tokenNumber && t.number == 0 || t.is("-") && p.tokens[i-1].among("has have is shows")
		if zero && t.among("skip skips omit omits") {
			return true
		}
	}
	return false
}

// remarkEnd is the index after brackets at token i that hold a remark and nothing
// that is worked or counted; 0 if they do not.
func (p *parser) remarkEnd(i int) int {
	closer := p.remarkCloser(i)
	if closer == "" {
		return 0
	}
	words := 0
	for n := 1; n < 60; n++ {
		t := &p.tokens[min(i+n, len(p.tokens)-1)]
		switch {
		case t.is(closer):
			if words == 0 {
				return 0
			}
			return i + n + 1
		case t.kind == tokenEnd || t.kind == tokenStar || t.kind == tokenNewline && t.number > 1:
			return 0
		case t.kind == tokenNumber:
			if p.countInRemark(i, n) {
				return 0
			}
		case t.kind == tokenWord:
			if p.countSpoilt(i+n) || p.worksInRemark(i, n) || p.sizesInRemark(i, n) {
				return 0
			}
			words++
		}
	}
	return 0
}

// remarkCloser is what closes a remark that opens at token i, "" if none may.
func (p *parser) remarkCloser(i int) string {
	switch {
	case p.tokens[i].is("(", "["):
		return closers[p.tokens[i].text]
	case p.dashApart(i):
		return "-"
	}
	return ""
}

// dashApart reports whether a dash with blanks around it stands at token i of a row, with words after it: "k2tog - see note - k5".
func (p *parser) dashApart(i int) bool {
	t := &p.tokens[i]
	return t.is("-") && p.inRow && p.tokens[i+1].kind == tokenWord && t.start > p.tokens[i-1].end && p.tokens[i+1].start > t.end
}

// sizesInRemark reports whether the word that is the n-th token of brackets at token i says that only
// some sizes are meant: "(sizes 2 and 4 only)".
func (p *parser) sizesInRemark(i, n int) bool {
	t := &p.tokens[i+n]
	return t.is("size", "sizes") && (n == 1 || p.tokens[i+n-1].is("for") || p.ordinalValueAt(i+n-1)) && !p.tokens[i+n-1].is("all") &&
		p.sizes > 1
}

// ordinalValueAt reports whether an ordinal ends with token i.
func (p *parser) ordinalValueAt(i int) bool {
	return p.ordinalEnd(i) != 0 || i > 0 && p.ordinalEnd(i-1) == i+1
}

// markersToldEnd is the index after "8 markers placed" at token i, 0 if that is not what stands
// there: how many markers there are changes no count of stitches.
func (p *parser) markersToldEnd(i int) int {
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].is("markers", "marker", "mkrs") {
		return 0
	}
	for end++; p.tokens[end].among("placed total in all set used on needle needles place"); end++ {
	}
	if !p.endsAt(end) {
		return 0
	}
	return end
}

// countInRemark reports whether the number that is the n-th token of brackets at token i counts
// stitches, or is that of a stitch: "(12 sts)", "(k 5)"; "(multiple of 6 sts)" is a remark.
func (p *parser) countInRemark(i, n int) bool {
	before := &p.tokens[i+n-1]
	end, _ := p.sizedEnd(i + n)
	if end != 0 && p.eachSideOf(end+1) {
		return false
	}
	if ordinal := p.ordinalEnd(i + n); ordinal != 0 && p.tokens[ordinal].row() { // "1st row is wrong side"
		return false
	}
	return end != 0 && p.tokens[end].stitches() && !p.tokens[i+1].is("multiple", "mult", "a") ||
		before.kind == tokenWord && p.notation(before.text)
}

// worksInRemark reports whether the word that is the n-th token of brackets at token i may be
// worked, or change a count.
func (p *parser) worksInRemark(i, n int) bool {
	t := &p.tokens[i+n]
	if p.tokens[i+1].is("by") { // "make 1 (by bringing the wool forward)"
		return false
	}
	if p.explainsStitch(i, n) {
		return false
	}
	remarks := remarking[t.text] && p.own[t.text].name == ""
	return alarming(t.text) && !t.is("dec", "inc") || p.alarmingStitch(i+n, i+1, false) || p.notation(t.text) && !remarks ||
		p.phraseHere(i+n) || t.is("knit", "purl") && (n == 1 || p.tokens[i+n+1].kind == tokenNumber)
}

// explainsStitch reports whether the word that is the n-th token of brackets at token i only says of the stitch before them what it
// is made of or does, "(last st of edging together with next st of shawl)", "(right leaning decrease)", "(work loosely)": no verb
// orders it, and no place.
func (p *parser) explainsStitch(i, n int) bool {
	t, then := &p.tokens[i+n], &p.tokens[i+n+1]
	switch {
	case t.among("work knit purl slip"):
		return n == 1 && then.among("loosely tightly firmly carefully neatly") && p.tokens[i+3].is(closers[p.tokens[i].text])
	case !t.among("together tog decrease decreases decreased increase increases increased next"):
		return false
	}
	return n > 1 && !p.anyOf(i+1, i+n, "work", "knit", "purl", "k", "p", "each", "every", "and", "then", "to") &&
		!then.among("at each every in on evenly across for until")
}

// countSpoilt reports whether the word at token i names stitches, or does but for a letter,
// and a number or the comma after one comes before it: "(58, 60, 64, sts)", "(72 sst)".
func (p *parser) countSpoilt(i int) bool {
	t, before := &p.tokens[i], &p.tokens[i-1]
	if t.kind != tokenWord {
		return false
	}
	switch {
	case before.kind == tokenNumber:
		return swapped(t.text, "sts") || len(t.text) > 4 && swapped(t.text, "stitches")
	case before.is(",", ";", ":") && i > 1 && p.tokens[i-2].kind == tokenNumber:
		return t.stitches() || swapped(t.text, "sts")
	}
	return false
}
