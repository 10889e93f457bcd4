package pattern

import "example.com/knitmath/knitmath/stitch"

// wording is an abbreviation with its number as it stands in the text, on the way
// to a step: what is worked, but not yet how often or how far.
type wording struct {
	meaning
	step    Step
	from    span
	spelled string // the last word of it
	numbers []int  // nil where none was said
	alone   bool   // nothing of the row came before it
}

// spelledOut: "Knit." is a row by itself; "k." may be.
func (w *wording) spelledOut() bool {
	return w.spelled == "knit" || w.spelled == "purl" || w.spelled == "work"
}

// counted reports whether a number is written with it, as in "k5".
func (w *wording) counted() bool { return formOf(&w.step) != formBracketed }

// work reads one abbreviation, and how often or how far it is worked.
func (p *parser) work(alone bool) (Step, bool) {
	w := wording{from: p.peek().span, alone: alone}
	if !p.wording(&w) {
		return Step{}, false
	}
	if found, ok := p.fromCable(&w); found {
		w.step.Times, w.step.at = w.numbers, w.from.to(p.last())
		return w.step, ok
	}
	if w.plain() && w.numbers == nil && p.asTheyAre() {
		return Step{Name: "work", takes: 1, leaves: 1, RemainingStitches: []int{0}, at: w.from.to(p.last())}, true
	}
	if w.plain() && w.numbers == nil && p.partStitches() {
		return Step{Name: "work", takes: 1, leaves: 1, RemainingStitches: []int{0}, loose: true, at: w.from.to(p.last())}, true
	}
	p.acrossItsPart(&w)
	at := p.peek().span
	u, ok := p.upTo(w.numbers == nil)
	if !ok {
		return Step{}, false
	}
	w.step.at = w.from.to(p.last())
	switch {
	case u.last != nil || u.mark != nil:
		return p.upToStep(&w, u, at)
	case u.times != nil && u.exact:
		w.step.Times = u.times
		return w.step, true
	case u.times != nil:
		return p.timesStep(&w, u, at)
	}
	return p.onceStep(&w), true
}

// wording reads what is worked and its number.
func (p *parser) wording(w *wording) bool {
	var ok bool
	if w.meaning, w.numbers, ok = p.abbreviation(); !ok {
		return false
	}
	w.spelled = p.tokens[p.next-1].text
	at := p.next
	if w.name == "work" {
		p.fromChart()
	}
	w.step = Step{Operation: w.op, Name: w.name, takes: w.takes, leaves: w.leaves, Manner: w.manner}
	if w.counted() && !p.numberOf(w) {
		return false
	}
	p.pickedUpAnywhere(w)
	if w.numbers != nil {
		if w.numbers, ok = p.noun(&w.step, without(w.numbers)); !ok {
			return false
		}
	}
	if !p.qualified(&w.step) {
		return false
	}
	if w.numbers != nil && w.plain() {
		p.brought(&w.step, at)
	}
	if w.reading != "" {
		p.reading(w.from.to(p.last()), w.reading)
	}
	return true
}

// numberOf reads the number of what is worked, "5", "next 5", "the first st", where it was not
// written with the abbreviation. It is false if a number cannot be read.
func (p *parser) numberOf(w *wording) bool {
	if p.nextFew() {
		for !p.numberAhead() {
			p.next++
		}
	}
	switch {
	case w.numbers != nil:
	case p.oneStitch():
		w.numbers = one
	case p.numberAhead():
		w.numbers = p.number()
		return w.numbers != nil
	}
	return true
}

// pickedUpAnywhere makes a number of stitches that are picked up so many, wherever they come
// from.
func (p *parser) pickedUpAnywhere(w *wording) {
	if w.op != stitch.PickUp || w.numbers == nil || p.onlyRows {
		return
	}
	if last := p.last1(); p.peek().stitches() || last.text != "sts" && last.kind == tokenWord || last.is(")", "]") {
		w.step.Operation, w.step.Name, w.step.takes, w.step.leaves = 0, pickedUp, 0, 1
	}
}

