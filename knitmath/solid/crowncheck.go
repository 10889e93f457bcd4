package solid

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Defaults of a crown. The ease is published hats over the heads they are said to fit,
// 0.83 to 0.92 of the upper end of each, and a rule of 1 to 2 inches; the height is common
// practice, between a beanie's 23 cm on heads of 46 to 61 and a baby's.
const (
	DefaultHatEase        = -8.0
	DefaultSuccessive     = 2
	DefaultCrownTolerance = 1.5
	heightOfHead          = 0.4
	slouchOfHead          = 0.15 // what a slouchy hat is longer. Common practice.
)

// vetCrown checks each field for itself and what excludes what.
func vetCrown(c *fault.Checks, h *hat, in CrownInput) {
	h.st, h.rw = gauge.Vet(c, "gauge", in.Gauge)
	c.OptionalCount("", "hat_stitches", in.HatStitches, MinHatStitches, MaxHatStitches)
	c.OptionalNumber("", "hat_cm", in.HatCm, MinHeadCm, MaxHeadCm)
	c.OptionalNumber("", "head_cm", in.HeadCm, MinHeadCm, MaxHeadCm)
	fault.Enum(c, "", "head_size", in.HeadSize, HeadSizeMan)
	vetSizedBy(c, in)
	c.OptionalNumber("", "ease_percent", in.EasePercent, MinHatEase, MaxHatEase)
	if in.EasePercent != nil && (in.HatStitches != nil || in.HatCm != nil) {
		c.Add("ease_percent", fault.ReasonContradictory, "is for a head; the hat itself is given")
	}
	h.rule = gauge.VetRule(c, "stitch_rule", in.StitchRule)
	if in.StitchRule != nil && in.HatStitches != nil {
		c.Add("stitch_rule", fault.ReasonContradictory, "is for stitches that are worked out; hat_stitches are given")
	}
	c.OptionalCount("", "wedge_count", in.WedgeCount, MinWedges, MaxWedges)
	fault.Enum(c, "", "stacks", in.Stacks, StacksPaired)
	fault.Enum(c, "", "uneven", in.Uneven, UnevenLeftOver)
	if in.Uneven > UnevenAdjust && in.Stacks == StacksPaired {
		c.Add("uneven", fault.ReasonContradictory, "must be UNEVEN_ADJUST where decreases are paired")
	}
	fault.Enum(c, "", "shape", in.Shape, CrownShapeSlouchy)
	c.OptionalCount("", "crown_rounds", in.CrownRounds, 1, MaxHatRounds)
	c.OptionalNumber("", "crown_cm", in.CrownCm, measure.MinCm, MaxHeadCm)
	c.AtMostOne(in.CrownRounds != nil, in.CrownCm != nil, "crown_rounds", "crown_cm")
	c.OptionalCount("", "total_rounds", in.TotalRounds, 1, MaxHatRounds)
	c.OptionalNumber("", "total_cm", in.TotalCm, measure.MinCm, MaxHeadCm)
	c.AtMostOne(in.TotalRounds != nil, in.TotalCm != nil, "total_rounds", "total_cm")
	CheckRates(c, in.Rates)
	c.OptionalCount("", "successive_rounds", in.SuccessiveRounds, 1, MaxSuccessive)
	c.OptionalCount("", "end_stitches", in.EndStitches, 1, MaxHatStitches)
	c.OptionalNumber("", "tolerance_rounds", in.ToleranceRounds, 0.5, MaxCrownTolerance)
	if len(in.Rates) > 0 {
		for _, f := range [...]struct {
			field string
			given bool
		}{{"crown_rounds", in.CrownRounds != nil}, {"crown_cm", in.CrownCm != nil}, {"successive_rounds", in.SuccessiveRounds != nil},
			{"tolerance_rounds", in.ToleranceRounds != nil}} {
			if f.given {
				c.Add(f.field, fault.ReasonContradictory, "belongs to a shape; the rates say where the decreases lie")
			}
		}
	}
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
}

