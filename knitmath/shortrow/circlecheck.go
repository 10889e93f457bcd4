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
	q := circle{inner: fault.Or(in.InnerRadiusCm, 0), degrees: fault.Or(in.TurnDegrees, fullTurn), method: in.TurnMethod,
		shortest: in.Order == OrderShortestFirst, rw: rw, inField: "width_stitches"}
	if in.WidthStitches != nil {
		q.width = *in.WidthStitches
	} else {
		q.inField = "outer_radius_cm"
		q.width = st.Nearest(measure.Micrometres(*in.OuterRadiusCm - q.inner))
	}
	if q.width < 2 || q.width > stitch.MaxStitches {
		c.Infeasible("from the inner edge to the outer there are "+report.CountOf(q.width, "stitches")+"; there must be from 2 to "+
			strconv.Itoa(stitch.MaxStitches), q.inField, "inner_radius_cm")
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

// vetCircleWedges settles how many wedges there are and shares the rows out.
func vetCircleWedges(c *fault.Checks, q *circle, in CircleInput) {
	rise := (q.wantOuter - q.wantInner) / 2 // pairs, of all wedges together
	if in.WedgeCount != nil {
		q.wedges = *in.WedgeCount
	} else {
		apart := rise * turnsApart / float64(q.width)
		q.wedges = int(min(max(measure.RoundHalfUp(min(apart, mostWedges)), fewestWedges), mostWedges))
	}
	outer := measure.RoundHalfUp(min(q.wantOuter/2, 1e9))
	q.full = max(q.wedges, int(measure.RoundHalfUp(min(q.wantInner/2, 1e9))))
	q.pairs = int(outer) - q.full
	wedgeField := "wedge_count"
	if in.WedgeCount == nil {
		wedgeField = q.inField
	}
	per, full := (q.pairs+q.wedges-1)/q.wedges, (q.full+q.wedges-1)/q.wedges
	most := wedge{width: q.width, method: q.method, tall: TallEndRight}.mostPairs()
	room := 2 * float64(most) // rows that turns one stitch apart can rise
	need := MaxWedges + 1
	if most > 0 {
		need = measure.CeilQuotient(min(q.wantOuter-q.wantInner, 1e9), room)
	}
	switch steep := 2*float64(per+full)-q.innerRows(full) > room; {
	case q.pairs < q.wedges:
		c.Infeasible("the outer edge has "+report.CountOf(2*int(outer), "rows")+
			"; that is not a pair of short rows and a pair of full ones for each of "+report.CountOf(q.wedges, "wedges")+
			"; use fewer wedges or a larger circle", wedgeField, q.inField)
	case steep && need > MaxWedges:
		c.Infeasible("each wedge would have "+report.CountOf(per, "turns")+" on "+report.CountOf(q.width, "stitches")+
			", at least one stitch apart; even "+strconv.Itoa(MaxWedges)+" wedges are too few", wedgeField, q.inField)
	case steep:
		c.Infeasible("each wedge would have "+report.CountOf(per, "turns")+" on "+report.CountOf(q.width, "stitches")+
			", at least one stitch apart; use "+strconv.Itoa(max(need, q.wedges)+1)+" wedges", wedgeField, q.inField)
	case 2*per > MaxWedgeRows || 2*full > MaxWedgeRows:
		c.Infeasible("each wedge would have more than "+strconv.Itoa(MaxWedgeRows)+" rows; use more wedges", wedgeField, q.inField)
	case q.method == TurnMethodYarnOver && q.width+per > stitch.MaxStitches:
		c.Infeasible("the yarn overs would bring the needle to more than "+strconv.Itoa(stitch.MaxStitches)+
			" loops; turn another way", q.inField, "turn_method")
	}
}
