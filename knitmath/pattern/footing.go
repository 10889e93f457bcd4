package pattern

import (
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/stitch"
)

// What is found to be wrong stands on what was read before it. Where words there could not be read, or are asked about, they may
// have changed the count, the rows or the markers that it disagrees with: then it is asked about, and no mistake, up to where the
// text says again what was lost.

// footing is what the findings of a text stand on.
type footing struct {
	piece  *Piece
	doubts []doubtAt
	said   [footings][]int32 // where the text says each of them, in its order
	works  int32             // where its first row or direction begins
	fits   []bool            // the lines that work just so many stitches as there are
}

// doubtAt is a place whose words could not be read, or made no sense.
type doubtAt struct {
	from int32 // what comes after it is in doubt
	line int   // of the piece, -1 between its lines
	row  int32 // of the text
	of   int   // what is in doubt, onNothing for all
	asks int32 // where what is asked about may be read in several ways, -1 if nobody knows in which
}

// A finding stands on one of these.
const (
	onCount   = iota // how many stitches there are: a claim says it
	onNumbers        // which rows are written: a first row says it
	onSides          // which side comes next: a label says it
	onPiece          // markers, gaps, rows since it was begun, stars: a cast-on begins anew
	onHeld           // what was put aside: nothing says it
	onDefined        // the rows of a stitch pattern: nothing says them
	onSizes          // how many sizes there are, by what stands before the first row
	onRow            // the row alone
	footings
	onNothing // what is beyond the limits is so however the rest is read
)

// footingOf is what a finding stands on.
func (f *footing) footingOf(g *Finding) int {
	switch g.Reason {
	case ReasonTooLarge, ReasonTooMany:
		return onNothing
	case ReasonUnworked, ReasonMissing, ReasonUneven, ReasonClaim:
		i := f.within(g.at)
		if g.Reason == ReasonClaim && (i >= 0 && f.fits[i] || strings.HasPrefix(g.Description, "the stitches change by")) {
			return onRow
		}
		if i >= 0 && (f.piece.Lines[i].takesHeld() || f.picks(&f.piece.Lines[i])) || strings.Contains(g.Description, "put aside") {
			return onHeld
		}
		return onCount
	case ReasonRowNumber, ReasonNoRow:
		if strings.Contains(g.Description, "of the pattern") {
			return onDefined
		}
		return onNumbers
	case ReasonSide:
		return onSides
	case ReasonRows, ReasonMarker, ReasonNoMarker, ReasonHands, ReasonNoStar:
		return onPiece
	case ReasonSizes:
		return onSizes
	}
	return onRow
}

// takesHeld reports whether a line works, moves or takes up stitches that were put aside.
func (l *Line) takesHeld() bool {
	switch l.info.kind {
	case lineHold, lineTake:
		return true
	}
	return l.info.brings || l.info.joins || l.info.waiting != nil || l.bringsFirst()
}

// newFooting is that of a text of which so much was found; strange are words in it that nobody knows.
func newFooting(p *Piece, w *Worked, strange []span) *footing {
	f := &footing{piece: p, works: -1, fits: make([]bool, len(p.Lines))}
	taken := map[int]bool{}
	for i := range w.Findings {
		if g := &w.Findings[i]; g.Reason == ReasonCountTaken {
			taken[f.within(g.at)] = true
		}
	}
	castsOn := slices.ContainsFunc(p.Lines, func(l Line) bool { return l.info.kind == lineCastOn })
	for i := range p.Lines {
		l := &p.Lines[i]
		if f.works < 0 && (!castsOn || l.info.kind != linePassed && (l.info.kind != lineUnread || l.info.op == stitch.CastOn)) {
			f.works = l.info.at.start
		}
		f.note(l, &w.Lines[i])
		f.fits[i] = fitsByNumber(l, &w.Lines[i]) && (l.Label != "" || f.picks(l) || i == 0 || p.Lines[i-1].info.kind != lineUnread)
		if f.fits[i] && (!taken[i] || f.picks(l)) {
			f.said[onCount] = append(f.said[onCount], l.info.at.start)
		}
	}
	for i := range f.said {
		slices.Sort(f.said[i])
	}
	for i := range w.Findings {
		if g := &w.Findings[i]; g.Kind == KindQuestion && !f.changesNone(g) {
			f.doubt(g, onNothing)
		}
	}
	for _, at := range strange {
		f.doubts = append(f.doubts, doubtAt{from: at.start, line: f.within(at), row: at.line, of: onNumbers, asks: -1})
	}
	return f
}

