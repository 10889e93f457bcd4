package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Crowns for heads of all sizes at all gauges are knit from the brim, and measured.
func TestCrownsAreKnit(t *testing.T) {
	planned, refused, ruffle, adjusted, runs := 0, 0, 0, 0, map[int]int{}
	for _, in := range crowns() {
		out, err := PlanCrown(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			refused++
			continue
		}
		planned++
		checkCrown(t, in, out)
		checkCrownWords(t, out)
		if in.WedgeCount != nil || in.CrownRounds != nil || in.SuccessiveRounds != nil || len(in.Rates) > 0 {
			continue
		}
		runs[runsOf(out.Rounds)]++
		if out.Rounds[0].Adjusts {
			adjusted++
		}
		if told(out.Notices, CrownRuffles) {
			ruffle++
		}
	}
	if planned < knittest.Sweep(3_500, 300) || refused == 0 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
	free := 0
	for _, n := range runs {
		free += n
	}
	// Of the hats whose wedges and depth are the planner's own few ruffle, none is adjusted but
	// where a repeat binds the count, and most have two runs.
	if 20*ruffle > free || 4*adjusted > free || 10*(runs[1]+runs[2]+runs[3]) < 7*free {
		t.Errorf("of %d free crowns %d ruffle, %d are adjusted, runs %v", free, ruffle, adjusted, runs)
	}
}

func told(notices []report.Notice, reason report.Reason) bool {
	for _, n := range notices {
		if n.Reason == reason {
			return true
		}
	}
	return false
}

func runsOf(rounds []ClosingRound) int {
	runs, every := 0, 0
	for i := 1; i < len(rounds); i++ {
		if now := rounds[i].RoundNumber - rounds[i-1].RoundNumber; !rounds[i-1].Adjusts && now != every {
			runs, every = runs+1, now
		}
	}
	return runs
}

func crowns() []CrownInput {
	var all []CrownInput
	i := 0
	for g := 10.0; g <= 40; g += float64(knittest.Sweep(2, 11)) {
		for _, ratio := range []float64{0.6, 0.7, 0.75, 0.85} {
			for head := 33.0; head < 62; head += 3 {
				for shape := CrownShapeFlat; shape <= CrownShapeSlouchy; shape++ {
					i++
					in := CrownInput{Gauge: &gauge.Gauge{Stitches: g, Rows: g / ratio}, HeadCm: &head, Shape: shape, WithOutline: i%5 == 0}
					if i%3 == 0 {
						in.StitchRule = &gauge.CountRule{Multiple: new(2 + i%7), Remainder: new(i % 3)}
					}
					if i%4 == 0 {
						in.Stacks = StacksPaired
					} else {
						in.Uneven = Uneven(i % 4)
					}
					all = append(all, in)
					switch i % 4 {
					case 0:
						in.WedgeCount = new(4 + i%7)
					case 1:
						in.CrownRounds = new(5 + i%40)
					case 2:
						in.SuccessiveRounds, in.ToleranceRounds = new(1+i%6), new(0.5+float64(i%5))
					case 3:
						in.Rates = []Rate{{4, 1 + i%3}, {2, 2}, {1, 1}}
					}
					all = append(all, in)
				}
			}
		}
	}
	return all
}

