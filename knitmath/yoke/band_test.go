package yoke

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
)

// Worked by hand. Body 200: 268 joined, neck 80, 70 rounds. Three bands: 15 rounds
// from 3, repeat 6; 11 rounds from 37, repeat 8; 7 rounds from 54, repeat 5.
// Half-way up they lie at 9.5/70, 41.5/70 and 56.5/70 of the depth, where the
// percentage system wants 268, 201 and 134 stitches (the neck of 80 scales 40 %
// of 200 = 80 from 0.3 * 268 = 80.4: 268 - 188/187.6*67 = 200.857 and 133.714).
// Nearest multiples: 270 (of 6; 264 is farther), 200 (of 8), 135 (of 5). The
// schedule's rounds are 35, 53 and 70: 35 lies in the plain rounds 18-36, 53 in
// 48-53, so the changes are worked there, and the first on round 2.
func TestYokeBandsByHand(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Bands: []Band{
		{15, 6, new(2)}, {11, 8, new(19)}, {7, 5, new(6)}}}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	checkYoke(t, in, out)
	var rounds [][3]int
	for _, r := range out.DecreaseRounds {
		rounds = append(rounds, [3]int{r.RoundNumber, r.StartStitches, r.EndStitches})
	}
	want := [][3]int{{2, 268, 270}, {35, 270, 200}, {53, 200, 135}, {70, 135, 80}}
	if !slices.Equal(rounds, want) {
		t.Errorf("rounds %v, want %v", rounds, want)
	}
	for i, w := range []float64{268, 268 - 188/187.6*67, 268 - 188/187.6*134} {
		knittest.Near(t, "wanted", out.Bands[i].WantedStitches, w, 1e-9)
	}
	wantDirections := []string{
		"Place 16 stitches on hold at each underarm: of the body at both sides, and of each sleeve.",
		"Join body and sleeves in the round: 268 stitches. From the beginning of the round, left and right as worn: " +
			"back 84, left sleeve 50, front 84, right sleeve 50.",
		"Round 1: work even.",
		"Round 2: [k134, M1L] twice (270 stitches).",
		"Rounds 3-17: band 1 on 270 stitches, 45 repeats of 6.",
		"Rounds 18-34: work even.",
		"Round 35: [[k2, k2tog] 6 times, k1, k2tog] 10 times (200 stitches).",
		"Round 36: work even.",
		"Rounds 37-47: band 2 on 200 stitches, 25 repeats of 8.",
		"Rounds 48-52: work even.",
		"Round 53: [[k1, k2tog] 12 times, k2, k2tog] 5 times (135 stitches).",
		"Rounds 54-60: band 3 on 135 stitches, 27 repeats of 5.",
		"Rounds 61-69: work even.",
		"Round 70: [k1, k2tog, k2tog] 25 times, [k2tog] 5 times (80 stitches).", // 25 gaps of 1 and 30 of 0: 135 - 2*55 = 25 plain
	}
	if !slices.Equal(out.Directions(), wantDirections) {
		t.Errorf("%q, want %q", out.Directions(), wantDirections)
	}
}

// A band that ends on the last round has the count of the neck: 80 wanted, of
// repeats of 12 there is 84 within 4, none within 3. Then 80 itself has repeats of
// 10, and the neck is 84 only with tolerance.
func TestYokeBandAtTheNeck(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Schedule: ScheduleCone,
		DepthRounds: new(40), Bands: []Band{{18, 11, nil}, {20, 12, nil}}, NeckToleranceStitches: new(4)}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	checkYoke(t, in, out)
	if out.NeckStitches != 84 || out.Bands[1].Stitches != 84 || out.NeckCm != 42 {
		t.Errorf("neck %d (%v cm), band %+v", out.NeckStitches, out.NeckCm, out.Bands[1])
	}
	reasonsOf := func() (all []string) {
		for _, n := range out.Notices {
			all = append(all, n.Field+" "+string(n.Reason))
		}
		return all
	}
	if got := reasonsOf(); !slices.Contains(got, "neck_tolerance_stitches NECK_IN_TOLERANCE") ||
		!slices.Contains(got, "bands[0].repeat_stitches FAR_FROM_SCHEDULE") {
		t.Errorf("notices %v", out.Notices) // 165 = 15 * 11, so that k2tog comes down to 84, where the cone wants 224
	}
	in.NeckToleranceStitches = new(3)
	_, err = PlanCircularYoke(in)
	knittest.WantViolations(t, err, "bands[1].repeat_stitches INFEASIBLE", "neck_tolerance_stitches INFEASIBLE")
	if got := err.Error(); !strings.Contains(got, "nearest repeat that would do is 11, on 77 stitches") ||
		!strings.Contains(got, "a tolerance of 4 would do") {
		t.Error(got)
	}
}

func TestYokeBandsAtTheLimit(t *testing.T) {
	steps := make([]Step, MaxSteps)
	for i := range steps {
		steps[i] = Step{float64(i+1) / MaxSteps, 0.004}
	}
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: 5_000, DepthRounds: new(MaxRounds),
		Schedule: ScheduleOwn, Steps: steps, Spread: shaping.GapSpreadInterleaved, NeckToleranceStitches: new(20)}
	for i := range MaxBands {
		in.Bands = append(in.Bands, Band{5, 2 + i, new(30)})
	}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	if words := len(strings.Join(out.Directions(), "")); words > 2_000_000 || len(out.DecreaseRounds) > MaxSteps+MaxBands {
		t.Errorf("%d decrease rounds, directions of %d characters", len(out.DecreaseRounds), words)
	}
	if !testing.Short() {
		checkYoke(t, in, out)
	}
}

func FuzzPlanCircularYokeBands(f *testing.F) {
	f.Add(200, 80, 70, 3, int32(1), []byte{15, 6, 2, 11, 8, 19, 7, 5, 6})
	f.Add(160, 60, 50, 0, int32(2), []byte{5, 12, 1, 5, 12, 1, 5, 10, 1})
	f.Fuzz(func(t *testing.T, body, neck, rounds, tolerance int, schedule int32, bands []byte) {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body % 600, NeckStitches: &neck,
			DepthRounds: &rounds, Schedule: Schedule(schedule), NeckToleranceStitches: &tolerance}
		for b := range slices.Chunk(bands, 3) {
			if len(b) == 3 {
				in.Bands = append(in.Bands, Band{int(b[0]), int(b[1]), new(int(b[2]))})
			}
		}
		out, err := PlanCircularYoke(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkYoke(t, in, out)
	})
}

// A yoke of 500 stitches with six bands.
func BenchmarkYokeBands(b *testing.B) {
	b.ReportAllocs()
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 30, Rows: 40}, BodyStitches: 373, SleeveStitches: new(124), UnderarmStitches: new(30),
		DepthRounds: new(90),
		Schedule:    ScheduleCone, NeckToleranceStitches: new(4)}
	for i, repeat := range []int{12, 10, 8, 9, 7, 6} {
		in.Bands = append(in.Bands, Band{8 + i, repeat, new(3)})
	}
	for b.Loop() {
		if _, err := PlanCircularYoke(in); err != nil {
			b.Fatal(err)
		}
	}
}
