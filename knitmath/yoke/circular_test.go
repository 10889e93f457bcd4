package yoke

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// checkYoke knits the yoke from the join to the neck: every decrease round can
// be worked and leaves the count it says, all rounds lie under every stitch at
// the neck, and what the answer says of sizes and steepness is worked out again
// from the counts alone.
func checkYoke(t *testing.T, in CircularInput, out Circular) {
	t.Helper()
	if want := out.BodyStitches + 2*out.SleeveStitches - 4*out.UnderarmStitches; out.JoinStitches != want {
		t.Fatalf("join %d, want %d", out.JoinStitches, want)
	}
	m := knittest.CastOn(t, out.JoinStitches, true)
	next, last, before := 0, 0, out.JoinStitches
	inBand := checkBands(t, in, out)
	// Gauges are read to a millionth of a stitch.
	st := math.Round(in.Gauge.Stitches*1e6) / 1e6 / fault.Or(in.Gauge.OverCm, 10)
	rw := math.Round(in.Gauge.Rows*1e6) / 1e6 / fault.Or(in.Gauge.OverCm, 10)
	raised := 0
	for round := 1; round <= out.DepthRounds; round++ {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if r := out.BackRaise; r != nil && round == r.FirstRoundNumber {
			if inBand[round] > 0 || inBand[round+1] > 0 || next < len(out.DecreaseRounds) &&
				out.DecreaseRounds[next].RoundNumber <= round+1 {
				t.Fatalf("the raise on round %d is not on plain rounds", round)
			}
			raised = checkRaise(t, m, in, *r)
			round++ // the raise works two rounds
			continue
		}
		if next < len(out.DecreaseRounds) && out.DecreaseRounds[next].RoundNumber == round {
			r := out.DecreaseRounds[next]
			row = r.Instruction.Row
			if inBand[round] > 0 {
				t.Fatalf("round %d changes the count inside a band", round)
			}
			if r.StartStitches != before {
				t.Fatalf("round %d starts with %d stitches, %d said", round, before, r.StartStitches)
			}
			lost := float64(before-r.EndStitches) / st
			if got := lost / (2 * math.Pi * float64(round-last) / rw); math.Abs(got-r.Steepness) > 1e-6*math.Abs(got) {
				t.Fatalf("round %d: steepness %v, want %v", round, r.Steepness, got)
			}
			if len(in.Bands) == 0 && math.Abs(float64(r.EndStitches)-r.WantedStitches) > 0.5+1e-9 {
				t.Fatalf("round %d: %d stitches, %v wanted", round, r.EndStitches, r.WantedStitches)
			}
			before, last = r.EndStitches, round
			next++
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("round %d, %q: %v", round, row.Text(), err)
		}
		if m.StitchCount() != before {
			t.Fatalf("round %d: %d stitches, %d said", round, m.StitchCount(), before)
		}
		if b := inBand[round]; b > 0 && (m.StitchCount() != out.Bands[b-1].Stitches || m.StitchCount()%in.Bands[b-1].RepeatStitches != 0) {
			t.Fatalf("round %d of band %d has %d stitches, the repeat %d", round, b, m.StitchCount(), in.Bands[b-1].RepeatStitches)
		}
	}
	if next != len(out.DecreaseRounds) || m.StitchCount() != out.NeckStitches {
		t.Fatalf("%d of %d decrease rounds worked, %d stitches at the neck, %d said", next, len(out.DecreaseRounds), m.StitchCount(),
			out.NeckStitches)
	}
	heights := m.Heights()
	for x, rows := range heights {
		if rows < out.DepthRounds || rows > out.DepthRounds+raised || in.BackRaise == nil && rows != out.DepthRounds {
			t.Fatalf("stitch %d at the neck has %d rounds under it, want %d", x, rows, out.DepthRounds)
		}
	}
	if most := slices.Max(heights); most != out.DepthRounds+raised {
		t.Fatalf("%d rows under the highest stitch at the neck, want %d", most, out.DepthRounds+raised)
	}
	// The middle of a front as wide as the back is no higher for the raise.
	if raise := in.BackRaise; raise != nil && raise.BackStitches == nil && heights[len(heights)*3/4] != out.DepthRounds {
		t.Fatalf("%d rows under the middle of the front at the neck, want %d", heights[len(heights)*3/4], out.DepthRounds)
	}
}

