package yoke

import (
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
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

// raglanCheck is a raglan while it is knit.
type raglanCheck struct {
	t         *testing.T
	out       Raglan
	line      int
	worked    []int            // how often, of every kind of decrease round
	decreases map[string][]int // the rounds that decrease a part
}

// checkRaglan knits the raglan from the join to the neck, the rounds written by
// hand from the counts in the answer, and compares those that the answer writes
// out. Then what it says of rounds, rates and slopes is worked out again.
func checkRaglan(t *testing.T, in RaglanInput, out Raglan) {
	t.Helper()
	c := raglanCheck{t, out, fault.Or(in.LineStitches, 2), make([]int, len(out.Instructions)), map[string][]int{}}
	now := RaglanRound{BackStitches: out.Back.StartStitches, FrontStitches: out.Front.StartStitches,
		SleeveStitches: out.Sleeve.StartStitches,
		TotalStitches:  out.BodyStitches + 2*out.SleeveStitches - 4*out.UnderarmStitches}
	if now.TotalStitches != out.JoinStitches || c.total(now) != out.JoinStitches || len(out.Rounds) != out.DepthRounds {
		t.Fatalf("join %d, parts %+v, %d rounds", out.JoinStitches, now, len(out.Rounds))
	}
	m := knittest.CastOn(t, out.JoinStitches, true)
	for i, r := range out.Rounds {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if r.InstructionNumber > 0 {
			row = c.decrease(now, r)
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("round %d, %q: %v", i+1, row.Text(), err)
		}
		if r.RoundNumber != i+1 || m.StitchCount() != r.TotalStitches || c.total(r) != r.TotalStitches {
			t.Fatalf("round %d: %d stitches on the needle, said %+v", i+1, m.StitchCount(), r)
		}
		now = r
	}
	if heights := m.Heights(); slices.Min(heights) != out.DepthRounds || slices.Max(heights) != out.DepthRounds {
		t.Fatalf("the stitches at the neck have %v rounds under them, want %d", heights, out.DepthRounds)
	}
	if now.TotalStitches != out.NeckStitches {
		t.Fatalf("%d stitches at the neck, %d said", now.TotalStitches, out.NeckStitches)
	}
	c.checkTimes()
	c.checkRounds(in)
	leans := 2*c.checkPart(in, "back", out.Back, now.BackStitches) + 2*c.checkPart(in, "front", out.Front, now.FrontStitches) +
		4*c.checkPart(in, "sleeve", out.Sleeve, now.SleeveStitches)
	knittest.Near(t, "steepness", out.Steepness, leans/360, 1e-6)
}

// checkTimes: every kind of decrease round was worked as often as it says.
func (c raglanCheck) checkTimes() {
	c.t.Helper()
	for i, kind := range c.out.Instructions {
		if c.worked[i] != kind.Times || kind.Description == "" {
			c.t.Fatalf("instruction %d worked %d times, said %+v", i+1, c.worked[i], kind)
		}
	}
}

func (c raglanCheck) total(r RaglanRound) int {
	return r.BackStitches + r.FrontStitches + 2*r.SleeveStitches + 4*c.line
}

// decrease is the row of a decrease round: the first of its kind as the answer
// writes it, the others by hand.
func (c raglanCheck) decrease(now, r RaglanRound) stitch.Row {
	c.t.Helper()
	kind := c.out.Instructions[r.InstructionNumber-1]
	hand := raglanByHand(now, r, c.line)
	row := stitch.Compress(hand)
	if c.worked[r.InstructionNumber-1]++; c.worked[r.InstructionNumber-1] == 1 {
		row = kind.Instruction.Row
		written, err := stitch.Expand(row, now.TotalStitches)
		if err != nil || !slices.Equal(written, hand) {
			c.t.Fatalf("round %d is written %q, want %q (%v)", r.RoundNumber, row.Text(), stitch.Compress(hand).Text(), err)
		}
		if kind.FirstRoundNumber != r.RoundNumber || kind.Instruction.StartStitches != now.TotalStitches ||
			kind.Instruction.EndStitches != r.TotalStitches {
			c.t.Fatalf("round %d: %+v", r.RoundNumber, kind)
		}
	}
	first, err := stitch.Expand(kind.Instruction.Row, kind.Instruction.StartStitches)
	if err != nil || !slices.Equal(shapingOnly(first), shapingOnly(hand)) {
		c.t.Fatalf("round %d decreases unlike the first of its kind, %q: %q", r.RoundNumber, kind.Instruction.Row.Text(), row.Text())
	}
	if told := c.workedByWords(kind.Description, now); !slices.Equal(told, hand) {
		c.t.Fatalf("round %d, %q, is described as %q", r.RoundNumber, row.Text(), kind.Description)
	}
	c.note("back", now.BackStitches, r.BackStitches, kind.BackDecreases, r.RoundNumber)
	c.note("front", now.FrontStitches, r.FrontStitches, kind.FrontDecreases, r.RoundNumber)
	c.note("sleeve", now.SleeveStitches, r.SleeveStitches, kind.SleevesDecrease, r.RoundNumber)
	return row
}

// note keeps a round that decreases a part: by two stitches, and only if it says so.
func (c raglanCheck) note(part string, before, after int, decreases bool, round int) {
	c.t.Helper()
	if lost := before - after; lost != 0 && lost != 2 || (lost == 2) != decreases {
		c.t.Fatalf("round %d: %s from %d to %d, said to decrease %v", round, part, before, after, decreases)
	}
	if decreases {
		c.decreases[part] = append(c.decreases[part], round)
	}
}

// checkPart works a part's rates and the slope of its edges out again, and gives
// the slope, in degrees.
func (c raglanCheck) checkPart(in RaglanInput, part string, p RaglanPart, end int) float64 {
	c.t.Helper()
	rounds := c.decreases[part]
	if p.EndStitches != end || len(rounds) != p.DecreaseRounds || p.StartStitches-2*len(rounds) != end {
		c.t.Fatalf("%s %+v: decreases in %v, ends on %d", part, p, rounds, end)
	}
	for _, r := range rounds {
		if in.RoundChoice == RoundChoiceEverySecond && (c.out.DepthRounds-r)%2 != 0 {
			c.t.Fatalf("%s: decreases in %v", part, rounds)
		}
	}
	over := fault.Or(in.Gauge.OverCm, 10)
	st, rw := math.Round(in.Gauge.Stitches*1e6)/1e6, math.Round(in.Gauge.Rows*1e6)/1e6 // read to millionths
	lost := float64(len(rounds)) * over / st
	angle := math.Atan2(lost, float64(c.out.DepthRounds)*over/rw) * 180 / math.Pi
	knittest.Near(c.t, part+" width lost", p.EdgeLostCm, lost, 1e-6)
	knittest.Near(c.t, part+" angle", p.EdgeAngleDegrees, angle, 1e-6)
	return angle
}

// Raglans of all sizes, with all lines and both spacings, are knit from the join
// to the neck.
func TestRaglanIsKnit(t *testing.T) {
	planned := 0
	standard := &gauge.Gauge{Stitches: 22, Rows: 30}
	for body := 16; body <= 200; body += knittest.Sweep(13, 67) {
		for line := 0; line <= 5; line += knittest.Sweep(1, 2) {
			for from := RaglanLineFromBoth; from <= RaglanLineFromSleeves; from++ {
				for spacing := RoundChoiceAny; spacing <= RoundChoiceEverySecond; spacing++ {
					for _, more := range []int{0, 1, 2, 5} { // rounds over a third of the body; then front lower, sleeve wider
						rounds := body/3 + more
						in := RaglanInput{Gauge: standard, BodyStitches: body, LineStitches: &line, LineFrom: from, RoundChoice: spacing,
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
	if planned < knittest.Sweep(3000, 150) {
		t.Errorf("planned %d raglans: the sweep has shrunk", planned)
	}
}
