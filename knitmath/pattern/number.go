package pattern

import "example.com/knitmath/knitmath/report"

// numberWords are the numbers that patterns write out.
var numberWords = map[string]int{"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
	"nine": 9, "ten": 10, "eleven": 11, "twelve": 12, "fifteen": 15, "twenty": 20}

// closers are the brackets and what closes them.
var closers = map[string]string{"[": "]", "(": ")", "{": "}"}

// listEnd returns the index after the bracket that closes a list of numbers
// opened at token i, and how many numbers are in it; 0 if there is no such list.
func (p *parser) listEnd(i int) (end, n int) {
	closer, ok := closers[p.tokens[i].text]
	if !ok || p.tokens[i].kind != tokenMark {
		return 0, 0
	}
	for i++; ; i++ {
		p.looked++
		t := &p.tokens[i]
		if t.kind != tokenNumber && (t.kind != tokenMark || t.text != "-") {
			return 0, 0
		}
		n++
		i++
		switch t = &p.tokens[i]; {
		case t.kind == tokenMark && t.text == closer:
			return i + 1, n
		case t.kind != tokenMark || t.text != "," && t.text != ":" && t.text != ";":
			return 0, 0
		}
	}
}

// sizesIn guesses the number of sizes from the first list of numbers that
// follows a number or stands where one is due: 1 if there is none.
func (p *parser) sizesIn() int {
	for i := range p.tokens {
		end, n := p.listEnd(i)
		if end == 0 || i == 0 {
			continue
		}
		before := &p.tokens[i-1]
		_, _, _, attached := split(before.text)
		leading := before.kind == tokenNumber || before.kind == tokenWord && attached
		if !leading && n < 2 {
			continue
		}
		if leading {
			n++
		}
		for next, more := p.listEnd(end); next != 0; next, more = p.listEnd(next) {
			n += more
		}
		return n
	}
	return 1
}

// number reads a number with those of the other sizes:
//
//	5    5 (6, 7, 8)    (5, 6, 7, 8)    five
//
// -1 stands for "-". It returns nil, and has said why, when there is none.
func (p *parser) number() []int {
	t := p.peek()
	if t.kind == tokenWord {
		if n, ok := numberWords[t.text]; ok {
			p.next++
			return p.numbers(n, t.span)
		}
	}
	if t.kind == tokenNumber {
		p.next++
		return p.numbers(int(t.number), t.span)
	}
	if end, _ := p.listEnd(p.next); end != 0 {
		return p.lists(nil, t.span)
	}
	return nil
}

// numbers goes on after a leading number.
func (p *parser) numbers(n int, at span) []int {
	if n > MaxNumber {
		p.mistake(ReasonTooLarge, at, "a number here is a whole number of at most 10000")
		return nil
	}
	if end, _ := p.listEnd(p.next); end == 0 {
		return []int{n}
	}
	return p.lists([]int{n}, at)
}

// lists reads the lists in brackets, one or several in a row, that belong to the
// numbers already read.
func (p *parser) lists(numbers []int, at span) []int {
	for first := true; first || len(numbers) < p.sizes; first = false {
		end, n := p.listEnd(p.next)
		if end == 0 {
			break
		}
		if p.listed += n; p.listed > MaxListed {
			p.mistake(ReasonTooMany, at, "the lists of this text hold more than 20000 numbers")
			return nil
		}
		for ; p.next < end; p.next++ {
			switch t := &p.tokens[p.next]; {
			case t.kind == tokenNumber && t.number > MaxNumber:
				p.mistake(ReasonTooLarge, t.span, "a number here is a whole number of at most 10000")
				return nil
			case t.kind == tokenNumber:
				numbers = append(numbers, int(t.number))
			case t.text == "-":
				numbers = append(numbers, -1)
			}
		}
		at = at.to(p.tokens[end-1].span)
	}
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
