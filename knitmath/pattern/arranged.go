package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// onEachOf reads "on each of 3 needles" after a number of stitches: how many needles; 0 and
// nothing taken if that is not what stands there.
func (p *parser) onEachOf() int {
	i := p.next
	if !p.tokens[i].is("on", "onto", "to") || !p.tokens[i+1].is("each") {
		return 0
	}
	if n := p.needlesInText(); n > 0 && (p.endsClause(i+2) || p.tokens[i+2].is(")")) { // "on three needles, 20 on each"
		p.next = i + 2
		return n
	}
	if !p.tokens[i+2].is("of") {
		return 0
	}
	i += 3
	if p.tokens[i].is("the") {
		i++
	}
	n := int(p.tokens[i].number)
	if written, ok := p.tokens[i].written(); ok {
		n = written
	} else if p.tokens[i].kind != tokenNumber {
		return 0
	}
	for i++; p.tokens[i].among("double-pointed double pointed dp dpn circular"); i++ {
	}
	if !p.tokens[i].is("needle", "needles", "dpns") || n < 1 || n > 6 {
		return 0
	}
	p.next = i + 1
	return n
}

// timesEach is so many stitches on each of so many needles.
func (p *parser) timesEach(numbers []int, needles int) []int {
	out := make([]int, len(numbers))
	for i, n := range numbers {
		out[i] = min(max(n, 0)*needles, MaxNumber)
	}
	return out
}

// eachNeedle reads ", 20 on each of 3 needles" after a number of stitches that are cast on,
// and says so where they are not as many.
func (p *parser) eachNeedle(all []int) {
	save, found := p.next, p.found.mark()
	from := p.peek().span
	if !p.accept(",", "(", "-") {
		return
	}
	bracket := p.tokens[save].is("(")
	n := p.number()
	if n != nil {
		p.accept("st", "sts", "stitches")
	}
	needles := 0
	if n != nil {
		needles = p.onEachOf()
	}
	if needles == 0 || bracket && !p.accept(")") {
		p.next = save
		p.found.rewind(found)
		return
	}
	p.laysEach(without(n), needles)
	for size, each := range perSize(without(n), p.sizes) {
		if want := perSize(all, p.sizes)[size]; each*needles != want {
			p.mistake(ReasonClaim, from.to(p.last()), stitches(each)+" on each of "+report.CountOf(needles, "needles")+" are "+
				stitches(each*needles)+
				", not "+stitches(want))
			return
		}
	}
}

// arranged reads "so that 30 sts are on needle 1 and 30 on needle 2" and "sts 18-36-18 on
// three needles": how the stitches lie. Together they are all there are.
func (p *parser) arranged(line *Line) bool {
	save, found := p.next, p.found.mark()
	p.accept("the", "your")
	p.accept("st", "sts", "stitches")
	p.overNeedlesBefore(":", ",", "(")
	marked := p.phraseEnd(p.next, markedSides)
	if marked != 0 && p.tokens[marked].is(",", ":", "(") {
		p.next = marked + 1
	}
	p.acceptAll("so", "that")
	p.accept("as")
	p.accept("foll", "follows")
	p.accept(":")
	from := p.peek().span
	var sum []int
	var laid [][]int
	parts := 0
	for parts < 8 && p.arrangedAhead() {
		n := p.number()
		if n == nil {
			parts = 0
			break
		}
		if parts > 1 && slices.Equal(tidy(perSize(without(n), p.sizes)), tidy(slices.Clone(sum))) && p.totalEnds() { // "...; 66 sts"
			break
		}
		if marked != 0 && sum == nil {
			line.info.halves = without(n)
		}
		sum, laid = added(sum, without(n), p.sizes), append(laid, without(n))
		parts++
		p.arrangedWhere()
	}
	if line.info.halves != nil && parts != 2 {
		line.info.halves = nil
	}
	if parts < 2 {
		p.next = save
		p.found.rewind(found)
		return false
	}
	p.accept(")")
	if p.anyOf(save, p.next, "needle", "needles", "dpns", "n1") {
		p.laid = &laidOut{parts: laid}
	}
	line.ClaimedStitches, line.info.claimAt = sum, from.to(p.last())
	return true
}

// arrangedInTail reads "dividing them 42, 40, 42 on three needles", "20 on the 1st needle, 24 on the 2nd and 20 on
// the 3rd" beside a number of stitches that are cast on, and compares their sum with it.
func (p *parser) arrangedInTail(info *lineInfo) bool {
	if info.kind != lineCastOn {
		return false
	}
	save, found, from := p.next, p.found.mark(), p.peek().span
	if !p.acceptAmong("dividing divided distributing distributed arranging arranged placing") {
		end, _ := p.sizedEnd(p.next)
		if end == 0 {
			return false
		}
		if p.tokens[end].stitches() {
			end++
		}
		if !p.tokens[end].is("on", "onto") || !p.tokens[end+1].among("the 1st first needle one") && p.tokens[end+1].kind != tokenNumber {
			return false
		}
	}
	p.accept("them")
	told := Line{info: lineInfo{kind: linePassed}}
	if !p.arranged(&told) || p.peek().is("times") || info.counts == nil {
		p.next = save
		p.found.rewind(found)
		return false
	}
	for size, sum := range perSize(told.ClaimedStitches, p.sizes) {
		if all := perSize(info.counts, p.sizes)[size]; sum != all {
			p.mistake(ReasonClaim, from.to(p.last()), "on the needles are "+stitches(sum)+" in all, not "+stitches(all))
			break
		}
	}
	return true
}