// nextFew reports whether "next", of "k next 5 sts", stands before a number.
func (p *parser) nextFew() bool {
	if !p.peek().among("next foll following first centre center last the these over across all rem " +
		"remaining") {
		return false
	}
	if p.ahead(1).is("st") && p.peek().among("next foll following first last") {
		return false
	}
	i := p.next + 1
	for p.tokens[i-1].among("across over the all") &&
		p.tokens[i].among("the these next all first last rem remaining centre center") {
		i++
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && (p.ofPart(end) != 0 || p.tokens[i-1].is("rem", "remaining", "next") && p.endsClause(end))
}

// oneStitch passes over "the first st", "next st": one stitch.
func (p *parser) oneStitch() bool {
	i := p.next
	if p.tokens[i].is("the") {
		i++
	}
	if p.tokens[i].is("marked") && p.tokens[i+1].is("centre", "center", "central") {
		i++
	}
	if !p.tokens[i].among("next first last foll following marked centre center central same") ||
		!p.tokens[i+1].is("st", "stitch") {
		return false
	}
	p.next = i + 2
	return true
}

// plain reports whether stitches may be worked "as they are".
func (w *wording) plain() bool {
	return w.step.Operation == stitch.Knit || w.step.Operation == stitch.Purl || w.step.Name == "work"
}

// upToStep is the step until some stitches remain.
func (p *parser) upToStep(w *wording, u extent, at span) (Step, bool) {
	if p.inTurn && u.last != nil {
		s := w.step
		if s.Times = w.numbers; s.Times == nil {
			s.Times = one
		}
		s.RemainingStitches = u.last
		return s, true
	}
	if w.numbers != nil && !single(w.numbers, 1) && single(u.last, 0) && w.plain() &&
		len(p.sofar) > 0 && p.inside == 0 {
		s := w.step
		s.Times = w.numbers // "k2, p2 around" repeats the whole, or the last of it: see either
		return p.endedBy(Step{Steps: []Step{s}, RemainingStitches: toEnd, counted: true, at: s.at}), true
	}
	if w.numbers != nil && !single(w.numbers, 1) {
		p.ask(ReasonUnread, at, "a number of stitches and \"to ...\" exclude one another")
		return Step{}, false
	}
	s := w.step
	s.counted = w.numbers != nil
	s.RemainingStitches, s.BeforeMarkerStitches, s.loose, s.gap = u.last, u.mark, u.loose, u.gap
	return p.endedBy(s), true
}

// endedBy is a step to the end of a row, or one before ", end k1": then it is worked until that just remains.
func (p *parser) endedBy(s Step) Step {
	if s.ended = p.endingFollows(s.RemainingStitches); s.ended {
		s.RemainingStitches, s.toFit = nil, true
	}
	return s
}

// timesStep is the step worked a number of times: as a group, where it has a
// number of its own.
func (p *parser) timesStep(w *wording, u extent, at span) (Step, bool) {
	if u.more {
		p.ask(ReasonAmbiguous, at.to(p.last()),
			"is it worked once before these times? put brackets round it and write the whole number of times")
		return Step{}, false
	}
	s := w.step
	if !single(u.times, 1) {
		p.reading(s.at, "without brackets only the stitch just before is repeated")
	}
	s.Times = u.times
	if w.numbers != nil && !single(w.numbers, 1) || w.counted() {
		inner := s
		inner.Times = w.numbers
		if w.numbers == nil {
			inner.Times = one
		}
		return Step{Steps: []Step{inner}, Times: u.times, at: s.at}, true
	}
	s.Times = w.doubled(s.Times)
	return s, true
}

// onceStep is the step where nothing is said of how often: its number, or to the
// end of a row of which it is all, or one stitch.
func (p *parser) onceStep(w *wording) Step {
	s := w.step
	switch {
	case w.numbers != nil:
		s.Times = w.doubled(w.numbers)
		for p.morePickedUp(&s) {
			s.at = w.from.to(p.last())
		}
	case p.inEachStitch(w):
		s.RemainingStitches = []int{0}
	case p.wholeRowOf(w):
		s.RemainingStitches = []int{0}
		if !w.spelledOut() {
			p.reading(s.at, "alone in its row: to the end of it")
		}
	default:
		s.Times = w.doubled(one)
		if w.counted() && s.Name == "" && w.manner == 0 {
			p.reading(s.at, w.spelled+" without a number: one stitch")
		}
	}
	return s
}

// inEachStitch reports whether "inc in every st" has been read.
func (p *parser) inEachStitch(w *wording) bool {
	return (w.step.Operation == stitch.KFB || w.step.Operation == stitch.PFB) && p.tokens[max(p.next-2, 0)].is("every", "each")
}

// wholeRowOf reports whether a stitch without a number is all that its row has.
func (p *parser) wholeRowOf(w *wording) bool {
	return (w.spelledOut() || w.alone) && w.counted() && w.step.Operation != stitch.Slip && p.rowEnds()
}

// doubled are the workings of what is several by its name, such as yo2.
func (w *wording) doubled(numbers []int) []int {
	if w.times < 2 {
		return numbers
	}
	all := make([]int, len(numbers))
	for i, n := range numbers {
		all[i] = n * w.times
	}
	return all
}

// rowEnds reports whether nothing follows in the row.
func (p *parser) rowEnds() bool {
	if end := p.remarkEnd(p.next); end != 0 && p.endsAt(end) { // "Knit (13 rnds)."
		return true
	}
	if p.turnEnds(p.next) || p.markerLast(p.next) || p.peek().is(",") && p.besideEnd(p.next+1) != 0 {
		return true
	}
	t := p.peek()
	wraps, _ := p.wrapsClosedEnd(p.next + bit(t.among(", ; .")))
	switch {
	case wraps != 0, t.is(",", ";") && p.rowEndsAtComma():
		return true
	case t.is("."):
		return p.rowEndsAtStop()
	}
	return t.kind == tokenEnd || t.kind == tokenNewline || p.claimAhead() || p.meanwhileAt(p.next) || p.placedNext()
}

// rowEndsAtComma reports whether what follows a comma or a semicolon is no more of the row:
// "Knit, do not bind off", "Knit, then rep ...", or a row with its number.
func (p *parser) rowEndsAtComma() bool {
	then, after := p.ahead(1), p.ahead(2)
	return p.numberedAt(p.next+1) || then.is("do") && after.is("not") && p.peek().is(",") ||
		then.is("then") && after.is("rep", "repeat") && p.inside == 0
}

// rowEndsAtStop reports whether the full stop that comes next is the end of the row: after it a
// count, another row, a direction or a new line begins.
func (p *parser) rowEndsAtStop() bool {
	save := p.next
	p.next++
	t := p.peek()
	ends := p.claimAhead() || t.kind == tokenEnd || t.kind == tokenNewline || t.kind == tokenWord && p.startsLine() ||
		p.remarkEnd(p.next) != 0 || p.tellsNext() || // "Knit. (16 rnds)", "P. These 2 rows form the pattern"
		t.kind == tokenNumber && p.ordinalEnd(p.next) != 0 && p.labelEnd(p.next) != 0 // "Knit. 2nd row: ..."
	p.next = save
	return ends
}
