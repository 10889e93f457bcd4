package pattern

import (
	"slices"
	"strconv"
	"strings"
)

// doubt notes that what comes after a finding is in doubt. Where sizes are not known a claim beside them is no claim of all.
func (f *footing) doubt(g *Finding, of int) {
	d := doubtAt{from: max(g.at.start, g.from), line: f.within(g.at), row: int32(g.LineNumber), of: of, asks: -1}
	if g.Reason == ReasonAmbiguous {
		d.asks = g.at.start
	}
	if g.Reason == ReasonSizesUnknown && d.line >= 0 {
		d.from = max(d.from, f.piece.Lines[d.line].info.at.end)
	}
	f.doubts = append(f.doubts, d)
}

// doubtOf is the place in doubt that a finding stands on, nil if it stands on what was read.
func (f *footing) doubtOf(g *Finding) *doubtAt {
	on, line := f.footingOf(g), f.within(g.at)
	if on == onNothing {
		return nil
	}
	from := max(g.at.start, g.from)
	if on == onHeld {
		from = g.at.start // it may be found at the end of the text
	}
	for i := range f.doubts {
		d := &f.doubts[i]
		if d.asks == g.at.start || !d.mayConcern(on, line) {
			continue // it was tried in all ways that are asked about
		}
		if g.Reason == ReasonClaim && line >= 0 && d.line == line && d.from > g.at.end {
			continue // what stands after a count does not change it
		}
		if f.besideDoubt(d, g, on, line) || f.afterDoubt(d, on, line, from) {
			return d
		}
	}
	return nil
}

// mayConcern reports whether a doubt may be about what a finding of a line stands on.
func (d *doubtAt) mayConcern(on, line int) bool {
	return d.of == onNothing || d.of == on || d.of == onNumbers && (on == onDefined || d.line == line)
}

// besideDoubt reports whether a finding lies in the line or sentence of a place in doubt, or in a line that works that one again.
func (f *footing) besideDoubt(d *doubtAt, g *Finding, on, line int) bool {
	if d.line >= 0 && d.line == line || line >= 0 && f.goesOnAt(line, d.from) || f.sameSentence(g.at.start, d.from) {
		return true
	}
	again := on == onCount && line >= 0 && d.line >= 0 && d.line < line && f.repeats(line, d.line)
	return again && f.piece.Lines[d.line].ClaimedStitches == nil
}

// afterDoubt reports whether a finding comes after a place in doubt, and the text has not said again what it stands on.
func (f *footing) afterDoubt(d *doubtAt, on, line int, from int32) bool {
	switch on {
	case onRow:
		return false
	case onSizes:
		return d.from < f.works
	}
	return d.from < from && !f.saidBetween(on, d.from, from) || on == onNumbers && d.from > from && line >= 0 && f.sameBlock(line, d.line)
}

// goesOnAt reports whether a line has not ended where what could not be read begins, "k3, *k2tog, yo; rep from * flurble".
func (f *footing) goesOnAt(line int, at int32) bool {
	end := f.piece.Lines[line].info.at.end
	return at >= end && at-end < 4 && f.piece.Lines[line].ClaimedStitches == nil && f.piece.source[end-1] != '.' &&
		strings.Trim(f.piece.source[end:at], " \n,;") == ""
}

// sameSentence reports whether two places, the first before the second, are of one sentence and one line.
func (f *footing) sameSentence(from, to int32) bool {
	return from < to && to-from < 400 && !strings.ContainsAny(f.piece.source[from:to], "\n") &&
		!strings.Contains(f.piece.source[from:to], ". ")
}

// repeats reports whether a line works one before it again, which may be the one in doubt.
func (f *footing) repeats(line, doubt int) bool {
	info := &f.piece.Lines[line].info
	switch info.kind {
	case lineRepeat, lineShape, lineAgain:
	default:
		return false
	}
	if slices.Contains(info.lines, int16(doubt)) {
		return true
	}
	kind := f.piece.Lines[doubt].info.kind
	return (kind == lineRow || kind == lineUnread) && line-doubt <= max(2, info.last) && (info.last > 0 || info.ranges != nil)
}

// sameBlock reports whether nothing but rows with numbers lies between a line and a later one.
func (f *footing) sameBlock(line, later int) bool {
	for ; line < later; line++ {
		if !f.piece.Lines[line].numbered() {
			return false
		}
	}
	return line == later
}

// saidBetween reports whether the text says something again between two places.
func (f *footing) saidBetween(on int, from, to int32) bool {
	said := f.said[on]
	i, _ := slices.BinarySearch(said, from+1)
	return i < len(said) && (said[i] < to || said[i] == to && on == onNumbers)
}

// askDoubtful makes questions of the mistakes that stand on what could not be read. Each of them is in doubt itself, and so is
// what stands on it.
func (f *footing) askDoubtful(found []Finding) {
	if len(f.doubts) == 0 {
		return
	}
	order := make([]int, 0, len(found))
	for i := range found {
		order = append(order, i)
		for k := len(order) - 1; k > 0 && max(found[i].at.start, found[i].from) < max(found[order[k-1]].at.start, found[order[k-1]].from); k-- {
			order[k-1], order[k] = order[k], order[k-1]
		}
	}
	for _, i := range order {
		g := &found[i]
		if g.Kind != KindMistake {
			continue
		}
		d := f.doubtOf(g)
		if d == nil {
			continue
		}
		g.Kind, g.Corrections = KindQuestion, nil
		g.Description += ": or does what could not be read in line " + strconv.Itoa(int(d.row)) + " change that?"
		f.doubt(g, f.footingOf(g))
	}
}

// anyMistake reports whether something is wrong.
func anyMistake(found []Finding) bool {
	return slices.ContainsFunc(found, func(f Finding) bool { return f.Kind == KindMistake })
}
