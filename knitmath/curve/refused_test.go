package curve

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/measure"
)

// An ordinary line is planned however high it is and however far it goes in.
func TestLongLinesArePlanned(t *testing.T) {
	for rows := 100; rows <= MaxRows; rows += 50 {
		for moved := 1; moved <= MaxInward; moved += knittest.Sweep(13, 60) {
			in := CurvedEdgeInput{StartStitches: 2*moved + 20, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30},
				Points: []CurvePoint{{HeightRows: &rows, InwardStitches: &moved}}}
			if _, err := PlanCurvedEdge(in); err != nil {
				t.Errorf("%d stitches over %d rows: %v", moved, rows, err)
			}
		}
	}
}

// farOff is a question that is more often refused than not, by a number: steep curves, few
// stitches, arcs that do not reach, repeats that do not fit.
func farOff(seed uint64) CurvedEdgeInput {
	r := rand.New(rand.NewPCG(seed, 71))
	in := CurvedEdgeInput{Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, Edges: Edges(r.IntN(4)), RowChoice: RowChoice(r.IntN(3))}
	row, inward := 0, 0
	for range 1 + r.IntN(3) {
		row += 1 + r.IntN(30)
		if inward += r.IntN(61) - 20; r.IntN(4) == 0 {
			inward += 40
		}
		p := CurvePoint{HeightRows: new(row), InwardStitches: new(inward), Shape: Shape(r.IntN(4))}
		if p.Shape == ShapeArc {
			p.RadiusCm = new(1 + 20*r.Float64())
		}
		if p.Shape > ShapeLine {
			p.Leaving = LeavingAcross + Leaving(r.IntN(2))
		}
		in.Points = append(in.Points, p)
	}
	in.StartStitches = max(2, r.IntN(120))
	if r.IntN(2) == 0 {
		in.LargestGroupStitches = new(r.IntN(5))
	}
	if r.IntN(3) == 0 && (in.LargestGroupStitches == nil || *in.LargestGroupStitches > 0) {
		in.LargestChangeStitches = new(r.IntN(2))
	}
	if seed%2 == 0 {
		return in
	}
	// The same in lengths, at other gauges.
	in.Gauge.Stitches, in.Gauge.Rows = knittest.FarGauge(r)
	in.DisplayUnit = measure.DisplayUnit(r.IntN(3))
	for i, p := range in.Points {
		cm := func(n int, per float64) *float64 {
			return new(max(float64(measure.RoundHalfUp(float64(n)*100/per)), -9_000) / 10)
		}
		in.Points[i].HeightRows, in.Points[i].HeightCm = nil, cm(*p.HeightRows, in.Gauge.Rows)
		in.Points[i].InwardStitches, in.Points[i].InwardCm = nil, cm(*p.InwardStitches, in.Gauge.Stitches)
	}
	if r.IntN(4) == 0 {
		in.ToleranceStitches = new(float64(r.IntN(5)) / 2)
	}
	if r.IntN(4) == 0 {
		in.EndRule = &gauge.CountRule{Multiple: new(1 + r.IntN(6)), Remainder: new(r.IntN(4))}
	}
	return in
}

var (
	startAdvised  = regexp.MustCompile(`a start of (\d+) stitches would do`)
	radiusAdvised = regexp.MustCompile(`points\[(\d)\].radius_cm: no arc [a-z ]*; the least that does is ([0-9.]+) (cm|in)`)
	withStart     = regexp.MustCompile(`with a start of (\d+) stitches`)
	lets          = map[string]func(in *CurvedEdgeInput){
		"shaping on any row":                         func(in *CurvedEdgeInput) { in.RowChoice = RowChoiceAny },
		"2 stitches at an edge in one row":           func(in *CurvedEdgeInput) { in.LargestChangeStitches = new(2) },
		"more stitches bound off or cast on at once": func(in *CurvedEdgeInput) { in.LargestGroupStitches = nil },
	}
)

