package pattern

// repeatUntil reads "until 76 sts rem", "to 40 sts", or a length.
func (p *parser) repeatUntil(info *lineInfo) bool {
	if p.untilTold(info) {
		return true
	}
	if !p.measureAhead(p.next+1) && (!p.peek().is("until", "till", "til") || !p.endingKnown()) {
		p.askTimes(info, p.peek().span)
		return true
	}
	info.open = true
	p.openLength()
	return true
}

// untilTold reads until when rows are worked, where the text or the stitches tell it: to a count, of all stitches, of those between
// markers or between turns, to so many rows or times, or until none is left to be worked. It takes nothing else.
func (p *parser) untilTold(info *lineInfo) bool {
	if p.untilBetween(info) {
		return true
	}
	if n := p.untilCount(); n != nil {
		info.until, info.untilTurned = n, p.turnedCount()
		return true
	}
	if p.untilRows(info) || p.untilTimes(info) {
		return true
	}
	end := p.allWorkedEnd(p.next)
	if end == 0 {
		return false
	}
	p.next, info.open, info.allWorked = end, true, true
	return true
}

// untilBetween reads "until there are 30 sts between markers", "until 13 gusset sts have been made", "until you have 11 sts for thumb".
func (p *parser) untilBetween(info *lineInfo) bool {
	save := p.next
	n, gusset := p.untilCount(), false
	if n == nil {
		n, gusset = p.untilPart()
	}
	for p.acceptAmong("lie lying for in of the each") {
	}
	gusset = p.accept("gusset", "thumb") || gusset
	for p.acceptAmong("gusset thumb have been made are on") {
	}
	if n != nil && (p.acceptEnd(p.betweenMarkers(p.next)) || gusset && p.clauseEnds()) {
		info.until, info.untilBetween = n, true
		return true
	}
	p.next = save
	return false
}

// betweenMarkers is the index after "between the two gusset markers" at token i; 0 if that is not what stands there.
func (p *parser) betweenMarkers(i int) int {
	if !p.acceptedAt(&i, "between", "btwn") {
		return 0
	}
	for p.acceptedAt(&i, "the", "two", "2", "gusset", "thumb", "both", "side") {
	}
	if !p.acceptedAt(&i, "markers", "m", "ms", "marker") {
		return 0
	}
	return i
}

// untilPart reads "until there are 13 gusset sts" and whether they are those of a gusset; nil, and nothing taken, if that is not
// what stands here.
func (p *parser) untilPart() (n []int, gusset bool) {
	save := p.next
	if !p.accept("until", "till", "til") {
		return nil, false
	}
	for p.acceptAmong("there are you have a total of") || p.peek().is("gusset", "thumb", "the") && p.tokens[p.next+1].among("gusset "+
		"thumb has measures contains") && p.accept("gusset", "thumb", "the") || p.accept("has", "contains") {
		gusset = gusset || p.tokens[p.next-1].is("gusset", "thumb")
	}
	if end, _ := p.sizedEnd(p.next); end != 0 && p.ofPart(end) != 0 {
		gusset = gusset || p.tokens[end].is("gusset", "thumb")
		n := p.number()
		p.next = p.ofPart(p.next) + 1
		return without(n), gusset
	}
	p.next = save
	return nil, false
}

// untilRows reads "until 10 rows have been worked in all", "until you have worked 10 rows".
func (p *parser) untilRows(info *lineInfo) bool {
	for i := p.next + 1; i < p.next+8 && !p.endsAt(i); i++ {
		end, _ := p.sizedEnd(i)
		if end == 0 {
			continue
		}
		ridges := p.tokens[end].is("ridge", "ridges") || p.tokens[end].is("garter") && p.tokens[end+1].is("ridges", "ridge")
		if !ridges && !p.tokens[end].row() && !(p.tokens[end].among("heel flap rib pattern patt garter") && p.tokens[end+1].row()) {
			return false
		}
		p.next = i
		n := p.number()
		if n == nil {
			return false
		}
		info.forRows, info.total = without(n), true
		if ridges { // two rows each
			info.forRows = timesEach2(info.forRows)
		}
		for !p.clauseEnds() || p.peek().is("(") {
			p.next++
			p.acceptEnd(p.rowsToldAt(p.next))
		}
		return true
	}
	return false
}

