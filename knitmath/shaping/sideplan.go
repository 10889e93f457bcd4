package shaping

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// plan works every stretch out and writes the answer.
func (s shapedSide) plan(in ShapedSideInput, st, rw gauge.Density) ShapedSide {
	out := ShapedSide{HeightRows: s.rows, NarrowestStitches: s.start, WidestStitches: s.start, side: s, unit: in.DisplayUnit}
	for _, x := range s.stretches {
		out.NarrowestStitches, out.WidestStitches = min(out.NarrowestStitches, x.end), max(out.WidestStitches, x.end)
		stretch := SideStretch{FirstRowNumber: x.below + 1, LastRowNumber: x.below + x.rows, StartStitches: x.start, EndStitches: x.end}
		var w shapedRows
		if !x.straight() {
			w = x.work()
			out.GreatestDepartureStitches = max(out.GreatestDepartureStitches, x.departure(w, 0, x.rows))
			stretch.ShapingRowCount, stretch.RowChangeStitches, stretch.Intervals = x.k, w.change, w.intervals
			stretch.RightSideRow, stretch.WrongSideRow = w.rightSide, w.wrongSide
		}
		out.Stretches = append(out.Stretches, stretch)
		out.ShapingRows = append(out.ShapingRows, w.rows...)
		out.work = append(out.work, w)
	}
	if s.apart {
		out.Notices = append(out.Notices, report.Notice{Reason: JoinKeptPlain, Field: "points",
			Description: "shaping rows would be neighbours across a point; one row beside each point is kept plain"})
	}
	if in.Gauge != nil {
		height := rw.SizeCm(s.rows)
		out.HeightCm = &height
	}
	if in.WithOutline {
		out.Outline = s.edgesOutline(out.ShapingRows, st, rw)
	}
	return out
}

// Directions write every stretch as a pattern would.
func (o ShapedSide) Directions() []string {
	var d []string
	for i, w := range o.work {
		d = append(d, o.Stretches[i].directions(w, o.side.round)...)
	}
	return d
}

// directions writes one stretch.
func (x SideStretch) directions(w shapedRows, round bool) []string {
	row := noun(round)
	span := strings.ToUpper(row[:1]) + row[1:] + "s " + strconv.Itoa(x.FirstRowNumber) + " to " + strconv.Itoa(x.LastRowNumber)
	if x.FirstRowNumber == x.LastRowNumber {
		span = strings.ToUpper(row[:1]) + row[1:] + " " + strconv.Itoa(x.FirstRowNumber)
	}
	if x.ShapingRowCount == 0 {
		return []string{span + ": work plain, " + report.CountOf(x.EndStitches, "stitches") + "."}
	}
	change := "increase"
	if w.change < 0 {
		change = "decrease"
	}
	d := []string{span + ": " + change + " from " + strconv.Itoa(x.StartStitches) + " to " +
		report.CountOf(x.EndStitches, "stitches") + "."}
	instructions, when := w.directions(round)
	switch plain := x.LastRowNumber - w.rows[len(w.rows)-1].RowNumber; {
	case plain == 1:
		when += ", the last " + row + " plain"
	case plain > 1:
		when += ", the last " + report.CountOf(plain, row+"s") + " plain"
	}
	return append(append(d, instructions...), when+".")
}

// Summary says the answer in words.
func (o ShapedSide) Summary() string {
	rows := noun(o.side.round) + "s"
	counts := []string{strconv.Itoa(o.side.start)}
	for _, x := range o.Stretches {
		counts = append(counts, strconv.Itoa(x.EndStitches))
	}
	s := "From " + strings.Join(counts, " to ") + " stitches over " + report.CountOf(o.HeightRows, rows)
	if o.HeightCm != nil {
		s += " (" + o.unit.Size(*o.HeightCm) + ")"
	}
	return s + ": " + report.CountOf(len(o.ShapingRows), "shaping "+rows) + ", never more than " +
		report.AmountOf(measure.Decimal(o.GreatestDepartureStitches, 2), "stitches") + " from the straight lines between the points."
}