// The percentage system's own example: 200 stitches round the body.
//
// Source: Zimmermann, Knitting Around (1989), by way of a digest: sleeve 66,
// underarm 16, join 268, then 201, 134 and 80 stitches; depth half the flat
// width, here 10 in for a 40 in body at 5 stitches to the inch.
func TestYokePercentageSystem(t *testing.T) {
	inches := 2.54
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 5, Rows: 7, OverCm: &inches}, BodyStitches: 200}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.SleeveStitches != 66 || out.UnderarmStitches != 16 || out.JoinStitches != 268 || out.NeckStitches != 80 {
		t.Errorf("sleeve %d, underarm %d, join %d, neck %d", out.SleeveStitches, out.UnderarmStitches, out.JoinStitches, out.NeckStitches)
	}
	if out.DepthRounds != 70 || math.Abs(out.DepthCm-25.4) > 1e-9 {
		t.Errorf("%d rounds, %v cm", out.DepthRounds, out.DepthCm)
	}
	wantRounds, wantCounts := []int{35, 53, 70}, []int{201, 134, 80} // 1/2, 3/4 (52.5, half-way up) and the end of 70
	for i, r := range out.DecreaseRounds {
		if r.RoundNumber != wantRounds[i] || r.EndStitches != wantCounts[i] {
			t.Errorf("decrease round %d: round %d to %d stitches", i+1, r.RoundNumber, r.EndStitches)
		}
	}
	if got := out.DecreaseRounds[0].Instruction.Row.Text(); got != "[k2, k2tog] 67 times" {
		t.Errorf("first round %q", got)
	}
	if got := out.DecreaseRounds[1].Instruction.Row.Text(); got != "[k1, k2tog] 67 times" {
		t.Errorf("second round %q", got)
	}
	checkYoke(t, in, out)
}

// The earlier book's thirds, as an own schedule without a neck: 268 * (2/3)^3 =
// 79.4, so 79 stitches; 268 -> 179 -> 120 (or 119) -> 79.
//
// Source: Zimmermann, Knitting Without Tears (1971), by way of a digest, which
// prints 268, 179, 120, 80: it rounds each round from the rounded one before
// and lands on the 40 % neck.
func TestYokeOwnThirds(t *testing.T) {
	third := 1.0 / 3
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, Schedule: ScheduleOwn,
		Steps: []Step{{1.0 / 2, third}, {3.0 / 4, third}, {1, third}}}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	want := []int{179, 119, 79}
	for i, r := range out.DecreaseRounds {
		if r.EndStitches != want[i] {
			t.Errorf("decrease round %d leaves %d, want %d", i+1, r.EndStitches, want[i])
		}
	}
	checkYoke(t, in, out)
	eighty := 80
	in.NeckStitches = &eighty
	if out, err = PlanCircularYoke(in); err != nil {
		t.Fatal(err)
	}
	want = []int{179, 120, 80}
	for i, r := range out.DecreaseRounds {
		if r.EndStitches != want[i] {
			t.Errorf("to 80: decrease round %d leaves %d, want %d", i+1, r.EndStitches, want[i])
		}
	}
}

// Yokes of all sizes, schedules and orders are knit from the join to the neck.
func TestYokeIsKnit(t *testing.T) {
	planned := 0
	for body := 20; body <= 420; body += 7 {
		for schedule := SchedulePercentage; schedule <= ScheduleOwn; schedule++ {
			for order := shaping.GapSpreadGrouped; order <= shaping.GapSpreadMirrored; order++ {
				for _, rows := range []float64{26, 30, 33.5} {
					in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: rows}, BodyStitches: body, Schedule: schedule,
						Spread: order}
					if schedule == ScheduleOwn {
						in.Steps = []Step{{0.3, 0.1}, {0.5, 0.2}, {0.7, 0.2}, {0.85, 0.25}, {0.95, 0.1}}
					}
					out, err := PlanCircularYoke(in)
					if err != nil {
						if order != shaping.GapSpreadMirrored && body > 60 {
							t.Errorf("body %d, schedule %d: %v", body, schedule, err)
						}
						continue
					}
					planned++
					checkYoke(t, in, out)
				}
			}
		}
	}
	if planned < 900 {
		t.Errorf("planned %d yokes: the sweep has shrunk", planned)
	}
}

// A flat ring has steepness 1, and a cone the sine of its half-angle: closed
// forms. 2*pi*depth stitches' width are lost over the depth of a flat ring.
func TestYokeSteepness(t *testing.T) {
	// 31416 micrometres a stitch... 10 stitches over 10 cm are 1 cm each; over a
	// depth of 10 cm a flat ring loses 62.83 of them.
	y := circular{st: gauge.NewDensity(10, 10), rw: gauge.NewDensity(100, 10)}
	flat := y.steepness(62, 100)
	if want := 62 / (2 * math.Pi * 10); math.Abs(flat-want) > 1e-12 {
		t.Errorf("steepness %v, want %v", flat, want)
	}
	half := y.steepness(31, 100) // half the loss: a cone with sin(a) = 1/2 of it
	if math.Abs(half-flat/2) > 1e-12 {
		t.Errorf("half the loss has steepness %v, want %v", half, flat/2)
	}
}

