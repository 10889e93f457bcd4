package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// after is the needles after a row that was worked with an outcome.
func (h hand) after(p *profile, o outcome) hand {
	if p.turn != 0 {
		return hand{left: h.behind + o.leaves, behind: h.left - o.takes}
	}
	return hand{left: h.behind + o.leaves + h.left - o.takes}
}

// workOn works a row that was read on stitches that are known.
func (r *runner) workOn(i int, p *profile, claimed bool) {
	l := &r.piece.Lines[i]
	o := p.work(r.now.left)
	if r.other != nil && !r.quiet {
		r.settle(l, p, &o, claimed)
	}
	r.fitsOwed(p, &o)
	r.fitsOtherwise(p, &o)
	if r.round && r.side == stitch.WrongSide && p.turn == 0 && !r.flatAgain(l) {
		r.fault(KindMistake, ReasonHands, l.info.at, 0, "in the round a row on the wrong side must end with a turn")
	}
	if o.reason == "" {
		r.fitting(i, p, o, claimed)
		return
	}
	r.misfitting(i, p, o, claimed)
	r.finish(i, o)
}

// fitting goes on after a row for which the stitches are there.
func (r *runner) fitting(i int, p *profile, o outcome, claimed bool) {
	l := &r.piece.Lines[i]
	r.heelAt(i, p, o)
	before, onPart := r.now, r.turnsOnPart(l, p, o, claimed)
	r.now = before.after(p, o)
	r.astray = r.astray && (p.stretches || r.quiet)
	switch {
	case r.now.total() > stitch.MaxStitches:
		r.fault(KindMistake, ReasonTooLarge, l.info.at, 0, "more than 10000 stitches are on the needles")
		r.known = false
		return
	case r.now.left < 0:
		r.fault(KindMistake, ReasonMissing, l.info.at, int(r.now.left), "fewer than no stitches remain")
		r.known = false
		return
	}
	r.gapClosed(i, p, before, o)
	r.overGaps(i, p, before)
	r.dividedAtMarks(i, before)
	r.turnGap, r.crossed = -1, r.crossed && p.turn != 0
	if p.turn != 0 {
		r.turnGap = o.leaves
	}
	if r.round && p.turn != 0 && o.takes == before.left && before.behind > 0 && !r.facts[i].doubles {
		// It is turned at the beginning of the round, beyond which stitches lie. A German
		// turn is at home there: the stitch is made double in the row that follows.
		r.machine = nil
	} else {
		r.byHand(i, p, before, o.ops)
	}
	r.noteHoles(l, before)
	if claimed {
		r.compareItself(l)
	}
	r.finishOn(i, o, onPart)
	if claimed && !l.info.holdRest {
		r.compare(l, before)
	}
}

// compareItself compares what a row says of itself with what it has done.
func (r *runner) compareItself(l *Line) {
	r.compareBeyond(l)
	if l.numbered() {
		r.compareHoles(l, r.holesAll-r.holesRow)
	}
}

// misfitting goes on after a row that does not fit, as the writer must have meant
// it: by its claim, or by the smallest correction, or as it is written.
func (r *runner) misfitting(i int, p *profile, o outcome, claimed bool) {
	l := &r.piece.Lines[i]
	before := r.now
	r.spend(chargeMisfit)
	if r.blamedElsewhere(i, p, o, claimed) {
		return
	}
	r.misfits = true
	r.misfit(i, p, o)
	r.uneven = nil
	guess := r.guessed(i, p, o)
	if n, ok := r.claimAfter(l, before); ok && claimed {
		if n != guess {
			r.other = &hand{left: guess}
		}
		r.isOff(l, n-guess)
		r.now = hand{left: n}
	} else {
		r.astray = r.astray || claimed
		if o.reason == ReasonUneven {
			r.couldFit(&o)
		}
	}
	if r.now.left < 0 || r.now.left > stitch.MaxStitches {
		r.known, r.other = false, nil
	}
}

// blamedElsewhere goes on after a row that does not fit, read as it must have been meant, or of which another
// row is to blame.
func (r *runner) blamedElsewhere(i int, p *profile, o outcome, claimed bool) bool {
	return r.roundWithHeld(i, p, o, claimed) || r.leftByTurn(i, p, o, claimed) || r.oversBack(i, p, o, claimed) ||
		r.fromHeld(i, p, claimed) || r.overLeftOut(i, p, o, claimed) || r.acrossStart(i, p, o, claimed) ||
		r.aroundStart(i, p, o, claimed) || r.partRound(i, p, o, claimed) ||
		r.adaptedTo(&r.piece.Lines[i], p, o) || r.besidePicked(i, p, o, claimed) || r.leftByBindingOff(i, o, claimed)
}

