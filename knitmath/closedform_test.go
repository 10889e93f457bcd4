package knitmath

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"
)

// Figures that have a closed form, against gonum's integrals and vectors and
// against the rates that the handbooks give.

// A flat disc needs 2*pi*(stitch gauge)/(row gauge) more stitches a round: 4.80
// at R = rows/stitches = 1.31, 4.49 at 1.4, 3.14 at garter's 2. So 8 every
// second round is flat at R = 1.571, 6 a round at 1.047, 9 every second at 1.396.
//
// Source: computed from the circumference of a circle; the same rates are used in
// the trade (common practice).
func TestFlatDiscRates(t *testing.T) {
	for _, c := range []struct{ ratio, perRound, tolerance float64 }{
		{1.31, 4.80, 0.005}, {1.4, 4.49, 0.005}, {2, 3.14, 0.005}, {1.571, 4, 0.001}, {1.047, 6, 0.002}, {1.396, 4.5, 0.001},
	} {
		// A thousand rounds, so that whole stitches give the rate to a thousandth.
		y := yoke{st: density{10e6, 100_000}, rw: density{toMillionths(10 * c.ratio), 100_000}}
		lost := int(math.Round(c.perRound * 1000))
		if got := y.steepness(lost, 1000); math.Abs(got-1) > c.tolerance/c.perRound+1e-3 {
			t.Errorf("R = %v, %v a round: steepness %v, want 1", c.ratio, c.perRound, got)
		}
	}
}

// A cone of half-angle a has steepness sin(a): the circumference 2*pi*r over the
// slant depth s, and r/s = sin(a). The angle comes from gonum's vectors: between
// the axis and the slant line from (0, h) to (r, 0).
func TestConeSteepness(t *testing.T) {
	y := yoke{st: density{100e6, 10_000}, rw: density{100e6, 10_000}} // 100 to 1 cm
	for _, c := range []struct{ r, h float64 }{{3, 4}, {5, 12}, {8, 6}, {1, 10}} {
		slant := r2.Vec{X: c.r, Y: -c.h}
		cos := r2.Cos(slant, r2.Vec{Y: -1})
		want := math.Sqrt(1 - cos*cos)
		lost, rounds := int(math.Round(2*math.Pi*c.r*100)), int(math.Round(r2.Norm(slant)*100))
		if got := y.steepness(lost, rounds); math.Abs(got-want) > 2e-3 {
			t.Errorf("cone of radius %v and height %v: steepness %v, want %v", c.r, c.h, got, want)
		}
	}
}

// The slope of a wedge is an arc tangent, here integrated by gonum: the integral
// of 1/(1+x^2) from 0 to rise/run.
func TestWedgeAngle(t *testing.T) {
	for _, c := range []struct {
		width, rise int
		tall        TallEnd
	}{{24, 6, TallEndLeft}, {60, 40, TallEndRight}, {90, 60, TallEndCentre}, {41, 12, TallEndSides}, {200, 4, TallEndRight}} {
		out, err := PlanWedge(WedgeInput{StitchCount: c.width, RiseRows: &c.rise, TallEnd: c.tall, Gauge: &Gauge{Stitches: 22, Rows: 30}})
		if err != nil {
			t.Fatal(err)
		}
		run := float64(c.width) / 2.2
		if c.tall == TallEndCentre || c.tall == TallEndSides {
			run /= 2
		}
		slope := float64(c.rise) / 3 / run
		want := quad.Fixed(func(x float64) float64 { return 1 / (1 + x*x) }, 0, slope, 40, nil, 0) * 180 / math.Pi
		if math.Abs(*out.RiseAngleDegrees-want) > 1e-9 {
			t.Errorf("%+v: %v degrees, want %v", c, *out.RiseAngleDegrees, want)
		}
		// And back: that angle asks for the same rise.
		back, err := PlanWedge(WedgeInput{StitchCount: c.width, RiseAngleDegrees: &want, TallEnd: c.tall, Gauge: &Gauge{Stitches: 22, Rows: 30}})
		if err != nil || back.RiseRows != c.rise {
			t.Errorf("%+v: %v degrees give %d rows, %v", c, want, back.RiseRows, err)
		}
	}
}

// The outer edge of a circle, or of a part of one, is as long as its arc, which
// gonum integrates from the speed of a point that runs round it.
func TestCircleArcLength(t *testing.T) {
	for _, degrees := range []float64{90, 200, 360} {
		width, inner := 50, 4.0
		out, err := PlanCircleOfWedges(CircleInput{Gauge: &Gauge{Stitches: 22, Rows: 30}, StitchCount: &width,
			InnerRadiusCm: &inner, TurnDegrees: &degrees})
		if err != nil {
			t.Fatal(err)
		}
		speed := func(a float64) float64 {
			return math.Hypot(-out.OuterRadiusCm*math.Sin(a), out.OuterRadiusCm*math.Cos(a))
		}
		arc := quad.Fixed(speed, 0, degrees*math.Pi/180, 20, nil, 0)
		if border := float64(out.OuterRowCount) / 3; math.Abs(border-arc) > 1.0/3+1e-9 {
			t.Errorf("%v degrees: an edge of %v cm, want %v to within a row", degrees, border, arc)
		}
	}
}
