package solid

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// hatOf is a hat of so many stitches with the planner's own wedges, or so many.
func hatOf(t *testing.T, g *gauge.Gauge, stitches int, wedges *int) Crown {
	t.Helper()
	out, err := PlanCrown(CrownInput{Gauge: g, HatStitches: &stitches, WedgeCount: wedges})
	if err != nil {
		t.Fatal(stitches, err)
	}
	return out
}

// adjusted is how many stitches a round of its own takes away.
func adjusted(o Crown) int {
	if first := o.Rounds[0]; first.Adjusts {
		return first.Instruction.StartStitches - first.Instruction.EndStitches
	}
	return 0
}

// Stitches that no wedges divide lose few: 97 one, to 8 wedges, and not 7 to the flattest 9.
// Where the planner takes other wedges than the flattest they lose fewer stitches, and their
// crown neither ruffles nor points, so that hats have no more such notices for it.
func TestFewStitchesAreLost(t *testing.T) {
	if out := hatOf(t, &gauge.Gauge{Stitches: 20, Rows: 28}, 97, nil); out.WedgeCount != 8 || adjusted(out) != 1 {
		t.Errorf("97 stitches: %d wedges lose %d", out.WedgeCount, adjusted(out))
	}
	moved, spared := 0, 0
	for _, g := range []*gauge.Gauge{{Stitches: 16, Rows: 22}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 30}, {Stitches: 28, Rows: 36}} {
		var c fault.Checks
		var h hat
		h.st, h.rw = gauge.Vet(&c, "gauge", g)
		flat := int(h.flatWedges(StacksSingle) + 0.5)
		for stitches := 60; stitches <= 160; stitches++ {
			out, flattest := hatOf(t, g, stitches, nil), hatOf(t, g, stitches, &flat)
			if out.WedgeCount == flat {
				continue
			}
			moved++
			spared += adjusted(flattest) - adjusted(out)
			if adjusted(out) >= adjusted(flattest) {
				t.Errorf("%d stitches: %d wedges lose %d, %d lose %d", stitches, out.WedgeCount, adjusted(out), flat, adjusted(flattest))
			}
			if adjusted(out) > 0 && (told(out.Notices, CrownRuffles) || told(out.Notices, CrownPoints)) {
				t.Errorf("%d stitches, %d wedges: %v", stitches, out.WedgeCount, out.Notices)
			}
		}
	}
	if moved < 150 || spared < 400 {
		t.Errorf("%d hats with other wedges, %d stitches spared", moved, spared)
	}
}

// A rounded crown of few rounds is round: its first decrease rounds lie farther apart than its
// last ones, and do not make a cone.
func TestCoarseRoundedCrownsAreNoCones(t *testing.T) {
	n := 0
	for stitches := 8.0; stitches <= 16; stitches += 0.5 {
		for _, head := range []float64{44, 48, 52, 56, 60} {
			out, err := PlanCrown(CrownInput{Gauge: &gauge.Gauge{Stitches: stitches, Rows: 1.4 * stitches}, HeadCm: &head, Shape: CrownShapeRounded})
			if err != nil {
				t.Fatal(err)
			}
			rounds := out.Rounds
			if rounds[0].Adjusts {
				rounds = rounds[1:]
			}
			if len(rounds) < 4 {
				continue
			}
			n++
			last := len(rounds) - 1
			first, end := rounds[1].RoundNumber-rounds[0].RoundNumber, rounds[last].RoundNumber-rounds[last-1].RoundNumber
			if first <= end {
				t.Errorf("%v stitches, head %v: first %d rounds apart, last %d", stitches, head, first, end)
			}
		}
	}
	if n < 60 {
		t.Errorf("%d crowns", n)
	}
}

// What was asked of a hat and could not be is said, at what asked it, or refused.
func TestUnmetWishesAreSaid(t *testing.T) {
	g := &gauge.Gauge{Stitches: 20, Rows: 28}
	for name, c := range map[string]struct {
		in   CrownInput
		want report.Reason
		at   string
	}{
		"shallow":       {CrownInput{Gauge: g, CrownRounds: new(5)}, CrownDepthUnmet, "crown_rounds"},
		"shallow by cm": {CrownInput{Gauge: g, CrownCm: new(2.0)}, CrownDepthUnmet, "crown_cm"},
		"repeat":        {CrownInput{Gauge: g, HeadCm: new(55.0), StitchRule: &gauge.CountRule{Multiple: new(40)}}, SizeUnmet, "head_cm"},
	} {
		out, err := PlanCrown(c.in)
		if err != nil {
			t.Fatal(name, err)
		}
		found := false
		for _, n := range out.Notices {
			found = found || n.Reason == c.want && n.Field == c.at
		}
		if !found {
			t.Errorf("%s: %v", name, out.Notices)
		}
	}
}

// Hats lie flat unless they are asked not to: of all counts of usual gauges, with either kind of
// stacks, none ruffles or points.
func TestUnaskedCrownsLieFlat(t *testing.T) {
	n := 0
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 16}, {Stitches: 16, Rows: 22}, {Stitches: 18, Rows: 24}, {Stitches: 20, Rows: 28},
		{Stitches: 22, Rows: 30}, {Stitches: 24, Rows: 32}, {Stitches: 28, Rows: 36}, {Stitches: 28, Rows: 40}, {Stitches: 32, Rows: 44}} {
		for stitches := int(3 * g.Stitches); stitches <= int(5.8*g.Stitches); stitches++ {
			for shape := CrownShapeFlat; shape <= CrownShapeSlouchy; shape++ {
				for stacks := StacksSingle; stacks <= StacksPaired; stacks++ {
					out, err := PlanCrown(CrownInput{Gauge: &g, HatStitches: &stitches, Shape: shape, Stacks: stacks})
					if err != nil {
						t.Fatal(err)
					}
					n++
					if told(out.Notices, CrownRuffles) || told(out.Notices, CrownPoints) {
						t.Errorf("%v: %d stitches, shape %d, stacks %d: %v", g, stitches, shape, stacks, out.Notices)
					}
				}
			}
		}
	}
	if n < 3000 {
		t.Errorf("%d crowns", n)
	}
}

// A hat is as wide as asked to a stitch, or 2 %; without a wish it may be 5 % narrower, and no more
// than 17 % narrower than the head, as published ones are at most, or a stitch. Its summary says by how much.
func TestHatsAreAsWideAsAsked(t *testing.T) {
	for _, stitches := range []float64{12, 16, 18, 20, 22, 24, 28, 32} {
		for head := 36.0; head <= 62; head += 0.5 {
			g, stitch := &gauge.Gauge{Stitches: stitches, Rows: 1.4 * stitches}, 10/stitches
			asked, err := PlanCrown(CrownInput{Gauge: g, HatCm: &head})
			if err != nil {
				t.Fatal(err)
			}
			if off := math.Abs(asked.HatCm - head); off > max(0.02*head, 1.01*stitch) {
				t.Errorf("%v stitches: %v cm asked, %v", stitches, head, asked.HatCm)
			}
			free, err := PlanCrown(CrownInput{Gauge: g, HeadCm: &head})
			if err != nil {
				t.Fatal(err)
			}
			if free.HatCm < 0.83*head-stitch || free.HatCm > 0.92*1.02*head+stitch {
				t.Errorf("%v stitches: a hat of %v for a head of %v", stitches, free.HatCm, head)
			}
			if said := measure.Decimal(100-100*free.HatCm/head, 1) + " % below the head"; !strings.Contains(free.Summary(), said) {
				t.Errorf("%q does not say %q", free.Summary(), said)
			}
		}
	}
}
