package shortrow

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// checkWedgeRefusal: only too steep a wedge is refused, or one that no grouping
// fits; the most pairs that fit are given by the room a turn needs.
func checkWedgeRefusal(t *testing.T, in WedgeInput, err error) {
	t.Helper()
	if in.Spread == TurnSpreadGrouped {
		ungrouped := in
		ungrouped.Spread = TurnSpreadInterleaved
		_, e := PlanWedge(ungrouped)
		if e == nil {
			knittest.WantViolations(t, err, "spread INFEASIBLE")
			if strings.Contains(err.Error(), "leave the profile by 2 rows") {
				t.Fatalf("%s: %v", describe(in), err)
			}
			return
		}
		in, err = ungrouped, e
	}
	pairs := (*in.RiseRows + 1) / 2
	room := in.WidthStitches - 1 // turns at 1 .. W-1
	switch in.TallEnd {
	case TallEndCentre, TallEndSides: // half of the others; a stitch in the middle, or at both sides, that none passes
		room = (in.WidthStitches - 1) / 2
	}
	if in.TurnMethod == TurnMethodGerman {
		room-- // and a stitch beyond the double one, which has a row more
	}
	if pairs <= room {
		t.Fatalf("%s refused though it fits: %v", describe(in), err)
	}
}

func TestWedgeRefusals(t *testing.T) {
	two, six, zero := 2, 6, 0
	big, nan := 5000, math.NaN()
	cm, steep, tiny := 5.0, 85.0, 0.1
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	loose := &gauge.Gauge{Stitches: 5, Rows: 3}
	for name, c := range map[string]struct {
		in   WedgeInput
		want []string
	}{
		"empty": {WedgeInput{}, []string{"width_stitches REQUIRED", "rise_rows REQUIRED", "rise_cm REQUIRED",
			"rise_angle_degrees REQUIRED", "profile_rows REQUIRED", "profile_cm REQUIRED", "tall_end REQUIRED"}},
		"twice": {WedgeInput{WidthStitches: 10, RiseRows: &six, RiseCm: &cm, Gauge: standard, TallEnd: 1},
			[]string{"rise_rows CONTRADICTORY", "rise_cm CONTRADICTORY"}},
		"ranges": {WedgeInput{WidthStitches: 1, RiseRows: &zero, TallEnd: 9},
			[]string{"width_stitches OUT_OF_RANGE", "rise_rows OUT_OF_RANGE", "tall_end UNKNOWN_VALUE"}},
		"too many rows": {WedgeInput{WidthStitches: 10000, RiseRows: &big, TallEnd: 1}, []string{"rise_rows OUT_OF_RANGE"}},
		"nan":           {WedgeInput{WidthStitches: 10, RiseCm: &nan, Gauge: standard, TallEnd: 1}, []string{"rise_cm NOT_FINITE"}},
		"no gauge":      {WedgeInput{WidthStitches: 10, RiseCm: &cm, TallEnd: 1}, []string{"gauge REQUIRED"}},
		"angle": {WedgeInput{WidthStitches: 10, RiseAngleDegrees: &steep, Gauge: standard, TallEnd: 1},
			[]string{"rise_angle_degrees OUT_OF_RANGE"}},
		"steep": {WedgeInput{WidthStitches: 3, RiseRows: &six, TallEnd: 1},
			[]string{"width_stitches INFEASIBLE", "rise_rows INFEASIBLE"}},
		"no centre": {WedgeInput{WidthStitches: 2, RiseRows: &two, TallEnd: TallEndCentre},
			[]string{"width_stitches INFEASIBLE", "tall_end INFEASIBLE"}},
		"no pair": {WedgeInput{WidthStitches: 10, RiseCm: &tiny, Gauge: loose, TallEnd: 1}, []string{"rise_cm INFEASIBLE"}},
		"enums": {WedgeInput{WidthStitches: 10, RiseRows: &two, TallEnd: -1, Order: 3, TurnMethod: 4, Rounding: 4, Spread: 4,
			DisplayUnit: 3},
			[]string{"tall_end UNKNOWN_VALUE", "order UNKNOWN_VALUE", "turn_method UNKNOWN_VALUE", "rounding UNKNOWN_VALUE",
				"spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanWedge(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// The narrowest wedge that a refusal names can be knit.
func TestNarrowestWedges(t *testing.T) {
	for tall := TallEndRight; tall <= TallEndSides; tall++ {
		for method := TurnMethodWrapAndTurn; method <= TurnMethodYarnOver; method++ {
			in := WedgeInput{WidthStitches: 2, RiseRows: knittest.Ptr(2), TallEnd: tall, TurnMethod: method}
			for ; ; in.WidthStitches++ {
				_, err := PlanWedge(in)
				if err == nil {
					break
				}
				_, after, _ := strings.Cut(err.Error(), "this rise takes at least ")
				least, _, _ := strings.Cut(after, ",")
				in.WidthStitches, _ = strconv.Atoi(least)
				if _, err := PlanWedge(in); err != nil {
					t.Fatalf("%s: %v", describe(in), err)
				}
				in.WidthStitches--
				if _, err := PlanWedge(in); err == nil {
					t.Fatalf("%s can be knit", describe(in))
				}
			}
		}
	}
}
