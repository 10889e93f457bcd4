package curve

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Every shaping row has a note of its own label that says how it is worked: a label told twice, of
// rows that differ, is no help. Edges that take one stitch in some rows and two in others.
func TestShapingRowsAreToldOnce(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 15))
	planned, several := 0, 0
	for range knittest.Sweep(2_000, 300) {
		a, b, rows := r.IntN(21)-10, r.IntN(41)-20, 20+r.IntN(60)
		in := CurvedEdgeInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 26.5}, StartStitches: 90, LargestChangeStitches: new(2),
			RowChoice: RowChoice(r.IntN(3)), Edges: Edges(r.IntN(4)), Points: []CurvePoint{{HeightRows: &rows, InwardStitches: &a},
				{HeightRows: new(rows + 4 + r.IntN(20)), InwardStitches: &b, Shape: Shape(r.IntN(3))}}}
		out, err := PlanCurvedEdge(in)
		if err != nil {
			continue
		}
		planned++
		labels := map[string]bool{}
		for _, line := range ShapingRows(out.Rows, len(out.edges())) {
			label, _, _ := strings.Cut(line, " are ")
			if labels[label] {
				t.Errorf("%+v: %q is told twice", in, label)
			}
			labels[label] = true
			if strings.Contains(label, " of 2 sts") {
				several++
			}
		}
		if told := len(labels) > 0; told != hasSingles(out.Runs) {
			t.Errorf("%+v: notes %v of %+v", in, labels, out.Runs)
		}
		for _, line := range out.Directions() {
			if strings.Contains(line, " 1st ") {
				t.Errorf("%+v: %s", in, line)
			}
		}
	}
	t.Logf("%d planned, %d notes of 2 stitches", planned, several)
	if planned < knittest.Sweep(800, 100) || several < knittest.Sweep(200, 25) {
		t.Errorf("only %d planned, %d notes of 2 stitches", planned, several)
	}
}

func hasSingles(runs []Run) bool {
	for _, r := range runs {
		if !r.Kind.Groups() {
			return true
		}
	}
	return false
}

// Of two intervals in turn the next row is told as that. "Every 2nd and every row alternately" has
// no row left between.
func TestNextRowInTurn(t *testing.T) {
	c := condenser{Wording: Wording{Start: 100}, count: 100, both: true}
	c.singles(Run{Kind: KindDecrease, Stitches: 1, FirstRowNumber: 1, Times: 7, EveryRows: 2, AlternateRows: 1})
	c.singles(Run{Kind: KindDecrease, Stitches: 1, FirstRowNumber: 11, Times: 4, EveryRows: 2, AlternateRows: 1})
	want := "Dec 1 st each end of next row, then [foll 2nd row, then next row] 3 times: 86 stitches.\n" +
		"Dec 1 st each end of [next row, then foll 2nd row] twice: 78 stitches."
	if got := strings.Join(c.lines, "\n"); got != want {
		t.Errorf("%s", got)
	}
}
