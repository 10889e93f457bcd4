package solid

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Refusals of limbs, by field and reason; what is offered fits.
func TestLimbRefusals(t *testing.T) {
	g, cm := &gauge.Gauge{Stitches: 20, Rows: 28}, 8.0
	for _, c := range []struct {
		limbs []LimbInput
		want  []string
	}{
		{[]LimbInput{{3, -1, 361}}, []string{
			"limbs[0].stitches OUT_OF_RANGE", "limbs[0].from_base_cm OUT_OF_RANGE", "limbs[0].turn_degrees OUT_OF_RANGE"}},
		{[]LimbInput{{16, 0.2, 0}}, []string{"limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE"}},
		{[]LimbInput{{16, 100, 0}}, []string{"limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE"}},
		{[]LimbInput{{60, 6, 0}}, []string{"limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE"}},
		{[]LimbInput{{12, 6, 0}, {12, 6.5, 20}}, []string{"limbs[1] INFEASIBLE"}},
		{make([]LimbInput, 13), []string{"limbs TOO_MANY"}},
	} {
		_, err := PlanSolid(SolidInput{Gauge: g, Form: FormSphere, AcrossCm: &cm, Limbs: c.limbs})
		if len(c.limbs) > MaxLimbs {
			if err == nil || knittest.Reasons(err)[0].Field != "limbs" {
				t.Errorf("%d limbs: %v", len(c.limbs), err)
			}
			continue
		}
		knittest.WantViolations(t, err, c.want...)
	}
	// Rounds of 23 stitches where the surface has 3 to 9: a ring that would be far too long.
	_, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 60}, Form: FormSphere, AcrossCm: &cm, WedgeCount: new(23),
		Limbs: []LimbInput{{6, 0.6, 0}}})
	knittest.WantViolations(t, err, "limbs[0].stitches INFEASIBLE", "limbs[0].from_base_cm INFEASIBLE")
	out, err := PlanSolid(SolidInput{Gauge: &gauge.Gauge{Stitches: 30, Rows: 10}, Form: FormSphere, AcrossCm: &cm,
		WedgeCount: new(24), Limbs: []LimbInput{{20, 6, 0}}})
	if err != nil {
		t.Fatal(err)
	}
	checkPlaces(t, out, out.Limbs[0])
	checkRing(t, out, out.Limbs[0], 0.75, 1.6) // rows three times as high as stitches are wide
}
