package curve

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/cost"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
)

// randomQuestion is a question that is mostly answered, by points of all sorts.
func randomQuestion(r *rand.Rand) CurvedEdgeInput {
	in := CurvedEdgeInput{StartStitches: 60 + r.IntN(100),
		Gauge: &gauge.Gauge{Stitches: float64(12 + r.IntN(24)), Rows: float64(16 + r.IntN(32))},
		Edges: Edges(r.IntN(4)), RowChoice: RowChoice(r.IntN(3)), FirstSide: stitch.Side(r.IntN(3)), DisplayUnit: measure.DisplayUnit(r.IntN(3)),
		WithOutline: r.IntN(2) == 0}
	if r.IntN(3) == 0 {
		in.EdgeStitches = knittest.Ptr(1 + r.IntN(3))
	}
	if r.IntN(3) == 0 {
		in.LargestChangeStitches = knittest.Ptr(r.IntN(3))
	}
	if r.IntN(4) == 0 {
		in.LargestGroupStitches = knittest.Ptr(1 + r.IntN(8))
	}
	if r.IntN(3) == 0 {
		in.ToleranceStitches = knittest.Ptr(float64(r.IntN(9)) / 4)
	}
	height := 0.0
	for range 1 + r.IntN(3) {
		height += float64(r.IntN(150)) / 10
		p := CurvePoint{HeightCm: knittest.Ptr(height), InwardStitches: knittest.Ptr(r.IntN(36) - 10)}
		switch r.IntN(4) {
		case 1:
			p.Shape = ShapeArc
			p.RadiusCm = knittest.Ptr(2 + r.Float64()*60)
			p.Leaving = Leaving(r.IntN(3))
		case 2, 3:
			p.Shape = ShapeQuarterEllipse
			p.Leaving = Leaving(r.IntN(3))
		}
		in.Points = append(in.Points, p)
	}
	return in
}

// Answers of a sweep hold: every row is knit and no other changes a count, what is
// printed is read back with the same counts, the figures are those of the steps.
func TestCurvedEdgesHold(t *testing.T) {
	r := rand.New(rand.NewPCG(2026, 11))
	answered, turned := 0, 0
	for range 3_000 {
		in := randomQuestion(r)
		out, err := PlanCurvedEdge(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			continue
		}
		answered++
		if len(out.edge.courses) > 1 {
			turned++
		}
		checkCurvedEdge(t, in, out)
		if t.Failed() {
			t.Fatalf("%+v\n%s\n%s", in, out.Summary(), strings.Join(out.Directions(), "\n"))
		}
	}
	if answered < 1_200 || turned < 300 {
		t.Errorf("only %d answered, %d of them turn", answered, turned)
	}
}

func checkCurvedEdge(t *testing.T, in CurvedEdgeInput, out CurvedEdge) {
	t.Helper()
	knittest.CheckFinite(t, out)
	all, lacking := Worked(in.StartStitches, out.plan.Right, out.plan.Left, out.edge.working())
	if lacking > 0 {
		t.Fatalf("row %d lacks stitches", lacking)
	}
	knitRows(t, in.StartStitches, all)
	listed := 0
	for _, row := range all {
		if row.Instruction.StartStitches == row.Instruction.EndStitches {
			continue
		}
		if listed == len(out.Rows) || out.Rows[listed].RowNumber != row.RowNumber {
			t.Fatalf("row %d is not listed", row.RowNumber)
		}
		listed++
	}
	if listed != len(out.Rows) || out.EndStitches != all[len(all)-1].Instruction.EndStitches {
		t.Errorf("%d rows of %d, %d stitches at the end", listed, len(out.Rows), out.EndStitches)
	}
	checkPrinted(t, in, out)
	for hand, e := range [2]*KnitEdge{out.RightEdge, out.LeftEdge} {
		if (e == nil) != (hand == 0 && in.Edges == EdgesLeft || hand == 1 && in.Edges == EdgesRight) {
			t.Errorf("edge %d: %v", hand, e)
		}
		if e != nil {
			checkLength(t, *e, out)
		}
	}
	if c := in.Cost(); c < 100 || c > cost.Limit {
		t.Errorf("costs %d", c)
	}
	if in.WithOutline != (out.Outline != nil) {
		t.Errorf("outline: %v", out.Outline)
	}
}

