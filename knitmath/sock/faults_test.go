package sock

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
)

var standard = &gauge.Gauge{Stitches: 30, Rows: 42}

func TestHeelRefusals(t *testing.T) {
	for name, c := range map[string]struct {
		in   HeelInput
		want []string
	}{
		"empty": {HeelInput{}, []string{"round_stitches REQUIRED", "foot_circumference_cm REQUIRED"}},
		"twice": {HeelInput{RoundStitches: new(60), FootCircumferenceCm: new(22.0), Gauge: standard},
			[]string{"round_stitches CONTRADICTORY", "foot_circumference_cm CONTRADICTORY"}},
		"foot without gauge": {HeelInput{FootCircumferenceCm: new(22.0)}, []string{"gauge REQUIRED"}},
		"out of range": {HeelInput{Kind: 9, RoundStitches: new(11), HeelStitches: new(5), FlapRows: new(1), FlapStitch: 3, CentreStitches: new(0),
			PickUpStitches: new(0), GussetEveryRounds: new(7), SuccessiveRounds: new(0), TurnMethod: 4, CornerStitches: new(-1), EndStitches: new(3),
			DisplayUnit: 9},
			[]string{"kind UNKNOWN_VALUE", "round_stitches OUT_OF_RANGE", "heel_stitches OUT_OF_RANGE", "flap_rows OUT_OF_RANGE",
				"flap_stitch UNKNOWN_VALUE", "centre_stitches OUT_OF_RANGE", "pick_up_stitches OUT_OF_RANGE", "gusset_every_rounds OUT_OF_RANGE",
				"successive_rounds OUT_OF_RANGE", "turn_method UNKNOWN_VALUE", "corner_stitches OUT_OF_RANGE", "end_stitches OUT_OF_RANGE",
				"display_unit UNKNOWN_VALUE"}},
		"foot of the cuff down": {HeelInput{RoundStitches: new(60), Gauge: standard, FootLengthCm: new(24.0)},
			[]string{"foot_length_cm CONTRADICTORY"}},
		"short foot": {HeelInput{Direction: DirectionToeUp, RoundStitches: new(60), Gauge: standard, FootLengthCm: new(4.0)},
			[]string{"foot_length_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"yarn overs": {HeelInput{Kind: HeelKindShortRows, RoundStitches: new(60), TurnMethod: shortrow.TurnMethodYarnOver},
			[]string{"turn_method CONTRADICTORY"}},
		"not finite": {HeelInput{FootCircumferenceCm: new(math.NaN()), EasePercent: new(math.Inf(1)), Gauge: standard},
			[]string{"foot_circumference_cm NOT_FINITE", "ease_percent NOT_FINITE"}},
		"of a foot alone": {HeelInput{RoundStitches: new(60), EasePercent: new(0.0), StitchRule: &gauge.CountRule{Multiple: new(2)}},
			[]string{"ease_percent CONTRADICTORY", "stitch_rule CONTRADICTORY"}},
		"large foot": {HeelInput{FootCircumferenceCm: new(100.0), Gauge: &gauge.Gauge{Stitches: 90, Rows: 120}},
			[]string{"foot_circumference_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"rule": {HeelInput{FootCircumferenceCm: new(22.0), Gauge: standard,
			StitchRule: &gauge.CountRule{Multiple: new(1000), Rounding: measure.RoundingDown}},
			[]string{"foot_circumference_cm INFEASIBLE", "gauge INFEASIBLE", "stitch_rule INFEASIBLE"}},
		"of flaps": {HeelInput{Kind: HeelKindShortRows, RoundStitches: new(60), FlapRows: new(30), FlapStitch: FlapStitchStockinette,
			PickUpStitches: new(16), GussetEveryRounds: new(2), SuccessiveRounds: new(1), CornerStitches: new(1), EndStitches: new(16)},
			[]string{"flap_rows CONTRADICTORY", "flap_stitch CONTRADICTORY", "pick_up_stitches CONTRADICTORY",
				"gusset_every_rounds CONTRADICTORY", "successive_rounds CONTRADICTORY", "corner_stitches CONTRADICTORY", "end_stitches CONTRADICTORY"}},
		"not of flaps": {HeelInput{RoundStitches: new(60), TurnMethod: shortrow.TurnMethodGerman, CornerStitches: new(1), EndStitches: new(16)},
			[]string{"turn_method CONTRADICTORY", "corner_stitches CONTRADICTORY", "end_stitches CONTRADICTORY"}},
		"not of waste yarn": {HeelInput{Kind: HeelKindWasteYarn, RoundStitches: new(60), CentreStitches: new(10), TurnMethod: 1},
			[]string{"centre_stitches CONTRADICTORY", "turn_method CONTRADICTORY"}},
		"not toe-up": {HeelInput{Direction: DirectionToeUp, RoundStitches: new(60), PickUpStitches: new(16), SuccessiveRounds: new(2)},
			[]string{"pick_up_stitches CONTRADICTORY", "successive_rounds CONTRADICTORY"}},
		"not of toe-up squares": {HeelInput{Kind: HeelKindSquare, Direction: DirectionToeUp, RoundStitches: new(60), CentreStitches: new(10),
			TurnMethod: 1}, []string{"centre_stitches CONTRADICTORY", "turn_method CONTRADICTORY"}},
		"not of toe-up hearts": {HeelInput{Kind: HeelKindHeart, Direction: DirectionToeUp, RoundStitches: new(60), FlapRows: new(28),
			FlapStitch: 1}, []string{"flap_rows CONTRADICTORY", "flap_stitch CONTRADICTORY"}},
		"odd toe-up flap": {HeelInput{Direction: DirectionToeUp, RoundStitches: new(60), FlapRows: new(29)}, []string{"flap_rows INFEASIBLE"}},
		"odd toe-up centre": {HeelInput{Direction: DirectionToeUp, RoundStitches: new(60), CentreStitches: new(9)},
			[]string{"centre_stitches INFEASIBLE"}},
		"direction":     {HeelInput{Direction: 3, RoundStitches: new(60)}, []string{"direction UNKNOWN_VALUE"}},
		"all heel":      {HeelInput{RoundStitches: new(20), HeelStitches: new(19)}, []string{"heel_stitches INFEASIBLE"}},
		"odd flap":      {HeelInput{RoundStitches: new(60), FlapRows: new(31)}, []string{"flap_rows INFEASIBLE"}},
		"odd centre":    {HeelInput{RoundStitches: new(60), CentreStitches: new(7)}, []string{"centre_stitches INFEASIBLE"}},
		"wide centre":   {HeelInput{RoundStitches: new(60), CentreStitches: new(26)}, []string{"centre_stitches INFEASIBLE"}},
		"narrow centre": {HeelInput{RoundStitches: new(60), CentreStitches: new(1)}, []string{"centre_stitches INFEASIBLE"}},
		"narrow heel":   {HeelInput{RoundStitches: new(20), HeelStitches: new(7)}, []string{"heel_stitches INFEASIBLE"}},
		"picked up too many": {HeelInput{RoundStitches: new(60), FlapRows: new(20), PickUpStitches: new(21)},
			[]string{"pick_up_stitches INFEASIBLE", "flap_rows INFEASIBLE"}},
		"picked up too few": {HeelInput{RoundStitches: new(60), PickUpStitches: new(5)}, []string{"pick_up_stitches INFEASIBLE"}},
		"flap too short":    {HeelInput{RoundStitches: new(60), FlapRows: new(8)}, []string{"flap_rows INFEASIBLE"}},
		"more in succession than there are": {HeelInput{RoundStitches: new(60), SuccessiveRounds: new(20)},
			[]string{"successive_rounds INFEASIBLE"}},
		"opening": {HeelInput{Kind: HeelKindWasteYarn, RoundStitches: new(60), EndStitches: new(17)}, []string{"end_stitches INFEASIBLE"}},
		"opening too small": {HeelInput{Kind: HeelKindWasteYarn, RoundStitches: new(60), EndStitches: new(62)},
			[]string{"round_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"small round": {HeelInput{RoundStitches: new(13)}, []string{"round_stitches INFEASIBLE"}},
		"small foot": {HeelInput{FootCircumferenceCm: new(4.4), Gauge: standard},
			[]string{"foot_circumference_cm INFEASIBLE"}},
		"picked up too many of the usual": {HeelInput{RoundStitches: new(60), PickUpStitches: new(31)}, []string{"pick_up_stitches INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanHeel(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func TestToeRefusals(t *testing.T) {
	for name, c := range map[string]struct {
		in   ToeInput
		want []string
	}{
		"empty": {ToeInput{}, []string{"round_stitches REQUIRED", "foot_circumference_cm REQUIRED"}},
		"out of range": {ToeInput{Kind: 9, RoundStitches: new(401), FootLengthCm: new(1.0), LengthEaseCm: new(11.0), WedgeCount: new(2),
			Rates: []solid.Rate{{}, rate(101, 301)}, MoreEvenRounds: new(11), CentreStitches: new(0), TurnMethod: 4,
			TipStitches: new(0), DisplayUnit: 3},
			[]string{"kind UNKNOWN_VALUE", "round_stitches OUT_OF_RANGE", "foot_length_cm OUT_OF_RANGE", "length_ease_cm OUT_OF_RANGE",
				"foot_length_cm CONTRADICTORY", "wedge_count OUT_OF_RANGE", "rates[0].every_rounds REQUIRED", "rates[0].times REQUIRED",
				"rates[1].every_rounds OUT_OF_RANGE", "rates[1].times OUT_OF_RANGE", "more_even_rounds OUT_OF_RANGE", "centre_stitches OUT_OF_RANGE",
				"turn_method UNKNOWN_VALUE", "tip_stitches OUT_OF_RANGE", "display_unit UNKNOWN_VALUE"}},
		"yarn overs": {ToeInput{Kind: ToeKindShortRows, RoundStitches: new(60), TurnMethod: shortrow.TurnMethodYarnOver},
			[]string{"turn_method CONTRADICTORY"}},
		"not toe-up": {ToeInput{Direction: DirectionToeUp, RoundStitches: new(60), Gauge: standard, FootLengthCm: new(24.0),
			LengthEaseCm: new(0.0)}, []string{"foot_length_cm CONTRADICTORY", "length_ease_cm CONTRADICTORY"}},
		"coarse rule": {ToeInput{FootCircumferenceCm: new(22.0), Gauge: standard, StitchRule: &gauge.CountRule{Multiple: new(1000)}},
			[]string{"stitch_rule INFEASIBLE"}},
		"tiny foot": {ToeInput{FootCircumferenceCm: new(3.0), Gauge: standard},
			[]string{"foot_circumference_cm INFEASIBLE", "gauge INFEASIBLE"}},
		"no direction":    {ToeInput{Direction: 3, RoundStitches: new(60)}, []string{"direction UNKNOWN_VALUE"}},
		"many rates":      {ToeInput{RoundStitches: new(60), Rates: make([]solid.Rate, 21)}, []string{"rates TOO_MANY"}},
		"ease alone":      {ToeInput{RoundStitches: new(60), LengthEaseCm: new(-1.0)}, []string{"length_ease_cm CONTRADICTORY"}},
		"length no gauge": {ToeInput{RoundStitches: new(60), FootLengthCm: new(24.0)}, []string{"foot_length_cm CONTRADICTORY"}},
		"not of wedges": {ToeInput{RoundStitches: new(60), WedgeCount: new(4), MoreEvenRounds: new(1), CentreStitches: new(10), TurnMethod: 1},
			[]string{"wedge_count CONTRADICTORY", "more_even_rounds CONTRADICTORY", "centre_stitches CONTRADICTORY", "turn_method CONTRADICTORY"}},
		"not of short rows": {ToeInput{Kind: ToeKindShortRows, RoundStitches: new(60), Rates: []solid.Rate{rate(2, 3)}, TipStitches: new(8)},
			[]string{"rates CONTRADICTORY", "tip_stitches CONTRADICTORY"}},
		"nothing to decrease": {ToeInput{RoundStitches: new(60), TipStitches: new(60)},
			[]string{"round_stitches INFEASIBLE", "tip_stitches INFEASIBLE"}},
		"many wedges": {ToeInput{Kind: ToeKindStar, RoundStitches: new(60), WedgeCount: new(40)},
			[]string{"round_stitches INFEASIBLE", "wedge_count INFEASIBLE"}},
		"odd centre": {ToeInput{Kind: ToeKindShortRows, RoundStitches: new(60), CentreStitches: new(9)}, []string{"centre_stitches INFEASIBLE"}},
		"wide centre": {ToeInput{Kind: ToeKindShortRows, RoundStitches: new(60), CentreStitches: new(30)},
			[]string{"centre_stitches INFEASIBLE"}},
		"endless sections": {ToeInput{Kind: ToeKindRound, RoundStitches: new(400), WedgeCount: new(3)},
			[]string{"round_stitches INFEASIBLE", "wedge_count INFEASIBLE"}},
		"short foot": {ToeInput{RoundStitches: new(60), FootLengthCm: new(4.0), Gauge: standard},
			[]string{"foot_length_cm INFEASIBLE", "gauge INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanToe(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}
