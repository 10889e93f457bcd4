package hand

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// Tops of all kinds on hands of all sizes are knit from the first round to the last.
func TestTopsAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for stitches := 16; stitches <= 140; stitches += knittest.Sweep(1, 9) {
		for variant := range 24 {
			in := MittenTopInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 24 + float64(variant)}, HandStitches: &stitches,
				Kind: TopKind(variant % 5), WithOutline: variant%3 == 0}
			switch variant % 4 {
			case 1:
				in.LengthRounds = new(variant * 5)
			case 2:
				in.EndStitches = new(1 + variant)
			case 3:
				in.Finish = Finish(1 + variant%2)
			}
			out, err := PlanMittenTop(in)
			if err != nil {
				knittest.CheckInputError(t, err)
				refused++
				continue
			}
			planned++
			checkTop(t, in, out)
			checkWords(t, append(out.Directions(), out.Summary()), out.Notices)
		}
	}
	if planned < knittest.Sweep(2_000, 200) || refused < knittest.Sweep(50, 10) {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

func checkTop(t *testing.T, in MittenTopInput, out MittenTop) {
	t.Helper()
	knittest.CheckNotices(t, "PlanMittenTop", out.Notices)
	knittest.CheckFinite(t, out)
	m := knittest.CastOn(t, out.HandStitches, true)
	next := 0
	for round := 1; round <= out.LengthRounds; round++ {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if next < len(out.Rounds) && out.Rounds[next].RoundNumber == round {
			row = out.Rounds[next].Instruction.Row
			next++
		}
		work(t, m, row)
		if next > 0 && m.StitchCount() != out.Rounds[next-1].Instruction.EndStitches {
			t.Fatalf("%+v: round %d leaves %d stitches", in, round, m.StitchCount())
		}
	}
	if next != len(out.Rounds) || m.StitchCount() != out.EndStitches || out.EvenRounds+out.TopRounds != out.LengthRounds {
		t.Fatalf("%+v: %d of %d rounds, %d stitches left: %+v", in, next, len(out.Rounds), m.StitchCount(), out)
	}
	if last := out.Rounds[len(out.Rounds)-1].RoundNumber; last != out.LengthRounds {
		t.Fatalf("%+v: %d rounds, the last decrease in round %d", in, out.LengthRounds, last)
	}
	if out.Finish == FinishGraft && out.EndStitches%2 != 0 {
		t.Fatalf("%+v: %d stitches to graft", in, out.EndStitches)
	}
	if in.WithOutline {
		right := out.Outline.Lines[0].Points
		knittest.Near(t, "below", right[0].X, out.MittenCm/4, 1e-9)
		knittest.Near(t, "top", right[len(right)-1].Y, out.LengthCm, 1e-9)
	}
}

// Tops as they are told: every 5th stitch narrowed and 5 rounds even, every 4th and 4
// (Handbook of Wool Knitting and Crochet, 1918); k1, ssk ... k2tog, k1 twice each round to 8
// (a forum); four stacks to half, then every round to 8.
func TestPublishedTops(t *testing.T) {
	type top struct{ round, left int }
	for name, c := range map[string]struct {
		in   MittenTopInput
		want []top
	}{
		"round": {MittenTopInput{HandStitches: new(50), Kind: TopKindRound}, []top{{1, 40}, {7, 30}, {12, 20}, {16, 10}}},
		"short": {MittenTopInput{HandStitches: new(24), Kind: TopKindShort}, []top{{1, 20}, {2, 16}, {3, 12}, {4, 8}}},
		"star":  {MittenTopInput{HandStitches: new(24), Kind: TopKindStar}, []top{{1, 20}, {3, 16}, {5, 12}, {6, 8}}},
		"wedge": {MittenTopInput{HandStitches: new(40)}, []top{{1, 36}, {3, 32}, {5, 28}, {7, 24}, {9, 20}, {10, 16}, {11, 12}}},
	} {
		c.in.Gauge = ordinary
		out, err := PlanMittenTop(c.in)
		if err != nil || len(out.Rounds) != len(c.want) {
			t.Errorf("%s: %+v, %v", name, out.Rounds, err)
			continue
		}
		if c.in.Kind == TopKindRound && out.TopRounds != 16 {
			t.Errorf("%s: %d rounds, where the last leaves what is drawn up", name, out.TopRounds)
		}
		for i, r := range out.Rounds {
			if (top{r.RoundNumber, r.Instruction.EndStitches}) != c.want[i] {
				t.Errorf("%s: round %d leaves %d, want %v", name, r.RoundNumber, r.Instruction.EndStitches, c.want[i])
			}
		}
	}
}

// A round top is about a quarter of the hand's circumference high at any usual gauge: as the book
// has it where that is near enough, else of other sections.
func TestRoundTopsAreAsHighAsHalfABall(t *testing.T) {
	for stitches := 12.0; stitches <= 40; stitches++ {
		for hand := 13.0; hand <= 24; hand += 0.5 {
			g := &gauge.Gauge{Stitches: stitches, Rows: 1.4 * stitches}
			out, err := PlanMittenTop(MittenTopInput{Gauge: g, HandCm: &hand, Kind: TopKindRound})
			if err != nil {
				t.Fatal(err)
			}
			// A round of its own may adjust the count.
			if off := math.Abs(out.TopCm - out.MittenCm/4); off > 0.36*out.MittenCm/4+10/g.Rows {
				t.Errorf("%v stitches, hand %v: a top of %v cm, wanted %v", stitches, hand, out.TopCm, out.MittenCm/4)
			}
			checkTop(t, MittenTopInput{HandCm: &hand}, out)
		}
	}
	out, err := PlanMittenTop(MittenTopInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 200}, HandStitches: new(40), Kind: TopKindRound})
	if err != nil || out.Notices[len(out.Notices)-1].Reason != TopUnlikeHands {
		t.Errorf("a top of %v cm: %v, %v", out.TopCm, out.Notices, err)
	}
}