// checkPrinted reads all the directions back.
func checkPrinted(t *testing.T, in CurvedEdgeInput, out CurvedEdge) {
	t.Helper()
	text := fmt.Sprintf("CO %d sts.\n", in.StartStitches)
	before := 0
	for _, line := range out.Directions() {
		if strings.HasPrefix(line, "Row 1 is") {
			text, before = text+"Work 1 row even.\n", 1
		} else {
			text += line + "\n"
		}
	}
	read, err := pattern.CheckInstructions(context.Background(), pattern.CheckInstructionsInput{Text: text})
	if err != nil {
		t.Fatal(err)
	}
	findings := slices.DeleteFunc(read.Findings, func(f pattern.Finding) bool { return f.Reason == "PASSED_OVER" && f.LineNumber > 1 })
	if !read.Agrees || len(findings) > 0 || read.EndStitches[0] != out.EndStitches || read.WorkedRows[0] != before+out.HeightRows {
		t.Errorf("%s%+v: %v stitches, %v rows", text, findings, read.EndStitches, read.WorkedRows)
	}
}

// checkLength compares the length of an edge with that of its corners, with a decrease
// as one stroke from the change before.
func checkLength(t *testing.T, e KnitEdge, out CurvedEdge) {
	t.Helper()
	w, h := out.edge.st.SizeCm(1), out.edge.rw.SizeCm(1)
	var x, y, sum float64
	to := func(nextX, nextY float64) {
		sum += math.Hypot((nextX-x)*w, (nextY-y)*h)
		x, y = nextX, nextY
	}
	for _, s := range e.Steps {
		if row := float64(s.RowNumber); s.Kind.Groups() {
			to(x, row-1)
			to(x+float64(s.Stitches), row-1)
		} else {
			to(x+float64(s.Stitches), row)
		}
	}
	to(x, float64(out.HeightRows))
	if math.Abs(sum-e.LengthCm) > 1e-9*sum {
		t.Errorf("%v cm long, said %v", sum, e.LengthCm)
	}
}

// What a plan cannot do is said with what would do, and that does.
func TestRemediesDo(t *testing.T) {
	steep := CurvedEdgeInput{StartStitches: 100, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, LargestGroupStitches: knittest.Ptr(2),
		Points: []CurvePoint{{HeightRows: knittest.Ptr(6), InwardStitches: knittest.Ptr(20)}}}
	_, err := PlanCurvedEdge(steep)
	knittest.WantViolations(t, err, "points "+string(fault.ReasonInfeasible))
	if !strings.Contains(err.Error(), "; this would do: more stitches bound off or cast on at once") {
		t.Error(err)
	}
	steep.LargestGroupStitches = nil
	if _, err := PlanCurvedEdge(steep); err != nil {
		t.Error(err)
	}
	// 21 stitches at each edge of 40, and what would do: 42, of which the last row binds off all.
	few := CurvedEdgeInput{StartStitches: 40, Gauge: steep.Gauge, Points: []CurvePoint{
		{HeightRows: knittest.Ptr(40), InwardStitches: knittest.Ptr(21)}}}
	_, err = PlanCurvedEdge(few)
	knittest.WantViolations(t, err, "start_stitches INFEASIBLE", "points INFEASIBLE")
	if !strings.Contains(err.Error(), "both edges take 42 of 40 stitches: row ") {
		t.Error(err)
	}
	// An arc is told its least radius, with which it is planned.
	arc := CurvedEdgeInput{StartStitches: 100, Gauge: steep.Gauge, Points: []CurvePoint{
		{HeightCm: knittest.Ptr(6.0), InwardCm: knittest.Ptr(8.0), Shape: ShapeArc, RadiusCm: knittest.Ptr(5.5)}}}
	if _, err = PlanCurvedEdge(arc); err == nil || !strings.Contains(err.Error(), "; the least that does is 8.4 cm") { // 100 / 12, up
		t.Fatal(err)
	}
	arc.Points[0].RadiusCm = knittest.Ptr(8.4)
	if _, err = PlanCurvedEdge(arc); err != nil {
		t.Error(err)
	}
}

