package pattern

// methodLead passes over "using the knitted method", "use the backward-loop method to" before
// stitches are cast on: with what they are cast on changes no count.
func (p *parser) methodLead() bool {
	i := p.next
	if !p.tokens[i].among("use using with by") {
		return false
	}
	for n := 0; ; n++ {
		i++
		t := &p.tokens[i]
		if t.is("method", "technique") || t.is("cast-on") && !p.tokens[i+1].is("method", "technique") {
			break
		}
		if n == 5 || t.kind != tokenWord && !t.is("-") || t.is("co") {
			return false
		}
	}
	for i++; p.tokens[i].is("to", ",", "and"); i++ {
	}
	if p.castAt(i) == 0 {
		return false
	}
	from := p.peek().span
	p.next = i
	p.passed(from.to(p.last()))
	return true
}

// methodEnd is the index after "using the backward-loop method", "with the knitted cast-on" at token
// i, which say how stitches are cast on; 0 if that is not what stands there.
func (p *parser) methodEnd(i int) int {
	if !p.tokens[i].among("using with by in use") {
		return 0
	}
	for n := 1; n < 8; n++ {
		t := &p.tokens[i+n]
		switch {
		case t.kind == tokenEnd:
			return 0
		case t.among("method technique loop loops cast-on manner") || t.is("cast") && p.tokens[i+n+1].is("on"):
			end := i + n + 1
			for p.tokens[end].among("method technique cast-on on") {
				end++
			}
			return end
		case t.kind != tokenWord && !t.is("-") || t.row() || t.stitches():
			return 0
		}
	}
	return 0
}

// fabricRows reads "st st 14 rows", "garter st for 6 rows": a fabric before the number of its
// rows.
func (p *parser) fabricRows(line *Line) bool {
	if p.inRow && p.onlyRows {
		return false
	}
	end, rows := p.fabricRowsEnd(p.next)
	if end == 0 {
		return false
	}
	first, named := p.next, p.ribAs(p.next)
	p.next = rows
	n := p.number()
	if n == nil {
		return false
	}
	rib := p.peek().is("rib") || p.tokens[rows-1].is("rib")
	line.info.ribAs = named
	p.next = end
	p.accept("more", "further", "again")
	if rib {
		p.ribWorked()
	}
	line.info.kind, line.info.counts, line.info.rib = lineEven, without(n), p.ribIn(first, p.next)
	return true
}

// fabricRowsEnd is the index after them at token i, and that of the number; 0 if that is not
// what stands there.
func (p *parser) fabricRowsEnd(i int) (end, number int) {
	end = p.fabricEnd(i)
	if end == 0 || p.tokens[i].is("the", "a") {
		return 0, 0
	}
	if p.tokens[end].is("for", ",") {
		end++
	}
	number = end
	if end, _ = p.sizedEnd(number); end == 0 {
		return 0, 0
	}
	if end = p.afterMore(end); !p.tokens[end].row() || p.tokens[number-1].row() {
		return 0, 0
	}
	return end + 1, number
}

// partNamed is the index after "the foot" at token i, where what follows says that it is worked
// even or until a length; i if that is not what stands there.
func (p *parser) partNamed(i int) int {
	n := i
	for p.tokens[n].among("the this each rest of") {
		n++
	}
	if end := p.partWordsEnd(n); end > n && p.tokens[end].among("even straight in without until till as for over on "+
		"back") {
		return end
	}
	return i
}

// partWordsEnd is the index after the name of a part at token i.
func (p *parser) partWordsEnd(i int) int {
	for n := 0; n < 3 && !p.tokens[i+1].is("and") && partNames[p.tokens[i].text] && p.tokens[i].kind == tokenWord; n++ {
		i++
	}
	return i
}

// partNames are the parts that are worked "until they measure" so much.
var partNames = wordSet(`foot leg legs body sleeve sleeves hand cuff hem yoke thumb heel back front piece hood collar neckband
	border band mitten sock hat cowl scarf tube finger palm head arm arms ear ears tail toe instep sole gusset crown neck skirt
	lower upper main left right first second edging strap handle flap`)
