package pattern

import "strings"

// onNothing asks about a line that needs stitches where those before it have bound off the last, drawn the yarn through them, or put
// all aside, and the text does not say that others are worked now. What cannot be read, a heading, or any words but those
// with which a piece is finished, may say so.
func (r *runner) onNothing(i int) {
	if !r.known || r.now.total() != 0 || r.quiet || r.aside > 0 || r.unsureHeld {
		return
	}
	if before := r.emptiedBefore(i); before < 0 || !r.needsStitches(i, r.piece.Lines[before].info.kind == lineHold) {
		return
	}
	r.fault(KindQuestion, ReasonUnread, r.piece.Lines[i].info.at, 0, "no stitch is on the needle: which stitches are these?")
	r.known = false
}

// needsStitches reports whether a line works stitches that are on the needle, and brings none. If all were put aside just before, a
// row or a change that fits those is asked about too: they were put aside to wait.
func (r *runner) needsStitches(i int, waiting bool) bool {
	l := &r.piece.Lines[i]
	info := &l.info
	switch info.kind {
	case lineHold:
		return info.counts == nil
	case lineRow:
		p := r.profile(i)
		if info.every != everyNone || l.bringsFirst() || !waiting && (p.turn != 0 || p.rest.takes > 0 || p.rest.leaves > 0) {
			return false // of a number that is missing more is said
		}
	case lineShape:
		return waiting
	case lineEven, linePlain, lineOff, lineRepeat:
	default:
		return false
	}
	return info.only == nil && !info.asPart && info.rest == nil && !info.brings && !r.says(l, bringsOthers...)
}

// bringsOthers are words with which other stitches come to the needle, or another piece begins.
var bringsOthers = []string{"rejoin", "rejoining", "join", "held", "holder", "holders", "pick", "other", "second", "another",
	"graft", "kitchener"}

// emptiedBefore is the line before one that has left no stitch, where only words that finish a piece stand between; below 0 if
// that is not so.
func (r *runner) emptiedBefore(i int) int {
	lines, n := r.piece.Lines, i-1
	for n >= 0 && lines[n].info.kind == linePassed {
		n--
	}
	if n < 0 || lines[n].info.defined || !lines[n].info.isFor(r.size) {
		return -1
	}
	info := &lines[n].info
	switch info.kind {
	case lineCastOn, lineOff, lineRow, lineBeginning, lineHold, lineShape:
	default:
		return -1
	}
	if info.kind == lineOff && r.says(&lines[n], "edge") { // the yarn is drawn through an edge, and not through these
		return -1
	}
	if done, _ := r.finishedBetween(n, i); !done {
		return -1
	}
	return n
}

// finishedBetween reports whether the words between two lines only finish a piece, and whether the bare name of another part stands
// after them.
func (r *runner) finishedBetween(before, i int) (done, named bool) {
	source, from, to := r.piece.source, r.piece.Lines[before].info.at.end, r.piece.Lines[i].info.at.start
	for n := before + 1; n < i; n++ {
		if part := r.piece.Lines[n].info.part; part.end > part.start && part.start >= from && bareHeading(source[part.start:part.end]) {
			if !finishes(source[from:part.start]) {
				return false, false
			}
			from, named = part.end, true
		}
	}
	return finishes(source[from:max(from, to)]), named
}

// bareHeading reports whether a heading is a name and says nothing else.
func bareHeading(text string) bool {
	name := strings.TrimRight(text, ":. ")
	return !strings.ContainsAny(name, ".:;,()") && len(strings.Fields(name)) <= 3
}

// finishes reports whether words only finish a piece.
func finishes(words string) bool {
	if strings.TrimSpace(words) == "" {
		return true
	}
	for _, t := range scan(words) {
		if t.kind != tokenNewline && t.kind != tokenEnd && !t.among(". , ; and fasten off break cut the yarn leaving "+
			"a tail weave darn in ends all loosely securely tightly") {
			return false
		}
	}
	return true
}
