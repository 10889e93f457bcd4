package curve

import (
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A rule moves the end to the nearest count that it allows, by half a repeat at most, and
// what went straight up still does.
func TestEndRule(t *testing.T) {
	for inward := 4.0; inward < 12; inward += 0.25 {
		in := CurvedEdgeInput{StartStitches: 103, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
			EndRule: &gauge.CountRule{Multiple: new(6), Remainder: new(1)},
			Points:  []CurvePoint{{HeightCm: new(8.0), InwardCm: &inward, Shape: ShapeQuarterEllipse}, {HeightCm: new(12.0), InwardCm: &inward}}}
		out, err := PlanCurvedEdge(in)
		if err != nil {
			t.Fatal(err)
		}
		checkCurvedEdge(t, in, out)
		free := in
		free.EndRule = nil
		was, err := PlanCurvedEdge(free)
		if err != nil {
			t.Fatal(err)
		}
		if off := out.EndStitches - was.EndStitches; out.EndStitches%6 != 1 || off > 3 || off < -3 || out.Rows[len(out.Rows)-1].RowNumber > 24 {
			t.Errorf("%v cm: %d stitches, without the rule %d", inward, out.EndStitches, was.EndStitches)
		}
		in.Edges = EdgesLeft
		if out, err = PlanCurvedEdge(in); err != nil || out.EndStitches%6 != 1 {
			t.Errorf("%v cm, one edge: %d stitches, %v", inward, out.EndStitches, err)
		}
	}
	_, err := PlanCurvedEdge(CurvedEdgeInput{StartStitches: 102, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
		EndRule: &gauge.CountRule{Multiple: new(6), Remainder: new(1)},
		Points:  []CurvePoint{{HeightCm: new(8.0), InwardCm: new(7.0)}}})
	knittest.WantViolations(t, err, "end_rule INFEASIBLE")
}
