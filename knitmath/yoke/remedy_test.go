package yoke

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// What is said to do, does: half the repeat in a band, two more even rounds below the
// bands, the nearest repeat, a tolerance, and rounds that take half.
func TestRemediesOfBandsWork(t *testing.T) {
	offered := map[string]int{}
	ask := func(in CircularInput) {
		out, err := PlanCircularYoke(in)
		for _, notice := range out.Notices {
			if notice.Reason == FarFromSchedule || notice.Reason == MoreThanAThird {
				askRemedies(t, in, notice.Field, notice.Description, offered)
			}
		}
		if refused := (*fault.InputError)(nil); errors.As(err, &refused) {
			for _, v := range refused.Violations {
				askRemedies(t, in, v.Field, v.Detail, offered)
			}
		}
	}
	n := 0
	repeats := []int{24, 30, 36, 48, 7, 60, 84, 17, 150, 600}
	for _, schedule := range []Schedule{SchedulePercentage, ScheduleCone} {
		for body := 90; body <= 270; body += knittest.Sweep(6, 30) {
			for depth := 40; depth <= 70; depth += 5 {
				for bands := 1; bands <= 3; bands++ {
					for above := range 4 { // rounds above the last band
						n++
						in := CircularInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: body, Schedule: schedule,
							NeckStitches: new(body * (34 + n%7) / 100), NeckToleranceStitches: new(n % 3), DepthRounds: &depth}
						left := depth - 7*above
						for b := range bands {
							even := 1 + (n+b)%3
							height := max(1, left/(bands-b)-even)
							in.Bands = append(in.Bands, Band{height, repeats[(n+3*b)%len(repeats)], &even})
							left -= height + even
						}
						ask(in)
					}
				}
			}
		}
	}
	t.Logf("offered %v", offered)
	for _, kind := range []string{"half", "even", "repeat", "tolerance", "loss"} {
		if offered[kind] < knittest.Sweep(30, 5) {
			t.Errorf("offered %v: the sweep has shrunk", offered)
		}
	}
}

// askRemedies asks what is offered in a text on a field.
func askRemedies(t *testing.T, in CircularInput, field, text string, offered map[string]int) {
	t.Helper()
	ask := func(kind string, well bool, in CircularInput) {
		t.Helper()
		offered[kind]++
		if out, err := PlanCircularYoke(in); err != nil || well && strange(out) {
			t.Fatalf("%s: %q offers %s: %v, %v", field, text, kind, err, out.Notices)
		}
	}
	for i := range in.Bands {
		if strings.Contains(text, "half the repeat in band "+strconv.Itoa(i+1)) {
			other := in
			other.Bands = slices.Clone(in.Bands)
			other.Bands[i].RepeatStitches /= 2
			ask("half", true, other)
		}
		var repeat, count int
		own := fault.Join(fault.Index("bands", i), "repeat_stitches")
		if _, rest, ok := strings.Cut(text, "the nearest repeat that would do is "); ok && field == own {
			if _, err := fmt.Sscanf(rest, "%d, on %d", &repeat, &count); err != nil {
				t.Fatal(err)
			}
			other := in
			other.Bands = slices.Clone(in.Bands)
			other.Bands[i].RepeatStitches = repeat
			ask("repeat", false, other)
		}
	}
	if strings.Contains(text, "two more even rounds below ") {
		other := in
		other.Bands = slices.Clone(in.Bands)
		for i, b := range other.Bands {
			other.Bands[i].EvenBeforeRounds = new(fault.Or(b.EvenBeforeRounds, 1) + 2)
		}
		ask("even", true, other)
	}
	if _, rest, ok := strings.Cut(text, "a tolerance of "); ok {
		other := in
		other.NeckToleranceStitches = new(int)
		if _, err := fmt.Sscanf(rest, "%d", other.NeckToleranceStitches); err != nil {
			t.Fatal(err)
		}
		ask("tolerance", false, other)
	}
	if strings.Contains(text, "a largest_loss_percent of 50") {
		other := in
		other.LargestLossPercent = new(50.0)
		ask("loss", false, other)
	}
}
