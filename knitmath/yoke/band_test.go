package yoke

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
)

// Worked by hand. Body 200: 268 joined, neck 80, 70 rounds. Three bands: 15 rounds
// from 3, repeat 6; 11 rounds from 37, repeat 8; 7 rounds from 54, repeat 4.
// Half-way up they lie at 9.5/70, 41.5/70 and 56.5/70 of the depth. The percentage
// system is on 201 at 1/2 and 134 at 3/4, less a little (the neck of 80 scales 40 %
// of 200 = 80 from 0.3 * 268 = 80.4: 268 - 188/187.6*67 = 200.857 and 133.714). On
// the straight lines between the bands want 249.776, 175.918 and 121.437. Nearest
// multiples: 252 (of 6; 246 is farther), 176 (of 8), 120 (of 4; 124 is farther). The
// schedule's rounds are 35, 53 and 70: 35 lies in the even rounds 18-36, 53 in
// 48-53, so the changes are worked there, and the first on round 2. From 121.4 to 80 a
// round would have to take more than a third: so half of the rounds up it takes its
// share, to the root of 121.437 * 80, 98.564.
func TestYokeBandsByHand(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Bands: []Band{
		{15, 6, new(2)}, {11, 8, new(19)}, {7, 4, new(6)}}, TolerancePercent: new(0.0)}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	checkYoke(t, in, out)
	var rounds [][3]int
	for _, r := range out.Rounds {
		rounds = append(rounds, [3]int{r.RoundNumber, r.StartStitches, r.EndStitches})
	}
	want := [][3]int{{2, 268, 252}, {35, 252, 176}, {53, 176, 120}, {65, 120, 99}, {70, 99, 80}}
	if !slices.Equal(rounds, want) {
		t.Errorf("rounds %v, want %v", rounds, want)
	}
	part := 188 / 187.6
	second, upper := 268-67*part, 268-134*part
	for i, w := range []float64{268 - 67*part*9.5/35, second - 67*part*6.5/17.5, upper + (80-upper)*4/17.5} {
		knittest.Near(t, "wanted", out.Bands[i].WantedStitches, w, 1e-9)
	}
	knittest.Near(t, "wanted between", out.Rounds[3].WantedStitches, math.Sqrt(out.Bands[2].WantedStitches*80), 1e-9)
	wantDirections := []string{
		"Place 16 stitches on hold at each underarm: of the body at both sides, and of each sleeve.",
		"Join body and sleeves in the round: 268 stitches. From the beginning of the round, left and right as worn: " +
			"back 84, left sleeve 50, front 84, right sleeve 50.",
		"Note: the rounds begin with the first stitch of the back, at a marker.",
		"Round 1: work even.",
		"Round 2: [[k15, k2tog] 3 times, k14, k2tog] 4 times (252 stitches).", // 236 plain: 16 * 14 + 12
		"Rounds 3-17: band 1 on 252 stitches, 42 repeats of 6.",
		"Rounds 18-34: work even.",
	}
	if got := out.Directions(); !slices.Equal(got[:len(wantDirections)], wantDirections) {
		t.Errorf("%q, want %q", got, wantDirections)
	}
	// Left free, the counts between and in the bands are those of easy rounds, but for the
	// first: a band of 240, which alone has one from 268, goes on to no easy round.
	in.TolerancePercent = nil
	if out, err = PlanCircularYoke(in); err != nil {
		t.Fatal(err)
	}
	checkYoke(t, in, out)
	for _, r := range out.Rounds[1:] {
		if r.Effort > 6 {
			t.Errorf("round %d: %s", r.RoundNumber, r.Instruction.Row.Text())
		}
	}
}

// A band that ends on the last round has the count of the neck: 80 wanted, of
// repeats of 12 there is 84 within 4, none within 3. Then 80 itself has repeats of
// 11, on 77, and the neck is 84 only with tolerance.
func TestYokeBandAtTheNeck(t *testing.T) {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Schedule: ScheduleCone,
		DepthRounds: new(60), Bands: []Band{{18, 11, nil}, {10, 12, new(31)}}, NeckToleranceStitches: new(4)}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	checkYoke(t, in, out)
	if out.NeckStitches != 84 || out.Bands[1].Stitches != 84 || out.NeckCm != 42 {
		t.Errorf("neck %d (%v cm), band %+v", out.NeckStitches, out.NeckCm, out.Bands[1])
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
	if words := len(strings.Join(out.Directions(), "")); words > 2_000_000 || len(out.Rounds) > MaxSteps+MaxBands {
		t.Errorf("%d decrease rounds, directions of %d characters", len(out.Rounds), words)
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
