package knitmath_test

import (
	"fmt"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/armhole"
	"example.com/knitmath/knitmath/curve"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/neck"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
)

// publishedGarments are tunics, armholes, caps, necks and shoulders. What a row leaves open, such as the
// depth of a neck, is taken, and is not compared.
var publishedGarments = map[string]printed{
	"rc1918_sweater": {work: func(t *testing.T) string {
		out := neckline(t, neck.Input{Gauge: &gauge.Gauge{Stitches: 11, Rows: 15, OverCm: new(2 * measure.CmPerInch)}, WidthStitches: new(80),
			NeckStitches: new(24)})
		return fmt.Sprintf("width %.2f in; shoulders %d+%d; neck share %.2f", out.WidthCm/measure.CmPerInch, out.ShoulderStitches,
			out.ShoulderStitches, float64(out.NeckStitches)/float64(out.WidthStitches))
	}},
	"columbia1917_sweater": {work: func(t *testing.T) string {
		return across(neckline(t, neck.Input{WidthStitches: new(80), NeckStitches: new(28)}))
	}},
	"coat1918_back": {work: func(t *testing.T) string {
		back := armholeOf(t, 79, 63, armhole.Input{UnderarmStitches: new(2), ShapingRows: new(8), LargestGroupStitches: new(2)})
		wantSteps(t, back.Back.Steps, 2, 2, 2, 2)
		out := neckline(t, neck.Input{WidthStitches: &back.Back.EndStitches, ShoulderStitches: new(19), ShoulderSlopeRows: new(6)})
		wantNumbers(t, out.ShoulderStepStitches, 7, 13-7, 19-13)
		return fmt.Sprintf("%d; neck %d", back.Back.EndStitches, out.NeckStitches)
	}},
	"coat1918_sleeve": {work: func(t *testing.T) string {
		out, err := shaping.PlanTaper(shaping.TaperInput{StartStitches: 97, EndStitches: 73, HeightRows: new(96)})
		if must(t, out, err); len(out.Intervals) != 1 || out.Intervals[0].EveryRows[0] != 8 {
			t.Errorf("every 8th row, not %+v", out.Intervals)
		}
		return fmt.Sprintf("%d decrease rows using %d rows", out.ShapingRows, out.HeightRows)
	}},
	"ladies1918_back": {work: func(t *testing.T) string {
		g := &gauge.Gauge{Stitches: 100, Rows: 130, OverCm: new(20 * measure.CmPerInch)}
		side, err := shaping.PlanTaper(shaping.TaperInput{StartStitches: 100, EndStitches: 76, HeightRows: new(96), Gauge: g})
		must(t, side, err)
		back := armholeOf(t, 76, 70, armhole.Input{UnderarmStitches: new(1), ShapingRows: new(6), LargestGroupStitches: new(1)})
		wantSteps(t, back.Back.Steps, 1, 1, 1)
		return fmt.Sprintf("%.0f sts/in; %d decrease rows; %.1f in; %d; %s", 100/(*side.StartWidthCm/measure.CmPerInch), side.ShapingRows,
			*side.EndWidthCm/measure.CmPerInch, back.Back.EndStitches,
			across(neckline(t, neck.Input{WidthStitches: &back.Back.EndStitches, NeckStitches: new(20)})))
	}},
	"ladies1918_front": {work: func(t *testing.T) string {
		out := curved(t, 25, curve.EdgesRight, [2]int{12, -6}, [2]int{13, -13}, [2]int{38, -25}, [2]int{39, -35}, [2]int{44, -35})
		return countsAfter(25, 1, out.Runs)
	}},
	"hoyer_back": {work: func(t *testing.T) string {
		sides := curved(t, 104, curve.EdgesBoth, [2]int{36, 6}, [2]int{74, 0})
		back := armholeOf(t, sides.EndStitches, 78, armhole.Input{UnderarmStitches: new(7), ShapingRows: new(14), LargestGroupStitches: new(1)})
		wantSteps(t, back.Back.Steps, 7, 1, 1, 1, 1, 1, 1)
		out := neckline(t, neck.Input{WidthStitches: &back.Back.EndStitches, ShoulderStitches: new(20), ShoulderSlopeRows: new(8)})
		wantNumbers(t, out.ShoulderStepStitches, 5, 5, 5, 5)
		return fmt.Sprintf("%s;%d;%d;%d", countsAfter(104, 2, sides.Runs), sides.EndStitches-2*back.UnderarmStitches,
			back.Back.EndStitches, out.NeckStitches)
	}},
	"buss_neck_front": {work: func(t *testing.T) string {
		out := neckline(t, neck.Input{WidthStitches: new(92), NeckStitches: new(32), FrontCentreStitches: new(12), FrontDepthRows: new(16)})
		steps := neckSteps(out.Front)
		wantNumbers(t, steps, 3, 2, 2, 1, 1, 1)
		all, begin, end := 0, out.Front.Steps[0], out.Front.Steps[len(steps)-1]
		for _, n := range steps {
			all += n
		}
		return fmt.Sprintf("%d+2*%d=%d; %d steps = %d-%d rows", out.Front.CentreStitches, all, out.Front.NeckStitches, len(steps),
			end.SecondSideRowNumber-begin.SecondSideRowNumber+1, end.FirstSideRowNumber-begin.FirstSideRowNumber+1)
	}},
	"buss_neck_back": {work: func(t *testing.T) string {
		out := neckline(t, neck.Input{WidthStitches: new(92), NeckStitches: new(32), BackCentreStitches: new(20), BackDepthRows: new(6)})
		steps := neckSteps(out.Back)
		wantNumbers(t, steps, 4, 2)
		return fmt.Sprintf("second step %d", steps[1])
	}},
	"fdm_neck": {work: func(t *testing.T) string {
		out := neckline(t, neck.Input{WidthStitches: new(69), NeckStitches: new(33), FrontCentreStitches: new(15), FrontDepthRows: new(14),
			ShoulderSlopeRows: new(4)})
		wantNumbers(t, neckSteps(out.Front), 3, 2, 2, 1, 1)
		wantNumbers(t, out.ShoulderStepStitches, 9, 9)
		beside := (out.WidthStitches - out.Front.CentreStitches) / 2
		return fmt.Sprintf("%d+%d+%d; %d left per side after neck (so two steps of %d)", beside, out.Front.CentreStitches, beside,
			out.ShoulderStitches, out.ShoulderStepStitches[0])
	}},
	"shoulder_44": {work: func(t *testing.T) string {
		steps := neckline(t, neck.Input{WidthStitches: new(120), ShoulderStitches: new(44), ShoulderSlopeRows: new(16)}).ShoulderStepStitches
		large := 0
		for _, n := range steps {
			if n == steps[0] {
				large++
			}
		}
		return fmt.Sprintf("%d steps: %d x %d and %d x %d", len(steps), large, steps[0], len(steps)-large, steps[len(steps)-1])
	}},
	"cap_sls": {work: func(t *testing.T) string {
		// A back of 94 stitches that loses 16 is taken. Of 66 of the sleeve 10 are the foot, 8 the steps before the top, 16 the top.
		out, err := armhole.Plan(armhole.Input{Gauge: perInch(5, 6.5), BackStitches: new(94), AcrossBackStitches: new(94 - 16),
			ArmholeDepthCm: new(8.5 * measure.CmPerInch), SleeveStitches: new(66), UnderarmStitches: new(5), CapTopStitches: new(16),
			CapHeightRule: armhole.CapHeightRuleLessByChest})
		must(t, out, err)
		return fmt.Sprintf("%.1f in; %d rows; %d sts per side", out.Cap.HeightCm/measure.CmPerInch, out.Cap.HeightRows,
			(out.Cap.StartStitches-2*out.UnderarmStitches-8-out.Cap.EndStitches)/2)
	}},
	"cap_less": {work: func(t *testing.T) string {
		var inches []float64
		for _, chest := range []float64{29, 40, 50} {
			out := capOf(t, armhole.Input{ChestCm: new(chest * measure.CmPerInch), ArmholeDepthCm: new(8 * measure.CmPerInch),
				CapHeightRule: armhole.CapHeightRuleLessByChest})
			inches = append(inches, out.Cap.HeightCm/measure.CmPerInch)
		}
		return fmt.Sprintf("cap %.0f / %.0f / %.0f in", inches[0], inches[1], inches[2])
	}},
	"cap_30d": {work: func(t *testing.T) string {
		out := capOf(t, armhole.Input{ChestCm: new(36 * measure.CmPerInch), ArmholeDepthCm: new(8 * measure.CmPerInch),
			CapTopCm: new(3 * measure.CmPerInch), CapHeightRule: armhole.CapHeightRuleLessTop})
		return fmt.Sprintf("cap depth 8 - 1.5 - %.1f = %.0f in", out.CapTopCm/2/measure.CmPerInch, out.Cap.HeightCm/measure.CmPerInch)
	}},
	"armhole_30d": {work: func(t *testing.T) string {
		out := armholeOf(t, 110, 14*5, armhole.Input{ShapingRows: new(22), LargestGroupStitches: new(1)})
		lost := out.Back.StartStitches - out.Back.EndStitches
		singles := out.Back.Steps[1:]
		return fmt.Sprintf("%d to lose; %d per side; bind %d; then %d singles over %d rows", lost, lost/2, out.UnderarmStitches, len(singles),
			singles[len(singles)-1].RowNumber+1-underarm)
	}},
}

