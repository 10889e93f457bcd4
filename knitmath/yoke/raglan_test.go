package yoke

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/outlinetest"
	"example.com/knitmath/knitmath/stitch"
)

// raglanByHand is a decrease round as a knitter would tell it, written anew from
// the counts: part by part, stitch by stitch.
func raglanByHand(before, after RaglanRound, line int) []stitch.Run {
	var ops []stitch.Op
	knit := func(n int) {
		for range n {
			ops = append(ops, stitch.Knit)
		}
	}
	for _, p := range [][2]int{
		{before.BackStitches, after.BackStitches}, {before.SleeveStitches, after.SleeveStitches},
		{before.FrontStitches, after.FrontStitches}, {before.SleeveStitches, after.SleeveStitches},
	} {
		closing := false
		switch {
		case p[0] == p[1]:
			knit(p[0])
		case p[0] == 3:
			ops = append(ops, stitch.CDD)
		case p[0] == 2: // with a stitch of the line on each side
			ops = append(ops[:len(ops)-1], stitch.SSK, stitch.K2tog)
			closing = true
		default:
			ops = append(ops, stitch.SSK)
			knit(p[0] - 4)
			ops = append(ops, stitch.K2tog)
		}
		if closing {
			knit(line - 1)
		} else {
			knit(line)
		}
	}
	var runs []stitch.Run
	for _, op := range ops {
		runs = stitch.AppendRun(runs, op, 1)
	}
	return runs
}

// shapingOnly is the operations of a row that are not plain, in order.
func shapingOnly(runs []stitch.Run) []stitch.Op {
	var ops []stitch.Op
	for _, r := range runs {
		for range r.Count {
			if r.Op != stitch.Knit {
				ops = append(ops, r.Op)
			}
		}
	}
	return ops
}

