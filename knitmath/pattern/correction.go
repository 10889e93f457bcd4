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
}

// candidate is a change that may make a finding go.
type candidate struct {
	at   span
	put  string
	says string
	row  int // the line of the row that it mends, to be knit by the machine; -1 for none

	balanced bool // with it the row is the same from both ends
	written  bool // it puts in rows that were only referred to
	rougher  int  // by how much less evenly the numbers of the sizes grow with it
	alike    bool // its repeat takes as many stitches as those of rows beside it
	far      int  // by how much a number of the work differs
	twins    int  // how many more numbers of its line have a like one with it
	left     int  // how many mistakes and questions are left with it
}

// correct looks for corrections of what was found, as long as there is charge to spare: for
// all mistakes in turn, then for the questions. Of those that help the best are offered.
func (c *corrector) correct() {
	found := c.worked.Findings
	pending, good := make([][]candidate, len(found)), make([][]candidate, len(found))
	for i := range found {
		if c.spare <= 0 || c.ctx.Err() != nil {
			break
		}
		if pending[i] = c.candidates(&found[i]); len(pending[i]) > maxTried {
			pending[i] = pending[i][:maxTried]
		}
	}
	for _, kind := range [...]Kind{KindMistake, KindQuestion} {
		for k := range maxTried {
			for i := range found {
				if f := &found[i]; f.Kind == kind && k < len(pending[i]) && c.spare > 0 && c.ctx.Err() == nil {
					if q := pending[i][k]; c.works(f, &q) {
						if n := c.piece.lineAt(q.at); n >= 0 {
							q.twins = c.twinned(&q, n)
						}
						good[i] = append(good[i], q)
					}
				}
			}
		}
	}
	for i := range found {
		c.offer(&found[i], good[i])
	}
}

// offer notes the best of the changes that help, each of them once.
func (c *corrector) offer(f *Finding, good []candidate) {
	sort.SliceStable(good, func(i, k int) bool { return good[i].before(&good[k]) })
	for i := range good {
		q := good[i].correction(c.piece.source)
		if len(f.Corrections) < maxCorrections && !slices.Contains(f.Corrections, q) {
			f.Corrections = append(f.Corrections, q)
		}
	}
}

// before reports whether a change is likelier than another: it leaves less to be mended, makes
// the row the same from both ends, or the numbers of the sizes grow more evenly.
func (q *candidate) before(other *candidate) bool {
	switch {
	case q.left != other.left:
		return q.left < other.left
	case q.balanced != other.balanced:
		return q.balanced
	case q.alike != other.alike:
		return q.alike
	case q.rougher != other.rougher:
		return q.rougher < other.rougher
	case q.twins != other.twins:
		return q.twins > other.twins
	}
	return q.far <= 2 && other.far > 2
}

// correction is a candidate that was tried.
func (q *candidate) correction(source string) Correction {
	return Correction{LineNumber: int(q.at.line), ColumnNumber: int(q.at.column), Text: source[q.at.start:q.at.end],
		Replacement: q.put, Description: q.says}
}

// chargeRead is what reading so many bytes anew is charged, chargesPerStep of them a
// step: five bytes a step.
const chargeRead = chargesPerStep / 5

// works reports whether a text with a change no longer has the finding, and has none
// that it did not have before.
func (c *corrector) works(f *Finding, q *candidate) bool {
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
	for i := range worked.Findings {
		if worked.Findings[i].Kind != KindReading {
			q.left++
		}
	}
	before := c.worked.Findings
	if q.written {
		before, f = alongside(before, q.at.start, strings.Count(q.put, "\n"), f)
	}
	return worked.MoreCount == 0 && onlyWithout(before, worked.Findings, f)
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

// onlyWithout reports whether the mistakes and questions found after a change are some of
// those before it, in no more sizes, and that one of before is not among them.
func onlyWithout(before, after []Finding, gone *Finding) bool {
	left := map[foundAt][]*Finding{}
	for i := range before {
		if f := &before[i]; f != gone && f.Kind != KindReading {
			at := foundAt{f.Reason, f.LineNumber}
			left[at] = append(left[at], f)
		}
	}
	for i := range after {
		f := &after[i]
		if f.Kind == KindReading {
			continue
		}
		at := foundAt{f.Reason, f.LineNumber}
		k := slices.IndexFunc(left[at], func(b *Finding) bool { return among(f.SizeNumbers, b.SizeNumbers) })
		if k < 0 {
			return false
		}
		left[at] = slices.Delete(left[at], k, k+1)
	}
	return true
}

// among reports whether sizes are among others, none being all.
func among(some, others []int) bool {
	if len(others) == 0 {
		return true
	}
	return len(some) > 0 && !slices.ContainsFunc(some, func(n int) bool { return !slices.Contains(others, n) })
}
