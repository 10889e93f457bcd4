package armhole

import (
	"regexp"
	"strconv"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// Charted people with a cap of every rule and of every height: whoever gets a cap that stands upright
// at its sides, or bends and bends back, is told, and nobody else is. Published caps have 4 rows at
// the most from one decrease to the next (testdata/armhole/caps.csv).
func TestUprightCapsAreTold(t *testing.T) {
	told, planned, offered := 0, 0, 0
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
					if n.Reason == CapUpright {
						said = true
						offered += checkBell(t, in, n.Description)
					}
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
	t.Logf("%d of %d caps are told to stand upright, and of %d which height would be a bell", told, planned, offered)
	if told < 20 || 2*offered < told {
		t.Errorf("%d are told", told)
	}
}

// bellAdvised is the height of a cap with which it would be a bell.
var bellAdvised = regexp.MustCompile(`; with (\d+) rows(?:, not by the rule,| \([0-9.]+ cm (?:higher|lower)\))? it would be one$`)

// checkBell asks for the cap that a notice names, and gives 1 if it names one.
func checkBell(t *testing.T, in Input, said string) int {
	t.Helper()
	m := bellAdvised.FindStringSubmatch(said)
	if m == nil {
		return 0
	}
	rows, _ := strconv.Atoi(m[1])
	in.CapHeightRule, in.CapHeightCm, in.CapHeightRows = 0, nil, &rows
	out, err := Plan(in)
	if err != nil {
		t.Fatalf("%s: %v", said, err)
	}
	for _, n := range out.Notices {
		if n.Reason == CapUpright {
			t.Errorf("%s: %s", said, n.Description)
		}
	}
	return 1
}
