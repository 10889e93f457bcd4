package solid

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A tube as narrow as a doll's arm or a feeler, of 4 to 9 stitches, has one count from end to end, within three quarters of a stitch
// of what it wants, unless so many wedges are asked for; and what is said to be off is no less than its rounds are.
func TestNarrowTubesAreTubes(t *testing.T) {
	tubes := 0
	for _, rows := range []float64{20, 28, 40} {
		for wanted := 4.0; wanted < 9; wanted += 0.1 * float64(knittest.Sweep(1, 5)) {
			for wedges := range 9 {
				across, high := wanted/2/math.Pi, 6.0
				in := SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: rows}, Form: FormCylinder, AcrossCm: &across, HeightCm: &high}
				if wedges > 0 {
					in.WedgeCount = &wedges
				} else {
					in.BaseOpeningCm = &across
				}
				out, err := PlanSolid(in)
				if err != nil {
					t.Errorf("%v rows, %v stitches round, %d wedges: %v", rows, wanted, wedges, err)
					continue
				}
				tubes++
				counts, off := knitCounts(t, out), 0.0
				for i := 3; i < len(counts)-3; i++ {
					off = max(off, math.Abs(float64(counts[i])-wanted))
					if wedges == 0 && counts[i] != counts[3] {
						t.Fatalf("%v rows, %v stitches round, %d wedges: no tube: %v", rows, wanted, wedges, counts)
					}
				}
				if off > out.GreatestDepartureStitches+1e-6 || wedges == 0 && off > 0.75 {
					t.Errorf("%v rows, %v stitches round, %d wedges: said to be %v off: %v", rows, wanted, wedges, out.GreatestDepartureStitches, counts)
				}
			}
		}
	}
	if tubes < knittest.Sweep(1000, 200) {
		t.Errorf("%d tubes: the sweep has shrunk", tubes)
	}
}