// Fewer stitches than there is room to decrease to are not left, which is said; as many, or fewer, are not.
func TestEndsUnmetAreSaid(t *testing.T) {
	for _, c := range []struct {
		kind        TopKind
		asked, left int
		said        bool
	}{{TopKindWedge, 4, 8, true}, {TopKindShort, 7, 8, true}, {TopKindWedge, 8, 8, false},
		{TopKindWedge, 10, 8, false}, {TopKindStar, 1, 1, false}} {
		out, err := PlanMittenTop(MittenTopInput{Gauge: ordinary, HandStitches: new(40), Kind: c.kind, EndStitches: &c.asked})
		if err != nil || out.EndStitches != c.left {
			t.Fatal(c, out.EndStitches, err)
		}
		if said := len(out.Notices) == 1 && out.Notices[0].Reason == EndUnmet; said != c.said {
			t.Errorf("%v: %v", c, out.Notices)
		}
	}
}

func TestHandNotices(t *testing.T) {
	told := func(notices []report.Notice, reason report.Reason) bool {
		for _, n := range notices {
			if n.Reason == reason {
				return true
			}
		}
		return false
	}
	top := func(in MittenTopInput) []report.Notice {
		in.Gauge = ordinary
		out, err := PlanMittenTop(in)
		if err != nil {
			t.Fatal(err)
		}
		return out.Notices
	}
	thumb := func(in ThumbInput) []report.Notice {
		in.Gauge = ordinary
		out, err := PlanThumb(in)
		if err != nil {
			t.Fatal(err)
		}
		return out.Notices
	}
	for reason, notices := range map[report.Reason][]report.Notice{
		BabyCare:         top(MittenTopInput{HandCm: new(12.0)}),
		gauge.Halfway:    top(MittenTopInput{HandCm: new(20.0), EasePercent: new(0.0), StitchRule: &gauge.CountRule{Multiple: new(8)}}),
		NeedsEase:        thumb(ThumbInput{HandStitches: new(40), Gusset: GussetNone}),
		ThumbUnlikeHands: thumb(ThumbInput{HandStitches: new(80), GussetStitches: new(12)}),
	} {
		if !told(notices, reason) {
			t.Errorf("%s: %v", reason, notices)
		}
	}
	if n := thumb(ThumbInput{HandStitches: new(42)}); len(n) > 0 {
		t.Errorf("an ordinary thumb: %v", n)
	}
}

func TestTopRefusals(t *testing.T) {
	base := func(change func(*MittenTopInput)) MittenTopInput {
		in := MittenTopInput{Gauge: ordinary, HandStitches: new(40)}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*MittenTopInput)
		want   []string
	}{
		"empty": {func(in *MittenTopInput) { *in = MittenTopInput{} }, []string{"gauge REQUIRED"}},
		"ranges": {func(in *MittenTopInput) {
			in.HandStitches, in.LengthRounds, in.EndStitches, in.Kind, in.Finish, in.DisplayUnit = new(15), new(0), new(0), 9, 9, 9
		}, []string{"hand_stitches OUT_OF_RANGE", "kind UNKNOWN_VALUE", "length_rounds OUT_OF_RANGE", "end_stitches OUT_OF_RANGE",
			"finish UNKNOWN_VALUE", "display_unit UNKNOWN_VALUE"}},
		"for a hand only": {func(in *MittenTopInput) { in.EasePercent, in.StitchRule = new(1.0), &gauge.CountRule{} },
			[]string{"ease_percent CONTRADICTORY", "stitch_rule CONTRADICTORY"}},
		"a star grafted":  {func(in *MittenTopInput) { in.Kind, in.Finish = TopKindStar, FinishGraft }, []string{"finish CONTRADICTORY"}},
		"shorter than it": {func(in *MittenTopInput) { in.LengthRounds = new(5) }, []string{"length_rounds INFEASIBLE"}},
		"in cm too":       {func(in *MittenTopInput) { in.LengthCm = new(1.0) }, []string{"length_cm INFEASIBLE"}},
		"nothing to narrow": {func(in *MittenTopInput) { in.EndStitches = new(40) },
			[]string{"hand_stitches INFEASIBLE", "end_stitches INFEASIBLE"}},
		"both lengths": {func(in *MittenTopInput) { in.LengthCm, in.LengthRounds = new(9.0), new(30) },
			[]string{"length_rounds CONTRADICTORY", "length_cm CONTRADICTORY"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanMittenTop(base(c.change))
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

func FuzzPlanMittenTop(f *testing.F) {
	f.Add(40, 1, 60, 8, 1)
	f.Fuzz(func(t *testing.T, stitches, kind, length, end, finish int) {
		in := MittenTopInput{Gauge: ordinary, HandStitches: &stitches, Kind: TopKind(kind), Finish: Finish(finish), WithOutline: true}
		if length != 0 {
			in.LengthRounds = &length
		}
		if end != 0 {
			in.EndStitches = &end
		}
		out, err := PlanMittenTop(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		checkTop(t, in, out)
		checkWords(t, append(out.Directions(), out.Summary()), out.Notices)
	})
}

func BenchmarkPlanMittenTop(b *testing.B) {
	in := MittenTopInput{Gauge: ordinary, HandStitches: new(44), LengthCm: new(15.0)}
	for b.Loop() {
		if _, err := PlanMittenTop(in); err != nil {
			b.Fatal(err)
		}
	}
}
