package shaping

import (
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// plan places the shaping rows of every stretch and writes the answer.
func (s shapedSide) plan(in ShapedSideInput, st, rw gauge.Density) ShapedSide {
	out := ShapedSide{HeightRows: s.rows, NarrowestStitches: s.start, WidestStitches: s.start, side: s, unit: in.DisplayUnit}
	for _, x := range s.stretches {
		out.NarrowestStitches, out.WidestStitches = min(out.NarrowestStitches, x.end), max(out.WidestStitches, x.end)
		stretch, shaped := x.plan()
		if !x.straight() {
			out.GreatestDepartureStitches = max(out.GreatestDepartureStitches,
				x.departure(x.shapingRowNumbers(), stretch.RowChangeStitches, 0, x.rows))
		}
		out.Stretches = append(out.Stretches, stretch)
		out.ShapingRows = append(out.ShapingRows, shaped...)
		out.directions = append(out.directions, stretch.directions(shaped, s.round)...)
	}
	if s.apart {
		out.Notices = append(out.Notices, report.Notice{Reason: "JOIN_KEPT_PLAIN", Field: "points",
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

// plan places the shaping rows of one stretch, numbered through the piece.
func (x stretch) plan() (SideStretch, []ShapingRow) {
	out := SideStretch{FirstRowNumber: x.below + 1, LastRowNumber: x.below + x.rows, StartStitches: x.start, EndStitches: x.end}
	if x.straight() {
		return out, nil
	}
	out.ShapingRowCount, out.RowChangeStitches = x.k, x.perRow()
	if x.end < x.start {
		out.RowChangeStitches = -x.perRow()
	}
	rows, count := x.shapingRowNumbers(), x.start
	shaped := make([]ShapingRow, len(rows))
	for i, r := range rows {
		side := stitch.RightSide
		if !x.round {
			side = x.side(r)
		}
		row := &out.RightSideRow
		if side == stitch.WrongSide {
			row = &out.WrongSideRow
		}
		if *row == nil {
			*row = &stitch.Instruction{Row: x.shapingRow(side), StartStitches: count, EndStitches: count + out.RowChangeStitches}
		}
		count += out.RowChangeStitches
		shaped[i] = ShapingRow{x.below + r, side, count}
		if i > 0 {
			out.Intervals = appendInterval(out.Intervals, r-rows[i-1])
		}
	}
	return out, shaped
}

// directions writes one stretch as a pattern would.
func (o SideStretch) directions(shaped []ShapingRow, round bool) []string {
	noun, change := "row", "Increase"
	if round {
		noun = "round"
	}
	if o.RowChangeStitches < 0 {
		change = "Decrease"
	}
	span := strings.ToUpper(noun[:1]) + noun[1:] + "s " + strconv.Itoa(o.FirstRowNumber) + " to " + strconv.Itoa(o.LastRowNumber)
	if o.FirstRowNumber == o.LastRowNumber {
		span = strings.ToUpper(noun[:1]) + noun[1:] + " " + strconv.Itoa(o.FirstRowNumber)
	}
	if o.ShapingRowCount == 0 {
		return []string{span + ": work plain, " + report.CountOf(o.EndStitches, "stitches") + "."}
	}
	d := []string{span + ": " + strings.ToLower(change) + " from " + strconv.Itoa(o.StartStitches) + " to " +
		report.CountOf(o.EndStitches, "stitches") + "."}
	if o.RightSideRow != nil {
		d = append(d, shapingDirection(change, noun, stitch.RightSide, round, o.RightSideRow))
	}
	if o.WrongSideRow != nil {
		d = append(d, shapingDirection(change, noun, stitch.WrongSide, round, o.WrongSideRow))
	}
	work := "Work the " + strings.ToLower(change) + " " + noun + " once, as " + noun + " " + strconv.Itoa(shaped[0].RowNumber)
	if len(o.Intervals) > 0 {
		work += ", then " + intervalWords(o.Intervals, shaped, noun)
	}
	work += ": " + report.CountOf(o.EndStitches, "stitches")
	switch plain := o.LastRowNumber - shaped[len(shaped)-1].RowNumber; {
	case plain == 1:
		work += ", the last " + noun + " plain"
	case plain > 1:
		work += ", the last " + report.CountOf(plain, noun+"s") + " plain"
	}
	return append(d, work+".")
}

// Summary says the answer in words.
func (o ShapedSide) Summary() string {
	noun := "rows"
	if o.side.round {
		noun = "rounds"
	}
	counts := []string{strconv.Itoa(o.side.start)}
	for _, x := range o.Stretches {
		counts = append(counts, strconv.Itoa(x.EndStitches))
	}
	s := "From " + strings.Join(counts, " to ") + " stitches over " + report.CountOf(o.HeightRows, noun)
	if o.HeightCm != nil {
		s += " (" + o.unit.Size(*o.HeightCm) + ")"
	}
	return s + ": " + report.CountOf(len(o.ShapingRows), "shaping "+noun) + ", never more than " +
		measure.Decimal(o.GreatestDepartureStitches, 2) + " stitches from the straight lines between the points."
}

// Directions write every stretch as a pattern would.
func (o ShapedSide) Directions() []string { return o.directions }

// Sources says where the figures come from.
func (ShapedSide) Sources() []report.Source {
	return []report.Source{
		{Figure: "places of the shaping rows", Citation: "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30",
			Status: report.SourceStatusOwnDerivation},
		{Figure: "two rows at least across a point", Citation: "own derivation: the smallest interval between right-side rows",
			Status: report.SourceStatusOwnDerivation},
		{Figure: "leans of the increases and decreases", Citation: "common practice", Status: report.SourceStatusCommonPractice},
	}
}
