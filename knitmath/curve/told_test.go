package curve

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// The summary has the counts at both ends, the height, how near the plan lies and how long
// the edges are.
func TestCurvedEdgesAreSummarised(t *testing.T) {
	in := CurvedEdgeInput{StartStitches: 90, Gauge: &gauge.Gauge{Stitches: 20, Rows: 30},
		Points: []CurvePoint{{HeightRows: new(30), InwardStitches: new(10), Shape: ShapeQuarterEllipse}}}
	both, err := PlanCurvedEdge(in)
	if err != nil {
		t.Fatal(err)
	}
	for _, part := range []string{"From 90 to 70 stitches over 30 rows (10 cm), each edge ", " from the curve. As knit the right edge is ",
		" long, the left edge ", "; the curve is "} {
		if !strings.Contains(both.Summary(), part) {
			t.Errorf("%q does not say %q", both.Summary(), part)
		}
	}
	in.Edges = EdgesRight
	right, err := PlanCurvedEdge(in)
	if err != nil || !strings.HasPrefix(right.Summary(), "From 90 to 80 stitches over 30 rows (10 cm), the edge ") ||
		!strings.Contains(right.Summary(), "As knit the edge is ") {
		t.Errorf("%q, %v", right.Summary(), err)
	}
	in.Points = []CurvePoint{{HeightRows: new(10), InwardStitches: new(0)}, {HeightRows: new(20), InwardStitches: new(-5)}}
	wider, err := PlanCurvedEdge(in)
	if err != nil || !strings.HasPrefix(wider.Summary(), "From 90 to 95 stitches over 20 rows") {
		t.Errorf("%q, %v", wider.Summary(), err)
	}
	for _, s := range both.Sources() {
		if s.Figure == "" || s.Citation == "" || s.Status == 0 {
			t.Errorf("half a source: %+v", s)
		}
	}
	if len(both.Sources()) < 3 || (CurvedEdge{edge: both.edge}).Summary() != "" {
		t.Error("sources are missing, or nothing is summarised")
	}
}

// What lies too far in or too high at the gauge is named as it was given.
func TestPointsTooFarAreNamed(t *testing.T) {
	fine := &gauge.Gauge{Stitches: 200, Rows: 200}
	for _, c := range []struct {
		point CurvePoint
		want  []string
	}{
		{CurvePoint{HeightCm: new(5.0), InwardCm: new(900.0)}, []string{"points[0].inward_cm INFEASIBLE", "gauge INFEASIBLE"}},
		{CurvePoint{HeightCm: new(5.0), InwardCm: new(-900.0)}, []string{"points[0].inward_cm INFEASIBLE", "gauge INFEASIBLE"}},
		{CurvePoint{HeightCm: new(900.0), InwardCm: new(1.0)}, []string{"points[0].height_cm INFEASIBLE", "gauge INFEASIBLE"}},
	} {
		_, err := PlanCurvedEdge(CurvedEdgeInput{StartStitches: 90, Gauge: fine, Points: []CurvePoint{c.point}})
		knittest.WantViolations(t, err, c.want...)
	}
}

// Lines are straight strokes one after the other.
func TestLinesAreStrokes(t *testing.T) {
	a, b, c := Point{X: 0, Y: 1}, Point{X: 3, Y: 5}, Point{X: 3, Y: 9}
	at, other := From(a).Lines(b, c), From(a).Line(b).Line(c)
	if at.Start() != a || at.End() != c || at.Length() != other.Length() || at.Length() != 9 {
		t.Errorf("from %v to %v over %v cm, not %v", at.Start(), at.End(), at.Length(), other.Length())
	}
}

// A steady plan makes all changes of the curve.
func TestSteadyPlansMakeAllChanges(t *testing.T) {
	st, rw := gauge.NewDensity(22, 10), gauge.NewDensity(30, 10)
	planned := 0
	for stitches := 4; stitches <= 14; stitches++ {
		for rows := 20; rows <= 60; rows += 4 {
			course := From(Point{}).Ellipse(At(stitches, rows, st, rw), LeavingAcross).Courses(st, rw)[0]
			plan, ok := Follow(course, Settings{Edges: EdgesRight, Tolerance: 2, Steady: true})
			if !ok {
				continue
			}
			planned++
			made := 0
			for _, s := range plan.Right {
				made += s.Stitches
			}
			if made != course.Stitches {
				t.Errorf("%d stitches over %d rows: %d are made", stitches, rows, made)
			}
		}
	}
	if planned < 50 {
		t.Errorf("only %d are planned", planned)
	}
}

// Straight edges of all slopes, at ordinary gauges, are told in two runs: of those that decrease
// on right-side rows eight in nine were, and some in eight.
func TestStraightEdgesAreTwoRuns(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 5))
	planned, more, turns := 0, 0, 0
	for range 2_000 {
		st := 14 + r.IntN(19)
		rows := 20 + r.IntN(80)
		lost := 3 + r.IntN(rows/3)
		in := CurvedEdgeInput{StartStitches: 150, Gauge: &gauge.Gauge{Stitches: float64(st), Rows: float64(st) * (1.3 + r.Float64()*0.15)},
			Edges: Edges(1 + r.IntN(3)), RowChoice: RowChoice(r.IntN(2) * 2), Points: []CurvePoint{{HeightRows: &rows, InwardStitches: &lost}}}
		out, err := PlanCurvedEdge(in)
		if err != nil {
			continue
		}
		planned++
		if len(out.Runs) > 2 {
			more++
		}
		for _, run := range out.Runs {
			if run.AlternateRows > 0 {
				turns++
			}
		}
		if out.GreatestDepartureStitches > out.LeastDepartureStitches+StraightTolerance+1e-6 {
			t.Errorf("%v of %v off", out.GreatestDepartureStitches, out.LeastDepartureStitches)
		}
	}
	t.Logf("%d planned, %d of more than two runs, %d with intervals in turn", planned, more, turns)
	if planned < 1_500 || 30*more > planned || turns == 0 {
		t.Errorf("%d of %d are told in more than two runs, %d in turn", more, planned, turns)
	}
}
