package shaping

import (
	"math"
	"sort"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/spread"
	"example.com/knitmath/knitmath/stitch"
)

// plan places the shaping rows and writes the answer.
func (t taper) plan(in TaperInput, st, rw gauge.Density) Taper {
	out := Taper{ShapingRowCount: t.k, RowChangeStitches: t.perRow(), HeightRows: t.rows, t: t, unit: in.DisplayUnit}
	if t.end < t.start {
		out.RowChangeStitches = -t.perRow()
	}
	rows := t.shapingRowNumbers()
	count := t.start
	out.ShapingRows = make([]ShapingRow, len(rows))
	for i, r := range rows {
		side := stitch.RightSide
		if !t.round {
			side = t.side(r)
		}
		if side == stitch.RightSide && out.RightSideRow == nil {
			out.RightSideRow = &stitch.Instruction{Row: t.shapingRow(side), StartStitches: count, EndStitches: count + out.RowChangeStitches}
		}
		if side == stitch.WrongSide && out.WrongSideRow == nil {
			out.WrongSideRow = &stitch.Instruction{Row: t.shapingRow(side), StartStitches: count, EndStitches: count + out.RowChangeStitches}
		}
		count += out.RowChangeStitches
		out.ShapingRows[i] = ShapingRow{r, side, count}
		if i > 0 {
			out.Intervals = appendInterval(out.Intervals, r-rows[i-1])
		}
	}
	out.FirstShapingRowNumber = rows[0]
	out.PlainAfterRows = t.rows - rows[len(rows)-1]
	out.GreatestDepartureStitches = t.departure(rows, out.RowChangeStitches, t.before, t.rows-t.after)
	if in.Gauge != nil {
		h, a, b := rw.SizeCm(t.rows), st.SizeCm(t.start), st.SizeCm(t.end)
		out.HeightCm, out.StartWidthCm, out.EndWidthCm = &h, &a, &b
	}
	if in.WithOutline {
		out.Outline = t.edgesOutline(out.ShapingRows, st, rw)
	}
	return out
}

func appendInterval(runs []IntervalRun, every int) []IntervalRun {
	if last := len(runs) - 1; last >= 0 && runs[last].EveryRows == every {
		runs[last].Times++
		return runs
	}
	return append(runs, IntervalRun{every, 1})
}

// shapingRowNumbers places the k shaping rows on the slots.
func (t taper) shapingRowNumbers() []int {
	slots := make([]int, t.k)
	for i := range slots {
		slots[i] = spread.Place(i, t.k, t.slots, spread.Centred)
	}
	if t.order == IntervalSpreadSlowFirst || t.order == IntervalSpreadFastFirst {
		gaps := make([]int, t.k-1)
		for i := range gaps {
			gaps[i] = slots[i+1] - slots[i]
		}
		sort.Ints(gaps)
		for i := range gaps {
			gap := gaps[i]
			if t.order == IntervalSpreadSlowFirst {
				gap = gaps[len(gaps)-1-i]
			}
			slots[i+1] = slots[i] + gap
		}
	}
	for i, s := range slots {
		slots[i] = t.first + t.step*s
	}
	return slots
}

// departure is the greatest distance between the stitches after a row and the
// straight line from start to end, which runs from the end of one row to the end
// of another. It is reached either after a shaping row or just before one, or at
// an end.
func (t taper) departure(rows []int, change, from, to int) float64 {
	span := float64(to - from)
	line := func(row int) float64 {
		part := float64(row-from) / span
		return float64(t.start) + float64(t.end-t.start)*min(max(part, 0), 1)
	}
	worst, count := 0.0, t.start
	for _, r := range rows {
		worst = max(worst, math.Abs(float64(count)-line(r-1)))
		count += change
		worst = max(worst, math.Abs(float64(count)-line(r)))
	}
	return worst
}

