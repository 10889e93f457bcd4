package pattern

import "strings"

// standsAlone reports whether a single word fills a line of its own after an empty one, and rows come
// below it: "steps" is a heading.
func (p *parser) standsAlone() bool {
	i := p.next
	if i < 1 || p.tokens[i-1].kind != tokenNewline || p.tokens[i-1].number < 2 || p.tokens[i+1].kind != tokenNewline {
		return false
	}
	said := p.found.source[p.tokens[i].start:p.tokens[i].end]
	return (len(said) > 3 || len(said) == 3 && strings.ToUpper(said) == said) && p.labelEnd(i+2) != 0
}

// ofHeading reads "of the eyelet band", "of Section 2" after rows by their numbers, where that is the
// heading of rows that were written before: they are those rows. It takes nothing if it is not.
func (p *parser) ofHeading(info *lineInfo) bool {
	if !p.peek().is("of", "from", "in") || info.ranges == nil {
		return false
	}
	i := p.next + 1
	if p.tokens[i].is("the") {
		i++
	}
	end := i
	for end < i+4 && (p.tokens[end].kind == tokenWord || p.tokens[end].kind == tokenNumber) && !p.tokens[end].is("then", "and") &&
		!p.oftenAt(end) {
		end++
	}
	if end == i {
		return false
	}
	name := folded(joined(p.found.source[p.tokens[i].start:p.tokens[end-1].end]))
	for n := len(p.piece.Lines) - 1; n >= 0; n-- {
		p.looked++
		if l := &p.piece.Lines[n]; l.info.kind == linePassed && p.endsWithHeading(l, name) {
			lines := p.numberedAfter(n, info.ranges)
			if lines == nil {
				return false
			}
			p.next = end
			info.lines, info.ranges, info.afresh = lines, nil, true
			return true
		}
	}
	return false
}

// oftenAt reports whether how often is said at token i.
func (p *parser) oftenAt(i int) bool {
	if p.tokens[i].among("once twice another until for a") {
		return true
	}
	return p.timesAt(i)
}

// endsWithHeading reports whether the last line of what was passed over is a heading of this name, or
// begins with it: "Section 2: eyelets".
func (p *parser) endsWithHeading(l *Line, name string) bool {
	lines := strings.Split(strings.TrimSpace(p.found.source[l.info.at.start:l.info.at.end]), "\n")
	rest, ok := strings.CutPrefix(folded(joined(strings.Trim(lines[len(lines)-1], "#*_ "))), name)
	return ok && (rest == "" || strings.ContainsAny(rest[:1], ":-,.("))
}

// numberedAfter are the lines of rows by their numbers among those that stand together after a line;
// nil if one of them is not written there.
func (p *parser) numberedAfter(n int, ranges []rowRange) []int16 {
	var lines []int16
	for _, number := range numbersOf(ranges) {
		found := -1
		for k := n + 1; k < len(p.piece.Lines) && p.piece.Lines[k].numbered() && found < 0; k++ {
			p.looked++
			for _, q := range p.piece.Lines[k].info.ranges {
				if q.first <= int32(number) && int32(number) <= q.last {
					found = k
				}
			}
		}
		if found < 0 || len(lines) >= maxNamed {
			return nil
		}
		lines = append(lines, int16(found))
	}
	return lines
}

// maxNamed is the most rows that are named by their heading.
const maxNamed = 200