// totalEnds passes over "sts" after the sum of the parts, and reports whether nothing follows.
func (p *parser) totalEnds() bool {
	save := p.next
	p.accept("st", "sts", "stitches")
	p.accept("in")
	p.accept("all", "total")
	if p.endsAt(p.next) || p.peek().is(")") {
		return true
	}
	p.next = save
	return false
}

// markedSides are where markers part the stitches of which is said how many lie between them.
var markedSides = wordings("with a marker at each side", "with markers at each side", "with markers at the sides",
	"with a marker on each side",
	"with markers", "in half", "in half with markers")

// arrangedAhead passes over "there are the next" and reports whether a number comes then.
func (p *parser) arrangedAhead() bool {
	p.accept("there", "you")
	p.accept("are", "have")
	p.acceptAmong("the first last next rem remaining")
	t := p.peek()
	return t.kind == tokenNumber && t.number <= MaxNumber && !p.ahead(1).is("needles", "dpns")
}

// arrangedWhere passes over where so many stitches lie, "sts on needle 1 and", up to the next
// number: at once, in a chain such as "18-36-18".
func (p *parser) arrangedWhere() {
	chain := p.accept("-", "/")
	p.accept("st", "sts", "stitches")
	if chain {
		return
	}
	for n := 0; n < 9 && !p.arrangedStops(); n++ {
		if p.peek().is("(") && p.acceptEnd(p.remarkEnd(p.next)) {
			continue
		}
		p.next++
	}
	if p.numberAfterJoin() {
		for p.accept(",", ";", "and") {
		}
	}
}

// arrangedStops reports whether nothing more is said of where stitches lie: the next number is
// that of other stitches, and not that of a needle.
func (p *parser) arrangedStops() bool {
	t := p.peek()
	return p.endsAt(p.next) || t.among(", ; and )") ||
		t.kind == tokenNumber && p.ordinalEnd(p.next) == 0 && !p.tokens[p.next-1].is("needle", "n", "needles")
}

// numberAfterJoin reports whether a number comes next, after a comma or "and".
func (p *parser) numberAfterJoin() bool {
	i := p.next
	for p.tokens[i].is(",", ";", "and") {
		i++
	}
	for p.tokens[i].among("the first last next rem remaining") {
		i++
	}
	return i > p.next && p.tokens[i].kind == tokenNumber && !p.tokens[i+1].row()
}

// overNeedlesBefore passes over "over 3 needles:" before the numbers on each.
func (p *parser) overNeedlesBefore(signs ...string) {
	save, found := p.next, p.found.mark()
	p.next-- // it begins after a verb
	if p.overNeedles(&lineInfo{}) && p.accept(signs...) {
		return
	}
	p.next = save
	p.found.rewind(found)
}

// overNeedles passes over "divided evenly over 4 needles", of which a count on each may follow.
func (p *parser) overNeedles(info *lineInfo) bool {
	i, evenly := p.next, false
	for i++; p.tokens[i].among("evenly equally them the sts stitches"); i++ {
		evenly = evenly || p.tokens[i].is("evenly", "equally")
	}
	if !p.tokens[i].among("over on onto between among across") {
		return false
	}
	end := i + 1
	n := p.tokens[end].howMany()
	if n > 0 {
		end++
	}
	for p.tokens[end].among("dp double-pointed double pointed the circular short") {
		end++
	}
	if !p.tokens[end].among("needle needles dpns dpn") {
		return false
	}
	from := p.peek().span
	p.next = end + 1
	p.passed(from.to(p.last()))
	if evenly || p.tokens[i-1].is("evenly", "equally") {
		info.needles, info.needlesAt = n, from.to(p.last())
	}
	return true
}

// dividedInto reads ": 14 sts each", "(9 on each)" behind needles over which stitches are divided.
func (p *parser) dividedInto(line *Line) {
	save := p.next
	for p.accept(":", ",", "-", ";") {
	}
	if !p.needlesTold(line) {
		p.next = save
	}
}

// needlesEven says how stitches lie that are as many on each of some needles, and cannot be.
func (r *runner) needlesEven(l *Line) {
	n, all := int64(l.info.needles), r.now.total()
	if n < 2 || !r.known || all%n == 0 || l.info.perNeedle != nil {
		return
	}
	r.fault(KindReading, ReasonReading, l.info.needlesAt, 0, stitches(int(all))+" do not lie evenly on "+strconv.Itoa(int(n))+
		" needles: "+strconv.Itoa(int(all/n))+" on some, "+strconv.Itoa(int(all/n+1))+" on others")
}
