package yoke

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// checkBands checks that the bands lie where they were asked for, and gives the
// number of the band that every round belongs to, 0 for none.
func checkBands(t *testing.T, in CircularInput, out Circular) map[int]int {
	t.Helper()
	if len(in.Bands) != len(out.Bands) {
		t.Fatalf("%d bands of %d", len(out.Bands), len(in.Bands))
	}
	if off := measure.Abs(out.NeckStitches - wantedNeckOf(in, out)); len(in.Bands) > 0 && off > fault.Or(in.NeckToleranceStitches, 0) {
		t.Fatalf("neck of %d stitches is %d off", out.NeckStitches, off)
	}
	inBand := map[int]int{}
	next := 1
	for i, b := range in.Bands {
		p := out.Bands[i]
		next += fault.Or(b.EvenBeforeRounds, 1)
		if p.FirstRoundNumber != next || p.LastRoundNumber != next+b.HeightRounds-1 || p.RepeatCount*b.RepeatStitches != p.Stitches {
			t.Fatalf("band %d %+v, asked for %+v from round %d", i+1, p, b, next)
		}
		knittest.Near(t, "departure", p.DepartureStitches, float64(p.Stitches)-p.WantedStitches, 1e-9)
		if middle := float64(p.FirstRoundNumber-1) + float64(b.HeightRounds)/2; in.Schedule == ScheduleCone &&
			p.LastRoundNumber < out.DepthRounds {
			lost := float64(out.JoinStitches-wantedNeckOf(in, out)) * middle / float64(out.DepthRounds)
			knittest.Near(t, "wanted by the cone", p.WantedStitches, float64(out.JoinStitches)-lost, 1e-9)
		}
		for range b.HeightRounds {
			inBand[next] = i + 1
			next++
		}
	}
	if next > out.DepthRounds+1 {
		t.Fatalf("bands end on round %d of %d", next-1, out.DepthRounds)
	}
	return inBand
}

// wantedNeckOf is the neck asked for, or 40 % of the body, or what the caller's
// own steps leave.
func wantedNeckOf(in CircularInput, out Circular) int {
	switch {
	case in.NeckStitches != nil:
		return *in.NeckStitches
	case in.Schedule != ScheduleOwn:
		return int(math.Floor(float64(in.BodyStitches)*0.4 + 0.5))
	}
	neck := float64(out.JoinStitches)
	for _, s := range in.Steps {
		neck *= 1 - s.RemovedFraction
	}
	return int(math.Floor(neck + 0.5))
}

// bestCounts tries every sequence of counts there is, by the letter of the rule.
func bestCounts(join int, places []place) (best []int) {
	least := int64(-1)
	now := make([]int, len(places))
	var try func(i, below int, sum int64)
	try = func(i, below int, sum int64) {
		if i == len(places) {
			better := least < 0 || sum < least
			if sum == least { // more stitches in the lowest place where they differ
				better = slices.Compare(now, best) > 0
			}
			if better {
				least, best = sum, slices.Clone(now)
			}
			return
		}
		p := places[i]
		for n := 1; n <= 2*join; n++ {
			rises := n > below
			if n%p.repeat != 0 || n < p.lo || n > p.hi || 2*n < below || rises && (i > 0 || p.band == noBand) {
				continue
			}
			off := int64(n)*1000 - int64(math.Round(p.wanted*1000))
			now[i] = n
			try(i+1, n, sum+off*off)
		}
	}
	try(0, join, 0)
	return best
}

