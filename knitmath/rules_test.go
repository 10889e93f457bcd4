package knitmath_test

import (
	"testing"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/hand"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
)

// bound are the counts that a repeat binds in a sock, a mitten and a hat of so many cm around: those of the round, by method.
func bound(g *gauge.Gauge, cm float64, rule *gauge.CountRule) map[string][]int {
	counts := map[string][]int{}
	if o, err := sock.PlanHeel(sock.HeelInput{Gauge: g, FootCircumferenceCm: &cm, StitchRule: rule}); err == nil {
		last := o.Rows[len(o.Rows)-1].Instruction.EndStitches // the gussets return to the round
		counts["PlanHeel"] = []int{o.RoundStitches, o.HeelStitches + o.InstepStitches, last}
	}
	if o, err := sock.PlanToe(sock.ToeInput{Gauge: g, FootCircumferenceCm: &cm, StitchRule: rule}); err == nil {
		counts["PlanToe"] = []int{o.RoundStitches, o.Rows[0].Instruction.StartStitches}
	}
	if o, err := hand.PlanThumb(hand.ThumbInput{Gauge: g, HandCm: &cm, StitchRule: rule}); err == nil {
		first := o.HandRounds[0].Right.StartStitches
		counts["PlanThumb"] = []int{o.HandStitches, first, o.AfterStitches} // the thumb held, the hand has as many again
	}
	if o, err := hand.PlanMittenTop(hand.MittenTopInput{Gauge: g, HandCm: &cm, StitchRule: rule}); err == nil {
		counts["PlanMittenTop"] = []int{o.HandStitches, o.Rounds[0].Instruction.StartStitches}
	}
	head := 2.5 * cm
	if o, err := solid.PlanCrown(solid.CrownInput{Gauge: g, HeadCm: &head, StitchRule: rule}); err == nil {
		counts["PlanCrown"] = []int{o.HatStitches, o.Rounds[0].Instruction.StartStitches}
	}
	return counts
}

// Every count of socks, mittens and hats that the repeat of a pattern binds has whole repeats, and what they need beside them.
func TestRepeatsBindTheCounts(t *testing.T) {
	seen := map[string]int{}
	for _, g := range []*gauge.Gauge{{Stitches: 18, Rows: 25}, {Stitches: 24, Rows: 32}, {Stitches: 32, Rows: 44}} {
		for cm := 12.0; cm <= 27; cm += float64(knittest.Sweep(3, 5)) {
			for multiple := 1; multiple <= 14; multiple++ {
				for _, beside := range [][2]int{{0, 0}, {1, 0}, {0, 1}, {3, 2}} {
					rule := &gauge.CountRule{Multiple: new(multiple), Remainder: new(beside[0]), Edge: new(beside[1])}
					for method, counts := range bound(g, cm, rule) {
						seen[method]++
						for i, n := range counts {
							if whole := n - beside[0] - 2*beside[1]; whole%multiple != 0 || whole <= 0 {
								t.Fatalf("%s, %v at %v cm: count %d of %d is no multiple of %d and %v", method, *g, cm, i, n, multiple, beside)
							}
						}
					}
				}
			}
		}
	}
	for _, method := range []string{"PlanHeel", "PlanToe", "PlanThumb", "PlanMittenTop", "PlanCrown"} {
		if seen[method] < knittest.Sweep(600, 350) {
			t.Errorf("%s: %d planned", method, seen[method])
		}
	}
}

// roundsOf are the counts of a disc and a ring, and of bodies of every form, of so many wedges, by method.
func roundsOf(cm float64, wedges int) map[string][]int {
	counts := map[string][]int{}
	add := func(of string, ends []int, rounds int, at func(i int) stitch.Instruction) {
		counts[of] = append(counts[of], ends...)
		for i := range rounds {
			counts[of] = append(counts[of], at(i).EndStitches)
		}
	}
	hole := cm / 3
	for form, in := range map[flat.Form]flat.Input{flat.FormDisc: {}, flat.FormRing: {HoleCm: &hole}} {
		in.Gauge, in.Form, in.AcrossCm, in.WedgeCount = mittenGauge, form, &cm, &wedges
		if o, err := flat.PlanFlatShape(in); err == nil {
			add("flat", []int{o.StartStitches, o.EndStitches}, len(o.Rows), func(i int) stitch.Instruction { return o.Rows[i].Instruction })
		}
	}
	for form := solid.FormSphere; form <= solid.FormDrop; form++ {
		in := solid.SolidInput{Gauge: mittenGauge, Form: form, AcrossCm: &cm, WedgeCount: &wedges}
		if form != solid.FormSphere {
			in.HeightCm = new(1.5 * cm)
		}
		if o, err := solid.PlanSolid(in); err == nil {
			add("solid", []int{o.StartStitches, o.EndStitches, o.GreatestStitches}, len(o.Rounds),
				func(i int) stitch.Instruction { return o.Rounds[i].Instruction })
		}
	}
	return counts
}

// Discs, rings and bodies, which have no rule of their own, have whole repeats of a pattern in every round where it is asked for
// as wedge_count.
func TestWedgesAreRepeats(t *testing.T) {
	planned := map[string]int{}
	for cm := 8.0; cm <= 40; cm += float64(knittest.Sweep(2, 9)) {
		for wedges := 3; wedges <= 14; wedges++ {
			for of, counts := range roundsOf(cm, wedges) {
				planned[of] += len(counts)
				for _, n := range counts {
					if n%wedges != 0 && 2*n != wedges { // the last round of a body may draw its wedges together two and two
						t.Errorf("%s: %d is no multiple of %d", of, n, wedges)
					}
				}
			}
		}
	}
	if planned["flat"] < knittest.Sweep(2_000, 500) || planned["solid"] < knittest.Sweep(5_000, 1_200) {
		t.Errorf("%v planned", planned)
	}
}