// underarm are the rows that bind off both armholes.
const underarm = 2

// neckline is a neck, at an ordinary gauge where none is printed.
func neckline(t *testing.T, in neck.Input) neck.Neckline {
	t.Helper()
	if in.Gauge == nil {
		in.Gauge = &gauge.Gauge{Stitches: 22, Rows: 30}
	}
	out, err := neck.PlanNeckline(in)
	return must(t, out, err)
}

// across is how the stitches of a neck are divided: "26+28+26".
func across(out neck.Neckline) string {
	return fmt.Sprintf("%d+%d+%d", out.ShoulderStitches, out.NeckStitches, out.ShoulderStitches)
}

func neckSteps(p neck.Piece) []int {
	var list []int
	for _, s := range p.Steps {
		list = append(list, s.Stitches)
	}
	return list
}

// armholeOf is an armhole of 5 stitches and 7 rows to the inch on so many stitches; the sleeve is taken.
func armholeOf(t *testing.T, back, across int, in armhole.Input) armhole.Armhole {
	t.Helper()
	in.Gauge, in.BackStitches, in.AcrossBackStitches = perInch(5, 7), &back, &across
	in.ArmholeDepthRows, in.UpperArmCm = new(56), new(30.0)
	out, err := armhole.Plan(in)
	return must(t, out, err)
}

