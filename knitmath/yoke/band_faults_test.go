package yoke

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

func TestYokeBandRefusals(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	base := func(bands ...Band) CircularInput {
		return CircularInput{Gauge: standard, BodyStitches: 200, DepthRounds: new(60), Bands: bands}
	}
	losing := base()
	losing.LargestLossPercent = new(40.0)
	lost := base(Band{5, 4, nil})
	lost.LargestLossPercent, lost.TolerancePercent = new(51.0), new(20.5)
	far := base(Band{5, 4, nil})
	far.NeckToleranceStitches = new(1001)
	steep := base(Band{59, 4, nil})
	steep.NeckStitches = new(20)
	twice := base(Band{5, 4, new(40)})
	twice.Schedule, twice.DecreaseRounds = ScheduleCone, new(200)
	for name, c := range map[string]struct {
		in   CircularInput
		want []string
	}{
		"empty": {base(Band{}), []string{"bands[0].height_rounds REQUIRED", "bands[0].repeat_stitches REQUIRED"}},
		"ranges": {base(Band{-1, 1001, new(0)}), []string{"bands[0].height_rounds OUT_OF_RANGE", "bands[0].repeat_stitches OUT_OF_RANGE",
			"bands[0].even_before_rounds OUT_OF_RANGE"}},
		"too many":  {base(make([]Band, MaxBands+1)...), []string{"bands TOO_MANY"}},
		"tolerance": {far, []string{"neck_tolerance_stitches OUT_OF_RANGE"}},
		"no bands":  {losing, []string{"largest_loss_percent CONTRADICTORY"}},
		"percent":   {lost, []string{"largest_loss_percent OUT_OF_RANGE", "tolerance_percent OUT_OF_RANGE"}},
		"too high":  {base(Band{30, 4, nil}, Band{30, 4, nil}), []string{"bands INFEASIBLE", "depth_rounds INFEASIBLE"}},
		// 268 is reached down to half of it or up to twice, 536: no multiple of 600.
		"repeat too long": {base(Band{30, 600, nil}), []string{"bands[0].repeat_stitches INFEASIBLE"}},
		"both too long":   {base(Band{10, 600, nil}, Band{10, 700, nil}), []string{"bands INFEASIBLE", "body_stitches INFEASIBLE"}},
		"steep":           {steep, []string{"bands INFEASIBLE", "neck_stitches INFEASIBLE"}},
		"close steps":     {twice, []string{"decrease_rounds INFEASIBLE", "depth_rounds INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// Bands that are too high say how many rounds they take: 30 each, and one even below
// each of them. One round fewer above them is enough for the neck.
func TestBandsOfTheWholeDepth(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, DepthRounds: new(60),
		Bands: []Band{{30, 4, nil}, {30, 4, nil}}}
	_, err := PlanCircularYoke(in)
	if err == nil || !strings.Contains(err.Error(), "the bands take 62 rounds, and the depth has 60;") {
		t.Error(err)
	}
	in.DepthRounds = new(63)
	out, err := PlanCircularYoke(in)
	if err != nil || out.Bands[1].LastRoundNumber != 62 || out.Rounds[len(out.Rounds)-1].RoundNumber != 63 {
		t.Fatalf("%+v, %v", out.Rounds, err)
	}
	checkYoke(t, in, out)
}