func TestYokeRefusals(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	three, ninety, one, many, five := 3, 90, 1, stitch.MaxStitches, 5
	neck, depth, inf := 40.0, 22.0, math.Inf(1)
	long := make([]Step, MaxSteps+1)
	for name, c := range map[string]struct {
		in   CircularInput
		want []string
	}{
		"empty": {CircularInput{}, []string{"gauge REQUIRED", "body_stitches REQUIRED"}},
		"ranges": {CircularInput{Gauge: &gauge.Gauge{Stitches: -1, Rows: 1e9}, BodyStitches: -5, SleeveStitches: &three, NeckCm: &inf},
			[]string{"gauge.stitches OUT_OF_RANGE", "gauge.rows OUT_OF_RANGE", "body_stitches OUT_OF_RANGE", "sleeve_stitches OUT_OF_RANGE",
				"neck_cm NOT_FINITE"}},
		"twice": {CircularInput{Gauge: standard, BodyStitches: 200, NeckStitches: &ninety, NeckCm: &neck, DepthCm: &depth,
			DepthRounds: &ninety},
			[]string{"neck_stitches CONTRADICTORY", "neck_cm CONTRADICTORY", "depth_cm CONTRADICTORY", "depth_rounds CONTRADICTORY"}},
		"underarm": {CircularInput{Gauge: standard, BodyStitches: 100, UnderarmStitches: &ninety},
			[]string{"body_stitches INFEASIBLE", "sleeve_stitches INFEASIBLE", "underarm_stitches INFEASIBLE"}},
		"wide neck": {CircularInput{Gauge: standard, BodyStitches: 50, NeckStitches: &ninety}, []string{"neck_stitches INFEASIBLE"}},
		"join": {CircularInput{Gauge: standard, BodyStitches: many, SleeveStitches: &many},
			[]string{"body_stitches INFEASIBLE", "sleeve_stitches INFEASIBLE"}},
		"cone rounds": {CircularInput{Gauge: standard, BodyStitches: 200, DecreaseRoundCount: &five},
			[]string{"decrease_round_count CONTRADICTORY"}},
		"own missing":  {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn}, []string{"steps REQUIRED"}},
		"own unwanted": {CircularInput{Gauge: standard, BodyStitches: 200, Steps: []Step{{1, 0.5}}}, []string{"steps CONTRADICTORY"}},
		"own long":     {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: long}, []string{"steps TOO_MANY"}},
		"own steps": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleOwn, Steps: []Step{{0.5, 1}, {0.5, 0.1}, {2, 0}}},
			[]string{"steps[0].removed_fraction OUT_OF_RANGE", "steps[1].depth_fraction CONTRADICTORY",
				"steps[2].depth_fraction OUT_OF_RANGE", "steps[2].removed_fraction REQUIRED"}},
		"few rounds": {CircularInput{Gauge: standard, BodyStitches: 200, DepthRounds: &one},
			[]string{"schedule INFEASIBLE", "depth_rounds INFEASIBLE"}},
		"one step": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: ScheduleCone, DecreaseRoundCount: &one},
			[]string{"schedule INFEASIBLE", "body_stitches INFEASIBLE"}},
		"enums": {CircularInput{Gauge: standard, BodyStitches: 200, Schedule: 4, Spread: 9, DisplayUnit: 3},
			[]string{"schedule UNKNOWN_VALUE", "spread UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func TestYokeAtTheLimit(t *testing.T) {
	sleeve, under, neck, rounds, steps := 8, 0, 4000, MaxRounds, MaxSteps
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: stitch.MaxStitches - 16, SleeveStitches: &sleeve,
		UnderarmStitches: &under, NeckStitches: &neck, DepthRounds: &rounds, Schedule: ScheduleCone,
		DecreaseRoundCount: &steps, Spread: shaping.GapSpreadInterleaved}
	out, err := PlanCircularYoke(in)
	if err != nil {
		t.Fatal(err)
	}
	words := 0
	for _, d := range out.Directions() {
		words += len(d)
	}
	if words > 2_000_000 {
		t.Errorf("directions of %d characters", words)
	}
	t.Logf("%d decrease rounds, directions of %d characters", len(out.DecreaseRounds), words)
}

func FuzzPlanCircularYoke(f *testing.F) {
	f.Add(22.0, 30.0, 200, 66, 16, 80, 66, int32(1), int32(0))
	f.Add(18.0, 25.0, 150, 50, 10, 60, 50, int32(2), int32(2))
	f.Fuzz(func(t *testing.T, stitches, rows float64, body, sleeve, underarm, neck, rounds int, schedule, order int32) {
		body, rounds = body%600, rounds%200
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, BodyStitches: body, SleeveStitches: &sleeve,
			UnderarmStitches: &underarm, NeckStitches: &neck, DepthRounds: &rounds, Schedule: Schedule(schedule),
			Spread: shaping.GapSpread(order)}
		out, err := PlanCircularYoke(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("not an input error: %v", err)
			}
			return
		}
		for _, x := range []float64{out.DepthCm, out.JoinCm, out.NeckCm, out.Steepness} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%v is not finite", x)
			}
		}
		checkYoke(t, in, out)
	})
}

func BenchmarkYoke(b *testing.B) {
	b.ReportAllocs()
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 220}
	for b.Loop() {
		if _, err := PlanCircularYoke(in); err != nil {
			b.Fatal(err)
		}
	}
}
