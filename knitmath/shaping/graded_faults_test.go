package shaping

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Each fault by itself, of the sizes by their places, and several at once.
func TestGradedTaperRefusals(t *testing.T) {
	good := func() GradedTaperInput { return graded([3]int{44, 64, 80}, [3]int{46, 66, 80}) }
	for name, c := range map[string]struct {
		change func(*GradedTaperInput)
		want   []string
	}{
		"no sizes":  {func(in *GradedTaperInput) { in.Sizes = nil }, []string{"sizes REQUIRED"}},
		"too many":  {func(in *GradedTaperInput) { in.Sizes = slices.Repeat(in.Sizes, 11) }, []string{"sizes TOO_MANY"}},
		"long name": {func(in *GradedTaperInput) { in.Sizes[1].Name = strings.Repeat("L", 101) }, []string{"sizes[1].name TOO_MANY"}},
		"empty size": {func(in *GradedTaperInput) { in.Sizes[1] = TaperSize{} }, []string{"sizes[1].start_stitches REQUIRED",
			"sizes[1].end_stitches REQUIRED", "sizes[1].height_rows REQUIRED", "sizes[1].height_cm REQUIRED"}},
		"no gauge": {func(in *GradedTaperInput) { in.Sizes[1].HeightRows, in.Sizes[1].HeightCm = nil, knittest.Ptr(40.0) },
			[]string{"gauge REQUIRED"}},
		"bad gauge": {func(in *GradedTaperInput) { in.Gauge = &gauge.Gauge{Stitches: 22} }, []string{"gauge.rows REQUIRED"}},
		"nothing to shape": {func(in *GradedTaperInput) {
			for i := range in.Sizes {
				in.Sizes[i].EndStitches = in.Sizes[i].StartStitches
			}
		}, []string{"sizes[0].start_stitches INFEASIBLE", "sizes[0].end_stitches INFEASIBLE", "sizes[1].start_stitches INFEASIBLE",
			"sizes[1].end_stitches INFEASIBLE"}},
		"not whole": {func(in *GradedTaperInput) { in.Sizes[1].EndStitches = 67 },
			[]string{"sizes[1].start_stitches INFEASIBLE", "sizes[1].end_stitches INFEASIBLE"}},
		"too few rows": {func(in *GradedTaperInput) { in.Sizes[0].HeightRows = knittest.Ptr(18) },
			[]string{"sizes[0].end_stitches INFEASIBLE", "sizes[0].height_rows INFEASIBLE"}},
		"any row flat": {func(in *GradedTaperInput) { in.RowChoice = RowChoiceAny }, []string{"row_choice CONTRADICTORY"}},
		"unknown rows": {func(in *GradedTaperInput) { in.RowChoice = 3 }, []string{"row_choice UNKNOWN_VALUE"}},
		"unknown unit": {func(in *GradedTaperInput) { in.DisplayUnit = 9 }, []string{"display_unit UNKNOWN_VALUE"}},
		"excess":       {func(in *GradedTaperInput) { in.ToleranceStitches = knittest.Ptr(-1.0) }, []string{"tolerance_stitches OUT_OF_RANGE"}},
		"side of round": {func(in *GradedTaperInput) { in.Construction, in.FirstSide = stitch.InTheRound, stitch.WrongSide },
			[]string{"first_side CONTRADICTORY"}},
		"even rows": {func(in *GradedTaperInput) {
			in.EvenBeforeRows, in.EvenAfterRows = knittest.Ptr(-1), knittest.Ptr(10001)
		},
			[]string{"even_before_rows OUT_OF_RANGE", "even_after_rows OUT_OF_RANGE"}},
		"several": {func(in *GradedTaperInput) {
			in.Sizes[0].StartStitches, in.Edges, in.Sizes[1].EndStitches = -1, 4, 10001
		},
			[]string{"sizes[0].start_stitches OUT_OF_RANGE", "sizes[1].end_stitches OUT_OF_RANGE", "edges UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			in := good()
			c.change(&in)
			_, err := PlanGradedTaper(in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// What a refusal of one size offers makes a plan of all sizes.
func TestRemediesOfSizesAreTried(t *testing.T) {
	offered := map[string]int{}
	for rows := 8; rows <= 40; rows += 4 {
		for end := 50; end <= 80; end += 3 {
			for variant := range 4 {
				in := graded([3]int{44, 64, 120}, [3]int{46, end, rows}, [3]int{48, 68, 120})
				in.EvenBeforeRows, in.EvenAfterRows = knittest.Ptr(2*(variant%2)), knittest.Ptr(3)
				if variant > 1 {
					in.Construction, in.RowChoice = stitch.InTheRound, RowChoiceRightSide
				}
				_, err := PlanGradedTaper(in)
				if err == nil {
					continue
				}
				for _, o := range remediesIn(t, err, offered) {
					if _, err := PlanGradedTaper(in.with(1, o.change)); err != nil {
						t.Errorf("%+v: with %+v as offered: %v", in, o.change, err)
					}
				}
			}
		}
	}
	for _, kind := range []string{"any row", "double", "even", "end"} {
		if offered[kind] < 3 {
			t.Errorf("offered %v: the sweep has shrunk", offered)
		}
	}
}