// adaptedTo goes on after a row that is called with a change and works as many plain stitches
// around it as there are.
func (r *runner) adaptedTo(l *Line, p *profile, o outcome) bool {
	if !r.calling || !r.adapts(l, p, o) {
		return false
	}
	r.now, r.other, r.machine = hand{left: r.now.total() + o.leaves - o.takes}, nil, nil
	r.loseMarks()
	return true
}

// guessed goes on with the count that a row has by its smallest correction, or as it is written,
// which it returns.
func (r *runner) guessed(i int, p *profile, o outcome) int64 {
	end := r.now.after(p, o).total()
	guess := end
	if n, ok := r.corrected(i, p, o); ok {
		guess = r.now.total() + n
	}
	r.now, r.other, r.machine = hand{left: guess}, nil, nil
	if guess != end && end >= 0 {
		r.other = &hand{left: end}
	}
	return guess
}

// settle works a row on both counts where an earlier claim disagreed. If only
// the claimed one fits, it was the right one.
func (r *runner) settle(l *Line, p *profile, o *outcome, claimed bool) {
	alt := p.work(r.other.left)
	next := r.other.after(p, alt)
	good := alt.reason == "" && next.left >= 0
	mine := o.reason == ""
	if n, ok := r.claim(l); ok && claimed && good && mine {
		mine = r.now.after(p, *o).total() == n
		good = next.total() == n
	}
	switch {
	case good && !mine:
		r.now, r.other, r.machine, *o = *r.other, nil, nil, alt
		r.switched = true
	case good && mine:
		r.other = &next
	default:
		r.other = nil
	}
}

// compare compares the stitches after a row with its claim.
func (r *runner) compare(l *Line, before hand) {
	total := r.now.total()
	if r.repeating && l.info.kind != lineAgain {
		return
	}
	if len(l.ClaimedChangeStitches) > 0 {
		n, got := int64(at(l.ClaimedChangeStitches, r.size)), total-before.total()
		if got != n && r.wanted(ReasonClaim, l.info.changeAt) {
			r.fault(KindMistake, ReasonClaim, l.info.changeAt, int(n-got), "the stitches change by "+signed(got)+", not by "+signed(n))
		}
		// A change that is right says nothing of a count beside it.
		if got != n || len(l.ClaimedStitches) == 0 {
			return
		}
	}
	n, ok := r.claim(l)
	if !ok {
		if l.info.partial == nil || l.info.kind != lineRow { // of a row it is compared when its markers are known
			r.compareParts(l, before)
		}
		return
	}
	// The yarn overs of short rows are not usually counted.
	if n <= total && n >= total-r.overs {
		r.other, r.uneven, r.owed, r.astray = nil, nil, 0, false
		return
	}
	if r.rightOtherwise(l, n) {
		return
	}
	if r.wanted(ReasonClaim, l.info.claimAt) {
		r.fault(KindMistake, ReasonClaim, l.info.claimAt, int(n-total), "there are "+stitches(int(total))+", not "+strconv.Itoa(int(n)))
	}
	r.isOff(l, n-total)
	r.owed = 0
	r.doubt(n)
}

// rightOtherwise reports whether a claimed count is right though it is not that of the stitches at hand: the half of them that it
// names, or what they come to in another reading.
func (r *runner) rightOtherwise(l *Line, n int64) bool {
	return l.info.halfNamed && 2*n == r.now.total() || r.resolved(l, n)
}

// areThere says how many stitches there are: "3 are there".
func areThere(n int64) string { return strconv.Itoa(int(n)) + " " + report.Are(int(n)) + " there" }

func signed(n int64) string {
	if n > 0 {
		return "+" + strconv.Itoa(int(n))
	}
	return strconv.Itoa(int(n))
}