// capOf is a cap of 5 stitches and 6.5 rows to the inch, with the narrowest back and arm with which its
// edge fits: a cap of a given height does not go into every armhole.
func capOf(t *testing.T, in armhole.Input) armhole.Armhole {
	t.Helper()
	in.Gauge = perInch(5, 6.5)
	for across := 0.34; across < 0.42; across += 0.01 {
		in.AcrossBackCm = new(*in.ChestCm * across)
		for arm := 0.25; arm < 0.45; arm += 0.01 {
			in.UpperArmCm = new(*in.ChestCm * arm)
			if out, err := armhole.Plan(in); err == nil && !moved(out) {
				return out
			}
		}
	}
	t.Fatal("no cap fits")
	return armhole.Armhole{}
}

// moved reports whether a cap has not the height of its rule.
func moved(out armhole.Armhole) bool {
	return slices.ContainsFunc(out.Notices, func(n report.Notice) bool { return n.Reason == armhole.CapMoved })
}

// curved is an edge through points of so many rows and stitches inward.
func curved(t *testing.T, start int, edges curve.Edges, points ...[2]int) curve.CurvedEdge {
	t.Helper()
	in := curve.CurvedEdgeInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, StartStitches: start, Edges: edges}
	for _, p := range points {
		in.Points = append(in.Points, curve.CurvePoint{HeightRows: &p[0], InwardStitches: &p[1]})
	}
	out, err := curve.PlanCurvedEdge(in)
	return must(t, out, err)
}

// countsAfter are those after each way of shaping at so many edges: "92;104".
func countsAfter(start, edges int, runs []curve.Run) string {
	var list []int
	for i, r := range runs {
		change := r.Stitches * r.Times * edges
		if !r.Kind.Gains() {
			change = -change
		}
		start += change
		if i+1 == len(runs) || runs[i+1].Kind != r.Kind {
			list = append(list, start)
		}
	}
	return joined(list, ";")
}

func wantSteps(t *testing.T, steps []armhole.Step, want ...int) {
	t.Helper()
	var list []int
	for _, s := range steps {
		list = append(list, s.Stitches)
	}
	wantNumbers(t, list, want...)
}

func wantNumbers(t *testing.T, got []int, want ...int) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%v, printed %v", got, want)
	}
}
