package neck

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/shortrow"
)

// drawn is a neckline as somebody might ask it, by a number.
func drawn(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 13))
	gauges := [][2]float64{{22, 30}, {18, 24}, {28, 36}, {12, 16}, {20, 26.5}, {16, 32}}
	g := gauges[r.IntN(len(gauges))]
	in := Input{
		Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]},
		Shape: Shape(r.IntN(int(ShapeBoat) + 1)), Centre: Centre(r.IntN(3)),
		ShoulderMethod: ShoulderMethod(r.IntN(3)), RowChoice: shaping.RowChoice(r.IntN(3)),
	}
	shoulder, neck := 2+r.IntN(40), 1+r.IntN(60)
	in.WidthStitches = new(2*shoulder + neck)
	if r.IntN(4) > 0 {
		in.NeckStitches = new(neck)
	}
	if in.ShoulderMethod == ShoulderMethodShortRows {
		in.TurnMethod = shortrow.TurnMethod(r.IntN(4))
	}
	if r.IntN(3) > 0 {
		in.FrontDepthRows = new(r.IntN(70))
	}
	if r.IntN(3) > 0 {
		in.BackDepthRows = new(r.IntN(24))
	}
	if r.IntN(3) > 0 {
		in.ShoulderSlopeRows = new(r.IntN(shoulder + 3))
	}
	if r.IntN(4) == 0 {
		in.EdgeStitches = new(1 + r.IntN(3))
	}
	if r.IntN(4) == 0 {
		in.ToleranceStitches = new(float64(r.IntN(5)) / 2)
	}
	if r.IntN(5) == 0 && in.Shape <= ShapeV {
		in.FrontCentreStitches = new(neck%2 + 2*r.IntN(neck/2+1))
	}
	if r.IntN(3) == 0 {
		in.ArmholeRows = new(8 + 2*r.IntN(30))
		in.ArmholeSteps = armholeDrawn(r, *in.ArmholeRows)
	}
	if r.IntN(6) == 0 && in.FrontCentreStitches == nil {
		in.FrontWidthStitches = new(*in.WidthStitches + r.IntN(9))
	}
	if r.IntN(4) == 0 && in.ShoulderMethod != ShoulderMethodShortRows {
		in.StrapStitches = new(1 + r.IntN(24))
	}
	if len(in.ArmholeSteps) > 0 && r.IntN(2) == 0 {
		in.FrontArmholeSteps = armholeDrawn(r, *in.ArmholeRows)
	}
	return in
}

// armholeDrawn is an armhole: an underarm, a group or two, and decreases.
func armholeDrawn(r *rand.Rand, rows int) []ArmholeStep {
	steps := []ArmholeStep{{1, 1 + r.IntN(8), true}}
	for row := 3; row < 3+2*r.IntN(3) && row < rows; row += 2 {
		steps = append(steps, ArmholeStep{row, 1 + r.IntN(3), true})
	}
	for row := steps[len(steps)-1].RowNumber + 2; row < rows; row += 2 + 2*r.IntN(2) {
		if len(steps) > 12 {
			break
		}
		steps = append(steps, ArmholeStep{row, 1, false})
	}
	return steps
}

// eachDrawn plans thousands of necklines and shows those that have a plan.
func eachDrawn(t *testing.T, show func(at string, in Input, out Neckline)) {
	t.Helper()
	planned, all := 0, knittest.Sweep(12_000, 2_000)
	for seed := range all {
		in := drawn(uint64(seed))
		out, err := PlanNeckline(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		planned++
		show(fmt.Sprintf("question %d", seed), in, out)
		if t.Failed() {
			return
		}
	}
	if planned < 6*all/10 {
		t.Errorf("%d of %d have a plan: the sweep has shrunk", planned, all)
	}
}
