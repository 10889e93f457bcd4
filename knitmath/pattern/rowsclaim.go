package pattern

import (
	"math/bits"
	"strings"

	"example.com/knitmath/knitmath/report"
)

// rowsClaim is a count of rows that the text tells beside what is worked: "(28 rows)", "28 (30,
// 32) rows worked", "46 sts, 28 rows". It changes nothing, and is compared with what is worked.
type rowsClaim struct {
	line  int   // what is worked before it
	rows  []int // one number, or one for each size; -1 for a size without one
	inAll bool  // it may count from farther back than is known
	ridge bool  // of garter ridges, which are two rows
	at    span  // of the numbers and their "rows"
}

// rowsClaims are the counts of rows that a text tells. They are looked for when it has been read,
// wherever a direction, a claim or a remark has passed over them.
func (p *parser) rowsClaims() []rowsClaim {
	var claims []rowsClaim
	for i := 2; i < len(p.tokens)-1; i++ {
		if p.tokens[i].kind != tokenNumber || p.tokens[i-1].kind == tokenNumber {
			continue
		}
		end, inAll := p.rowsClaimEnd(i)
		if end == 0 {
			continue
		}
		line, ridge := p.workedBefore(i), p.tokens[end-1].is("ridge", "ridges")
		if line < 0 || ridge && !p.garterRows(&p.piece.Lines[line]) {
			continue
		}
		p.forSizes, p.next = p.piece.Lines[line].info.forSizes, i
		if p.forSizes == 0 || bits.OnesCount32(p.forSizes) == p.sizes {
			p.forSizes = 0
		}
		rows, ok := p.toldNumbers(end)
		if ok {
			claims = append(claims, rowsClaim{line: line, rows: rows, inAll: inAll, ridge: ridge, at: p.tokens[i].to(p.tokens[end-1].span)})
		}
		i = end
	}
	return claims
}

// toldNumbers are the numbers of a count of rows; not ok where they are not as many as the sizes,
// which has been said.
func (p *parser) toldNumbers(end int) ([]int, bool) {
	at := p.peek().span
	var numbers []int
	for i := p.next; i < end; i++ {
		switch t := &p.tokens[i]; {
		case t.kind == tokenNumber && t.number <= MaxNumber:
			numbers = append(numbers, int(t.number))
		case t.kind == tokenNumber:
			return nil, false
		case t.is("-") && p.tokens[i+1].kind != tokenNumber:
			numbers = append(numbers, -1)
		}
	}
	numbers = p.ofSomeSizes(numbers)
	if len(numbers) != 1 && len(numbers) != p.sizes {
		p.mistake(ReasonSizes, at.to(p.tokens[end-1].span), report.CountOf(len(numbers), "numbers")+" for "+report.CountOf(p.sizes, "sizes"))
		return nil, false
	}
	return tidy(numbers), true
}

// rowsClaimEnd is the index after "28 (30, 32) rows" at token i, where it is told and not to be
// worked; 0 if it is not. What stands before and behind it says which.
func (p *parser) rowsClaimEnd(i int) (end int, inAll bool) {
	end, _ = p.sizedEnd(i)
	if n := i + 2*p.sizes - 1; p.sizes > 1 && end == i+1 && p.listOfSizes(i) { // "(29, 32, 36 rows)"
		end = n
	}
	if end = p.rowsWord(end); end == 0 {
		return 0, false
	}
	behind, said := p.rowsDone(end)
	begin, total := p.beforeRowsClaim(i)
	if !p.rowsToldBetween(begin, behind, said) && !(p.timesBefore(i) && p.endsAt(behind)) {
		return 0, false
	}
	return end, total || p.anyOf(end, behind, "all", "total", "altogether")
}

// listOfSizes reports whether a bracket is opened before token i, and a number for each size follows.
func (p *parser) listOfSizes(i int) bool {
	if !p.tokens[i-1].is("(", "[") {
		return false
	}
	for n := 1; n < p.sizes; n++ {
		if !p.tokens[i+2*n-1].is(",") || p.tokens[i+2*n].kind != tokenNumber {
			return false
		}
	}
	return true
}

// rowsWord is the index after "rows", "garter ridges", "pattern rows" at token i, after their number; 0 if they do not stand there.
func (p *parser) rowsWord(i int) int {
	if i != 0 && (p.tokens[i].is("garter") || p.fabricUnnamed(i) && p.tokens[i+1].row()) {
		i++
	}
	if i == 0 || !p.tokens[i].row() && !p.tokens[i].is("ridge", "ridges") {
		return 0
	}
	return i + 1
}

