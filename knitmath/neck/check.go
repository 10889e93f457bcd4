package neck

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/stitch"
)

// vetFields checks every field for itself and what excludes what.
func vetFields(c *fault.Checks, in Input) (st, rw gauge.Density) {
	st, rw = gauge.Vet(c, "gauge", in.Gauge)
	fault.Enum(c, "", "shape", in.Shape, ShapeBoat)
	vetWidths(c, in)
	gauge.VetRule(c, "width_rule", in.WidthRule)
	gauge.VetRule(c, "neck_rule", in.NeckRule)
	vetDepths(c, in)
	fault.Enum(c, "", "centre", in.Centre, CentreHeld)
	vetSlope(c, in)
	vetArmhole(c, in)
	fault.Enum(c, "", "row_choice", in.RowChoice, shaping.RowChoiceAny)
	c.OptionalCount("", "edge_stitches", in.EdgeStitches, 1, MaxEdgeStitches)
	c.OptionalNumber("", "tolerance_stitches", in.ToleranceStitches, 0, MaxTolerance)
	if in.BandGauge != nil {
		gauge.Vet(c, "band_gauge", in.BandGauge)
	}
	gauge.VetRule(c, "band_rule", in.BandRule)
	c.OptionalNumber("", "head_cm", in.HeadCm, MinHeadCm, MaxHeadCm)
	c.OptionalNumber("", "body_cm", in.BodyCm, measure.MinCm, measure.MaxCm)
	c.AtMostOne(in.HeadCm != nil, in.BodyCm != nil, "head_cm", "body_cm")
	c.OptionalNumber("", "stretch_ratio", in.StretchRatio, 1, MaxStretch)
	fault.Enum(c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	return st, rw
}

// vetWidths checks which of width, neck and shoulder are given.
func vetWidths(c *fault.Checks, in Input) {
	for _, x := range []struct {
		stem  string
		most  int
		count *int
		cm    *float64
	}{
		{"width", stitch.MaxStitches, in.WidthStitches, in.WidthCm}, {"neck", MaxNeckStitches, in.NeckStitches, in.NeckCm},
		{"shoulder", stitch.MaxStitches, in.ShoulderStitches, in.ShoulderCm},
		{"front_width", stitch.MaxStitches, in.FrontWidthStitches, in.FrontWidthCm},
	} {
		c.OptionalCount("", x.stem+"_stitches", x.count, 1, x.most)
		c.OptionalNumber("", x.stem+"_cm", x.cm, measure.MinCm, measure.MaxCm)
		c.AtMostOne(x.count != nil, x.cm != nil, x.stem+"_stitches", x.stem+"_cm")
	}
	width, neck := in.WidthStitches != nil || in.WidthCm != nil, in.NeckStitches != nil || in.NeckCm != nil
	shoulder := in.ShoulderStitches != nil || in.ShoulderCm != nil
	switch {
	case width && neck && shoulder:
		for _, stem := range []string{"width", "neck", "shoulder"} {
			c.Add(stem+"_stitches", fault.ReasonContradictory, "two of width, neck and shoulder settle the third; leave one out")
		}
	case !width && (!neck || !shoulder):
		for _, field := range []string{"width_stitches", "width_cm"} {
			c.Add(field, fault.ReasonRequired, "is missing; give the width across the shoulders, or both the neck and a shoulder")
		}
	}
}

// vetDepths checks the depths and the stitches in the middle.
func vetDepths(c *fault.Checks, in Input) {
	c.OptionalCount("", "front_depth_rows", in.FrontDepthRows, 0, MaxDepthRows)
	c.OptionalNumber("", "front_depth_cm", in.FrontDepthCm, 0, MaxDepthCm)
	c.AtMostOne(in.FrontDepthRows != nil, in.FrontDepthCm != nil, "front_depth_rows", "front_depth_cm")
	c.OptionalCount("", "back_depth_rows", in.BackDepthRows, 0, MaxDepthRows)
	c.OptionalNumber("", "back_depth_cm", in.BackDepthCm, 0, MaxDepthCm)
	c.AtMostOne(in.BackDepthRows != nil, in.BackDepthCm != nil, "back_depth_rows", "back_depth_cm")
	c.OptionalCount("", "front_centre_stitches", in.FrontCentreStitches, 0, MaxNeckStitches)
	c.OptionalCount("", "back_centre_stitches", in.BackCentreStitches, 0, MaxNeckStitches)
	if in.Shape == ShapeSquare || in.Shape == ShapeBoat {
		const all = "must be left out: of a square neck and of a boat neck all stitches are the middle"
		if in.FrontCentreStitches != nil {
			c.Add("front_centre_stitches", fault.ReasonContradictory, all)
		}
		if in.BackCentreStitches != nil {
			c.Add("back_centre_stitches", fault.ReasonContradictory, all)
		}
	}
}

// vetSlope checks how the shoulders slope.
func vetSlope(c *fault.Checks, in Input) {
	c.OptionalCount("", "shoulder_slope_rows", in.ShoulderSlopeRows, 0, MaxSlopeRows)
	c.OptionalNumber("", "shoulder_slope_cm", in.ShoulderSlopeCm, 0, MaxSlopeCm)
	c.OptionalNumber("", "shoulder_slope_degrees", in.ShoulderSlopeDegrees, 0, MaxSlopeDegrees)
	c.AtMostOne(in.ShoulderSlopeRows != nil, in.ShoulderSlopeCm != nil, "shoulder_slope_rows", "shoulder_slope_cm")
	c.AtMostOne(in.ShoulderSlopeRows != nil, in.ShoulderSlopeDegrees != nil, "shoulder_slope_rows", "shoulder_slope_degrees")
	c.AtMostOne(in.ShoulderSlopeCm != nil, in.ShoulderSlopeDegrees != nil, "shoulder_slope_cm", "shoulder_slope_degrees")
	fault.Enum(c, "", "shoulder_method", in.ShoulderMethod, ShoulderMethodShortRows)
	fault.Enum(c, "", "turn_method", in.TurnMethod, shortrow.TurnMethodYarnOver)
	c.OptionalCount("", "strap_stitches", in.StrapStitches, 1, MaxStrapStitches)
	if in.StrapStitches != nil && in.ShoulderMethod == ShoulderMethodShortRows {
		c.Add("shoulder_method", fault.ReasonContradictory, "is for shoulders that are joined to one another; a strap lies between them")
	}
	if in.TurnMethod != 0 && in.ShoulderMethod != ShoulderMethodShortRows {
		c.Add("turn_method", fault.ReasonContradictory, "is heeded only where short rows slope the shoulders")
	}
}
