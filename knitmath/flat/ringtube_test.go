package flat

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A ring whose hole wants fewer stitches than one for each of its wedges is told to begin as a tube, unless that is a quarter of it
// or four rounds; one whose hole is long enough for its wedges is not.
func TestRingsThatBeginAsTubesAreTold(t *testing.T) {
	tubes := 0
	g := gauge.Gauge{Stitches: 20, Rows: 28}
	for wedges := 5; wedges <= MaxWedges; wedges++ {
		for hole := 0.5; hole <= 12; hole += float64(knittest.Sweep(1, 3)) / 2 {
			across := hole + 10
			out, err := PlanFlatShape(Input{Gauge: &g, Form: FormRing, AcrossCm: &across, HoleCm: &hole, WedgeCount: &wedges})
			if err != nil {
				t.Fatal(err)
			}
			more := float64(out.StartStitches) - 2*3.14159265*hole // 2 stitches to the cm
			even := more / (2 * 3.14159265 * 20 / 28)              // until so many lie flat
			said := strings.Contains(noticed(out.Notices, Ruffles), "a tube, and no ring")
			if said != (even > 4) { // its 14 rounds are fewer than 16
				t.Errorf("%d wedges, a hole of %v cm: %d stitches, %.1f too many: %v", wedges, hole, out.StartStitches, more, out.Notices)
			}
			if said {
				tubes++
			}
		}
	}
	if tubes < 20 {
		t.Errorf("%d tubes", tubes)
	}
}
