package pattern

import (
	"slices"
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
	taken  map[int]bool      // the lines whose count was taken from what they say themselves
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
		return f.footingOfCount(g)
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

// footingOfCount is what a finding about a number of stitches stands on.
func (f *footing) footingOfCount(g *Finding) int {
	i := f.within(g.at)
	if g.Reason == ReasonUneven && f.taken[i] {
		return onRow // it does not come out by its own count
	}
	if g.Reason == ReasonClaim && (i >= 0 && f.fits[i] || strings.HasPrefix(g.Description, "the stitches change by")) {
		return onRow
	}
	if i >= 0 && (f.piece.Lines[i].takesHeld() || f.picks(&f.piece.Lines[i])) || strings.Contains(g.Description, "put aside") {
		return onHeld
	}
	return onCount
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
	f := &footing{piece: p, works: -1, fits: make([]bool, len(p.Lines)), taken: map[int]bool{}}
	for i := range w.Findings {
		if g := &w.Findings[i]; g.Reason == ReasonCountTaken {
			f.taken[f.within(g.at)] = true
		}
	}
	castsOn := slices.ContainsFunc(p.Lines, func(l Line) bool { return l.info.kind == lineCastOn })
	for i := range p.Lines {
		l := &p.Lines[i]
		if f.works < 0 && (!castsOn || l.mayWork()) {
			f.works = l.info.at.start
		}
		f.note(l, &w.Lines[i])
		f.fits[i] = fitsByNumber(l, &w.Lines[i]) && (l.Label != "" || f.picks(l) || i == 0 || p.Lines[i-1].info.kind != lineUnread)
		if f.fits[i] {
			f.say(onCount, l.info.at.start)
		}
	}
	for i := range f.said {
		slices.Sort(f.said[i])
	}
	f.doubtAll(w.Findings, strange)
	return f
}

// mayWork reports whether a line is a row or a direction, or may be one.
func (l *Line) mayWork() bool {
	return l.info.kind != linePassed && (l.info.kind != lineUnread || l.info.op == stitch.CastOn)
}

// doubtAll notes what is asked about, and strange words, as places in doubt.
func (f *footing) doubtAll(found []Finding, strange []span) {
	for i := range found {
		if g := &found[i]; g.Kind == KindQuestion && !f.changesNone(g) {
			f.doubt(g, onNothing)
		}
	}
	for _, at := range strange {
		f.doubts = append(f.doubts, doubtAt{from: at.start, line: f.within(at), row: at.line, of: onNumbers, asks: -1})
	}
}

// say notes that a place of the text says something again.
func (f *footing) say(what int, at int32) { f.said[what] = append(f.said[what], at) }

// changesNone reports whether a question is about words that change nothing, whatever the answer: a note before the first row, how
// a rib ends, whether a wrap is there, a sentence that only tells how many stitches there are.
func (f *footing) changesNone(g *Finding) bool {
	if g.at.start < f.works && g.Reason != ReasonSizesUnknown || g.Reason == ReasonUneven || g.Reason == ReasonHands {
		return true
	}
	if strings.HasPrefix(g.Description, "how are they grafted") {
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
	f.noteCount(l, w)
	if info.kind == lineHold || info.holdRest && info.rest != nil || putsAside(l.Steps) {
		f.say(onHeld, at)
	}
	if info.kind == lineCastOn && !info.adds {
		f.say(onPiece, at)
		f.say(onNumbers, at)
	}
	if info.side != stitch.SideUnspecified && info.kind == lineRow {
		f.say(onSides, at)
	}
	if l.numbered() && info.ranges[0].first == 1 {
		f.say(onNumbers, at)
	}
}

// noteCount notes that a line says how many stitches there are, where it came to that.
func (f *footing) noteCount(l *Line, w *LineCounts) {
	info := &l.info
	if info.only != nil || info.kind == lineHold || info.kind == lineCastOn && !info.adds {
		f.say(onCount, info.at.start)
	}
	if info.spread && info.counts != nil || len(info.until) > 0 && comesTo(w, info.until) {
		f.say(onCount, info.at.end)
	}
	if len(l.ClaimedStitches) > 0 && info.forSizes == 0 && comesTo(w, l.ClaimedStitches) {
		f.say(onCount, max(info.at.start, info.claimAt.start))
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
