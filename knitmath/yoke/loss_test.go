package yoke

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// No round of an ordinary yoke takes more than two fifths of its stitches, to a fiftieth of them; of 2,295
// by the percentage system with the neck given 642 did, up to half.
func TestOrdinaryYokesDoNotHalve(t *testing.T) {
	for _, schedule := range []Schedule{SchedulePercentage, ScheduleCone} {
		ordinaryYokes(schedule, func(in CircularInput) {
			in.NeckStitches, in.NeckCm = new(int(*in.NeckCm*in.Gauge.Stitches/10)), nil
			out, err := PlanCircularYoke(in)
			if err != nil {
				t.Fatalf("%+v: %v", in, err)
			}
			for _, r := range out.Rounds {
				if lost := float64(r.StartStitches - r.EndStitches); lost > 0.4*float64(r.StartStitches)+max(1, float64(r.StartStitches)/50) {
					t.Fatalf("%+v: round %d takes %v of %d", in, r.RoundNumber, lost, r.StartStitches)
				}
			}
			if hasNotice(out, MoreThanAThird, "more than a third") {
				t.Fatalf("%+v: %v", in, out.Notices)
			}
		})
	}
}

// A neck of 72 stitches where the system's own book has 80: 268, 201 as always, then three rounds of
// shares of 27 to 30 %, where scaling would leave 128 and take 44 % of those in
// the last. By hand: 72/201 is .3582, its cube root .7102; 201 * .7102/.97 = 147.2, * .7102 = 104.5. The
// line from 201 at 1/2 to 134 at 3/4 has 147.2 at .7007 of 70 rounds, that from there to 72 has 104.5 at .869.
func TestYokeOfANarrowNeck(t *testing.T) {
	out, err := PlanCircularYoke(CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, NeckStitches: new(72),
		TolerancePercent: new(0.0)})
	if err != nil {
		t.Fatal(err)
	}
	var told []string
	for _, r := range out.Rounds {
		told = append(told, fmt.Sprintf("%d: %d", r.RoundNumber, r.EndStitches))
	}
	if got := strings.Join(told, ", "); got != "35: 201, 49: 147, 61: 105, 70: 72" {
		t.Error(got)
	}
}

// randomYoke is any yoke there may be, from a doll's to a tent's, with a fixed seed.
func randomYoke(r *rand.Rand) CircularInput {
	in := CircularInput{Gauge: &gauge.Gauge{Stitches: float64(12 + r.IntN(25)), Rows: float64(16 + r.IntN(40))},
		BodyStitches: 20 + r.IntN(400), Schedule: Schedule(r.IntN(4))}
	if r.IntN(2) == 0 {
		in.NeckStitches = new(4 + r.IntN(in.BodyStitches*13/10))
	} else if r.IntN(2) == 0 {
		in.NeckCm = new(float64(4 + r.IntN(90)))
	}
	switch r.IntN(3) {
	case 0:
		in.DepthRounds = new(1 + r.IntN(90))
	case 1:
		in.DepthCm = new(float64(1+r.IntN(280)) / 10)
	}
	switch {
	case in.Schedule == ScheduleCone && r.IntN(2) == 0:
		in.DecreaseRounds = new(1 + r.IntN(40))
	case in.Schedule == ScheduleOwn:
		for n, at := 1+r.IntN(4), 0.0; n > 0; n-- {
			at += (1 - at) * (0.1 + 0.8*r.Float64())
			in.Steps = append(in.Steps, Step{at, 0.05 + 0.4*r.Float64()})
		}
	}
	for n := r.IntN(6) - 2; n > 0; n-- {
		in.Bands = append(in.Bands, Band{1 + r.IntN(20), 1 + r.IntN(30), new(1 + r.IntN(4))})
	}
	return in
}

var doAdvice = regexp.MustCompile(`; (?:a (neck|depth|yoke) of )?([\d.]+)( cm| stitches| rounds| decrease rounds)?` +
	`(?: or ([\d.]+)(?: cm)?)? would (?:do|hold them)`)