// checkRaglan knits the raglan from the join to the neck, the rounds written by
// hand from the counts in the answer, and compares those that the answer writes
// out. Then what it says of rates and slopes is worked out again.
func checkRaglan(t *testing.T, in RaglanInput, out Raglan) {
	t.Helper()
	line := fault.Or(in.LineStitches, 2)
	now := RaglanRound{BackStitches: out.Back.StartStitches, FrontStitches: out.Front.StartStitches,
		SleeveStitches: out.Sleeve.StartStitches,
		TotalStitches:  out.BodyStitches + 2*out.SleeveStitches - 4*out.UnderarmStitches}
	total := func(r RaglanRound) int { return r.BackStitches + r.FrontStitches + 2*r.SleeveStitches + 4*line }
	if now.TotalStitches != out.JoinStitches || total(now) != out.JoinStitches || len(out.Rounds) != out.DepthRounds {
		t.Fatalf("join %d, parts %+v, %d rounds", out.JoinStitches, now, len(out.Rounds))
	}
	m := knittest.CastOn(t, out.JoinStitches, true)
	worked := make([]int, len(out.Instructions))
	decreases := map[string][]int{}
	for i, r := range out.Rounds {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if r.InstructionNumber > 0 {
			kind := out.Instructions[r.InstructionNumber-1]
			hand := raglanByHand(now, r, line)
			row = stitch.Compress(hand)
			if worked[r.InstructionNumber-1]++; worked[r.InstructionNumber-1] == 1 {
				row = kind.Instruction.Row // as the answer writes it
				written, err := stitch.Expand(row, now.TotalStitches)
				if err != nil || !slices.Equal(written, hand) {
					t.Fatalf("round %d is written %q, want %q (%v)", i+1, row.Text(), stitch.Compress(hand).Text(), err)
				}
				if kind.FirstRoundNumber != i+1 || kind.Instruction.StartStitches != now.TotalStitches ||
					kind.Instruction.EndStitches != r.TotalStitches {
					t.Fatalf("round %d: %+v", i+1, kind)
				}
			}
			first, err := stitch.Expand(kind.Instruction.Row, kind.Instruction.StartStitches)
			if err != nil || !slices.Equal(shapingOnly(first), shapingOnly(hand)) {
				t.Fatalf("round %d decreases unlike the first of its kind, %q: %q", i+1, kind.Instruction.Row.Text(), row.Text())
			}
			hasDouble := slices.Contains(shapingOnly(first), stitch.CDD)
			if hasDouble != strings.Contains(kind.Description, "cdd") ||
				strings.Contains(kind.Description, "lines meet") != (kind.SleevesDecrease && now.SleeveStitches == 2) {
				t.Fatalf("round %d, %q, is described as %q", i+1, row.Text(), kind.Description)
			}
			for part, c := range map[string]struct {
				before, after int
				decreases     bool
			}{
				"back":   {now.BackStitches, r.BackStitches, kind.BackDecreases},
				"front":  {now.FrontStitches, r.FrontStitches, kind.FrontDecreases},
				"sleeve": {now.SleeveStitches, r.SleeveStitches, kind.SleevesDecrease},
			} {
				if want := c.before - c.after; want != 0 && want != 2 || (want == 2) != c.decreases {
					t.Fatalf("round %d: %s from %d to %d, said to decrease %v", i+1, part, c.before, c.after, c.decreases)
				}
				if c.decreases {
					decreases[part] = append(decreases[part], i+1)
				}
			}
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("round %d, %q: %v", i+1, row.Text(), err)
		}
		if r.RoundNumber != i+1 || m.StitchCount() != r.TotalStitches || total(r) != r.TotalStitches {
			t.Fatalf("round %d: %d stitches on the needle, said %+v", i+1, m.StitchCount(), r)
		}
		now = r
	}
	for x, rows := range m.Heights() {
		if rows != out.DepthRounds {
			t.Fatalf("stitch %d at the neck has %d rounds under it, want %d", x, rows, out.DepthRounds)
		}
	}
	for i, kind := range out.Instructions {
		if worked[i] != kind.Times || kind.Description == "" {
			t.Fatalf("instruction %d worked %d times, said %+v", i+1, worked[i], kind)
		}
	}
	if now.TotalStitches != out.NeckStitches {
		t.Fatalf("%d stitches at the neck, %d said", now.TotalStitches, out.NeckStitches)
	}
	leans := 0.0
	for part, c := range map[string]struct {
		p     RaglanPart
		end   int
		edges float64
	}{"back": {out.Back, now.BackStitches, 2}, "front": {out.Front, now.FrontStitches, 2}, "sleeve": {out.Sleeve, now.SleeveStitches, 4}} {
		rounds := decreases[part]
		if c.p.EndStitches != c.end || len(rounds) != c.p.DecreaseRoundCount || c.p.StartStitches-2*len(rounds) != c.end {
			t.Fatalf("%s %+v: decreases in %v, ends on %d", part, c.p, rounds, c.end)
		}
		checkEven(t, part, rounds, out.DepthRounds, in.ShapingRounds == ShapingRoundsEverySecond)
		over := fault.Or(in.Gauge.OverCm, 10)
		st, rw := math.Round(in.Gauge.Stitches*1e6)/1e6, math.Round(in.Gauge.Rows*1e6)/1e6 // read to millionths
		lost := float64(len(rounds)) * over / st
		angle := math.Atan2(lost, float64(out.DepthRounds)*over/rw) * 180 / math.Pi
		knittest.Near(t, part+" width lost", c.p.EdgeLostCm, lost, 1e-6)
		knittest.Near(t, part+" angle", c.p.EdgeAngleDegrees, angle, 1e-6)
		leans += c.edges * angle
	}
	knittest.Near(t, "steepness", out.Steepness, leans/360, 1e-6)
}