// misfit says why a row does not fit, and what would.
func (r *runner) misfit(i int, p *profile, o outcome) {
	at, prefix, said := r.misfitAt(i, &o)
	if said || !r.wanted(o.reason, at) {
		return
	}
	if o.reason == ReasonUneven {
		r.fault(KindMistake, ReasonUneven, at, int(o.short), prefix+r.unevenText(&o))
		return
	}
	have := r.now.left
	difference, takes, text := o.unworked, have-o.unworked, stitches(int(o.unworked))+" "+remain(o.unworked)
	if o.reason == ReasonMissing {
		difference, takes, text = -o.missing, have+o.missing, stitches(int(o.missing))+" missing"
	}
	least := ""
	if p.stretches {
		least = "at least "
	}
	text += ": the row takes " + least + strconv.Itoa(int(takes)) + ", " + areThere(have)
	if !p.stretches {
		text += r.wouldFit(i, difference, takes)
	}
	r.fault(KindMistake, o.reason, at, int(difference), prefix+text)
}

// misfitAt is the place at which it is said that a row does not fit, and what is said before it.
// A row that is written as another one is not found fault with where that has been.
func (r *runner) misfitAt(i int, o *outcome) (at span, prefix string, said bool) {
	at = r.facts[i].stepsAt
	if o.reason == ReasonUneven {
		at = o.step.at
	}
	l := &r.piece.Lines[i]
	if l.info.defined { // it is wrong where the pattern is worked
		return r.here, "the row " + strconv.Quote(shorten(l.Label, 30)) + " of the pattern: ", false
	}
	if own := l.info.at; at.start < own.start || at.end > own.end {
		return own, "", r.saidAt(o.reason, at) // the steps are those of another row, "As Row 1"
	}
	return at, "", false
}

// unevenText says by how much a repeat does not come out, and what would fit.
func (r *runner) unevenText(o *outcome) string {
	each, have := o.step.pass(r.size).takes, r.now.left
	if each <= 0 {
		return stitches(int(o.short)) + " over"
	}
	return "the repeat takes " + stitches(int(each)) + " and " + stitches(int(o.short)) + " " + remain(o.short) + " over: " +
		strconv.Itoa(int(have-o.short)) + " or " + strconv.Itoa(int(have-o.short+each)) + " would fit, " + multiple(have-o.short, each)
}

// wouldFit says how many more or fewer repeats of a row would fit that takes so many stitches.
func (r *runner) wouldFit(i int, difference, takes int64) string {
	g, times := r.repeat1(i)
	if g == nil {
		return ""
	}
	each := g.pass(r.size).takes
	switch n := difference / max(each, 1); {
	case each < 1:
		return ""
	case difference%each != 0 || times+n < 0:
		return "; the repeat takes " + stitches(int(each)) + " and fits " + multiple(takes, each)
	case n > 0:
		return "; " + report.CountOf(int(n), "more repeats") + " would fit exactly (" + multiple(takes, each) + ")"
	default:
		return "; " + report.CountOf(int(-n), "repeats") + " fewer would fit exactly (" + multiple(takes, each) + ")"
	}
}

// saidAt reports whether something was found at a place for that reason in this size.
func (r *runner) saidAt(reason report.Reason, at span) bool {
	i, known := r.found.at[findingKey{at.start, reason}]
	return known && slices.Contains(r.found.list[i].SizeNumbers, r.size+1)
}

func remain(n int64) string {
	if n == 1 {
		return "remains"
	}
	return "remain"
}

// multiple is "a multiple of 6 plus 1", which n is.
func multiple(n, each int64) string {
	text := "a multiple of " + strconv.Itoa(int(each))
	if rest := n % each; rest != 0 {
		text += " plus " + strconv.Itoa(int(rest))
	}
	return text
}

// repeat1 is the one repeat of a row with a number of times, and that number;
// nil if there are none or several.
func (r *runner) repeat1(i int) (*Step, int64) {
	found := r.facts[i].repeat
	if found == nil {
		return nil, 0
	}
	return found, int64(at(found.Times, r.size))
}

// corrected is the change of the stitch count if the one repeat of a row is
// worked as often as fits.
func (r *runner) corrected(i int, p *profile, o outcome) (int64, bool) {
	g, _ := r.repeat1(i)
	if g == nil || p.stretches || o.reason == ReasonUneven {
		return 0, false
	}
	each := g.pass(r.size)
	difference := o.unworked - o.missing
	if each.takes < 1 || difference%each.takes != 0 {
		return 0, false
	}
	n := difference / each.takes
	return o.leaves - o.takes + n*(each.leaves-each.takes), true
}
