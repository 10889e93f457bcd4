package pattern

import (
	"context"
	"sort"

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

	noted bool // the runs of rows are wanted
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
	// StartStitches and EndStitches are the stitches on both needles before and after, without those
	// that are put aside.
	StartStitches, EndStitches []int
	// TakenStitches and LeftStitches are the stitches a row takes off the left
	// needle and leaves on the right one.
	TakenStitches, LeftStitches []int
	// UnworkedStitches are the stitches left over at the end of a row that is not
	// turned short, MissingStitches those that it needs and does not find.
	UnworkedStitches, MissingStitches []int

	firstRow, lastRow int   // of the piece, in the first size; 0 for none
	lastEnd           []int // after the last row of several that its label stands for; nil for one
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
	// MoreCount is how many mistakes and questions are not listed.
	MoreCount int

	runs   []RowRun
	unsaid int // readings not listed
	charge int // for all sizes

	rowsMeant map[rowsSaid][]int // the counts of rows that may be told
}

// Work works a text in all its sizes. The work is in proportion to the rows
// worked times the sizes, not to the stitches and not to the steps of a row; rows
// that change nothing are worked once, however often they are repeated.
//
// After a mistake the counts go on as the writer must have meant them: by the
// count that the text claims, or else by the smallest correction; and where a
// count and a claim disagree, the next rows show which of them was meant. So one
// mistake is found once.
func (p *Piece) Work(start Start) Worked {
	w, _ := new(room).work(context.Background(), p, start, maxCharge) // which has no end
	return w
}

// work is Work for a charge, which stops with the error of a context soon after its
// end.
func (in *room) work(ctx context.Context, p *Piece, start Start, charge int) (Worked, error) {
	in.counts = zeroed(in.counts, len(p.Lines))
	in.numbers = zeroed(in.numbers, 6*len(p.Lines)*p.SizeCount)
	w := Worked{Lines: in.counts, EndStitches: make([]int, p.SizeCount), WorkedRows: make([]int, p.SizeCount)}
	numbers := in.numbers
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
	found.list = append(in.found[:0], found.list...)
	found.at = nil
	e := in.newEngine(p, start, &w, &found)
	e.meter = meter{ctx: ctx, share: charge / max(p.SizeCount, 1)}
	if start.noted {
		e.journal = &journal{runs: make([]RowRun, 0, min(maxListedRuns, len(p.Lines)*p.SizeCount))}
	}
	for size := range p.SizeCount {
		e.size(size)
	}
	if start.noted {
		w.runs = e.journal.runs
	}
	if e.err != nil {
		return Worked{}, e.err
	}
	e.rowsToldAlike()
	e.describe()
	p.spotted(found.list)
	sort.SliceStable(found.list, func(i, j int) bool { // That of slices is 17 kB more of the program for each type it sorts.
		a, b := found.list[i], found.list[j]
		if a.LineNumber != b.LineNumber {
			return a.LineNumber < b.LineNumber
		}
		return a.ColumnNumber < b.ColumnNumber
	})
	in.found, in.engine = found.list, e
	w.Findings, w.MoreCount, w.unsaid, w.charge = found.list, found.more, found.unsaid, e.spent
	return w, nil
}

// Findings are what was found on reading alone, in the order of the text.
func (p *Piece) Findings() (list []Finding, more int) {
	return p.found.list, p.found.more + p.found.unsaid
}
