package pattern

import (
	"example.com/knitmath/knitmath/draft"
	"example.com/knitmath/knitmath/report"
)

// closers are the brackets and what closes them.
var closers = map[string]string{"[": "]", "(": ")", "{": "}"}

// written is a number written out.
func (t *token) written() (int, bool) {
	if t.kind != tokenWord {
		return 0, false
	}
	return draft.Number(t.text)
}

// listEnd returns the index after the bracket that closes a list of numbers
// opened at token i, and how many numbers are in it; 0 if there is no such list.
func (p *parser) listEnd(i int) (end, n int) {
	if i >= len(p.tokens) || p.tokens[i].kind != tokenMark {
		return 0, 0
	}
	closer, ok := closers[p.tokens[i].text]
	if !ok {
		return 0, 0
	}
	open, dashed := i, false
	for i = p.unbroken(i + 1); p.tokens[i].ofList(); i = p.unbroken(i + 1) {
		p.looked++
		n++
		i = p.unbroken(i + 1)
		switch t := &p.tokens[i]; {
		case t.kind == tokenMark && t.text == closer:
			if next := &p.tokens[i+1]; dashed && !next.stitches() && !next.row() && !p.afterFirst(open, n) {
				return 0, 0
			}
			return i + 1, n
		case t.partsList():
		case p.dashInList(i):
			dashed = true
		default:
			return 0, 0
		}
	}
	p.looked++
	return 0, 0
}

// afterFirst reports whether so many numbers in brackets that open at token i are those of all other sizes than the first, whose
// number stands before them: "k27 (29-31-33)".
func (p *parser) afterFirst(i, n int) bool {
	if i == 0 || n < 2 || n+1 != p.sizes {
		return false
	}
	before := &p.tokens[i-1]
	_, _, _, attached := split(before.text)
	return before.kind == tokenNumber || before.kind == tokenWord && attached
}

// ofList reports whether a token is a number of a list, or the dash that stands for none.
func (t *token) ofList() bool {
	if t.kind == tokenWord {
		_, ok := t.written()
		return ok
	}
	return t.kind == tokenNumber || t.kind == tokenMark && t.text == "-"
}

// partsList reports whether a token parts the numbers of a list.
func (t *token) partsList() bool {
	return t.kind == tokenMark && (t.text == "," || t.text == ":" || t.text == ";")
}

// dashInList reports whether the token between two numbers is a dash or a stroke, as in "(80-88-96)".
func (p *parser) dashInList(i int) bool {
	return p.sizes != 1 && p.tokens[i].is("-", "/") && p.tokens[i+1].kind == tokenNumber && p.tokens[i-1].kind == tokenNumber
}

// unbroken is the first token from i on that is no line break.
func (p *parser) unbroken(i int) int {
	if p.tokens[i].kind == tokenNewline {
		i++
	}
	return i
}

// sizedEnd returns the index after a number with those of the other sizes that
// begins at token i, and how many they are; 0 if none does:
//
//	5    5 (6, 7, 8)    5 (6) 7 (8)    5[6:7]    5-6-7    (5, 6, 7, 8)    five
func (p *parser) sizedEnd(i int) (end, n int) {
	if i >= len(p.tokens) {
		return 0, 0
	}
	t := &p.tokens[i]
	if _, ok := t.written(); ok {
		return p.sizedMore(i+1, 1)
	}
	if t.is("-") && p.sizes > 1 && i > 0 && t.start > p.tokens[i-1].end {
		if end, n = p.listEnd(i + 1); end != 0 && n+1 < p.sizes {
			end, n = p.sizedMore(i+1, 1)
			n--
		}
		if end != 0 && n+1 == p.sizes {
			return end, n + 1 // "- (1, 2) rows": none in the first size
		}
	}
	if t.kind != tokenNumber {
		if end, n = p.listEnd(i); end == 0 {
			return 0, 0
		}
		return p.sizedMore(end, n)
	}
	if end, n = p.chainEnd(i); end != 0 {
		return end, n
	}
	return p.sizedMore(i+1, 1)
}