// checkEven: the last decrease round is the last of all, the rounds may decrease,
// and the distances, the one from the join included, differ by one slot at most.
func checkEven(t *testing.T, part string, rounds []int, last int, second bool) {
	t.Helper()
	if len(rounds) == 0 {
		return
	}
	slot := 1
	if second {
		slot = 2
	}
	if rounds[len(rounds)-1] != last {
		t.Fatalf("%s: last decrease round %d of %d", part, rounds[len(rounds)-1], last)
	}
	least, most, before := math.MaxInt, 0, last%slot
	for _, r := range rounds {
		if (r-before)%slot != 0 || r == before {
			t.Fatalf("%s: decrease rounds %v", part, rounds)
		}
		least, most, before = min(least, r-before), max(most, r-before), r
	}
	if most-least > slot {
		t.Fatalf("%s: distances %d to %d in %v", part, least, most, rounds)
	}
}

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
		DepthRounds: &rounds, FrontNeckStitches: &neck, BackNeckStitches: &neck, ShapingRounds: ShapingRoundsEverySecond}
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
		"depth_rounds INFEASIBLE", "shaping_rounds INFEASIBLE")
}

// Worked by hand. Body 60, sleeves 20, underarms 4: 60 + 40 - 16 = 84 joined;
// body 52, half 26, less a stitch to each line 24; sleeve 16 - 2 = 14. To 12, 16
// and 0 stitches: 6, 4 and 7 decrease rounds. On 14 rounds, counted down from the
// neck: front 14 - floor(14j/6) = 14, 12, 10, 7, 5, 3; back 14 - floor(14j/4) = 14,
// 11, 7, 4; sleeves every second.
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
		1: {24, 24, 14, 84}, 2: {24, 24, 12, 80}, 3: {24, 22, 12, 78}, 4: {22, 22, 10, 72}, 7: {20, 18, 8, 62},
		13: {18, 14, 2, 44}, 14: {16, 12, 0, 36},
	} {
		r := out.Rounds[round-1]
		if got := [4]int{r.BackStitches, r.FrontStitches, r.SleeveStitches, r.TotalStitches}; got != want {
			t.Errorf("round %d: %v, want %v", round, got, want)
		}
	}
	for number, want := range []string{
		"[k26, ssk, k10, k2tog, k2] twice",
		"k40, ssk, k20, k2tog, k16",
		"ssk, k20, k2tog, k2, ssk, k8, k2tog, k26, ssk, k8, k2tog, k2",
	} {
		if got := out.Instructions[number].Instruction.Row.Text(); got != want {
			t.Errorf("instruction %d: %q, want %q", number+1, got, want)
		}
	}
	last := out.Instructions[len(out.Instructions)-1]
	if got, want := last.Instruction.Row.Text(), "ssk, k14, [k2tog, k1, ssk] twice, k10, k2tog, k1, ssk, k2tog, k1"; got != want {
		t.Errorf("last round %q, want %q", got, want)
	}
	got := out.Directions()[len(out.Directions())-1]
	if got != "After round 14 there are 36 stitches: back 16, front 12, each sleeve 0, four lines of 2." {
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

// Raglans of all sizes, with all lines and both spacings, are knit from the join
// to the neck.
func TestRaglanIsKnit(t *testing.T) {
	planned := 0
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for body := 16; body <= 200; body += 13 {
		for line := 0; line <= 5; line++ {
			for from := RaglanLineFromBoth; from <= RaglanLineFromSleeves; from++ {
				for spacing := ShapingRoundsAny; spacing <= ShapingRoundsEverySecond; spacing++ {
					for _, more := range []int{0, 1, 2, 5} { // rounds over a third of the body; then front lower, sleeve wider
						rounds := body/3 + more
						in := RaglanInput{Gauge: standard, BodyStitches: body, LineStitches: &line, LineFrom: from, ShapingRounds: spacing,
							DepthRounds: &rounds}
						out, err := PlanRaglan(in)
						if err != nil {
							if body > 100 {
								t.Errorf("body %d, lines of %d: %v", body, line, err)
							}
							continue
						}
						planned++
						checkRaglan(t, in, out)
						front, top := max(2, out.Front.EndStitches-2*more), out.Sleeve.EndStitches+2*more
						if (out.Front.StartStitches-front)%2 == 0 && top <= out.Sleeve.StartStitches {
							in.FrontNeckStitches, in.SleeveTopStitches = &front, &top
							if out, err = PlanRaglan(in); err != nil {
								continue
							}
							planned++
							checkRaglan(t, in, out)
						}
					}
				}
			}
		}
	}
	if planned < 3000 {
		t.Errorf("planned %d raglans: the sweep has shrunk", planned)
	}
}

// Every neck that the fields allow either is planned as asked or is refused for
// one of three causes; the default is the allowed count nearest to the wanted one.
func TestRaglanNecks(t *testing.T) {
	for _, line := range []int{0, 2} {
		for front := 2; front <= 40; front++ {
			for top := 0; top <= 20; top++ {
				rounds, back := 14, 32-line
				in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 80, LineStitches: &line, DepthRounds: &rounds,
					FrontNeckStitches: &front, BackNeckStitches: &back, SleeveTopStitches: &top}
				// 80 - 2*6 = 68 of the body, 34 of the front; 26 - 6 = 20 of a sleeve.
				start, sleeve := 34-line, 20-line
				fits := front <= start && (start-front)%2 == 0 && (start-front)/2 <= rounds &&
					top <= sleeve && (sleeve-top)%2 == 0 && (top > 0 || line > 0) && (sleeve-top)/2 <= rounds
				out, err := PlanRaglan(in)
				if (err == nil) != fits {
					t.Fatalf("front %d, top %d, lines of %d: %v", front, top, line, err)
				}
				if err != nil {
					knittest.CheckInputError(t, err)
					continue
				}
				if out.Front.EndStitches != front || out.Sleeve.EndStitches != top {
					t.Fatalf("front %d, top %d: %+v", front, top, out)
				}
			}
		}
	}
}

