package flat

import (
	"slices"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
)

// sizesOf are the sizes that each form needs; turn_degrees has a default.
var sizesOf = map[Form][]string{
	FormDisc: {"across_cm"}, FormRing: {"across_cm", "hole_cm"}, FormSector: {"across_cm"},
	FormPolygon: {"side_cm", "corner_count"}, FormMitredSquare: {"side_cm"},
	FormTriangleFromPoint: {"width_cm", "height_cm"}, FormTriangleFromSide: {"width_cm", "height_cm"},
	FormTriangleFromTop: {"width_cm"}, FormBiasStrip: {"width_cm", "length_cm"},
	FormStar: {"across_cm", "corner_count"},
}

// vet checks each field for itself and what belongs to which form.
func vet(c *fault.Checks, in Input) (st, rw gauge.Density) {
	st, rw = gauge.Vet(c, "gauge", in.Gauge)
	fault.RequiredEnum(c, "", "form", in.Form, FormStar)
	sizes := []struct {
		field string
		cm    *float64
	}{{"across_cm", in.AcrossCm}, {"hole_cm", in.HoleCm}, {"side_cm", in.SideCm}, {"width_cm", in.WidthCm},
		{"height_cm", in.HeightCm}, {"length_cm", in.LengthCm}}
	for _, s := range sizes {
		c.OptionalNumber("", s.field, s.cm, measure.MinCm, measure.MaxCm)
		vetGiven(c, in.Form, s.field, s.cm != nil)
	}
	c.OptionalCount("", "corner_count", in.CornerCount, MinCorners, MaxCorners)
	vetGiven(c, in.Form, "corner_count", in.CornerCount != nil)
	c.OptionalNumber("", "valley_cm", in.ValleyCm, measure.MinCm, measure.MaxCm)
	c.OptionalNumber("", "turn_degrees", in.TurnDegrees, MinTurn, MaxTurn)
	fault.Enum(c, "", "direction", in.Direction, DirectionInwards)
	fault.Enum(c, "", "arrangement", in.Arrangement, ArrangementShortRows)
	c.OptionalCount("", "wedge_count", in.WedgeCount, MinWedges, MaxWedges)
	c.OptionalCount("", "start_stitches", in.StartStitches, MinStart, MaxStart)
	c.OptionalNumber("", "tolerance_rows", in.ToleranceRows, 0, MaxToleranceRows)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	if c.Sound("form") {
		vetBelongs(c, in)
	}
	return st, rw
}

// vetGiven checks that a size is given where the form needs it, and only there.
func vetGiven(c *fault.Checks, form Form, field string, given bool) {
	needed := slices.Contains(sizesOf[form], field)
	switch {
	case !c.Sound("form"):
	case needed && !given:
		c.Add(field, fault.ReasonRequired, "is missing; this form needs it")
	case given && !needed:
		c.Add(field, fault.ReasonContradictory, "does not belong to this form")
	}
}

// vetBelongs checks the other fields that belong to some forms only.
func vetBelongs(c *fault.Checks, in Input) {
	wedged := slices.Contains([]Form{FormDisc, FormRing, FormSector}, in.Form)
	only := func(given bool, field string, fits bool) {
		if given && !fits {
			c.Add(field, fault.ReasonContradictory, "does not belong to this form or arrangement")
		}
	}
	only(in.TurnDegrees != nil, "turn_degrees", in.Form == FormSector)
	only(in.ValleyCm != nil, "valley_cm", in.Form == FormStar)
	only(in.Arrangement != 0, "arrangement", wedged)
	only(in.Arrangement == ArrangementDoubling, "arrangement", in.Form == FormDisc || !wedged)
	only(in.WedgeCount != nil, "wedge_count", wedged && in.Arrangement != ArrangementDoubling)
	starts := (in.Form == FormDisc || in.Form == FormSector) && in.Arrangement != ArrangementShortRows
	only(in.StartStitches != nil, "start_stitches", starts)
	cornered := in.Form == FormPolygon || in.Form == FormMitredSquare || in.Form == FormStar
	turned := wedged && in.Form != FormSector && in.Arrangement != ArrangementShortRows || cornered
	only(in.Direction == DirectionInwards, "direction", turned)
	climbs := wedged && in.Arrangement < ArrangementDoubling || cornered ||
		slices.Contains([]Form{FormTriangleFromPoint, FormTriangleFromSide, FormTriangleFromTop}, in.Form)
	only(in.ToleranceRows != nil, "tolerance_rows", climbs)
}