// checkCrown knits a hat and asks of it what the answer says.
func checkCrown(t *testing.T, in CrownInput, out Crown) {
	t.Helper()
	knittest.CheckFinite(t, out)
	m := knittest.CastOn(t, out.HatStitches, true)
	next := 0
	for round := 1; round <= out.TotalRounds; round++ {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if next < len(out.Rounds) && out.Rounds[next].RoundNumber == round {
			row = out.Rounds[next].Instruction.Row
			next++
		}
		if err := m.Work(row); err != nil {
			t.Fatalf("%+v: round %d: %v", in, round, err)
		}
		if next > 0 && m.StitchCount() != out.Rounds[next-1].Instruction.EndStitches {
			t.Fatalf("%+v: round %d leaves %d stitches", in, round, m.StitchCount())
		}
	}
	if next != len(out.Rounds) || m.StitchCount() != out.EndStitches || out.EvenRounds+out.CrownRounds != out.TotalRounds {
		t.Fatalf("%+v: %d of %d rounds, %d stitches left: %+v", in, next, len(out.Rounds), m.StitchCount(), out)
	}
	for _, n := range m.Heights() {
		if n != out.TotalRounds {
			t.Fatalf("%+v: %d rounds under a stitch, said %d", in, n, out.TotalRounds)
		}
	}
	height := float64(out.TotalRounds) * 10 / in.Gauge.Rows
	knittest.Near(t, "height", out.TotalCm, height, 1e-6*max(1, 1/in.Gauge.Rows)) // a gauge is read to a millionth
	if math.Abs(out.TotalCm-out.WantedTotalCm) > 5.001/in.Gauge.Rows*(1+1e-6/in.Gauge.Rows) {
		t.Fatalf("%+v: %v cm high, wanted %v", in, out.TotalCm, out.WantedTotalCm)
	}
	// Where all decrease rounds follow one another, none is left to fill the depth.
	allTogether := fault.Or(in.SuccessiveRounds, usuallySuccessive(out)) >= len(out.Rounds)
	if in.CrownRounds != nil && !out.Rounds[0].Adjusts && len(out.Rounds) > 1 && !allTogether && *in.CrownRounds >= 2*len(out.Rounds) &&
		math.Abs(float64(out.CrownRounds-*in.CrownRounds)) > float64(*in.CrownRounds)/float64(len(out.Rounds))+1 {
		t.Fatalf("%+v: a crown of %d rounds, asked %d", in, out.CrownRounds, *in.CrownRounds)
	}
	if in.WedgeCount == nil && in.CrownRounds == nil && len(in.Rates) == 0 && in.SuccessiveRounds == nil && in.HatStitches == nil {
		checkDepth(t, in, out)
	}
	if in.WithOutline {
		checkCrownOutline(t, out)
	}
}

// checkCrownOutline: the right edge has a quarter of the circumference at the brim and of
// what is left at the top, and is as high as the hat.
func checkCrownOutline(t *testing.T, out Crown) {
	t.Helper()
	right := out.Outline.Lines[0].Points
	first, last := right[0], right[len(right)-1]
	knittest.Near(t, "brim", first.X, out.HatCm/4, 1e-9)
	knittest.Near(t, "top", last.X, out.HatCm/4*float64(out.EndStitches)/float64(out.HatStitches), 1e-9)
	knittest.Near(t, "top", last.Y, out.TotalCm, 1e-9)
	for i := 1; i < len(right); i++ {
		if right[i].X > right[i-1].X || right[i].Y < right[i-1].Y {
			t.Fatalf("the edge goes back: %v", right)
		}
	}
}

// The crown of the trade: wedges that lose a stitch every 2nd round, 8 or 9 of them at an
// ordinary gauge, and about the radius of its disc deep (Woolly Wormhead, 2016).
func TestOrdinaryCrown(t *testing.T) {
	out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HatStitches: new(96)})
	if err != nil {
		t.Fatal(err)
	}
	second := 0
	for i, r := range out.Rounds[1:] {
		if r.RoundNumber-out.Rounds[i].RoundNumber == 2 {
			second++
		}
	}
	radius := 96 * 10 / 22.0 / (2 * math.Pi)
	if out.WedgeCount != 8 || second < 8 || math.Abs(out.CrownCm-radius) > 1 {
		t.Errorf("%d wedges, %d of %d rounds every 2nd, %v cm deep, radius %v", out.WedgeCount, second, len(out.Rounds), out.CrownCm, radius)
	}
}

func BenchmarkPlanCrown(b *testing.B) {
	in := CrownInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, HeadSize: HeadSizeWoman}
	for b.Loop() {
		if _, err := PlanCrown(in); err != nil {
			b.Fatal(err)
		}
	}
}
