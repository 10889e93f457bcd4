package armhole

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// The reasons of notices.
const (
	// UnderarmNarrow: the first bind-off that is asked for is narrower than an inch to the nearest
	// stitch, and than what is taken if nobody says. Field is "underarm_stitches".
	UnderarmNarrow report.Reason = "UNDERARM_NARROW"
	// UnderarmWide: a modified drop binds off more than the 3 inches at an edge that are published
	// at the most. Field is what the bind-off comes from.
	UnderarmWide report.Reason = "UNDERARM_WIDE"
	// CapUnlikeRule: the cap, whose height no rule gives, is higher or lower than two thirds of the
	// armhole by over 3/16 of its depth. Field is "cap_height_rule" or what the height was given by.
	CapUnlikeRule report.Reason = "CAP_UNLIKE_RULE"
	// CapMoved: the cap is up to half an inch higher or lower than by the rule, so that its
	// edge fits. Field is "cap_height_rule".
	CapMoved report.Reason = "CAP_MOVED"
	// CapUpright: the height that is given, or a rule gives, leaves a cap whose sides stand upright, or
	// have a kink. Field is "cap_height_rule" or what the height was given by.
	CapUpright report.Reason = "CAP_UPRIGHT"
	// SleeveNarrow: the sleeve of a drop shoulder is narrower than the arm with its ease.
	// Field is "upper_arm_cm".
	SleeveNarrow report.Reason = "SLEEVE_NARROW"
)

// Thresholds.
const (
	narrowUnderarmCm = measure.CmPerInch // published for sweaters
	// unlikeRule is the part of an armhole's depth by which a cap may miss two thirds of it: an
	// inch and a half of the 8 inches of a common woman's size. The rules of cap height differ
	// by up to a sixth of the depth among themselves, as much of a child's as of a man's. Own
	// choice.
	unlikeRule = 3.0 / 16
)

// inch is the narrowest first bind-off that is advised, to the nearest stitch.
func (s *settled) inch() int { return s.st.Nearest(measure.Micrometres(narrowUnderarmCm)) }

// grown reports whether the garment is no child's: a child's armhole is small throughout.
func (s *settled) grown() bool { return s.chestCm > smallChest*measure.CmPerInch }

// notices are the remarks on what was found.
func (s settled) notices(out Armhole) []report.Notice {
	if s.style.straight() {
		return s.straightNotices()
	}
	var list []report.Notice
	narrow := s.grown() && s.underarm < min(s.inch(), s.usualUnderarm)
	if cm := s.st.SizeCm(s.underarm); narrow && s.unit.Size(cm) != s.unit.Size(narrowUnderarmCm) {
		list = append(list, report.Notice{Reason: UnderarmNarrow, Field: "underarm_stitches",
			Description: "the first bind-off is " + s.unit.Size(cm) + " wide; one of at least " + s.unit.Size(narrowUnderarmCm) +
				" is advised at each edge, or the sleeve binds under the arm"})
	}
	if n := out.Cap.HeightRows - s.capRows; s.rule > CapHeightRuleFree && n != 0 {
		list = append(list, report.Notice{Reason: CapMoved, Field: "cap_height_rule", Description: "by the rule the cap has " +
			report.CountOf(s.capRows, "rows") + "; with " + strconv.Itoa(out.Cap.HeightRows) + " its edge fits the armhole's"})
	}
	list = append(list, s.uprightNotices(out)...)
	if s.rule > CapHeightRuleFree || s.style == StyleSaddle {
		return list
	}
	if off := s.unlikeRule(out.Cap.HeightRows); off != 0 {
		field := s.heightField
		if field == "" {
			field = "cap_height_rule"
		}
		than, how := "higher", "a narrow, fitted sleeve"
		if off < 0 {
			than, how = "lower", "a wide, loose sleeve"
		}
		list = append(list, report.Notice{Reason: CapUnlikeRule, Field: field,
			Description: "the cap is " + s.unit.Size(math.Abs(off)) + " " + than + " than two thirds of the armhole: " + how})
	}
	return list
}

// unlikeRule is by how many cm a cap is higher or lower than two thirds of the armhole, 0 where it is little.
func (s *settled) unlikeRule(rows int) float64 {
	off := s.rw.SizeCm(rows) - s.ruleCm(CapHeightRuleTwoThirds)
	if math.Abs(off) <= unlikeRule*s.rw.SizeCm(s.depth) {
		return 0
	}
	return off
}

// straightNotices are those of a sleeve without a cap: it is as wide as the armhole is deep,
// whatever the arm is.
func (s settled) straightNotices() []report.Notice {
	var list []report.Notice
	if s.underarm > s.mostDropped() {
		list = append(list, report.Notice{Reason: UnderarmWide, Field: s.underarmField(),
			Description: report.CountOf(s.underarm, "stitches") + " (" + s.unit.Size(s.st.SizeCm(s.underarm)) +
				") are bound off at each edge, and " + report.CountOf(s.back-2*s.underarm, "stitches") +
				" are left of the back; published modified drops bind off " + s.unit.Size(dropMostInches*measure.CmPerInch) + " at the most"})
	}
	if s.in.UpperArmCm == nil {
		return list
	}
	arm, wide := measure.Centimetres(s.in.armUm()), s.st.SizeCm(s.sleeve)
	if wide >= arm {
		return list
	}
	return append(list, report.Notice{Reason: SleeveNarrow, Field: "upper_arm_cm", Description: "the sleeve is " + s.unit.Size(wide) +
		" around at its top, and the arm with its ease " + s.unit.Size(arm) + "; a deeper armhole makes it wider"})
}

// underarmField is the field that the bind-off of a modified drop comes from.
func (s settled) underarmField() string {
	switch {
	case s.in.UnderarmStitches != nil:
		return "underarm_stitches"
	case s.in.UnderarmRule != nil:
		return "underarm_rule"
	}
	return s.acrossField
}
