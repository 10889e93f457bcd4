package pattern

import (
	"context"
	"slices"
	"sort"
	"strings"

	"example.com/knitmath/knitmath/report"
)

// A Correction is a change of the text that makes a finding go. It was tried: with it
// the text was read and worked anew, the finding was gone and none had come; a row was
// also knit by the machine, to the count that the text claims.
type Correction struct {
	// LineNumber and ColumnNumber are where it begins, both from 1, in characters.
	LineNumber, ColumnNumber int
	// Text is what stands there, "" where something has only to be put in; Replacement
	// is what should.
	Text, Replacement string
	// Description is the change in words: "62 instead of 60".
	Description string
}

const (
	// maxCorrections is the most that are offered for a finding.
	maxCorrections = 3
	// maxTried is the most that are tried for one: what comes after a dozen likely
	// ones is no better than a guess.
	maxTried = 12
)

// corrector tries changes of a text that has been worked. It does not look into the
// walking of rows: it asks the room itself with the text changed, as its writer would.
type corrector struct {
	ctx    context.Context
	own    map[string]meaning
	sizes  int // as they were asked for
	start  Start
	piece  *Piece
	worked *Worked
	spare  int // charge that is left for trying
	room   *room
	asked  map[changed]bool // whether it helps
	good   []candidate      // those that help
}

// candidate is a change that may make a finding go.
type candidate struct {
	at   span
	put  string
	says string
	row  int // the line of the row that it mends, to be knit by the machine; -1 for none

	other    bool  // it puts a stitch in the place of one of another kind
	balanced int   // how far the row is the same from both ends with it
	written  bool  // it puts in rows that were only referred to
	rougher  int   // by how much less evenly the numbers of the sizes grow with it
	alike    bool  // its repeat takes as many stitches as those of rows beside it
	far      int   // by how much a number of the work differs
	twins    int   // how many more numbers of its line have a like one with it
	gone     []int // which mistakes and questions are gone with it, by their index
}

// correct looks for corrections of what was found, as long as there is charge to spare: for
// all mistakes in turn, then for the questions. Each change is tried once, whatever it is tried for;
// of those that make a finding go the best are offered.
func (c *corrector) correct() {
	found := c.worked.Findings
	pending := make([][]candidate, len(found))
	for i := range found {
		if c.spare <= 0 || c.ctx.Err() != nil {
			break
		}
		if pending[i] = c.candidates(&found[i]); len(pending[i]) > maxTried {
			pending[i] = pending[i][:maxTried]
		}
	}
	c.tryAll(pending, KindMistake, 0, likelyMost)
	for i := range found {
		if n := c.piece.lineAt(found[i].at); n >= 0 && found[i].Kind == KindMistake && !c.wellMended(i) {
			for _, q := range c.anyNumber(&found[i], n) {
				c.try(&q)
			}
		}
	}
	c.tryAll(pending, KindMistake, likelyMost, maxTried)
	c.tryAll(pending, KindQuestion, 0, maxTried)
	sort.SliceStable(c.good, func(i, k int) bool { return c.good[i].before(&c.good[k]) })
	for i := range found {
		c.offer(i)
	}
}

// tryAll tries some of the changes for all mistakes, or all questions, in turn.
func (c *corrector) tryAll(pending [][]candidate, kind Kind, from, to int) {
	for k := from; k < to; k++ {
		for i := range pending {
			if c.worked.Findings[i].Kind == kind && k < len(pending[i]) {
				c.try(&pending[i][k])
			}
		}
	}
}

// try tries a change, unless it has been tried before, and keeps it if it helps.
func (c *corrector) try(q *candidate) {
	change := changed{q.at.start, q.at.end, q.put}
	if c.asked[change] || c.spare <= 0 || c.ctx.Err() != nil {
		return
	}
	if c.asked == nil {
		c.asked = map[changed]bool{}
	}
	c.asked[change] = true
	if !c.works(q) {
		return
	}
	if n := c.piece.lineAt(q.at); n >= 0 {
		q.twins = c.twinned(q, n)
	}
	c.good = append(c.good, *q)
}

// changed is a change of the text.
type changed struct {
	start, end int32
	put        string
}

// wellMended reports whether a change is known that makes a mistake go, and another with it if there
// are several.
func (c *corrector) wellMended(i int) bool {
	mistakes := 0
	for k := range c.worked.Findings {
		if c.worked.Findings[k].Kind == KindMistake {
			mistakes++
		}
	}
	return slices.ContainsFunc(c.good, func(q candidate) bool {
		return slices.Contains(q.gone, i) && len(q.gone) >= min(mistakes, 2)
	})
}

