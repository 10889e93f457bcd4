package hand

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/report"
)

// A figure that the knitter gives has no source; what is taken for it has one.
func TestThumbsCiteWhatIsTaken(t *testing.T) {
	given := ThumbInput{Gauge: ordinary, HandStitches: new(40)}
	for name, c := range map[string]struct {
		change func(*ThumbInput)
		want   []report.Source
	}{
		"all taken": {func(*ThumbInput) {}, []report.Source{gussetCited, rateCited, thumbLengthCited}},
		"width":     {func(in *ThumbInput) { in.GussetStitches = new(14) }, []report.Source{rateCited, thumbLengthCited}},
		"rate":      {func(in *ThumbInput) { in.EveryRounds = new(2) }, []report.Source{gussetCited, thumbLengthCited}},
		"rounds":    {func(in *ThumbInput) { in.LengthRounds = new(20) }, []report.Source{gussetCited, rateCited}},
		"length":    {func(in *ThumbInput) { in.LengthCm = new(5.5) }, []report.Source{gussetCited, rateCited}},
		"height":    {func(in *ThumbInput) { in.GussetRounds = new(25) }, []report.Source{gussetCited, thumbLengthCited}},
		"no gusset": {func(in *ThumbInput) { in.Gusset = GussetNone }, []report.Source{noGussetCited, thumbLengthCited}},
		"held":      {func(in *ThumbInput) { in.Gusset, in.HoldStitches = GussetNone, new(8) }, []report.Source{thumbLengthCited}},
	} {
		in := given
		c.change(&in)
		out, err := PlanThumb(in)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		for _, s := range []report.Source{gussetCited, rateCited, thumbLengthCited, noGussetCited} {
			if got, want := slices.Contains(out.Sources(), s), slices.Contains(c.want, s); got != want {
				t.Errorf("%s: %q is cited: %v", name, s.Figure, got)
			}
		}
	}
}

func TestTopsCiteTheirKind(t *testing.T) {
	for kind, want := range map[TopKind]report.Source{TopKindUnspecified: wedgeTopCited, TopKindWedge: wedgeTopCited,
		TopKindStar: starTopCited, TopKindRound: roundTopCited, TopKindShort: shortTopCited} {
		out, err := PlanMittenTop(MittenTopInput{Gauge: ordinary, HandStitches: new(40), Kind: kind})
		if err != nil || !slices.Contains(out.Sources(), want) {
			t.Errorf("kind %d: %v, %v", kind, out.Sources(), err)
		}
	}
}

// What is asked for is never free, wider hands are dearer, and the widest are let in.
func TestHandsHaveTheirPrice(t *testing.T) {
	widest := ThumbInput{Gauge: ordinary, HandStitches: new(MaxHandStitches), GussetStitches: new(MaxHandStitches)}
	narrow := ThumbInput{Gauge: ordinary, HandStitches: new(40), GussetStitches: new(16)}
	listed := ThumbInput{Gauge: ordinary, GussetRounds: new(20), EveryRounds: new(3)}
	for _, c := range [][2]int{{(ThumbInput{}).Cost(), 1}, {widest.Cost(), narrow.Cost() + 1}, {cost.Limit, widest.Cost()},
		{cost.Limit, listed.Cost()}, {listed.Cost(), narrow.Cost()}, {(MittenTopInput{}).Cost(), 1},
		{(MittenTopInput{HandStitches: new(600)}).Cost(), (MittenTopInput{HandStitches: new(100)}).Cost() + 1}} {
		if c[0] < c[1] {
			t.Errorf("%d steps are fewer than %d", c[0], c[1])
		}
	}
}

// The first rounds of a thumb say what they pick up: a stitch in each corner only where there
// is more than one stitch between them, and the next round closes just those.
func TestCornersOfThumbs(t *testing.T) {
	for gap, corners := range map[int]bool{1: false, 2: true, 4: true} {
		out, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), GapStitches: &gap})
		if err != nil {
			t.Fatal(err)
		}
		var rounds []string
		for _, d := range out.Directions() {
			if strings.HasPrefix(d, "Round ") && strings.Contains(d, "(thumb") {
				rounds = append(rounds, d)
			}
		}
		if !strings.Contains(rounds[0], ", along the gap") || strings.Contains(rounds[0], "one in each corner") != corners {
			t.Errorf("gap of %d: %q", gap, rounds[0])
		}
		for i, r := range rounds {
			if strings.Contains(r, "to close the corners") != (corners && i == 1) {
				t.Errorf("gap of %d, round %d: %q", gap, i+1, r)
			}
		}
	}
}

// A gusset that does not grow by two at a time is told the counts next to it, and they do.
func TestGussetsOffered(t *testing.T) {
	for asked, offered := range map[int][]int{15: {14, 16}, 13: {12, 14}, 3: {4}} {
		_, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), GussetStitches: &asked})
		if err == nil {
			t.Fatalf("%d: no refusal", asked)
		}
		for _, n := range offered {
			if !regexp.MustCompile(`\b` + strconv.Itoa(n) + `\b`).MatchString(err.Error()) {
				t.Errorf("%d: %d is not offered: %v", asked, n, err)
			}
			if _, err := PlanThumb(ThumbInput{Gauge: ordinary, HandStitches: new(40), GussetStitches: &n}); err != nil {
				t.Errorf("%d: %d is offered, and refused: %v", asked, n, err)
			}
		}
	}
}

// The last rounds of a thumb are one repeat each, and what is left over: no hand counts its few stitches in parts.
func TestThumbsCloseInRepeats(t *testing.T) {
	planned := 0
	for stitches := MinHandStitches; stitches <= 80; stitches++ {
		out, err := PlanThumb(ThumbInput{HandStitches: &stitches, Gauge: ordinary})
		if err != nil {
			continue
		}
		planned++
		for _, r := range out.ThumbRounds[max(len(out.ThumbRounds)-2, 0):] {
			if steps := r.Instruction.Row.Steps; r.RoundNumber > 2 && len(steps) > 2 {
				t.Errorf("%d stitches: %q", stitches, r.Instruction.Row.Text())
			}
		}
	}
	if planned < 40 {
		t.Errorf("%d planned", planned)
	}
}

// Every top says where its rounds begin.
func TestTopsSayWhereRoundsBegin(t *testing.T) {
	for kind := TopKindUnspecified; kind <= TopKindShort; kind++ {
		out, err := PlanMittenTop(MittenTopInput{Gauge: ordinary, HandStitches: new(40), Kind: kind})
		if err != nil || !strings.HasPrefix(out.Directions()[0], "Rounds begin at the edge of the hand") {
			t.Errorf("kind %d: %q, %v", kind, out.Directions(), err)
		}
	}
}
