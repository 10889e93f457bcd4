package flat

import (
	"errors"
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// ofShortRows is a disc, a ring or a sector by wedges of short rows, as room shortrow plans it.
func ofShortRows(c *fault.Checks, in Input) Shape {
	radius := *in.AcrossCm / 2
	if radius < measure.MinCm {
		c.Infeasible("from the centre to the rim there is not a stitch", "across_cm")
		return Shape{}
	}
	ask := shortrow.CircleInput{Gauge: in.Gauge, OuterRadiusCm: &radius, WedgeCount: in.WedgeCount, DisplayUnit: in.DisplayUnit,
		WithOutline: in.WithOutline}
	if in.HoleCm != nil {
		inner := *in.HoleCm / 2
		ask.InnerRadiusCm = &inner
	}
	turn := 360.0
	if in.Form == FormSector {
		turn = fault.Or(in.TurnDegrees, halfTurn)
		ask.TurnDegrees = &turn
	}
	circle, err := shortrow.PlanCircleOfWedges(ask)
	var refused *fault.InputError
	if errors.As(err, &refused) {
		for _, v := range refused.Violations {
			if field, ok := circleFields[v.Field]; ok {
				v.Field = field
			}
			c.Violations = append(c.Violations, v)
		}
		return Shape{}
	}
	n := circle.WidthStitches
	out := Shape{Construction: stitch.Flat, StartStitches: n, EndStitches: n, TotalRows: circle.OuterRows, WedgeCount: circle.WedgeCount,
		Wedges: circle.Wedges, Sequence: circle.Sequence, Outline: circle.Outline, circle: &circle,
		of: piece{in: in, form: in.Form}}
	half := min(turn/360*math.Pi, math.Pi)
	out.WidthCm = 2 * circle.OuterRadiusCm * math.Sin(min(half, math.Pi/2))
	out.HeightCm = circle.OuterRadiusCm * (1 - min(math.Cos(half), 0))
	for _, n := range circle.Notices {
		if field, ok := circleFields[n.Field]; ok {
			n.Field = field
		}
		out.Notices = append(out.Notices, n)
	}
	return out
}

// circleFields are what the fields of a circle of wedges are called here.
var circleFields = map[string]string{"outer_radius_cm": "across_cm", "width_stitches": "across_cm", "inner_radius_cm": "hole_cm"}
