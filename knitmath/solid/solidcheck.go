package solid

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
)

// vetSolid checks each field for itself and what belongs to which form.
func vetSolid(c *fault.Checks, b *revolved, in SolidInput) {
	b.in = in
	b.st, b.rw = gauge.Vet(c, "gauge", in.Gauge)
	fault.RequiredEnum(c, "", "form", in.Form, FormProfile)
	vetSolidSize(c, "across_cm", in.AcrossCm, in.Form != FormProfile, true)
	high := in.Form != FormProfile && in.Form != FormSphere
	vetSolidSize(c, "height_cm", in.HeightCm, high, high)
	vetPoints(c, in)
	c.OptionalNumber("", "base_opening_cm", in.BaseOpeningCm, 0, MaxSolidCm)
	c.OptionalNumber("", "top_opening_cm", in.TopOpeningCm, 0, MaxSolidCm)
	fault.Enum(c, "", "start", in.Start, StartTop)
	fault.Enum(c, "", "lines", in.Lines, LinesStacked)
	c.OptionalCount("", "wedge_count", in.WedgeCount, 1, MaxSolidWedges)
	c.OptionalNumber("", "stuff_opening_cm", in.StuffOpeningCm, measure.MinCm, MaxSolidCm)
	c.Items("", "limbs", len(in.Limbs), MaxLimbs)
	for i, l := range in.Limbs[:min(len(in.Limbs), MaxLimbs)] {
		field := fault.Index("limbs", i)
		c.RequiredCount(field, "stitches", l.Stitches, MinLimbStitches, MaxLimbStitches)
		c.Number(field, "from_base_cm", l.FromBaseCm, 0, MaxFromBaseCm)
		c.Number(field, "turn_degrees", l.TurnDegrees, 0, 360)
	}
	if opening := startOpening(in); in.PickedUp && fault.Or(opening, 0) == 0 {
		c.Add("picked_up", fault.ReasonContradictory, "needs an opening at the end where the work begins")
	}
	fault.Enum(c, "", "way", in.Way, WayWedges)
	fault.Enum(c, "", "turn_method", in.TurnMethod, shortrow.TurnMethodYarnOver)
	for _, only := range [...]struct {
		field string
		given bool
		way   bool // whether it belongs to wedges
	}{{"lines", in.Lines == LinesStacked, false}, {"stuff_opening_cm", in.StuffOpeningCm != nil, false}, {"picked_up", in.PickedUp, false},
		{"limbs", len(in.Limbs) > 0, false}, {"turn_method", in.TurnMethod != 0, true}} {
		if only.given && only.way != (in.Way == WayWedges) && c.Sound("way", only.field) {
			c.Add(only.field, fault.ReasonContradictory, "does not belong to this way of working")
		}
	}
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
}

// startOpening is the opening at the end where the work begins.
func startOpening(in SolidInput) *float64 {
	if in.Start == StartTop {
		return in.TopOpeningCm
	}
	return in.BaseOpeningCm
}

// vetSolidSize checks a size that a form needs, or has no use for.
func vetSolidSize(c *fault.Checks, field string, cm *float64, fits, needed bool) {
	c.OptionalNumber("", field, cm, measure.MinCm, MaxSolidCm)
	switch {
	case !c.Sound("form"):
	case cm != nil && !fits:
		c.Add(field, fault.ReasonContradictory, "does not belong to this form")
	case cm == nil && fits && needed:
		c.Add(field, fault.ReasonRequired, "is missing; this form needs it")
	}
}

// vetPoints checks a profile: its points go up, and two of them at least lie apart.
func vetPoints(c *fault.Checks, in SolidInput) {
	own := in.Form == FormProfile
	switch {
	case !own && len(in.Points) > 0 && c.Sound("form"):
		c.Add("points", fault.ReasonContradictory, "belong to a profile only")
		return
	case own && len(in.Points) < 2:
		c.Add("points", fault.ReasonRequired, "are missing; a profile needs 2 to %d", MaxProfilePoints)
		return
	}
	c.Items("", "points", len(in.Points), MaxProfilePoints)
	for i, p := range in.Points[:min(len(in.Points), MaxProfilePoints)] {
		field := fault.Index("points", i)
		c.Number(field, "height_cm", p.HeightCm, 0, MaxSolidCm)
		c.Number(field, "across_cm", p.AcrossCm, 0, MaxSolidCm)
		if i > 0 && p.HeightCm < in.Points[i-1].HeightCm {
			c.Add(fault.Join(field, "height_cm"), fault.ReasonContradictory, "must not be less than that of the point before")
		}
	}
}