// changesNone reports whether a question is about words that change nothing, whatever the answer: a note before the first row, how
// a rib ends, whether a wrap is there, a sentence that only tells how many stitches there are.
func (f *footing) changesNone(g *Finding) bool {
	if g.at.start < f.works && g.Reason != ReasonSizesUnknown || g.Reason == ReasonUneven || g.Reason == ReasonHands {
		return true
	}
	if words := strings.Fields(strings.ToLower(g.Text)); len(words) == 3 && (words[0] == "knit" || words[0] == "purl") &&
		(words[2] == "rows" || words[2] == "row" || words[2] == "rounds") {
		return true
	}
	i := f.within(g.at)
	return i >= 0 && f.piece.Lines[i].info.kind == lineUnread && strings.HasPrefix(strings.ToLower(f.piece.Lines[i].Direction), "there are ")
}

// note notes what a line says, where it came to that.
func (f *footing) note(l *Line, w *LineCounts) {
	info := &l.info
	at := info.at.start
	if info.defined {
		return
	}
	if info.only != nil || info.kind == lineHold {
		f.said[onCount] = append(f.said[onCount], at)
	}
	if info.spread && info.counts != nil || len(info.until) > 0 && comesTo(w, info.until) {
		f.said[onCount] = append(f.said[onCount], info.at.end)
	}
	if info.kind == lineHold || info.holdRest && info.rest != nil || putsAside(l.Steps) {
		f.said[onHeld] = append(f.said[onHeld], at)
	}
	if len(l.ClaimedStitches) > 0 && info.forSizes == 0 && comesTo(w, l.ClaimedStitches) {
		f.said[onCount] = append(f.said[onCount], max(at, info.claimAt.start))
	}
	if info.kind == lineCastOn && !info.adds {
		f.said[onCount] = append(f.said[onCount], at)
		f.said[onPiece] = append(f.said[onPiece], at)
		f.said[onNumbers] = append(f.said[onNumbers], at)
	}
	if info.side != stitch.SideUnspecified && info.kind == lineRow {
		f.said[onSides] = append(f.said[onSides], at)
	}
	if l.numbered() && info.ranges[0].first == 1 {
		f.said[onNumbers] = append(f.said[onNumbers], at)
	}
}

// comesTo reports whether a line came to a count in all sizes.
func comesTo(w *LineCounts, counts []int) bool {
	for size, n := range w.EndStitches {
		if want := at(counts, size); want >= 0 && n != want {
			return false
		}
	}
	return true
}

// picks reports whether a line picks stitches up or brings some.
func (f *footing) picks(l *Line) bool {
	at := l.info.at
	return l.info.kind == linePickUp || l.info.brings ||
		strings.Contains(strings.ToLower(f.piece.source[at.start:max(at.start, at.end)]), "pick up")
}

// fitsByNumber reports whether a row works just so many stitches as there are, all of them by number: it says the count as a claim
// does.
func fitsByNumber(l *Line, w *LineCounts) bool {
	if l.info.kind != linePickUp && l.info.kind != lineRow || l.info.defined || l.info.forSizes != 0 || stretches(l.Steps) {
		return false
	}
	for size, n := range w.StartStitches {
		if n < 0 && !l.info.brings || n > 0 && w.TakenStitches[size] != n && !l.info.brings || w.UnworkedStitches[size] > 0 ||
			w.MissingStitches[size] > 0 {
			return false
		}
	}
	return true
}

// stretches reports whether some of the steps go as far as there are stitches.
func stretches(steps []Step) bool {
	return slices.ContainsFunc(steps, func(s Step) bool { return s.stretch() || stretches(s.Steps) })
}

// within is the line of the piece that holds a stretch of the text, -1 for none.
func (f *footing) within(at span) int {
	if i := f.piece.lineAt(at); i >= 0 && at.start < f.piece.Lines[i].info.at.end {
		return i
	}
	return -1
}

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
		switch {
		case d.asks == g.at.start: // it was tried in all ways that are asked about
		case d.of != onNothing && d.of != on && (d.of != onNumbers || on != onDefined) && (d.of != onNumbers || d.line != line):
		case d.line >= 0 && d.line == line, line >= 0 && f.goesOnAt(line, d.from),
			f.sameSentence(g.at.start, d.from),
			on == onCount && line >= 0 && d.line >= 0 && d.line < line && f.repeats(line, d.line):
			return d
		case on == onRow:
		case on == onSizes:
			if d.from < f.works {
				return d
			}
		case d.from < from && !f.saidBetween(on, d.from, from),
			on == onNumbers && d.from > from && line >= 0 && f.sameBlock(line, d.line):
			return d
		}
	}
	return nil
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
