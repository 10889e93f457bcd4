package curve

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
)

// speed integrates how fast a point runs along a quarter of an ellipse, by gonum.
func quarterByQuadrature(a, b float64) float64 {
	return quad.Fixed(func(t float64) float64 {
		return math.Hypot(a*math.Sin(t), b*math.Cos(t))
	}, 0, math.Pi/2, 400, nil, 0)
}

func TestLengthAgainstQuadrature(t *testing.T) {
	for _, a := range []float64{0.1, 1, 3, 7.25, 40} {
		for _, b := range []float64{0.1, 2, 3, 19, 1000} {
			want := quarterByQuadrature(a, b)
			for _, way := range []Leaving{LeavingAcross, LeavingUp} {
				for _, x := range []float64{a, -a} {
					if got := From(Point{1, 2}).Ellipse(Point{1 + x, 2 + b}, way).Length(); math.Abs(got-want) > 1e-6*want {
						t.Errorf("quarter ellipse %v by %v: %.12g, quadrature %.12g", x, b, got, want)
					}
				}
			}
		}
	}
	// Arcs: the length of y(x) = the circle, integrated as a graph over its height.
	for _, c := range []struct{ x, y, r float64 }{{3, 4, 2.5}, {3, 4, 5}, {3, 4, 100}, {4, 9, 6}, {0, 4, 3}, {-3, 4, 5}} {
		for _, way := range []Leaving{LeavingAcross, LeavingUp} {
			p, ok := From(Point{}).Arc(Point{c.x, c.y}, c.r, way)
			if !ok {
				continue
			}
			// Chord and radius give the angle; the angle, integrated by gonum, the length.
			half := math.Hypot(c.x, c.y) / 2
			want := quad.Fixed(func(s float64) float64 { return 2 / math.Sqrt(1-s*s/(c.r*c.r)) }, 0, half, 2000, nil, 0)
			if c.r > 1.01*half && math.Abs(p.Length()-want) > 1e-6*want {
				t.Errorf("arc to %v: %.9g, quadrature %.9g", c, p.Length(), want)
			}
		}
	}
	if got := From(Point{}).Line(Point{3, 4}).Line(Point{3, 5}).Line(Point{8, 5}).Length(); got != 11 {
		t.Errorf("lines: %v", got)
	}
}

// Every point of an arc lies on its circle, rises, and is on the asked side of the
// straight line.
func TestArcsLieOnTheirCircle(t *testing.T) {
	told := 0
	for x := -6.0; x <= 6; x++ {
		for y := 1.0; y <= 9; y++ {
			for _, r := range []float64{1, 2.5, 4, 5, 8, 30} {
				for _, way := range []Leaving{LeavingAcross, LeavingUp} {
					p, ok := From(Point{2, 1}).Arc(Point{2 + x, 1 + y}, r, way)
					chord := math.Hypot(x, y)
					if !ok {
						// Refused only where the chord is too long, or where the tangent dips at an end:
						// half the angle of the arc is more than that between chord and row or upright.
						dip := math.Atan2(y, math.Abs(x)) < math.Asin(min(1, chord/(2*r)))+1e-6
						if 2*r > chord && !dip {
							t.Errorf("arc by %v, %v, radius %v is refused", x, y, r)
						}
						continue
					}
					told++
					for _, s := range p.pieces {
						for i := range 11 {
							at := s.from.Y + (s.to.Y-s.from.Y)*float64(i)/10
							in, _ := s.across(at)
							if d := math.Hypot(in-s.centre.X, at-s.centre.Y); math.Abs(d-r) > 1e-6*r {
								t.Fatalf("arc by %v, %v, radius %v: %v from its centre at %v", x, y, r, d, at)
							}
							// Left of the line from the first point to the last is above it going in.
							cross := x*(at-1) - y*(in-2)
							if way == LeavingAcross != (x < 0) && cross > 1e-6 || way == LeavingAcross == (x < 0) && cross < -1e-6 {
								t.Fatalf("arc by %v, %v, radius %v, way %v: wrong side at %v", x, y, r, way, at)
							}
						}
					}
				}
			}
		}
	}
	if told < 500 {
		t.Errorf("only %d arcs", told)
	}
}