// The counts chosen are the best there are, and they are refused only where there
// are none: against every sequence, on small yokes.
func TestYokeCountsAreBest(t *testing.T) {
	tried, refused, ties := 0, 0, 0
	for join := 6; join <= 26; join += 4 {
		for a := 1; a <= 9; a++ {
			for b := 1; b <= 9; b++ {
				for c := 1; c <= 7; c += 2 {
					for shape := range 6 {
						j := float64(join)
						places := []place{
							{wanted: j * 0.9, repeat: a, lo: 1, hi: stitch.MaxStitches, band: 0},
							{wanted: j * 0.7, repeat: b, lo: 1, hi: stitch.MaxStitches, band: 1},
							{wanted: j * 0.5, repeat: c, lo: 1, hi: stitch.MaxStitches, band: 2},
							{wanted: j * 0.4, repeat: 1, lo: join * 2 / 5, hi: join*2/5 + shape%3, band: noBand},
						}
						switch shape {
						case 1:
							places[0].band, places[0].repeat = noBand, 1 // a round of the schedule comes first
						case 2:
							places = places[:3] // the last band is the neck
							places[2].lo, places[2].hi = join*2/5-2, join*2/5+2
						case 3:
							places[0].wanted, places[1].wanted = j, j // wants the same twice
						case 4:
							places[0].wanted, places[1].wanted = j+0.5, j-0.5 // ties
						}
						want := bestCounts(join, places)
						got, ok := newBandCounts(join, places).choose()
						tried++
						if ok != (want != nil) || ok && !slices.Equal(got, want) {
							t.Fatalf("join %d, places %+v: %v (%v), best %v", join, places, got, ok, want)
						}
						if !ok {
							refused++
						}
						if ok && shape == 4 && a%2 == 1 {
							ties++
						}
					}
				}
			}
		}
	}
	if tried < 10_000 || refused < 50 || refused > tried/2 || ties < 100 {
		t.Errorf("%d tried, %d refused, %d with ties: the sweep has shrunk", tried, refused, ties)
	}
}

// A refusal names a band and a repeat, the nearest that would do: every other
// repeat as near or nearer is tried by force, and the one named too.
func TestYokeNearestRepeat(t *testing.T) {
	named := 0
	for join := 12; join <= 24; join += 3 {
		for a := 1; a <= 30; a++ {
			for b := 1; b <= 30; b += 3 {
				neck := join * 2 / 5
				places := []place{
					{wanted: float64(join), repeat: a, lo: 1, hi: stitch.MaxStitches, band: 0},
					{wanted: float64(join) / 2, repeat: b, lo: neck - 1, hi: neck + 1, band: 1},
				}
				counts := newBandCounts(join, places)
				if _, ok := counts.choose(); ok {
					continue
				}
				free, _ := counts.reachable()
				for i := range places {
					repeat, n := nearestRepeat(places[i], free[i], counts.above(i))
					changed := slices.Clone(places)
					for r := 1; r <= 60; r++ {
						changed[i].repeat = r
						works := bestCounts(join, changed) != nil
						nearer := repeat == 0 || measure.Abs(r-places[i].repeat) < measure.Abs(repeat-places[i].repeat)
						if works && nearer || r == repeat && !works {
							t.Fatalf("join %d, repeats %d and %d: band %d named %d, tried %d: %v", join, a, b, i+1, repeat, r, works)
						}
					}
					if repeat > 0 {
						named++
						if n%repeat != 0 {
							t.Fatalf("%d stitches in repeats of %d", n, repeat)
						}
					}
				}
			}
		}
	}
	if named < 300 {
		t.Errorf("named %d repeats: the sweep has shrunk", named)
	}
}

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
		"Round 2: [k134, m1l] twice (270 stitches).",
		"Rounds 3-17: band 1 on 270 stitches, 45 repeats of 6.",
		"Rounds 18-34: work even.",
		"Round 35: [[k2, k2tog] 3 times, k1, k2tog, [k2, k2tog] 3 times] 10 times (200 stitches).",
		"Round 36: work even.",
		"Rounds 37-47: band 2 on 200 stitches, 25 repeats of 8.",
		"Rounds 48-52: work even.",
		"Round 53: [[k1, k2tog] 6 times, k2, k2tog, [k1, k2tog] 6 times] 5 times (135 stitches).",
		"Rounds 54-60: band 3 on 135 stitches, 27 repeats of 5.",
		"Rounds 61-69: work even.",
		"Round 70: [k2tog, [k1, k2tog, k2tog] 5 times] 5 times (80 stitches).", // 25 gaps of 1 and 30 of 0: 135 - 2*55 = 25 plain
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

