package yoke

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/body"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/shaping"
)

// checkBands checks that the bands lie where they were asked for, and gives the
// number of the band that every round belongs to, 0 for none.
func checkBands(t *testing.T, in CircularInput, out Circular) map[int]int {
	t.Helper()
	if len(in.Bands) != len(out.Bands) {
		t.Fatalf("%d bands of %d", len(out.Bands), len(in.Bands))
	}
	if len(in.Bands) == 0 {
		return nil
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
		if middle := float64(p.FirstRoundNumber-1) + float64(b.HeightRounds)/2; p.LastRoundNumber < out.DepthRounds {
			knittest.Near(t, "wanted", p.WantedStitches, lineAt(in, out, middle/float64(out.DepthRounds)), 1e-6)
		}
		checkFar(t, in, out, i)
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

// lineAt is the count at a part of the depth on the straight lines from the join through
// every step and the count after it.
func lineAt(in CircularInput, out Circular, depth float64) float64 {
	join, neck := float64(out.JoinStitches), float64(wantedNeckOf(in, out))
	steps := in.Steps
	switch in.Schedule {
	case ScheduleCone:
		return join + (neck-join)*depth
	case ScheduleOwn:
	default:
		steps = percentageByHand(join, neck, out.DepthRounds)
	}
	left := 1.0
	for _, s := range steps {
		left *= 1 - s.RemovedFraction
	}
	scale := (join - neck) / (join * (1 - left))
	if in.Schedule == ScheduleOwn && in.NeckStitches == nil && in.NeckCm == nil {
		scale = 1 // the neck is what the steps leave
	}
	left = 1.0
	low, from := 0.0, join
	for _, s := range steps {
		left *= 1 - s.RemovedFraction
		at, count := math.Round(s.DepthFraction*1e6)/1e6, join-join*scale*(1-left)
		if depth <= at {
			return from + (count-from)*(depth-low)/(at-low)
		}
		low, from = at, count
	}
	return from
}

// percentageByHand is 1/4, 1/3 and 2/5 at 1/2, 3/4 and the end; to a neck of less than three tenths,
// by more than a stitch or a fiftieth, 1/4 and then as many about equal shares of at most a third as
// that takes, where the lines through T at 0, 3/4 at 1/2, 1/2 at 3/4 and the neck have them, if that is every
// second round at most.
func percentageByHand(join, neck float64, depth int) []Step {
	usual := []Step{{0.5, 0.25}, {0.75, 1.0 / 3}, {1, 0.4}}
	missing := 0.3*join - neck
	if missing <= 1 || missing <= 0.006*join {
		return usual
	}
	rounds := 3
	for 0.75*join*math.Pow(2.0/3, float64(rounds)) > neck*(1+1e-9) {
		rounds++
	}
	steps := []Step{{0.5, 0.25}}
	count := 0.75 * join
	for i := range rounds {
		// In logarithms they lie on a line about their mean, which falls by 3 % or down to a third.
		mean := math.Log(neck/0.75/join) / float64(rounds)
		off := float64(2*i-rounds+1) / float64(rounds-1)
		falls := min(-math.Log(0.97)*float64(rounds-1)/2, mean-math.Log(2.0/3))
		count *= math.Exp(mean - off*falls)
		at := 0.5 + (0.75*join-count)/join // on the line from 3/4 at 1/2 to 1/2 at 3/4, a stitch as deep as T is high
		if count < 0.5*join {
			at = 1 - 0.25*(count-neck)/(0.5*join-neck)
		}
		if (at-steps[i].DepthFraction)*float64(depth) < 2 {
			return usual
		}
		steps = append(steps, Step{at, 1 - math.Exp(mean-off*falls)})
	}
	return steps
}

// checkFar: a band more than a twentieth from the schedule says so, and which way.
func checkFar(t *testing.T, in CircularInput, out Circular, band int) {
	t.Helper()
	p := out.Bands[band]
	percent := 100 * math.Abs(p.DepartureStitches) / p.WantedStitches
	far := max(5, fault.Or(in.TolerancePercent, 5))
	if math.Abs(percent-far) < 2e-3 { // counts are read to the thousandth of a stitch
		return // as near as may be
	}
	said := ""
	for _, n := range out.Notices {
		if n.Reason == FarFromSchedule && n.Field == fmt.Sprintf("bands[%d].repeat_stitches", band) {
			said = n.Description
		}
	}
	way := "more"
	if p.DepartureStitches < 0 {
		way = "fewer"
	}
	want := fmt.Sprintf("gives %d stitches, %s %% %s than the %s that the schedule wants there", p.Stitches,
		measure.Decimal(percent, 1), way, measure.Decimal(p.WantedStitches, 1))
	if percent > far && !strings.HasPrefix(said, want) || percent < far && said != "" {
		t.Fatalf("band %d is %v %% off: %q", band+1, percent, said)
	}
}

// headStitches are the fewest that go over the least head of a wearer, stretched to 1.6 times.
func headStitches(who body.Wearer, perCm float64) float64 {
	return math.Ceil(who.LeastHeadCm/1.6*perCm - 1e-9)
}

// wantedNeckOf is the neck asked for, or 40 % of the body, or what the caller's
// own steps leave.
func wantedNeckOf(in CircularInput, out Circular) int {
	switch {
	case in.NeckStitches != nil:
		return *in.NeckStitches
	case in.NeckCm != nil:
		return int(math.Floor(*in.NeckCm*in.Gauge.Stitches/fault.Or(in.Gauge.OverCm, 10) + 0.5))
	case in.Schedule != ScheduleOwn:
		widest := 60.3 * math.Round(in.Gauge.Stitches*1e6) / 1e6 / fault.Or(in.Gauge.OverCm, 10)
		neck := min(math.Floor(float64(in.BodyStitches)*0.4+0.5), math.Floor(widest+0.5))
		perCm := math.Round(in.Gauge.Stitches*1e6) / 1e6 / fault.Or(in.Gauge.OverCm, 10)
		bodyCm := float64(in.BodyStitches) * fault.Or(in.Gauge.OverCm, 10) * 1e6 / math.Round(in.Gauge.Stitches*1e6)
		if who, ok := body.WearerOf(bodyCm); ok { // divided last: 66 stitches at 22 to 10 cm are 30 cm, and no toy
			neck = max(neck, headStitches(who, perCm)+2)
			neck = min(neck, math.Floor((2*who.HeadCm-who.LeastHeadCm)*perCm+1e-9)-2)
		}
		return int(neck)
	}
	neck := float64(out.JoinStitches)
	for _, s := range in.Steps {
		neck *= 1 - s.RemovedFraction
	}
	return int(math.Floor(neck + 0.5))
}

// Yokes with bands of all kinds are knit from the join to the neck.
func TestYokeBandsAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for body := 120; body <= 400; body += knittest.Sweep(23, 115) {
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
	if planned < knittest.Sweep(700, 120) || refused > planned/5 {
		t.Errorf("planned %d yokes, refused %d: the sweep has shrunk", planned, refused)
	}
}

// A repeat of one stitch changes nothing: with a band of it every count is the nearest
// to what the schedule wants, where the most exact are asked for.
func TestYokeBandOfOneStitch(t *testing.T) {
	for body := 120; body <= 400; body += 7 {
		in := CircularInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, TolerancePercent: new(0.0),
			Bands: []Band{{15, 1, nil}, {10, 1, new(2)}}}
		out, err := PlanCircularYoke(in)
		if err != nil {
			t.Fatal(err)
		}
		checkYoke(t, in, out)
		for _, r := range out.Rounds {
			if math.Abs(r.DepartureStitches) > 0.5 {
				t.Fatalf("body %d: %d stitches, %v wanted", body, r.EndStitches, r.WantedStitches)
			}
		}
	}
}
