package curve

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
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

// How far in another last point lies, which a refusal offers, is planned as it is printed and leaves what is said; no refusal
// counts below 0, as of more stitches taken than there are.
func TestOfferOfEndRuleIsTaken(t *testing.T) {
	offer := regexp.MustCompile(`end_rule does not allow; (\d+) stitch(?:es)? (in|out)ward would leave (\d+)$`)
	refused, told := 0, 0
	for seed := range knittest.Sweep(3_000, 300) {
		r := rand.New(rand.NewPCG(uint64(seed), 5))
		in := CurvedEdgeInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, Edges: Edges(r.IntN(4)), StartStitches: 20 + r.IntN(100),
			Points:  []CurvePoint{{HeightRows: new(2 + r.IntN(40)), InwardStitches: new(r.IntN(90) - 20)}},
			EndRule: &gauge.CountRule{Multiple: new(2 + r.IntN(6)), Remainder: new(r.IntN(2))}}
		if r.IntN(2) == 0 {
			in.LargestGroupStitches = new(r.IntN(3))
		}
		_, err := PlanCurvedEdge(in)
		if err == nil {
			continue
		}
		if strings.Contains(err.Error(), " -") {
			t.Errorf("question %d: %v", seed, err)
		}
		if !strings.Contains(err.Error(), "end_rule does not allow") {
			continue
		}
		refused++
		m := offer.FindStringSubmatch(strings.Split(err.Error(), "; end_rule:")[0])
		if m == nil {
			continue
		}
		told++
		inward, _ := strconv.Atoi(m[1])
		if m[2] == "out" {
			inward = -inward
		}
		in.Points[0].InwardStitches = &inward
		if out, other := PlanCurvedEdge(in); other != nil || strconv.Itoa(out.EndStitches) != m[3] {
			t.Errorf("question %d: %v\nasked again: %d stitches, %v", seed, err, out.EndStitches, other)
		}
	}
	if t.Logf("%d refused, %d told what would do", refused, told); 2*told < refused || refused < knittest.Sweep(500, 50) {
		t.Errorf("%d refused, %d told what would do", refused, told)
	}
}