// sizedMore goes on after n numbers that end at token i.
func (p *parser) sizedMore(i, n int) (int, int) {
	for lists := 0; p.sizes == 0 || n < p.sizes || lists == 0; lists++ {
		if lists > 0 && n+1 < MaxSizes && p.between(i, n) {
			i, n = i+1, n+1
		}
		end, more := p.listEnd(i)
		if end == 0 {
			break
		}
		i, n = end, n+more
	}
	return i, n
}

// partsByDash reports whether the chain at token i tells how stitches lie, and no sizes: "40 sts:
// 10-20-10", "over three needles: 4-4-4".
func (p *parser) partsByDash(i int) bool {
	if i < 2 || !p.tokens[i+1].is("-", "/") {
		return false
	}
	before, word := &p.tokens[i-1], &p.tokens[i-2]
	if before.is("(") && i > 2 && word.among("rem remain remains remaining left") { // "until 56 sts rem (14-28-14)"
		word = &p.tokens[i-3]
	}
	return before.is(":", ";", "(") && word.stitches() || p.tokens[i+1].is("-") && before.is(":", "(", ",") && word.is("needles", "dpns")
}

// number reads a number with those of the other sizes; -1 stands for "-". It
// returns nil, and has said why unless there is none, when it cannot be read.
func (p *parser) number() []int {
	t := p.peek()
	end, n := p.sizedEnd(p.next)
	if end == 0 {
		return nil
	}
	if written, ok := t.written(); ok {
		p.next++
		return p.numbers(written, t.span)
	}
	if t.kind == tokenNumber && (n == 1 || n == 2 && p.sizes == 1 && p.ahead(1).is("(", "[") && p.endsAt(end)) { // "x 12 (84)"
		p.next++
		return p.numbers(int(t.number), t.span)
	}
	return p.list(nil, end, n, t.span)
}

// numbers goes on after a leading number.
func (p *parser) numbers(first int, at span) []int {
	if first > MaxNumber {
		p.mistake(ReasonTooLarge, at, "a number here is a whole number of at most 10000")
		return nil
	}
	end, n := p.sizedMore(p.next, 1)
	if chained := p.chainAfter(p.next); chained != 0 {
		end, n = chained, p.sizes
	}
	if n == 1 || n == 2 && p.sizes == 1 && p.peek().is("(", "[") && p.endsAt(end) { // "k1 (26)": the count after the row
		return []int{first}
	}
	return p.list([]int{first}, end, n, at)
}

// list reads the numbers up to a token, of which there are n with those already
// read.
func (p *parser) list(numbers []int, end, n int, at span) []int {
	if p.listed += n; p.listed > MaxListed {
		p.mistake(ReasonTooMany, at, "the lists of this text hold more than 20000 numbers")
		return nil
	}
	joined := len(numbers) > 0 // to the number before, so that a dash is a sign between the two
	for ; p.next < end; p.next++ {
		switch t := &p.tokens[p.next]; {
		case t.kind == tokenNumber && t.number > MaxNumber:
			p.mistake(ReasonTooLarge, t.span, "a number here is a whole number of at most 10000")
			return nil
		case t.kind == tokenNumber:
			numbers, joined = append(numbers, int(t.number)), true
		case t.is("-") && !joined:
			numbers, joined = append(numbers, -1), true
		default:
			n, written := t.written()
			if joined = written; written {
				numbers = append(numbers, n)
			}
		}
	}
	at = at.to(p.last())
	if len(numbers) != p.sizes {
		p.mistake(ReasonSizes, at, report.CountOf(len(numbers), "numbers")+" for "+report.CountOf(p.sizes, "sizes"))
		return nil
	}
	return tidy(numbers)
}

// tidy makes a list of equal numbers one number.
func tidy(numbers []int) []int {
	for _, n := range numbers {
		if n != numbers[0] {
			return numbers
		}
	}
	return numbers[:min(1, len(numbers))]
}

// without makes the "-" of a list 0: how often something is worked.
func without(numbers []int) []int {
	for i, n := range numbers {
		numbers[i] = max(n, 0)
	}
	return tidy(numbers)
}
