package flat

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// Of questions far off, with fields at their bounds among them, what is planned is knit, and what a refusal
// says would do does.
func TestOffersDo(t *testing.T) {
	for seed := range uint64(knittest.Sweep(3, 1)) {
		offersDo(t, rand.New(rand.NewPCG(14, 5+100*seed)))
	}
}

func offersDo(t *testing.T, rng *rand.Rand) {
	t.Helper()
	cm := func() *float64 { return knittest.Halves(knittest.Far(rng, 1, 2000)) }
	refused, offered, left := 0, 0, 0
	for range knittest.Sweep(3000, 600) {
		in := Input{Gauge: &gauge.Gauge{}, DisplayUnit: measure.DisplayUnit(rng.IntN(3)), Form: Form(1 + rng.IntN(int(FormStar)))}
		in.Gauge.Stitches, in.Gauge.Rows = knittest.FarGauge(rng)
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
		out, err := PlanFlatShape(in)
		if err == nil {
			if len(out.Notices) > 0 {
				knitShape(t, in, out)
			} else {
				checkShape(t, in, out)
			}
			continue
		}
		knittest.CheckInputError(t, err)
		n := min(knittest.CheckOffers(t, in, err, func(q Input) error { _, err := PlanFlatShape(q); return err }), 1)
		if in.Gauge.Stitches >= 14 && in.Gauge.Stitches <= 34 { // of a gauge far off there is often nothing to offer
			refused, offered = refused+1, offered+n
		}
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
	if offered*4 < refused || left == 0 {
		t.Errorf("%d refused, %d offered something", refused, offered)
	}
}
