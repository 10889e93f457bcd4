package yoke

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
)

// Body 200, sleeve 66, underarm 16: 268 joined, the sleeves 50 each, front and
// back 84 each. 8 decreases every second round until the sleeve stitches are used
// up: 25 decrease rounds, 50 rounds, 68 stitches left. The digest gives the
// sleeves all their 50 stitches, so the lines are the body's: 84 - 2*2 = 80, and
// 80 - 2*25 = 30.
//
// Source: Zimmermann, by way of a digest.
func TestRaglanOfTheDigest(t *testing.T) {
	rounds, neck := 50, 30
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, LineFrom: RaglanLineFromBody,
		DepthRounds: &rounds, FrontNeckStitches: &neck, BackNeckStitches: &neck, RoundChoice: RoundChoiceEverySecond}
	out, err := PlanRaglan(in)
	if err != nil {
		t.Fatal(err)
	}
	checkRaglan(t, in, out)
	if out.JoinStitches != 268 || out.Sleeve.StartStitches != 50 || out.Front.StartStitches != 80 || out.NeckStitches != 68 {
		t.Errorf("join %d, sleeve %d, front %d, neck %d", out.JoinStitches, out.Sleeve.StartStitches, out.Front.StartStitches,
			out.NeckStitches)
	}
	for i, r := range out.Rounds {
		if want := 268 - 8*((i+1)/2); r.TotalStitches != want {
			t.Errorf("round %d: %d stitches, want %d", i+1, r.TotalStitches, want)
		}
	}
	// 25 decrease rounds every second round take 50 rounds, and not 49.
	rounds = 49
	_, err = PlanRaglan(in)
	knittest.WantViolations(t, err, "front_neck_stitches INFEASIBLE", "back_neck_stitches INFEASIBLE", "sleeve_top_stitches INFEASIBLE",
		"depth_rounds INFEASIBLE", "round_choice INFEASIBLE")
}

// Worked by hand. Body 60, sleeves 20, underarms 4: 60 + 40 - 16 = 84 joined;
// body 52, half 26, less a stitch to each line 24; sleeve 16 - 2 = 14. To 12, 16
// and 0 stitches: 6, 4 and 7 decrease rounds on 14. Nothing is easier for the sleeves than
// every 2nd round; the front leaves the last of these out, and the back the second, the fifth
// and the last, so that full and front rounds take turns. The front departs most: in round
// 12 it has lost 6 stitches at an edge, 6/7 more than 12 rounds of 14.
func TestRaglanByHand(t *testing.T) {
	sleeve, underarm, front, back, rounds := 20, 4, 12, 16, 14
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 30}, BodyStitches: 60, SleeveStitches: &sleeve, UnderarmStitches: &underarm,
		FrontNeckStitches: &front, BackNeckStitches: &back, DepthRounds: &rounds}
	out, err := PlanRaglan(in)
	if err != nil {
		t.Fatal(err)
	}
	checkRaglan(t, in, out)
	for round, want := range map[int][4]int{ // back, front, sleeve, total
		1: {24, 24, 14, 84}, 2: {22, 22, 12, 76}, 3: {22, 22, 12, 76}, 4: {22, 20, 10, 70}, 6: {20, 18, 8, 62}, 8: {18, 16, 6, 54},
		10: {18, 14, 4, 48}, 12: {16, 12, 2, 40}, 13: {16, 12, 2, 40}, 14: {16, 12, 0, 36},
	} {
		r := out.Rounds[round-1]
		if got := [4]int{r.BackStitches, r.FrontStitches, r.SleeveStitches, r.TotalStitches}; got != want {
			t.Errorf("round %d: %v, want %v", round, got, want)
		}
	}
	for number, want := range []string{
		"[ssk, k20, k2tog, k2, ssk, k10, k2tog, k2] twice",
		"k24, ssk, k8, k2tog, k2, ssk, k18, k2tog, k2, ssk, k8, k2tog, k2",
		"k3, [k14, ssk, k2tog] twice, k1",
	} {
		if got := out.Instructions[number].Instruction.Row.Text(); got != want {
			t.Errorf("instruction %d: %q, want %q", number+1, got, want)
		}
	}
	knittest.Near(t, "departure", out.GreatestDepartureStitches, 6.0/7, 1e-9)
	// Three kinds; three rounds in turn, how often, and which is next; one round, how often.
	if out.Effort != 3+6+2 {
		t.Errorf("effort %d", out.Effort)
	}
	got := out.Directions()[len(out.Directions())-4]
	if got != "From the beginning of the round there are left: "+
		"back 16, line 2, left sleeve 0, line 2, front 12, line 2, right sleeve 0, line 2." {
		t.Errorf("%q", got)
	}
}

