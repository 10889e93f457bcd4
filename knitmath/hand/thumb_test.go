package hand

import (
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

var ordinary = &gauge.Gauge{Stitches: 22, Rows: 30}

// Thumbs that others printed.
func TestPublishedThumbs(t *testing.T) {
	for _, row := range knittest.Table(t, "hand/thumbs.csv") {
		n := func(name string) int { return int(knittest.Cell(t, row[name])) }
		out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(n("hand")), GussetStitches: new(n("gusset")),
			StartStitches: new(n("start")), BesideStitches: new(n("beside")), GapStitches: new(n("gap")), EveryRounds: new(n("every")),
			PalmStitches: new(n("beside") + 1)})
		if err != nil {
			t.Errorf("%s: %v", row["id"], err)
			continue
		}
		last := out.HandRounds[len(out.HandRounds)-1]
		if last.Right.StartStitches != n("before_hold") || out.HoldStitches != n("held") || out.ThumbStitches != n("thumb") ||
			out.AfterStitches != n("after") {
			t.Errorf("%s: %d before, %d held, %d of the thumb, %d after: %v", row["id"], last.Right.StartStitches, out.HoldStitches,
				out.ThumbStitches, out.AfterStitches, row)
		}
	}
	// Gussets as wide as others have them, within a stitch: 14 of 36, 15 of 42.
	for hand, want := range map[int]int{36: 14, 42: 15} {
		out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: &hand})
		if err != nil || out.GussetStitches < want-1 || out.GussetStitches > want+1 {
			t.Errorf("hand of %d: gusset of %d, published %d, %v", hand, out.GussetStitches, want, err)
		}
	}
}

// Hands of all sizes are knit, both of them, and their thumbs taken up and closed.
func TestThumbsAreKnit(t *testing.T) {
	planned, refused := 0, 0
	for stitches := 16; stitches <= 100; stitches += knittest.Sweep(1, 5) {
		for variant := range 40 {
			in := ThumbInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 24 + float64(variant)}, HandStitches: &stitches}
			if variant%4 == 3 {
				in.Gusset = GussetNone
				if variant%8 == 3 {
					in.HoldStitches, in.GapStitches = new(2+variant%9), new(1+variant%7)
				}
			} else if variant%3 > 0 {
				in.StartStitches, in.BesideStitches, in.EveryRounds = new(1+variant%5), new(variant%3), new(1+variant%6)
			}
			if variant%5 > 1 {
				in.PalmStitches = new(variant % 5)
			}
			if variant%4 < 3 && variant%5 == 4 {
				in.EveryRounds = nil
				in.GussetRounds = new(10 + variant)
				if variant%2 > 0 {
					in.EveryRounds = new(1 + variant%4)
				}
			}
			if variant%7 == 0 {
				in.LengthRounds = new(variant)
			}
			out, err := PlanThumb(in)
			if err != nil {
				knittest.CheckInputError(t, err)
				refused++
				continue
			}
			planned++
			checkThumb(t, in, out)
			checkWords(t, append(out.Directions(), out.Summary()), out.Notices)
		}
	}
	if planned < knittest.Sweep(2_500, 400) || refused < 20 {
		t.Errorf("planned %d, refused %d: the sweep has shrunk", planned, refused)
	}
}

// checkThumb knits both hands to a round above the thumb, binds off, and knits the thumb.
func checkThumb(t *testing.T, in ThumbInput, out Thumb) {
	t.Helper()
	knittest.CheckFinite(t, out)
	back := out.HandStitches / 2
	for _, right := range []bool{true, false} {
		m := knittest.CastOn(t, out.HandStitches, true)
		next := 0
		for round := 1; next < len(out.HandRounds); round++ {
			r := out.HandRounds[next]
			if r.RoundNumber > round {
				work(t, m, stitch.RowOf(stitch.ToEnd(stitch.Knit)))
				continue
			}
			i := r.Left
			if right {
				i = r.Right
			}
			if m.StitchCount() != i.StartStitches {
				t.Fatalf("%+v: %d stitches before round %d, said %d", in, m.StitchCount(), round, i.StartStitches)
			}
			work(t, m, i.Row)
			next++
			if m.StitchCount() != i.EndStitches {
				t.Fatalf("%+v: %d stitches after round %d, said %d", in, m.StitchCount(), round, i.EndStitches)
			}
			// Before the thumb come the back and some of the palm of a right hand, of a left hand
			// the rest of the palm.
			before := i.Row.Steps[0].Count
			if i.Row.Steps[0].Op != stitch.Knit {
				before = 0
			}
			if right && before < back-1 || !right && before > out.HandStitches-back {
				t.Fatalf("%+v: right %v: %d stitches before the thumb", in, right, before)
			}
		}
		if held := m.Holders(); len(held) != 1 || held[0] != out.HoldStitches || m.StitchCount() != out.AfterStitches {
			t.Fatalf("%+v: %v held, %d stitches above", in, held, m.StitchCount())
		}
		work(t, m, stitch.RowOf(stitch.ToEnd(stitch.BindOff)))
		knitThumb(t, m, in, out)
	}
}

