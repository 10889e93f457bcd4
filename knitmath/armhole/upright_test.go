package armhole

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// Charted people with a cap of every rule and of every height: whoever gets a cap that stands upright
// at its sides, or bends and bends back, is told, and nobody else is. Published caps have 4 rows at
// the most from one decrease to the next (testdata/armhole/caps.csv).
func TestUprightCapsAreTold(t *testing.T) {
	told, planned := 0, 0
	for _, who := range charted {
		for _, g := range [][2]float64{{22, 30}, {18, 24}, {14, 20}} {
			for by := range 14 {
				in := Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, ChestCm: &who[0], AcrossBackCm: &who[1],
					ArmholeDepthCm: &who[2], UpperArmCm: &who[3], CapHeightRule: CapHeightRule(by)}
				if by > int(CapHeightRuleLessTop) {
					in.CapHeightRule, in.CapHeightRows = 0, new(int(who[2]/10*g[1]*0.05*float64(by+3)))
				}
				out, err := Plan(in)
				if err != nil {
					continue
				}
				planned++
				_, apart := lostInThirds(out.Cap)
				want := by > 1 && (apart > 4 || out.sew.top.plan.Kinked)
				said := false
				for _, n := range out.Notices {
					said = said || n.Reason == CapUpright
				}
				if said != want {
					t.Errorf("%v, gauge %v, %d: told %v, %d rows apart", who, g, by, said, apart)
				}
				if want {
					told++
				}
			}
		}
	}
	t.Logf("%d of %d caps are told to stand upright", told, planned)
	if told < 20 {
		t.Errorf("%d are told", told)
	}
}
