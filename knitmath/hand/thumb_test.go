package hand

import (
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
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
