package outline

import (
	"math"
	"testing"
)

// An outline is plain numbers, and has each point once in succession.
func TestFramedIsPlain(t *testing.T) {
	o := (&Outline{Lines: []Line{{Points: []Point{{}, {X: math.Copysign(0, -1), Y: math.Copysign(0, -1)}, {X: 1}, {X: 1}, {}}}}}).Framed()
	points := o.Lines[0].Points
	if len(points) != 3 || points[0] != points[2] {
		t.Errorf("%v", points)
	}
	for _, p := range points {
		if math.Signbit(p.X) || math.Signbit(p.Y) {
			t.Errorf("%v", p)
		}
	}
}