func knitThumb(t *testing.T, m *stitch.Machine, in ThumbInput, out Thumb) {
	t.Helper()
	if err := m.LoadEdge(out.picked); err != nil {
		t.Fatalf("%+v: %v", in, err)
	}
	if err := m.TakeUpAtEnd(0); err != nil {
		t.Fatalf("%+v: %v", in, err)
	}
	next := 0
	for round := 1; round <= out.LengthRounds; round++ {
		row := stitch.RowOf(stitch.ToEnd(stitch.Knit))
		if next < len(out.ThumbRounds) && out.ThumbRounds[next].RoundNumber == round {
			row = out.ThumbRounds[next].Instruction.Row
			next++
		}
		work(t, m, row)
		if want := out.ThumbRounds[next-1].Instruction.EndStitches; m.StitchCount() != want {
			t.Fatalf("%+v: thumb round %d leaves %d stitches, said %d", in, round, m.StitchCount(), want)
		}
	}
	if next != len(out.ThumbRounds) || m.StitchCount() != out.EndStitches {
		t.Fatalf("%+v: %d of %d thumb rounds, %d stitches left", in, next, len(out.ThumbRounds), m.StitchCount())
	}
}

func work(t *testing.T, m *stitch.Machine, row stitch.Row) {
	t.Helper()
	if err := m.Work(row); err != nil {
		t.Fatalf("%s: %v", row.Text(), err)
	}
}

// checkWords: sentences that begin and end, one thing told as one.
func checkWords(t *testing.T, lines []string, notices []report.Notice) {
	t.Helper()
	knittest.CheckDirections(t, lines[len(lines)-1], lines[:len(lines)-1])
	for _, n := range notices {
		lines = append(lines, report.Sentence(n.Description)+".")
	}
	for _, s := range lines {
		for _, bad := range []string{" 1 stitches", " 1 rounds", "  ", "..", " ,", "plain", " 0 ", " k0"} {
			if strings.Contains(s, bad) {
				t.Fatalf("%q has %q", s, bad)
			}
		}
		if !strings.HasSuffix(s, ".") || report.Sentence(s) != s {
			t.Fatalf("%q is no sentence", s)
		}
	}
}

func TestThumbRefusals(t *testing.T) {
	base := func(change func(*ThumbInput)) ThumbInput {
		in := ThumbInput{Gauge: ordinary, HandStitches: new(40)}
		change(&in)
		return in
	}
	for name, c := range map[string]struct {
		change func(*ThumbInput)
		want   []string
	}{
		"empty": {func(in *ThumbInput) { *in = ThumbInput{} }, []string{"gauge REQUIRED"}},
		"no gusset": {func(in *ThumbInput) { in.Gusset, in.EveryRounds = GussetNone, new(2) },
			[]string{"every_rounds CONTRADICTORY"}},
		"held of a gusset": {func(in *ThumbInput) { in.HoldStitches = new(8) }, []string{"hold_stitches CONTRADICTORY"}},
		"ranges": {func(in *ThumbInput) {
			in.GussetStitches, in.StartStitches, in.EveryRounds, in.BesideStitches = new(2), new(0), new(21), new(-1)
			in.GapStitches, in.PalmStitches, in.LengthRounds, in.DisplayUnit = new(0), new(51), new(0), 9
		}, []string{"gusset_stitches OUT_OF_RANGE", "start_stitches OUT_OF_RANGE", "every_rounds OUT_OF_RANGE", "beside_stitches OUT_OF_RANGE",
			"gap_stitches OUT_OF_RANGE", "palm_stitches OUT_OF_RANGE", "length_rounds OUT_OF_RANGE", "display_unit UNKNOWN_VALUE"}},
		"odd growth": {func(in *ThumbInput) { in.GussetStitches = new(15) },
			[]string{"gusset_stitches INFEASIBLE"}},
		"odd growth from a start": {func(in *ThumbInput) { in.GussetStitches, in.StartStitches = new(15), new(4) },
			[]string{"gusset_stitches INFEASIBLE", "start_stitches INFEASIBLE"}},
		"width, rate and height": {func(in *ThumbInput) { in.GussetStitches, in.EveryRounds, in.GussetRounds = new(16), new(3), new(20) },
			[]string{"gusset_rounds CONTRADICTORY"}},
		"two heights": {func(in *ThumbInput) { in.GussetRounds, in.GussetCm = new(20), new(7.0) },
			[]string{"gusset_rounds CONTRADICTORY", "gusset_cm CONTRADICTORY"}},
		"a height of nothing": {func(in *ThumbInput) { in.Gusset, in.GussetCm = GussetNone, new(7.0) }, []string{"gusset_cm CONTRADICTORY"}},
		"too low": {func(in *ThumbInput) { in.GussetStitches, in.GussetRounds = new(16), new(6) },
			[]string{"gusset_rounds INFEASIBLE", "gusset_stitches INFEASIBLE"}},
		"too low a rate": {func(in *ThumbInput) { in.EveryRounds, in.GussetCm = new(20), new(3.0) },
			[]string{"gusset_cm INFEASIBLE", "every_rounds INFEASIBLE"}},
		"two sizes": {func(in *ThumbInput) { in.HandSize = SizeWoman }, []string{"hand_stitches CONTRADICTORY", "hand_size CONTRADICTORY"}},
		"no palm left": {func(in *ThumbInput) { in.PalmStitches = new(20) },
			[]string{"palm_stitches INFEASIBLE", "hand_stitches INFEASIBLE"}},
		"a tiny thumb": {func(in *ThumbInput) { in.Gusset, in.HoldStitches, in.GapStitches = GussetNone, new(2), new(2) },
			[]string{"hold_stitches INFEASIBLE", "gap_stitches INFEASIBLE"}},
		"too short": {func(in *ThumbInput) { in.LengthRounds = new(3) }, []string{"length_rounds INFEASIBLE"}},
		"hand too wide": {func(in *ThumbInput) {
			in.HandStitches, in.HandCm, in.Gauge = nil, new(60.0), &gauge.Gauge{Stitches: 200, Rows: 200}
		},
			[]string{"hand_cm INFEASIBLE", "gauge INFEASIBLE"}},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := PlanThumb(base(c.change))
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// What a refused palm offers is taken.
func TestPalmRemedy(t *testing.T) {
	_, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), PalmStitches: new(20)})
	if err == nil || !strings.Contains(err.Error(), "from the edge to the gusset; 17 would do") {
		t.Fatal(err)
	}
	for palm, want := range map[int]bool{17: true, 18: false} {
		if _, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), PalmStitches: &palm}); (err == nil) != want {
			t.Errorf("%d: %v", palm, err)
		}
	}
}

