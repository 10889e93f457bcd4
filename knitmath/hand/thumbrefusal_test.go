package hand

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

func TestThumbRefusals(t *testing.T) {
	base := func(change func(*ThumbInput)) ThumbInput {
		in := ThumbInput{Gauge: ordinary, HandStitches: new(40)}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*ThumbInput)
		want   []string
	}{
		"empty": {func(in *ThumbInput) { *in = ThumbInput{} }, []string{"gauge REQUIRED"}},
		"no gusset": {func(in *ThumbInput) { in.Gusset, in.EveryRounds = GussetNone, new(2) },
			[]string{"every_rounds CONTRADICTORY"}},
		"held of a gusset": {func(in *ThumbInput) { in.HoldStitches = new(8) }, []string{"hold_stitches CONTRADICTORY"}},
		"ranges": {func(in *ThumbInput) {
			in.GussetStitches, in.StartStitches, in.EveryRounds, in.BesideStitches = new(2), new(0), new(21), new(-1)
			in.GapStitches, in.PalmStitches, in.LengthRounds, in.DisplayUnit = new(0), new(51), new(0), 9
		}, []string{"gusset_stitches OUT_OF_RANGE", "start_stitches OUT_OF_RANGE", "every_rounds OUT_OF_RANGE", "beside_stitches OUT_OF_RANGE",
			"gap_stitches OUT_OF_RANGE", "palm_stitches OUT_OF_RANGE", "length_rounds OUT_OF_RANGE", "display_unit UNKNOWN_VALUE"}},
		"odd growth": {func(in *ThumbInput) { in.GussetStitches = new(15) },
			[]string{"gusset_stitches INFEASIBLE"}},
		"odd growth from a start": {func(in *ThumbInput) { in.GussetStitches, in.StartStitches = new(15), new(4) },
			[]string{"gusset_stitches INFEASIBLE", "start_stitches INFEASIBLE"}},
		"width, rate and height": {func(in *ThumbInput) { in.GussetStitches, in.EveryRounds, in.GussetRounds = new(16), new(3), new(20) },
			[]string{"gusset_rounds CONTRADICTORY"}},
		"two heights": {func(in *ThumbInput) { in.GussetRounds, in.GussetCm = new(20), new(7.0) },
			[]string{"gusset_rounds CONTRADICTORY", "gusset_cm CONTRADICTORY"}},
		"a height of nothing": {func(in *ThumbInput) { in.Gusset, in.GussetCm = GussetNone, new(7.0) }, []string{"gusset_cm CONTRADICTORY"}},
		"too low": {func(in *ThumbInput) { in.GussetStitches, in.GussetRounds = new(16), new(6) },
			[]string{"gusset_rounds INFEASIBLE", "gusset_stitches INFEASIBLE"}},
		"too low a rate": {func(in *ThumbInput) { in.EveryRounds, in.GussetCm = new(20), new(3.0) },
			[]string{"gusset_cm INFEASIBLE", "every_rounds INFEASIBLE"}},
		"two sizes": {func(in *ThumbInput) { in.HandSize = SizeWoman }, []string{"hand_stitches CONTRADICTORY", "hand_size CONTRADICTORY"}},
		"no palm left": {func(in *ThumbInput) { in.PalmStitches = new(20) },
			[]string{"palm_stitches INFEASIBLE", "hand_stitches INFEASIBLE"}},
		"a tiny thumb": {func(in *ThumbInput) { in.Gusset, in.HoldStitches, in.GapStitches = GussetNone, new(2), new(2) },
			[]string{"hold_stitches INFEASIBLE", "gap_stitches INFEASIBLE"}},
		"too short": {func(in *ThumbInput) { in.LengthRounds = new(3) }, []string{"length_rounds INFEASIBLE"}},
		"hand too wide": {func(in *ThumbInput) {
			in.HandStitches, in.HandCm, in.Gauge = nil, new(60.0), &gauge.Gauge{Stitches: 200, Rows: 200}
		},
			[]string{"hand_cm INFEASIBLE", "gauge INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanThumb(base(c.change))
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// What a refused palm offers is taken.
func TestPalmRemedy(t *testing.T) {
	_, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), PalmStitches: new(20)})
	if err == nil || !strings.Contains(err.Error(), "from the edge to the gusset; 17 would do") {
		t.Fatal(err)
	}
	for palm, want := range map[int]bool{17: true, 18: false} {
		if _, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), PalmStitches: &palm}); (err == nil) != want {
			t.Errorf("%d: %v", palm, err)
		}
	}
}
