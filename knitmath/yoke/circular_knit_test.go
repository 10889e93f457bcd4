package yoke

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
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
		if next < len(out.Rounds) && out.Rounds[next].RoundNumber == round {
			row, count = out.Rounds[next].Instruction.Row, out.Rounds[next].EndStitches
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
	if next != len(out.Rounds) || m.StitchCount() != out.NeckStitches {
		t.Fatalf("%d of %d decrease rounds worked, %d stitches at the neck, %d said", next, len(out.Rounds), m.StitchCount(),
			out.NeckStitches)
	}
	checkNeckHeights(t, in, out, m.Heights(), raised)
}

// checkChanges: the count changes neither inside a band nor in the two rounds of a
// raise, and as steeply as is said.
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
	for _, r := range out.Rounds {
		if inBand[r.RoundNumber] > 0 || taken[r.RoundNumber] || r.StartStitches != before {
			t.Fatalf("round %d changes the count from %d, in band %d or a raise, and %d were left", r.RoundNumber, r.StartStitches,
				inBand[r.RoundNumber], before)
		}
		lost := float64(before-r.EndStitches) / st
		if got := lost / (2 * math.Pi * float64(r.RoundNumber-last) / rw); math.Abs(got-r.Steepness) > 1e-6*math.Abs(got) {
			t.Fatalf("round %d: steepness %v, want %v", r.RoundNumber, r.Steepness, got)
		}
		last, before = r.RoundNumber, r.EndStitches
	}
	all := float64(out.JoinStitches-out.NeckStitches) / st / (2 * math.Pi * float64(out.DepthRounds) / rw)
	knittest.Near(t, "steepness", out.Steepness, all, 1e-6)
	checkRuffles(t, in, out, rw/st/2/math.Pi)
	checkDepartures(t, in, out)
	checkEfforts(t, out)
}

// checkDepartures: no count is farther from the wanted one than was allowed, nor the
// neck, nor the adjusted join; without bands. No round takes more than a third, or than the
// schedule, nor is there one with many items, without a word.
func checkDepartures(t *testing.T, in CircularInput, out Circular) {
	t.Helper()
	percent := fault.Or(in.TolerancePercent, 5)
	tolerance := fault.Or(in.NeckToleranceStitches, 0)
	if in.NeckToleranceStitches == nil && in.NeckStitches == nil && percent > 0 {
		tolerance = 2
	}
	if off := math.Abs(float64(out.NeckStitches - wantedNeckOf(in, out))); off > float64(tolerance) ||
		(off > 2) != hasNotice(out, NeckInTolerance, "neck_tolerance_stitches") {
		t.Fatalf("the neck of %d is %v off; %v", out.NeckStitches, off, out.Notices)
	}
	greatest, scheduled := 0.0, float64(out.JoinStitches)
	for i, r := range out.Rounds {
		off := float64(r.EndStitches) - r.WantedStitches
		knittest.Near(t, "departure", r.DepartureStitches, off, 1e-9)
		greatest = max(greatest, 100*math.Abs(off)/r.WantedStitches)
		lost := r.StartStitches - r.EndStitches
		if r.Adjusts {
			if i > 0 || r.RoundNumber != 1 || math.Abs(off) > 4 || percent == 0 || r.WantedStitches != float64(out.JoinStitches) {
				t.Fatalf("round %d adjusts from %d to %d", r.RoundNumber, r.StartStitches, r.EndStitches)
			}
			continue
		}
		last := i == len(out.Rounds)-1
		if len(in.Bands) == 0 && !last && math.Abs(off) > max(0.5, percent/100*r.WantedStitches)+1e-3 {
			t.Fatalf("round %d: %d stitches, %v wanted", r.RoundNumber, r.EndStitches, r.WantedStitches)
		}
		much, said := 3*lost > r.StartStitches, hasNotice(out, MoreThanAThird, "round "+strconv.Itoa(r.RoundNumber)+" ")
		if len(in.Bands) > 0 && much != said {
			t.Fatalf("round %d takes %d of %d; %v", r.RoundNumber, lost, r.StartStitches, out.Notices)
		} else if own := saidByHand(in, out, r); len(in.Bands) == 0 && (much && float64(lost) > own+max(1, float64(r.StartStitches)/50)) != said {
			t.Fatalf("round %d takes %d of %d, %v in its own words; %v", r.RoundNumber, lost, r.StartStitches, own, out.Notices)
		} else if wants := 1 - r.WantedStitches/scheduled; len(in.Bands) == 0 && much &&
			float64(lost) > wants*float64(r.StartStitches)+1+1e-3 {
			t.Fatalf("round %d takes %d of %d, the schedule %v of one", r.RoundNumber, lost, r.StartStitches, wants)
		}
		scheduled = r.WantedStitches
	}
	knittest.Near(t, "greatest departure", out.GreatestDeparturePercent, greatest, 1e-9)
}

