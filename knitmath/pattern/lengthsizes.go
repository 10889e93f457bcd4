package pattern

import (
	"math/bits"

	"example.com/knitmath/knitmath/report"
)

// lengthsGraded says where a length among the tokens from first on is given for fewer or more
// sizes than there are: "19 [20] cm" of three. A length changes no count, but nobody can know
// which of the sizes it is for. A single length is that of all.
func (p *parser) lengthsGraded(first int) {
	if p.sizes < 2 || p.onlyRows || p.trying {
		return
	}
	for i := first; i < p.next; i++ {
		t := &p.tokens[i]
		p.looked++
		if t.kind != tokenNumber || i > 0 && p.tokens[i-1].kind == tokenNumber {
			continue
		}
		end, n := p.lengthList(i)
		if n > 1 && n != p.sizes && n != bits.OnesCount32(p.forSizes) {
			p.mistake(ReasonSizes, t.span.to(p.tokens[end-1].span),
				report.CountOf(n, "lengths")+" for "+report.CountOf(p.sizes, "sizes"))
		}
		if n > 1 {
			i = end - 1
		}
	}
}

// lengthList is the index after a length with those of other sizes in brackets at token i, up
// to its unit, and how many they are; 0 if no list with a unit stands there.
func (p *parser) lengthList(i int) (end, n int) {
	i, n = i+1, 1
	for p.tokens[i].is("(", "[", "{") {
		closer := closers[p.tokens[i].text]
		for i++; !p.tokens[i].is(closer); i++ {
			switch t := &p.tokens[i]; {
			case t.kind == tokenNumber:
				n++
			case !t.among(", : ; /"):
				return 0, 0
			}
		}
		if i++; p.tokens[i].kind == tokenNumber {
			n++
			i++
		}
	}
	if n < 2 || p.tokens[i].system() == unitNone {
		return 0, 0
	}
	if p.tokens[i].is("in") && !p.endsAt(i+1) &&
		!p.tokens[i+1].among(", ; ) from or of and above below long wide") {
		return 0, 0 // "rep Rows 1 (3) in all"
	}
	return i, n
}