func FuzzPlanThumb(f *testing.F) {
	f.Add(40, 0, 16, 2, 3, 0, 2, 1, 20)
	f.Add(40, 0, 0, 2, 3, 21, 2, 1, 20)
	f.Add(40, 0, 16, 2, 0, 25, 2, 1, 20)
	f.Fuzz(func(t *testing.T, stitches, gusset, width, start, every, beside, gap, palm, length int) {
		in := ThumbInput{Gauge: ordinary, HandStitches: &stitches, Gusset: Gusset(gusset), GapStitches: &gap, PalmStitches: &palm,
			LengthRounds: &length}
		if in.Gusset == GussetNone {
			in.HoldStitches = &width
		} else {
			in.GussetStitches, in.StartStitches, in.EveryRounds, in.BesideStitches = &width, &start, &every, &beside
			switch {
			case width == 0:
				in.GussetStitches, in.BesideStitches, in.GussetRounds = nil, nil, &beside
			case every == 0:
				in.EveryRounds, in.BesideStitches, in.GussetRounds = nil, nil, &beside
			}
		}
		out, err := PlanThumb(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		checkThumb(t, in, out)
		checkWords(t, append(out.Directions(), out.Summary()), out.Notices)
	})
}

func BenchmarkPlanThumb(b *testing.B) {
	in := ThumbInput{Gauge: ordinary, HandStitches: new(40)}
	for b.Loop() {
		if _, err := PlanThumb(in); err != nil {
			b.Fatal(err)
		}
	}
}

// Every round of a thumb's top takes a fifth of the stitches at least, to the end: none decreases here and there.
func TestThumbTopsComeInEvenly(t *testing.T) {
	for gusset := 4; gusset <= 60; gusset++ {
		out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(120), GussetStitches: &gusset, StartStitches: new(2 - gusset%2)})
		if err != nil {
			t.Fatal(gusset, err)
		}
		for _, r := range out.ThumbRounds[2:] {
			if in := r.Instruction; 5*(in.StartStitches-in.EndStitches) < in.StartStitches {
				t.Errorf("gusset of %d: %s", gusset, in.Row.Text())
			}
		}
	}
}

// A gusset of the defaults is never told to be high, on any hand; one that gains every 12th round is.
func TestHighGussetsAreTold(t *testing.T) {
	high := func(out Thumb) bool {
		return slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == GussetUnlikeHands })
	}
	for hand := 20; hand <= 120; hand++ {
		out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: &hand})
		if err != nil || high(out) {
			t.Errorf("%d stitches: %v, %v", hand, err, out.Notices)
		}
		if out, err = PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: &hand, EveryRounds: new(12)}); err != nil || !high(out) {
			t.Errorf("%d stitches, every 12th round: %v, %v", hand, err, out.Notices)
		}
	}
}