// timesEach2 are numbers doubled.
func timesEach2(numbers []int) []int {
	all := make([]int, len(numbers))
	for i, n := range numbers {
		all[i] = 2 * n
	}
	return all
}

// untilTimes reads "until they have been worked 20 times in all": the last working is among them.
func (p *parser) untilTimes(info *lineInfo) bool {
	for i := p.next + 1; i < p.next+12 && !p.endsAt(i); i++ {
		if !p.tokens[i].is("twice", "thrice", "once") && !p.timesAt(i) && !p.patternRepsAt(i) && !p.stripesInAllAt(i) {
			continue
		}
		save := p.next
		p.next = i
		n, more := p.timesOrReps()
		if n == nil {
			p.next = save
			return false
		}
		if !p.clauseEnds() && !p.peek().among("= - : (") {
			p.next = save
			p.askTimes(info, p.peek().span)
			return true
		}
		info.counts, info.total = n, !more
		return true
	}
	return false
}

// timesOrReps reads "5 times", "5 patt reps", and whether they are more than those that were worked.
func (p *parser) timesOrReps() ([]int, bool) {
	if !p.patternRepsAt(p.next) && !p.stripesInAllAt(p.next) {
		n, _, more := p.manyTimes()
		return n, more
	}
	n := p.number()
	if n == nil {
		return nil, false
	}
	if p.peek().kind == tokenWord && p.ahead(1).is("stripe", "stripes") {
		p.next += 2
	}
	for p.acceptAmong("patt pattern full complete reps repeats repetitions have has been are worked completed " +
		"done in all total") {
	}
	return without(n), false
}

// patternRepsAt reports whether "5 patt reps", "6 full repeats" stands at token i.
func (p *parser) patternRepsAt(i int) bool {
	i, _ = p.sizedEnd(i)
	if i == 0 {
		return false
	}
	for p.acceptedAt(&i, "patt", "pattern", "full", "complete") {
	}
	return p.tokens[i].is("reps", "repeats", "repetitions")
}

// untilCount reads "until 76 sts rem", "until there are 40 sts on needle", "to 40 sts";
// nil, and nothing taken, if no count is said.
func (p *parser) untilCount() []int {
	save := p.next
	if !p.acceptAmong("until to till til") {
		return nil
	}
	bare := false
	for p.accept(beforeCount...) {
		bare = bare || p.tokens[p.next-1].among("is equals reaches count number")
	}
	end, _ := p.sizedEnd(p.next)
	if end == 0 || !p.tokens[end].stitches() && !p.tokens[end].is("rem", "remain", "remains") && p.phraseEnd(end, countedOn) == 0 &&
		!(bare && p.clauseStopsAt(end)) || p.tokens[end+1].is("before", "from") {
		p.next = save
		return nil
	}
	n := p.number()
	if n == nil {
		p.next = save
		return nil
	}
	for p.acceptAny(countedOn) || p.accept(afterCount...) {
	}
	return without(n)
}

// beforeCount and afterCount are words on either side of a count that rows are worked until.
var (
	beforeCount = []string{"there", "are", "only", "you", "have", "a", "total", "of", "remain", "remains", "rem", "left", "with", "just",
		"the", "stitch", "count", "number", "sts", "stitches", "is", "equals", "reaches", "all", "needle", "on", "needles", "hold", "holds",
		"exactly", "your", "reached", "work", "again", "back", "to", "st", "reduced", "increased", "decreased", "down", "up", "been", "has"}
	afterCount = []string{"st", "sts", "stitch", "stitches", "rem", "remain", "remains", "remaining", "left", "total", "altogether", "have",
		"has", "been", "reached", "are"}
	countedOn = wordings("on the needle", "on the needles", "on needle", "on needles", "on your needle", "on your needles", "in total",
		"in all", "worked off")
)