// manyIntervals is how many different intervals in a row are still easier to
// follow as words than as a list of row numbers.
const manyIntervals = 6

// Directions write the taper as a pattern would.
func (o Taper) Directions() []string {
	noun, change := "row", "Decrease"
	if o.t.round {
		noun = "round"
	}
	if o.RowChangeStitches > 0 {
		change = "Increase"
	}
	var d []string
	if plain := o.FirstShapingRowNumber - 1; plain > 0 {
		d = append(d, "Work "+report.CountOf(plain, noun+"s")+" plain.")
	}
	if o.RightSideRow != nil {
		d = append(d, shapingDirection(change, noun, stitch.RightSide, o.t.round, o.RightSideRow))
	}
	if o.WrongSideRow != nil {
		d = append(d, shapingDirection(change, noun, stitch.WrongSide, o.t.round, o.WrongSideRow))
	}
	first := "Work the " + strings.ToLower(change) + " " + noun + " once, as " + noun + " " + strconv.Itoa(o.FirstShapingRowNumber)
	switch {
	case len(o.Intervals) == 0:
		d = append(d, first+".")
	default:
		d = append(d, first+", then "+intervalWords(o.Intervals, o.ShapingRows, noun)+": "+report.CountOf(o.t.end, "stitches")+".")
	}
	if o.PlainAfterRows > 0 {
		d = append(d, "Work "+report.CountOf(o.PlainAfterRows, noun+"s")+" plain.")
	}
	return d
}

// intervalWords writes when the shaping row is worked again: "every 6th row 8
// times, then every 4th row 5 times", or the numbers of the rows where that
// would be hard to follow. rows are all shaping rows, the first included.
func intervalWords(intervals []IntervalRun, rows []ShapingRow, noun string) string {
	if len(intervals) > manyIntervals {
		parts := make([]string, len(rows)-1)
		for i, r := range rows[1:] {
			parts[i] = strconv.Itoa(r.RowNumber)
		}
		return "on " + noun + "s " + strings.Join(parts, ", ")
	}
	parts := make([]string, len(intervals))
	for i, r := range intervals {
		parts[i] = "every " + report.Ordinal(r.EveryRows) + " " + noun + " " + report.Times(r.Times)
		if r.EveryRows == 1 {
			parts[i] = "every " + noun + " " + report.Times(r.Times)
		}
	}
	return strings.Join(parts, ", then ")
}

// shapingDirection is "Decrease row (RS): k1, ssk, k to last 3 sts, k2tog, k1."
func shapingDirection(change, noun string, side stitch.Side, round bool, row *stitch.Instruction) string {
	s := change + " " + noun
	if !round {
		s += " (" + side.String() + ")"
	}
	return s + ": " + row.Row.Text() + "."
}

// Summary says the answer in words.
func (o Taper) Summary() string {
	noun := "rows"
	if o.t.round {
		noun = "rounds"
	}
	s := "From " + strconv.Itoa(o.t.start) + " to " + report.CountOf(o.t.end, "stitches") + " over " + report.CountOf(o.HeightRows, noun)
	if o.HeightCm != nil {
		s += " (" + o.unit.Size(*o.HeightCm) + ")"
	}
	return s + ": " + report.CountOf(o.ShapingRowCount, "shaping "+noun) + ", " +
		report.CountOf(measure.Abs(o.RowChangeStitches), "stitches") + " each, never more than " +
		measure.Decimal(o.GreatestDepartureStitches, 2) + " stitches from a straight line."
}

// Sources says where the figures come from.
func (Taper) Sources() []report.Source {
	return []report.Source{
		{Figure: "places of the shaping rows", Citation: "own derivation on the Euclidean spread: Bresenham, IBM Systems Journal 4 (1965) 25-30",
			Status: report.SourceStatusOwnDerivation},
		{Figure: "leans of the increases and decreases", Citation: "common practice", Status: report.SourceStatusCommonPractice},
	}
}
