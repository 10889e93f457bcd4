package curve

import (
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// A piece of too few stitches for both edges is told how many would do, and so many do.
func TestTooFewStitchesAreToldHowMany(t *testing.T) {
	in := CurvedEdgeInput{Gauge: &gauge.Gauge{Stitches: 20, Rows: 28}, StartStitches: 40,
		Points: []CurvePoint{{HeightRows: new(10), InwardStitches: new(21)}}}
	_, err := PlanCurvedEdge(in)
	if err == nil || !strings.Contains(err.Error(), "; a start of 42 stitches would do") {
		t.Errorf("%v", err)
	}
	for start, want := range map[int]bool{41: false, 42: true} {
		in.StartStitches = start
		if _, err := PlanCurvedEdge(in); (err == nil) != want {
			t.Errorf("%d: %v", start, err)
		}
	}
}