// vetSizedBy wants at most one of the four ways to say how wide the hat is.
func vetSizedBy(c *fault.Checks, in CrownInput) {
	ways := [...]struct {
		field string
		given bool
	}{{"hat_stitches", in.HatStitches != nil}, {"hat_cm", in.HatCm != nil}, {"head_cm", in.HeadCm != nil}, {"head_size", in.HeadSize != 0}}
	given := 0
	for _, w := range ways {
		if w.given {
			given++
		}
	}
	for _, w := range ways {
		if given > 1 && w.given {
			c.Add(w.field, fault.ReasonContradictory, "is one of several; give one of hat_stitches, hat_cm, head_cm and head_size")
		}
	}
}

// settleHat settles the head and the stitches of the hat.
func settleHat(c *fault.Checks, h *hat, in CrownInput) {
	ease := 1 + fault.Or(in.EasePercent, DefaultHatEase)/100
	switch {
	case in.HatStitches != nil:
		h.sizeField, h.stitches = "hat_stitches", *in.HatStitches
		h.head = h.st.SizeCm(h.stitches) / ease
		return
	case in.HatCm != nil:
		h.sizeField = "hat_cm"
		h.head = *in.HatCm / ease
	case in.HeadCm != nil:
		h.sizeField, h.head = "head_cm", *in.HeadCm
	default:
		h.sizeField = "head_size"
		size := in.HeadSize
		if size == HeadSizeUnspecified {
			size = HeadSizeWoman
		}
		h.head, h.headSource = size.head()
	}
	h.wantedHat = h.head * ease
	um := measure.Micrometres(h.wantedHat)
	fields := []string{"gauge"}
	if h.sizeField != "head_size" || in.HeadSize != HeadSizeUnspecified {
		fields = []string{h.sizeField, "gauge"}
	}
	if in.StitchRule != nil {
		fields = append(fields, "stitch_rule")
	}
	f := h.st.VetFit(c, um, h.rule, "stitches", fields...)
	if f == nil {
		return
	}
	h.stitches = f.Count
	if in.StitchRule == nil {
		h.stitches = h.likedCount(f.Exact, in)
	} else if f.Halfway {
		h.notices = append(h.notices, gauge.HalfwayNotice(h.sizeField, f.Count))
	}
	if in.StitchRule == nil && f.Count < MinHatStitches {
		h.stitches = f.Count // that wedges divide more is no hat of that size
	}
	if h.stitches < MinHatStitches || h.stitches > MaxHatStitches {
		c.Infeasible("the hat has "+report.CountOf(h.stitches, "stitches")+" at this gauge; it must have from "+strconv.Itoa(MinHatStitches)+
			" to "+strconv.Itoa(MaxHatStitches), fields...)
	}
}

// settleHeights settles the crown's depth and the height of the hat, in rounds.
func settleHeights(c *fault.Checks, h *hat, in CrownInput) {
	h.crownField = "shape"
	crownUm := measure.Micrometres(in.Shape.curve().depth(h.st.SizeCm(h.stitches)))
	h.crownRounds = max(1, h.rw.Nearest(crownUm))
	switch {
	case in.CrownRounds != nil:
		h.crownField, h.crownRounds = "crown_rounds", *in.CrownRounds
	case in.CrownCm != nil:
		h.crownField, h.crownRounds = "crown_cm", h.rw.Nearest(measure.Micrometres(*in.CrownCm))
	case len(in.Rates) > 0:
		h.crownField = "rates"
	}
	h.totalField = h.sizeField
	h.wantedTotal = h.head * heightOfHead
	if in.Shape == CrownShapeSlouchy {
		h.wantedTotal += h.head * slouchOfHead
	}
	switch {
	case in.TotalRounds != nil:
		h.totalField, h.total = "total_rounds", *in.TotalRounds
		h.wantedTotal = h.rw.SizeCm(h.total)
	case in.TotalCm != nil:
		h.totalField, h.wantedTotal = "total_cm", *in.TotalCm
		h.total = h.rw.Nearest(measure.Micrometres(h.wantedTotal))
	default:
		h.total = h.rw.Nearest(measure.Micrometres(h.wantedTotal))
	}
	for _, r := range [...]struct {
		rounds int
		field  string
		what   string
	}{{h.crownRounds, h.crownField, "crown"}, {h.total, h.totalField, "hat"}} {
		if r.rounds < 1 || r.rounds > MaxHatRounds {
			c.Infeasible("the "+r.what+" has "+report.CountOf(r.rounds, "rounds")+" at this gauge; it must have from 1 to "+
				strconv.Itoa(MaxHatRounds), r.field, "gauge")
		}
	}
}
