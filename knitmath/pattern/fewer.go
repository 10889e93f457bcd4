package pattern

// fewerSaid is by how many stitches "working 1 st fewer before each decrease" says that what is worked
// between the changes of a row grows, or shrinks below 0, each time, and where that stands; 0 if it does not.
func (r *runner) fewerSaid(l *Line) (n int64, where span) {
	from := l.info.at
	tokens := scan(r.piece.source[from.start:max(from.start, from.end)])
	for i := 0; i+3 < len(tokens); i++ {
		number, written := tokens[i].written()
		if tokens[i].kind == tokenNumber {
			number, written = int(tokens[i].number), true
		}
		way := &tokens[i+2]
		if tokens[i+2].stitches() { // "2 fewer sts"
			way = &tokens[i+1]
		}
		if !written || way == &tokens[i+2] && !tokens[i+1].stitches() || !way.is("fewer", "less", "more") ||
			!tokens[i+3].is("before", "between", "after") {
			continue
		}
		if way.is("more") {
			return int64(number), shifted(tokens[i].span.to(way.span), from)
		}
		return -int64(number), shifted(tokens[i].span.to(way.span), from)
	}
	return 0, span{}
}

// changedEach is by how many stitches the only change of the repeat of a row changes that repeat, below 0 for fewer; 0
// where it has another form. The next such row has as many fewer, or more, between its changes.
func changedEach(steps []Step, size int) int64 {
	for i := range steps {
		s := &steps[i]
		if s.Steps == nil || s.IntoOneStitch {
			continue
		}
		changes := 0
		for k := range s.Steps {
			if s.Steps[k].Steps != nil || s.Steps[k].stretch() {
				return 0
			}
			if s.Steps[k].takes != s.Steps[k].leaves {
				changes += s.Steps[k].workings(size)
			}
		}
		if changes != 1 {
			return 0
		}
		t := s.pass(size)
		return t.leaves - t.takes
	}
	return 0
}

// compareFewer compares that number with what the last row changes each repeat by.
func (r *runner) compareFewer(l *Line, lines []int16) {
	if r.quiet {
		return
	}
	n, where := r.fewerSaid(l)
	for k := len(lines) - 1; k >= 0 && n != 0; k-- {
		if lines[k] < 0 {
			continue
		}
		if each := changedEach(r.piece.Lines[lines[k]].Steps, r.size); each != 0 {
			if each != n && r.wanted(ReasonClaim, where) {
				r.fault(KindMistake, ReasonClaim, where, int(n-each), "each repeat has "+moreOrFewer(each)+", not "+moreOrFewer(n))
			}
			return
		}
	}
}

// moreOrFewer is a change of so many stitches in words.
func moreOrFewer(n int64) string {
	if n < 0 {
		return stitches(int(-n)) + " fewer"
	}
	return stitches(int(n)) + " more"
}

// fewerInTail reads "working 1 st fewer before each dec" after rows that are worked again: their plain stitches are other ones
// each time, and their changes the same.
func (p *parser) fewerInTail(info *lineInfo) bool {
	if info.kind != lineRepeat || info.counts == nil && info.until == nil {
		return false
	}
	end := p.fewerEnd(p.next)
	if end == 0 {
		return false
	}
	p.next, info.adapting = end, true
	return true
}

// fewerLed reads the same before it is said how often, ", working 1 st less between decreases, until 40 sts rem".
func (p *parser) fewerLed(info *lineInfo) {
	aside := bit(p.peek().is(",", "("))
	end := p.fewerEnd(p.next + aside)
	if end == 0 || info.lines != nil || aside == 1 && !p.tokens[end].is(",", ")") {
		return
	}
	p.next, info.adapting = end+aside, true
}

// fewerEnd is the index after "working 1 st fewer before each dec", "with 1 less st on each side of the centre each time" at
// token i; 0 if that is not what stands there.
func (p *parser) fewerEnd(i int) int {
	if !p.acceptedAt(&i, "working", "having", "with", "knitting", "work", "but") {
		return 0
	}
	p.acceptedAt(&i, "working")
	if i = p.fewerStitches(i); i == 0 {
		return 0
	}
	for p.acceptedAt(&i, "on", "at", "each", "either", "side", "of") {
	}
	if !p.acceptedAt(&i, "before", "between", "after") && !p.tokens[i-1].is("of") {
		return 0
	}
	for p.acceptedAt(&i, "each", "every", "the", "all") {
	}
	if !p.acceptedAt(&i, "dec", "decs", "decrease", "decreases", "inc", "incs", "increase", "increases", "k2tog", "ssk", "p2tog", "m1", "kfb",
		"centre", "center", "central", "middle") {
		return 0
	}
	p.acceptedAt(&i, "st", "dec", "decrease", "stitch")
	if p.tokens[i].is("each", "every") && (p.tokens[i+1].is("time") || p.tokens[i+1].is("row", "rnd", "round")) {
		i += 2
	}
	if !p.clauseStopsAt(i) && !p.tokens[i].is(")", "until", "till") {
		return 0
	}
	return i
}

// fewerStitches is the index after "1 st fewer", "one less st" at token i; 0 if that is not what stands there.
func (p *parser) fewerStitches(i int) int {
	i, n := p.sizedEnd(i)
	if i == 0 || n != 1 {
		return 0
	}
	fewer := p.acceptedAt(&i, "fewer", "less", "more")
	if !p.tokens[i].stitches() {
		return 0
	}
	if i++; !fewer && !p.acceptedAt(&i, "fewer", "less", "more") {
		return 0
	}
	return i
}
