package pattern

// evenFor reads ", for 7 rows" and "until 18 rows have been worked" after a direction that
// works rows even, whose number has not been said yet.
func (p *parser) evenFor(info *lineInfo) bool {
	if info.counts != nil || !info.open {
		return false
	}
	save, found := p.next, p.found.mark()
	until := p.peek().is("until", "till")
	if !p.accept("for", "until", "till") {
		return false
	}
	for p.acceptAmong("a total of another further the next there are you have worked") {
	}
	n := p.number()
	p.next = p.afterMore(p.next)
	if n == nil || !p.acceptRow() {
		p.next = save
		p.found.rewind(found)
		return false
	}
	if until {
		for p.acceptAmong("have has are been worked completed done knitted knit in all total altogether") {
			info.total = info.total || p.last1().is("all", "total", "altogether")
		}
		p.rowsSoFar(info, save)
	}
	info.counts, info.open = without(n), false
	return true
}

// rowsSoFar says whether "until 90 rows have been worked" from token i on is read with the rows before, as it is of a pattern that
// has been worked since the cast-on, or from here on.
func (p *parser) rowsSoFar(info *lineInfo, i int) {
	if info.total || p.last1().row() || p.onlyRows {
		return
	}
	said := "read as so many rows from here on: say \"in all\" if those before are among them"
	if p.tokens[i-1].among("patt pattern est established set") && p.rowsNumberedOnly() {
		info.total, said = true, "read as so many rows in all, with those since the cast-on"
	}
	p.reading(p.tokens[i].to(p.last()), said)
}

// rowsNumberedOnly reports whether nothing but rows with numbers has been worked since the cast-on.
func (p *parser) rowsNumberedOnly() bool {
	for k := len(p.piece.Lines) - 1; k >= 0; k-- {
		info := &p.piece.Lines[k].info
		p.looked++
		if info.kind == lineCastOn {
			return k < len(p.piece.Lines)-1
		}
		if info.kind != linePassed && (info.kind != lineRow || len(info.ranges) == 0) {
			return false
		}
	}
	return false
}

// placedRib passes over "starting and ending RS rows with k2", which says how a rib lies.
func (p *parser) placedRib() bool {
	i := p.next
	for p.tokens[i].among("beg beginning starting start begin ending end finishing and") {
		i++
	}
	if i == p.next {
		return false
	}
	rows := false
	for p.tokens[i].among("rs ws right wrong side all each every the") || p.tokens[i].row() {
		rows = rows || p.tokens[i].row()
		i++
	}
	if !rows || !p.tokens[i].is("with") {
		return false
	}
	i++
	if !ribWord(p.tokens[i].text) {
		return false
	}
	from := p.peek().span
	p.next = i + 1
	p.passed(from.to(p.last()))
	return true
}

// untilWorked reads "until 20 rows have been completed".
func (p *parser) untilWorked(info *lineInfo) bool {
	info.open = true
	ok := p.evenFor(info)
	if !ok {
		info.open = false
	}
	return ok
}

// inThatWay reads "in this way" after "work 8 more rows": the rows just written again and
// again, from the first of them.
func (p *parser) inThatWay(info *lineInfo) bool {
	end := p.phraseEnd(p.next, thoseWays)
	if end == 0 {
		return false
	}
	if last := len(p.piece.Lines) - 1; last >= 0 && p.piece.Lines[last].rules() && p.piece.Lines[last].info.every == everyAll {
		p.next = end
		info.kind, info.lines, info.afresh = lineRepeat, []int16{int16(last)}, true // "Every row: ..."
		return true
	}
	n := p.rowsInSet()
	if n == 0 {
		return false
	}
	p.next = end
	info.kind, info.last, info.afresh, info.forRows, info.counts = lineRepeat, n, true, info.counts, nil
	return true
}

// thoseWays are the ways to say "in this way".
var thoseWays = func() (ways [][]string) {
	for _, which := range [][]string{{"this"}, {"that"}, {"same"}, {"the", "same"}, {"like"}} {
		for _, way := range [...]string{"way", "manner", "fashion"} {
			ways = append(ways, append(append([]string{"in"}, which...), way))
		}
	}
	return append(ways, []string{"like", "this"})
}()

// rowsInSet is how many numbered rows stand together just above, with those that a rule adds;
// 0 if the row above has no number.
func (p *parser) rowsInSet() int {
	first, last, ruled := int32(0), int32(0), false
	for i := len(p.piece.Lines) - 1; i >= 0; i-- {
		l := &p.piece.Lines[i]
		p.looked++
		if l.info.kind != lineRow || len(l.info.ranges) == 0 {
			break
		}
		ruled = ruled || l.info.every != everyNone
		first = l.info.ranges[0].first
		last = max(last, l.info.ranges[len(l.info.ranges)-1].last)
		if first == 1 {
			break
		}
	}
	n := int(last - first + 1)
	if last == 0 || first != 1 || n > 500 {
		return 0
	}
	return n + n%2*bit(ruled)
}

func bit(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// acrossAll reads "across all 40 sts" after rows that are worked even: so many there are.
func (p *parser) acrossAll(line *Line) bool {
	i := p.next
	if !p.tokens[i].is("across", "over", "on") || !p.tokens[i+1].among("all these the both") || line.ClaimedStitches != nil {
		return false
	}
	for i++; p.tokens[i].among("all these the of both"); i++ {
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].stitches() || !p.clauseStopsAt(end+1) {
		return false
	}
	save := p.next
	p.next = i
	n := p.number()
	if n == nil {
		p.next = save
		return false
	}
	line.info.claimAt = p.tokens[i].to(p.tokens[end].span)
	p.next = end + 1
	line.ClaimedStitches = without(n)
	return true
}
