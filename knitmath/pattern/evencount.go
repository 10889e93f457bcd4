package pattern

// beforeRowCount are words before a number of rows.
var beforeRowCount = []string{"for", "over", "another", "a", "all", "further", "the", "next", "foll", "following", "exactly", "total", "of",
	"additional", "an", "only", "just", "x"}

// evenCount reads a number of rows, or rows by their numbers.
func (p *parser) evenCount(w *evenWork, info *lineInfo) bool {
	save := p.next
	for p.accept(beforeRowCount...) {
	}
	if p.peek().row() && (p.ahead(1).kind == tokenNumber || p.ahead(1).is("as")) && save == p.next {
		w.listed = p.ahead(1).kind == tokenNumber
		return false
	}
	if p.nextRowAlone(w, info) {
		return true
	}
	end, _ := p.sizedEnd(p.next)
	if end == 0 || w.counted {
		p.next = save
		return false
	}
	more := p.afterMore(end)
	ofFabric := p.fabricEnd(more)
	switch {
	case p.tokens[more].row():
	case ofFabric != 0 && p.tokens[ofFabric].row():
		w.even = true
		more = ofFabric
	case p.tokens[more].is("ridge", "ridges"), ofFabric > more && p.tokens[ofFabric-1].is("ridge", "ridges"):
		p.ridges(w, info, max(more+1, ofFabric))
		return true
	default:
		p.next = save
		return false
	}
	p.rowsOf(w, info, end, more)
	return true
}

// rowsOf reads a number of rows, with words such as "more" between the tokens end and row.
func (p *parser) rowsOf(w *evenWork, info *lineInfo, end, row int) {
	n := p.number()
	if n == nil {
		info.kind = lineUnread
		return
	}
	info.inRounds = p.tokens[row].among("rnd rnds round rounds")
	w.even = w.even || p.anyOf(end, row, "even", "straight") || !w.plain() && p.anyOf(end, row, "plain")
	p.next = row + 1
	info.counts = without(n)
	w.counted = true
	p.accept("even", "straight", "more")
}

// afterMore is the index after "more", "plain", "RS" at token i, between a number and its rows.
func (p *parser) afterMore(i int) int {
	for p.tokens[i].among("more further additional extra ws rs plain even straight complete full") {
		i++
	}
	return i
}

// nextRowAlone reads the "round" of "the next round", which is one.
func (p *parser) nextRowAlone(w *evenWork, info *lineInfo) bool {
	if w.counted || !p.last1().is("next", "foll", "following") || !p.peek().is("row", "rnd", "round") {
		return false
	}
	info.inRounds = !p.peek().is("row")
	p.next++
	info.counts, w.counted = one, true
	return true
}

// ridges reads "6 ridges of garter st", of which the first words end at a token: a ridge is two rows.
func (p *parser) ridges(w *evenWork, info *lineInfo, end int) {
	n := p.number()
	if n == nil {
		info.kind = lineUnread
		return
	}
	p.reading(p.peek().span, "a ridge is read as two rows")
	p.next = end
	if p.peek().is("of", "in") {
		p.acceptEnd(p.fabricEnd(p.next + 1))
	}
	info.counts, w.counted, w.even = p.timesEach(without(n), 2), true, true
}

// onTheseStitches reads "on these 28 sts only".
func (p *parser) onTheseStitches(info *lineInfo) bool {
	i := p.next
	if !p.tokens[i].is("on", "over", "across") {
		return false
	}
	these := p.tokens[i+1].is("these", "those", "this")
	across := p.tokens[i].is("across") && !these
	for i++; p.tokens[i].among("the these this next those last rem remaining other first just held " +
		"only set of group"); i++ {
	}
	i = p.ofNeedles(i)
	end, _ := p.sizedEnd(i)
	if end == 0 || p.ofPart(end) == 0 {
		return false
	}
	save := p.next
	p.next = i
	n := p.number()
	if n == nil {
		p.next = save
		return false
	}
	p.next = p.ofPart(p.next)
	p.accept("st", "sts", "stitches")
	if across && !p.peek().is("only") {
		p.next = save
		return false // stitches of a row
	}
	p.accept(")")
	p.accept("only")
	info.only, info.these, info.others = without(n), these, p.anyOf(save, i, "rem", "remaining", "other")
	return true
}

// ofNeedles is the index of the number that says how many are meant by "sts of needles 1 and 2", "half
// the sts" at token i: "(32 sts)", ", that is 32 sts"; i if that is not what stands there.
func (p *parser) ofNeedles(i int) int {
	n := i
	for p.tokens[n].is("half", "of", "the") {
		n++
	}
	if end := p.ofPart(n); end != 0 {
		n = end
	} else if !p.tokens[n].among("needles n1 n2 n3 n4") {
		return i
	}
	for n++; p.tokens[n].among("of on from needle needles dpn dpns and & the first second two only "+
		"n1 n2 n3 n4") ||
		p.tokens[n].kind == tokenNumber && p.tokens[n].number <= 4; n++ {
	}
	if !p.tokens[n].is("(", ",", ":") {
		return i
	}
	for n++; p.tokens[n].among("that is or the"); n++ {
	}
	return n
}

// measureAhead reports whether a length or an event is said from token i on, up to
// which rows are worked.
func (p *parser) measureAhead(i int) bool {
	for n := 0; n < 16; n++ {
		t := &p.tokens[min(i+n, len(p.tokens)-1)]
		switch {
		case p.endsAt(min(i+n, len(p.tokens)-1)):
			return false
		case t.among("cm cms in ins inch inches mm measures meas measure length long reaches desired " +
			"wide high deep same matches required total ready fits \""):
			return true
		case t.stitches() || t.among("last end rem marker m"):
			return false
		}
	}
	return false
}

// openLength passes over "until piece measures 30 (32, 34) cm from beg".
func (p *parser) openLength() {
	for !p.endsAt(p.next) && !p.peek().is(";") && !p.claimAhead() {
		t := p.peek()
		if t.among("ending end finishing ends beg beginning") && !p.tokens[p.next-1].is("from", "the", "since") ||
			t.is(",", "and", "then") && p.commaClause() {
			return
		}
		p.next++
	}
}

// soAsBefore reads "work 10 rows so" after a row without a number: so many rows like that
// one, which is the first of them.
func (p *parser) soAsBefore(info *lineInfo) bool {
	n := len(p.piece.Lines)
	if n == 0 || p.piece.Lines[n-1].info.kind != lineRow || p.piece.Lines[n-1].Label != "" ||
		!p.accept("so", "thus") && !p.skipPhrase(thoseWays) {
		return false
	}
	p.reading(p.last(), "read as so many rows in all, the one before with them")
	info.kind, info.lines, info.afresh = lineRepeat, []int16{int16(n - 1)}, true
	info.counts = less1(info.counts)
	return true
}
