package pattern

// ordered is the order in which headed sets of rows are worked that stand below it, "Work 8 wedges: wedge 1
// (4 times), then wedge 2, then wedge 1 (3 times). The rows of each follow".
type ordered struct {
	line    int     // that says so
	numbers []int16 // of the sets, in the order in which they are worked
	sets    [maxOrdered + 1]int
}

// maxOrdered is the most sets of an order, and maxInOrder how often they are worked in all.
const (
	maxOrdered = 9
	maxInOrder = 300
)

// orderSaid reads "work 8 wedges: wedge 1 (4 times), then wedge 2".
func (p *parser) orderSaid(line *Line) bool {
	if p.onlyRows || p.inRow || !p.peek().is("work", "knit") || p.ahead(1).kind != tokenNumber ||
		!p.ahead(2).is("wedges") || !p.ahead(3).is(":") {
		return false
	}
	from, all := p.peek().span, int(p.ahead(1).number)
	p.next += 4
	numbers := p.orderOf(nil)
	if len(numbers) != all {
		p.ask(ReasonUnread, from.to(p.last()), "are these as many wedges as it says?")
		line.info.kind = lineUnread
		return true
	}
	if p.accept(".") && p.acceptAll("the", "rows", "of", "each", "follow") {
		p.next = p.sentenceEnd(p.next) // which says that they are written once, and where each begins
		if p.peek().is(".") && p.ahead(1).is("each") && p.ahead(2).is("begins") {
			p.next = p.sentenceEnd(p.next + 1)
		}
	}
	line.info.kind, line.info.counts, line.info.afresh = lineRepeat, one, true
	p.order = &ordered{line: len(p.piece.Lines), numbers: numbers}
	return true
}

// orderOf reads "wedge 1 (4 times), then wedge 2", and "[wedge 1, then wedge 2] 3 times" within it.
func (p *parser) orderOf(numbers []int16) []int16 {
	for {
		from := len(numbers)
		switch {
		case p.accept("["):
			if numbers = p.orderOf(numbers); !p.accept("]") {
				return nil
			}
		case p.accept("wedge") && p.peek().kind == tokenNumber && p.peek().number >= 1 && p.peek().number <= maxOrdered:
			numbers = append(numbers, int16(p.peek().number))
			p.next++
		default:
			return nil
		}
		bracket := p.accept("(")
		if n, _, _ := p.manyTimes(); n != nil {
			once := numbers[from:]
			for range min(at(n, 0), maxInOrder) - 1 {
				if len(numbers) > maxInOrder {
					return nil
				}
				numbers = append(numbers, once...)
			}
		}
		if bracket && !p.accept(")") {
			return nil
		}
		if !p.peek().is(",") || !p.ahead(1).is("then") {
			return numbers
		}
		p.next += 2
	}
}

// orderedHeading notes that the rows of set n of an order come next, "Wedge 2:", and what ends them.
func (p *parser) orderedHeading(i, stop int) {
	if p.order == nil {
		return
	}
	if p.tokens[i].is("wedge") && p.tokens[i+1].kind == tokenNumber && p.tokens[i+1].number >= 1 && p.tokens[i+1].number <= maxOrdered &&
		stop == i+3 {
		p.patterns = append(p.patterns, defined{words: []string{"wedge", p.tokens[i+1].text}, from: len(p.piece.Lines), named: true, began: true,
			heading: p.tokens[i].to(p.tokens[stop-1].span)})
		p.current = len(p.patterns)
		p.order.sets[p.tokens[i+1].number] = p.current
	}
}

// orderEnds reports whether a line is "Once all 8 wedges are worked:".
func (p *parser) orderEnds(i, end int) bool {
	return p.order != nil && end-i == 7 && p.tokens[i].is("once") && p.tokens[i+1].is("all") && p.tokens[i+2].kind == tokenNumber &&
		p.tokens[i+3].is("wedges") && p.tokens[i+6].is(":")
}

// setOrder works the sets of an order where it is said, when all have been read.
func (p *parser) setOrder() {
	if p.order == nil {
		return
	}
	info := &p.piece.Lines[p.order.line].info
	var lines []int16
	for _, n := range p.order.numbers {
		set := p.order.sets[n]
		if set == 0 || len(p.patterns[set-1].lines) == 0 || !p.name(len(p.patterns[set-1].lines), info.at) {
			info.kind = lineUnread
			p.ask(ReasonUnread, info.at, "the rows of one of these are not written")
			return
		}
		lines = append(lines, p.patterns[set-1].lines...)
	}
	for _, n := range p.order.sets[1:] {
		if n > 0 {
			for _, k := range p.patterns[n-1].lines {
				p.piece.Lines[k].info.defined = true
			}
		}
	}
	info.lines = lines
}
