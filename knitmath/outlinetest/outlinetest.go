// Package outlinetest is what the tests of rooms that draw share: an outline's
// frame just holds it, its corners bend, and where its lines stand.
package outlinetest

import (
	"math"
	"testing"

	"example.com/knitmath/knitmath/outline"
)

// At is where a line that rises from point to point stands at a height.
func At(l outline.Line, t *testing.T, y float64) float64 {
	t.Helper()
	for i := 1; i < len(l.Points); i++ {
		a, b := l.Points[i-1], l.Points[i]
		if b.Y <= a.Y {
			t.Fatalf("%s: the line does not rise at point %d: %v", l.Name, i, l.Points)
		}
		if y <= b.Y {
			return a.X + (b.X-a.X)*(y-a.Y)/(b.Y-a.Y)
		}
	}
	return l.Points[len(l.Points)-1].X
}

// CheckFrame wants a frame that just holds all points.
func CheckFrame(t *testing.T, o *outline.Outline) {
	t.Helper()
	left, right, low, high := math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	for _, l := range o.Lines {
		for _, p := range l.Points {
			left, right, low, high = min(left, p.X), max(right, p.X), min(low, p.Y), max(high, p.Y)
		}
		if l.Name == "" || len(l.Points) == 0 {
			t.Errorf("line %+v", l)
		}
	}
	if o.X.Least != left || o.X.Greatest != right || o.Y.Least != low || o.Y.Greatest != high ||
		o.X.Measure == "" || o.Y.Measure == "" || o.X.Unit == 0 || o.Y.Unit == 0 {
		t.Errorf("axes %+v, %+v, points from %v, %v to %v, %v", o.X, o.Y, left, low, right, high)
	}
}

// CheckCorners wants no point on the straight stroke between its neighbours.
func CheckCorners(t *testing.T, l outline.Line) {
	t.Helper()
	for i := 2; i < len(l.Points); i++ {
		a, b, c := l.Points[i-2], l.Points[i-1], l.Points[i]
		if area := (b.X-a.X)*(c.Y-a.Y) - (c.X-a.X)*(b.Y-a.Y); math.Abs(area) < 1e-9 {
			t.Fatalf("%s: point %d adds nothing: %v", l.Name, i-1, l.Points)
		}
	}
}