// saidByHand is how many stitches the schedule itself says that the round nearest to one of its steps
// takes: it lies there but for rounding.
func saidByHand(in CircularInput, out Circular, r Round) float64 {
	steps := in.Steps
	switch in.Schedule {
	case ScheduleCone:
		return 0
	case ScheduleOwn:
	default:
		steps = percentageByHand(float64(out.JoinStitches), float64(wantedNeckOf(in, out)), out.DepthRounds)
	}
	for _, s := range steps {
		if math.Abs(s.DepthFraction*float64(out.DepthRounds)-float64(r.RoundNumber)) <= 0.5 || s.DepthFraction*float64(out.DepthRounds) < 1 {
			return s.RemovedFraction * float64(r.StartStitches)
		}
	}
	return 0
}

// hasNotice reports whether there is a notice at such a field, or with such words.
func hasNotice(out Circular, reason report.Reason, words string) bool {
	return slices.ContainsFunc(out.Notices, func(n report.Notice) bool {
		return n.Reason == reason && (n.Field == words || strings.Contains(n.Description, words))
	})
}

// checkEfforts: the efforts are the items of the rounds, and no round has many without
// a word.
func checkEfforts(t *testing.T, out Circular) {
	t.Helper()
	all := 0
	for _, r := range out.Rounds {
		items := r.Instruction.Row.Items()
		all += items + 1
		if r.Effort != items || (items > 8) != hasNotice(out, shaping.ManyItems, "round "+strconv.Itoa(r.RoundNumber)+",") {
			t.Fatalf("round %d has %d items, %d said; %v", r.RoundNumber, items, r.Effort, out.Notices)
		}
	}
	if out.Effort != all {
		t.Fatalf("effort %d, want %d", out.Effort, all)
	}
}

// checkRuffles: a round ruffles that loses more than 1.15 flat discs over the rounds
// since the change before it, and with bands also over those up to the next. disc is
// one over what a flat disc loses in a round.
func checkRuffles(t *testing.T, in CircularInput, out Circular, disc float64) {
	t.Helper()
	want, last := []string{}, 0
	for i, r := range out.Rounds {
		rounds := r.RoundNumber - last
		if len(in.Bands) > 0 {
			next := max(out.DepthRounds, r.RoundNumber+1)
			if i+1 < len(out.Rounds) {
				next = out.Rounds[i+1].RoundNumber
			}
			rounds = max(rounds, next-r.RoundNumber)
		}
		if !r.Adjusts && float64(r.StartStitches-r.EndStitches)*disc > 1.15*float64(rounds)*(1+1e-6) {
			want = append(want, strconv.Itoa(r.RoundNumber))
		}
		last = r.RoundNumber
	}
	said := 0
	for _, n := range out.Notices {
		if n.Reason != Ruffles {
			continue
		}
		said++
		which, _, _ := strings.Cut(n.Description, " lose")
		if got := regexp.MustCompile(`\d+`).FindAllString(which, -1); !slices.Equal(got, want) {
			t.Fatalf("rounds %v ruffle, said: %s", want, n.Description)
		}
	}
	if said != min(1, len(want)) {
		t.Fatalf("rounds %v ruffle, said %d times: %v", want, said, out.Notices)
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