// advised are the questions that a refusal says would do.
func advised(in CurvedEdgeInput, refusal string) []CurvedEdgeInput {
	var list []CurvedEdgeInput
	if m := startAdvised.FindStringSubmatch(refusal); m != nil {
		again := in
		again.StartStitches, _ = strconv.Atoi(m[1])
		list = append(list, again)
	}
	if _, ways, ok := strings.Cut(refusal, "this would do"); ok {
		for words, let := range lets {
			if strings.Contains(ways, words) {
				again := in
				let(&again)
				if m := withStart.FindStringSubmatch(ways); m != nil {
					again.StartStitches, _ = strconv.Atoi(m[1])
				}
				list = append(list, again)
			}
		}
	}
	return list
}

// withArcs is the question with the least radius of every arc that a refusal finds too small,
// nil if it finds none.
func withArcs(in CurvedEdgeInput, refusal string) *CurvedEdgeInput {
	found := radiusAdvised.FindAllStringSubmatch(refusal, -1)
	in.Points = append([]CurvePoint(nil), in.Points...)
	for _, m := range found {
		i, _ := strconv.Atoi(m[1])
		radius, _ := strconv.ParseFloat(m[2], 64)
		if m[3] == "in" {
			radius *= measure.CmPerInch
		}
		in.Points[i].RadiusCm = &radius
	}
	if len(found) == 0 {
		return nil
	}
	return &in
}

// What a refusal says would do is planned as it is printed, in cm or inches and with the caller's rule,
// and an arc of the least radius that it names rises;
// more than half of what is far off is told what would do.
func TestAdviceOfRefusalsIsTaken(t *testing.T) {
	refused, told, taken := 0, 0, 0
	for seed := range knittest.Sweep(6_000, 600) {
		in := farOff(uint64(seed))
		_, err := PlanCurvedEdge(in)
		if err == nil {
			continue
		}
		knittest.CheckInputError(t, err)
		refused++
		list, arcs := advised(in, err.Error()), withArcs(in, err.Error())
		if len(list) > 0 || arcs != nil {
			told++
		}
		if arcs != nil {
			_, other := PlanCurvedEdge(*arcs)
			for _, m := range radiusAdvised.FindAllStringSubmatch(err.Error(), -1) {
				if other != nil && strings.Contains(other.Error(), "points["+m[1]+"].radius_cm") {
					t.Errorf("question %d: %v\nasked again: %v", seed, err, other)
				}
			}
		}
		for _, again := range list {
			taken++
			if _, other := PlanCurvedEdge(again); other != nil {
				t.Errorf("question %d: %v\nasked again: %v", seed, err, other)
			}
		}
	}
	t.Logf("%d refused, %d of them told what would do, %d asked again", refused, told, taken)
	if 2*told < refused || refused < knittest.Sweep(1_500, 150) {
		t.Errorf("%d refused, %d of them told what would do", refused, told)
	}
}

// Decreases and increases in the first row and the last are remarked on, bind-offs are not.
func TestShapedAtAnEnd(t *testing.T) {
	seen := 0
	for seed := range knittest.Sweep(4_000, 400) {
		out, err := PlanCurvedEdge(farOff(uint64(seed)))
		if err != nil {
			continue
		}
		want := 0
		for _, row := range []int{1, out.HeightRows} {
			for _, e := range out.edges() {
				if step := stepOf(e.Steps, row); step.Stitches > 0 && !step.Kind.Groups() {
					want++
					break
				}
			}
		}
		got := 0
		for _, n := range out.Notices {
			if n.Reason == ShapedAtAnEnd {
				got++
			}
		}
		if seen += got; got != want {
			t.Errorf("question %d: %d remarks, want %d", seed, got, want)
		}
	}
	if seen < knittest.Sweep(400, 40) {
		t.Errorf("%d remarks", seen)
	}
}

func stepOf(steps []Step, row int) Step {
	for _, s := range steps {
		if s.RowNumber == row {
			return s
		}
	}
	return Step{}
}
