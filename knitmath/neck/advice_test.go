package neck

import (
	"math/rand/v2"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// farOff is a question that is more often refused than not, by a number: odd remainders, middles and
// slopes too wide, depths too small, counts that no rule has; in stitches, in cm and in inches.
func farOff(seed uint64) Input {
	r := rand.New(rand.NewPCG(seed, 53))
	some := func(low, high int) *int {
		if r.IntN(3) > 0 {
			return nil
		}
		return new(low + r.IntN(high-low+1))
	}
	// length turns a count into a length at times.
	length := func(n **int, perCm float64) *float64 {
		if *n == nil || r.IntN(3) > 0 {
			return nil
		}
		cm := max(float64(measure.RoundHalfUp(float64(**n)/perCm*10)), 1) / 10
		*n = nil
		return &cm
	}
	g := ordinary()
	if r.IntN(3) == 0 {
		g.Stitches, g.Rows = knittest.FarGauge(r)
	}
	in := Input{Gauge: g, Shape: Shape(r.IntN(5)), WidthStitches: new(20 + r.IntN(100)), NeckStitches: some(1, 120),
		FrontDepthRows: some(0, 60), BackDepthRows: some(0, 8), ShoulderSlopeRows: some(0, 80), EdgeStitches: some(1, 6),
		FrontWidthStitches: some(10, 130), ArmholeRows: some(8, 140), DisplayUnit: measure.DisplayUnit(r.IntN(3))}
	if in.Shape <= ShapeV {
		in.FrontCentreStitches, in.BackCentreStitches = some(0, 40), some(0, 40)
	}
	if in.NeckStitches == nil {
		in.ShoulderStitches = some(1, 60)
	}
	if r.IntN(3) == 0 {
		in.ShoulderMethod = ShoulderMethodShortRows
	}
	for _, rule := range []**gauge.CountRule{&in.NeckRule, &in.WidthRule} {
		if r.IntN(6) == 0 {
			*rule = &gauge.CountRule{Multiple: some(1, 8), Remainder: some(0, 9)}
		}
	}
	st, rw := g.Stitches/10, g.Rows/10
	in.WidthCm, in.NeckCm, in.ShoulderCm = length(&in.WidthStitches, st), length(&in.NeckStitches, st), length(&in.ShoulderStitches, st)
	in.FrontDepthCm, in.BackDepthCm = length(&in.FrontDepthRows, rw), length(&in.BackDepthRows, rw)
	in.FrontWidthCm, in.ShoulderSlopeCm = length(&in.FrontWidthStitches, st), length(&in.ShoulderSlopeRows, rw)
	if r.IntN(8) == 0 {
		in.ShoulderSlopeRows, in.ShoulderSlopeCm, in.ShoulderSlopeDegrees = nil, nil, new(float64(r.IntN(60)))
	}
	return in
}

func ask(in Input) error { _, err := PlanNeckline(in); return err }

// What a refusal says would do is planned as it is printed, and most are told something; no depth that
// nobody gave is refused.
func TestAdviceIsTaken(t *testing.T) {
	refused, told := 0, 0
	for seed := range knittest.Sweep(6_000, 600) {
		in := farOff(uint64(seed))
		err := ask(in)
		if err == nil {
			continue
		}
		knittest.CheckInputError(t, err)
		refused++
		told += min(knittest.CheckOffers(t, in, err, ask), 1)
		for _, v := range knittest.Reasons(err) {
			if v.Field == "back_depth_rows" && in.BackDepthRows == nil || v.Field == "front_depth_rows" && in.FrontDepthRows == nil {
				t.Errorf("question %d: %v", seed, err)
			}
		}
	}
	t.Logf("%d refused, %d of them told what does", refused, told)
	if 4*told < 3*refused || refused < knittest.Sweep(2_500, 250) {
		t.Errorf("%d refused, %d of them told what does", refused, told)
	}
}