// The default neck is the count nearest to half of what 40 % of the body leaves
// after lines and sleeves, rounded once: in hundredths of a stitch, tried one
// count after the other, the higher first so that it wins half-way.
func TestRaglanDefaultNecks(t *testing.T) {
	for body := 40; body <= 260; body++ {
		for line := range 5 {
			in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, LineStitches: &line, DepthRounds: new(400)}
			out, err := PlanRaglan(in)
			if err != nil {
				continue
			}
			wanted := 40*body - 400*line - 200*out.Sleeve.EndStitches // of front and back together
			for _, part := range [...]RaglanPart{out.Back, out.Front} {
				best := 0
				for n := part.StartStitches; n >= 2; n -= 2 {
					if best == 0 || measure.Abs(200*n-wanted) < measure.Abs(200*best-wanted) {
						best = n
					}
				}
				if part.EndStitches != best {
					t.Fatalf("body %d, lines of %d: %d of %d at the neck, want %d: half of %d hundredths", body, line,
						part.EndStitches, part.StartStitches, best, wanted)
				}
			}
		}
	}
	// By hand: 8 % of 49 are 4 stitches an underarm, so that 41 of the body are 21 and
	// 20; sleeves of 16 - 4 come down to 2. 40 % of 49 is 19.6, less the two sleeves
	// 15.6, of which half is 7.8: 7 is nearer than 9.
	out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 49, LineStitches: new(0)})
	if err != nil || out.Back.EndStitches != 7 || out.Front.EndStitches != 8 {
		t.Errorf("%+v, %+v, %v; want 7 and 8", out.Back, out.Front, err)
	}
}

