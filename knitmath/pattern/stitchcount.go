package pattern

// stitchCount reads "Stitch count: 38", "Total sts: 38 (42)", "Sts: 38", in a line of its own,
// as the count after the row or direction above it.
func (p *parser) stitchCount() bool {
	n := len(p.piece.Lines)
	for n > 0 && p.piece.Lines[n-1].info.kind == linePassed && !p.piece.Lines[n-1].info.heading {
		n--
	}
	if !p.began || n == 0 {
		return false
	}
	end := p.countLed(p.next)
	if end == 0 {
		return false
	}
	last := &p.piece.Lines[n-1]
	if last.info.kind == lineUnread || last.info.defined || len(last.ClaimedStitches) > 0 || len(last.ClaimedChangeStitches) > 0 {
		return false
	}
	save, found := p.next, p.found.mark()
	from := p.peek().span
	p.next = end
	numbers := p.number()
	p.accept("st", "sts", "stitches")
	if numbers == nil || !p.endsAt(p.next) {
		p.next = save
		p.found.rewind(found)
		return false
	}
	last.ClaimedStitches, last.info.claimAt = numbers, from.to(p.last())
	last.info.at = last.info.at.to(p.last())
	if last.Direction != "" {
		last.Direction = joined(p.found.source[last.info.at.start:last.info.at.end])
	}
	return true
}

// countLed is the index after "stitch count:" at token i, 0 if it does not stand there.
func (p *parser) countLed(i int) int {
	end := p.phraseEnd(i, countLeads)
	if end == 0 {
		return p.phraseEnd(i, countStays)
	}
	if p.tokens[end].is(":", "=", "-") {
		return end + 1
	}
	return 0
}

// countStays lead a count in without a colon.
var countStays = wordings("the stitch count stays at", "the stitch count remains at", "the stitch count remains",
	"the stitch count is now", "the stitch count is still", "the stitch count stays", "the count stays at", "the count remains at",
	"the count is now", "the count is still", "the count stays", "the count remains")

var countLeads = wordings("stitch count", "st count", "sts count", "total sts", "total stitches", "total stitch count",
	"stitches on needle", "sts on needle", "stitch total", "sts", "stitches", "number of sts", "number of stitches", "total number of sts")
