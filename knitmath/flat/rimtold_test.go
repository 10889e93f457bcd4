package flat

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// At gauges of any ratio a shape round a centre whose last row is over 5 % and over a stitch off what lies flat there says so, in its
// summary or by a notice.
func TestShapesTellOfTheirRims(t *testing.T) {
	rng := rand.New(rand.NewPCG(14, 6))
	lot := func(least, most float64) float64 {
		return math.Round(10*least*math.Pow(most/least, rng.Float64())) / 10
	}
	planned, off := 0, 0
	for range knittest.Sweep(60_000, 10_000) {
		in := Input{Gauge: &gauge.Gauge{Stitches: lot(2, 150), Rows: lot(2, 150)}, Direction: Direction(rng.IntN(3))}
		switch in.Form = [...]Form{FormDisc, FormRing, FormSector, FormPolygon, FormMitredSquare}[rng.IntN(5)]; in.Form {
		case FormPolygon:
			in.SideCm, in.CornerCount = new(lot(2, 60)), new(MinCorners+rng.IntN(10))
		case FormMitredSquare:
			in.SideCm = new(lot(2, 60))
		case FormRing:
			in.AcrossCm, in.HoleCm = new(lot(2, 100)), new(lot(1, 20))
		case FormSector:
			in.AcrossCm, in.TurnDegrees, in.Direction = new(lot(2, 100)), new(lot(MinTurn, MaxTurn)), DirectionUnspecified
		default:
			in.AcrossCm, in.Arrangement = new(lot(2, 100)), Arrangement(rng.IntN(int(ArrangementShortRows)))
		}
		out, err := PlanFlatShape(in)
		if err != nil {
			continue
		}
		planned++
		rim := out.EndStitches
		if in.Direction == DirectionInwards {
			rim = out.StartStitches
		}
		wanted := out.WantedRimStitches - out.GrowthStitches/2 // the rim is the edge of the last row, which is measured in its middle
		if miss := math.Abs(float64(rim) - wanted); miss <= max(0.051*wanted, 1) {
			continue
		}
		if off++; len(out.Notices) == 0 && !strings.Contains(out.Summary(), "than lie flat there") {
			t.Errorf("%v, form %d, across %v, side %v: a rim of %d where %v are wanted: %s", *in.Gauge, in.Form, in.AcrossCm, in.SideCm, rim, wanted,
				out.Summary())
		}
	}
	t.Logf("%d shapes, %d of a rim over 5 %% and a stitch off", planned, off)
	if planned < knittest.Sweep(30_000, 5_000) || off < planned/100 {
		t.Errorf("%d shapes, %d rims off", planned, off)
	}
}
