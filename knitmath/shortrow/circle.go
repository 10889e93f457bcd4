package shortrow

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// CircleInput asks for a disc or ring of wedges. It mirrors
// PlanCircleOfWedgesRequest.
type CircleInput struct {
	Gauge         *gauge.Gauge
	WidthStitches *int
	OuterRadiusCm *float64
	InnerRadiusCm *float64
	WedgeCount    *int
	TurnDegrees   *float64
	TurnMethod    TurnMethod
	Order         Order
	DisplayUnit   measure.DisplayUnit
	WithOutline   bool
}

// A CircleWedge is one kind of wedge in a circle.
type CircleWedge struct {
	PairCount             int
	FullRows              int
	Rows                  []WedgeRow
	GreatestDepartureRows float64
}

// A CircleWedgeRun is a number of equal wedges in succession.
type CircleWedgeRun struct {
	WedgeNumber int
	Times       int
}

// Circle is the answer to CircleInput.
type Circle struct {
	WidthStitches    int
	WedgeCount       int
	Wedges           []CircleWedge
	Sequence         []CircleWedgeRun
	OuterRows        int
	InnerRows        int
	WantedOuterRows  float64
	WantedInnerRows  float64
	ClosureRows      float64
	ClosureDegrees   float64
	InnerClosureRows float64
	OuterRadiusCm    float64
	InnerRadiusCm    float64
	Notices          []report.Notice
	// Outline is nil unless asked for.
	Outline *outline.Outline

	unit    measure.DisplayUnit
	degrees float64
}

// Ranges of a circle.
const (
	// MaxRadiusCm: a round blanket ten metres across.
	MaxRadiusCm = 500.0
	// MaxWedges is the most wedges in one circle.
	MaxWedges = 100
	// MinTurn and MaxTurn bound how much of the full turn is filled, in degrees.
	MinTurn = 10.0
	MaxTurn = 720.0

	fewestWedges, mostWedges = 4, 24 // of the default
	turnsApart               = 2     // stitches, of the default
)

// PlanCircleOfWedges closes a disc or a ring from N wedges. With R and r the
// outer and inner radius and t the part of the full turn that is filled, the
// edges should have
//
//	outer rows = t * 2*pi*R * rows per cm
//	inner rows = t * 2*pi*r * rows per cm
//
// A wedge has 2n short rows, all at the outer edge, and an even number of rows
// over all stitches, at least two, so that every wedge begins as the first did.
// Both totals are therefore even; each is the even number nearest to what is
// wanted, half-way up, and is spread over the wedges as evenly as integers allow.
// The outer edge so closes within one row.
//
// The radius is 0.1 to 500 cm, and N from 1 to 100. A wedge too steep for its
// stitches, or a ring too narrow, is refused with how many wedges would do.
//
// Source: own derivation; the circumference of a circle.
func PlanCircleOfWedges(in CircleInput) (Circle, error) {
	var c fault.Checks
	q := vetCircle(&c, in)
	if err := c.Err(); err != nil {
		return Circle{}, err
	}
	out := q.plan()
	out.unit = in.DisplayUnit
	if in.WithOutline {
		out.Outline = out.outline()
	}
	return out, nil
}

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

func vetCircle(c *fault.Checks, in CircleInput) circle {
	st, rw := gauge.Vet(c, "gauge", in.Gauge)
	ok := c.OptionalCount("", "width_stitches", in.WidthStitches, 2, stitch.MaxStitches)
	ok = c.OptionalNumber("", "outer_radius_cm", in.OuterRadiusCm, measure.MinCm, MaxRadiusCm) && ok
	switch {
	case in.WidthStitches == nil && in.OuterRadiusCm == nil:
		c.Add("width_stitches", fault.ReasonRequired, "is missing, and so is outer_radius_cm; give one of them")
		c.Add("outer_radius_cm", fault.ReasonRequired, "is missing, and so is width_stitches; give one of them")
		ok = false
	case in.WidthStitches != nil && in.OuterRadiusCm != nil:
		c.Add("width_stitches", fault.ReasonContradictory, "excludes outer_radius_cm; give one of them")
		c.Add("outer_radius_cm", fault.ReasonContradictory, "excludes width_stitches; give one of them")
		ok = false
	}
	ok = c.OptionalNumber("", "inner_radius_cm", in.InnerRadiusCm, 0, MaxRadiusCm) && ok
	ok = c.OptionalCount("", "wedge_count", in.WedgeCount, 1, MaxWedges) && ok
	ok = c.OptionalNumber("", "turn_degrees", in.TurnDegrees, MinTurn, MaxTurn) && ok
	ok = fault.Enum(c, "", "turn_method", in.TurnMethod, TurnMethodYarnOver) && ok
	ok = fault.Enum(c, "", "order", in.Order, OrderShortestFirst) && ok
	ok = fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn) && ok
	if !ok || !c.Sound("gauge") {
		return circle{}
	}
	q := circle{inner: fault.Or(in.InnerRadiusCm, 0), degrees: fault.Or(in.TurnDegrees, 360), method: in.TurnMethod,
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
	round := 2 * math.Pi * rw.PerCm() * q.degrees / 360
	q.wantOuter, q.wantInner = q.outer*round, q.inner*round
	vetCircleWedges(c, &q, in)
	return q
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
	room := 2 * float64(q.width-1) // rows that turns one stitch apart can rise
	need := measure.CeilQuotient(min(q.wantOuter-q.wantInner, 1e9), room)
	switch steep := 2*float64(per+full)-q.innerRows(full) > room; {
	case q.pairs < q.wedges:
		c.Infeasible("the outer edge has "+report.CountOf(2*int(outer), "rows")+"; that is not a pair of short rows and a pair of full ones for each of "+
			report.CountOf(q.wedges, "wedges")+"; use fewer wedges or a larger circle", wedgeField, q.inField)
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
