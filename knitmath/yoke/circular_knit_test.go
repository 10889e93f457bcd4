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
	inBand := checkBands(t, in, out)
	checkChanges(t, in, out, inBand)
	m := knittest.CastOn(t, out.JoinStitches, true)
	next, count, raised := 0, out.JoinStitches, 0
	for round := 1; round <= out.DepthRounds; round++ {
		if r := out.BackRaise; r != nil && round == r.FirstRoundNumber {
			raised = checkRaise(t, m, in, *r)
			round++ // the raise works two rounds
			continue
		}
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if next < len(out.DecreaseRounds) && out.DecreaseRounds[next].RoundNumber == round {
			row, count = out.DecreaseRounds[next].Instruction.Row, out.DecreaseRounds[next].EndStitches
			next++
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("round %d, %q: %v", round, row.Text(), err)
		}
		if m.StitchCount() != count {
			t.Fatalf("round %d: %d stitches, %d said", round, m.StitchCount(), count)
		}
		if b := inBand[round]; b > 0 && (count != out.Bands[b-1].Stitches || count%in.Bands[b-1].RepeatStitches != 0) {
			t.Fatalf("round %d of band %d has %d stitches, the repeat %d", round, b, count, in.Bands[b-1].RepeatStitches)
		}
	}
	if next != len(out.DecreaseRounds) || m.StitchCount() != out.NeckStitches {
		t.Fatalf("%d of %d decrease rounds worked, %d stitches at the neck, %d said", next, len(out.DecreaseRounds), m.StitchCount(),
			out.NeckStitches)
	}
	checkNeckHeights(t, in, out, m.Heights(), raised)
}

// checkChanges: the count changes neither inside a band nor in the two rounds of a
// raise, as steeply as is said, and without bands to half a stitch as the schedule
// wants it.
func checkChanges(t *testing.T, in CircularInput, out Circular, inBand map[int]int) {
	t.Helper()
	taken := map[int]bool{}
	if r := out.BackRaise; r != nil {
		taken[r.FirstRoundNumber], taken[r.FirstRoundNumber+1] = true, true
		if inBand[r.FirstRoundNumber] > 0 || inBand[r.FirstRoundNumber+1] > 0 {
			t.Fatalf("the raise on round %d is not on plain rounds", r.FirstRoundNumber)
		}
	}
	// Gauges are read to a millionth of a stitch.
	st := math.Round(in.Gauge.Stitches*1e6) / 1e6 / fault.Or(in.Gauge.OverCm, 10)
	rw := math.Round(in.Gauge.Rows*1e6) / 1e6 / fault.Or(in.Gauge.OverCm, 10)
	last, before := 0, out.JoinStitches
	for _, r := range out.DecreaseRounds {
		if inBand[r.RoundNumber] > 0 || taken[r.RoundNumber] || r.StartStitches != before {
			t.Fatalf("round %d changes the count from %d, in band %d or a raise, and %d were left", r.RoundNumber, r.StartStitches,
				inBand[r.RoundNumber], before)
		}
		lost := float64(before-r.EndStitches) / st
		if got := lost / (2 * math.Pi * float64(r.RoundNumber-last) / rw); math.Abs(got-r.Steepness) > 1e-6*math.Abs(got) {
			t.Fatalf("round %d: steepness %v, want %v", r.RoundNumber, r.Steepness, got)
		}
		if len(in.Bands) == 0 && math.Abs(float64(r.EndStitches)-r.WantedStitches) > 0.5+1e-9 {
			t.Fatalf("round %d: %d stitches, %v wanted", r.RoundNumber, r.EndStitches, r.WantedStitches)
		}
		last, before = r.RoundNumber, r.EndStitches
	}
	all := float64(out.JoinStitches-out.NeckStitches) / st / (2 * math.Pi * float64(out.DepthRounds) / rw)
	knittest.Near(t, "steepness", out.Steepness, all, 1e-6)
	checkRuffles(t, in, out, rw/st/2/math.Pi)
}

// checkRuffles: a round ruffles that loses more than a flat disc over the rounds
// since the change before it, and with bands also over those up to the next. disc is
// one over what a flat disc loses in a round.
func checkRuffles(t *testing.T, in CircularInput, out Circular, disc float64) {
	t.Helper()
	want, last := 0, 0
	for i, r := range out.DecreaseRounds {
		rounds := r.RoundNumber - last
		if len(in.Bands) > 0 {
			next := max(out.DepthRounds, r.RoundNumber+1)
			if i+1 < len(out.DecreaseRounds) {
				next = out.DecreaseRounds[i+1].RoundNumber
			}
			rounds = max(rounds, next-r.RoundNumber)
		}
		if float64(r.StartStitches-r.EndStitches)*disc > float64(rounds)*(1+1e-6) {
			want++
		}
		last = r.RoundNumber
	}
	got := 0
	for _, n := range out.Notices {
		if n.Reason == Ruffles {
			got++
		}
	}
	if got != want {
		t.Fatalf("%d rounds ruffle, %d said: %v", want, got, out.Notices)
	}
}

// checkNeckHeights: under every stitch of the neck lie all rounds, and up to so
// many rows more where the back is raised.
func checkNeckHeights(t *testing.T, in CircularInput, out Circular, heights []int, raised int) {
	t.Helper()
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

// Yokes of all sizes, schedules and orders are knit from the join to the neck.
func TestYokeIsKnit(t *testing.T) {
	planned := 0
	for body := 20; body <= 420; body += knittest.Sweep(7, 35) {
		for schedule := SchedulePercentage; schedule <= ScheduleOwn; schedule++ {
			for order := shaping.GapSpreadGrouped; order <= shaping.GapSpreadLeastEffort; order++ {
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
	if planned < knittest.Sweep(900, 150) {
		t.Errorf("planned %d yokes: the sweep has shrunk", planned)
	}
}
