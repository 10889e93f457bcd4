package pattern

import (
	"math/bits"

	"example.com/knitmath/knitmath/report"
)

// listsGraded says where a list among the tokens from one to another leaves out a size or has one too many,
// whatever it counts, "9 (10, 11) balls" of four: nothing may be worked by it, but nobody can know which of the
// sizes a number is for. What was found fault with since a mark is not said again.
func (p *parser) listsGraded(first, end int, since mark) {
	if p.sizes < 3 || p.onlyRows || p.trying {
		return
	}
	some := p.sizes
	if mask, to := p.sizesAt(first); to != 0 && mask != 0 {
		some = bits.OnesCount32(mask)
	}
	for i := first; i < end; i++ {
		p.looked++
		to, n := p.gradedEnd(i)
		if to == 0 {
			continue
		}
		at := p.tokens[i].to(p.tokens[to-1].span)
		oneOff := (n == p.sizes-1 || n == p.sizes+1) && n != some
		if oneOff && (n > 2 || p.tokens[to].is(graded...)) && !p.foundWithin(at, since) {
			p.mistake(ReasonSizes, at, report.CountOf(n, "numbers")+" for "+report.CountOf(p.sizes, "sizes"))
		}
		i = to - 1
	}
}

// graded are words that say what a list of two numbers counts, which may be anything else.
var graded = []string{"balls", "skeins", "hanks", "yards", "yds", "metres", "meters"}

// gradedEnd is the index after a number with those of other sizes in brackets at token i, and how many they
// are; 0 if it is none, or the parts of a sum, "40 (10, 20, 10)".
func (p *parser) gradedEnd(i int) (end, n int) {
	if p.tokens[i].kind != tokenNumber || !p.tokens[i+1].is("(", "[", "{") {
		return 0, 0
	}
	first, rest := p.tokens[i].number, int32(0)
	for n = 1; p.tokens[i+1].is("(", "[", "{"); {
		end, more, sum := p.gradedBracket(i + 1)
		if end == 0 {
			return 0, 0
		}
		i, n, rest = end, n+more, rest+sum
		if p.tokens[i+1].kind == tokenNumber && (more == 1 || p.tokens[i+2].is("(", "[", "{")) { // "80 (88) 96"
			n, i = n+1, i+1
		}
	}
	if rest == first {
		return 0, 0
	}
	return i + 1, n
}

// gradedBracket is the end of a bracket at token i that holds nothing but numbers, how many they are, and their
// sum; 0 if it holds anything else.
func (p *parser) gradedBracket(i int) (end, n int, sum int32) {
	apart := true
	for closer := closers[p.tokens[i].text]; ; {
		switch i++; {
		case p.tokens[i].is(closer):
			return i, n, sum
		case p.tokens[i].kind == tokenNumber:
			n, apart, sum = n+bit(apart), false, sum+p.tokens[i].number
		case p.tokens[i].is(",", ":", ";"):
			apart = true
		case p.tokens[i].is("-") && apart:
			n, apart = n+1, false
		case !(p.tokens[i].is("/") && p.tokens[i].start == p.tokens[i-1].end) && !p.tokens[i].among("½ ¼ ¾ ."):
			return 0, 0, 0
		}
	}
}

// foundWithin reports whether a mistake or a question since a mark is about some of a stretch.
func (p *parser) foundWithin(at span, since mark) bool {
	for i := since.listed; i < len(p.found.list); i++ {
		if f := &p.found.list[i]; f.Kind != KindReading && f.at.start < at.end && at.start < f.at.end {
			return true
		}
	}
	return false
}
