package shaping

import (
	"strconv"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/report"
)

// plan works every stretch out and writes the answer.
func (s shapedSide) plan(in ShapedSideInput, st, rw gauge.Density) ShapedSide {
	out := ShapedSide{HeightRows: s.rows, NarrowestStitches: s.start, WidestStitches: s.start, side: s, unit: in.DisplayUnit}
	var wanting *float64 // of the stretch that wants most
	for _, x := range s.stretches {
		out.NarrowestStitches, out.WidestStitches = min(out.NarrowestStitches, x.end), max(out.WidestStitches, x.end)
		stretch := SideStretch{FirstRowNumber: x.below + 1, LastRowNumber: x.below + x.rows, StartStitches: x.start, EndStitches: x.end}
		var w shapedRows
		if !x.straight() {
			w = x.work()
			out.GreatestDepartureStitches = max(out.GreatestDepartureStitches, x.departure(w))
			out.LeastDepartureStitches = max(out.LeastDepartureStitches, w.least)
			out.Effort += w.effort()
			if w.wanting != nil && (wanting == nil || *wanting < *w.wanting) {
				wanting = w.wanting
			}
			stretch.ShapingRows, stretch.RowChangeStitches, stretch.Intervals = x.k, w.change, w.intervals
			stretch.RightSideRow, stretch.WrongSideRow = w.rightSide, w.wrongSide
		}
		out.Stretches = append(out.Stretches, stretch)
		out.Rows = append(out.Rows, w.rows...)
		out.work = append(out.work, w)
	}
	if s.apart {
		out.Notices = append(out.Notices, report.Notice{Reason: JoinKeptEven, Field: "points",
			Description: "shaping rows would be neighbours across a point; one row beside such a point is kept even"})
	}
	if wanting != nil {
		out.Notices = append(out.Notices, manyRunsNotice(*wanting))
	}
	out.Notices = append(out.Notices, s.senseNotices(out.Rows, out.HeightRows, "points", "points", "points")...)
	if in.Gauge != nil {
		height := rw.SizeCm(s.rows)
		out.HeightCm = &height
	}
	if in.WithOutline {
		out.Outline = s.edgesOutline(out.Rows, st, rw)
	}
	return out
}

// Directions write every stretch as a pattern would.
func (o ShapedSide) Directions() []string {
	return append(o.side.firstRowDirection(o.Rows),
		shapedDirections(o.work, o.HeightRows, o.side.round, o.side.tellsSides(o.Rows))...)
}

// Summary says the answer in words.
func (o ShapedSide) Summary() string {
	rows := noun(o.side.round) + "s"
	s := "From " + o.countWords() + " over " + report.CountOf(o.HeightRows, rows)
	if o.HeightCm != nil {
		s += " (" + o.unit.Size(*o.HeightCm) + ")"
	}
	return s + ": " + report.CountOf(len(o.Rows), "shaping "+rows) + ", " +
		departureWords(o.GreatestDepartureStitches, "the straight lines between the points") + "."
}

// countWords is "110 to 98, kept for 10 rows, to 112 stitches": the counts from
// point to point, neighbouring stretches that keep one told together.
func (o ShapedSide) countWords() string {
	last := len(o.Stretches) - 1 // the last that shapes: its count ends the list
	for o.Stretches[last].ShapingRows == 0 {
		last--
	}
	s, kept := strconv.Itoa(o.side.start), 0
	keep := func() {
		if kept > 0 {
			s += ", kept for " + report.CountOf(kept, noun(o.side.round)+"s") + ","
		}
		kept = 0
	}
	for i, x := range o.Stretches {
		if x.ShapingRows == 0 {
			kept += x.LastRowNumber - x.FirstRowNumber + 1
			continue
		}
		keep()
		s += " to " + strconv.Itoa(x.EndStitches)
		if i == last {
			s += " stitches"
		}
	}
	keep()
	return s
}