// Yokes with bands of all kinds are knit from the join to the neck.
func TestYokeBandsAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for body := 120; body <= 400; body += 23 {
		for schedule := SchedulePercentage; schedule <= ScheduleOwn; schedule++ {
			for order := shaping.GapSpreadGrouped; order <= shaping.GapSpreadInterleaved; order++ {
				for motif := range 12 {
					in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, Schedule: schedule, Spread: order,
						NeckToleranceStitches: new(motif % 4)}
					if schedule == ScheduleOwn {
						in.Steps = []Step{{0.3, 0.1}, {0.5, 0.2}, {0.7, 0.2}, {0.85, 0.25}, {0.95, 0.1}}
					}
					for i := range 1 + motif%5 {
						in.Bands = append(in.Bands, Band{3 + (motif+i)%4, 2 + (7*motif+5*i)%17, new(1 + (motif+i)%3)})
					}
					out, err := PlanCircularYoke(in)
					if err != nil {
						refused++
						continue
					}
					planned++
					checkYoke(t, in, out)
				}
			}
		}
	}
	if planned < 700 || refused > planned/5 {
		t.Errorf("planned %d yokes, refused %d: the sweep has shrunk", planned, refused)
	}
}

// A repeat of one stitch changes nothing: with a band of it the yoke has the
// counts that the schedule wants.
func TestYokeBandOfOneStitch(t *testing.T) {
	for body := 80; body <= 400; body += 7 {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body}
		plain, err := PlanCircularYoke(in)
		if err != nil {
			t.Fatal(err)
		}
		in.Bands = []Band{{plain.DecreaseRounds[0].RoundNumber - 2, 1, nil}}
		banded, err := PlanCircularYoke(in)
		if err != nil {
			t.Fatal(err)
		}
		for i, r := range plain.DecreaseRounds {
			got := banded.DecreaseRounds[i]
			knittest.Near(t, "wanted", got.WantedStitches, r.WantedStitches, 1e-9)
			got.WantedStitches = r.WantedStitches
			if fmt.Sprint(got) != fmt.Sprint(r) || len(banded.DecreaseRounds) != len(plain.DecreaseRounds) {
				t.Fatalf("body %d: %v, want %v", body, got, r)
			}
		}
	}
}

func TestYokeBandRefusals(t *testing.T) {
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	base := func(bands ...Band) CircularInput {
		return CircularInput{Gauge: standard, BodyStitches: 200, DepthRounds: new(60), Bands: bands}
	}
	tolerant := base()
	tolerant.NeckToleranceStitches = new(2)
	far := base(Band{5, 4, nil})
	far.NeckToleranceStitches = new(1001)
	steep := base(Band{59, 4, nil})
	steep.NeckStitches = new(20)
	twice := base(Band{5, 4, new(40)})
	twice.Schedule, twice.DecreaseRoundCount = ScheduleCone, new(200)
	for name, c := range map[string]struct {
		in   CircularInput
		want []string
	}{
		"empty": {base(Band{}), []string{"bands[0].height_rounds REQUIRED", "bands[0].repeat_stitches REQUIRED"}},
		"ranges": {base(Band{-1, 1001, new(0)}), []string{"bands[0].height_rounds OUT_OF_RANGE", "bands[0].repeat_stitches OUT_OF_RANGE",
			"bands[0].even_before_rounds OUT_OF_RANGE"}},
		"too many":  {base(make([]Band, MaxBands+1)...), []string{"bands TOO_MANY"}},
		"tolerance": {far, []string{"neck_tolerance_stitches OUT_OF_RANGE"}},
		"no bands":  {tolerant, []string{"neck_tolerance_stitches CONTRADICTORY"}},
		"too high":  {base(Band{30, 4, nil}, Band{30, 4, nil}), []string{"bands INFEASIBLE", "depth_rounds INFEASIBLE"}},
		// 268 is reached down to half of it or up to twice, 536: no multiple of 600.
		"repeat too long": {base(Band{30, 600, nil}), []string{"bands[0].repeat_stitches INFEASIBLE"}},
		"both too long":   {base(Band{10, 600, nil}, Band{10, 700, nil}), []string{"bands INFEASIBLE", "body_stitches INFEASIBLE"}},
		"steep":           {steep, []string{"neck_tolerance_stitches INFEASIBLE"}},
		"close steps":     {twice, []string{"schedule INFEASIBLE", "depth_rounds INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanCircularYoke(c.in)
			knittest.WantViolations(t, err, c.want...)
		})
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
