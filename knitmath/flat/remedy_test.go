package flat

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Whatever a refusal says would do does, in thousands of questions far off.
func TestOffersDo(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 5))
	cm := func() *float64 { return knittest.Halves(knittest.Far(rng, 1, 2000)) }
	refused, offered, left := 0, 0, 0
	for range knittest.Sweep(3000, 600) {
		in := Input{Gauge: &gauge.Gauge{Stitches: 14 + 20*rng.Float64(), Rows: 18 + 30*rng.Float64()}, Form: Form(1 + rng.IntN(int(FormStar)))}
		switch in.Form {
		case FormMitredSquare:
			in.SideCm = cm()
		case FormTriangleFromTop:
			in.WidthCm = cm()
		case FormTriangleFromPoint, FormTriangleFromSide:
			in.WidthCm, in.HeightCm = cm(), cm()
		case FormBiasStrip:
			in.WidthCm, in.LengthCm = cm(), cm()
		default:
			in.AcrossCm = cm()
		}
		switch in.Form {
		case FormRing:
			in.HoleCm, in.WedgeCount = cm(), knittest.Some(rng, 1, MaxWedges)
		case FormDisc, FormSector:
			in.WedgeCount, in.StartStitches = knittest.Some(rng, 1, MaxWedges), knittest.Some(rng, MinStart, MaxStart)
		case FormStar:
			in.CornerCount, in.ValleyCm = knittest.Far(rng, MinCorners, MaxCorners), knittest.Halves(knittest.Some(rng, 1, 2000))
		case FormPolygon:
			in.CornerCount = knittest.Far(rng, MinCorners, MaxCorners)
		}
		_, err := PlanFlatShape(in)
		if err == nil {
			continue
		}
		knittest.CheckInputError(t, err)
		refused++
		offered += min(knittest.CheckOffers(t, in, err, func(q Input) error { _, err := PlanFlatShape(q); return err }), 1)
	}
	for _, rows := range []float64{8, 10, 12} { // fewer than half of them to a stitch
		in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: rows}, Form: FormMitredSquare, SideCm: new(20.0)}
		if _, err := PlanFlatShape(in); err == nil || !strings.Contains(err.Error(), "with more rows to the cm would do") {
			t.Errorf("%v rows: %v", rows, err)
		}
		in.Gauge.Rows = 28
		if _, err := PlanFlatShape(in); err != nil {
			t.Error(err)
		}
	}
	for start := MinStart; start <= MaxStart; start++ {
		in := Input{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Form: FormDisc, AcrossCm: new(20.0), StartStitches: &start}
		if _, err := PlanFlatShape(in); err != nil && strings.Contains(err.Error(), "leave start_stitches out") {
			left++
			in.StartStitches = nil
			if _, err := PlanFlatShape(in); err != nil {
				t.Error(err)
			}
		}
	}
	t.Logf("%d refused, %d offered something", refused, offered)
	if offered*10 < refused*6 || left == 0 {
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}
