package shortrow

import (
	"math"

	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// plan shares the rows out over the wedges and writes each kind once.
func (q circle) plan() Circle {
	out := Circle{WidthStitches: q.width, WedgeCount: q.wedges,
		OuterRows: 2 * (q.pairs + q.full), InnerRows: 2 * q.full,
		WantedOuterRows: q.wantOuter, WantedInnerRows: q.wantInner,
		OuterRadiusCm: q.outer, degrees: q.degrees, method: q.method}
	out.ClosureRows = float64(out.OuterRows) - q.wantOuter
	out.ClosureDegrees = out.ClosureRows / q.wantOuter * q.degrees
	out.InnerClosureRows = float64(out.InnerRows) - q.wantInner
	out.InnerRadiusCm = q.rw.SizeCm(out.InnerRows) / (2 * math.Pi) * fullTurn / q.degrees
	kinds := map[wedgeKind]int{}
	for i := range q.wedges {
		kind := q.kind(i)
		k, known := kinds[kind]
		if !known {
			out.Wedges = append(out.Wedges, q.wedge(kind.pairs, kind.full))
			k = len(out.Wedges) // numbered from 1
			kinds[kind] = k
		}
		out.Sequence = AppendWedge(out.Sequence, k)
	}
	if out.InnerClosureRows > 1 {
		advice := "draw them together with the yarn's tail"
		if q.wedges > 1 && q.shared(q.wedges-1).fits() {
			advice += ", or use fewer wedges"
		}
		out.Notices = append(out.Notices, report.Notice{Reason: HoleAtTheCentre, Field: "inner_radius_cm",
			Description: "the inner edge has " + report.CountOf(out.InnerRows, "rows") +
				", two for each wedge; " + advice})
	}
	return out
}

// AppendWedge appends a wedge to a sequence.
func AppendWedge(list []CircleWedgeRun, number int) []CircleWedgeRun {
	if last := len(list) - 1; last >= 0 && list[last].WedgeNumber == number {
		list[last].Times++
		return list
	}
	return append(list, CircleWedgeRun{number, 1})
}

// innerRows is where the straight line of one wedge begins at the inner edge: at
// its full rows, which together are what a ring wants there; or at what is wanted
// where that is less than the two that every wedge has.
func (q circle) innerRows(full int) float64 {
	if wanted := q.wantInner / float64(q.wedges); wanted < 2 {
		return wanted
	}
	return 2 * float64(full)
}

// wedge knits one wedge: its pairs of short rows from the right edge, the row
// that closes their gaps, and full rows up to an even number. All its rows
// together rise in a straight line from the inner edge to the outer; where that
// line asks for fewer than the full rows, near the centre of a disc, there are no
// short ones.
func (q circle) wedge(pairs, full int) CircleWedge {
	wanted := make(curve.Strokes[int64], q.width+1)
	out, in := 2*float64(pairs+full), q.innerRows(full)
	for i := range wanted {
		rows := out + (in-out)*float64(i)/float64(q.width) - 2*float64(full)
		wanted[i] = curve.Mark[int64]{Place: int64(i), Value: measure.ToMillionths(max(rows, 0))}
	}
	w := wedge{width: q.width, method: q.method, shortest: q.shortest, tall: TallEndRight}
	p := profile{q.width, wanted}
	heights := p.pairs(measure.RoundingNearest)
	if q.method == TurnMethodGerman {
		heights = clearOfDoubles(heights, w.tall)
	}
	knit := w.knit(spans(heights, q.shortest))
	s := shortRows{width: q.width, rows: knit.Rows}
	for range full - 1 {
		s.row(stitch.WrongSide, q.width, 0)
		s.row(stitch.RightSide, 0, q.width)
	}
	s.row(stitch.WrongSide, q.width, 0)
	return CircleWedge{pairs, 2 * full, s.rows, p.departure(knit.heights)}
}
