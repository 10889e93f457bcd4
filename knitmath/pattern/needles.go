package pattern

// needleSection is what is worked on one of the needles of a round.
type needleSection struct {
	numbers []int
	steps   []Step
}

// needleHeader is the index after "Needle 1:", "Needles 1 and 3:", "N2:", "Sole:" at token
// i, and which needles they are; 0 if there is none. A name stands for the next.
func (p *parser) needleHeader(i int) (end int, numbers []int) {
	if p.tokens[i].is("on") {
		i++
	}
	t := &p.tokens[i]
	switch {
	case t.among("n1 n2 n3 n4 n5"):
		i, numbers = p.needlesShort(i)
	case t.is("needle", "needles"):
		i, numbers = p.needleNumbers(i + 1)
	case p.inNeedles && t.is("next") && p.tokens[i+1].is("needle"):
		i, numbers = i+2, []int{0}
	case p.ordinalEnd(i) != 0 && p.tokens[p.ordinalEnd(i)].is("needle"):
		numbers = []int{p.ordinalValue(i)}
		i = p.ordinalEnd(i) + 1
	case t.among("instep sole heel palm front back") && p.tokens[i+1].is(":"):
		return i + 2, []int{0}
	}
	if len(numbers) == 0 || !p.tokens[i].is(":", "-", ",") {
		return 0, nil
	}
	return i + 1, numbers
}

// needlesShort are the numbers of "N2 and N3" at token i, and the index after them.
func (p *parser) needlesShort(i int) (end int, numbers []int) {
	for ; p.tokens[i].among("n1 n2 n3 n4 n5") && len(numbers) < 4; i++ {
		numbers = append(numbers, int(p.tokens[i].text[1]-'0'))
		if p.tokens[i+1].is("and", "&", ",") && p.tokens[i+2].among("n2 n3 n4 n5") {
			i++
		}
	}
	return i, numbers
}

// needleNumbers are the numbers of needles at token i, "1 and 3", and the index after them; none
// if there is no such needle.
func (p *parser) needleNumbers(i int) (end int, numbers []int) {
	for ; p.tokens[i].kind == tokenNumber && len(numbers) < 4; i++ {
		n := p.tokens[i].number
		if n < 1 || n > 5 {
			return i, nil
		}
		numbers = append(numbers, int(n))
		if last := &p.tokens[i+2]; p.tokens[i+1].is("-", "to") && last.kind == tokenNumber && last.number > n && last.number <= 5 {
			for n++; n <= last.number; n++ {
				numbers = append(numbers, int(n))
			}
			return i + 3, numbers
		}
		if p.tokens[i+1].is("and", "&", ",") && p.tokens[i+2].kind == tokenNumber {
			i++
		}
	}
	return i, numbers
}

// needles reads a round that is written needle by needle, all of them or half in a bracket. How the stitches lie on them is
// not followed, and need not be: every needle but for its changes is worked as it is.
func (p *parser) needles(line *Line) bool {
	bracketed := p.peek().is("[", "(")
	if end, _ := p.needleHeader(p.next + bit(bracketed)); end == 0 || p.onlyRows {
		return false
	}
	from, closer := p.peek().span, ""
	if bracketed {
		closer = closers[p.peek().text]
		p.next++
	}
	p.inNeedles = true
	defer func() { p.inNeedles = false }()
	var sections []needleSection
	takes, leaves := make([]int, p.sizes), make([]int, p.sizes)
	for {
		end, numbers := p.needleHeader(p.next)
		if end == 0 {
			break
		}
		p.next = end
		steps, ok := p.needleSteps(sections, closer)
		if !ok {
			line.info.kind = lineUnread
			return true
		}
		for size := range takes {
			t, ok := looseTally(steps, size)
			if !ok || len(steps) == 0 {
				p.ask(ReasonUnread, from.to(p.last()), "how many stitches are on this needle? the count after the row depends on it")
				line.info.kind = lineUnread
				return true
			}
			if left := leftAfterPlace(steps, size); left != 0 {
				p.needleLeaves(steps, left)
				line.info.kind = lineUnread
				return true
			}
			takes[size] = min(takes[size]+int(t.takes)*len(numbers), MaxNumber)
			leaves[size] = min(leaves[size]+int(max(t.leaves, 0))*len(numbers), MaxNumber)
		}
		sections = append(sections, needleSection{numbers, steps})
		for p.peek().is(".", ";", ",") {
			if next, _ := p.needleHeader(p.next + 1); next == 0 {
				break
			}
			p.next++
		}
	}
	if closer != "" && !p.needlesAgain(closer, from, takes, leaves) {
		line.info.kind = lineUnread
		return true
	}
	p.worksInAll(line, takes, leaves)
	p.worksOnNeedles(line, sections, closer)
	return true
}

