package pattern

import (
	"strconv"
	"strings"
)

// chartRepeat reads how many stitches a repeat of a chart takes and how often it is worked:
// "(10-st rep) 6 times around", "(12 sts, 6 repeats)", ", working the 12-st repeat 9 times".
// A chart whose repeat is said keeps the count.
func (p *parser) chartRepeat(info *lineInfo) bool {
	save := p.next
	open := false
	for p.peek().is("(", ",") || p.peek().among("working the over a") {
		open = open || p.peek().is("(")
		p.next++
	}
	if n := p.chartRepeatStitches(open); n != 0 {
		info.chartStitches = n
	}
	if info.chartStitches == 0 {
		p.next = save
		return false
	}
	if open {
		if p.accept(",") {
			p.accept("worked", "work", "working")
		}
		p.chartTimes(info)
		p.accept(")")
	}
	p.accept(",")
	p.chartTimes(info)
	p.accept("around", "across")
	return true
}

// chartRepeatStitches reads "10-st rep", or "12 sts, repeated to end" in brackets; 0 and nothing
// taken if that is not what follows.
func (p *parser) chartRepeatStitches(open bool) int {
	n := p.peek().number
	if p.peek().kind != tokenNumber || n < 1 || n > MaxNumber {
		return 0
	}
	switch {
	case p.ahead(1).is("-") && p.ahead(2).is("st", "stitch") && p.ahead(3).is("rep", "repeat"):
		p.next += 4
	case open && p.ahead(1).stitches() && p.ahead(2).is(",") && (p.ahead(3).is("repeated") ||
		p.ahead(4).among("repeats repeat reps times")):
		p.next += 3
		if p.accept("repeated") {
			p.accept("to")
			p.accept("end", "around", "across")
		}
	default:
		return 0
	}
	return int(n)
}

// chartTimes reads "6 times", "6 repeats".
func (p *parser) chartTimes(info *lineInfo) {
	end, _ := p.sizedEnd(p.next)
	if end == 0 || !p.tokens[end].among("times repeats reps repeat") {
		return
	}
	if n := p.number(); n != nil {
		info.chartTimes = without(n)
	}
	p.next++
	p.accept("around", "across")
}

// chartKept reports whether a chart that is named at a place, "Chart A once more", is one of which it
// was said before how many stitches its repeat takes: it keeps the count again.
func (p *parser) chartKept(at span) bool {
	if !p.acceptAll("once", "more") && !p.accept("again") && !p.endsAt(p.next) {
		return false
	}
	name := p.found.source[at.start:p.tokens[p.chartNameEnd(at)].end]
	for i := range p.piece.Lines {
		l := &p.piece.Lines[i]
		if l.info.chartStitches > 0 && strings.Contains(p.found.source[l.info.at.start:l.info.at.end], name) {
			return true
		}
	}
	return false
}

// chartNameEnd is the last token of a chart that is named at a place.
func (p *parser) chartNameEnd(at span) int {
	i := p.next - 1
	for p.tokens[i].start > at.start && p.tokens[i].is("once", "more", "again") {
		i--
	}
	return i
}

// chartRows makes a direction so many rows of a chart, or those of its label.
func (p *parser) chartRows(info *lineInfo, at span, labelled []rowRange, rows int) bool {
	p.reading(at.to(p.last()), "the chart is not in the text: read as if it kept the count of stitches")
	info.kind, info.ranges, info.afresh = lineEven, labelled, false
	if labelled == nil {
		info.counts = []int{rows}
	}
	return true
}

// chartFits compares the stitches with what the repeats of a chart take.
func (r *runner) chartFits(l *Line) {
	if over := l.info.chartOver; over != nil && r.known && !r.quiet {
		if n := int64(at(over, r.size)); n != r.now.total() {
			r.fault(KindMistake, ReasonClaim, l.info.at, int(n-r.now.total()), "the chart is worked on "+stitches(int(n))+", and there are "+
				strconv.Itoa(int(r.now.total())))
		}
	}
	each := int64(l.info.chartStitches)
	if each == 0 || !r.known || r.quiet {
		return
	}
	total := r.now.total()
	switch {
	case l.info.chartTimes != nil:
		if n := int64(at(l.info.chartTimes, r.size)); n*each != total {
			r.fault(KindMistake, ReasonUneven, l.info.at, int(total-n*each), strconv.Itoa(int(n))+" repeats of "+stitches(int(each))+" are "+
				strconv.Itoa(int(n*each))+", and there are "+strconv.Itoa(int(total)))
		}
	case total%each != 0:
		r.fault(KindMistake, ReasonUneven, l.info.at, int(total%each), "the repeat of the chart takes "+stitches(int(each))+", and there are "+
			strconv.Itoa(int(total)))
	}
}