// Whatever a refusal or a remark on what a round takes says would do has been asked, and does: over
// seeded yokes of all kinds.
func TestAdviceOnYokesDoes(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 72))
	followed := map[string]int{}
	refusals, helped := 0, 0
	for range knittest.Sweep(3_000, 400) {
		in := randomYoke(r)
		out, err := PlanCircularYoke(in)
		if err == nil {
			checkYoke(t, in, out)
			for _, n := range out.Notices {
				if n.Reason == MoreThanAThird && len(in.Bands) == 0 {
					followAdvice(t, in, n.Field, n.Description, followed, true)
				}
			}
			continue
		}
		var refused *fault.InputError
		if !errors.As(err, &refused) {
			t.Fatal(err)
		}
		refusals++
		some := false
		followJoint(t, in, refused)
		for _, v := range refused.Violations {
			if strings.HasSuffix(v.Detail, " together with the others") {
				continue
			}
			if followAdvice(t, in, v.Field, v.Detail, followed, false) {
				some = true
			}
		}
		if some || strings.Contains(err.Error(), " would do") || strings.Contains(err.Error(), "must have from ") {
			helped++
		}
	}
	t.Logf("of %d refusals %d say what would do; followed %v", refusals, helped, followed)
	if 2*helped < refusals || len(followed) < 6 {
		t.Errorf("of %d refusals %d say what would do", refusals, helped)
	}
}

// followJoint asks what is said to do only with what other fields are told.
func followJoint(t *testing.T, in CircularInput, refused *fault.InputError) {
	t.Helper()
	all, joint := in, 0
	for _, v := range refused.Violations {
		text, ok := strings.CutSuffix(v.Detail, " would do together with the others")
		if !ok {
			continue
		}
		joint++
		var number float64
		if _, err := fmt.Sscan(strings.TrimSuffix(text[strings.LastIndex(text, "; ")+2:], " cm"), &number); err != nil {
			t.Fatalf("%s: %q: %v", v.Field, v.Detail, err)
		}
		setYoke(t, &all, v.Field, number)
	}
	if _, err := PlanCircularYoke(all); joint > 0 && err != nil {
		t.Fatalf("%+v: %v; together: %v", in, refused, err)
	}
}

// setYoke sets a field to what is said to do there.
func setYoke(t *testing.T, in *CircularInput, field string, number float64) {
	t.Helper()
	switch count := int(number); field {
	case "neck_stitches":
		in.NeckStitches, in.NeckCm = &count, nil
	case "neck_cm":
		in.NeckCm = &number
	case "depth_rounds":
		in.DepthRounds, in.DepthCm = &count, nil
	case "depth_cm":
		in.DepthCm = &number
	case "decrease_rounds":
		in.DecreaseRounds = &count
	default:
		t.Fatalf("advice at %s", field)
	}
}

// followAdvice asks what is said to do, and reports whether anything is.
func followAdvice(t *testing.T, in CircularInput, field, text string, followed map[string]int, calm bool) bool {
	t.Helper()
	m := doAdvice.FindStringSubmatch(text)
	if m == nil {
		return false
	}
	for _, value := range []string{m[2], m[4]} {
		if value == "" {
			continue
		}
		var number float64
		if _, err := fmt.Sscan(value, &number); err != nil {
			t.Fatal(err)
		}
		told := field
		switch {
		case m[3] == " decrease rounds":
			told = "decrease_rounds"
		case m[1] == "neck":
			told = "neck_stitches"
		case m[1] == "depth" || m[1] == "yoke":
			told = "depth_rounds"
		case !slices.Contains([]string{"decrease_rounds", "neck_stitches", "depth_rounds", "neck_cm", "depth_cm"}, field):
			return false // other advice, of bands
		}
		other := in
		setYoke(t, &other, told, number)
		followed[field]++
		out, err := PlanCircularYoke(other)
		if err != nil || calm && hasNotice(out, MoreThanAThird, "more than a third") {
			t.Fatalf("%+v: %s: %q: %v, %v", in, field, text, err, out.Notices)
		}
	}
	return true
}