// needlesAgain reads "] twice" after the needles of half a round.
func (p *parser) needlesAgain(closer string, from span, takes, leaves []int) bool {
	var n []int
	if p.accept(closer) {
		n, _, _ = p.manyTimes()
	}
	if n == nil {
		p.ask(ReasonUnread, from.to(p.last()), "how many times?")
		return false
	}
	for size := range takes {
		takes[size] = min(takes[size]*at(n, size), MaxNumber)
		leaves[size] = min(leaves[size]*at(n, size), MaxNumber)
	}
	return true
}

// needleSteps reads the steps of one needle, or "as Needle 1".
func (p *parser) needleSteps(sections []needleSection, closer string) ([]Step, bool) {
	if p.peek().among("as same like rep repeat work") {
		save := p.next
		p.next++
		p.accept("as", "for")
		p.accept("for", "on")
		if _, numbers := p.needleNamed(); len(numbers) == 1 {
			for i := range sections {
				for _, n := range sections[i].numbers {
					if n == numbers[0] {
						return sections[i].steps, true
					}
				}
			}
		}
		p.next = save
	}
	whole := p.peek().is("knit", "purl") && p.ahead(1).kind != tokenNumber // "N2 and N3: knit; N4: ..."
	steps, ok := p.items(closer)
	if !ok || !p.placed(steps) {
		return nil, false
	}
	if whole && len(steps) == 1 && !steps[0].stretch() {
		steps[0].Times, steps[0].RemainingStitches = nil, toEnd
	}
	p.fit(steps)
	return steps, true
}

// needleNamed reads "Needle 1", "N1".
func (p *parser) needleNamed() (end int, numbers []int) {
	switch t := p.peek(); {
	case t.among("n1 n2 n3 n4 n5"):
		p.next++
		return p.next, []int{int(t.text[1] - '0')}
	case t.is("needle") && p.ahead(1).kind == tokenNumber:
		p.next += 2
		return p.next, []int{int(p.tokens[p.next-1].number)}
	}
	return 0, nil
}

// leftAfterPlace is how many stitches of a needle are left after steps that go to its last few
// and then work so many: of "k to last 4 sts, k2tog, k1" one, whatever the needle holds. Below
// 0 are those that are wanting.
func leftAfterPlace(steps []Step, size int) int64 {
	for i := len(steps) - 1; i >= 0; i-- {
		s := &steps[i]
		if s.BeforeMarkerStitches != nil || s.Operation.EndsRow() {
			return 0
		}
		if s.RemainingStitches != nil {
			return int64(at(s.RemainingStitches, size)) - restTakes(steps[i+1:], size)
		}
	}
	return 0
}

// needleLeaves says so.
func (p *parser) needleLeaves(steps []Step, left int64) {
	where := steps[0].at.to(steps[len(steps)-1].at)
	if left > 0 {
		p.mistake(ReasonUnworked, where, stitches(int(left))+" of this needle "+remain(left)+" at its end")
		return
	}
	p.mistake(ReasonMissing, where, stitches(int(-left))+" missing at the end of this needle")
}

// onNeedleOnly is how many stitches are meant by "on N2 only" between token i and another: as many as the text has said last to lie on
// that needle, "30 (32, 34) sts on N2"; nil where that is not what stands there.
func (p *parser) onNeedleOnly(i, end int) []int {
	n := i
	for n < end && !(p.tokens[n].is("on") && p.tokens[n+1].among("n1 n2 n3 n4") && p.tokens[n+2].is("only", "alone")) {
		n++
	}
	for k := i - 1; n < end && k > 0; k-- {
		p.looked++
		if !p.tokens[k].is("on") || p.tokens[k+1].text != p.tokens[n+1].text {
			continue
		}
		to := k - bit(p.tokens[k-1].stitches())
		for at := to - 1; at > max(0, to-2*p.sizes-4); at-- {
			if e, sizes := p.sizedEnd(at); e == to && (sizes == p.sizes || p.sizes == 1) {
				save := p.next
				p.next = at
				numbers := without(p.number())
				p.next = save
				return numbers
			}
		}
		return nil
	}
	return nil
}
