package yoke

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
)

// 5,600 stitches and their sleeves join 5600 + 2*1848 - 4*448 = 7,504. To a neck of 3,804
// the rounds take 3,700 away, which may be mixed evenly; one more may not, but grouped.
func TestYokeOfManyChanges(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: 5_600, NeckStitches: new(3_804), DepthRounds: new(200)}
	if _, err := PlanCircularYoke(in); err != nil {
		t.Error(err)
	}
	in.NeckStitches = new(3_803)
	_, err := PlanCircularYoke(in)
	knittest.WantViolations(t, err, "spread INFEASIBLE")
	in.Spread = shaping.GapSpreadGrouped
	if _, err := PlanCircularYoke(in); err != nil {
		t.Error(err)
	}
}

// On 10,000 stitches 120 places may be chosen: 40 bands of a round, two rounds apart,
// below which one of 120 decrease rounds each becomes the band's, and all above.
func TestYokeOfManyPlaces(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: 7_400, NeckStitches: new(6_000), DepthRounds: new(120),
		Schedule: ScheduleCone, DecreaseRounds: new(120), Spread: shaping.GapSpreadGrouped}
	in.Bands = slices.Repeat([]Band{{1, 1, nil}}, 2)
	if _, err := PlanCircularYoke(in); err != nil {
		t.Error(err)
	}
	in.DepthRounds, in.DecreaseRounds = new(130), new(130)
	_, err := PlanCircularYoke(in)
	knittest.WantViolations(t, err, "bands INFEASIBLE", "decrease_rounds INFEASIBLE")
}
