package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Start is what is on the needle before the first row.
type Start struct {
	// Counts are the stitches, one number for all sizes or one for each; empty
	// when the text begins with its cast-on.
	Counts []int
	// Construction is how the piece is worked; flat unless said.
	Construction stitch.Construction
	// Side is that of the first row; the right side unless said.
	Side stitch.Side
}

// inTheRound reports whether the piece is not turned.
func (s Start) inTheRound() bool { return s.Construction == stitch.InTheRound }

// side is the side of the first row.
func (s Start) side() stitch.Side {
	if s.Side == stitch.WrongSide {
		return stitch.WrongSide
	}
	return stitch.RightSide
}

// LineCounts is what a line comes to when it is worked for the first time, one
// number for each size; -1 where it is not known.
type LineCounts struct {
	// Side is the side it is worked on in the first size.
	Side stitch.Side
	// StartStitches and EndStitches are the stitches on both needles before and after.
	StartStitches, EndStitches []int
	// TakenStitches and LeftStitches are the stitches a row takes off the left
	// needle and leaves on the right one.
	TakenStitches, LeftStitches []int
	// UnworkedStitches are the stitches left over at the end of a row that is not
	// turned short, MissingStitches those that it needs and does not find.
	UnworkedStitches, MissingStitches []int
}

// Worked is a text that has been worked in every size.
type Worked struct {
	// Lines goes with the lines of the piece.
	Lines []LineCounts
	// EndStitches are the stitches at the end, -1 where they are not known.
	EndStitches []int
	// WorkedRows are the rows worked in each size, those left open not counted.
	WorkedRows []int
	// RowsOpen: the text leaves some number of rows open.
	RowsOpen bool
	// Findings are what was found on reading and working, in the order of the text.
	Findings []Finding
	// MoreCount is how many findings are not listed.
	MoreCount int
}

// Work works a text in all its sizes. The work is in proportion to the rows
// worked times the sizes, not to the stitches.
//
// After a mistake the counts go on as the writer must have meant them: by the
// count that the text claims, or else by the smallest correction; and where a
// count and a claim disagree, the next rows show which of them was meant. So one
// mistake is found once.
func (p *Piece) Work(start Start) Worked {
	w := Worked{Lines: make([]LineCounts, len(p.Lines)), EndStitches: make([]int, p.SizeCount), WorkedRows: make([]int, p.SizeCount)}
	numbers := make([]int, 6*len(p.Lines)*p.SizeCount)
	for i := range numbers {
		numbers[i] = -1
	}
	for i := range w.Lines {
		l := &w.Lines[i]
		for _, list := range []*[]int{&l.StartStitches, &l.EndStitches, &l.TakenStitches, &l.LeftStitches, &l.UnworkedStitches,
			&l.MissingStitches} {
			*list, numbers = numbers[:p.SizeCount:p.SizeCount], numbers[p.SizeCount:]
		}
	}
	found := p.found
	found.list = slices.Clone(found.list)
	found.at = nil
	e := &engine{piece: p, start: start, out: &w, found: &found, details: map[int]*detail{}, hands: handWork}
	for size := range p.SizeCount {
		e.size(size)
	}
	e.describe()
	slices.SortStableFunc(found.list, func(a, b Finding) int {
		if a.LineNumber != b.LineNumber {
			return a.LineNumber - b.LineNumber
		}
		return a.ColumnNumber - b.ColumnNumber
	})
	w.Findings, w.MoreCount = found.list, found.more
	return w
}

// Findings are what was found on reading alone, in the order of the text.
func (p *Piece) Findings() (list []Finding, more int) { return p.found.list, p.found.more }

// engine works the sizes one after the other and joins what they find.
type engine struct {
	piece   *Piece
	start   Start
	out     *Worked
	found   *findings
	details map[int]*detail // of findings, by their index
	hands   int             // stitches the machine may still work
}

// detail is what a finding says of each size.
type detail struct {
	texts   []string
	differs bool // the sizes have numbers
}

// said reports whether a finding of this place and reason is there for this size
// already, so that it need not be worded again.
func (r *runner) said(reason report.Reason, at span) bool {
	i, known := r.found.at[findingKey{at.start, reason}]
	if !known {
		return r.quiet
	}
	n := r.found.list[i].SizeNumbers
	return r.quiet || len(n) > 0 && n[len(n)-1] == r.size+1
}

// fault adds a finding about a size. difference is the number of stitches it is
// off by, 0 for none; text says it in words.
func (r *runner) fault(kind Kind, reason report.Reason, at span, difference int, text string) {
	if r.quiet {
		return
	}
	i, isNew := r.found.place(kind, reason, at, func() string { return "" })
	if i < 0 {
		return
	}
	f := &r.found.list[i]
	n := len(f.SizeNumbers)
	if n > 0 && f.SizeNumbers[n-1] == r.size+1 {
		return
	}
	d := r.details[i]
	switch {
	case isNew:
		d = &detail{}
		r.details[i] = d
		f.WorkedRowNumber = r.rows + 1
	case d == nil:
		return // found on reading already
	}
	f.SizeNumbers = append(f.SizeNumbers, r.size+1)
	f.DifferenceStitches = append(f.DifferenceStitches, difference)
	d.texts = append(d.texts, text)
	d.differs = d.differs || difference != 0
}

// describe puts together what the sizes said: once if they all say the same.
func (e *engine) describe() {
	for i, d := range e.details {
		f := &e.found.list[i]
		if !d.differs {
			f.DifferenceStitches = nil
		}
		same := true
		for _, t := range d.texts {
			same = same && t == d.texts[0]
		}
		if same {
			f.Description = d.texts[0]
		} else {
			for k, t := range d.texts {
				if k > 0 {
					f.Description += "; "
				}
				f.Description += "size " + strconv.Itoa(f.SizeNumbers[k]) + ": " + t
			}
		}
		if len(f.SizeNumbers) == e.piece.SizeCount && len(f.DifferenceStitches) == 0 {
			f.SizeNumbers = nil
		}
	}
}
