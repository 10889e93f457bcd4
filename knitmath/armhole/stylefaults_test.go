package armhole

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

func TestStyleFaults(t *testing.T) {
	all := Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, ChestCm: new(92.0), AcrossBackCm: new(36.0), ArmholeDepthCm: new(19.5),
		UpperArmCm: new(28.5), AcrossFrontStitches: new(70), FrontStitches: new(107), UnderarmStitches: new(5), LargestGroupStitches: new(3),
		ShapingRows: new(20), CapHeightRows: new(40), CapTopCm: new(7.0), NeckCm: new(14.0), TopRule: &gauge.CountRule{},
		UnderarmRule: &gauge.CountRule{}, AcrossRule: &gauge.CountRule{}}
	ofCap := []string{"across_front_stitches CONTRADICTORY", "largest_group_stitches CONTRADICTORY", "shaping_rows CONTRADICTORY",
		"cap_height_rows CONTRADICTORY", "cap_top_cm CONTRADICTORY", "top_rule CONTRADICTORY"}
	for _, c := range []struct {
		style Style
		want  []string
	}{
		{StyleDrop, append(slices.Clone(ofCap), "across_back_cm CONTRADICTORY", "across_rule CONTRADICTORY", "underarm_stitches CONTRADICTORY",
			"underarm_rule CONTRADICTORY", "neck_cm CONTRADICTORY", "underarm_rule CONTRADICTORY")},
		{StyleModifiedDrop, append(slices.Clone(ofCap), "neck_cm CONTRADICTORY", "underarm_rule CONTRADICTORY", "underarm_stitches CONTRADICTORY",
			"across_back_cm CONTRADICTORY", "underarm_rule CONTRADICTORY")},
		{StyleSetIn, []string{"neck_cm CONTRADICTORY", "underarm_rule CONTRADICTORY",
			"across_front_stitches INFEASIBLE"}},
		{5, []string{"style UNKNOWN_VALUE"}},
	} {
		in := all
		in.Style = c.style
		_, err := Plan(in)
		t.Run(fmt.Sprint(c.style), func(t *testing.T) {
			if c.style == 5 {
				if err == nil || !strings.Contains(err.Error(), "style") {
					t.Error(err)
				}
				return
			}
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func TestSleeveNarrow(t *testing.T) {
	in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, Style: StyleDrop, ChestCm: new(90.0), ArmholeDepthCm: new(15.0),
		UpperArmCm: new(30.0)}
	if out := mustPlan(t, in); !hasNotice(out, SleeveNarrow) {
		t.Errorf("%+v", out.Notices)
	}
	in.UpperArmCm = new(24.0)
	if out := mustPlan(t, in); len(out.Notices) != 0 {
		t.Errorf("%+v", out.Notices)
	}
}
