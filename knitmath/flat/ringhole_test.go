package flat

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A ring keeps near to what lies flat from its hole on, however wide it is: of any gauge and size no row is off by over 10 % and over
// two steps, knit row by row, unless that is said.
func TestRingsLieFlatAtTheirHole(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	planned, worst := 0, 0.0
	for range knittest.Sweep(8000, 2000) {
		g := gauge.Gauge{Stitches: math.Exp(rng.Float64() * 6.9), Rows: math.Exp(rng.Float64() * 6.9)}
		across := math.Exp(rng.Float64()*7 - 0.5)
		hole := across * rng.Float64() * rng.Float64()
		in := Input{Gauge: &g, Form: FormRing, AcrossCm: &across, HoleCm: &hole, Direction: Direction(1 + rng.IntN(2)),
			Arrangement: Arrangement(rng.IntN(3))}
		out, err := PlanFlatShape(in)
		if err != nil || len(out.Notices) > 0 || out.TotalRows > 300 || out.WantedRimStitches > 3000 {
			continue
		}
		planned++
		counts := knitShape(t, in, out)
		for i, n := range counts {
			row := float64(i) + 0.5
			if in.Direction == DirectionInwards {
				row = float64(len(counts)) - row
			}
			wanted := 2 * math.Pi * (hole/2 + row*10/g.Rows) * g.Stitches / 10
			off := math.Abs(float64(n) - wanted)
			if off > 2*float64(out.WedgeCount) {
				worst = max(worst, off/wanted)
			}
			if off > 2*float64(out.WedgeCount) && off > 0.1*wanted {
				t.Fatalf("%v stitches to %v rows, %v cm across with a hole of %v: row %d has %d stitches, and %v lie flat", g.Stitches, g.Rows, across,
					hole, i+1, n, wanted)
			}
		}
	}
	t.Logf("%d rings, at most %.1f %% off", planned, 100*worst)
	if planned < knittest.Sweep(1500, 300) {
		t.Errorf("%d rings: the sweep has shrunk", planned)
	}
}

// A hole as wide as its ring, or wider, is refused in words that are true of both.
func TestHolesThatLeaveNoRing(t *testing.T) {
	for _, hole := range []float64{20, 30} {
		_, err := PlanFlatShape(Input{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Form: FormRing, AcrossCm: new(20.0), HoleCm: &hole})
		if err == nil || !strings.Contains(err.Error(), "so wide a hole leaves no ring") {
			t.Errorf("%v cm: %v", hole, err)
		}
	}
}