// Whose stitches the lines are: 200 - 32 = 168 of the body, 84 of the front, and
// 66 - 16 = 50 of a sleeve. Each part has two lines beside it. Of a line of three,
// two come from the body and one from the sleeve.
func TestRaglanLines(t *testing.T) {
	for _, c := range []struct {
		line          int
		from          RaglanLineFrom
		front, sleeve int
	}{
		{0, RaglanLineFromBoth, 84, 50}, {1, RaglanLineFromUnspecified, 82, 50}, {2, RaglanLineFromBoth, 82, 48},
		{3, RaglanLineFromBoth, 80, 48},
		{3, RaglanLineFromBody, 78, 50}, {3, RaglanLineFromSleeves, 84, 44},
	} {
		in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 200, LineStitches: &c.line, LineFrom: c.from}
		out, err := PlanRaglan(in)
		if err != nil || out.Front.StartStitches != c.front || out.Back.StartStitches != c.front || out.Sleeve.StartStitches != c.sleeve {
			t.Errorf("%+v: front %+v, back %+v, sleeve %+v, %v", c, out.Front, out.Back, out.Sleeve, err)
		}
	}
	// 61 - 2*5 = 51 of the body: the odd stitch is the back's.
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, BodyStitches: 61})
	if err != nil || out.Front.StartStitches != 23 || out.Back.StartStitches != 24 {
		t.Errorf("front %+v, back %+v, %v", out.Front, out.Back, err)
	}
}

// Four flat pieces around a square hole: a square ring of width w loses w along
// each of its eight edges, at 45 degrees, and lies flat.
func TestRaglanSteepness(t *testing.T) {
	sleeve, underarm, neck, top, rounds := 60, 0, 20, 20, 20
	line := 0
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}, BodyStitches: 120, SleeveStitches: &sleeve, UnderarmStitches: &underarm,
		LineStitches: &line, FrontNeckStitches: &neck, BackNeckStitches: &neck, SleeveTopStitches: &top, DepthRounds: &rounds}
	out, err := PlanRaglan(in)
	if err != nil {
		t.Fatal(err)
	}
	knittest.Near(t, "steepness of a flat square", out.Steepness, 1, 1e-12)
	ruffles := func(n report.Notice) bool { return n.Reason == Ruffles }
	if slices.ContainsFunc(out.Notices, ruffles) {
		t.Errorf("notices %v", out.Notices)
	}
	in.Gauge.Rows = 30 // the same stitches lost over two thirds of the depth
	if out, err = PlanRaglan(in); err != nil || !slices.ContainsFunc(out.Notices, ruffles) {
		t.Errorf("notices %v, %v", out.Notices, err)
	}
}

func TestRoundNumbers(t *testing.T) {
	for _, c := range []struct {
		rounds []int
		want   string
	}{
		{[]int{7}, "Round 7"},
		{[]int{3, 7}, "Rounds 3 and 7"},
		{[]int{2, 3}, "Rounds 2-3"},
		{[]int{1, 2, 3, 6, 8, 9}, "Rounds 1-3, 6 and 8-9"},
	} {
		if got := roundNumbers(c.rounds); got != c.want {
			t.Errorf("%v: %q, want %q", c.rounds, got, c.want)
		}
	}
}

func TestRaglanAtTheLimit(t *testing.T) {
	p := func(n int) *int { return &n }
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 40, Rows: 60}, BodyStitches: 5_000, SleeveStitches: p(2_500), UnderarmStitches: p(0),
		DepthRounds:       p(MaxRounds),
		FrontNeckStitches: p(2), BackNeckStitches: p(500), SleeveTopStitches: p(1098)} // 1248, 999 and 700 decrease rounds
	out, err := PlanRaglan(in)
	if err != nil {
		t.Fatal(err)
	}
	if words := len(strings.Join(out.Directions(), "")); words > 50_000 || len(out.Rounds) != MaxRounds || len(out.Instructions) > 8 {
		t.Errorf("%d characters, %d rounds, %d instructions", words, len(out.Rounds), len(out.Instructions))
	}
	if !testing.Short() {
		checkRaglan(t, in, out)
	}
}

func FuzzPlanRaglan(f *testing.F) {
	f.Add(22.0, 30.0, 200, 66, 16, 2, 36, 36, 0, 66, int32(0), int32(0))
	f.Add(18.0, 25.0, 151, 50, 10, 1, 20, 31, 3, 80, int32(2), int32(2))
	f.Fuzz(func(t *testing.T, stitches, rows float64, body, sleeve, underarm, line, front, back, top, rounds int, from, spacing int32) {
		body, rounds = body%400, rounds%200
		in := RaglanInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: rows}, BodyStitches: body, SleeveStitches: &sleeve,
			UnderarmStitches: &underarm, LineStitches: &line, LineFrom: RaglanLineFrom(from), DepthRounds: &rounds,
			RoundChoice: RoundChoice(spacing)}
		out, err := PlanRaglan(in)
		if err == nil {
			knittest.CheckFinite(t, out)
			checkRaglan(t, in, out)
		} else {
			knittest.CheckInputError(t, err)
		}
		in.FrontNeckStitches, in.BackNeckStitches, in.SleeveTopStitches = &front, &back, &top
		if excess := float64(top) / 8; body%2 == 0 {
			in.ToleranceStitches = &excess
		}
		if out, err = PlanRaglan(in); err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		knittest.CheckFinite(t, out)
		checkRaglan(t, in, out)
		if out.Front.EndStitches != front || out.Back.EndStitches != back || out.Sleeve.EndStitches != top {
			t.Fatalf("front %+v, back %+v, sleeve %+v", out.Front, out.Back, out.Sleeve)
		}
	})
}

func BenchmarkRaglan(b *testing.B) {
	b.ReportAllocs()
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 220}
	for b.Loop() {
		if _, err := PlanRaglan(in); err != nil {
			b.Fatal(err)
		}
	}
}