// The outline ends where the figures do: the edges as knit at the last count, the curve
// beside them at its own end, and each point of a quarter ellipse on it.
func TestCurvedEdgeOutline(t *testing.T) {
	out, err := PlanCurvedEdge(CurvedEdgeInput{StartStitches: 100, Gauge: &gauge.Gauge{Stitches: 20, Rows: 20}, WithOutline: true,
		Points: []CurvePoint{{HeightCm: knittest.Ptr(20.0), InwardCm: knittest.Ptr(10.0), Shape: ShapeQuarterEllipse}}})
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, l := range out.Outline.Lines {
		names = append(names, l.Name)
		last := l.Points[len(l.Points)-1]
		if math.Abs(math.Abs(last.X)-15) > 1e-9 || last.Y != 20 || (last.X > 0) != strings.HasPrefix(l.Name, "right") {
			t.Errorf("%s ends at %v", l.Name, last)
		}
		for _, p := range l.Points {
			if in := (25-math.Abs(p.X))/10 - 0; strings.HasSuffix(l.Name, "curve") && math.Abs(in*in+(1-p.Y/20)*(1-p.Y/20)-1) > 1e-9 {
				t.Errorf("%s: %v is not on the ellipse", l.Name, p)
			}
		}
	}
	if strings.Join(names, ", ") != "right edge, right curve, left edge, left curve" {
		t.Errorf("%v", names)
	}
}

func FuzzPlanCurvedEdge(f *testing.F) {
	f.Add(100, 56, 20, 8.0, 3.0, int32(2), int32(1), int32(0), int32(0), 22.0, 0.5)
	f.Add(40, 0, 6, 12.0, 9.0, int32(3), int32(2), int32(1), int32(2), 30.0, 0.0)
	f.Fuzz(func(t *testing.T, start, rows, inward int, high, radius float64, shape, leaving, edges, side int32, stitches, tolerance float64) {
		in := CurvedEdgeInput{StartStitches: start, Gauge: &gauge.Gauge{Stitches: stitches, Rows: 28}, Edges: Edges(edges),
			FirstSide: stitch.Side(side), ToleranceStitches: &tolerance, WithOutline: true, RowChoice: RowChoice(side),
			Points: []CurvePoint{{HeightRows: &rows, InwardStitches: &inward, Shape: Shape(shape), Leaving: Leaving(leaving)},
				{HeightCm: &high, InwardCm: &radius, Shape: ShapeQuarterEllipse}}}
		if in.Points[0].Shape == ShapeArc {
			in.Points[0].RadiusCm = &radius
		}
		if in.Cost() > 20_000 {
			return
		}
		out, err := PlanCurvedEdge(in)
		if err != nil {
			knittest.CheckInputError(t, err)
			return
		}
		checkCurvedEdge(t, in, out)
	})
}

func BenchmarkPlanCurvedEdge(b *testing.B) {
	in := CurvedEdgeInput{StartStitches: 100, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
		Points: []CurvePoint{{HeightRows: knittest.Ptr(56), InwardStitches: knittest.Ptr(20), Shape: ShapeQuarterEllipse}}}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := PlanCurvedEdge(in); err != nil {
			b.Fatal(err)
		}
	}
}
