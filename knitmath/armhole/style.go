package armhole

import "example.com/knitmath/knitmath/fault"

// Style is how the sleeve meets the body.
type Style int32

// The styles.
const (
	StyleUnspecified Style = iota // set-in
	// StyleSetIn: a curved armhole, and a cap that follows it.
	StyleSetIn
	// StyleModifiedDrop: stitches are bound off at the underarm and the edges go straight up;
	// the sleeve ends in as many even rows as the bind-off is wide, and straight.
	StyleModifiedDrop
	// StyleDrop: nothing is shaped, and the sleeve ends straight.
	StyleDrop
	// StyleSaddle: a cap whose top goes on as a strap along the shoulder to the neck.
	StyleSaddle
)

// straight reports whether the sleeve has no cap.
func (s Style) straight() bool { return s == StyleModifiedDrop || s == StyleDrop }

// vetStyle refuses what the style has no use for.
func vetStyle(c *fault.Checks, in Input) {
	fault.Enum(c, "", "style", in.Style, StyleSaddle)
	if !c.Sound("style") {
		return
	}
	unfit := func(why string, given bool, field string) {
		if given {
			c.Add(field, fault.ReasonContradictory, "%s", why)
		}
	}
	if in.Style.straight() {
		const why = "is of a cap or a curve, and this style has none"
		unfit(why, in.AcrossFrontCm != nil, "across_front_cm")
		unfit(why, in.AcrossFrontStitches != nil, "across_front_stitches")
		unfit(why, in.LargestGroupStitches != nil, "largest_group_stitches")
		unfit(why, in.ShapingRows != nil, "shaping_rows")
		unfit(why, in.CapHeightRule != 0, "cap_height_rule")
		unfit(why, in.CapHeightCm != nil, "cap_height_cm")
		unfit(why, in.CapHeightRows != nil, "cap_height_rows")
		unfit(why, in.CapTopCm != nil, "cap_top_cm")
		unfit(why, in.CapTopStitches != nil, "cap_top_stitches")
		unfit(why, in.TopRule != nil, "top_rule")
	}
	if in.Style == StyleDrop {
		const why = "is of an edge that is bound off at the underarm; a drop shoulder goes straight up"
		unfit(why, in.AcrossBackCm != nil, "across_back_cm")
		unfit(why, in.AcrossBackStitches != nil, "across_back_stitches")
		unfit(why, in.AcrossRule != nil, "across_rule")
		unfit(why, in.UnderarmStitches != nil, "underarm_stitches")
		unfit(why, in.UnderarmRule != nil, "underarm_rule")
	}
	if in.Style != StyleSaddle {
		const why = "is where a saddle's strap ends; this style has none"
		unfit(why, in.NeckCm != nil, "neck_cm")
		unfit(why, in.NeckStitches != nil, "neck_stitches")
	}
}

// vetRules refuses rules of counts that are given, and underarms said twice.
func vetRules(c *fault.Checks, in Input) {
	ruled := func(rule, given bool, field, count string) {
		if rule && given {
			c.Add(field, fault.ReasonContradictory, "is for stitches that are worked out; %s are given", count)
		}
	}
	ruled(in.StitchRule != nil, in.BackStitches != nil, "stitch_rule", "back_stitches")
	ruled(in.SleeveRule != nil, in.SleeveStitches != nil, "sleeve_rule", "sleeve_stitches")
	ruled(in.AcrossRule != nil, in.AcrossBackStitches != nil, "across_rule", "across_back_stitches")
	ruled(in.TopRule != nil, in.CapTopStitches != nil, "top_rule", "cap_top_stitches")
	ruled(in.UnderarmRule != nil, in.UnderarmStitches != nil, "underarm_rule", "underarm_stitches")
	if in.Style == StyleModifiedDrop {
		across := in.AcrossBackCm != nil || in.AcrossBackStitches != nil
		c.AtMostOne(in.UnderarmStitches != nil, across, "underarm_stitches", "across_back_cm")
		if across && in.UnderarmRule != nil {
			c.Add("underarm_rule", fault.ReasonContradictory, "is for an underarm that is worked out; the width across the back settles it")
		}
	}
}