// offer notes the best of the changes that make a finding go.
func (c *corrector) offer(i int) {
	f := &c.worked.Findings[i]
	for k := range c.good {
		if q := &c.good[k]; len(f.Corrections) < maxCorrections && slices.Contains(q.gone, i) {
			f.Corrections = append(f.Corrections, q.correction(c.piece.source))
		}
	}
}

// before reports whether a change is likelier than another. It makes more go that was found, so that
// the whole text after it agrees; it changes a number or a stitch that is wanting rather than one that
// stands there; it makes the row the same from both ends, or its repeat like those beside it; its number
// is off by two at most, as one that is typed wrong; the numbers of the sizes grow more evenly, or the
// line has the number once more.
func (q *candidate) before(other *candidate) bool {
	switch {
	case len(q.gone) != len(other.gone):
		return len(q.gone) > len(other.gone)
	case q.other != other.other:
		return other.other
	case q.balanced != other.balanced:
		return q.balanced > other.balanced
	case q.alike != other.alike:
		return q.alike
	case (q.far > 2) != (other.far > 2):
		return other.far > 2
	case q.rougher != other.rougher:
		return q.rougher < other.rougher
	case q.twins != other.twins:
		return q.twins > other.twins
	}
	return q.at.end > q.at.start && other.at.end == other.at.start
}

// correction is a candidate that was tried.
func (q *candidate) correction(source string) Correction {
	return Correction{LineNumber: int(q.at.line), ColumnNumber: int(q.at.column), Text: source[q.at.start:q.at.end],
		Replacement: q.put, Description: q.says}
}

// chargeRead is what reading so many bytes anew is charged, chargesPerStep of them a
// step: five bytes a step.
const chargeRead = chargesPerStep / 5

// works reports whether a text with a change no longer has something that was found, and has
// nothing that it did not have before.
func (c *corrector) works(q *candidate) bool {
	text := c.piece.source[:q.at.start] + q.put + c.piece.source[q.at.end:]
	c.spare -= chargeRead * len(text)
	if len(text) > MaxTextBytes || c.spare <= 0 {
		return false
	}
	if q.row >= 0 && !c.knits(q) {
		return false
	}
	c.room.lines, c.room.steps = slices.Grow(c.room.lines[:0], len(c.piece.Lines)), slices.Grow(c.room.steps[:0], c.room.stepCount)
	began := len(c.start.Counts) > 0
	piece := c.room.read(text, parser{own: c.own, sizes: c.sizes, began: began, given: began})
	if piece.SizeCount != c.piece.SizeCount || !q.written && !alike(c.piece, piece) {
		return false
	}
	worked, err := c.room.work(c.ctx, piece, c.start, c.spare)
	if err != nil {
		return false
	}
	c.spare -= worked.charge
	before := c.worked.Findings
	if q.written {
		before = alongside(before, q.at.start, strings.Count(q.put, "\n"))
	}
	gone, ok := goneOf(before, worked.Findings)
	q.gone = gone
	return ok && worked.MoreCount == 0 && len(gone) > 0
}

// alike reports whether two texts have the same lines, but for those that could
// not be read in the first and can be in the second.
func alike(a, b *Piece) bool {
	if len(a.Lines) != len(b.Lines) {
		return false
	}
	for i := range a.Lines {
		x, y := &a.Lines[i], &b.Lines[i]
		if x.info.kind != y.info.kind && x.info.kind != lineUnread {
			return false
		}
	}
	return true
}

// foundAt is where and why something was found.
type foundAt struct {
	reason report.Reason
	line   int
}

// goneOf are, by their index, the mistakes and questions of before that are not found after a change;
// false if anything else is found then, or something in more sizes.
func goneOf(before, after []Finding) ([]int, bool) {
	left := map[foundAt][]int{}
	for i := range before {
		if f := &before[i]; f.Kind != KindReading {
			at := foundAt{f.Reason, f.LineNumber}
			left[at] = append(left[at], i)
		}
	}
	for i := range after {
		f := &after[i]
		if f.Kind == KindReading {
			continue
		}
		at := foundAt{f.Reason, f.LineNumber}
		k := slices.IndexFunc(left[at], func(b int) bool { return among(f.SizeNumbers, before[b].SizeNumbers) })
		if k < 0 {
			return nil, false
		}
		left[at] = slices.Delete(left[at], k, k+1)
	}
	var gone []int
	for _, those := range left {
		gone = append(gone, those...)
	}
	return gone, true
}

// among reports whether sizes are among others, none being all.
func among(some, others []int) bool {
	if len(others) == 0 {
		return true
	}
	return len(some) > 0 && !slices.ContainsFunc(some, func(n int) bool { return !slices.Contains(others, n) })
}
