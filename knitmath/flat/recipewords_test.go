package flat

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A rule that cups or ruffles is said to, also where the piece itself is worked as the rule has it.
func TestRulesThatCupAreSaidTo(t *testing.T) {
	seen := 0
	for _, g := range []gauge.Gauge{{Stitches: 22, Rows: 30}, {Stitches: 20, Rows: 28}} {
		for _, form := range []Form{FormSector, FormDisc} {
			for cm := 10.0; cm <= 40; cm++ {
				out, err := PlanFlatShape(Input{Gauge: &g, Form: form, AcrossCm: &cm})
				if err != nil {
					t.Fatal(err)
				}
				for _, r := range out.Recipes {
					if r.same && r.Effect != EffectFlat {
						seen++
						if said := r.words(0); !strings.Contains(said, "than lies flat") {
							t.Errorf("%v cm: %v %%, %s", cm, r.DeparturePercent, said)
						}
					}
				}
			}
		}
	}
	if seen < 5 {
		t.Errorf("%d rules cup as the piece does", seen)
	}
}