// The outline's lines stand as far apart as part and line are wide, round by
// round, and are mirror images.
func TestRaglanOutline(t *testing.T) {
	for body := 60; body <= 200; body += 20 {
		for line := range 4 {
			in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: body, LineStitches: &line, WithOutline: true}
			out, err := PlanRaglan(in)
			if err != nil {
				t.Fatal(err)
			}
			o := out.Outline
			outlinetest.CheckFrame(t, o)
			if len(o.Lines) != 6 || o.X.Unit != outline.UnitCm || o.Y.Unit != outline.UnitCm || o.Y.Least != 0 {
				t.Fatalf("%d lines, axes %+v, %+v", len(o.Lines), o.X, o.Y)
			}
			knittest.Near(t, "depth", o.Y.Greatest, out.DepthCm, 1e-12)
			for round := 0; round <= out.DepthRounds; round++ {
				n := [3]int{out.Back.StartStitches, out.Front.StartStitches, out.Sleeve.StartStitches}
				if round > 0 {
					r := out.Rounds[round-1]
					n = [3]int{r.BackStitches, r.FrontStitches, r.SleeveStitches}
				}
				for part := range n {
					right, left := o.Lines[2*part], o.Lines[2*part+1]
					y := float64(round) / 3
					knittest.Near(t, right.Name, outlinetest.At(right, t, y), float64(n[part]+line)/2/2.2, 1e-9)
					knittest.Near(t, left.Name, outlinetest.At(left, t, y), -float64(n[part]+line)/2/2.2, 1e-9)
				}
			}
			for _, l := range o.Lines {
				outlinetest.CheckCorners(t, l)
			}
		}
	}
	if out, err := PlanRaglan(RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 100}); err != nil ||
		out.Outline != nil {
		t.Errorf("an outline that nobody asked for, %v", err)
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
	if len(out.Notices) != 0 {
		t.Errorf("notices %v", out.Notices)
	}
	in.Gauge.Rows = 30 // the same stitches lost over two thirds of the depth
	if out, err = PlanRaglan(in); err != nil || len(out.Notices) != 1 || out.Notices[0].Reason != "RUFFLES" {
		t.Errorf("notices %v, %v", out.Notices, err)
	}
}

func TestRoundList(t *testing.T) {
	for _, c := range []struct {
		rounds []int
		want   string
	}{
		{nil, ""},
		{[]int{7}, "round 7"},
		{[]int{3, 7}, "rounds 3, 7"},
		{[]int{2, 4, 6, 8}, "every 2nd round from 2 to 8"},
		{[]int{1, 2, 3}, "every round from 1 to 3"},
		{[]int{3, 6, 9, 13, 17, 21, 23}, "every 3rd round from 3 to 9, every 4th round from 13 to 21, round 23"},
		{[]int{1, 3, 6, 8, 11}, "rounds 1, 3, 6, 8, 11"},
	} {
		if got := roundList(c.rounds); got != c.want {
			t.Errorf("%v: %q, want %q", c.rounds, got, c.want)
		}
	}
}

// A refusal says what would do, and what it says does.
func TestRaglanRemedies(t *testing.T) {
	p := func(n int) *int { return &n }
	in := RaglanInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, BodyStitches: 200, DepthRounds: p(23),
		ShapingRounds: ShapingRoundsEverySecond}
	_, err := PlanRaglan(in)
	if err == nil || !strings.Contains(err.Error(), "24 decrease rounds take 48 rounds") ||
		strings.Contains(err.Error(), "any round would fit") {
		t.Errorf("%v", err)
	}
	in.DepthRounds = p(24)
	_, err = PlanRaglan(in)
	if err == nil || !strings.Contains(err.Error(), "any round would fit") || !strings.Contains(err.Error(), "with these it goes to 24") {
		t.Errorf("%v", err) // sleeve: 48 - 2*12
	}
	in.ShapingRounds = ShapingRoundsAny
	if _, err = PlanRaglan(in); err != nil {
		t.Error(err)
	}
	in.ShapingRounds, in.DepthRounds = ShapingRoundsEverySecond, p(48)
	if _, err = PlanRaglan(in); err != nil {
		t.Error(err)
	}
	in.DepthRounds, in.SleeveTopStitches, in.FrontNeckStitches, in.BackNeckStitches = p(24), p(24), p(58), p(58) // 82 - 2*12
	if _, err = PlanRaglan(in); err != nil {
		t.Error(err)
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
			ShapingRounds: ShapingRounds(spacing)}
		out, err := PlanRaglan(in)
		if err == nil {
			knittest.CheckFinite(t, out)
			checkRaglan(t, in, out)
		} else {
			knittest.CheckInputError(t, err)
		}
		in.FrontNeckStitches, in.BackNeckStitches, in.SleeveTopStitches = &front, &back, &top
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
