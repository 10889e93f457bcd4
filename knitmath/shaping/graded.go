package shaping

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/schedule"
	"example.com/knitmath/knitmath/stitch"
)

// MaxTaperSizes is the most sizes of a taper: twice what is usually printed.
const MaxTaperSizes = 20

// A TaperSize is one of the sizes of a taper.
type TaperSize struct {
	Name          string
	StartStitches int
	EndStitches   int
	HeightRows    *int
	HeightCm      *float64
}

// GradedTaperInput asks for a straight taper in several sizes. It mirrors
// PlanGradedTaperRequest.
type GradedTaperInput struct {
	Sizes              []TaperSize
	Gauge              *gauge.Gauge
	Construction       stitch.Construction
	Edges              ShapedEdges
	EdgeChangeStitches *int
	EdgeStitches       *int
	RowChoice          RowChoice
	FirstSide          stitch.Side
	EvenBeforeRows     *int
	EvenAfterRows      *int
	ToleranceStitches  *float64
	DisplayUnit        measure.DisplayUnit
	WithOutline        bool
}

// A SizedTaper is the taper of one size.
type SizedTaper struct {
	Name                      string
	StartStitches             int
	EndStitches               int
	ShapingRows               int
	HeightRows                int
	FirstShapingRowNumber     *int // nil where the width is kept
	Intervals                 schedule.Schedule
	EvenAfterRows             int
	GreatestDepartureStitches float64
	LeastDepartureStitches    float64
	Effort                    int
	HeightCm                  *float64
	StartWidthCm              *float64
	EndWidthCm                *float64
}

// GradedTaper is the answer to GradedTaperInput.
type GradedTaper struct {
	RowChangeStitches int
	Runs              []schedule.GradedRun
	RightSideRow      stitch.Instruction
	// OppositeRow is the shaping row of the sizes that go the other way than the first that is
	// shaped; nil where none does.
	OppositeRow *stitch.Instruction
	Sizes       []SizedTaper
	Effort      int
	Notices     []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	t    taper // what all sizes share
	unit measure.DisplayUnit
	// Where not all sizes are shaped alike: those that are, each told for itself.
	parts []gradedPart
	among func(words []string) []string // puts the words of a part among those of all sizes
}

// PlanGradedTaper finds one schedule of shaping rows for all sizes, of at most two
// runs of intervals with the order of runs the same in all, so that a pattern says it
// in one sentence: the form of least effort ([schedule.Grade]) of those in which every
// size departs from its straight line by no more than ToleranceStitches at each edge, 1 if
// it is nil, beyond what the nearest choice of rows does; or by half as much again where the
// first row and the last are kept even by it. Where that is not so in every
// size, one of the runs may be of two intervals in alternation. Where a size still has no
// schedule that near it takes the nearest there is, and a notice says so.
//
// Everything else is as in [PlanTaper]. Flat, right-side rows alone shape: a
// sentence for all sizes has one shaping row.
//
// There must be from 1 to 20 sizes. Where some narrow and others widen or keep their width, each
// kind is planned, and told, for itself.
//
// Source: own derivation.
func PlanGradedTaper(in GradedTaperInput) (GradedTaper, error) {
	var c fault.Checks
	tapers, st, rw := vetGradedTaper(&c, in, in.would)
	if err := c.Err(); err != nil {
		return GradedTaper{}, err
	}
	out := in.inParts(tapers)
	for i := range out.Sizes {
		x := &out.Sizes[i]
		x.Name = in.Sizes[i].Name
		if in.Gauge != nil {
			h, a, b := rw.SizeCm(x.HeightRows), st.SizeCm(x.StartStitches), st.SizeCm(x.EndStitches)
			x.HeightCm, x.StartWidthCm, x.EndWidthCm = &h, &a, &b
		}
	}
	out.Notices = append(out.Notices, out.endNotices()...)
	if in.WithOutline {
		out.Outline = out.outline(tapers, st, rw)
	}
	return out, nil
}

// grade finds the schedule in rows, and says in which sizes, counted from 0, it lies
// farther from the line than was asked: in as few as can be. A run alternates only where
// that makes them fewer. The tapers are returned with the slots that were used.
func grade(tapers []taper) (g schedule.Graded, used []taper, sizesBeyond []int) {
	var beyond beyond
	sizes := make([]slotted, len(tapers))
	for i, t := range tapers {
		sizes[i] = t.slotted()
	}
	for _, kind := range []schedule.GradedForm{schedule.ShortFirst, schedule.LongFirst, schedule.AlternatingFirst, schedule.AlternatingLast} {
		if kind == schedule.AlternatingFirst && len(beyond.sizes) == 0 {
			break
		}
		h, slots, far, ok := gradeInOrder(sizes, kind)
		if !ok {
			continue // sizes of which none may alternate with another
		}
		if used == nil || far.less(beyond) || !beyond.less(far) && h.Easier(g) {
			g, used, beyond = h, slots, far
		}
	}
	g = g.InRows(used[0].step)
	for i, t := range used {
		g.Firsts[i] = t.first + t.step*g.Firsts[i]
	}
	return g, used, beyond.sizes
}

// beyond are the sizes in which a form lies farther from the line than was asked, and by
// how much at an edge, in quarters of a stitch: less is not seen.
type beyond struct {
	sizes    []int
	quarters int
}

func (b beyond) less(c beyond) bool {
	return len(b.sizes) < len(c.sizes) || len(b.sizes) == len(c.sizes) && b.quarters < c.quarters
}

// gradeInOrder finds the schedule of a form, in slots.
func gradeInOrder(sizes []slotted, kind schedule.GradedForm) (g schedule.Graded, used []taper, far beyond, ok bool) {
	asked := make([]schedule.Size, len(sizes))
	for i, s := range sizes {
		s, over := s.inForm(kind)
		if over > 0 {
			far.sizes = append(far.sizes, i)
			far.quarters = max(far.quarters, int(4*s.taper.atEdge(over)))
		}
		used, asked[i] = append(used, s.taper), s.size
	}
	g, ok = schedule.Grade(asked, kind)
	return g, used, far, ok
}

// worked are the runs without an interval in a size that does without the run.
func worked(runs []schedule.GradedRun) []schedule.GradedRun {
	for _, r := range runs {
		for i, times := range r.Times {
			if times > 0 {
				continue
			}
			r.EveryRows[i] = 0
			if r.AlternateRows != nil {
				r.AlternateRows[i] = 0
			}
		}
	}
	return runs
}

// sized is the taper of a size whose first shaping row and intervals are known.
func (t taper) sized(first int, intervals schedule.Schedule) SizedTaper {
	last := first
	for row := range intervals.From(first) {
		last = row
	}
	departure := t.departs(intervals.From(first))
	var number *int
	if t.k > 0 {
		number = &first
	}
	return SizedTaper{
		StartStitches: t.start, EndStitches: t.end, ShapingRows: t.k, HeightRows: t.rows, FirstShapingRowNumber: number,
		Intervals: intervals, EvenAfterRows: t.rows - last, GreatestDepartureStitches: departure,
		LeastDepartureStitches: min(departure, t.departs(slices.Values(t.rowNumbers(t.slotLine().Nearest())))),
		Effort:                 1 + intervals.Effort(),
	}
}