// rowsToldBetween reports whether what stands from token begin up to token behind tells how many
// rows there are: in brackets, after a count of stitches, "46 sts, 28 rows", or as a clause of which
// it is said that they have been worked.
func (p *parser) rowsToldBetween(begin, behind int, said bool) bool {
	before, stop := &p.tokens[begin-1], &p.tokens[behind]
	closed, comma := p.closesCount(behind), stop.is(",", ";")
	switch {
	case before.is("(", "["):
		if closed || comma && p.claimWords(behind+1) {
			return true
		}
	case before.is(",", ";") && p.tokens[begin-2].stitches():
		if closed || p.endsAt(behind) {
			return true
		}
	}
	return said && (closed || comma || p.endsAt(behind)) && p.apartAt(begin-1)
}

// apartAt reports whether token i sets what follows apart, and its dash is none of a range.
func (p *parser) apartAt(i int) bool {
	t := &p.tokens[i]
	return t.is(",", ";") || p.endsAt(i) || t.is("-") && p.tokens[i-1].kind == tokenWord
}

// closesCount reports whether a bracket is closed at token i, and no number of times follows.
func (p *parser) closesCount(i int) bool {
	if p.tokens[i].is(".") {
		i++
	}
	return p.tokens[i].is(")", "]") && !p.tokens[i+1].among("times time x twice once") && p.tokens[i+1].kind != tokenNumber
}

// rowsDone is the index after "have been worked", "in all", "total" at token i, and whether
// anything like it stands there.
func (p *parser) rowsDone(i int) (end int, said bool) {
	i = p.toldFabric(i)
	for p.tokens[i].among("have been are now so far in worked done complete completed all total made " +
		"altogether") {
		said = said || !p.tokens[i].is("in")
		i++
	}
	return p.sinceCastOn(i), said
}

// sinceCastOn is the index after "from cast-on", "since the beginning" at token i, or i.
func (p *parser) sinceCastOn(i int) int {
	if !p.tokens[i].is("from", "since") {
		return i
	}
	end := i + 1
	for p.tokens[end].among("the cast-on cast on co beg beginning start edge row") {
		end++
	}
	if !p.anyOf(i, end, "cast-on", "cast", "co", "beg", "beginning", "start") {
		return i
	}
	return end
}

// garterRows reports whether a line is rows that are knit, or in garter stitch by its name, back and forth: of other
// fabrics a ridge may be any number of rows.
func (p *parser) garterRows(l *Line) bool {
	said := p.found.source[l.info.at.start:l.info.at.end]
	word, _, _ := strings.Cut(strings.ToLower(said), " ")
	return (l.info.kind == lineEven || l.info.kind == linePlain) && !l.info.inRounds &&
		(word == "knit" || word == "k" || strings.Contains(strings.ToLower(said), "garter"))
}

// beforeRowsClaim is the index of the first word of "a total of", "making" before a count of rows
// at token i, and whether it is of all rows.
func (p *parser) beforeRowsClaim(i int) (begin int, total bool) {
	for i > 2 && p.tokens[i-1].among("a total of making is this = for about") {
		i--
		total = total || p.tokens[i].is("total")
	}
	return i, total
}

// workedBefore is the line whose work a count of rows at token i is told of: the one that it stands
// in, or the one that ends just before it; -1 if there is none.
func (p *parser) workedBefore(i int) int {
	at := p.tokens[i].span
	line := p.piece.lineAt(at)
	for line >= 0 {
		switch info := &p.piece.Lines[line].info; {
		case info.kind == linePassed && info.at.start+1 >= at.start: // it begins with this count: a heading comes after it
			line--
			continue
		case info.defined, info.at.end < at.start && p.wordBetween(info.at.end, i):
			return -1
		}
		switch p.piece.Lines[line].info.kind {
		case lineRow, lineEven, linePlain, lineRepeat, lineShape, lineAgain, lineBeginning:
			return line
		}
		return -1
	}
	return -1
}

// wordBetween reports whether a word stands between a place of the text and token i.
func (p *parser) wordBetween(end int32, i int) bool {
	for i--; i >= 0 && p.tokens[i].start >= end; i-- {
		if p.tokens[i].kind == tokenWord {
			return true
		}
	}
	return false
}
