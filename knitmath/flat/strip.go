package flat

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// leastStrip is the fewest stitches that gain at one edge and lose at the other.
const leastStrip = 4

// strip is a strip on the bias: every second row gains a stitch at one edge and loses one
// at the other, so that the strip leans by
//
//	tan(lean) = stitch width / (2 * row height) = R/2
//
// It is so many stitches wide as its width wants across the rows, width / cos(lean), and so
// many rows long as its length wants upward, length * cos(lean).
func strip(c *fault.Checks, in Input, st, rw gauge.Density) Shape {
	p := piece{in: in, form: in.Form, st: st, rw: rw, sizeField: "width_cm"}
	lean := math.Atan(rw.PerCm() / st.PerCm() / 2)
	count := int(measure.RoundHalfUp(*in.WidthCm / math.Cos(lean) * st.PerCm()))
	pairs := int(measure.RoundHalfUp(*in.LengthCm * math.Cos(lean) * rw.PerCm() / 2))
	if count < leastStrip || count > stitch.MaxStitches || pairs < 1 || 2*pairs > MaxRows {
		c.Infeasible("the strip would have "+report.CountOf(count, "stitches")+" and "+report.CountOf(2*pairs, "rows")+
			"; it must have from 4 to 10000 stitches and from 2 to 4000 rows", "width_cm", "length_cm")
		return Shape{}
	}
	p.rows, p.start, p.step = 2*pairs, count, 0
	degrees := lean * 180 / math.Pi
	out := Shape{Construction: stitch.Flat, StartStitches: count, EndStitches: count, TotalRows: 2 * pairs,
		WantedRimStitches: *in.WidthCm / math.Cos(lean) * st.PerCm(), Effort: 2, LeanDegrees: &degrees,
		WidthCm: st.SizeCm(count) * math.Cos(lean), HeightCm: rw.SizeCm(2*pairs) / math.Cos(lean), of: p}
	out.GreatestDepartureStitches = math.Abs(float64(count) - out.WantedRimStitches)
	row := stitch.RowOf(stitch.Do(stitch.Knit, 1), stitch.Do(stitch.M1L, 1), stitch.ToLast(stitch.Knit, 3),
		stitch.Do(stitch.K2tog, 1), stitch.Do(stitch.Knit, 1))
	out.Rows = []Row{{RowNumber: 1, Side: stitch.RightSide, WantedStitches: out.WantedRimStitches,
		DepartureStitches: float64(count) - out.WantedRimStitches,
		Instruction:       stitch.Instruction{Row: row, StartStitches: count, EndStitches: count}}}
	out.Notices = []report.Notice{{Reason: SlantedEnds, Field: "form",
		Description: "the first and the last row lie aslant to the strip, by " + measure.Decimal(degrees, 1) +
			" degrees; join strips along these edges, or begin and end with a triangle"}}
	return out
}
