package shortrow

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// circle is a checked question.
type circle struct {
	width, wedges        int
	outer, inner         float64 // radii, in cm
	wantOuter, wantInner float64 // rows
	pairs, full          int     // pairs of short rows, and of full rows, in all wedges together
	degrees              float64
	method               TurnMethod
	shortest             bool
	rw                   gauge.Density
	inField              string
}

// vetCircle checks everything and settles the wedges.
func vetCircle(c *fault.Checks, in CircleInput) circle {
	st, rw := vetCircleFields(c, in)
	if c.Err() != nil {
		return circle{}
	}
	q := circle{inner: fault.Or(in.InnerRadiusCm, 0) + 0, degrees: fault.Or(in.TurnDegrees, fullTurn), method: in.TurnMethod,
		shortest: in.Order == OrderShortestFirst, rw: rw, inField: "width_stitches"}
	if in.WidthStitches != nil {
		q.width = *in.WidthStitches
	} else {
		q.inField = "outer_radius_cm"
		q.width = st.Nearest(measure.Micrometres(*in.OuterRadiusCm - q.inner))
	}
	if in.OuterRadiusCm != nil && *in.OuterRadiusCm <= q.inner {
		c.Infeasible("the inner edge does not lie inside the outer", q.inField, "inner_radius_cm")
		return q
	}
	if q.width < 2 || q.width > stitch.MaxStitches {
		c.Infeasible("from the inner edge to the outer there "+report.Are(q.width)+" "+report.CountOf(q.width, "stitches")+
			"; there must be from 2 to "+strconv.Itoa(stitch.MaxStitches), q.inField, "inner_radius_cm")
		return q
	}
	q.outer = q.inner + st.SizeCm(q.width)
	round := 2 * math.Pi * rw.PerCm() * q.degrees / fullTurn
	q.wantOuter, q.wantInner = q.outer*round, q.inner*round
	vetCircleWedges(c, &q, in)
	return q
}

// vetCircleFields checks each field for itself.
func vetCircleFields(c *fault.Checks, in CircleInput) (st, rw gauge.Density) {
	st, rw = gauge.Vet(c, "gauge", in.Gauge)
	c.OptionalCount("", "width_stitches", in.WidthStitches, 2, stitch.MaxStitches)
	c.OptionalNumber("", "outer_radius_cm", in.OuterRadiusCm, measure.MinCm, MaxRadiusCm)
	c.OneOf(in.WidthStitches != nil, in.OuterRadiusCm != nil, "width_stitches", "outer_radius_cm")
	c.OptionalNumber("", "inner_radius_cm", in.InnerRadiusCm, 0, MaxRadiusCm)
	c.OptionalCount("", "wedge_count", in.WedgeCount, 1, MaxWedges)
	c.OptionalNumber("", "turn_degrees", in.TurnDegrees, MinTurn, MaxTurn)
	fault.Enum(c, "", "turn_method", in.TurnMethod, TurnMethodYarnOver)
	fault.Enum(c, "", "order", in.Order, OrderShortestFirst)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	return st, rw
}

// vetCircleWedges settles how many wedges there are and shares the rows out. A
// number of its own choosing gives way to the nearest that can be knit; one that
// was asked for is refused with that.
func vetCircleWedges(c *fault.Checks, q *circle, in CircleInput) {
	apart := (q.wantOuter - q.wantInner) / 2 * turnsApart / float64(q.width)
	asked := fault.Or(in.WedgeCount, int(min(max(measure.RoundHalfUp(min(apart, mostWedges)), fewestWedges), mostWedges)))
	*q = q.shared(asked)
	if q.fits() {
		return
	}
	nearest := q.nearestCount(asked)
	fields, advice := []string{q.inField}, "; no number of wedges from 1 to "+strconv.Itoa(MaxWedges)+" fits, so change the circle"
	if in.WedgeCount != nil {
		fields = []string{"wedge_count", q.inField}
	}
	if nearest > 0 {
		advice = "; use " + report.CountOf(nearest, "wedges")
	}
	switch {
	case in.WedgeCount == nil && nearest > 0:
		*q = q.shared(nearest)
	case q.misfit() != "":
		c.Infeasible(q.misfit()+advice, fields...)
	default:
		c.Infeasible("the yarn overs would bring the needle to more than "+strconv.Itoa(stitch.MaxStitches)+
			" loops; turn another way", q.inField, "turn_method")
	}
}
