package pattern

import "strings"

// askUnsure makes questions of mistakes of which the text does not show what is wrong: a repeat without a beginning, a bracket
// without an end or a number of times, what takes no stitch and is worked up to a place, rows that are written below, a list of
// other sizes where one or two lists are all that tells how many there are. given says that the question tells it.
func (p *Piece) askUnsure(found []Finding, given bool) {
	for i := range found {
		g := &found[i]
		if g.Kind != KindMistake {
			continue
		}
		if asked := p.unsureOf(g, given); asked != "" {
			g.Kind, g.Description = KindQuestion, asked+" "+g.Description
		}
	}
}

// unsureOf is what has to be asked about a mistake, "" where the text shows what is wrong.
func (p *Piece) unsureOf(g *Finding, given bool) string {
	switch g.Reason {
	case ReasonNoStar:
		if strings.HasPrefix(g.Description, "no star") {
			return "where does the repeat begin?"
		}
	case ReasonOpenBracket:
		if strings.Contains(g.Description, "the end of the row") && !oftenSaid(p.restOfLine(g)) {
			return "where does it end, and how often is it worked?"
		}
	case ReasonNever:
		if strings.HasPrefix(g.Description, "it takes no stitch") {
			return "what is worked up to there?"
		}
	case ReasonNoRow:
		if rest := p.restOfLine(g); strings.Contains(rest, "below") || strings.Contains(rest, "following rows") {
			return "are the rows below meant?"
		}
	case ReasonSizes:
		if !given && strings.Contains(g.Description, " numbers for ") && p.listsOfSizes() < 3 {
			return "for which sizes?"
		}
	}
	return ""
}

// restOfLine is the text of a line from where something was found in it.
func (p *Piece) restOfLine(g *Finding) string {
	n := p.lineAt(g.at)
	if n < 0 || int(g.at.start) >= len(p.source) {
		return ""
	}
	at := p.Lines[n].info.at
	return strings.ToLower(p.source[min(g.at.start, at.end):at.end])
}

// oftenSaid reports whether a text says how often something is worked.
func oftenSaid(text string) bool {
	for _, word := range [...]string{"times", "twice", "once", "thrice", " x ", "rep"} {
		if strings.Contains(text, word) {
			return true
		}
	}
	return false
}

// listsOfSizes is how many lines have a list with a number for each size.
func (p *Piece) listsOfSizes() int {
	n := 0
	for i := range p.Lines {
		l := &p.Lines[i]
		n += bit(len(l.ClaimedStitches) == p.SizeCount) + bit(len(l.info.counts) == p.SizeCount) + bit(len(l.info.until) == p.SizeCount)
		if f := factsOf(l); f.graded {
			n++
		}
		n += 3 * bit(l.info.forSizes != 0)
	}
	if strings.Contains(strings.ToLower(p.source), "size") {
		n += 3
	}
	return n
}
